"""All checks of a library, in the order in which a coach would mend it."""

from collections.abc import Callable, Iterator, Sequence

from scheduler.catalogue import demand_lint, ladder_lint, load_lint, shape_lint, text_lint
from scheduler.catalogue.findings import Fault, Finding, Severity, finding
from scheduler.catalogue.values import (
    ALWAYS_AT_HAND,
    Arm,
    Chain,
    Direction,
    Equipment,
    Movement,
    Role,
)

Cell = tuple[Direction, Chain, Arm]

LITTLE_EQUIPMENT = frozenset(
    {Equipment.BAND, Equipment.DUMBBELLS, Equipment.HIGH_BAR, Equipment.LOW_BAR}
)
"""One of these is what an athlete without a gym can have (common practice)."""
FIRST_STAGE_OF_ARM = {Arm.STRAIGHT: 1, Arm.BENT: 3}  # [stage] CH: where each arm is first permitted
VOID_CELLS = frozenset((Direction.UPWARD_PULL, Chain.CLOSED, arm) for arm in Arm)
CELLS: tuple[Cell, ...] = tuple(
    (direction, chain, arm)
    for direction in Direction
    for chain in Chain
    for arm in Arm
    if (direction, chain, arm) not in VOID_CELLS
)


def cells_without_little_equipment(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find cells that an athlete with one band, dumbbells or one bar could never train.

    The movement must also belong to the stage in which its arm is first permitted.
    """
    for direction, chain, arm in CELLS:
        if not any(
            needs_little(movement) and movement.least_stage <= FIRST_STAGE_OF_ARM[arm]
            for movement in movements
            if (movement.direction, movement.chain, movement.arm) == (direction, chain, arm)
            and movement.role is Role.MAIN
        ):
            yield finding(
                Fault.CELL_NEEDS_LITTLE_EQUIPMENT,
                f"{direction} {chain} {arm}",
                "equipment",
                found="no movement",
                expected=f"one with at most one of {', '.join(sorted(LITTLE_EQUIPMENT))}, "
                f"at stage {FIRST_STAGE_OF_ARM[arm]}",
            )


def needs_little(movement: Movement) -> bool:
    """Tell whether one band, dumbbells, one bar or nothing at all is enough."""
    asked = (choice - ALWAYS_AT_HAND for choice in movement.equipment)
    return any(choice <= LITTLE_EQUIPMENT and len(choice) <= 1 for choice in asked)


RULES: tuple[Callable[[Sequence[Movement]], Iterator[Finding]], ...] = (
    text_lint.keys_twice,
    text_lint.names_twice,
    text_lint.shared_aliases,
    ladder_lint.unknown_neighbours,
    ladder_lint.one_sided_neighbours,
    ladder_lint.ladders_that_go_round,
    ladder_lint.unlike_neighbours,
    ladder_lint.unlike_families,
    ladder_lint.harder_that_are_easier,
    demand_lint.missing_demands,
    demand_lint.contradicted_demands,
    shape_lint.tempo_against_measure,
    shape_lint.tempo_without_seconds,
    shape_lint.holds_without_an_end,
    shape_lint.limits_that_end_nothing,
    load_lint.loads_of_nothing,
    load_lint.weights_that_do_not_compare,
    shape_lint.void_cells,
    load_lint.chain_against_load,
    load_lint.bodyweight_shares,
    shape_lint.stages_too_early,
    shape_lint.stand_ins,
    text_lint.sentence_counts,
    text_lint.long_sentences,
    text_lint.forbidden_words,
    text_lint.long_names,
    cells_without_little_equipment,
)


def findings_in(movements: Sequence[Movement]) -> tuple[Finding, ...]:
    """Return everything that the checks find, rule by rule."""
    return tuple(found for rule in RULES for found in rule(movements))


def errors_in(movements: Sequence[Movement]) -> tuple[Finding, ...]:
    """Return only the findings for which a library is refused."""
    return tuple(f for f in findings_in(movements) if f.severity is Severity.ERROR)
