"""Reminders, and silence."""

from bot.wording.tongue import Tongue


def evening(tongue: Tongue) -> str:
    """The one reminder."""
    return tongue.say(
        "Today's session is still open. Did it happen? Send your numbers, or tap. "
        "If not, that is fine too: nothing piles up."
    )


def silent(tongue: Tongue, name: str) -> str:
    """Three days without an answer, for the coach."""
    return tongue.say(
        "<b>{name}</b> has not answered for three days. A word from you may help more than mine.",
        name=name,
    )
