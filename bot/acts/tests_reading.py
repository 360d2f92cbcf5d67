"""What the reader knows on a day of tests: each test as an item of one set."""

from collections.abc import Sequence

from bot.acts.checklist import local_today
from bot.acts.tests_course import Asked, Course, last_tried
from bot.reading.known import (
    Estimate,
    ItemResult,
    KnownItem,
    KnownSession,
    ReadingContext,
    SetResult,
)
from bot.reading.reply import read
from bot.reading.values import Reading, Recorded
from bot.turn import Turn
from bot.wording.movement_names import names_to_read
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Sides
from scheduler.pain.values import Side
from scheduler.training.baseline_course import arms_tested
from scheduler.training.baseline_values import BaselineTest
from storage.records.people import Person
from storage.records.training import SessionRecord

ANY_SHARE = 3.0
"""ch: the reader asks about less than a third of a target; the mark of a test is no plan, so a
third of it is shown to the reader, and a tenth of the mark is believed."""
ANY_SPREAD_LOG = 0.35  # [log units] ch: as where nothing is known of an athlete


def read_for_tests(
    turn: Turn,
    person: Person,
    text: str,
    course: Course,
    tests: Sequence[BaselineTest],
    session: SessionRecord,
    asked: Asked,
) -> Reading:
    """Read a text with both arms open, and with the arm that is asked where that says more."""
    reading = read(text, _context(turn, person, course, tests, session, asked, arm=None))
    if isinstance(reading, Recorded) or not asked.test.is_each_side:
        return reading
    one_arm = read(text, _context(turn, person, course, tests, session, asked, arm=asked.arm))
    return one_arm if isinstance(one_arm, Recorded) else reading


def _context(
    turn: Turn,
    person: Person,
    course: Course,
    tests: Sequence[BaselineTest],
    session: SessionRecord,
    asked: Asked,
    *,
    arm: Side | None,
) -> ReadingContext:
    tongue = turn.tongue(person)
    items = tuple(
        _item(turn, tongue, test, number, arm=arm if test.key == asked.test.key else None)
        for number, test in enumerate(tests, start=1)
    )
    return ReadingContext(
        session=KnownSession(ref=str(session.id), day=session.on, items=items),
        asked_ref=asked.test.key,
        last=_last(course, session),
        decimal_mark="," if tongue.decimal_mark == "," else ".",
        unit=tongue.units,
        language=person.language,
        local_date=local_today(turn, person),
    )


def _item(
    turn: Turn, tongue: Tongue, test: BaselineTest, number: int, *, arm: Side | None
) -> KnownItem:
    movement = turn.house.library.movements[test.movement_key]
    arms = arms_tested(test) if arm is None else (arm,)
    return KnownItem(
        ref=test.key,
        number=number,
        names=names_to_read(tongue, movement),
        measure=test.measure,
        sets=1,
        target=max(1.0, test.target / ANY_SHARE),
        load_kg=test.rung.load_kg,
        sides=Sides.EACH if test.is_each_side else Sides.BOTH,
        arms=arms if test.is_each_side else (Side.LEFT, Side.RIGHT),
        estimate=Estimate(likely=test.target, spread_log=ANY_SPREAD_LOG),
    )


def _last(course: Course, session: SessionRecord) -> tuple[ItemResult, ...]:
    """Return what was told last, so that a correction finds it."""
    last = last_tried(course.records, session)
    if last is None:
        return ()
    sets = tuple(
        SetResult(number=1, value=one.value, side=one.side)
        for one in course.of(last.key)
        if one.value is not None
    )
    return (ItemResult(ref=last.key, sets=sets),) if sets else ()
