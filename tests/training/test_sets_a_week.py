"""Sets a direction a week and lighter weeks: COMMON PRACTICE and CHOSEN numbers."""

import pytest

from scheduler.catalogue.values import Direction
from scheduler.training.gaps import sets_after_share
from scheduler.training.labelled import Labelled
from scheduler.training.values import Quality
from scheduler.training.volume import (
    LighterSignals,
    WeekKind,
    is_after_missed_weeks,
    is_reserve_falling,
    lighter_week,
    share_after_missed_weeks,
)
from scheduler.training.week_sets import weekly_limit
from scheduler.training.week_values import WeekRequest
from tests.training.athletes import MONDAY, PUSH_UP_HOLD, RULEBOOK, codes, done, dose, left

ORDINARY = WeekKind.ORDINARY
CALM = LighterSignals()


def asked(**facts):
    usual = {
        "week_start": MONDAY,
        "stage": 1,
        "session_min": 50,
        "equipment": frozenset(),
        "plan_week": 8,
    }
    return WeekRequest(**(usual | facts))


def limit(**facts):
    return weekly_limit(Direction.VERTICAL_PULL, request=asked(**facts), rulebook=RULEBOOK)


@pytest.mark.parametrize(
    ("stage", "most"),
    # COMMON PRACTICE: 4-6 sets in stages 1-2, 6-10 in 3-4, 4-8 in 5
    [(1, 6), (2, 6), (3, 10), (4, 10), (5, 8)],
)
def test_the_upper_bound_of_the_stage_always_holds(stage, most):
    greedy = [Labelled(value=30, unit="sets", source="ch")] * 5
    weeks = RULEBOOK.weeks.model_copy(update={"sets_wanted": tuple(greedy)})
    rulebook = RULEBOOK.model_copy(update={"weeks": weeks})
    request = asked(stage=stage)
    assert weekly_limit(Direction.VERTICAL_PULL, request=request, rulebook=rulebook) == (most, ())


def test_from_week_three_a_direction_grows_by_two_sets_at_most():
    # COMMON PRACTICE; DERIVED 4 + 2; CHOSEN 8 wanted in stage 3
    last = {Direction.VERTICAL_PULL: 4}
    sets, why = limit(stage=3, plan_week=3, last_ordinary_sets=last)
    assert (sets, [one.code for one in why]) == (6, ["week.growth_capped"])
    assert limit(stage=3, plan_week=2, last_ordinary_sets=last)[0] == 8
    assert limit(stage=3, plan_week=3)[0] == 8


def test_two_weeks_with_half_the_items_missed_cut_a_fifth_of_the_sets():
    # CHOSEN; DERIVED 6 less 20 % is 4.8, rounded down
    assert is_after_missed_weeks([0.1, 0.5, 0.6], rulebook=RULEBOOK)
    assert not is_after_missed_weeks([0.5, 0.4], rulebook=RULEBOOK)
    assert not is_after_missed_weeks([0.9], rulebook=RULEBOOK)
    share = share_after_missed_weeks([0.5, 0.6], rulebook=RULEBOOK).value
    assert sets_after_share(sets=6, share=share) == 4


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
    share = 1 - RULEBOOK.lighter.cut.value
    assert sets_after_share(sets=ordinary, share=share) == lighter


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
