"""Checks along the ladder: an easier and a harder neighbour must be what they say."""

from collections.abc import Iterator, Sequence

from scheduler.catalogue.findings import Fault, Finding, finding
from scheduler.catalogue.values import Movement


def unknown_neighbours(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find neighbours that the library does not have, or that are the movement itself."""
    known = {movement.key for movement in movements}
    for movement in movements:
        for field, neighbour in (("easier", movement.easier), ("harder", movement.harder)):
            if neighbour is not None and (neighbour not in known or neighbour == movement.key):
                yield finding(
                    Fault.UNKNOWN_NEIGHBOUR,
                    movement.key,
                    field,
                    found=neighbour,
                    expected="the key of another movement",
                )


def one_sided_neighbours(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find neighbours that do not point back."""
    by_key = {movement.key: movement for movement in movements}
    for movement in movements:
        above, below = by_key.get(movement.harder or ""), by_key.get(movement.easier or "")
        if above is not None and above.easier != movement.key:
            yield finding(
                Fault.ONE_SIDED_NEIGHBOUR,
                above.key,
                "easier",
                found=above.easier,
                expected=movement.key,
            )
        if below is not None and below.harder != movement.key:
            yield finding(
                Fault.ONE_SIDED_NEIGHBOUR,
                below.key,
                "harder",
                found=below.harder,
                expected=movement.key,
            )


def ladders_that_go_round(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find movements that are harder than themselves."""
    by_key = {movement.key: movement for movement in movements}
    for movement in movements:
        seen: set[str] = set()
        step = by_key.get(movement.harder or "")
        while step is not None and step.key not in seen:
            seen.add(step.key)
            step = by_key.get(step.harder or "")
        if movement.key in seen:
            yield finding(
                Fault.LADDER_GOES_ROUND,
                movement.key,
                "harder",
                found=movement.harder,
                expected="a ladder with an end",
            )


def unlike_neighbours(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find ladders that leave their family, cell or measure."""
    for lower, upper in _steps(movements):
        if lower.family != upper.family:
            yield _unlike(
                Fault.LADDER_LEAVES_FAMILY, upper, "family", upper.family, expected=lower.family
            )
        if _cell(lower) != _cell(upper):
            yield _unlike(
                Fault.LADDER_LEAVES_CELL, upper, "direction", _cell(upper), expected=_cell(lower)
            )
        if lower.measure is not upper.measure:
            yield _unlike(
                Fault.LADDER_CHANGES_MEASURE,
                upper,
                "measure",
                upper.measure,
                expected=lower.measure,
            )


def unlike_families(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find members of a family that cannot share a capacity with its first member.

    One curve, one count and one set of arms belong to a capacity.
    """
    first: dict[str, Movement] = {}
    for movement in movements:
        head = first.setdefault(movement.family, movement)
        for field in ("limiting_joint", "sides", "measure"):
            if getattr(movement, field) is not getattr(head, field):
                yield _unlike(
                    Fault.FAMILY_UNLIKE,
                    movement,
                    field,
                    getattr(movement, field),
                    expected=f"{getattr(head, field)}, as {head.key}",
                )


def harder_that_are_easier(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find harder neighbours that ask less: a smaller share, a dropped demand, an earlier stage.

    Shares are compared only where both are known.
    """
    for lower, upper in _steps(movements):
        shares = (lower.bodyweight_share, upper.bodyweight_share)
        if shares[0] is not None and shares[1] is not None and shares[1] < shares[0]:
            yield _unlike(
                Fault.HARDER_HAS_SMALLER_SHARE,
                upper,
                "bodyweight_share",
                shares[1],
                expected=f"{shares[0]} or more",
            )
        if lower.demands - upper.demands:
            yield _unlike(
                Fault.HARDER_DROPS_DEMAND, upper, "demands", upper.demands, expected=lower.demands
            )
        if upper.least_stage < lower.least_stage:
            yield _unlike(
                Fault.HARDER_COMES_EARLIER,
                upper,
                "least_stage",
                upper.least_stage,
                expected=f"{lower.least_stage} or more",
            )


def _unlike(
    fault: Fault, movement: Movement, field: str, found: object, /, *, expected: object
) -> Finding:
    return finding(fault, movement.key, field, found=found, expected=expected)


def _cell(movement: Movement) -> str:
    return " ".join((movement.direction, movement.chain, movement.arm, movement.role))


def _steps(movements: Sequence[Movement]) -> Iterator[tuple[Movement, Movement]]:
    """Yield each step of each ladder once, as (easier, harder), named from either side."""
    by_key = {movement.key: movement for movement in movements}
    steps = {(m.key, m.harder) for m in movements if m.harder is not None}
    steps |= {(m.easier, m.key) for m in movements if m.easier is not None}
    for lower, upper in sorted(steps):
        if lower in by_key and upper in by_key:
            yield by_key[lower], by_key[upper]
