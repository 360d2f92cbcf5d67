"""What the clock on the wall says, and which instant that is."""

from datetime import UTC, date, datetime, time, timedelta, tzinfo
from enum import StrEnum


class WallTimeKind(StrEnum):
    """How often a wall time happens on its date."""

    ONCE = "once"
    SKIPPED = "skipped"
    TWICE = "twice"


def due_instant(*, local_date: date, wall_time: time, zone: tzinfo) -> datetime:
    """Return the one instant meant by a wall time on a date in a zone.

    Args:
        local_date: the date on the wall calendar.
        wall_time: the time on the wall clock, without a zone of its own.
        zone: where that wall is.

    Returns:
        The instant, aware, in UTC. Of a time that happens twice, the first; for one that is
        skipped, the instant by the offset before the gap (rfc5545: section 3.3.5).

    Valid for every date that the zone knows. A date that a zone left out as a whole falls on
    the same instant as the day after it; :func:`has_date` tells.

    """
    return _on_the_wall(local_date, wall_time, zone).astimezone(UTC)


def wall_time_kind(*, local_date: date, wall_time: time, zone: tzinfo) -> WallTimeKind:
    """Tell whether a wall time happens once, twice or not at all (rfc5545: section 3.3.5).

    Offsets are compared, never the summer-time flag: a zone may change the flag and keep the
    offset, and then nothing happens on the wall.
    """
    first = _on_the_wall(local_date, wall_time, zone)
    before, after = first.utcoffset(), first.replace(fold=1).utcoffset()
    if before is None or after is None or before == after:
        return WallTimeKind.ONCE
    return WallTimeKind.TWICE if before > after else WallTimeKind.SKIPPED


def local_date_of(instant: datetime, zone: tzinfo) -> date:
    """Return the date on the wall calendar at an instant."""
    return _aware(instant).astimezone(zone).date()


def monday_of(day: date) -> date:
    """Return the Monday of a day's week."""
    return day - timedelta(days=day.weekday())


def local_time_of(instant: datetime, zone: tzinfo) -> time:
    """Return the time on the wall clock at an instant, without a zone."""
    return _aware(instant).astimezone(zone).time().replace(fold=0)


def has_date(local_date: date, zone: tzinfo) -> bool:
    """Tell whether a date happens in a zone at all: crossing the date line can leave one out."""
    return any(
        local_date_of(due_instant(local_date=local_date, wall_time=edge, zone=zone), zone)
        == local_date
        for edge in (time.min, time.max)
    )


def _on_the_wall(local_date: date, wall_time: time, zone: tzinfo) -> datetime:
    """Put the time on the date; ``fold=0`` is the offset before a change (PEP 495)."""
    if wall_time.tzinfo is not None:
        raise ValueError("A wall time has no zone of its own: give a time without one.")
    return datetime.combine(local_date, wall_time.replace(fold=0), tzinfo=zone)


def _aware(instant: datetime) -> datetime:
    """Refuse an instant without a zone: the machine's own would be taken for it."""
    if instant.utcoffset() is None:
        raise ValueError("An instant needs a zone: give an aware datetime.")
    return instant
