"""Not today: the plan moves and never piles up; breaks pause messages and count neither way."""

import re
from collections.abc import Mapping
from datetime import date, datetime, timedelta
from typing import Any

from bot.acts import close_session, draw_week, pain_ask, pain_picture
from bot.acts.checklist import local_today
from bot.acts.intake_places import dates_in
from bot.acts.still_open import still_open_session
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.values import CantReason, CantToday
from bot.turn import Tap, TapRows, Turn
from bot.wording import absence as words
from bot.wording import plain
from scheduler.calendar.wall_time import monday_of
from scheduler.pain.red_flags import Stops
from storage import buttons
from storage.queries import care, people, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import OffBecause, SessionRecord, SessionState

PAUSE = re.compile(
    r"(?P<number>\d{1,3}|an?|una?)\s*(?P<unit>days?|d[ií]as?|d|weeks?|semanas?|w)\b", re.IGNORECASE
)
ENDS = frozenset({"off", "end", "stop", "over", "fin", "no", "terminar", "acabar"})
PAUSES_DAYS = (7, 14, 21)  # [days] ch: what a tap may ask for; any other length is written
MAY_PAUSE = frozenset({AthleteState.TRAINING, AthleteState.PAUSED})
"""Who waits for the coach keeps waiting: a break that ends would begin the training."""
MAY_LAST = frozenset({CantReason.ILL, CantReason.TRAVELLING})
BREAKS = ("well", "trained", "ill")
BREAK_TOLD_WITHIN = timedelta(days=3)  # [d] ch: by then the return has begun, the careful way
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
        pain_ask.ask_where(turn, person, session_id=session.id)
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
        missed = any(
            one.state is SessionState.MISSED
            for one in training.sessions_between(
                turn.tx, person.id, first=reading.day, last=reading.day
            )
        )
        tongue = turn.tongue(person)
        turn.say(person, words.stays_missed(tongue) if missed else words.nothing_planned(tongue))
        return Outcome.CANT_TODAY
    is_stopped = _was_just_stopped(turn, person)
    call_off(turn, person, found, reading.reason, is_quiet=is_stopped)
    if reading.reason is CantReason.HURTS and not reading.pains and not is_stopped:
        pain_ask.ask_where(turn, person, session_id=found.id)
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
    because = OffBecause(reason.value) if reason else OffBecause.UNSAID
    close_session.call_off(turn, session, because)
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
        taps=[_pause_taps(turn, person)] if reason in MAY_LAST else (),
    )


def pause(turn: Turn, person: Person, rest: str, _event: Wrote) -> Outcome:
    """``/pause 2 weeks``: no messages until then; ``/pause off`` ends it."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.COMMAND
    if athlete.state not in MAY_PAUSE:
        turn.say(person, words.no_break_now(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    if rest.strip().lower() in ENDS:
        return end_pause(turn, person, athlete)
    until = pause_end(rest, local_today(turn, person))
    if until is not None:
        return begin_own_break(turn, person, until=until)
    tongue = turn.tongue(person)
    taps = [_pause_taps(turn, person)]
    if athlete.state is AthleteState.PAUSED and athlete.paused_until is not None:
        turn.say(person, words.paused(tongue, athlete.paused_until), taps=_end_taps(turn, person))
        return Outcome.COMMAND
    turn.say(person, words.how_to_pause(tongue), taps=taps)
    return Outcome.NOT_UNDERSTOOD if rest.strip() else Outcome.COMMAND


def begin_own_break(
    turn: Turn, person: Person, *, until: date, message_id: int | None = None
) -> Outcome:
    """Begin a break that the athlete asked for, and say until when."""
    begin_break(turn, person, until=until, by=person)
    if message_id is not None:
        turn.change(person, message_id, words.noted(turn.tongue(person)))
    turn.say(person, words.paused(turn.tongue(person), until), taps=_end_taps(turn, person))
    return Outcome.COMMAND


def begin_break(turn: Turn, person: Person, *, until: date, by: Person, why: str = "") -> None:
    """Close what is out, send nothing until a day, and record who decided it."""
    close_session.call_off_open(turn, person, OffBecause.BREAK)
    athlete = people.change_athlete(
        turn.tx, person.id, state=AthleteState.PAUSED, paused_until=until
    )
    draw_week.redraw(turn, person, athlete)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="break.begins",
        athlete_id=person.id,
        actor_id=by.id,
        words=why,
        after={"until": until.isoformat()},
    )


def pause_for(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """A length was tapped; where a break runs already, it is counted from today anew."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None or athlete.state not in MAY_PAUSE:
        turn.say(person, words.no_break_now(turn.tongue(person)))
        return Outcome.STALE_TAP
    until = local_today(turn, person) + timedelta(days=int(arguments["days"]))
    return begin_own_break(turn, person, until=until, message_id=event.message_id)


def end_now(turn: Turn, person: Person, _arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The button that ends a break."""
    athlete = people.athlete(turn.tx, person.id)
    return Outcome.STALE_TAP if athlete is None else end_pause(turn, person, athlete)


def _pause_taps(turn: Turn, person: Person) -> list[Tap]:
    tongue = turn.tongue(person)
    return [Tap(words.weeks_label(tongue, days), "pause.for", {"days": days})
            for days in PAUSES_DAYS]  # fmt: skip


def _end_taps(turn: Turn, person: Person) -> TapRows:
    return [[Tap(words.end_label(turn.tongue(person)), "break.end")]]


def end_pause(turn: Turn, person: Person, athlete: Athlete) -> Outcome:
    """Training goes on; how, the days without it decide."""
    if athlete.state is not AthleteState.PAUSED:
        turn.say(person, words.not_paused(turn.tongue(person)))
        return Outcome.COMMAND
    end_break(turn, person, by=person)
    return Outcome.COMMAND


def end_break(turn: Turn, person: Person, *, by: Person, why: str = "") -> None:
    """Let training go on, record who decided it, and ask the athlete how the break was."""
    changed = people.change_athlete(
        turn.tx, person.id, state=AthleteState.TRAINING, paused_until=None
    )
    today = local_today(turn, person)
    if not draw_week.draw(turn, person, changed, monday=monday_of(today)):
        draw_week.redraw(turn, person, changed)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="break.ends",
        athlete_id=person.id,
        actor_id=by.id,
        words=why,
    )
    tongue = turn.tongue(person)
    taps = [
        [
            Tap(
                words.break_label(tongue, how),
                "break.was",
                {"how": how, "ended_at": turn.now.isoformat()},
            )
            for how in BREAKS
        ],
    ]
    turn.say(person, words.pause_over(tongue), taps=taps)


def break_was(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """How the break was decides how the return begins; without an answer the careful way holds."""
    how, ended_at = str(arguments["how"]), arguments.get("ended_at")
    if ended_at and turn.now - datetime.fromisoformat(ended_at) > BREAK_TOLD_WITHIN:
        turn.say(person, plain.old_button(turn.tongue(person)))
        return Outcome.STALE_TAP
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


def pause_end(text: str, today: date) -> date | None:
    """Return the day on which training goes on: "2 weeks", "10 days", "until 12 March"."""
    named = dates_in(text, today=today).dates
    if len(named) == 1:
        days = (named[0] - today).days
    elif found := PAUSE.search(text):
        number = int(found["number"]) if found["number"].isdigit() else 1
        days = number * 7 if found["unit"][0].lower() in {"w", "s"} else number
    else:
        return None
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


TAPS = {
    "cant": ask_reason,
    "cant.because": because,
    "break.was": break_was,
    "break.end": end_now,
    "pause.for": pause_for,
}
