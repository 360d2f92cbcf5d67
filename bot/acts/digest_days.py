"""A coach's digests as they stand: the last that was sent, the next, and where one begins."""

from collections.abc import Iterator
from datetime import date, datetime

from bot.acts.coach_dues import CoachDue
from bot.acts.timing import timing_of
from bot.turn import Turn
from scheduler.calendar.digest_day import digest_days, told_from
from scheduler.calendar.values import DueKind
from scheduler.calendar.wall_time import due_instant, local_date_of
from storage.queries import due
from storage.records.people import Person


def note_move(turn: Turn, coach: Person) -> None:
    """Remember that day or hour were changed now: no digest comes for an hour before it."""
    due.take(
        turn.tx,
        person_id=coach.id,
        kind=CoachDue.DIGEST_MOVED,
        subject=turn.now.isoformat(),
        due_at=turn.now,
        now=turn.now,
    )


def moved_at(turn: Turn, coach: Person) -> datetime | None:
    """Return when day or hour were last changed."""
    for _, at in due.sent(turn.tx, person_id=coach.id, kind=CoachDue.DIGEST_MOVED):
        return at
    return None


def last_on(turn: Turn, coach: Person, *, before: date | None = None) -> date | None:
    """Return the day of the last digest that was sent, of all or of those before a day."""
    return next((on for on in _sent_on(turn, coach) if before is None or on < before), None)


def first_of(turn: Turn, coach: Person, on: date) -> date:
    """Return the first day that the digest of ``on`` tells of."""
    return told_from(last_on=last_on(turn, coach, before=on), on=on)


def next_at(turn: Turn, coach: Person) -> datetime:
    """Return when the next digest comes, by the coach's own clock."""
    timing = timing_of(coach)
    days = digest_days(
        timing=timing,
        last_on=last_on(turn, coach),
        moved_at_utc=moved_at(turn, coach),
        not_before=local_date_of(turn.now, timing.zone),
    )
    instants = (
        due_instant(local_date=on, wall_time=coach.digest_at, zone=timing.zone) for on in days
    )
    return next(at for at in instants if at > turn.now).astimezone(timing.zone)


def _sent_on(turn: Turn, coach: Person) -> Iterator[date]:
    """Yield the days of the digests sent, the last first; older ones were named by their week."""
    zone = timing_of(coach).zone
    for subject, due_at in due.sent(turn.tx, person_id=coach.id, kind=DueKind.DIGEST.value):
        named = subject.partition(":")[2]
        yield local_date_of(due_at, zone) if "W" in named else date.fromisoformat(named)
