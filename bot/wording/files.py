"""Text files that a coach sends to the bot."""

from collections.abc import Sequence

from bot.wording.tongue import Tongue

FAULTS = {
    "too_large": "<b>{name}</b> is too large: a file may have 1 MB. Nothing was changed.",
    "not_text": (
        "<b>{name}</b> could not be read as text. Save it as UTF-8 and send it again. "
        "Nothing was changed."
    ),
    "not_fetched": (
        "<b>{name}</b> could not be fetched from the platform. Please send it again. "
        "Nothing was changed."
    ),
}


def unreadable(tongue: Tongue, *, name: str, fault: str) -> str:
    """A file whose content is not here."""
    return tongue.say(FAULTS[fault], name=name)


def for_nothing(tongue: Tongue, *, name: str, commands: Sequence[str]) -> str:
    """A file without a word that says what it is for."""
    if not commands:
        return tongue.say("I have no use for the file <b>{name}</b>.", name=name)
    return tongue.say(
        "I do not know what <b>{name}</b> is for. Send it again with one of these as its "
        "caption: {commands}",
        name=name,
        commands=", ".join(commands),
    )
