"""Items for one arm only: bare figures are that arm's, and any other arm is asked about.

All figures CHOSEN.
"""

import pytest

from bot.reading.known import KnownItem, KnownSession, ReadingContext
from bot.reading.reply import read
from bot.reading.values import Asked, AssumptionCode, QuestionCode, Recorded
from bot.wording.asking import option_label
from bot.wording.tongue import tongue_of
from scheduler.catalogue.values import Measure, Sides
from scheduler.pain.values import Side
from tests.reading.team import PLACES, ROW, WEDNESDAY

LEFT_ONLY = KnownItem(
    ref="curl",
    number=5,
    names=("Wrist curl",),
    measure=Measure.REPS,
    sets=2,
    target=15,
    load_kg=6,
    sides=Sides.EACH,
    arms=(Side.LEFT,),
)
SESSION = KnownSession(ref="one", day=WEDNESDAY, items=(ROW, LEFT_ONLY))
AT_HAND = ReadingContext(session=SESSION, local_date=WEDNESDAY)


def sets_of(text: str) -> list[tuple[Side, float]]:
    reading = read(text, AT_HAND)
    assert isinstance(reading, Recorded)
    return [(one.side, one.value) for one in reading.items[0].sets]


@pytest.mark.parametrize("text", ["5) L 15 14", "5) 15 14", "5) 15/14", "curl left 15 14"])
def test_figures_for_the_one_arm_asked_are_that_arms(text: str):
    assert sets_of(text) == [(Side.LEFT, 15), (Side.LEFT, 14)]


def test_as_planned_is_the_one_arm_asked():
    assert sets_of("5) as planned") == [(Side.LEFT, 15), (Side.LEFT, 15)]


@pytest.mark.parametrize("text", ["5) R 15 14", "5) L 15 14 R 15 13", "5) 15 14 each side"])
def test_an_arm_that_was_not_asked_is_asked_about(text: str):
    reading = read(text, AT_HAND)
    assert isinstance(reading, Asked)
    assert reading.question is QuestionCode.WHICH_SIDE


def test_the_button_of_a_question_about_arms_shows_the_arms():
    reading = read("3) 8 8 7", AT_HAND)
    assert isinstance(reading, Asked)
    label = option_label(tongue_of("en"), reading.options[0], {"row": ROW})
    assert label == "One-arm row: L 8 8 7, R 8 8 7 reps @ 20 kg"


def test_the_number_decides_over_a_name_with_a_slip():
    reading = read("4) abnd row 30 30 25", PLACES["day"])
    assert isinstance(reading, Recorded)
    assert [item.ref for item in reading.items] == ["carry"]
    assert AssumptionCode.NUMBER_DECIDED in [taken.code for taken in reading.assumptions]


def test_a_number_and_the_clean_name_of_another_item_are_asked_about():
    reading = read("1) press 40 40 38", PLACES["day"])
    assert isinstance(reading, Asked)
    assert reading.question is QuestionCode.WHICH_ITEM


def test_the_number_is_still_narrowed_by_its_own_name():
    reading = read("2) press 8 8 7 3) row L 8 8 7 R 8 8 8", PLACES["day"])
    assert isinstance(reading, Recorded)
    assert [item.ref for item in reading.items] == ["press", "row"]
