"""The judge of weeks finds each fault that is put into a sound week, and no other.

Each fault is one edit of a drawn week. The rules are COMMON PRACTICE with the rulebook's figures.
"""

from collections.abc import Callable
from datetime import date, timedelta
from typing import Any

import pytest

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Direction, Equipment
from scheduler.pain.values import LeftOut, Side
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import Quality
from scheduler.training.week_check import check_week
from scheduler.training.week_values import (
    HardDay,
    Invariant,
    MovementInUse,
    Slot,
    WeekRequest,
)
from scheduler.training.weeks import draw_week

LIBRARY = default_library()
RULEBOOK = default_rulebook()
MONDAY = date(2026, 3, 2)
ASKED = WeekRequest(
    stage=3,
    week_start=MONDAY,
    session_min=60,
    equipment=frozenset(Equipment),
    plan_week=9,
    stage_week=2,
)
SOUND = draw_week(ASKED, library=LIBRARY, rulebook=RULEBOOK).slots
Edit = Callable[[tuple[Slot, ...]], tuple[Slot, ...]]


def found(slots: tuple[Slot, ...], **facts: Any) -> set[Invariant]:
    request = ASKED.model_copy(update=facts)
    breaches = check_week(slots, request=request, library=LIBRARY, rulebook=RULEBOOK)
    return {breach.invariant for breach in breaches}


def changed(is_meant: Callable[[Slot], bool], **values: Any) -> Edit:
    return lambda slots: tuple(
        slot.model_copy(update=values) if is_meant(slot) else slot for slot in slots
    )


def first_push(slot: Slot) -> bool:
    return slot.on == MONDAY and slot.position == 1


def test_drawn_week_is_sound() -> None:
    assert found(SOUND) == set()


@pytest.mark.parametrize(
    ("edit", "invariant"),
    [
        (lambda slots: tuple(s for s in slots if not first_push(s)), Invariant.PAIRING),
        (changed(lambda s: s.is_main and s.direction.is_push, sets=5), Invariant.BALANCE),
        (changed(first_push, movement_key="fast_push_up"), Invariant.PERMISSION),
        (changed(first_push, quality=Quality.MAXIMAL_STRENGTH), Invariant.PERMISSION),
        (changed(first_push, movement_key="not_in_the_library"), Invariant.PERMISSION),
        (
            changed(lambda s: s.movement_key == "floor_push_up", sets=12),
            Invariant.STRAIGHT_SHARE,
        ),
        (changed(lambda s: s.is_main, sets=9), Invariant.VOLUME),
        (changed(lambda s: s.is_main, sets=9), Invariant.MINUTES),
        (
            lambda slots: tuple(
                s for s in slots if s.direction is not Direction.UPWARD_PULL or not s.is_main
            ),
            Invariant.FREQUENCY,
        ),
    ],
    ids=[
        "half a pair gone",
        "pushes grown",
        "dynamic too early",
        "maximal too early",
        "unknown movement",
        "bent arms grown",
        "too many sets",
        "too long",
        "a direction gone",
    ],
)
def test_fault_put_into_a_sound_week_is_found(edit: Edit, invariant: Invariant) -> None:
    assert invariant in found(edit(SOUND))


def test_hard_pulls_on_neighbouring_days_are_found() -> None:
    pulls = [slot for slot in SOUND if slot.is_main and not slot.direction.is_push]
    hard = changed(lambda slot: slot in pulls, quality=Quality.GENERAL_STRENGTH)(SOUND)
    assert Invariant.SPACING not in found(hard)  # Monday, Wednesday, Friday
    moved = changed(
        lambda slot: slot.on == MONDAY + timedelta(days=2), on=MONDAY + timedelta(days=1)
    )(hard)
    assert Invariant.SPACING in found(moved)


def test_hang_after_hard_pulling_elsewhere_is_found() -> None:
    sunday = HardDay(on=MONDAY - timedelta(days=1), directions=frozenset({Direction.VERTICAL_PULL}))
    hanging = changed(
        lambda slot: slot.on == MONDAY and slot.direction is Direction.VERTICAL_PULL,
        movement_key="bar_hang",
        quality=Quality.MUSCULAR_ENDURANCE,
    )(SOUND)
    assert Invariant.SPACING not in found(hanging)
    assert Invariant.SPACING in found(hanging, hard_days=(sunday,))


def test_second_maximal_exposure_of_a_direction_is_found() -> None:
    once = changed(first_push, quality=Quality.MAXIMAL_STRENGTH)(SOUND)
    assert Invariant.MAXIMAL_EXPOSURES not in found(once, stage=5)
    twice = changed(
        lambda slot: slot.direction is Direction.VERTICAL_PUSH and slot.is_main,
        quality=Quality.MAXIMAL_STRENGTH,
    )(SOUND)
    assert Invariant.MAXIMAL_EXPOSURES in found(twice, stage=5)


def test_one_chain_for_all_pulls_is_found() -> None:
    opened = tuple(
        slot.model_copy(
            update={
                "movement_key": next(
                    movement.key
                    for movement in LIBRARY.movements.values()
                    if movement.direction is slot.direction and movement.chain == "open"
                )
            }
        )
        if slot.is_main and not slot.direction.is_push
        else slot
        for slot in SOUND
    )
    assert Invariant.CHAINS in found(opened)


def test_what_is_rested_since_is_a_fault_in_what_is_open_and_none_in_what_was_sent() -> None:
    rested = LeftOut(directions=frozenset({(Direction.HORIZONTAL_PUSH, Side.LEFT)}))
    assert Invariant.LEFT_OUT in found(SOUND, rested=rested)
    assert Invariant.LEFT_OUT not in found(SOUND, rested=rested, kept=SOUND)


def test_what_is_not_owned_is_found() -> None:
    assert Invariant.EQUIPMENT in found(SOUND, equipment=frozenset())


def test_movement_changed_too_early_is_found_and_a_step_along_the_ladder_is_none() -> None:
    movement = LIBRARY.movements["inverted_row"]

    def with_history(key: str) -> set[Invariant]:
        entry = MovementInUse(
            pair=1,
            direction=movement.direction,
            chain=movement.chain,
            arm=movement.arm,
            movement_key=key,
            weeks=1,
            last_used_on=MONDAY - timedelta(days=5),
        )
        return found(SOUND, history=(entry,))

    assert any(slot.movement_key == "inverted_row" for slot in SOUND)
    assert with_history("feet_up_inverted_row") == set()
    assert with_history("inverted_row_hold") == {Invariant.STAY}
