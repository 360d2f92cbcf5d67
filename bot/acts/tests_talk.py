"""What is written on a day of tests: figures, corrections, and pain, which ends a test."""

from dataclasses import dataclass

from bot.acts import hear_pain, pass_on, tests_card, tests_record
from bot.acts.tests_course import Asked, Course, asked_next, course_of, tests_of_session
from bot.acts.tests_reading import read_for_tests
from bot.acts.tests_taps import go_on
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.reading.known import ItemResult, SetResult
from bot.reading.red_flags import RedFlagReading
from bot.reading.values import (
    Asked as AskedBack,
)
from bot.reading.values import (
    Correction,
    CorrectionKind,
    NotUnderstood,
    PainMention,
    Reading,
    Recorded,
    Told,
)
from bot.turn import Tap, Turn
from bot.wording import guided_tests as words
from scheduler.pain.values import Side
from scheduler.training.baseline_course import arms_open
from scheduler.training.baseline_values import BaselineTest, Ended
from scheduler.training.values import ReserveAnswer
from storage import buttons
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord

OTHER = {Side.LEFT: Side.RIGHT, Side.RIGHT: Side.LEFT}


@dataclass(frozen=True)
class _Heard:
    """Everything that one text on a day of tests is heard with."""

    turn: Turn
    person: Person
    athlete: Athlete
    session: SessionRecord
    course: Course
    tests: tuple[BaselineTest, ...]
    asked: Asked
    event: Wrote

    def test(self, ref: str) -> BaselineTest | None:
        return next((one for one in self.tests if one.key == ref), None)


def hear(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    event: Wrote,
    session: SessionRecord,
    *,
    flags: RedFlagReading,
) -> Outcome | None:
    """Hear a text while a test is open; None where it is for the ordinary way to hear.

    Beside a red flag only what is plainly a result is kept, and nothing is asked.
    """
    found = _heard(turn, person, athlete, event, session)
    if found is None:
        return None
    reading = read_for_tests(
        turn, person, event.text, found.course, found.tests, session, found.asked
    )
    pains = hear_pain.meant(reading, flags, event.text)
    hurt = [one for one in pains if one.score != 0]
    if flags.candidates:
        if isinstance(reading, Recorded):
            _store(found, reading.items, pain=_worst(hurt), is_hurt=bool(hurt))
        return None
    if hurt:
        return _hurt(found, reading, hurt)
    outcome = _answer(found, reading)
    if outcome is not None and reading.asks_coach and not flags.asks_about_medicine:
        pass_on.words(turn, person, event)
    return outcome


def _heard(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, session: SessionRecord
) -> _Heard | None:
    course = course_of(turn, person.id)
    if course is None:
        return None
    asked = asked_next(turn, athlete, course, session)
    mine = [one for one in course.records if one.session_id == session.id]
    edited = next((one for one in mine if one.message_id == event.message_id), None)
    if event.is_edit:
        test = course.test(edited.key) if edited is not None else None
        if edited is None or test is None:
            return None
        asked = Asked(test=test, arm=edited.side)
    if asked is None and mine:
        # The last test is told: what comes now may still correct it.
        last = course.test(mine[-1].key)
        asked = Asked(test=last, arm=mine[-1].side, is_reserve=True) if last else None
    if asked is None:
        return None
    tests = tests_of_session(turn, athlete, course, session)
    return _Heard(turn, person, athlete, session, course, tests, asked, event)


def _answer(found: _Heard, reading: Reading) -> Outcome | None:
    """Act on what was read; None where it is no answer to a test."""
    match reading:
        case Recorded() if found.asked.is_reserve and _is_bare(found, reading):
            return _left(found, ReserveAnswer(left=float(_figures(found))))
        case Recorded():
            return _recorded(found, reading)
        case Correction():
            return _corrected(found, reading)
        case AskedBack() if not _is_question_open(found):
            return _ask_which(found, reading)
        case Told() if reading.reserve is not None and found.asked.is_reserve:
            return _left(
                found,
                ReserveAnswer(left=reading.reserve.left, is_at_least=reading.reserve.is_at_least),
            )
        case NotUnderstood() if not _is_question_open(found):
            return _explain(found)
    return None


def _left(found: _Heard, answer: ReserveAnswer) -> Outcome:
    """Keep what was left, and go on."""
    tests_record.set_reserve(found.turn, found.course, found.asked.test.key, answer)
    _go_on(found, found.asked.test.key)
    return Outcome.ANSWERED


def _is_bare(found: _Heard, reading: Recorded) -> bool:
    """A bare figure while what was left is asked answers that, and is no new result."""
    is_figure = _figures(found).isdigit()
    return is_figure and [one.ref for one in reading.items] == [found.asked.test.key]


def _figures(found: _Heard) -> str:
    return found.event.text.strip().rstrip("s+ ")


def _is_question_open(found: _Heard) -> bool:
    """Tell whether the effort or the pain of the day is asked: those have their own readers."""
    question = buttons.open_question(found.turn.tx, chat_id=found.event.chat_id, now=found.turn.now)
    return question is not None and question.kind != tests_card.QUESTION


def _recorded(found: _Heard, reading: Recorded) -> Outcome:
    keys = _store(found, reading.items)
    if not keys:
        return _explain(found)
    _go_on(found, keys[-1])
    return Outcome.CORRECTED if found.event.is_edit else Outcome.RECORDED


def _store(
    found: _Heard, items: tuple[ItemResult, ...], *, pain: int | None = None, is_hurt: bool = False
) -> list[str]:
    """Store every figure that was said; a test that was named again is told anew."""
    keys = []
    for item in items:
        test = found.test(item.ref)
        if test is None:
            continue
        if item.is_skipped and not item.sets:
            _skip(found, test)
        for one in item.sets:
            _store_one(found, test, one, item, pain=pain, is_hurt=is_hurt)
        keys.append(test.key)
    return keys


def _store_one(
    found: _Heard,
    test: BaselineTest,
    one: SetResult,
    item: ItemResult,
    *,
    pain: int | None,
    is_hurt: bool,
) -> None:
    reserve = None
    if item.reserve is not None:
        reserve = ReserveAnswer(left=item.reserve.left, is_at_least=item.reserve.is_at_least)
    side = one.side if test.is_each_side else Side.BOTH
    for arm in (Side.LEFT, Side.RIGHT) if test.is_each_side and side is Side.BOTH else (side,):
        tests_record.record(
            found.turn,
            found.athlete,
            found.session,
            test,
            side=arm,
            ended=Ended.HURT if is_hurt else Ended.DONE,
            value=float(test.target) if one.is_as_planned else one.value,
            load_kg=one.load_kg,
            pain=pain,
            reserve=reserve,
            message_id=found.event.message_id,
        )


def _skip(found: _Heard, test: BaselineTest) -> None:
    for side in arms_open(test, found.course.attempts):
        tests_record.record(
            found.turn,
            found.athlete,
            found.session,
            test,
            side=side,
            ended=Ended.SKIPPED,
            message_id=found.event.message_id,
        )


def _corrected(found: _Heard, reading: Correction) -> Outcome | None:
    match reading.kind:
        case CorrectionKind.SETS:
            items = tuple(
                ItemResult(ref=one.ref, sets=(SetResult(number=1, value=one.new, side=one.side),))
                for one in reading.changes
            )
        case CorrectionKind.ITEMS:
            items = reading.items
        case CorrectionKind.OTHER_ARM:
            items = _other_arm(found, reading.ref)
        case CorrectionKind.UNDO:
            return _undone(found, reading.ref)
    keys = _store(found, items)
    if not keys:
        return None
    _go_on(found, keys[-1])
    return Outcome.CORRECTED


def _other_arm(found: _Heard, ref: str | None) -> tuple[ItemResult, ...]:
    """Move the last figure to the other arm."""
    mine = [one for one in found.course.records if ref is None or one.key == ref]
    last = mine[-1] if mine else None
    if last is None or last.side not in OTHER or last.value is None:
        return ()
    tests_record.take_back(found.turn, found.course, last.key)
    moved = SetResult(number=1, value=last.value, side=OTHER[last.side])
    return (ItemResult(ref=last.key, sets=(moved,)),)


def _undone(found: _Heard, ref: str | None) -> Outcome | None:
    key = ref or (found.course.records[-1].key if found.course.records else None)
    test = found.test(key) if key is not None else None
    if test is None:
        return None
    tests_record.take_back(found.turn, found.course, test.key)
    tests_card.ask_again(found.turn, found.person, found.session, test, message_id=None)
    return Outcome.CORRECTED


def _ask_which(found: _Heard, reading: AskedBack) -> Outcome:
    """Offer the figures that may be meant; none of them is stored by itself."""
    figures = [
        (item.ref, one)
        for option in reading.options
        if isinstance(option, Recorded) and len(option.items) == 1
        for item in option.items
        for one in item.sets
        if len(item.sets) == 1
    ]
    test = found.test(figures[0][0]) if figures else None
    if test is None or any(ref != test.key for ref, _ in figures):
        return _explain(found)
    turn, tongue = found.turn, found.turn.tongue(found.person)
    arm = found.asked.arm if test.key == found.asked.test.key else Side.BOTH
    values = dict.fromkeys(one.value for _, one in figures)
    taps = [
        [
            Tap(
                words.value_label(tongue, test.measure, value),
                "tests.value",
                {"session": found.session.id, "key": test.key, "side": arm.value, "value": value},
            )
        ]
        for value in values
    ]
    facts = tests_card.facts_of(turn, found.tests, test)
    turn.say(found.person, words.which_value(tongue, facts), taps=taps)
    return Outcome.ASKED


def _explain(found: _Heard) -> Outcome:
    facts = tests_card.facts_of(found.turn, found.tests, found.asked.test)
    tongue = found.turn.tongue(found.person)
    found.turn.say(found.person, words.how_to_answer(tongue, facts))
    return Outcome.NOT_UNDERSTOOD


def _hurt(found: _Heard, reading: Reading, hurt: list[PainMention]) -> Outcome:
    """What hurts ends the test that is asked; its figures stay, and the pain is heard in full."""
    turn, person = found.turn, found.person
    keys = []
    if isinstance(reading, Recorded):
        keys = _store(found, reading.items, pain=_worst(hurt), is_hurt=True)
    elif not found.asked.is_reserve:
        tests_record.record(
            turn,
            found.athlete,
            found.session,
            found.asked.test,
            side=found.asked.arm,
            ended=Ended.HURT,
            pain=_worst(hurt),
            message_id=found.event.message_id,
        )
        keys = [found.asked.test.key]
    for key in keys:
        line = tests_card.told_line(turn, person, found.athlete, found.session, key)
        turn.say(person, line)
    hear_pain.hear(turn, person, found.athlete, hurt, found.event, None)
    return Outcome.SAFETY


def _worst(hurt: list[PainMention]) -> int | None:
    return max((one.score for one in hurt if one.score is not None), default=None)


def _go_on(found: _Heard, key: str) -> None:
    go_on(found.turn, found.person, found.session.id, edit=None, done_key=key)
