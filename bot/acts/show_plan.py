"""What is next, this week, why, and the session before its time."""

from datetime import timedelta

from bot.acts import pain_picture, record_results, tests_card
from bot.acts.checklist import local_today
from bot.acts.item_facts import sent_items
from bot.acts.send_session import say_nothing_left, send, session_facts, session_taps
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import plan
from bot.wording import session as words
from scheduler.calendar.wall_time import monday_of
from scheduler.pain.red_flags import Stops
from storage.queries import people, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import SessionRecord, SessionState

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
        taps=session_taps(tongue, sessions[0]),
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
    days = [
        plan.DayFacts(
            on=session.on,
            letter=session.letter,
            state=session.state.value,
            movements=tuple(
                turn.house.library.movements[item.movement_key].name
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
    planned = _next(turn, person)
    day = local_today(turn, person)
    if planned is None or (planned.on - day).days > EARLY_MOST_DAYS:
        _say_next(turn, person, athlete)
        return Outcome.ANSWERED
    training.change_session(turn.tx, planned.id, on=day)
    send(turn, person, athlete, planned.id, useful_until=None)
    return Outcome.ANSWERED


def _next(turn: Turn, person: Person) -> SessionRecord | None:
    day = local_today(turn, person)
    coming = training.sessions_between(turn.tx, person.id, first=day, last=day + timedelta(days=14))
    return next((one for one in coming if one.state is SessionState.PLANNED), None)


def _say_next(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Say when the next session comes, or why none does."""
    if pain_picture.picture_of(turn, athlete).stops in STOPS_ALL:
        say_nothing_left(turn, person, athlete)
        return
    tongue = turn.tongue(person)
    planned, weekdays = _next(turn, person), athlete.profile.weekdays
    if planned is not None:
        turn.say(person, plan.next_session(tongue, planned.on, athlete.session_at))
    elif athlete.state is AthleteState.PAUSED and athlete.paused_until is not None:
        turn.say(person, plan.on_a_break(tongue, athlete.paused_until))
    elif athlete.state in NOT_YET_TRAINING:
        coach = people.person(turn.tx, athlete.coach_id)
        turn.say(person, plan.not_started(tongue, coach=coach.name))
    elif athlete.state is AthleteState.TRAINING and weekdays:
        on = monday_of(local_today(turn, person)) + timedelta(days=7 + min(weekdays))
        turn.say(person, plan.next_week(tongue, on, athlete.session_at))
    else:
        turn.say(person, plan.next_session(tongue, None, athlete.session_at))
