"""Where several movements fit, a hold that takes a load comes first for qualities of loaded holds.

CHOSEN: strength endurance and above are rows of loaded holds; in stage 2 the first pair trains
strength endurance and the second muscular endurance.
"""

from typing import Any

import pytest

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Arm, Chain, Direction, Equipment
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import Quality
from scheduler.training.week_places import Place
from scheduler.training.week_ranking import best_of
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import DayLetter, WeekRequest
from tests.training.any_week import MONDAY, MOVEMENTS

LOADED, UNLOADED = "decline_push_up_hold", "incline_push_up_hold"


def chosen(stage: int, pair: int, *, is_light: bool = False, **facts: Any) -> str:
    request = WeekRequest(
        stage=stage,
        week_start=MONDAY,
        session_min=60,
        equipment=frozenset(Equipment),
        plan_week=9,
        **facts,
    )
    shelf = Shelf(request=request, library=default_library(), rulebook=default_rulebook())
    place = Place(
        on=MONDAY,
        letter=DayLetter.A,
        pair=pair,
        direction=Direction.HORIZONTAL_PUSH,
        chain=Chain.CLOSED,
        arm=Arm.STRAIGHT,
        is_light=is_light,
    )
    fitting = [MOVEMENTS[UNLOADED], MOVEMENTS[LOADED]]
    return best_of(fitting, place=place, shelf=shelf, taken=()).key


@pytest.mark.parametrize(
    ("stage", "pair", "key"),
    [(1, 1, UNLOADED), (2, 2, UNLOADED), (2, 1, LOADED), (3, 2, LOADED), (5, 2, LOADED)],
)
def test_hold_that_takes_a_load_comes_first_where_holds_are_loaded(
    stage: int, pair: int, key: str
) -> None:
    assert chosen(stage, pair) == key


def test_light_day_and_first_two_weeks_take_the_easier_hold() -> None:
    assert chosen(2, 1, is_light=True) == UNLOADED
    assert chosen(2, 1, is_first_two_weeks=True) == UNLOADED


def test_rows_of_loaded_holds_are_those_of_strength() -> None:
    rulebook = default_rulebook()
    assert {quality for quality in Quality if rulebook.quality(quality).is_hold_loaded} == {
        Quality.STRENGTH_ENDURANCE,
        Quality.GENERAL_STRENGTH,
        Quality.MAXIMAL_STRENGTH,
    }
