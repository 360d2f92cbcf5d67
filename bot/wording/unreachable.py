"""When nobody could be told."""

from bot.wording.emergency import call
from bot.wording.tongue import Tongue


def to_athlete(tongue: Tongue, *, number: str | None = None) -> str:
    """Tell the athlete that nobody was reached."""
    return tongue.say(
        "I could not reach your coach. Do not wait for an answer here. "
        "If it is urgent, call {call} or see a doctor.",
        call=call(tongue, number),
    )


def refused_to_owner(tongue: Tongue, name: str) -> str:
    """Tell the owner that the platform refuses what somebody must read."""
    return tongue.say(
        "The platform twice refused a safety message or an alert for {name}. "
        "Please reach {name} another way.",
        name=name,
    )


def to_owner(tongue: Tongue, name: str) -> str:
    """Tell the owner that an alert reached nobody."""
    return tongue.say(
        "An alert about {name} reached nobody: neither coach nor stand-in has an open chat. "
        "Please take it over.",
        name=name,
    )


def media_gone(tongue: Tongue, text: str) -> str:
    """A picture or clip that the platform no longer has; ``text`` is marked up already."""
    note = tongue.say("The picture or clip itself can no longer be shown.")
    return f"{text}\n{note}" if text else note
