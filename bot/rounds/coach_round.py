"""One coach's round: alerts to tell, alerts to tell again, the weekly digest."""

from datetime import datetime, timedelta

from bot.acts import in_force, propose_stage, review, send_digest, tell_alerts
from bot.acts.timing import timing_of
from bot.turn import Turn
from scheduler.calendar.due import due_for
from scheduler.calendar.lateness import Fate, fates_of
from scheduler.calendar.values import DueKind, OpenAlert, Owed
from storage.queries import care, due, people

HANDLED_FROM = timedelta(days=21)  # [days] ch: behind the last digest that may still be useful


def go(turn: Turn, person_id: int, since: datetime) -> None:
    """Do what is due for one coach."""
    coach = people.person(turn.tx, person_id)
    if not coach.is_coach:
        return  # since the round began
    turn = in_force.turn_for(turn, coach.id)
    propose_stage.tell_waiting(turn, coach)
    review.tell_waiting(turn, coach)
    alerts = care.open_alerts(turn.tx, coach_id=coach.id)
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
        ),
        since_utc=since,
        until_utc=turn.now,
        handled=due.handled_subjects(turn.tx, coach.id, since=turn.now - HANDLED_FROM),
    )
    for one, fate in fates_of(dues, zone=timing.zone, now_utc=turn.now):
        is_new = due.take(
            turn.tx,
            person_id=coach.id,
            kind=one.kind.value,
            subject=one.subject,
            due_at=one.due_at_utc,
            now=turn.now,
        )
        if not is_new:
            continue
        if fate.value is Fate.NOTE:
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
            send_digest.send_digest(turn, coach, one.local_date)
