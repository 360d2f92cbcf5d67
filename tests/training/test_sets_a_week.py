"""Sets a direction a week and lighter weeks: COMMON PRACTICE and CHOSEN numbers."""

import pytest

from scheduler.training.values import Quality
from scheduler.training.volume import (
    LighterSignals,
    WeekKind,
    is_after_missed_weeks,
    is_reserve_falling,
    lighter_sets,
    lighter_week,
    weekly_sets,
)
from tests.training.athletes import PUSH_UP_HOLD, RULEBOOK, codes, done, dose, left

ORDINARY = WeekKind.ORDINARY
CALM = LighterSignals()


def sets(wanted, *, stage=1, week=8, last=None, is_after_misses=False):
    return weekly_sets(
        wanted=wanted,
        stage=stage,
        week_of_training=week,
        last_ordinary=last,
        is_after_misses=is_after_misses,
        rulebook=RULEBOOK,
    )


@pytest.mark.parametrize(
    ("stage", "most"),
    # COMMON PRACTICE: 4-6 sets in stages 1-2, 6-10 in 3-4, 4-8 in 5
    [(1, 6), (2, 6), (3, 10), (4, 10), (5, 8)],
)
def test_the_upper_bound_of_the_stage_always_holds(stage, most):
    decision = sets(30, stage=stage)
    assert decision.value == most
    assert codes(decision)[0] == "volume.upper_bound"


def test_from_week_three_a_direction_grows_by_two_sets_at_most():
    # COMMON PRACTICE; DERIVED 6 + 2
    assert sets(10, stage=3, week=3, last=6).value == 8
    assert sets(10, stage=3, week=2, last=6).value == 10
    assert sets(10, stage=3, week=3, last=None).value == 10


def test_fewer_sets_than_the_lower_bound_are_allowed_and_named():
    decision = sets(2)
    assert (decision.value, codes(decision)) == (2, ["volume.lower_bound"])


def test_two_weeks_with_half_the_items_missed_cut_a_fifth_of_the_sets():
    # CHOSEN; DERIVED 6 less 20 % is 4.8, rounded down
    assert is_after_missed_weeks([0.1, 0.5, 0.6], rulebook=RULEBOOK)
    assert not is_after_missed_weeks([0.5, 0.4], rulebook=RULEBOOK)
    assert not is_after_missed_weeks([0.9], rulebook=RULEBOOK)
    assert sets(6, is_after_misses=True).value == 4


@pytest.mark.parametrize(("stage", "every"), [(1, 6), (2, 6), (3, 5), (4, 4), (5, 4)])
def test_every_sixth_fifth_or_fourth_week_is_lighter(stage, every):
    # COMMON PRACTICE
    def is_due(ordinary_weeks):
        past = [WeekKind.LIGHTER] + [ORDINARY] * ordinary_weeks
        return lighter_week(past=past, stage=stage, signals=CALM, rulebook=RULEBOOK).value

    assert next(weeks for weeks in range(8) if is_due(weeks)) == every - 1


@pytest.mark.parametrize("kind", [WeekKind.MISSED, WeekKind.RETURNING])
def test_a_missed_week_counts_as_a_lighter_one(kind):
    past = [ORDINARY] * 4 + [kind] + [ORDINARY] * 2
    assert not lighter_week(past=past, stage=1, signals=CALM, rulebook=RULEBOOK).value


@pytest.mark.parametrize(
    ("signals", "is_due"),
    [
        (LighterSignals(is_reserve_falling=True, misses=2), True),
        (LighterSignals(is_reserve_falling=True, is_sleep_or_mood_poor=True), True),
        (LighterSignals(misses=2, is_sleep_or_mood_poor=True), True),
        (LighterSignals(is_reserve_falling=True, misses=1), False),
        (LighterSignals(is_sleep_or_mood_poor=True), False),
    ],
)
def test_two_of_three_signals_make_the_week_lighter(signals, is_due):
    past = [WeekKind.LIGHTER, ORDINARY]
    decision = lighter_week(past=past, stage=1, signals=signals, rulebook=RULEBOOK)
    assert decision.value is is_due


def test_no_lighter_week_follows_straight_on_another():
    signals = LighterSignals(is_reserve_falling=True, misses=5)
    decision = lighter_week(
        past=[ORDINARY, WeekKind.LIGHTER], stage=4, signals=signals, rulebook=RULEBOOK
    )
    assert (decision.value, codes(decision)) == (False, ["volume.missed_week_counts"])


@pytest.mark.parametrize(("ordinary", "lighter"), [(6, 3), (5, 3), (4, 2), (3, 1), (1, 1)])
def test_a_lighter_week_leaves_three_fifths_of_the_sets(ordinary, lighter):
    # COMMON PRACTICE: -40 %, rounded down, at least one; DERIVED 0.6 * 6 = 3.6 -> 3
    assert lighter_sets(sets=ordinary, rulebook=RULEBOOK).value == lighter


def test_less_left_by_two_at_the_same_dose_is_a_falling_reserve():
    # COMMON PRACTICE
    was = dose(target=8, kg=10)
    fell = [done(was, reserve=left(4, or_more=True)), done(was, reserve=left(2))]
    stayed = [done(was, reserve=left(3)), done(was, reserve=left(2))]
    other = [done(was, reserve=left(4)), done(dose(target=9, kg=10), reserve=left(2))]
    unanswered = [done(was, reserve=left(4)), done(was)]
    assert is_reserve_falling(fell, rulebook=RULEBOOK)
    assert not is_reserve_falling(stayed, rulebook=RULEBOOK)
    assert not is_reserve_falling(other, rulebook=RULEBOOK)
    assert not is_reserve_falling(unanswered, rulebook=RULEBOOK)


def test_holds_ask_for_a_fall_of_ten_seconds():
    # CHOSEN
    was = dose(PUSH_UP_HOLD, Quality.MUSCULAR_ENDURANCE, target=40)
    assert is_reserve_falling(
        [done(was, reserve=left(15)), done(was, reserve=left(5))], rulebook=RULEBOOK
    )
    assert not is_reserve_falling(
        [done(was, reserve=left(15)), done(was, reserve=left(10))], rulebook=RULEBOOK
    )
