"""Checks that a movement's words fit: tempo and measure, chain and load, stage and role."""

from collections.abc import Iterator, Sequence

from scheduler.catalogue.findings import Fault, Finding, finding
from scheduler.catalogue.values import Chain, Direction, Loading, Measure, Movement, Role, Tempo
from scheduler.sources import SOURCES

UNSTABLE_FROM_STAGE = 3  # [stage] CH: rings and straps
DYNAMIC_FROM_STAGE = 4  # [stage] CH
BODYWEIGHT_SHARE_MOST = 1.0  # [fraction of body weight] CP: the hands carry all of it, no more
STAND_IN_DIRECTIONS = frozenset({Direction.VERTICAL_PULL, Direction.HORIZONTAL_PULL})


def tempo_against_measure(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find still movements counted in repetitions, and moving ones counted in time."""
    for movement in movements:
        is_static = movement.tempo is Tempo.STATIC
        if is_static and movement.measure is Measure.REPS:
            yield _wrong(Fault.STATIC_NEEDS_TIME, movement, "measure", "hold_s, carry_s or carry_m")
        if not is_static and movement.measure is not Measure.REPS:
            yield _wrong(Fault.MOVING_NEEDS_REPS, movement, "measure", Measure.REPS)


def tempo_without_seconds(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find controlled repetitions without their seconds, and seconds where nothing is paced."""
    for movement in movements:
        is_controlled = movement.tempo is Tempo.CONTROLLED
        seconds = movement.seconds_per_rep
        if is_controlled and (seconds is None or seconds <= 0):
            yield _wrong(Fault.TEMPO_MISSING, movement, "seconds_per_rep", "seconds above 0")
        if not is_controlled and seconds is not None:
            yield _wrong(Fault.TEMPO_WITHOUT_CONTROL, movement, "seconds_per_rep", "no seconds")


def holds_without_an_end(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find movements that do not say what ends a set besides the clock."""
    for movement in movements:
        if not movement.position_rules:
            yield _wrong(
                Fault.HOLD_NEEDS_ITS_END, movement, "position_rules", "at least one position rule"
            )


def void_cells(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find upward pulls with a fixed hand, which make no sense."""
    for movement in movements:
        if movement.chain is Chain.CLOSED and movement.direction is Direction.UPWARD_PULL:
            yield _wrong(Fault.VOID_CELL, movement, "chain", Chain.OPEN)


def chain_against_load(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find fixed hands that move a load, and moving hands that carry the body."""
    for movement in movements:
        if movement.chain is Chain.CLOSED and movement.loading is Loading.EXTERNAL:
            yield _wrong(
                Fault.CLOSED_HAND_MOVES_LOAD,
                movement,
                "loading",
                "none, bodyweight_plus or assisted",
            )
        carries_body = movement.loading in {Loading.BODYWEIGHT_PLUS, Loading.ASSISTED}
        if movement.chain is Chain.OPEN and (carries_body or movement.bodyweight_share):
            yield _wrong(
                Fault.OPEN_HAND_CARRIES_BODY, movement, "loading", "none or external, no share"
            )


def bodyweight_shares(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find shares of body weight that are impossible or that nobody stands behind."""
    for movement in movements:
        share, source = movement.bodyweight_share, movement.bodyweight_share_source
        if share is not None and not 0 < share <= BODYWEIGHT_SHARE_MOST:
            yield _wrong(
                Fault.SHARE_OUT_OF_RANGE,
                movement,
                "bodyweight_share",
                f"above 0, at most {BODYWEIGHT_SHARE_MOST}",
            )
        if (share is None) != (source is None) or (source is not None and source not in SOURCES):
            yield _wrong(
                Fault.SHARE_WITHOUT_SOURCE,
                movement,
                "bodyweight_share_source",
                "a key of the bibliography with every share, and only there",
            )


def stages_too_early(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find unstable and dynamic movements that claim to belong to an early stage."""
    for movement in movements:
        if movement.is_unstable and movement.least_stage < UNSTABLE_FROM_STAGE:
            yield _wrong(
                Fault.UNSTABLE_TOO_EARLY,
                movement,
                "least_stage",
                f"{UNSTABLE_FROM_STAGE} or more",
            )
        if movement.tempo is Tempo.DYNAMIC and movement.least_stage < DYNAMIC_FROM_STAGE:
            yield _wrong(
                Fault.DYNAMIC_TOO_EARLY, movement, "least_stage", f"{DYNAMIC_FROM_STAGE} or more"
            )


def stand_ins(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find stand-ins that cannot stand in, and accessories that would count by standing in."""
    for movement in movements:
        if movement.stands_in_for is None:
            continue
        if movement.role is Role.ACCESSORY:
            yield _wrong(Fault.ACCESSORY_COUNTED, movement, "stands_in_for", "nothing")
        if (
            movement.stands_in_for is not Direction.UPWARD_PULL
            or movement.chain is not Chain.CLOSED
            or movement.direction not in STAND_IN_DIRECTIONS
        ):
            yield _wrong(
                Fault.STAND_IN_MISPLACED,
                movement,
                "stands_in_for",
                "upward_pull, by a closed vertical or horizontal pull",
            )


def _wrong(fault: Fault, movement: Movement, field: str, expected: str, /) -> Finding:
    found = getattr(movement, field)
    return finding(
        fault,
        movement.key,
        field,
        found="nothing" if found in (None, ()) else found,
        expected=expected,
    )
