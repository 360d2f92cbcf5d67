"""Item numbers without a bracket, a line an item: read where nothing else fits, else asked.

All figures CHOSEN; what fits what is DERIVED from the planned number of sets.
"""

import pytest

from bot.reading.known import KnownItem, KnownSession, ReadingContext
from bot.reading.reply import read
from bot.reading.values import Asked, NotUnderstood, Recorded
from scheduler.catalogue.values import Measure, Sides
from tests.reading.team import WEDNESDAY


def item(number: int, measure: Measure, *, target: float, sides: Sides = Sides.BOTH) -> KnownItem:
    return KnownItem(
        ref=f"i{number}",
        number=number,
        names=(f"Reach {'abcdef'[number]}",),
        measure=measure,
        sets=2,
        target=target,
        sides=sides,
    )


TWO_SETS = (
    item(1, Measure.HOLD_S, target=20),
    *(item(n, Measure.REPS, target=15) for n in (2, 3, 4)),
)
ONE_ARM = (*TWO_SETS, item(5, Measure.REPS, target=15, sides=Sides.EACH))


def reading_of(text: str, items: tuple[KnownItem, ...] = TWO_SETS):
    session = KnownSession(ref="s", day=WEDNESDAY, items=items)
    return read(text, ReadingContext(session=session, local_date=WEDNESDAY, language="es"))


def values(recorded) -> dict[str, list[float]]:
    return {one.ref: [each.value for each in one.sets] for one in recorded.items}


ALL = {"i1": [20, 17], "i2": [15, 14], "i3": [15, 15], "i4": [12, 10]}


@pytest.mark.parametrize(
    "text",
    [
        "1 20 17\n2 15 14\n3 15 15\n4 12 10",
        "1) 20 17\n2) 15 14\n3 15 15\n4 12 10",
        "1  20 17\n2 15 14\n\n3 15 15\n4 12 10\n",
    ],
)
def test_lines_that_begin_with_bare_item_numbers_are_read(text: str):
    reading = reading_of(text)
    assert isinstance(reading, Recorded)
    assert values(reading) == ALL


def test_a_line_alone_is_asked_about():
    reading = reading_of("3 15 14")
    assert isinstance(reading, Asked)
    assert values(reading.options[0]) == {"i3": [15, 14]}


def test_an_item_number_before_an_arm_is_offered_first_and_no_load():
    reading = reading_of("5 dcha 15 12 izq 15 15 con 3kg", ONE_ARM)
    assert isinstance(reading, Asked)
    option = reading.options[0]
    assert isinstance(option, Recorded)
    (first,) = option.items
    assert first.ref == "i5"
    assert {one.load_kg for one in first.sets} == {3.0}


@pytest.mark.parametrize("text", ["2 no la hice", "2 saltado", "2 skipped"])
def test_an_item_number_before_words_alone_is_offered_first(text: str):
    reading = reading_of(text)
    assert isinstance(reading, Asked)
    option = reading.options[0]
    assert isinstance(option, Recorded)
    (first,) = option.items
    assert (first.ref, first.is_skipped) == ("i2", True)


def test_numbers_that_do_not_rise_or_are_no_items_are_left_alone():
    assert isinstance(reading_of("9 15 14\n8 12 10"), NotUnderstood)
    assert isinstance(reading_of("3 15 14\n1 20 17"), NotUnderstood)


def test_a_pain_in_such_a_line_is_kept():
    reading = reading_of("1 20 17\n2 15 14\nmuñeca 4/10")
    assert [one.score for one in reading.pains] == [4]
