"""What stands on buttons: plain text, without markup and short."""

from html import unescape

from bot.wording.pages import shortened
from bot.wording.tongue import Filling, Template, Tongue

LABEL_UNITS = 40  # [UTF-16 units] ch: more is cut off on a narrow phone


def label(tongue: Tongue, template: Template, **fillings: Filling) -> str:
    """Fill a template for a button, where nothing may be escaped."""
    return shortened(unescape(tongue.say(template, **fillings)), LABEL_UNITS)
