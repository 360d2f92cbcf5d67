"""What a drawn week looks like, as a coach would read it.

Expected figures: COMMON PRACTICE unless a line says otherwise. Twice a week for each direction
is PUBLISHED (acsm2026, secondary: at least twice a week).
"""

from collections import Counter
from datetime import date, timedelta
from typing import Any

import pytest

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import (
    Arm,
    Chain,
    Demand,
    Direction,
    Equipment,
    Joint,
    Sides,
    Tempo,
)
from scheduler.pain.values import LeftOut, Side
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import Quality
from scheduler.training.week_days import training_dates
from scheduler.training.week_minutes import session_minutes
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import (
    DayLetter,
    HardDay,
    MovementInUse,
    Relaxed,
    Slot,
    WeekDraft,
    WeekRequest,
)
from scheduler.training.weeks import draw_week
from tests.training.any_week import rest_of_week

LIBRARY = default_library()
RULEBOOK = default_rulebook()
MONDAY = date(2026, 3, 2)
FULL = frozenset(Equipment)
RIGHT_WRIST = LeftOut(
    demands=frozenset(
        (demand, Side.RIGHT) for demand in (Demand.WRIST_EXTENSION, Demand.IMPACT, Demand.GRIP)
    )
)


def asked(**facts: Any) -> WeekRequest:
    usual: dict[str, Any] = {
        "stage": 1,
        "week_start": MONDAY,
        "session_min": 45,
        "equipment": FULL,
    }
    return WeekRequest(**(usual | facts))


def week(**facts: Any) -> WeekDraft:
    return draw_week(asked(**facts), library=LIBRARY, rulebook=RULEBOOK)


def main_slots(draft: WeekDraft) -> list[Slot]:
    return [slot for slot in draft.slots if slot.is_main]


def sets_of(draft: WeekDraft, direction: Direction) -> int:
    return sum(slot.sets for slot in main_slots(draft) if slot.direction is direction)


def chains_of(draft: WeekDraft, *, push: bool) -> set[Chain]:
    return {
        LIBRARY.movements[slot.movement_key].chain
        for slot in main_slots(draft)
        if slot.direction.is_push is push
    }


def test_newcomer_trains_straight_arm_endurance_in_both_chains_and_nothing_else() -> None:
    draft = week(is_first_two_weeks=True)
    for slot in main_slots(draft):
        movement = LIBRARY.movements[slot.movement_key]
        assert movement.arm is Arm.STRAIGHT
        assert movement.tempo is not Tempo.DYNAMIC
        assert slot.quality is Quality.MUSCULAR_ENDURANCE
        assert slot.sets == 2  # the first two weeks
    assert chains_of(draft, push=True) == chains_of(draft, push=False) == set(Chain)
    assert draft.relaxations == ()


@pytest.mark.parametrize("stage", [1, 2, 3, 4, 5])
def test_partner_directions_share_a_day_and_alternate(stage: int) -> None:
    for session in week(stage=stage, plan_week=9, stage_week=4).sessions:
        pairs = [[slot for slot in session.slots if slot.pair == number] for number in (1, 2)]
        for push, pull in pairs:
            assert push.direction.is_push
            assert push.direction.partner is pull.direction
            assert pull.position == push.position + 1


@pytest.mark.parametrize("stage", [1, 2, 3, 4, 5])
def test_three_days_train_each_direction_twice_the_second_time_in_the_other_chain(
    stage: int,
) -> None:
    draft = week(stage=stage, plan_week=9, stage_week=5)
    for direction in Direction:
        slots = [slot for slot in main_slots(draft) if slot.direction is direction]
        assert len(slots) == 2  # PUBLISHED acsm2026 (secondary)
        assert {LIBRARY.movements[slot.movement_key].chain for slot in slots} == set(Chain)


@pytest.mark.parametrize("days", [3, 4, 5])
def test_stage_five_has_at_most_one_maximal_exposure_a_direction_a_week(days: int) -> None:
    # COMMON PRACTICE; the number is CHOSEN
    for stage_week in range(1, 9):
        maximal = Counter(
            slot.direction
            for slot in week(
                stage=5, session_min=90, days_a_week=days, plan_week=9, stage_week=stage_week
            ).slots
            if slot.quality is Quality.MAXIMAL_STRENGTH
        )
        assert maximal
        assert set(maximal.values()) == {1}


def test_stage_three_keeps_half_and_stage_four_a_third_of_the_sets_straight() -> None:
    for stage, share in ((3, 1 / 2), (4, 1 / 3)):
        slots = main_slots(week(stage=stage, plan_week=9, stage_week=5))
        straight = sum(
            slot.sets for slot in slots if LIBRARY.movements[slot.movement_key].arm is Arm.STRAIGHT
        )
        assert straight >= share * sum(slot.sets for slot in slots)


def test_closed_upward_pull_is_a_stand_in_and_a_row_from_stage_three() -> None:
    for stage, arm in ((1, Arm.STRAIGHT), (2, Arm.STRAIGHT), (3, Arm.BENT)):
        closed = [
            LIBRARY.movements[slot.movement_key]
            for slot in main_slots(week(stage=stage))
            if slot.direction is Direction.UPWARD_PULL
            and LIBRARY.movements[slot.movement_key].chain is Chain.CLOSED
        ]
        assert [movement.stands_in_for for movement in closed] == [Direction.UPWARD_PULL]
        assert closed[0].arm is arm


def test_week_with_a_band_only_trains_every_direction_and_says_that_no_pull_is_closed() -> None:
    draft = week(equipment=frozenset({Equipment.BAND}))
    counts = Counter(slot.direction for slot in main_slots(draft))
    assert counts == dict.fromkeys(Direction, 2)
    assert [gone.what for gone in draft.relaxations] == [Relaxed.CHAINS_DROPPED]


@pytest.mark.parametrize("stage", [1, 2, 3, 4, 5])
def test_rested_right_wrist_leaves_one_arm_work_to_the_left(stage: int) -> None:
    draft = week(stage=stage, rested=RIGHT_WRIST)
    left_only = [slot for slot in main_slots(draft) if slot.arms == {Side.LEFT}]
    assert left_only
    for slot in draft.slots:
        movement = LIBRARY.movements[slot.movement_key]
        assert not (slot.arms - {Side.LEFT} and RIGHT_WRIST.hits(movement, Side.RIGHT))
        if slot.arms == {Side.LEFT}:
            assert movement.sides is Sides.EACH


def test_fifteen_minutes_hold_one_pair_a_day_and_both_chains_over_the_week() -> None:
    draft = week(session_min=15)
    for session in draft.sessions:
        assert {slot.pair for slot in session.slots if slot.is_main} == {1}
        assert session.minutes <= 15
    assert chains_of(draft, push=True) == set(Chain)
    assert {gone.what for gone in draft.relaxations} == {Relaxed.FREQUENCY}


def test_one_short_day_a_week_turns_the_chain_over_from_week_to_week() -> None:
    drafts = [week(session_min=15, days_a_week=1, plan_week=number) for number in (3, 4)]
    assert chains_of(drafts[0], push=True) != chains_of(drafts[1], push=True)
    assert Relaxed.CHAINS_OVER_TWO_WEEKS in {gone.what for gone in drafts[0].relaxations}


def test_two_days_train_every_direction_twice_in_two_weeks_and_one_day_in_three() -> None:
    turn = [DayLetter.A, DayLetter.B, DayLetter.C]
    for days, weeks in ((2, 2), (1, 3)):
        counts = Counter(
            slot.direction
            for number in range(weeks)
            for slot in main_slots(
                week(days_a_week=days, next_letter=turn[number * days % len(turn)])
            )
        )
        assert all(counts[direction] >= 2 for direction in Direction)


def test_four_and_five_days_add_one_and_two_days_of_a_single_pair_within_the_bound() -> None:
    for days, singles in ((4, [DayLetter.D]), (5, [DayLetter.D, DayLetter.E])):
        draft = week(days_a_week=days)
        single = [s for s in draft.sessions if {x.pair for x in s.slots if x.is_main} == {1}]
        assert [session.letter for session in single] == singles
        assert all(sets_of(draft, direction) <= 6 for direction in Direction)


def test_lighter_week_keeps_three_of_six_sets() -> None:
    # DERIVED: 6 sets - 40 % = 3.6, rounded down 3 (COMMON PRACTICE)
    draft = week(sets_share=0.6)
    assert {sets_of(draft, direction) for direction in Direction} == {3}


def test_sets_grow_by_at_most_two_from_the_third_week_on() -> None:
    last = dict.fromkeys(Direction, 2)
    # DERIVED: 2 + 2 = 4; before the third week the stage's own 6
    third, second = (
        week(plan_week=3, last_ordinary_sets=last),
        week(plan_week=2, last_ordinary_sets=last),
    )
    assert {sets_of(third, direction) for direction in Direction} == {4}
    assert {sets_of(second, direction) for direction in Direction} == {6}


def test_beginner_never_ends_two_movements_of_a_day_by_the_grip() -> None:
    for stage in (1, 2):
        for session in week(stage=stage).sessions:
            grips = [
                slot
                for slot in session.slots
                if slot.is_main
                and LIBRARY.movements[slot.movement_key].limiting_joint is Joint.GRIP
            ]
            assert len(grips) <= 1


def test_consecutive_days_pull_hard_only_with_a_free_day_between() -> None:
    draft = week(stage=5, weekdays=(1, 2, 3), stage_week=5)
    hard = {
        slot.on
        for slot in main_slots(draft)
        if not slot.direction.is_push
        and slot.quality not in {Quality.MUSCULAR_ENDURANCE, Quality.STRENGTH_ENDURANCE}
    }
    assert hard == {MONDAY, MONDAY + timedelta(days=2)}
    easy = [found for found in draft.reasons if found.code == WeekReason.EASY_PULLS_FOR_SPACING]
    assert [found.figures["on"] for found in easy] == ["2026-03-03"]


def test_no_hang_on_the_day_after_a_hard_pulling_class() -> None:
    sunday = HardDay(on=MONDAY - timedelta(days=1), directions=frozenset({Direction.VERTICAL_PULL}))
    hangs = [
        slot.on
        for slot in week(weekdays=(1, 3, 5), hard_days=(sunday,)).slots
        if Demand.TRACTION in LIBRARY.movements[slot.movement_key].demands
    ]
    assert hangs
    assert MONDAY not in hangs


def test_free_days_of_the_week_keep_away_from_a_hard_pulling_class() -> None:
    tuesday = HardDay(
        on=MONDAY + timedelta(days=1), directions=frozenset({Direction.HORIZONTAL_PULL})
    )
    assert [day.isoweekday() for day in training_dates(asked())] == [1, 3, 5]
    assert 3 not in [day.isoweekday() for day in training_dates(asked(hard_days=(tuesday,)))]
    moved = {found.code for found in week(hard_days=(tuesday,)).reasons}
    assert WeekReason.DAYS_MOVED in moved


def in_use(key: str, *, pair: int, weeks: int) -> MovementInUse:
    movement = LIBRARY.movements[key]
    return MovementInUse(
        pair=pair,
        direction=movement.direction,
        chain=movement.chain,
        arm=movement.arm,
        movement_key=key,
        weeks=weeks,
        last_used_on=MONDAY - timedelta(days=5),
    )


def carried(draft: WeekDraft) -> str:
    return next(
        slot.movement_key
        for slot in main_slots(draft)
        if (slot.letter, slot.pair, slot.direction) == (DayLetter.B, 2, Direction.UPWARD_PULL)
    )


@pytest.mark.parametrize(("weeks", "stays"), [(0, True), (1, True), (3, True), (4, False)])
def test_second_pair_movement_changes_after_its_fourth_week(weeks: int, *, stays: bool) -> None:
    draft = week(history=(in_use("shrug", pair=2, weeks=weeks),))
    assert (carried(draft) == "shrug") is stays


def test_second_pair_movement_that_a_standard_asks_for_stays() -> None:
    draft = week(history=(in_use("shrug", pair=2, weeks=9),), wanted=frozenset({"shrug"}))
    assert carried(draft) == "shrug"


def test_eased_region_steps_down_the_ladder_by_one() -> None:
    eased = LeftOut(demands=frozenset({(Demand.WRIST_EXTENSION, Side.LEFT)}))
    holding = in_use("push_up_hold", pair=1, weeks=2)
    draft = week(history=(holding,), eased=eased)
    below = LIBRARY.easier_of(LIBRARY.movements["push_up_hold"])
    assert below is not None
    keys = {slot.movement_key for slot in main_slots(draft)}
    assert below.key in keys
    assert "push_up_hold" not in keys
    assert WeekReason.EASED_TO_NEIGHBOUR in {found.code for found in draft.reasons}


def test_rest_of_the_week_leaves_out_what_hurts_and_keeps_what_was_done() -> None:
    first = week()
    monday = tuple(slot for slot in first.slots if slot.on == MONDAY)
    again = rest_of_week(
        asked(),
        kept=monday,
        open_from=MONDAY + timedelta(days=1),
        rested=RIGHT_WRIST,
        eased=LeftOut(),
    )
    assert tuple(slot for slot in again.slots if slot.on == MONDAY) == monday
    later = [slot for slot in again.slots if slot.on > MONDAY]
    assert [s.letter for s in again.sessions] == [s.letter for s in first.sessions]
    assert all(
        slot.arms == {Side.LEFT}
        or not RIGHT_WRIST.hits(LIBRARY.movements[slot.movement_key], Side.RIGHT)
        for slot in later
    )


def test_week_drawn_anew_behind_a_sent_day_gives_the_other_days_their_sets_as_before() -> None:
    """An accessory of the sent day is outside the balance and takes no set from anybody."""
    first = week()
    monday = tuple(slot for slot in first.slots if slot.on == MONDAY)
    assert any(not slot.is_main for slot in monday)
    again = rest_of_week(
        asked(),
        kept=monday,
        open_from=MONDAY + timedelta(days=1),
        rested=LeftOut(),
        eased=LeftOut(),
    )
    sets = [(slot.on, slot.direction, slot.sets) for slot in main_slots(first)]
    assert [(slot.on, slot.direction, slot.sets) for slot in main_slots(again)] == sets


def test_session_length_is_warm_up_and_sets_of_work_and_rest() -> None:
    slots = [
        Slot(
            on=MONDAY,
            letter=DayLetter.A,
            position=position,
            pair=1,
            direction=LIBRARY.movements[key].direction,
            movement_key=key,
            quality=Quality.MUSCULAR_ENDURANCE,
            sets=3,
        )
        for position, key in enumerate(("push_up_hold", "low_bar_hold"), start=1)
    ]
    # DERIVED from the rulebook: 120 + 60 s warm-up, 30 s to set up, two easy sets of 30 s;
    # hold 20 + 0.75 x (60 - 20) = 50 s, half of the 60 s rest: 2 x 3 x (50 + 30) = 480 s;
    # 180 + 30 + 60 + 480 = 750 s = 12.5 min
    minutes = session_minutes(slots, movements=LIBRARY.movements, stage=1, rulebook=RULEBOOK)
    assert minutes == pytest.approx(12.5)
