"""The question behind a wish to stop, and its taps."""

from bot.wording.labels import label
from bot.wording.tongue import Tongue


def what_to_stop(tongue: Tongue, *, coach: str = "") -> str:
    """Ask what is to stop; ``coach`` where the coach reads the wish as well."""
    question = tongue.say("What would you like to stop?")
    if not coach:
        return question
    return "\n".join([question, tongue.say("{coach} reads what you wrote.", coach=coach)])


def session_label(tongue: Tongue) -> str:
    """Only the session that is out."""
    return label(tongue, "Only this session")


def hurts_label(tongue: Tongue) -> str:
    """Something hurts."""
    return label(tongue, "Something hurts")


def break_label(tongue: Tongue) -> str:
    """Sessions for a while."""
    return label(tongue, "Take a break")


def leave_label(tongue: Tongue) -> str:
    """All of it."""
    return label(tongue, "Leave")
