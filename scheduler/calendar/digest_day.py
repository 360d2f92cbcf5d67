"""On which days a coach's digest comes, and from which day on it tells: through every change.

One digest begins where the one before it ended, so no day is left out and none is counted twice,
however often the day of the week moves.
"""

from collections.abc import Iterator
from datetime import date, datetime, timedelta
from itertools import pairwise

from scheduler.calendar.values import Due, DueKind, Owed, Timing
from scheduler.calendar.wall_time import due_instant, local_date_of

DAY = timedelta(days=1)
WEEK = timedelta(days=7)
LEAST_GAP = timedelta(days=4)  # [d] ch: less is hardly worth a digest; with a week it makes ten
LONGEST_GAP = timedelta(days=10)  # [d] ch: after a change of day, too
LONGEST_TOLD = timedelta(days=28)  # [d] ch: after a long outage; older weeks are in the record
LONGEST_USEFUL = timedelta(days=12)
"""[d] The longest gap, one day for a changed zone, one for a change of the clock: how far back
what was taken care of must be known."""


def subject_of(person_id: int, on: date) -> str:
    """Name the digest of a day; a changed zone or hour does not make it another one."""
    return f"{person_id}:{on.isoformat()}"


def told_from(*, last_on: date | None, on: date) -> date:
    """Return the first day [date] that the digest of ``on`` tells of; the last is the day before.

    Args:
        last_on: the day of the last digest that was sent, before ``on``; None for the first.
        on: the day of this one.

    Returns:
        Where the last one ended, at most 28 days back; a week back for the first (CH).

    """
    return on - WEEK if last_on is None else max(last_on, on - LONGEST_TOLD)


def digest_days(
    *, timing: Timing, last_on: date | None, moved_at_utc: datetime | None, not_before: date
) -> Iterator[date]:
    """Yield the days of the coming digests, without end.

    Args:
        timing: the coach's zone, day and hour as they are now.
        last_on: the day of the last digest that was sent; None where there was none.
        moved_at_utc: when day or hour were last changed: none comes for an hour before it.
        not_before: where to begin, for who had none yet.

    Yields:
        The coach's day of the week, at least four days after the last one. Where that is more
        than ten days after it, since this week's hour was past when it was moved, one comes in
        between, at the next such hour (CH).

    """
    earliest = not_before if last_on is None else last_on + LEAST_GAP
    first = _first(timing, earliest, moved_at_utc, timing.digest_weekday)
    if last_on is not None and first > last_on + LONGEST_GAP:
        between = _first(timing, earliest, moved_at_utc, None)
        yield between
        first = _first(timing, between + LEAST_GAP, moved_at_utc, timing.digest_weekday)
    while True:
        yield first
        first += WEEK


def digest_dues(
    *, person_id: int, timing: Timing, owed: Owed, since_utc: datetime, until_utc: datetime
) -> Iterator[Due]:
    """Yield the digests that fell due since the last look, or before and still useful.

    Each is of use until the next. What fell due before the coach joined is not owed.
    """
    look_from = max(min(since_utc, until_utc - LONGEST_USEFUL), timing.joined_at_utc)
    days = digest_days(
        timing=timing,
        last_on=owed.last_digest_on,
        moved_at_utc=owed.digest_moved_at_utc,
        not_before=local_date_of(look_from, timing.zone) - DAY,
    )
    for on, following in pairwise(days):
        due_at_utc, end_utc = _instant(timing, on), _instant(timing, following)
        if due_at_utc > until_utc:
            return
        is_new, is_useful = due_at_utc > since_utc, end_utc > until_utc
        if due_at_utc >= timing.joined_at_utc and (is_new or is_useful):
            yield Due(
                person_id=person_id,
                kind=DueKind.DIGEST,
                subject=subject_of(person_id, on),
                local_date=on,
                due_at_utc=due_at_utc,
                useful_until_utc=end_utc,
            )


def _first(timing: Timing, on: date, after_utc: datetime | None, weekday: int | None) -> date:
    """Return the first day from ``on`` whose hour is after an instant, any or one weekday's."""
    if after_utc is not None:
        on = max(on, local_date_of(after_utc, timing.zone) - DAY)
    while True:
        fits = weekday is None or on.weekday() == weekday
        if fits and (after_utc is None or _instant(timing, on) > after_utc):
            return on
        on += DAY


def _instant(timing: Timing, on: date) -> datetime:
    return due_instant(local_date=on, wall_time=timing.digest_at, zone=timing.zone)
