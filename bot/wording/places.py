"""A shared place, and the time zones near it."""

from collections.abc import Sequence
from datetime import time

from bot.wording.tongue import Tongue


def near(tongue: Tongue, zones: Sequence[tuple[str, time]]) -> str:
    """Show what time it is now in the zones near a place: the phone's clock tells which is right.

    Two zones may have the same time and still lie in different countries.
    """
    lines = [
        tongue.say("· {zone}: {time}", zone=zone.replace("_", " "), time=f"{at:%H:%M}")
        for zone, at in zones
    ]
    head = tongue.say("Near that place it is now:")
    end = tongue.say(
        "Choose the one in your country with your clock's time. If yours is not there, "
        "write the name of a big city near you."
    )
    return "\n".join([head, *lines, end])


def later(tongue: Tongue) -> str:
    """A place is of use only where the time zone is asked about."""
    return tongue.say("I need a place only when I ask for your time zone.")
