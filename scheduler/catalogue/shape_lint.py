"""Checks that a movement's words fit: tempo and measure, limit and end, stage and role."""

from collections.abc import Iterator, Sequence

from scheduler.catalogue.findings import Fault, Finding, finding, wrong_field
from scheduler.catalogue.values import (
    Arm,
    Chain,
    Direction,
    Joint,
    Measure,
    Movement,
    PositionRule,
    Role,
    Tempo,
)

UNSTABLE_FROM_STAGE = 3  # [stage] CH: rings and straps
DYNAMIC_FROM_STAGE = 4  # [stage] CH
STAND_IN_DIRECTIONS = frozenset({Direction.VERTICAL_PULL, Direction.HORIZONTAL_PULL})


def tempo_against_measure(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find still movements counted in repetitions, and moving ones counted in time."""
    for movement in movements:
        is_static = movement.tempo is Tempo.STATIC
        if is_static and movement.measure is Measure.REPS:
            yield wrong_field(
                Fault.STATIC_NEEDS_TIME, movement, "measure", "hold_s, carry_s or carry_m"
            )
        if not is_static and movement.measure is not Measure.REPS:
            yield wrong_field(Fault.MOVING_NEEDS_REPS, movement, "measure", Measure.REPS)


def tempo_without_seconds(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find controlled repetitions without their seconds, and seconds where nothing is paced."""
    for movement in movements:
        is_controlled = movement.tempo is Tempo.CONTROLLED
        seconds = movement.seconds_per_rep
        if is_controlled and (seconds is None or seconds <= 0):
            yield wrong_field(Fault.TEMPO_MISSING, movement, "seconds_per_rep", "seconds above 0")
        if not is_controlled and seconds is not None:
            yield wrong_field(
                Fault.TEMPO_WITHOUT_CONTROL, movement, "seconds_per_rep", "no seconds"
            )


def holds_without_an_end(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find movements that do not say what ends a set besides the clock."""
    for movement in movements:
        if not movement.position_rules:
            yield wrong_field(
                Fault.HOLD_NEEDS_ITS_END, movement, "position_rules", "at least one position rule"
            )


def limits_that_end_nothing(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find sets that do not end when what carries them gives way (CP).

    A hold or carry that the grip limits ends when the grip opens; any other straight-arm movement
    ends when the elbows bend.
    """
    for movement in movements:
        is_held_by_grip = movement.limiting_joint is Joint.GRIP
        wanted = None
        if is_held_by_grip and movement.tempo is Tempo.STATIC:
            wanted = PositionRule.GRIP_OPENS
        elif not is_held_by_grip and movement.arm is Arm.STRAIGHT:
            wanted = PositionRule.ELBOWS_BEND
        if wanted is not None and wanted not in movement.position_rules:
            yield finding(
                Fault.LIMIT_NOT_IN_RULES,
                movement.key,
                "position_rules",
                found=", ".join(movement.position_rules) or "nothing",
                expected=f"{wanted} among them",
            )


def void_cells(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find upward pulls with a fixed hand, which make no sense."""
    for movement in movements:
        if movement.chain is Chain.CLOSED and movement.direction is Direction.UPWARD_PULL:
            yield wrong_field(Fault.VOID_CELL, movement, "chain", Chain.OPEN)


def stages_too_early(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find unstable and dynamic movements that claim to belong to an early stage."""
    for movement in movements:
        if movement.is_unstable and movement.least_stage < UNSTABLE_FROM_STAGE:
            yield wrong_field(
                Fault.UNSTABLE_TOO_EARLY,
                movement,
                "least_stage",
                f"{UNSTABLE_FROM_STAGE} or more",
            )
        if movement.tempo is Tempo.DYNAMIC and movement.least_stage < DYNAMIC_FROM_STAGE:
            yield wrong_field(
                Fault.DYNAMIC_TOO_EARLY, movement, "least_stage", f"{DYNAMIC_FROM_STAGE} or more"
            )


def stand_ins(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find stand-ins that cannot stand in, and accessories that would count by standing in."""
    for movement in movements:
        if movement.stands_in_for is None:
            continue
        if movement.role is Role.ACCESSORY:
            yield wrong_field(Fault.ACCESSORY_COUNTED, movement, "stands_in_for", "nothing")
        if (
            movement.stands_in_for is not Direction.UPWARD_PULL
            or movement.chain is not Chain.CLOSED
            or movement.direction not in STAND_IN_DIRECTIONS
        ):
            yield wrong_field(
                Fault.STAND_IN_MISPLACED,
                movement,
                "stands_in_for",
                "upward_pull, by a closed vertical or horizontal pull",
            )
