"""Files of movements and numbers that a coach sends to the bot."""

from collections.abc import Sequence

from bot.wording.tongue import Tongue


def too_big(tongue: Tongue, *, name: str, most_kb: int) -> str:
    """A file that is far larger than any of its kind."""
    return tongue.say(
        "<b>{name}</b> is too large: a file may have {n} kB. Nothing was changed.",
        name=name,
        n=most_kb,
    )


def not_text(tongue: Tongue, *, name: str) -> str:
    """A file in a coding that is not guessed, or no text at all."""
    return tongue.say(
        "<b>{name}</b> could not be read as text. Save it as UTF-8 and send it again. "
        "Nothing was changed.",
        name=name,
    )


def for_nothing(tongue: Tongue, *, name: str, commands: Sequence[str]) -> str:
    """A file without a word that says what it is for."""
    return tongue.say(
        "I do not know what <b>{name}</b> is for. Send it again with one of these as its "
        "caption: {commands}",
        name=name,
        commands=", ".join(commands),
    )
