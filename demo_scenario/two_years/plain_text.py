"""Sentences of the chat as plain text, and reasons with the figures that they rest on."""

import html
import re
from collections.abc import Iterable

from bot.wording.reasons import say_reason
from bot.wording.tongue import Tongue, tongue_of
from scheduler.reasons import Figure, Reason

TONGUE: Tongue = tongue_of("en")
MARK = re.compile(r"</?\w+>")


def plain(marked: str) -> str:
    """Take the markup out of a text of the chat."""
    return html.unescape(MARK.sub("", marked))


def why(reason: Reason) -> str:
    """Write a reason: its sentence, then its code and figures."""
    figures = ", ".join(f"{name} {_figure(value)}" for name, value in reason.figures.items())
    code = reason.code if not figures else f"{reason.code}: {figures}"
    return f"{plain(say_reason(TONGUE, reason))} [{code}]"


def all_why(reasons: Iterable[Reason], *, indent: str, lead: str) -> list[str]:
    """Write reasons, a line each."""
    return [f"{indent}{lead} {why(one)}" for one in reasons]


def _figure(value: Figure) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    return TONGUE.number(value) if isinstance(value, float) else str(value)
