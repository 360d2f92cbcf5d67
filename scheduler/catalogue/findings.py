"""What a check of the library can find wrong, as data."""

from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Movement


class Severity(StrEnum):
    """An error refuses the library; a notice is shown to the coach and stands."""

    ERROR = "error"
    NOTICE = "notice"


class Fault(StrEnum):
    """What is wrong with a movement, or with the library as a whole."""

    KEY_TWICE = "library.key_twice"
    UNKNOWN_NEIGHBOUR = "library.unknown_neighbour"
    ONE_SIDED_NEIGHBOUR = "library.one_sided_neighbour"
    LADDER_GOES_ROUND = "library.ladder_goes_round"
    LADDER_LEAVES_FAMILY = "library.ladder_leaves_family"
    LADDER_LEAVES_CELL = "library.ladder_leaves_cell"
    LADDER_CHANGES_MEASURE = "library.ladder_changes_measure"
    HARDER_HAS_SMALLER_SHARE = "library.harder_has_smaller_share"
    HARDER_DROPS_DEMAND = "library.harder_drops_demand"
    HARDER_COMES_EARLIER = "library.harder_comes_earlier"
    DEMAND_MISSING = "library.demand_missing"
    DEMAND_CONTRADICTED = "library.demand_contradicted"
    STATIC_NEEDS_TIME = "library.static_needs_time"
    MOVING_NEEDS_REPS = "library.moving_needs_reps"
    TEMPO_MISSING = "library.tempo_missing"
    TEMPO_WITHOUT_CONTROL = "library.tempo_without_control"
    HOLD_NEEDS_ITS_END = "library.hold_needs_its_end"
    VOID_CELL = "library.void_cell"
    CLOSED_HAND_MOVES_LOAD = "library.closed_hand_moves_load"
    OPEN_HAND_CARRIES_BODY = "library.open_hand_carries_body"
    SHARE_WITHOUT_SOURCE = "library.share_without_source"
    SHARE_OUT_OF_RANGE = "library.share_out_of_range"
    FAMILY_UNLIKE = "library.family_unlike"
    LOAD_WITHOUT_EQUIPMENT = "library.load_without_equipment"
    WEIGHTS_MIXED = "library.weights_mixed"
    LIMIT_NOT_IN_RULES = "library.limit_not_in_rules"
    UNSTABLE_TOO_EARLY = "library.unstable_too_early"
    DYNAMIC_TOO_EARLY = "library.dynamic_too_early"
    ACCESSORY_COUNTED = "library.accessory_counted"
    STAND_IN_MISPLACED = "library.stand_in_misplaced"
    CELL_NEEDS_LITTLE_EQUIPMENT = "library.cell_needs_little_equipment"
    NAME_TWICE = "library.name_twice"
    NAME_SHARED = "library.name_shared"
    NAME_LONG = "library.name_long"
    SENTENCES_COUNT = "library.sentences_count"
    SENTENCE_LONG = "library.sentence_long"
    WORD_FORBIDDEN = "library.word_forbidden"


class Finding(BaseModel):
    """One thing that a check found.

    ``movement`` is the key of the movement, or the cell where no movement is at fault;
    ``field`` is where to look; ``found`` and ``expected`` are values, not sentences.
    """

    model_config = ConfigDict(frozen=True)

    fault: Fault
    severity: Severity
    movement: str
    field: str
    found: str
    expected: str


def finding(
    fault: Fault,
    movement: str,
    field: str,
    /,
    *,
    found: object,
    expected: object,
    severity: Severity = Severity.ERROR,
) -> Finding:
    """Build a finding; an error unless said otherwise."""
    return Finding(
        fault=fault,
        severity=severity,
        movement=movement,
        field=field,
        found=listed(found),
        expected=listed(expected),
    )


def listed(values: object) -> str:
    """Return values as text, in order where they have none, so that findings compare."""
    if isinstance(values, frozenset | set):
        return ", ".join(sorted(str(value) for value in values))
    return str(values)


def wrong_field(fault: Fault, movement: Movement, field: str, expected: str, /) -> Finding:
    """Build an error about one field, with what stands there."""
    found = getattr(movement, field)
    return finding(
        fault,
        movement.key,
        field,
        found="nothing" if found in (None, ()) else found,
        expected=expected,
    )
