"""One athlete's round: the session, the reminder, the morning question, silence, planning."""

from datetime import date, datetime, timedelta

from bot.acts import (
    ask_again,
    begin_again,
    cant_today,
    close_session,
    draw_week,
    in_force,
    morning_question,
    propose_stage,
    remind,
    review,
    send_session,
)
from bot.acts.checklist import local_today
from bot.acts.timing import timing_of
from bot.turn import Turn
from scheduler.calendar.due import due_for
from scheduler.calendar.lateness import Fate, fates_of
from scheduler.calendar.values import (
    Due,
    DueKind,
    MorningAfter,
    Owed,
    PlannedSession,
    Silence,
)
from scheduler.calendar.wall_time import local_date_of, monday_of
from scheduler.calendar.zones import zone_named
from storage.queries import care, due, people, rounds, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import OffBecause, SessionOutline, SessionState

LOOK_BACK = timedelta(days=6)  # [days] ch: what is older was closed long ago
HANDLED_FROM = timedelta(days=12)  # [days] ch: well behind everything that may still be due
STATES = (AthleteState.TRAINING, AthleteState.PAUSED, AthleteState.WAITS_FOR_COACH)
UNANSWERED = {SessionState.SENT, SessionState.MISSED}


def go(turn: Turn, person_id: int, since: datetime) -> None:
    """Do what is due for one athlete."""
    person = people.person(turn.tx, person_id)
    athlete = people.athlete(turn.tx, person_id)
    if athlete is None or athlete.state not in STATES:
        return  # since the round began
    turn = in_force.turn_for(turn, athlete.coach_id)
    if person.chat_id is None or person.is_blocked:
        return
    timing = timing_of(person, athlete)
    dues = due_for(
        person_id=person_id,
        timing=timing,
        owed=_owed(turn, person, athlete),
        since_utc=since,
        until_utc=turn.now,
        handled=due.handled_subjects(turn.tx, person_id, since=turn.now - HANDLED_FROM),
    )
    for one, fate in fates_of(dues, zone=timing.zone, now_utc=turn.now):
        is_new = due.take(
            turn.tx,
            person_id=person_id,
            kind=one.kind.value,
            subject=one.subject,
            due_at=one.due_at_utc,
            now=turn.now,
        )
        if not is_new:
            continue
        if fate.value is Fate.NOTE:
            _note(turn, person, one)
        else:
            # What an earlier due of this round changed is seen by the later ones.
            _do(turn, person, people.athlete(turn.tx, person_id) or athlete, one)


def _owed(turn: Turn, person: Person, athlete: Athlete) -> Owed:
    mornings = tuple(
        MorningAfter(subject=subject, reported_on=on)
        for subject, on in morning_question.owed(turn, person, athlete)
    )
    if athlete.state is AthleteState.PAUSED:
        # A break stops sessions; what hurt yesterday is asked about all the same.
        return Owed(mornings=mornings, recurring=frozenset({DueKind.WEEK_DRAWING}))
    today = local_today(turn, person)
    sessions = rounds.outlines(
        turn.tx, person.id, first=today - LOOK_BACK, last=today + timedelta(days=1)
    )
    return Owed(
        sessions=tuple(
            PlannedSession(
                session_id=session.id,
                local_date=session.on,
                sent_at_utc=session.sent_at,
                is_answered=session.has_answers or session.state is not SessionState.SENT,
            )
            for session in sessions
            if session.state in {SessionState.PLANNED, SessionState.SENT}
        ),
        mornings=mornings,
        silences=_silences(turn, person, sessions),
        reviews=review.owed(turn, person, athlete),
        recurring=frozenset({DueKind.WEEK_DRAWING}),
    )


def _silences(
    turn: Turn, person: Person, sessions: tuple[SessionOutline, ...]
) -> tuple[Silence, ...]:
    """Find the sessions since the last sign of life; the first of them names the silence.

    Whatever arrived from the chat is a sign of life, also what was no result.
    """
    quiet: list[SessionOutline] = []
    sent = [session for session in sessions if session.state is not SessionState.PLANNED]
    for session in sent:
        quiet = [*quiet, session] if session.state in UNANSWERED else []
    if not quiet or person.chat_id is None:
        return ()
    since = quiet[0].on
    heard = people.last_heard(turn.tx, [person.chat_id]).get(person.chat_id)
    seen_from = local_today(turn, person) - LOOK_BACK
    heard_on = local_date_of(heard, zone_named(person.zone)) if heard is not None else None
    if heard_on is not None and heard_on >= seen_from:
        since = max(since, heard_on)
    elif quiet[0] == sent[0] and _is_told_already(turn, person, before=seen_from):
        return ()
    return (Silence(subject=str(quiet[0].id), since=since),)


def _is_told_already(turn: Turn, person: Person, *, before: date) -> bool:
    """Tell whether a silence began earlier than we look: the coach has heard of it, once.

    Else every day that leaves the window would begin a new one, and tell of it at midnight.
    """
    earlier = rounds.outlines(
        turn.tx, person.id, first=before - LOOK_BACK, last=before - timedelta(days=1)
    )
    return bool(earlier) and earlier[-1].state in UNANSWERED


def _do(turn: Turn, person: Person, athlete: Athlete, one: Due) -> None:
    match one.kind:
        case DueKind.SESSION:
            ask_again.before_session(turn, person, athlete)
            send_session.send(
                turn, person, athlete, int(one.subject), useful_until=one.useful_until_utc
            )
        case DueKind.SESSION_REMINDER:
            remind.remind(turn, person, int(one.subject))
        case DueKind.MORNING_QUESTION:
            morning_question.ask(turn, person, athlete)
        case DueKind.SILENCE_CHECK:
            remind.tell_silence(turn, person, athlete)
        case DueKind.REVIEW:
            review.draft(turn, person, athlete, number=int(one.subject))
        case DueKind.WEEK_DRAWING:
            _plan(turn, person, athlete)


def _plan(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Every night: end a break that is over, close what is past, draw, look at the checklist."""
    today = local_today(turn, person)
    if athlete.state is AthleteState.PAUSED:
        if athlete.paused_until is not None and athlete.paused_until <= today:
            cant_today.end_pause(turn, person, athlete)
        return
    _close_past(turn, person, before=today)
    if athlete.state is not AthleteState.TRAINING:
        return
    if begin_again.hold_if_long_away(turn, person, athlete):
        return
    draw_week.draw(turn, person, athlete, monday=monday_of(today))
    propose_stage.propose_if_complete(turn, person, athlete)


def _close_past(turn: Turn, person: Person, *, before: date) -> None:
    for session in training.open_sessions(turn.tx, person.id):
        if session.on < before:
            close_session.close_quietly(turn, session)


def _note(turn: Turn, person: Person, one: Due) -> None:
    """Write down what came too late, so that the coach sees it and nobody is reminded of it."""
    due.note_outcome(
        turn.tx, person_id=person.id, kind=one.kind.value, subject=one.subject, outcome="too_late"
    )
    if one.kind is DueKind.SESSION:
        session = training.session(turn.tx, int(one.subject))
        close_session.call_off(turn, session, OffBecause.TOO_LATE)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=f"late.{one.kind.value}",
        athlete_id=person.id,
        after={"subject": one.subject, "due_at": one.due_at_utc.isoformat()},
    )
