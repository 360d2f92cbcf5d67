"""The stand-in for an athlete's body. All CHOSEN: it shapes the demo, never the training."""

import random
from datetime import date, timedelta

from demo_scenario.hidden import GAIN_MOST, HiddenBody
from demo_scenario.team import Part, default_team
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side

MONDAY = date(2026, 10, 12)
LIBRARY = default_library()
HOLD = LIBRARY.movements["push_up_hold"]
CARRY = LIBRARY.movements["farmer_carry"]
OVERHEAD = LIBRARY.movements["one_arm_overhead_hold"]


def body(part: Part = Part.STEADY, seed: int = 1) -> HiddenBody:
    new = HiddenBody(default_team().part(part), LIBRARY, random.Random(seed))
    new.begin_day(MONDAY)
    return new


def hold_s(one: HiddenBody) -> float:
    return one.capacity(HOLD, load_kg=None, band_rank=1, side=Side.BOTH)


def test_each_set_tires_its_family_more_than_the_others() -> None:
    one = body()
    fresh_hold, fresh_carry = (
        hold_s(one),
        one.capacity(CARRY, load_kg=8, band_rank=1, side=Side.BOTH),
    )
    one.do_set(HOLD, target=20, stop_with=15)
    hold_left = hold_s(one) / fresh_hold
    carry_left = one.capacity(CARRY, load_kg=8, band_rank=1, side=Side.BOTH) / fresh_carry
    assert hold_left < carry_left < 1


def test_rest_days_give_back_what_a_session_took() -> None:
    tired, rested = body(seed=3), body(seed=3)
    for one in (tired, rested):
        for _ in range(12):
            one.do_set(HOLD, target=20, stop_with=15)
    tired.begin_day(MONDAY + timedelta(days=1))
    rested.begin_day(MONDAY + timedelta(days=4))
    assert hold_s(tired) < hold_s(rested)


def test_training_makes_stronger_and_less_so_each_time() -> None:
    one = body()
    start = hold_s(one)
    gains = []
    for _ in range(200):
        before = hold_s(one)
        one.end_exercise(HOLD)
        gains.append(hold_s(one) / before)
    assert gains == sorted(gains, reverse=True)
    assert start < hold_s(one) < start * 2.72**GAIN_MOST * 1.01


def test_heavier_is_shorter() -> None:
    one = body()
    light, heavy = (
        one.capacity(CARRY, load_kg=kg, band_rank=1, side=Side.BOTH) for kg in (8.0, 16.0)
    )
    assert heavy < light / 2


def test_harder_rung_of_a_ladder_is_shorter() -> None:
    one = body()
    keys = [each.key for each in LIBRARY.ladder("push_up_hold")]
    spans = [
        one.capacity(LIBRARY.movements[key], load_kg=None, band_rank=1, side=Side.BOTH)
        for key in keys
    ]
    assert spans == sorted(spans, reverse=True)


def test_weaker_arm_stays_weaker_and_arms_tire_apart() -> None:
    one = body(Part.ONE_WRIST)
    left, right = (
        one.capacity(OVERHEAD, load_kg=6, band_rank=1, side=side)
        for side in (Side.LEFT, Side.RIGHT)
    )
    assert right < left
    for _ in range(5):
        one.do_set(OVERHEAD, target=20, stop_with=15, load_kg=6, side=Side.LEFT)
    assert one.capacity(OVERHEAD, load_kg=6, band_rank=1, side=Side.LEFT) < right


def test_nobody_does_more_than_asked_but_the_over_eager() -> None:
    steady, eager = body(), body(Part.OVER_EAGER)
    target = 15
    assert steady.do_set(HOLD, target=target, stop_with=15).done <= target
    assert eager.do_set(HOLD, target=target, stop_with=15, eager=0.2).done > target


def test_guess_of_what_was_left_is_noisy_and_never_negative() -> None:
    one = body()
    effort = one.do_set(HOLD, target=400, stop_with=0)
    guesses = {one.guess_left(effort, measure=Measure.HOLD_S) for _ in range(20)}
    assert len(guesses) > 5
    assert min(guesses) >= 0


def test_good_and_bad_days_differ_and_a_seed_repeats_them() -> None:
    def days(seed: int) -> list[float]:
        one = body(seed=seed)
        spans = []
        for day in range(5):
            one.begin_day(MONDAY + timedelta(days=day))
            spans.append(hold_s(one))
        return spans

    assert len(set(days(5))) == 5
    assert days(5) == days(5) != days(6)
