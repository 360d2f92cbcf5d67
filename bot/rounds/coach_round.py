"""One coach's round: alerts to tell, alerts to tell again, the weekly digest."""

from collections.abc import Generator, Iterator, Sequence
from contextlib import contextmanager
from datetime import date, datetime, timedelta

from bot.acts import (
    athlete_week,
    digest_days,
    in_force,
    propose_stage,
    review,
    send_digest,
    tell_alerts,
)
from bot.acts.athlete_week import Gathered, OpenTurn
from bot.acts.timing import timing_of
from bot.turn import Turn
from scheduler.calendar.due import due_for
from scheduler.calendar.lateness import Fate, fates_of
from scheduler.calendar.values import Due, DueKind, OpenAlert, Owed
from scheduler.reasons import Decision
from storage.queries import care, due, people
from storage.records.care import Alert
from storage.records.people import Person

HANDLED_FROM = timedelta(days=21)  # [days] ch: behind the last digest that may still be useful


def gather(open_turn: OpenTurn, person_id: int, since: datetime) -> Generator[None, None, Gathered]:
    """Gather what a due digest says in steps, before it is written; nothing where none is due."""
    with open_turn() as turn:
        coach = people.person(turn.tx, person_id)
        on = _digest_due(turn, coach, since) if coach.is_coach else None
    if on is None:
        return athlete_week.NOTHING

    @contextmanager
    def of_coach() -> Iterator[Turn]:
        with open_turn() as turn:
            yield in_force.turn_for(turn, person_id)

    return (yield from athlete_week.gather(of_coach, person_id, on))


def _digest_due(turn: Turn, coach: Person, since: datetime) -> date | None:
    for one, fate in _due(turn, coach, since, alerts=()):
        if one.kind is DueKind.DIGEST and fate.value is not Fate.NOTE:
            return one.local_date
    return None


def go(
    turn: Turn, person_id: int, since: datetime, gathered: Gathered = athlete_week.NOTHING
) -> None:
    """Do what is due for one coach."""
    coach = people.person(turn.tx, person_id)
    if not coach.is_coach:
        return  # since the round began
    turn = in_force.turn_for(turn, coach.id)
    propose_stage.tell_waiting(turn, coach)
    review.tell_waiting(turn, coach)
    alerts = care.open_alerts(turn.tx, coach_id=coach.id)
    for one, fate in _due(turn, coach, since, alerts=alerts):
        _take(turn, coach, one, fate.value, gathered)


def _due(
    turn: Turn, coach: Person, since: datetime, *, alerts: Sequence[Alert]
) -> Sequence[tuple[Due, Decision[Fate]]]:
    timing = timing_of(coach)
    dues = due_for(
        person_id=coach.id,
        timing=timing,
        owed=Owed(
            alerts=tuple(
                OpenAlert(alert_id=alert.id, times_told=alert.times_told, tell_at_utc=alert.tell_at)
                for alert in alerts
                if alert.tell_at is not None
            ),
            recurring=frozenset({DueKind.DIGEST}),
            last_digest_on=digest_days.last_on(turn, coach),
            digest_moved_at_utc=digest_days.moved_at(turn, coach),
        ),
        since_utc=since,
        until_utc=turn.now,
        handled=due.handled_subjects(turn.tx, coach.id, since=turn.now - HANDLED_FROM),
    )
    return fates_of(dues, zone=timing.zone, now_utc=turn.now)


def _take(turn: Turn, coach: Person, one: Due, fate: Fate, gathered: Gathered) -> None:
    is_new = due.take(
        turn.tx,
        person_id=coach.id,
        kind=one.kind.value,
        subject=one.subject,
        due_at=one.due_at_utc,
        now=turn.now,
    )
    if not is_new:
        return
    if fate is Fate.NOTE:
        due.note_outcome(
            turn.tx,
            person_id=coach.id,
            kind=one.kind.value,
            subject=one.subject,
            outcome="too_late",
        )
    elif one.kind is DueKind.ALERT:
        tell_alerts.tell(turn, coach, int(one.subject.split(":")[0]))
    elif one.kind is DueKind.DIGEST:
        send_digest.send_digest(turn, coach, one.local_date, gathered)
