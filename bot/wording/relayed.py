"""What goes between athlete and coach in their own words."""

from collections.abc import Mapping

from bot.wording.tongue import Template, Tongue

KINDS: Mapping[str, Template] = {
    "photo": "a picture",
    "video": "a clip",
    "video_note": "a round video note",
    "voice": "a voice note",
    "sticker": "a sticker",
    "document": "a file",
    "location": "a place on the map",
}


def kind_of(tongue: Tongue, kind: str) -> str:
    """Name what was sent, as people call it."""
    return tongue.say(KINDS.get(kind, "something that is not text"))


def words(tongue: Tongue, name: str, text: str) -> str:
    """An athlete's text, for the coach."""
    return tongue.say("<b>{name}</b> writes:\n{text}", name=name, text=text)


def media(tongue: Tongue, name: str, kind: str, caption: str) -> str:
    """Announce what follows: a clip, a picture, a voice note."""
    head = tongue.say("<b>{name}</b> sent {kind}.", name=name, kind=kind_of(tongue, kind))
    return f"{head}\n{tongue.say('{caption}', caption=caption)}" if caption else head
