"""What a standard asks of somebody with other weights, other equipment, an old injury."""

import math

import pytest

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Direction, Equipment
from scheduler.training.endurance_time import CURVES
from scheduler.training.own_standards import asked_of
from scheduler.training.training_reasons import GateReason
from tests.training.athletes import RULEBOOK, athlete, codes

LIBRARY = default_library().movements
STANDARDS = {row.key: row for row in RULEBOOK.standards[1]}
# CHOSEN: leave stage 1, men: carry 60 s at 25 % of 80 kg a hand, overhead hold 30 s at 10 %.


def _asked(key, *, profile=None, held=frozenset()):
    return asked_of(
        STANDARDS[key],
        profile=profile or athlete(),
        movements=LIBRARY,
        held=held,
        rulebook=RULEBOOK,
    )


def test_a_weight_close_above_the_standard_asks_it_as_it_is_written():
    found = _asked("one_arm_overhead_hold", profile=athlete(loads_kg=(6, 8, 12)))
    assert (found.value.load_kg, found.value.target) == (8.0, 30)
    assert found.reasons == ()


def test_a_lighter_weight_is_held_longer_by_the_published_curve():
    found = _asked("one_arm_overhead_hold", profile=athlete(loads_kg=(4, 7)))
    # PUBLISHED freylaw2010, Table 2: exponent of the shoulder -1.83; DERIVED: 30 (7/8)^-1.83.
    seconds = 30 * (7 / 8) ** CURVES[LIBRARY["one_arm_overhead_hold"].limiting_joint].power
    assert (found.value.load_kg, found.value.target) == (7.0, math.ceil(seconds))
    assert codes(found) == [GateReason.EQUIVALENT]


def test_a_heavier_weight_is_held_shorter():
    found = _asked("one_arm_overhead_hold", profile=athlete(loads_kg=(10,)))
    # DERIVED: 30 (10/8)^-1.83 = 19.94, so 20 s.
    assert (found.value.load_kg, found.value.target) == (10.0, 20)


def test_a_weight_out_of_the_fitted_range_is_the_coachs_to_decide():
    found = _asked("carry", profile=athlete(loads_kg=(4,)))
    assert found.value is None
    assert codes(found) == [GateReason.EQUIVALENT_OUT_OF_RANGE]


def test_only_heavier_weights_out_of_range_ask_it_as_it_is_written():
    found = _asked("one_arm_overhead_hold", profile=athlete(loads_kg=(24,)))
    assert (found.value.load_kg, found.value.target) == (8.0, 30)


@pytest.mark.parametrize("key", ["carry", "one_arm_overhead_hold", "hang"])
def test_without_the_equipment_the_coach_decides(key):
    bare = athlete(equipment=frozenset({Equipment.FLOOR}), loads_kg=())
    found = _asked(key, profile=bare)
    assert found.value is None
    assert codes(found) == [GateReason.EQUIPMENT_MISSING]


def test_a_direction_held_after_an_old_injury_is_the_coachs_to_decide():
    found = _asked("one_arm_overhead_hold", held=frozenset({Direction.VERTICAL_PUSH}))
    assert found.value is None
    assert codes(found) == [GateReason.DIRECTION_HELD]
    assert _asked("push_up_hold", held=frozenset({Direction.VERTICAL_PUSH})).value is not None
