"""What comes round by itself every night, by the wall clock: the drawing of weeks."""

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from scheduler.calendar.values import Due, DueKind, Timing
from scheduler.calendar.wall_time import due_instant, local_date_of

DAY = timedelta(days=1)


def planning_dues(
    *, person_id: int, timing: Timing, since_utc: datetime, until_utc: datetime
) -> Iterator[Due]:
    """Yield the nights that fell due since the last look, or before and still useful.

    What fell due before the person joined is not owed. The subject is the date: it moves
    neither with a zone nor with an hour.
    """
    first = max(min(since_utc, until_utc - 2 * DAY), timing.joined_at_utc)
    here = local_date_of(first, timing.zone) - DAY
    last = local_date_of(until_utc, timing.zone)
    while here <= last:
        due = _night(here, person_id, timing)
        is_owed = timing.joined_at_utc <= due.due_at_utc <= until_utc
        is_useful = due.useful_until_utc is None or due.useful_until_utc > until_utc
        if is_owed and (due.due_at_utc > since_utc or is_useful):
            yield due
        here += DAY


def _night(local_date: date, person_id: int, timing: Timing) -> Due:
    """Build the drawing of one date; it is of use until the next."""
    due_at_utc, end_utc = (
        due_instant(local_date=on, wall_time=timing.planning_at, zone=timing.zone)
        for on in (local_date, local_date + DAY)
    )
    return Due(
        person_id=person_id,
        kind=DueKind.WEEK_DRAWING,
        subject=local_date.isoformat(),
        local_date=local_date,
        due_at_utc=due_at_utc,
        useful_until_utc=end_utc,
    )
