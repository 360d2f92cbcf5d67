"""Messages that wait for the coach, closed without an answer."""

from bot.wording.labels import label
from bot.wording.tongue import Tongue


def close_label(tongue: Tongue) -> str:
    """Label the button that closes what needs no answer."""
    return label(tongue, "No answer needed")


def closed(tongue: Tongue, *, name: str, count: int) -> str:
    """Confirm that they left the roster."""
    return tongue.count(
        count,
        "1 message of {name} is off the roster without an answer.",
        "{n} messages of {name} are off the roster without an answer.",
        name=name,
    )


def reopen_label(tongue: Tongue) -> str:
    """Label the button that puts them back."""
    return label(tongue, "Put back")


def reopened(tongue: Tongue, *, name: str) -> str:
    """They wait again."""
    return tongue.say("Back on the roster: {name} waits for an answer.", name=name)


def answered_before(tongue: Tongue, *, name: str) -> str:
    """Nothing of what was shown waits any more."""
    return tongue.say("Nothing of {name} waits any more.", name=name)
