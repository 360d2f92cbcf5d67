"""A shared place, and the time zones near it."""

from collections.abc import Sequence
from datetime import time

from bot.wording.labels import label
from bot.wording.tongue import Tongue


def place_name(tongue: Tongue, zone: str) -> str:
    """Name the city that a zone is named after, as the language writes it."""
    known = tongue.locale.time_zones.get(zone, {})
    return str(known.get("city") or zone.rsplit("/", 1)[-1].replace("_", " "))


def place_labels(
    tongue: Tongue, places: Sequence[tuple[str, str, str | None]], *, clocks: Sequence[time]
) -> list[str]:
    """Label the buttons of places: the city, its country among several, and its clock now.

    Each place is its zone, the city that was meant ("" where it is the zone's own), and the
    two-letter code of its country. Cities of one name in one country are told apart by their zone.
    """
    named = [(name or place_name(tongue, zone), code) for zone, name, code in places]
    labels = []
    for (zone, _, code), (place, _), at in zip(places, named, clocks, strict=True):
        is_twice = named.count((place, code)) > 1
        where = place_name(tongue, zone) if is_twice else _country(tongue, code)
        now = f"{at:%H:%M}"
        if len(places) == 1 or where in {"", place}:
            labels.append(label(tongue, "{place}, now {time}", place=place, time=now))
        else:
            labels.append(
                label(tongue, "{place} ({where}), now {time}", place=place, where=where, time=now)
            )
    return labels


def _country(tongue: Tongue, code: str | None) -> str:
    return str(tongue.locale.territories.get(code, "")) if code else ""


def near(tongue: Tongue) -> str:
    """Say how to choose among the buttons of the places near one: two may have the same time."""
    return tongue.say(
        "These are near that place. Choose the one in your country with your clock's time. "
        "If yours is not there, write the name of a big city near you."
    )


def later(tongue: Tongue) -> str:
    """A place is of use only where the time zone is asked about."""
    return tongue.say("I need a place only when I ask for your time zone.")
