"""Checks of what resists: chain and load, shares of body weight, weights that compare."""

from collections.abc import Iterator, Sequence

from scheduler.catalogue.findings import Fault, Finding, finding, wrong_field
from scheduler.catalogue.values import (
    FREE_WEIGHTS,
    HAND_WEIGHTS,
    Chain,
    Equipment,
    Loading,
    Movement,
)
from scheduler.sources import SOURCES

BODYWEIGHT_SHARE_MOST = 1.0  # [fraction of body weight] CP: the hands carry all of it, no more
LOADS = FREE_WEIGHTS | {Equipment.BAND, Equipment.CABLE}
WEIGHTS_THAT_COMPARE = (
    HAND_WEIGHTS,
    frozenset({Equipment.BARBELL}),
    frozenset({Equipment.CABLE}),
)


def chain_against_load(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find fixed hands that move a load, and moving hands that carry the body."""
    for movement in movements:
        if movement.chain is Chain.CLOSED and movement.loading is Loading.EXTERNAL:
            yield wrong_field(
                Fault.CLOSED_HAND_MOVES_LOAD,
                movement,
                "loading",
                "none, bodyweight_plus or assisted",
            )
        carries_body = movement.loading in {Loading.BODYWEIGHT_PLUS, Loading.ASSISTED}
        if movement.chain is Chain.OPEN and (carries_body or movement.bodyweight_share):
            yield wrong_field(
                Fault.OPEN_HAND_CARRIES_BODY, movement, "loading", "none or external, no share"
            )


def bodyweight_shares(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find shares of body weight that are impossible or that nobody stands behind."""
    for movement in movements:
        share, source = movement.bodyweight_share, movement.bodyweight_share_source
        if share is not None and not 0 < share <= BODYWEIGHT_SHARE_MOST:
            yield wrong_field(
                Fault.SHARE_OUT_OF_RANGE,
                movement,
                "bodyweight_share",
                f"above 0, at most {BODYWEIGHT_SHARE_MOST}",
            )
        if (share is None) != (source is None) or (source is not None and source not in SOURCES):
            yield wrong_field(
                Fault.SHARE_WITHOUT_SOURCE,
                movement,
                "bodyweight_share_source",
                "a key of the bibliography with every share, and only there",
            )


def loads_of_nothing(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find loads from outside where some alternative has nothing to load with."""
    for movement in movements:
        if movement.loading is Loading.EXTERNAL and not all(
            choice & LOADS for choice in movement.equipment
        ):
            yield finding(
                Fault.LOAD_WITHOUT_EQUIPMENT,
                movement.key,
                "equipment",
                found="an alternative without",
                expected=f"one of {', '.join(sorted(LOADS))} in each alternative",
            )


def weights_that_do_not_compare(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find movements that take a weight a hand, a barbell or a cable in turn.

    The owned loads of a movement are one list: 20 kg on a bar would be the step after 18 kg a
    hand.
    """
    for movement in movements:
        asked = frozenset[Equipment]().union(*movement.equipment)
        if sum(bool(asked & alike) for alike in WEIGHTS_THAT_COMPARE) > 1:
            yield finding(
                Fault.WEIGHTS_MIXED,
                movement.key,
                "equipment",
                found=asked,
                expected="dumbbells and kettlebells, or a barbell, or a cable",
            )
