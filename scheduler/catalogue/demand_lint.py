"""Checks of what a movement asks of the body: pain rules trust the demands, so none may miss."""

from collections.abc import Iterator, Sequence

from scheduler.catalogue.findings import Fault, Finding, finding
from scheduler.catalogue.values import (
    ALWAYS_AT_HAND,
    FREE_WEIGHTS,
    Arm,
    Chain,
    Demand,
    Direction,
    Measure,
    Movement,
    Role,
)

VERTICAL = frozenset({Direction.VERTICAL_PUSH, Direction.VERTICAL_PULL})


def missing_demands(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find demands that follow from where the hand goes and what it holds (CP).

    Vertical directions go overhead; a closed vertical pull hangs by the hands, unless they rest
    on the floor; a closed vertical push is upside down unless it says that it is upright; a free
    weight falls when the hand gives way; every carry loads the neck, and one in a straight arm
    is held by the grip and pulls on the arm; a bent-arm pull bends the elbow, a bent-arm push
    straightens it, and a closed straight-arm push keeps it straight under body weight.
    """
    for movement in movements:
        missing = implied_demands(movement) - movement.demands
        if missing:
            yield finding(
                Fault.DEMAND_MISSING,
                movement.key,
                "demands",
                found=movement.demands or "none",
                expected=missing,
            )


def contradicted_demands(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find movements that say they are upright and upside down at once."""
    for movement in movements:
        if movement.is_upright and Demand.INVERSION in movement.demands:
            yield finding(
                Fault.DEMAND_CONTRADICTED,
                movement.key,
                "is_upright",
                found=True,
                expected="false, or no inversion among the demands",
            )


def implied_demands(movement: Movement) -> frozenset[Demand]:
    """Return the demands that the movement's other words already imply."""
    implied = set(_by_place(movement))
    if movement.role is Role.MAIN:
        implied |= _by_elbow(movement)
    return frozenset(implied)


def _by_place(movement: Movement) -> set[Demand]:
    implied: set[Demand] = set()
    is_closed = movement.chain is Chain.CLOSED
    if movement.direction in VERTICAL:
        implied.add(Demand.OVERHEAD)
    implied |= _by_hold(movement)
    if is_closed and movement.direction is Direction.VERTICAL_PUSH and not movement.is_upright:
        implied.add(Demand.INVERSION)
    if movement.measure in {Measure.CARRY_M, Measure.CARRY_S}:
        implied.add(Demand.NECK_LOAD)
        if movement.direction is Direction.UPWARD_PULL and movement.arm is Arm.STRAIGHT:
            implied |= {Demand.GRIP, Demand.TRACTION}
    return implied


def _by_hold(movement: Movement) -> set[Demand]:
    """Return what the hand must hold on to: a free weight, or a fixed hold that the body pulls."""
    if movement.chain is Chain.OPEN:
        has_weight = any(choice & FREE_WEIGHTS for choice in movement.equipment)
        return {Demand.GRIP} if has_weight else set()
    if movement.direction.is_push or _rests_on_the_floor(movement):
        return set()
    if movement.direction is Direction.VERTICAL_PULL:
        return {Demand.TRACTION, Demand.GRIP}
    return {Demand.GRIP}


def _rests_on_the_floor(movement: Movement) -> bool:
    """Tell whether floor or wall are named as all that is needed; no equipment is no answer."""
    return all(choice and choice <= ALWAYS_AT_HAND for choice in movement.equipment)


def _by_elbow(movement: Movement) -> set[Demand]:
    """Return what the elbow does; accessories name it themselves, as many only hold a bend."""
    if movement.arm is Arm.BENT and not movement.direction.is_push:
        return {Demand.ELBOW_FLEXION}
    if movement.direction.is_push and (movement.arm is Arm.BENT or movement.chain is Chain.CLOSED):
        return {Demand.ELBOW_EXTENSION}
    return set()
