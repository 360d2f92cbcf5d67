"""Each check of the library catches a movement that is broken in exactly its way."""

import pytest

from scheduler.catalogue.demand_lint import implied_demands
from scheduler.catalogue.findings import Fault, Finding, Severity
from scheduler.catalogue.lint import CELLS, cells_without_little_equipment, errors_in, findings_in
from scheduler.catalogue.refusal import MEANINGS
from scheduler.catalogue.text_lint import sentences
from scheduler.catalogue.values import (
    Arm,
    Chain,
    Demand,
    Direction,
    Equipment,
    Joint,
    Loading,
    Measure,
    Movement,
    PositionRule,
    Role,
    Sides,
    Tempo,
)
from tests.catalogue.examples import HANG, HARDER_HOLD, HOLD, PRESS, SOUND

BROKEN = [
    pytest.param(
        Fault.UNKNOWN_NEIGHBOUR, "harder", PRESS, {"harder": "nowhere"}, id="unknown neighbour"
    ),
    pytest.param(
        Fault.UNKNOWN_NEIGHBOUR, "easier", PRESS, {"easier": "light_press"}, id="its own neighbour"
    ),
    pytest.param(
        Fault.ONE_SIDED_NEIGHBOUR, "easier", HARDER_HOLD, {"easier": None}, id="no way back down"
    ),
    pytest.param(Fault.ONE_SIDED_NEIGHBOUR, "harder", HOLD, {"harder": None}, id="no way back up"),
    pytest.param(
        Fault.LADDER_LEAVES_FAMILY, "family", HARDER_HOLD, {"family": "press"}, id="other family"
    ),
    pytest.param(
        Fault.LADDER_LEAVES_CELL, "direction", HARDER_HOLD, {"arm": Arm.BENT}, id="other arm"
    ),
    pytest.param(
        Fault.LADDER_LEAVES_CELL,
        "direction",
        HARDER_HOLD,
        {"role": Role.ACCESSORY},
        id="ladder to an accessory",
    ),
    pytest.param(
        Fault.LADDER_CHANGES_MEASURE,
        "measure",
        HARDER_HOLD,
        {"measure": Measure.REPS, "tempo": Tempo.CONTROLLED, "seconds_per_rep": 4.0},
        id="other measure",
    ),
    pytest.param(
        Fault.HARDER_DROPS_DEMAND,
        "demands",
        HARDER_HOLD,
        {"demands": frozenset({Demand.ELBOW_EXTENSION})},
        id="harder without the bent wrist",
    ),
    pytest.param(
        Fault.DEMAND_MISSING,
        "demands",
        HANG,
        {"demands": frozenset({Demand.OVERHEAD, Demand.GRIP})},
        id="hang without traction",
    ),
    pytest.param(
        Fault.DEMAND_MISSING,
        "demands",
        HANG,
        {"demands": frozenset({Demand.OVERHEAD, Demand.TRACTION})},
        id="hang without grip",
    ),
    pytest.param(
        Fault.DEMAND_MISSING,
        "demands",
        PRESS,
        {"direction": Direction.VERTICAL_PUSH},
        id="overhead press without overhead",
    ),
    pytest.param(
        Fault.DEMAND_CONTRADICTED,
        "is_upright",
        PRESS,
        {"is_upright": True, "demands": frozenset({Demand.INVERSION, Demand.ELBOW_EXTENSION})},
        id="upright and upside down",
    ),
    pytest.param(
        Fault.STATIC_NEEDS_TIME, "measure", HANG, {"measure": Measure.REPS}, id="static repetitions"
    ),
    pytest.param(
        Fault.MOVING_NEEDS_REPS, "measure", PRESS, {"measure": Measure.HOLD_S}, id="moving hold"
    ),
    pytest.param(
        Fault.TEMPO_MISSING, "seconds_per_rep", PRESS, {"seconds_per_rep": None}, id="no seconds"
    ),
    pytest.param(
        Fault.TEMPO_MISSING, "seconds_per_rep", PRESS, {"seconds_per_rep": 0.0}, id="zero seconds"
    ),
    pytest.param(
        Fault.TEMPO_WITHOUT_CONTROL,
        "seconds_per_rep",
        HANG,
        {"seconds_per_rep": 4.0},
        id="seconds a repetition of a hold",
    ),
    pytest.param(
        Fault.HOLD_NEEDS_ITS_END, "position_rules", HANG, {"position_rules": ()}, id="endless hold"
    ),
    pytest.param(
        Fault.FAMILY_UNLIKE,
        "limiting_joint",
        HARDER_HOLD,
        {"limiting_joint": Joint.GRIP, "position_rules": (PositionRule.GRIP_OPENS,)},
        id="another joint limits the same capacity",
    ),
    pytest.param(
        Fault.FAMILY_UNLIKE, "sides", HARDER_HOLD, {"sides": Sides.EACH}, id="other count of arms"
    ),
    pytest.param(
        Fault.LIMIT_NOT_IN_RULES,
        "position_rules",
        HANG,
        {"limiting_joint": Joint.GRIP},
        id="grip that ends nothing",
    ),
    pytest.param(
        Fault.LIMIT_NOT_IN_RULES,
        "position_rules",
        HANG,
        {"position_rules": (PositionRule.SHOULDERS_RISE,)},
        id="straight arm that may bend",
    ),
    pytest.param(
        Fault.LOAD_WITHOUT_EQUIPMENT,
        "equipment",
        PRESS,
        {"equipment": (frozenset({Equipment.BAND}), frozenset({Equipment.WALL}))},
        id="load of nothing",
    ),
    pytest.param(
        Fault.WEIGHTS_MIXED,
        "equipment",
        PRESS,
        {"equipment": (frozenset({Equipment.DUMBBELLS}), frozenset({Equipment.BARBELL}))},
        id="dumbbells or a barbell",
    ),
    pytest.param(
        Fault.DEMAND_MISSING,
        "demands",
        PRESS,
        {"equipment": (frozenset({Equipment.KETTLEBELLS}),)},
        id="free weight without grip",
    ),
    pytest.param(
        Fault.VOID_CELL, "chain", HANG, {"direction": Direction.UPWARD_PULL}, id="fixed upward pull"
    ),
    pytest.param(
        Fault.CLOSED_HAND_MOVES_LOAD,
        "loading",
        HANG,
        {"loading": Loading.EXTERNAL},
        id="hang with a load in the hand",
    ),
    pytest.param(
        Fault.OPEN_HAND_CARRIES_BODY,
        "loading",
        PRESS,
        {"loading": Loading.ASSISTED},
        id="assisted press",
    ),
    pytest.param(
        Fault.SHARE_OUT_OF_RANGE,
        "bodyweight_share",
        HANG,
        {"bodyweight_share": 64.0, "bodyweight_share_source": "ch"},
        id="share in per cent",
    ),
    pytest.param(
        Fault.SHARE_WITHOUT_SOURCE,
        "bodyweight_share_source",
        HANG,
        {"bodyweight_share": 1.0},
        id="share of nobody",
    ),
    pytest.param(
        Fault.SHARE_WITHOUT_SOURCE,
        "bodyweight_share_source",
        HANG,
        {"bodyweight_share": 1.0, "bodyweight_share_source": "somebody1999"},
        id="share of an unknown source",
    ),
    pytest.param(
        Fault.UNSTABLE_TOO_EARLY, "least_stage", HANG, {"is_unstable": True}, id="rings at stage 1"
    ),
    pytest.param(
        Fault.DYNAMIC_TOO_EARLY,
        "least_stage",
        PRESS,
        {"tempo": Tempo.DYNAMIC, "seconds_per_rep": None, "least_stage": 3},
        id="fast at stage 3",
    ),
    pytest.param(
        Fault.ACCESSORY_COUNTED,
        "stands_in_for",
        HANG,
        {"role": Role.ACCESSORY, "stands_in_for": Direction.UPWARD_PULL},
        id="accessory that stands in",
    ),
    pytest.param(
        Fault.STAND_IN_MISPLACED,
        "stands_in_for",
        PRESS,
        {"stands_in_for": Direction.UPWARD_PULL},
        id="press that stands in",
    ),
    pytest.param(
        Fault.STAND_IN_MISPLACED,
        "stands_in_for",
        HANG,
        {"stands_in_for": Direction.HORIZONTAL_PUSH},
        id="stand-in for a push",
    ),
    pytest.param(Fault.NAME_TWICE, "name", HANG, {"name": "LEAN-HOLDS"}, id="name spelt otherwise"),
    pytest.param(
        Fault.NAME_TWICE, "aliases", HANG, {"aliases": ("light press",)}, id="alias is a name"
    ),
    pytest.param(Fault.NAME_TWICE, "aliases", HANG, {"aliases": ("…",)}, id="alias of no letters"),
    pytest.param(
        Fault.SENTENCES_COUNT, "how_to", PRESS, {"how_to": "Press up."}, id="one sentence"
    ),
    pytest.param(
        Fault.SENTENCES_COUNT,
        "how_to",
        PRESS,
        {"how_to": "Press up. Lower slowly"},
        id="no full stop",
    ),
    pytest.param(
        Fault.SENTENCES_COUNT,
        "common_fault",
        PRESS,
        {"common_fault": "You rush. You sway."},
        id="two faults",
    ),
    pytest.param(
        Fault.SENTENCE_LONG,
        "how_to",
        PRESS,
        {"how_to": f"Press {'up ' * 18}now. Lower slowly."},
        id="long sentence",
    ),
    pytest.param(
        Fault.WORD_FORBIDDEN,
        "how_to",
        PRESS,
        {"how_to": "Press up to heal your shoulder. Lower slowly."},
        id="claim about health",
    ),
    pytest.param(
        Fault.WORD_FORBIDDEN,
        "common_fault",
        PRESS,
        {"common_fault": "You rush!"},
        id="exclamation mark",
    ),
]


def found_in(*movements: Movement) -> tuple[Finding, ...]:
    """Return what is found besides the empty cells of so small a library."""
    return tuple(
        found
        for found in findings_in(movements)
        if found.fault is not Fault.CELL_NEEDS_LITTLE_EQUIPMENT
    )


def test_sound_movements_have_no_findings():
    assert found_in(*SOUND) == ()


@pytest.mark.parametrize(("fault", "field", "movement", "change"), BROKEN)
def test_broken_movement_is_found_at_its_field(fault, field, movement, change):
    broken = movement.model_copy(update=change)
    found = found_in(*(broken if one is movement else one for one in SOUND))
    assert (fault, broken.key, field, Severity.ERROR) in {
        (one.fault, one.movement, one.field, one.severity) for one in found
    }


def test_ladder_that_comes_back_to_itself_is_found():
    low = HOLD.model_copy(update={"easier": "steep_lean_hold"})
    high = HARDER_HOLD.model_copy(update={"harder": "lean_hold"})
    assert Fault.LADDER_GOES_ROUND in {found.fault for found in found_in(low, high)}


def test_harder_neighbour_with_less_of_the_body_on_the_hands_is_found():
    low = HOLD.model_copy(update={"bodyweight_share": 0.64, "bodyweight_share_source": "ch"})
    high = HARDER_HOLD.model_copy(update={"bodyweight_share": 0.5, "bodyweight_share_source": "ch"})
    assert [found.fault for found in found_in(low, high)] == [Fault.HARDER_HAS_SMALLER_SHARE]


def test_harder_neighbour_of_an_earlier_stage_is_found():
    late = HOLD.model_copy(update={"least_stage": 2})
    (found,) = found_in(late, HARDER_HOLD)
    assert (found.fault, found.movement) == (Fault.HARDER_COMES_EARLIER, "steep_lean_hold")
    assert (found.found, found.expected) == ("1", "2 or more")


def test_two_movements_with_one_key_are_found():
    assert Fault.KEY_TWICE in {found.fault for found in found_in(*SOUND, PRESS)}


def test_alias_of_two_movements_is_a_notice_and_no_error():
    shared = HANG.model_copy(update={"aliases": ("easy press",)})
    (found,) = found_in(HOLD, HARDER_HOLD, PRESS, shared)
    assert (found.fault, found.severity) == (Fault.NAME_SHARED, Severity.NOTICE)
    assert found.expected == "known to be shared by light_press, tree_hang"
    assert found not in errors_in((HOLD, HARDER_HOLD, PRESS, shared))


def test_long_name_is_a_notice_and_no_error():
    (found,) = found_in(HANG.model_copy(update={"name": "Hang from the branch of a tree"}))
    assert (found.fault, found.severity) == (Fault.NAME_LONG, Severity.NOTICE)


@pytest.mark.parametrize(
    "change",
    [
        pytest.param({"equipment": (frozenset({Equipment.RINGS}),)}, id="needs rings"),
        pytest.param(
            {"equipment": (frozenset({Equipment.HIGH_BAR, Equipment.BAND}),)}, id="needs two things"
        ),
        pytest.param({"least_stage": 2}, id="comes after stage 1"),
        pytest.param({"role": Role.ACCESSORY}, id="is an accessory"),
    ],
)
def test_cell_whose_only_movement_is_out_of_reach_is_found(change):
    cell = "vertical_pull closed straight"
    assert cell not in {f.movement for f in cells_without_little_equipment([HANG])}
    broken = HANG.model_copy(update=change)
    assert cell in {f.movement for f in cells_without_little_equipment([broken])}


def test_empty_library_lacks_every_cell_that_is_not_void():
    # DERIVED: 6 directions x 2 chains x 2 arms = 24, less the 2 void cells
    assert len(errors_in(())) == len(CELLS) == 22


def test_upside_down_push_implies_inversion_unless_it_says_that_it_is_upright():
    upside_down = HOLD.model_copy(update={"direction": Direction.VERTICAL_PUSH})
    assert Demand.INVERSION in implied_demands(upside_down)
    upright = upside_down.model_copy(update={"is_upright": True})
    assert Demand.INVERSION not in implied_demands(upright)


@pytest.mark.parametrize("direction", [Direction.VERTICAL_PULL, Direction.HORIZONTAL_PULL])
def test_fixed_pull_holds_on_to_something_unless_the_floor_is_named(direction):
    pull = HANG.model_copy(update={"direction": direction})
    assert Demand.GRIP in implied_demands(pull)
    unnamed = pull.model_copy(update={"equipment": (frozenset(),)})
    assert Demand.GRIP in implied_demands(unnamed)
    on_floor = pull.model_copy(update={"equipment": (frozenset({Equipment.FLOOR}),)})
    assert implied_demands(on_floor).isdisjoint({Demand.GRIP, Demand.TRACTION})


def test_carry_implies_grip_traction_and_a_loaded_neck():
    carry = PRESS.model_copy(
        update={
            "direction": Direction.UPWARD_PULL,
            "chain": Chain.OPEN,
            "arm": Arm.STRAIGHT,
            "measure": Measure.CARRY_S,
        }
    )
    assert implied_demands(carry) == {Demand.GRIP, Demand.TRACTION, Demand.NECK_LOAD}


def test_sentences_are_counted_by_their_ends():
    assert sentences("Pull. Hold there. And") == ("Pull.", "Hold there.", "And")
    assert sentences("") == ()


def test_every_fault_has_a_meaning_for_the_coach():
    assert set(MEANINGS) == set(Fault)
    assert len(set(MEANINGS.values())) == len(Fault)
