"""When nobody could be told."""

from bot.wording.tongue import Tongue


def to_athlete(tongue: Tongue) -> str:
    """Tell the athlete that nobody was reached."""
    return tongue.say(
        "I could not reach your coach. Do not wait for an answer here. "
        "If it is urgent, call your local emergency number or see a doctor."
    )


def to_owner(tongue: Tongue, name: str) -> str:
    """Tell the owner that an alert reached nobody."""
    return tongue.say(
        "An alert about {name} reached nobody: neither coach nor stand-in has an open chat. "
        "Please take it over.",
        name=name,
    )
