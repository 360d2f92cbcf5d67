"""Judge the upkeep of a week: bent arms where the stage has none, and only as much as allowed."""

from collections.abc import Iterator
from math import floor

from scheduler.catalogue.values import Arm, Direction, Movement, Role, Tempo
from scheduler.pain.values import LeftOut, Side
from scheduler.training.values import Quality
from scheduler.training.week_judged import JudgedWeek, breach, figures_of
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import Breach, Invariant, Slot


def upkeep_in_bounds(week: JudgedWeek) -> Iterator[Breach]:
    """Yield where a main movement outside the pairs is not what upkeep may be."""
    for slot in week.upkeep:
        if slot not in week.judged:
            continue
        for fault in _faults(slot, week):
            yield breach(
                Invariant.UPKEEP,
                WeekReason.UPKEEP_OUT_OF_BOUNDS,
                because=fault,
                **figures_of(slot),
            )


def _faults(slot: Slot, week: JudgedWeek) -> Iterator[str]:
    movement = week.of(slot)
    request, rulebook = week.request, week.rulebook
    checks = {
        "not_asked": not request.has_upkeep,
        "stage_has_bent_arms": Arm.BENT in rulebook.stage(request.stage).arms,
        "kind": movement.arm is not Arm.BENT
        or movement.tempo is Tempo.DYNAMIC
        or movement.is_unstable,
        "direction": slot.direction is not movement.direction,
        "quality": slot.quality is not Quality.MUSCULAR_ENDURANCE,
        "held_at_stage_one": slot.direction in request.held_at_stage_one,
        "eased": _loads(request.eased, slot, movement),
        "sets": _sets_of_direction(slot.direction, week) > _sets_most(week),
        "twice": sum(other.direction is slot.direction for other in week.upkeep) > 1,
        "partner_on_another_day": any(
            other.direction is slot.direction.partner and other.on != slot.on
            for other in week.upkeep
        ),
        "order": not _is_between_pairs_and_accessories(slot, week),
    }
    yield from (fault for fault, is_found in checks.items() if is_found)


def _loads(eased: LeftOut, slot: Slot, movement: Movement) -> bool:
    return any(
        eased.hits(movement, arm) or (slot.direction, arm) in eased.directions
        for arm in (Side.LEFT, Side.RIGHT)
    )


def _sets_of_direction(direction: Direction, week: JudgedWeek) -> int:
    return week.sets(slot for slot in week.upkeep if slot.direction is direction)


def _sets_most(week: JudgedWeek) -> int:
    asked = week.rulebook.stages.extras.upkeep_sets_a_week.value
    return max(1, floor(asked * week.request.sets_share + 1e-9))


def _is_between_pairs_and_accessories(slot: Slot, week: JudgedWeek) -> bool:
    today = [other for other in week.slots if other.on == slot.on]
    pairs = [other.position for other in today if other.is_main]
    accessories = [other.position for other in today if week.of(other).role is Role.ACCESSORY]
    return all(position < slot.position for position in pairs) and all(
        position > slot.position for position in accessories
    )
