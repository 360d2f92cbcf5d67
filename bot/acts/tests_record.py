"""One arm's attempt at a test: stored, corrected, taken back; the session counts as trained."""

from bot.acts.pain_picture import new_key, record_event, regions_loaded_by
from bot.acts.tests_course import Course, course_of, tests_of_session
from bot.turn import Turn
from scheduler.pain.events import SessionTrained
from scheduler.pain.values import Side
from scheduler.training.baseline_values import BaselineTest, Ended
from scheduler.training.values import ReserveAnswer, Rung
from storage.queries import first_tests, training
from storage.records.people import Athlete
from storage.records.training import SessionRecord, SessionState


def record(
    turn: Turn,
    athlete: Athlete,
    session: SessionRecord,
    test: BaselineTest,
    *,
    side: Side,
    ended: Ended,
    value: float | None = None,
    load_kg: float | None = None,
    pain: int | None = None,
    why: str = "",
    reserve: ReserveAnswer | None = None,
    message_id: int | None = None,
) -> None:
    """Store what one arm did, in place of what was said of it before."""
    course = course_of(turn, athlete.person_id)
    if course is None:
        return
    old = [one for one in course.of(test.key) if side in {one.side, Side.BOTH}]
    if old:
        first_tests.take_back_attempts(turn.tx, [one.id for one in old], at=turn.now)
    rung = test.rung if load_kg in {None, test.rung.load_kg} else Rung(load_kg=load_kg)
    first_tests.add_attempt(
        turn.tx,
        round_id=course.round.id,
        athlete_id=athlete.person_id,
        session_id=old[0].session_id if old else session.id,
        key=test.key,
        movement_key=test.movement_key,
        measure=test.measure,
        side=side,
        on=old[0].on if old else session.on,
        ended=ended,
        why=why,
        value=value,
        rung=rung,
        pain=pain,
        reserve=reserve,
        is_reserve_asked=reserve is not None,
        message_id=message_id,
        at=turn.now,
    )
    turn.tested.pop(athlete.person_id, None)
    if ended is not Ended.SKIPPED and session.trained_at is None:
        _count_as_trained(turn, athlete, session, course)


def _count_as_trained(turn: Turn, athlete: Athlete, session: SessionRecord, course: Course) -> None:
    """A day of tests is a day of training, for the gap, the record and the pain fold alike."""
    facts = {"state": SessionState.TRAINED, "trained_at": turn.now, "closed_at": None}
    training.change_session(turn.tx, session.id, **facts)
    library = turn.house.library.movements
    tests = tests_of_session(turn, athlete, course, session)
    event = SessionTrained(
        key=new_key(turn, athlete.person_id),
        at_utc=turn.now,
        loaded=regions_loaded_by([library[one.movement_key] for one in tests]),
    )
    record_event(turn, athlete.person_id, event, session_id=session.id)


def set_reserve(turn: Turn, course: Course, key: str, answer: ReserveAnswer | None) -> None:
    """Store what was left at the end of a test; None where the athlete cannot tell."""
    ids = [one.id for one in course.of(key)]
    first_tests.change_attempts(turn.tx, ids, reserve=answer, is_reserve_asked=True)
    turn.tested.pop(course.round.athlete_id, None)


def take_back(turn: Turn, course: Course, key: str) -> None:
    """Nothing is told of a test any more, so that it is asked again."""
    ids = [one.id for one in course.of(key)]
    if ids:
        first_tests.take_back_attempts(turn.tx, ids, at=turn.now)
    turn.tested.pop(course.round.athlete_id, None)
