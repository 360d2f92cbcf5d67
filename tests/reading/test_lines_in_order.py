"""Plain lines for all open items: taken in order when each can only be its own item's.

All figures CHOSEN; what fits what is DERIVED from 0.3 to 2.5 times the target,
what is nearer from the ratio of the mean to the target.
"""

from bot.reading.known import KnownItem, KnownSession, ReadingContext
from bot.reading.reply import read
from bot.reading.values import Asked, AssumptionCode, QuestionCode, Recorded
from bot.wording.asking import OPTION_UNITS, option_label
from bot.wording.assumptions import say_assumptions
from bot.wording.pages import utf16_units
from bot.wording.tongue import tongue_of
from scheduler.catalogue.values import Measure
from tests.reading.team import WEDNESDAY

TONGUE = tongue_of("en")


def item(number: int, measure: Measure, *, sets: int, target: float) -> KnownItem:
    return KnownItem(
        ref=f"i{number}",
        number=number,
        names=(f"Wall reach hold {number}",),
        measure=measure,
        sets=sets,
        target=target,
    )


HOLDS = (
    *(item(n, Measure.HOLD_S, sets=3, target=20) for n in (1, 2, 3, 4)),
    item(5, Measure.HOLD_S, sets=2, target=15),
)
FIVE_LINES = "20 20 18\n20 19 18\n20 20 20\n18 18 18\n15 14"
LONG_AND_FEW = (
    item(1, Measure.HOLD_S, sets=3, target=60),
    item(2, Measure.REPS, sets=3, target=8),
)
NEAR = (item(1, Measure.HOLD_S, sets=3, target=12), item(2, Measure.REPS, sets=3, target=10))


def reading_of(text: str, items: tuple[KnownItem, ...]):
    session = KnownSession(ref="s", day=WEDNESDAY, items=items)
    return read(text, ReadingContext(session=session, local_date=WEDNESDAY))


def test_as_many_lines_as_items_measured_alike_are_taken_in_order_and_said_so():
    reading = reading_of(FIVE_LINES, HOLDS)
    assert isinstance(reading, Recorded)
    assert [[s.value for s in one.sets] for one in reading.items] == [
        [20, 20, 18],
        [20, 19, 18],
        [20, 20, 20],
        [18, 18, 18],
        [15, 14],
    ]
    assert say_assumptions(TONGUE, reading.assumptions) == [
        "<i>Taken line by line, items 1 to 5.</i>"
    ]


def test_lines_that_each_fit_only_their_own_item_are_taken_in_order():
    reading = reading_of("60 55 50\n8 8 7", LONG_AND_FEW)
    assert isinstance(reading, Recorded)
    assert AssumptionCode.LINE_BY_LINE in [taken.code for taken in reading.assumptions]


def test_each_line_may_fit_another_unit_as_long_as_its_own_item_is_nearer():
    # DERIVED: 12 s is 1.0 times its own target and 1.2 times the other; 10 is 1.0 and 0.83
    assert isinstance(reading_of("12 12 12\n10 10 10", NEAR), Recorded)


def test_lines_nearer_to_an_item_in_another_unit_are_asked_with_a_short_button():
    # DERIVED: 10 is 0.83 times its own 12 s, and 1.0 times the 10 repetitions of the other
    reading = reading_of("10 10 10\n12 12 12", NEAR)
    assert isinstance(reading, Asked)
    assert reading.question is QuestionCode.WHICH_ITEM
    known = {one.ref: one for one in NEAR}
    assert option_label(TONGUE, reading.options[0], known) == "Line by line: items 1, 2"


def test_fewer_lines_than_open_items_are_asked_about():
    reading = reading_of("20 20 18\n20 19 18", HOLDS)
    assert isinstance(reading, Asked)


def test_a_line_that_begins_with_a_strange_word_is_never_taken_in_order():
    assert isinstance(reading_of("bench 60 55 50\n8 8 7", LONG_AND_FEW), Asked)


def test_an_open_item_answered_before_needs_no_line():
    items = (HOLDS[0].model_copy(update={"is_reported": True}), *HOLDS[1:3])
    reading = reading_of("20 19 18\n20 20 20", items)
    assert isinstance(reading, Recorded)
    assert [one.ref for one in reading.items] == ["i2", "i3"]
    assert say_assumptions(TONGUE, reading.assumptions) == [
        "<i>Taken line by line, items 2, 3.</i>"
    ]


def test_the_button_for_several_items_is_cut_at_a_word():
    reading = reading_of("1) 20 20 18 16 2) 20 19 18 15 3) 20 20 20 14", HOLDS)
    assert isinstance(reading, Asked)
    known = {one.ref: one for one in HOLDS}
    for option in reading.options:
        label = option_label(TONGUE, option, known)
        assert utf16_units(label) <= OPTION_UNITS
        assert label.endswith("…") or label[-1].isdigit()
        figures = label.removesuffix("…").split(": ")[-1].replace(";", " ").split()
        assert {float(figure) for figure in figures} <= {20, 18, 16, 19, 15, 14}
