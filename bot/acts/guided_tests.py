"""Guided tests: opened after the intake or by the coach, and when a session becomes a test."""

from datetime import date, datetime, timedelta

from bot.acts import tests_end
from bot.acts.injuries import outcome_of
from bot.acts.tests_card import begin_taps, opening
from bot.acts.tests_course import Course, course_of, due_on, spared
from bot.turn import Turn
from scheduler.reasons import Decision
from scheduler.training.baseline import baseline_plan
from scheduler.training.baseline_course import is_over
from scheduler.training.baseline_values import BaselinePlan, BaselineRequest
from storage.queries import care, first_tests, training
from storage.records.first_tests import Begins, RoundEnd, TestRound, TestsWhy
from storage.records.people import Athlete, Person
from storage.records.training import TEST_DAY, SessionRecord, SessionState
from storage.records.wire import MessageKind

CONVERTED = "tests.sent"
SESSIONS_MOST = 2  # [sessions for each day of tests] ch: then ordinary training goes on
OPEN_FOR = timedelta(weeks=8)  # [weeks] ch: what was to be tested so long ago is asked anew
LIGHTER_WITHIN = timedelta(weeks=16)  # [weeks] ch: a lighter week comes well before
LAST_WITH_STANDARDS = 4  # [stage] the rulebook: the last stage that another follows


def plan_for(turn: Turn, athlete: Athlete, *, why: TestsWhy) -> Decision[BaselinePlan]:
    """Plan the tests of an athlete as of now: stage, equipment, health answers, what hurts.

    First tests look for the stage to begin with. Later ones test the standards of the stage, in
    the first stage those of the next one too, as the first tests did (CH).
    """
    outcome = outcome_of(turn, athlete).value
    may_invert = outcome.may_invert and athlete.profile.may_invert
    request = BaselineRequest(
        profile=athlete.profile.facts,
        intake=outcome.model_copy(update={"may_invert": may_invert}),
        session_min=athlete.profile.minutes,
        rested=spared(turn, athlete),
        stages=() if why.is_first else stages_again(athlete.stage),
    )
    return baseline_plan(request, library=turn.house.library, rulebook=turn.house.rulebook)


def stages_again(stage: int) -> tuple[int, ...]:
    """Return whose standards a later round tests [1-4]."""
    return () if stage == 1 else (min(stage, LAST_WITH_STANDARDS),)


def open_round(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    *,
    why: TestsWhy,
    begins: Begins = Begins.NEXT,
    opened_by_id: int | None = None,
) -> TestRound | None:
    """Open a round of tests; None where nothing can be tested. An open one ends with it."""
    planned = plan_for(turn, athlete, why=why)
    earlier = first_tests.round_open(turn.tx, person.id)
    if earlier is not None:
        first_tests.close_round(turn.tx, earlier.id, at=turn.now, end=RoundEnd.CALLED_OFF)
    found = None
    if planned.value.days:
        found = first_tests.open_round(
            turn.tx,
            athlete_id=person.id,
            why=why,
            begins=begins,
            plan=planned.value,
            reasons=planned.reasons,
            stage_then=athlete.stage,
            at=turn.now,
            opened_by_id=opened_by_id,
        )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="tests.opened" if found else "tests.none",
        athlete_id=person.id,
        actor_id=opened_by_id,
        words=begins.value if opened_by_id is not None else "",
        reasons=planned.reasons,
        after={"round": found.id} if found else {},
    )
    return found


def open_first(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Open the tests that training begins with; True when there are any."""
    has_trained = training.last_trained(turn.tx, person.id) is not None
    why = TestsWhy.RETURN if has_trained else TestsWhy.START
    return open_round(turn, person, athlete, why=why) is not None


def take_over(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    session_id: int,
    *,
    useful_until: datetime | None,
) -> bool:
    """Turn a session that is due into a guided test; False when it goes out as planned."""
    course = course_of(turn, person.id)
    if course is None:
        return False
    if is_over(course.plan, course.attempts) or _is_lapsed(turn, course):
        tests_end.finish(turn, person, athlete, course)
        return False
    session = training.session(turn.tx, session_id)
    if _waits_for_lighter(turn, course, session):
        return False
    due = due_on(turn, athlete, course, on=session.on).value
    if due is None:
        return False
    minutes = next(day.minutes for day in course.plan.days if day.number == due.day)
    _convert(turn, session, minutes=round(minutes))
    first_tests.count_day(turn.tx, course.round.id)
    session = training.session(turn.tx, session_id)
    turn.say(
        person,
        opening(turn, person, athlete, session),
        kind=MessageKind.SESSION,
        taps=begin_taps(turn, person, session),
        subject=f"session:{session_id}",
        useful_until=useful_until,
    )
    return True


def _convert(turn: Turn, session: SessionRecord, *, minutes: int) -> None:
    """Leave the planned movements out: they count as planned, and nothing of them was sent."""
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=CONVERTED,
        athlete_id=session.athlete_id,
        before={"session": session.id, "letter": session.letter, "minutes": session.minutes},
    )
    for item in session.items:
        training.change_item(turn.tx, item.id, is_left_out=True)
    training.change_session(
        turn.tx,
        session.id,
        letter=TEST_DAY,
        minutes=minutes,
        state=SessionState.SENT,
        sent_at=turn.now,
    )


def convert_back(turn: Turn, session: SessionRecord) -> bool:
    """Plan again what a day of tests took the place of; False where that is not known."""
    entries = care.audit_of(turn.tx, session.athlete_id, what=(CONVERTED,))
    was = next((one.before for one in entries if one.before.get("session") == session.id), None)
    if was is None:
        return False
    for item in session.items:
        training.change_item(turn.tx, item.id, is_left_out=False)
    training.change_session(
        turn.tx,
        session.id,
        letter=was["letter"],
        minutes=was["minutes"],
        state=SessionState.PLANNED,
        sent_at=None,
    )
    return True


def _is_lapsed(turn: Turn, course: Course) -> bool:
    """Tell whether a round asked often or long enough: what was found by then stands."""
    opened, now = course.round.opened_at, turn.now
    if course.round.days_sent == 0:
        longest = LIGHTER_WITHIN if course.round.begins is Begins.LIGHTER else OPEN_FOR
        return now - opened > longest
    return course.round.days_sent >= SESSIONS_MOST * len(course.plan.days)


def _waits_for_lighter(turn: Turn, course: Course, session: SessionRecord) -> bool:
    """Tell whether a round that begins in a lighter week has not begun and this is none."""
    if course.round.begins is not Begins.LIGHTER or course.round.days_sent:
        return False
    return not training.week_of(turn.tx, session.week_id).is_lighter


def after_session(turn: Turn, person: Person, athlete: Athlete, session: SessionRecord) -> None:
    """Close the round after its last test, or say what is still to come."""
    course = course_of(turn, person.id)
    if course is None:
        return
    if is_over(course.plan, course.attempts):
        tests_end.finish(turn, person, athlete, course)
        return
    on = next_day(turn, athlete, after=session.on)
    tests_end.say_more_to_come(turn, person, course, next_on=on)


def next_day(turn: Turn, athlete: Athlete, *, after: date) -> date | None:
    """Return the next planned day that may turn into tests; None where none is drawn yet."""
    course = course_of(turn, athlete.person_id)
    if course is None:
        return None
    coming = training.sessions_between(
        turn.tx, athlete.person_id, first=after + timedelta(days=1), last=after + timedelta(days=14)
    )
    return next((one.on for one in coming if _may_be_day(turn, athlete, course, one)), None)


def _may_be_day(turn: Turn, athlete: Athlete, course: Course, session: SessionRecord) -> bool:
    if session.state is not SessionState.PLANNED:
        return False
    return due_on(turn, athlete, course, on=session.on).value is not None
