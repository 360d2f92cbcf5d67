"""What comes round by itself, every day or every week, by the wall clock."""

from collections.abc import Iterator, Mapping
from datetime import date, datetime, time, timedelta
from typing import NamedTuple

from scheduler.calendar.values import Due, DueKind, Timing
from scheduler.calendar.wall_time import due_instant, local_date_of

DAY = timedelta(days=1)
WEEK = timedelta(days=7)
LONGEST_USEFUL = timedelta(days=9)
"""[d] A week, one day for a changed weekday's zone, one for a change of the clock: how far back
what was taken care of must be known."""


class Round(NamedTuple):
    """When something comes round: ``weekday`` None is every day. It is of use until the next."""

    weekday: int | None
    at: time


def round_of(kind: DueKind, timing: Timing) -> Round:
    """Return when a kind comes round for a person.

    Raises:
        KeyError: for a kind that does not come round by itself.

    """
    rounds: Mapping[DueKind, Round] = {
        DueKind.DIGEST: Round(timing.digest_weekday, timing.digest_at),
        DueKind.WEEK_DRAWING: Round(None, timing.planning_at),
    }
    return rounds[kind]


def recurring_dues(
    kind: DueKind, *, person_id: int, timing: Timing, since_utc: datetime, until_utc: datetime
) -> Iterator[Due]:
    """Yield the rounds of a kind that fell due since the last look, or before and still useful.

    What fell due before the person joined is not owed. The subject of a weekly round is its
    ISO week, of a daily one its date: neither moves with a zone or an hour.
    """
    when = round_of(kind, timing)
    look_back = 2 * DAY if when.weekday is None else LONGEST_USEFUL
    first = max(min(since_utc, until_utc - look_back), timing.joined_at_utc)
    last_date = local_date_of(until_utc, timing.zone)
    for local_date in _dates(local_date_of(first, timing.zone) - DAY, last_date, when.weekday):
        due = _due_on(local_date, kind, when, person_id, timing)
        is_owed = timing.joined_at_utc <= due.due_at_utc <= until_utc
        is_useful = due.useful_until_utc is None or due.useful_until_utc > until_utc
        if is_owed and (due.due_at_utc > since_utc or is_useful):
            yield due


def iso_week_of(local_date: date) -> str:
    """Name the ISO week of a date, such as ``2026-W14``."""
    year, week, _ = local_date.isocalendar()
    return f"{year}-W{week:02d}"


def _due_on(local_date: date, kind: DueKind, when: Round, person_id: int, timing: Timing) -> Due:
    """Build the round of one date; the digest's subject names the coach too."""
    subject = local_date.isoformat() if when.weekday is None else iso_week_of(local_date)
    return Due(
        person_id=person_id,
        kind=kind,
        subject=f"{person_id}:{subject}" if kind is DueKind.DIGEST else subject,
        local_date=local_date,
        due_at_utc=due_instant(local_date=local_date, wall_time=when.at, zone=timing.zone),
        useful_until_utc=_end(local_date, when, timing),
    )


def _end(local_date: date, when: Round, timing: Timing) -> datetime:
    """Return the end of a round: the next one."""
    step = DAY if when.weekday is None else WEEK
    return due_instant(local_date=local_date + step, wall_time=when.at, zone=timing.zone)


def _dates(first: date, last: date, weekday: int | None) -> Iterator[date]:
    """Yield the dates of a span, all or those of one weekday."""
    step = DAY if weekday is None else WEEK
    here = first if weekday is None else first + timedelta(days=(weekday - first.weekday()) % 7)
    while here <= last:
        yield here
        here += step
