"""A tested set later on: the best of first doses, a look at a full effort, a change by chance."""

import math
from datetime import timedelta

import pytest

from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side
from scheduler.training.baseline_values import TestedSet
from scheduler.training.tested_sets import best_of_tests, change_between, observe_tested
from scheduler.training.typical_error import detectable_change
from scheduler.training.values import NO_RESISTANCE, ReserveAnswer, Rung
from tests.training.athletes import MONDAY, OVERHEAD_HOLD, PUSH_UP_HOLD, RULEBOOK

LATER = MONDAY + timedelta(days=28)
NONE_LEFT = ReserveAnswer(left=0)


def a_test(value, *, on=MONDAY, side=Side.BOTH, reserve=NONE_LEFT, key="push_up_hold", kg=None):
    return TestedSet(
        on=on,
        movement_key=key,
        measure=Measure.HOLD_S,
        side=side,
        value=value,
        rung=Rung(load_kg=kg) if kg else NO_RESISTANCE,
        reserve=reserve,
    )


def test_the_latest_test_of_the_weaker_arm_is_the_best():
    sets = [
        a_test(50, side=Side.LEFT),
        a_test(30, side=Side.RIGHT),
        a_test(45, on=LATER, side=Side.LEFT),
        a_test(40, on=LATER, side=Side.RIGHT),
    ]
    best = best_of_tests(sets, movement_key="push_up_hold")
    assert best is not None
    assert best.value == 40
    assert best_of_tests(sets, movement_key="pike_hold") is None
    assert best_of_tests([a_test(0)], movement_key="push_up_hold") is None


def look(one, *, movement=PUSH_UP_HOLD, arm=Side.BOTH, kg=1.0):
    return observe_tested(
        one, movement=movement, arm=arm, decrement=0.8, body_mass_kg=80, reference_kg=kg
    )


def test_a_test_is_a_look_at_the_last_of_several_sets_with_what_was_left():
    # CHOSEN prior of 0.8; DERIVED 0.8 * (40 + 10), and 10 s in reserve are two taps of 5 s
    found = look(a_test(40, reserve=ReserveAnswer(left=10)))
    assert (found.value, found.reserve, found.is_at_least) == (40, 2, False)


@pytest.mark.parametrize("answer", [None, ReserveAnswer(left=20, is_at_least=True)])
def test_without_an_answer_or_with_the_top_one_it_says_at_least(answer):
    assert look(a_test(40, reserve=answer)).is_at_least


def test_an_arm_is_looked_at_by_its_own_test_only():
    left = a_test(30, side=Side.LEFT, key="one_arm_overhead_hold", kg=10.0)
    assert look(left, movement=OVERHEAD_HOLD, arm=Side.LEFT, kg=10.0).value == 24
    assert look(left, movement=OVERHEAD_HOLD, arm=Side.RIGHT, kg=10.0) is None


def test_two_tests_differ_really_beyond_the_published_detectable_change():
    # PUBLISHED hopkins2000: 1.96 sqrt(2) SEM of two single looks, here on the log scale of the
    # CHOSEN noise at failure
    needed = math.exp(detectable_change(error=RULEBOOK.capacity.noise_at_failure.value))
    over, under = 40 * needed * 1.001, 40 * needed * 0.999
    found = [
        change_between(a_test(40), a_test(now, on=LATER), rulebook=RULEBOOK)
        for now in (over, under)
    ]
    assert [one.value for one in found if one is not None] == [True, False]


def test_what_cannot_be_compared_is_not():
    bound = ReserveAnswer(left=20, is_at_least=True)
    assert change_between(a_test(40), a_test(80, reserve=bound), rulebook=RULEBOOK) is None
    assert change_between(a_test(40), a_test(80, reserve=None), rulebook=RULEBOOK) is None
    assert change_between(a_test(40, kg=8.0), a_test(80, kg=10.0), rulebook=RULEBOOK) is None
    left, right = a_test(40, side=Side.LEFT), a_test(80, side=Side.RIGHT)
    assert change_between(left, right, rulebook=RULEBOOK) is None
