"""What missed days change: PUBLISHED shares after long gaps or illness, CHOSEN after travel."""

import pytest

from scheduler.training.gaps import (
    NO_GAP,
    Absence,
    after_gap,
    may_train_after_fever,
    sets_after_share,
)
from tests.training.athletes import RULEBOOK, codes


def back(days, *, weeks_back=0, absence=Absence.TRAVEL, stage=1):
    return after_gap(
        days_untrained=days,
        weeks_back=weeks_back,
        absence=absence,
        stage=stage,
        rulebook=RULEBOOK,
    )


def shares(days, **changes):
    return [back(days, weeks_back=week, **changes).value.share_of_sets for week in range(5)]


@pytest.mark.parametrize("days", [0, 1, 6])
def test_up_to_six_days_change_nothing(days):
    assert back(days).value == NO_GAP


@pytest.mark.parametrize("days", [7, 13])
def test_seven_to_thirteen_days_keep_the_doses_for_a_week(days):
    first = back(days).value
    assert (first.share_of_sets, first.may_step) == (1, False)
    assert back(days, weeks_back=1).value == NO_GAP


@pytest.mark.parametrize("days", [14, 27])
def test_missed_fortnight_restarts_at_seventy_percent_of_the_sets(days):
    # CHOSEN: after healthy travel
    assert shares(days) == [0.7, 0.85, 1, 1, 1]


@pytest.mark.parametrize(
    "changes",
    [{"absence": Absence.ILLNESS}, {"stage": 4}, {"absence": Absence.OTHER}],
    ids=["illness", "from stage 4", "unknown reason"],
)
def test_illness_or_a_high_stage_restarts_at_half(changes):
    # PUBLISHED caterisano2019 (details from memory): 50, 70 % after a shorter inactivity
    assert shares(20, **changes) == [0.5, 0.7, 1, 1, 1]


@pytest.mark.parametrize("days", [28, 83])
def test_four_weeks_or_more_come_back_over_four_weeks(days):
    # PUBLISHED caterisano2019 (details from memory): 50, 70, 80, 90 of 100
    assert shares(days) == [0.5, 0.7, 0.8, 0.9, 1]
    assert not back(days).value.may_step
    assert back(days, weeks_back=4).value.is_long


def test_twelve_weeks_bring_screen_and_baseline_again_at_stage_two_at_most():
    # CHOSEN
    decision = back(84, stage=5)
    assert (decision.value.needs_screen, decision.value.stage_most) == (True, 2)
    assert codes(decision)[0] == "gap.screen_again"
    assert not back(83, stage=5).value.needs_screen


def test_shares_are_rounded_down_to_at_least_one_set():
    # DERIVED: 0.7 * 3 = 2.1 -> 2; 0.7 * 10 = 7 exactly; 0.5 * 1 -> 1
    assert sets_after_share(sets=3, share=0.7) == 2
    assert sets_after_share(sets=10, share=0.7) == 7
    assert sets_after_share(sets=1, share=0.5) == 1


def test_fever_waits_until_two_days_are_clear():
    # COMMON PRACTICE: 48 h
    assert not may_train_after_fever(clear_h=47, rulebook=RULEBOOK).value
    assert may_train_after_fever(clear_h=48, rulebook=RULEBOOK).value
