"""Where an athlete's guided tests stand: the open round, what was tried, what may come next."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.acts.dose_today import profile_on
from bot.acts.pain_picture import picture_of
from bot.turn import Turn
from scheduler.pain.values import LeftOut, Side
from scheduler.reasons import Decision
from scheduler.training.baseline_course import TestsOfDay, arms_open, arms_tested, what_is_due
from scheduler.training.baseline_values import Attempt, BaselinePlan, BaselineTest, Ended
from storage.queries import first_tests
from storage.records.first_tests import AttemptRecord, TestRound
from storage.records.people import Athlete
from storage.records.training import OffBecause, SessionRecord


@dataclass(frozen=True)
class Course:
    """A round of tests and every attempt as it stands."""

    round: TestRound
    records: tuple[AttemptRecord, ...]

    @property
    def plan(self) -> BaselinePlan:
        """What is tested."""
        return self.round.plan

    @property
    def attempts(self) -> tuple[Attempt, ...]:
        """The attempts as the rules want them."""
        return tuple(one.attempt for one in self.records)

    def of(self, key: str) -> tuple[AttemptRecord, ...]:
        """Return the attempts at one test."""
        return tuple(one for one in self.records if one.key == key)

    def test(self, key: str) -> BaselineTest | None:
        """Return a test of the plan."""
        return next((one for one in self.plan.tests if one.key == key), None)


@dataclass(frozen=True)
class Asked:
    """What a session asks next: a test with the arm whose turn it is, or what was left of one."""

    test: BaselineTest
    arm: Side
    is_reserve: bool = False


def course_of(turn: Turn, athlete_id: int) -> Course | None:
    """Return where the athlete's open round stands, if there is one."""
    found = first_tests.round_open(turn.tx, athlete_id)
    return None if found is None else with_attempts(turn, found)


def with_attempts(turn: Turn, found: TestRound) -> Course:
    """Return a round with its attempts."""
    return Course(round=found, records=first_tests.attempts_of(turn.tx, found.id))


def spared(turn: Turn, athlete: Athlete) -> LeftOut:
    """Return what no test may load: what rests, what is eased, and what may not step (CH)."""
    picture = picture_of(turn, athlete)
    return picture.rested | picture.eased | picture.no_step


def due_on(
    turn: Turn, athlete: Athlete, course: Course, *, on: date
) -> Decision[TestsOfDay | None]:
    """Decide what is tested on a day."""
    return what_is_due(
        course.plan,
        course.attempts,
        on=on,
        rested=spared(turn, athlete),
        equipment=profile_on(athlete, on).equipment,
        library=turn.house.library,
    )


def tests_of_session(
    turn: Turn, athlete: Athlete, course: Course, session: SessionRecord
) -> tuple[BaselineTest, ...]:
    """Return the tests of a session, those tried in it and those to come, in order."""
    tried = {one.key for one in course.records if one.session_id == session.id}
    due = due_on(turn, athlete, course, on=session.on).value
    coming = {one.key for one in due.tests} if due is not None else set()
    return tuple(one for one in course.plan.tests if one.key in tried | coming)


def asked_next(
    turn: Turn, athlete: Athlete, course: Course, session: SessionRecord
) -> Asked | None:
    """Derive from the facts what to ask; nothing is remembered apart from them."""
    reserve = _reserve_open(course, session)
    if reserve is not None:
        return reserve
    if session.called_off_because is OffBecause.TESTS_STOPPED:
        return None
    due = due_on(turn, athlete, course, on=session.on).value
    if due is None:
        return None
    begun = [one for one in due.tests if course.of(one.key)]
    test = (begun or list(due.tests))[0]
    return Asked(test=test, arm=arms_open(test, course.attempts)[0])


def _reserve_open(course: Course, session: SessionRecord) -> Asked | None:
    """Return the test whose every arm was tried and of which nobody knows what was left."""
    for test in reversed(course.plan.tests):
        mine = [one for one in course.of(test.key) if one.session_id == session.id]
        if not mine or arms_open(test, course.attempts):
            continue
        if all(_may_have_left(one) for one in mine) and not any(o.is_reserve_asked for o in mine):
            return Asked(test=test, arm=arms_tested(test)[-1], is_reserve=True)
    return None


def _may_have_left(one: AttemptRecord) -> bool:
    return one.ended is Ended.DONE and bool(one.value)


def last_tried(records: Sequence[AttemptRecord], session: SessionRecord) -> AttemptRecord | None:
    """Return the latest attempt of a session."""
    mine = [one for one in records if one.session_id == session.id]
    return max(mine, key=lambda one: (one.at, one.id), default=None)
