"""What is next, this week, why, and the session before its time."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any

from bot.acts import pain_picture, record_results, tests_card
from bot.acts.checklist import local_today
from bot.acts.item_facts import sent_items
from bot.acts.send_session import say_nothing_left, send, session_facts, session_taps_for
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import absence, plan
from bot.wording import session as words
from bot.wording.movement_names import name_of
from scheduler.calendar.wall_time import monday_of
from scheduler.pain.red_flags import Stops
from storage.queries import care, people, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import OffBecause, SessionRecord, SessionState

COMES_BACK = frozenset(
    {
        OffBecause.UNSAID,
        OffBecause.NO_TIME,
        OffBecause.NO_EQUIPMENT,
        OffBecause.TRAVELLING,
        OffBecause.TOO_LATE,
    }
)
"""Reasons of a session called off today after which it may come all the same."""
EARLY_MOST_DAYS = 2  # [days] ch: further ahead the days between sessions would be lost
STOPS_ALL = {Stops.EVERYTHING, Stops.UPPER_BODY}
NOT_YET_TRAINING = {AthleteState.INVITED, AthleteState.INTAKE, AthleteState.WAITS_FOR_COACH}


def today(turn: Turn, person: Person, _rest: str, _event: Wrote) -> Outcome:
    """Show the open session again, or say when the next one comes."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is not None and not _show_open(turn, person, athlete):
        _say_next(turn, person, athlete)
    return Outcome.COMMAND


def _show_open(turn: Turn, person: Person, athlete: Athlete) -> bool:
    sessions = training.open_sessions(turn.tx, person.id)
    if not sessions:
        return False
    if sessions[0].is_test_day:
        return _show_tests(turn, person, athlete, sessions[0])
    if not sent_items(sessions[0]):
        say_nothing_left(turn, person, athlete)
        return True
    tongue = turn.tongue(person)
    turn.say(
        person,
        words.session(tongue, session_facts(turn, person, athlete, sessions[0])),
        taps=session_taps_for(turn, person, athlete, sessions[0]),
        subject=f"session:{sessions[0].id}",
    )
    return True


def _show_tests(turn: Turn, person: Person, athlete: Athlete, session: SessionRecord) -> bool:
    """Show a day of tests where it stands: its opening before the first test, then the next."""
    if session.has_results:
        record_results.go_on(turn, person, session.id)
        return True
    text = tests_card.opening(turn, person, athlete, session)
    if text:
        turn.say(
            person,
            text,
            taps=tests_card.begin_taps(turn, person, session),
            subject=f"session:{session.id}",
        )
    return bool(text)


def week(turn: Turn, person: Person, _rest: str, _event: Wrote) -> Outcome:
    """Show this week's sessions in a line each."""
    day = local_today(turn, person)
    monday = monday_of(day)
    sessions = training.sessions_between(
        turn.tx, person.id, first=monday, last=monday + timedelta(days=6)
    )
    tongue = turn.tongue(person)
    days = [
        plan.DayFacts(
            on=session.on,
            letter=session.letter,
            state=session.state.value,
            movements=tuple(
                name_of(tongue, turn.house.library.movements[item.movement_key])
                for item in session.items
                if not item.is_left_out
            ),
        )
        for session in sessions
    ]
    turn.say(person, plan.week(turn.tongue(person), days))
    return Outcome.COMMAND


def send_early(turn: Turn, person: Person, athlete: Athlete) -> Outcome:
    """Send the next planned session now, if it is of this week and nothing is open."""
    if _show_open(turn, person, athlete):
        return Outcome.ANSWERED
    early = _early(turn, person, athlete)
    if early is None:
        _say_next(turn, person, athlete)
        return Outcome.ANSWERED
    day = local_today(turn, person)
    training.change_session(
        turn.tx,
        early.id,
        on=day,
        state=SessionState.PLANNED,
        closed_at=None,
        called_off_because=None,
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="session.early",
        athlete_id=person.id,
        actor_id=person.id,
        before={"session": early.id, "on": early.on.isoformat()},
        after={"on": day.isoformat()},
    )
    send(turn, person, athlete, early.id, useful_until=None)
    return Outcome.ANSWERED


def tap_now(turn: Turn, person: Person, _arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The button "session now": looked at again, since the plan may have moved meanwhile."""
    athlete = people.athlete(turn.tx, person.id)
    return Outcome.STALE_TAP if athlete is None else send_early(turn, person, athlete)


def _early(turn: Turn, person: Person, athlete: Athlete) -> SessionRecord | None:
    """Return the session that may be sent now; never a second one on the same day.

    One that was called off today only for want of time or place comes back before a later one.
    """
    if athlete.state is not AthleteState.TRAINING:
        return None
    day = local_today(turn, person)
    todays = training.sessions_between(turn.tx, person.id, first=day, last=day)
    if any(one.state in {SessionState.TRAINED, SessionState.MISSED} for one in todays):
        return None
    called_off = [one for one in todays if one.state is SessionState.CALLED_OFF]
    if any(one.called_off_because not in COMES_BACK for one in called_off):
        return None
    if called_off:
        return called_off[0]
    planned = _next(turn, person)
    is_near = planned is not None and (planned.on - day).days <= EARLY_MOST_DAYS
    return planned if is_near else None


def _now_taps(turn: Turn, person: Person, athlete: Athlete) -> TapRows:
    if _early(turn, person, athlete) is None:
        return ()
    return [[Tap(plan.now_label(turn.tongue(person)), "session.now")]]


def _next(turn: Turn, person: Person) -> SessionRecord | None:
    day = local_today(turn, person)
    coming = training.sessions_between(turn.tx, person.id, first=day, last=day + timedelta(days=14))
    return next((one for one in coming if one.state is SessionState.PLANNED), None)


def _say_next(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Say when the next session comes, or why none does."""
    picture = pain_picture.picture_of(turn, athlete)
    if picture.stops in STOPS_ALL or picture.rested.everything:
        say_nothing_left(turn, person, athlete)
        return
    tongue = turn.tongue(person)
    planned, weekdays = _next(turn, person), athlete.profile.weekdays
    if planned is not None:
        text = plan.next_session(tongue, planned.on, athlete.session_at)
        turn.say(person, text, taps=_now_taps(turn, person, athlete))
    elif athlete.state is AthleteState.PAUSED and athlete.paused_until is not None:
        end = [[Tap(absence.end_label(tongue), "break.end")]]
        turn.say(person, plan.on_a_break(tongue, athlete.paused_until), taps=end)
    elif athlete.state in NOT_YET_TRAINING:
        coach = people.person(turn.tx, athlete.coach_id)
        turn.say(person, plan.not_started(tongue, coach=coach.name))
    elif athlete.state is AthleteState.TRAINING and weekdays:
        on = monday_of(local_today(turn, person)) + timedelta(days=7 + min(weekdays))
        turn.say(person, plan.next_week(tongue, on, athlete.session_at))
    else:
        turn.say(person, plan.next_session(tongue, None, athlete.session_at))


TAPS = {"session.now": tap_now}
