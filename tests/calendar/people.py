"""People of the calendar's tests, and the rounds that would be done for them."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta

from scheduler.calendar.due import due_for
from scheduler.calendar.values import Due, Owed, PlannedSession, Timing

JOINED = datetime(2020, 1, 1, tzinfo=UTC)


def utc(text: str) -> datetime:
    """Read ``2026-03-29 01:30`` as an instant."""
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


def timing(zone: str, **hours) -> Timing:
    """A person who joined long ago."""
    return Timing(**({"zone": zone, "joined_at_utc": JOINED} | hours))


def daily_sessions(first: date, days: int, at: time | None = None) -> tuple[PlannedSession, ...]:
    """A session a day, numbered from 1."""
    return tuple(
        PlannedSession(session_id=n + 1, local_date=first + timedelta(days=n), at=at)
        for n in range(days)
    )


def rounds(
    owed: Owed, hours: Timing, *, start: datetime, end: datetime, step: timedelta
) -> Iterator[tuple[datetime, Due]]:
    """Go through the rounds from start to end; what is found is taken care of at once."""
    handled: set[tuple[str, str]] = set()
    since, now = start, start
    while now < end:
        now += step
        for due in due_for(
            person_id=1, timing=hours, owed=owed, since_utc=since, until_utc=now, handled=handled
        ):
            handled.add(due.key)
            yield now, due
        since = now
