"""The card of a day of tests: one test a message, its figures to tap, then what was left."""

import math
from datetime import time, timedelta

from bot.acts.open_question import open_question
from bot.acts.tests_course import (
    Asked,
    Course,
    asked_next,
    course_of,
    due_on,
    last_tried,
    tests_of_session,
)
from bot.turn import Tap, TapRows, Turn
from bot.wording import guided_tests as words
from bot.wording.dates import weekday
from bot.wording.guided_tests import ArmDone, TestFacts
from bot.wording.movement_names import name_of
from bot.wording.reason_figures import word
from scheduler.calendar.zones import zone_named
from scheduler.catalogue.values import Measure
from scheduler.training.baseline_course import arms_tested
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.baseline_values import BaselineTest, Ended
from storage.queries import people
from storage.records.first_tests import AttemptRecord
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord
from storage.records.wire import MessageKind

FIGURES_MOST = 12  # [buttons] ch: three rows of four; any other figure can be written
FIGURES_A_ROW = 4
STEP_S = 5  # [s] ch: what a tap can tell apart; seconds can be written
ARM_REST = timedelta(seconds=60)  # [s] ch: the other arm is fresh, the trunk and grip are not
HOLD_ANSWERS_S = (0, 5, 10, 15, 20)  # [s] cp: as after a session's last set
REP_ANSWERS = (0, 1, 2, 3, 4)  # [reps] zourdos2016, hackett2017: as after a session's last set
QUESTION = "tests"  # the kind of the open question


def ask(
    turn: Turn,
    person: Person,
    session: SessionRecord,
    *,
    edit_message_id: int | None = None,
    done_key: str | None = None,
) -> bool:
    """Ask what a day of tests still asks; False when it asks nothing more.

    ``done_key``: the test that was just told; its card becomes one line, and the next test comes
    in a message of its own. The other arm and what was left are asked on the same card.
    """
    athlete, course = people.athlete(turn.tx, person.id), course_of(turn, person.id)
    if athlete is None or course is None:
        return False
    tests = tests_of_session(turn, athlete, course, session)
    asked = asked_next(turn, athlete, course, session)
    told = _told(turn, person, course, tests, done_key)
    is_same = asked is not None and asked.test.key == done_key
    if asked is None or not is_same:
        _fold(turn, person, session, told, done_key, edit_message_id)
        edit_message_id = None
        told = ""
    if asked is None:
        return False
    _open(turn, person, session, asked)
    question, taps = _question(turn, person, course, tests, session, asked, is_same=is_same)
    text = f"{told}\n\n{question}" if told else question
    if edit_message_id is not None:
        turn.change(person, edit_message_id, text, taps=taps)
    else:
        turn.say(person, text, kind=MessageKind.QUESTION, taps=taps, subject=_subject(session))
    return True


def _told(
    turn: Turn,
    person: Person,
    course: Course,
    tests: tuple[BaselineTest, ...],
    key: str | None,
) -> str:
    test = course.test(key) if key is not None else None
    if test is None or not course.of(test.key):
        return ""
    return done_line(turn, person, course, tests, test)


def _fold(
    turn: Turn,
    person: Person,
    session: SessionRecord,
    told: str,
    key: str | None,
    edit_message_id: int | None,
) -> None:
    """Turn the card of a test that is told into one line with a way to change it."""
    if not told:
        return
    about = {"session": session.id, "key": key}
    taps = [[Tap(words.change_label(turn.tongue(person)), "tests.change", about)]]
    if edit_message_id is not None:
        turn.change(person, edit_message_id, told, taps=taps)
    else:
        turn.say(person, told, taps=taps, subject=_subject(session))


def told_line(
    turn: Turn, person: Person, athlete: Athlete, session: SessionRecord, key: str
) -> str:
    """Play a test back as it stands now."""
    course = course_of(turn, person.id)
    if course is None:
        return ""
    return _told(turn, person, course, tests_of_session(turn, athlete, course, session), key)


def ask_again(
    turn: Turn,
    person: Person,
    session: SessionRecord,
    test: BaselineTest,
    *,
    message_id: int | None,
) -> None:
    """Ask one test again whose figures were taken back, from its first arm on."""
    athlete, course = people.athlete(turn.tx, person.id), course_of(turn, person.id)
    if athlete is None or course is None:
        return
    tests = tests_of_session(turn, athlete, course, session)
    asked = Asked(test=test, arm=arms_tested(test)[0])
    _open(turn, person, session, asked)
    text = words.best(turn.tongue(person), facts_of(turn, tests, test), arm=asked.arm)
    tongue = turn.tongue(person)
    name = name_of(tongue, turn.house.library.movements[test.movement_key])
    text = words.asked_again(tongue, name=name, question=text)
    taps = test_taps(turn, person, session, asked)
    if message_id is None:
        turn.say(person, text, taps=taps)
    else:
        turn.change(person, message_id, text, taps=taps)


def facts_of(turn: Turn, tests: tuple[BaselineTest, ...], test: BaselineTest) -> TestFacts:
    """Return a test as the wording shows it."""
    keys = [one.key for one in tests]
    return TestFacts(
        number=keys.index(test.key) + 1 if test.key in keys else 1,
        of=max(1, len(keys)),
        movement=turn.house.library.movements[test.movement_key],
        measure=test.measure,
        mark=test.target,
        rung=test.rung,
    )


def arms_done(records: tuple[AttemptRecord, ...]) -> tuple[ArmDone, ...]:
    """Return what each arm did, as the wording shows it."""
    return tuple(
        ArmDone(
            side=one.side,
            value=one.value,
            is_hurt=one.ended is Ended.HURT,
            load_kg=one.rung.load_kg,
        )
        for one in sorted(records, key=lambda one: one.side)
    )


def done_line(
    turn: Turn, person: Person, course: Course, tests: tuple[BaselineTest, ...], test: BaselineTest
) -> str:
    """Play one test back."""
    mine = course.of(test.key)
    reserve = next((one.reserve for one in mine if one.reserve is not None), None)
    facts = facts_of(turn, tests, test)
    return words.done(turn.tongue(person), facts, arms_done(mine), reserve)


def _question(
    turn: Turn,
    person: Person,
    course: Course,
    tests: tuple[BaselineTest, ...],
    session: SessionRecord,
    asked: Asked,
    *,
    is_same: bool,
) -> tuple[str, TapRows]:
    tongue, facts = turn.tongue(person), facts_of(turn, tests, asked.test)
    if asked.is_reserve:
        return words.reserve_question(tongue, facts), _reserve_taps(turn, person, session, asked)
    is_second = bool(course.of(asked.test.key))
    until = _rest_until(turn, person, course, session, is_second=is_second)
    taps = test_taps(turn, person, session, asked)
    if is_second and is_same:
        return words.next_arm(tongue, facts, arm=asked.arm, rest_until=until), taps
    return words.test(tongue, facts, arm=asked.arm, rest_until=until), taps


def _rest_until(
    turn: Turn, person: Person, course: Course, session: SessionRecord, *, is_second: bool
) -> time | None:
    """Return when the next set may begin by the athlete's clock; None where it may now."""
    last = last_tried(course.records, session)
    if last is None or last.ended is Ended.SKIPPED:
        return None
    rest = ARM_REST if is_second else timedelta(seconds=course.plan.days[0].rest_s)
    until = last.at + rest
    if until <= turn.now:
        return None
    local = until.astimezone(zone_named(person.zone))
    whole = local.replace(second=0, microsecond=0)
    return (whole if whole == local else whole + timedelta(minutes=1)).time()


def figures_of(test: BaselineTest) -> list[int]:
    """Return the figures to tap, up to the mark."""
    step = 1 if test.measure is Measure.REPS else STEP_S
    below = list(range(step, test.target, step))
    return [*below[-(FIGURES_MOST - 1) :], test.target]


def test_taps(turn: Turn, person: Person, session: SessionRecord, asked: Asked) -> TapRows:
    """Figures to tap, and the ways out of a test."""
    tongue = turn.tongue(person)
    about = {"session": session.id, "key": asked.test.key, "side": asked.arm.value}
    figures = [
        Tap(str(value), "tests.value", {**about, "value": value})
        for value in figures_of(asked.test)
    ]
    rows = math.ceil(len(figures) / FIGURES_A_ROW)
    return [
        *(figures[row * FIGURES_A_ROW : (row + 1) * FIGURES_A_ROW] for row in range(rows)),
        [
            Tap(words.hurt_label(tongue), "tests.hurt", about),
            Tap(words.skip_label(tongue), "tests.skip", about),
        ],
        [Tap(words.stop_label(tongue), "tests.stop", {"session": session.id})],
    ]


def _reserve_taps(turn: Turn, person: Person, session: SessionRecord, asked: Asked) -> TapRows:
    values = REP_ANSWERS if asked.test.measure is Measure.REPS else HOLD_ANSWERS_S
    about = {"session": session.id, "key": asked.test.key}
    return [
        [
            Tap(
                f"{left}+" if left == values[-1] else str(left),
                "tests.left",
                {**about, "left": left, "top": left == values[-1]},
            )
            for left in values
        ],
        [
            Tap(words.unknown_label(turn.tongue(person)), "tests.left", about),
            Tap(words.change_label(turn.tongue(person)), "tests.change", about),
        ],
    ]


def _open(turn: Turn, person: Person, session: SessionRecord, asked: Asked) -> None:
    open_question(turn, person, QUESTION, {"session": session.id, "key": asked.test.key})


def _subject(session: SessionRecord) -> str:
    return f"session:{session.id}"


def begin_taps(turn: Turn, person: Person, session: SessionRecord) -> TapRows:
    """The buttons under the opening of a day of tests."""
    tongue, about = turn.tongue(person), {"session": session.id}
    return [
        [Tap(words.start_label(tongue), "tests.start", about)],
        [
            Tap(words.cant_label(tongue), "cant", about),
            Tap(words.something_hurts_label(tongue), "pain.where", about),
        ],
    ]


def opening(turn: Turn, person: Person, athlete: Athlete, session: SessionRecord) -> str:
    """Write the opening of a day of tests."""
    course = course_of(turn, person.id)
    if course is None:
        return ""
    tongue, coach = turn.tongue(person), people.person(turn.tx, athlete.coach_id)
    tests = tests_of_session(turn, athlete, course, session)
    library = turn.house.library.movements
    return words.intro(
        tongue,
        weekday=weekday(tongue, session.on),
        minutes=session.minutes or athlete.profile.minutes,
        names=[name_of(tongue, library[one.movement_key]) for one in tests],
        stop=course.plan.stop,
        coach=coach.name,
        is_first=course.round.why.is_first,
        spared=_spared(turn, person, athlete, course, session),
    )


def _spared(
    turn: Turn, person: Person, athlete: Athlete, course: Course, session: SessionRecord
) -> list[str]:
    """Name what is not tested today since something that it loads is looked after."""
    why = due_on(turn, athlete, course, on=session.on).reasons
    keys = [str(one.figures["key"]) for one in why if one.code == BaselineReason.RESTED_NOT_TESTED]
    return list(dict.fromkeys(word(turn.tongue(person), key) for key in keys))
