"""A person's own hours, as the calendar wants them."""

from datetime import time

from scheduler.calendar.values import Timing
from scheduler.calendar.zones import zone_named
from storage.records.people import Athlete, Person

MORNING_QUESTION_LATEST = time(11, 0)  # [wall time] ch: before noon, whenever the session is


def timing_of(person: Person, athlete: Athlete | None = None) -> Timing:
    """Return the hours of a person."""
    hours = {
        "zone": zone_named(person.zone),
        "joined_at_utc": person.created_at,
        "waking_from": person.waking_from,
        "waking_until": person.waking_until,
        "digest_weekday": person.digest_weekday,
        "digest_at": person.digest_at,
    }
    if athlete is not None:
        hours |= {
            "session_at": athlete.session_at,
            "evening_at": athlete.evening_at,
            "morning_question_at": min(athlete.session_at, MORNING_QUESTION_LATEST),
        }
    return Timing(**hours)
