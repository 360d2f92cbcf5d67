"""The line that tells a coach which place of which file a finding is about."""

from scheduler.catalogue.findings import Fault, Finding

MEANINGS: dict[Fault, str] = {
    Fault.KEY_TWICE: "two movements have this key",
    Fault.UNKNOWN_NEIGHBOUR: "the library has no such neighbour",
    Fault.ONE_SIDED_NEIGHBOUR: "neighbours must name each other",
    Fault.LADDER_GOES_ROUND: "the ladder comes back to this movement",
    Fault.LADDER_LEAVES_FAMILY: "a ladder stays in one family",
    Fault.LADDER_LEAVES_CELL: "a ladder keeps direction, chain, arm and role",
    Fault.LADDER_CHANGES_MEASURE: "a ladder keeps its measure",
    Fault.HARDER_HAS_SMALLER_SHARE: "a harder neighbour never carries less of the body",
    Fault.HARDER_DROPS_DEMAND: "a harder neighbour keeps every demand",
    Fault.HARDER_COMES_EARLIER: "a harder neighbour never comes at an earlier stage",
    Fault.DEMAND_MISSING: "these demands follow from the rest and are missing",
    Fault.DEMAND_CONTRADICTED: "upright and upside down at once",
    Fault.STATIC_NEEDS_TIME: "a still movement is measured in time or distance",
    Fault.MOVING_NEEDS_REPS: "a moving one is counted in repetitions",
    Fault.TEMPO_MISSING: "controlled repetitions need their seconds",
    Fault.TEMPO_WITHOUT_CONTROL: "only controlled repetitions have seconds",
    Fault.HOLD_NEEDS_ITS_END: "it must say what ends a set",
    Fault.VOID_CELL: "a fixed hand cannot pull upward",
    Fault.CLOSED_HAND_MOVES_LOAD: "a fixed hand moves no load",
    Fault.OPEN_HAND_CARRIES_BODY: "a moving hand does not carry the body",
    Fault.SHARE_WITHOUT_SOURCE: "a share of body weight needs its source",
    Fault.SHARE_OUT_OF_RANGE: "an impossible share of body weight",
    Fault.FAMILY_UNLIKE: "a family shares its limiting joint, its sides and its measure",
    Fault.LOAD_WITHOUT_EQUIPMENT: "a load from outside needs a weight, a band or a cable",
    Fault.WEIGHTS_MIXED: "kilograms a hand and kilograms in all do not compare",
    Fault.LIMIT_NOT_IN_RULES: "what gives way first must end the set",
    Fault.UNSTABLE_TOO_EARLY: "an unstable movement comes later",
    Fault.DYNAMIC_TOO_EARLY: "a dynamic movement comes later",
    Fault.ACCESSORY_COUNTED: "an accessory counts for nothing",
    Fault.STAND_IN_MISPLACED: "this cannot stand in",
    Fault.CELL_NEEDS_LITTLE_EQUIPMENT: "this cell needs a movement with little equipment",
    Fault.NAME_TWICE: "this name means two movements",
    Fault.NAME_SHARED: "this alias is shared",
    Fault.NAME_LONG: "a long name",
    Fault.SENTENCES_COUNT: "the wrong number of sentences",
    Fault.SENTENCE_LONG: "a long sentence",
    Fault.WORD_FORBIDDEN: "a word that does not belong in a text for athletes",
}


def refusal_line(found: Finding, *, place: str) -> str:
    """Return one line: where, what it means, what stands there and what is expected."""
    return (
        f"{place}, {found.movement}.{found.field}: {MEANINGS[found.fault]}; "
        f"found {found.found}, expected {found.expected}"
    )
