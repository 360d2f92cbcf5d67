"""Not today: the plan moves and never piles up; breaks pause messages and count neither way."""

import re
from collections.abc import Mapping
from datetime import date, timedelta
from typing import Any

from bot.acts import close_session, draw_week, pain_picture, pain_talk
from bot.acts.checklist import local_today
from bot.acts.still_open import still_open_session
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.values import CantReason, CantToday
from bot.turn import Tap, TapRows, Turn
from bot.wording import absence as words
from scheduler.calendar.wall_time import monday_of
from scheduler.pain.red_flags import Stops
from storage import buttons
from storage.queries import care, people, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import SessionRecord, SessionState

PAUSE = re.compile(r"(\d{1,2})\s*(d|days?|d[ií]as?|w|weeks?|semanas?)\b", re.IGNORECASE)
BREAKS = ("well", "trained", "ill")
LONGEST_PAUSE_WEEKS = 26  # [weeks] ch: a longer break is a new beginning, to be talked over


def ask_reason(turn: Turn, person: Person, arguments: Mapping[str, Any], _: Tapped) -> Outcome:
    """The button: ask why, by buttons."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    tongue = turn.tongue(person)
    turn.say(person, words.why_not(tongue), taps=_reason_taps(turn, person, session))
    return Outcome.ANSWERED


def _reason_taps(turn: Turn, person: Person, session: SessionRecord) -> TapRows:
    tongue = turn.tongue(person)
    return [
        [
            Tap(
                words.reason_label(tongue, reason),
                "cant.because",
                {"session": session.id, "reason": reason.value},
            )
        ]
        for reason in CantReason
    ]


def because(turn: Turn, person: Person, arguments: Mapping[str, Any], _: Tapped) -> Outcome:
    """The reason was tapped."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    reason = CantReason(arguments["reason"])
    call_off(turn, person, session, reason)
    if reason is CantReason.HURTS:
        pain_talk.ask_where(turn, person, session_id=session.id)
    return Outcome.CANT_TODAY


def said(
    turn: Turn,
    person: Person,
    reading: CantToday,
    session: SessionRecord | None,
) -> Outcome:
    """It was written; without a reason it is asked once, and the session is off either way."""
    found = session if session is not None and session.on == reading.day else None
    found = found or _planned_on(turn, person, reading.day) or session
    if found is None:
        turn.say(person, words.nothing_planned(turn.tongue(person)))
        return Outcome.CANT_TODAY
    is_stopped = _was_just_stopped(turn, person)
    call_off(turn, person, found, reading.reason, is_quiet=is_stopped)
    if reading.reason is CantReason.HURTS and not reading.pains and not is_stopped:
        pain_talk.ask_where(turn, person, session_id=found.id)
    return Outcome.CANT_TODAY


def _was_just_stopped(turn: Turn, person: Person) -> bool:
    """Tell whether this same message stopped all training: then that is the last word said."""
    athlete = people.athlete(turn.tx, person.id)
    flags = pain_picture.picture_of(turn, athlete).flags if athlete else ()
    stops_all = {Stops.EVERYTHING, Stops.UPPER_BODY}
    return any(one.since_utc == turn.now and one.stops in stops_all for one in flags)


def call_off(
    turn: Turn,
    person: Person,
    session: SessionRecord,
    reason: CantReason | None,
    *,
    is_quiet: bool = False,
) -> None:
    """Call a session off; the next one stays where it is, so nothing piles up."""
    has_results = any(item.sets for item in session.items)
    training.change_session(
        turn.tx,
        session.id,
        state=SessionState.TRAINED if has_results else SessionState.CALLED_OFF,
        closed_at=turn.now,
        called_off_because=reason.value if reason else "",
    )
    if reason in {CantReason.ILL, CantReason.TRAVELLING}:
        people.change_athlete(turn.tx, person.id, absence_reason=reason.value)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="session.called_off",
        athlete_id=person.id,
        actor_id=person.id,
        words=reason.value if reason else "",
        before={"session": session.id},
    )
    if person.chat_id is not None:
        buttons.close_question(turn.tx, person.chat_id)
    if is_quiet:
        return
    turn.say(
        person,
        words.called_off(
            turn.tongue(person), reason, next_on=_next_planned(turn, person, session.on)
        ),
    )


def pause(turn: Turn, person: Person, rest: str, _event: Wrote) -> Outcome:
    """``/pause 2 weeks``: no messages until then; ``/pause off`` ends it."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.COMMAND
    today = local_today(turn, person)
    if rest.strip().lower() in {"off", "end", "stop", "fin"} or (
        not rest and athlete.state is AthleteState.PAUSED
    ):
        return end_pause(turn, person, athlete)
    found = PAUSE.search(rest)
    until = _pause_end(found, today) if found else None
    if until is None:
        turn.say(person, words.how_to_pause(turn.tongue(person)))
        return Outcome.COMMAND
    _close_for_break(turn, person)
    people.change_athlete(turn.tx, person.id, state=AthleteState.PAUSED, paused_until=until)
    draw_week.redraw(turn, person, people.athlete(turn.tx, person.id) or athlete)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="break.begins",
        athlete_id=person.id,
        actor_id=person.id,
        after={"until": until.isoformat()},
    )
    turn.say(person, words.paused(turn.tongue(person), until))
    return Outcome.COMMAND


def _close_for_break(turn: Turn, person: Person) -> None:
    """Close what is out: a break counts neither as trained nor as missed."""
    for session in training.open_sessions(turn.tx, person.id):
        if any(item.sets for item in session.items):
            close_session.close_quietly(turn, session)
            continue
        training.change_session(
            turn.tx,
            session.id,
            state=SessionState.CALLED_OFF,
            closed_at=turn.now,
            called_off_because="break",
        )


def end_pause(turn: Turn, person: Person, athlete: Athlete) -> Outcome:
    """Training goes on; how, the days without it decide."""
    if athlete.state is not AthleteState.PAUSED:
        turn.say(person, words.not_paused(turn.tongue(person)))
        return Outcome.COMMAND
    changed = people.change_athlete(
        turn.tx, person.id, state=AthleteState.TRAINING, paused_until=None
    )
    today = local_today(turn, person)
    if not draw_week.draw(turn, person, changed, monday=monday_of(today)):
        draw_week.redraw(turn, person, changed)
    care.write_audit(
        turn.tx, at=turn.now, what="break.ends", athlete_id=person.id, actor_id=person.id
    )
    tongue = turn.tongue(person)
    taps = [
        [Tap(words.break_label(tongue, how), "break.was", {"how": how}) for how in BREAKS],
    ]
    turn.say(person, words.pause_over(tongue), taps=taps)
    return Outcome.COMMAND


def break_was(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """How the break was decides how the return begins; without an answer the careful way holds."""
    how = str(arguments["how"])
    athlete = people.change_athlete(
        turn.tx, person.id, absence_reason="ill" if how == "ill" else "travelling"
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="break.was",
        athlete_id=person.id,
        actor_id=person.id,
        words=how,
    )
    draw_week.redraw(turn, person, athlete)
    text = words.break_noted(turn.tongue(person), how)
    turn.answer_tap(person, event.message_id, text)
    return Outcome.ANSWERED


def _pause_end(found: re.Match[str], today: date) -> date | None:
    number = int(found.group(1))
    days = number * 7 if found.group(2).lower().startswith(("w", "s")) else number
    return today + timedelta(days=days) if 0 < days <= LONGEST_PAUSE_WEEKS * 7 else None


def _planned_on(turn: Turn, person: Person, day: date) -> SessionRecord | None:
    sessions = training.sessions_between(turn.tx, person.id, first=day, last=day)
    open_states = {SessionState.PLANNED, SessionState.SENT}
    return next((one for one in sessions if one.state in open_states), None)


def _next_planned(turn: Turn, person: Person, after: date) -> date | None:
    sessions = training.sessions_between(
        turn.tx, person.id, first=after + timedelta(days=1), last=after + timedelta(days=10)
    )
    planned = [one.on for one in sessions if one.state is SessionState.PLANNED]
    return planned[0] if planned else None


TAPS = {"cant": ask_reason, "cant.because": because, "break.was": break_was}
