"""What each stage permits and which quality a slot gets: CHOSEN table of stages."""

import pytest

from scheduler.catalogue.values import Arm, Direction, Loading, Measure, Role, Tempo
from scheduler.training.permissions import (
    PermissionFacts,
    Slot,
    other_exposure_reps,
    permits,
    quality_for,
    straight_arm_share,
    strength_of_pair,
)
from scheduler.training.repetition_maximum import PERCENT_BY_REPS
from scheduler.training.values import Quality
from tests.training.athletes import OVERHEAD_HOLD, PRESS, PUSH_UP_HOLD, RULEBOOK, codes, movement

FAST_PUSH = movement("fast_push_up", tempo=Tempo.DYNAMIC)
FAST_PULL = movement("fast_row", tempo=Tempo.DYNAMIC, direction=Direction.HORIZONTAL_PULL)
RING_PUSH_UP = movement("ring_push_up", is_unstable=True)
CUFF = movement("cuff_turn", role=Role.ACCESSORY)
LATE = movement("late_hold", arm=Arm.STRAIGHT, least_stage=3)


def permitted_from(one, **facts):
    decisions = {
        stage: permits(one, facts=PermissionFacts(stage=stage, **facts), rulebook=RULEBOOK)
        for stage in range(1, 6)
    }
    return [stage for stage, decision in decisions.items() if decision.value]


@pytest.mark.parametrize(
    ("one", "stages"),
    [
        (OVERHEAD_HOLD, [1, 2, 3, 4, 5]),
        (PRESS, [3, 4, 5]),
        (FAST_PUSH, [4, 5]),
        (RING_PUSH_UP, [3, 4, 5]),
        (CUFF, [1, 2, 3, 4, 5]),
        (LATE, [3, 4, 5]),
        (FAST_PULL, []),
    ],
    ids=lambda one: getattr(one, "key", ""),
)
def test_a_movement_is_permitted_from_its_stage_on(one, stages):
    assert permitted_from(one) == stages


def test_dynamic_pulls_wait_for_strict_pulls():
    assert permitted_from(FAST_PULL, has_strict_pulls=True) == [4, 5]
    decision = permits(FAST_PULL, facts=PermissionFacts(stage=4), rulebook=RULEBOOK)
    assert codes(decision) == ["permission.dynamic_pull_not_yet"]


def test_a_refusal_names_everything_that_forbids():
    decision = permits(FAST_PULL, facts=PermissionFacts(stage=1), rulebook=RULEBOOK)
    assert codes(decision) == ["permission.arm_not_yet", "permission.dynamic_not_yet"]


def test_a_coachs_override_permits_and_says_so():
    facts = PermissionFacts(stage=1, is_overridden=True)
    decision = permits(PRESS, facts=facts, rulebook=RULEBOOK)
    assert decision.value
    assert codes(decision) == ["permission.overridden_by_coach", "permission.arm_not_yet"]


def test_upkeep_permits_bent_arms_and_nothing_else():
    assert permitted_from(PRESS, has_upkeep=True) == [1, 2, 3, 4, 5]
    assert permitted_from(FAST_PUSH, has_upkeep=True) == [4, 5]


def test_straight_arm_work_keeps_its_share():
    shares = [straight_arm_share(stage=stage, rulebook=RULEBOOK) for stage in range(1, 6)]
    assert shares == pytest.approx([1, 1, 1 / 2, 1 / 3, 0], abs=1e-4)


def quality(one, stage, *, first=True, weeks=10, taken=False):
    slot = Slot(stage=stage, weeks_in_stage=weeks, is_first_pair=first, is_maximal_taken=taken)
    return quality_for(one, slot=slot, rulebook=RULEBOOK).value


@pytest.mark.parametrize(
    ("stage", "first_pair", "second_pair"),
    [
        (1, Quality.MUSCULAR_ENDURANCE, Quality.MUSCULAR_ENDURANCE),
        (2, Quality.STRENGTH_ENDURANCE, Quality.MUSCULAR_ENDURANCE),
        (3, Quality.GENERAL_STRENGTH, Quality.STRENGTH_ENDURANCE),
        (4, Quality.GENERAL_STRENGTH, Quality.STRENGTH_ENDURANCE),
        (5, Quality.MAXIMAL_STRENGTH, Quality.GENERAL_STRENGTH),
    ],
)
def test_the_first_pair_gets_the_hardest_quality_of_the_stage(stage, first_pair, second_pair):
    assert quality(PRESS, stage) is first_pair
    assert quality(PRESS, stage, first=False) is second_pair


def test_a_direction_has_one_maximal_exposure_a_week():
    assert quality(PRESS, 5, taken=True) is Quality.GENERAL_STRENGTH


@pytest.mark.parametrize(
    ("reps", "reserve", "share"),
    # DERIVED from PUBLISHED epley1985 (secondary): 1 / (1 + (reps + reserve) / 30)
    [(5, 2, 0.811), (6, 2, 0.789), (5, 3, 0.789), (8, 2, 0.750), (8, 3, 0.732)],
)
def test_beside_the_maximal_exposure_general_strength_is_at_seventy_to_eighty_percent(
    reps, reserve, share
):
    row = RULEBOOK.quality(Quality.GENERAL_STRENGTH)
    others = RULEBOOK.stages.extras.maximal_other_exposures  # CHOSEN: 0.7-0.8
    assert reps in row.reps
    assert reserve in row.reserve_reps
    assert 1 / (1 + (reps + reserve) / 30) == pytest.approx(share, abs=5e-4)
    least, most = other_exposure_reps(rulebook=RULEBOOK)
    is_inside = share in others
    assert is_inside == (least <= reps <= most or reserve > row.reserve_reps.least)


def test_other_exposures_are_six_to_eight_repetitions():
    # DERIVED above: five with two left are 81 %
    assert other_exposure_reps(rulebook=RULEBOOK) == (6, 8)
    # PUBLISHED essentials2016, table of percentages (secondary): 8 repetitions to failure 80 %,
    # 10 repetitions 75 %, 11 repetitions 70 % (from memory)
    assert [PERCENT_BY_REPS[reps + left] for reps, left in ((6, 2), (8, 2), (8, 3))] == [80, 75, 70]


def test_other_range_of_the_rulebook_gives_other_repetitions():
    extras = RULEBOOK.stages.extras
    shares = extras.maximal_other_exposures.model_copy(update={"most": 0.76})
    narrower = RULEBOOK.model_copy(
        update={
            "stages": RULEBOOK.stages.model_copy(
                update={"extras": extras.model_copy(update={"maximal_other_exposures": shares})}
            )
        }
    )
    # DERIVED: 1 / (1 + 10 / 30) = 0.75 is the first below 0.76
    assert other_exposure_reps(rulebook=narrower) == (8, 8)


def test_pairs_beside_the_maximal_exposure_train_general_strength():
    for is_first_pair in (True, False):
        found = strength_of_pair(stage=5, is_first_pair=is_first_pair, rulebook=RULEBOOK)
        assert found is Quality.GENERAL_STRENGTH


def test_straight_arm_holds_are_never_maximal():
    assert quality(OVERHEAD_HOLD, 5) is Quality.GENERAL_STRENGTH


def test_a_hold_without_load_stays_in_muscular_endurance():
    assert quality(PUSH_UP_HOLD, 5) is Quality.MUSCULAR_ENDURANCE
    push_up = movement("push_up", loading=Loading.NONE, measure=Measure.REPS)
    assert quality(push_up, 3) is Quality.GENERAL_STRENGTH


def test_accessories_stay_in_muscular_endurance():
    assert quality(CUFF, 5) is Quality.MUSCULAR_ENDURANCE


@pytest.mark.parametrize(
    ("stage", "weeks", "expected"),
    [
        (4, 0, Quality.DYNAMIC_FRESH),
        (4, 2, Quality.DYNAMIC_FRESH),
        (4, 3, Quality.REPEATED_EFFORT),
        (5, 0, Quality.REPEATED_EFFORT),
    ],
)
def test_dynamic_work_is_fresh_for_three_weeks_and_then_in_rounds(stage, weeks, expected):
    assert quality(FAST_PUSH, stage, weeks=weeks) is expected
