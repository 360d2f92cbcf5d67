"""What goes between athlete and coach in their own words."""

from bot.wording.tongue import Tongue


def words(tongue: Tongue, name: str, text: str) -> str:
    """An athlete's text, for the coach."""
    return tongue.say("<b>{name}</b> writes:\n{text}", name=name, text=text)


def media(tongue: Tongue, name: str, kind: str, caption: str) -> str:
    """Announce what follows: a clip, a picture, a voice note."""
    head = tongue.say("<b>{name}</b> sent a {kind}.", name=name, kind=kind)
    return f"{head}\n{tongue.say('{caption}', caption=caption)}" if caption else head
