"""Movements for the tests: sound ones, to be broken one word at a time."""

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
    Tempo,
)

HOLD = Movement(
    key="lean_hold",
    name="Lean hold",
    direction=Direction.HORIZONTAL_PUSH,
    chain=Chain.CLOSED,
    arm=Arm.STRAIGHT,
    measure=Measure.HOLD_S,
    family="lean",
    limiting_joint=Joint.SHOULDER,
    demands=frozenset({Demand.WRIST_EXTENSION, Demand.ELBOW_EXTENSION}),
    harder="steep_lean_hold",
    position_rules=(PositionRule.ELBOWS_BEND,),
    how_to="Lean on your hands. Keep your arms straight.",
    common_fault="You bend your elbows.",
    aliases=("lean",),
)
HARDER_HOLD = HOLD.model_copy(
    update={
        "key": "steep_lean_hold",
        "name": "Steep lean hold",
        "easier": "lean_hold",
        "harder": None,
        "aliases": ("steep lean",),
    }
)
PRESS = HOLD.model_copy(
    update={
        "key": "light_press",
        "name": "Light press",
        "chain": Chain.OPEN,
        "arm": Arm.BENT,
        "tempo": Tempo.CONTROLLED,
        "seconds_per_rep": 4.0,
        "measure": Measure.REPS,
        "loading": Loading.EXTERNAL,
        "family": "press",
        "demands": frozenset({Demand.ELBOW_EXTENSION}),
        "equipment": (frozenset({Equipment.BAND}),),
        "harder": None,
        "aliases": ("easy press",),
    }
)
HANG = HOLD.model_copy(
    update={
        "key": "tree_hang",
        "name": "Tree hang",
        "direction": Direction.VERTICAL_PULL,
        "family": "hang",
        "demands": frozenset({Demand.OVERHEAD, Demand.TRACTION, Demand.GRIP}),
        "equipment": (frozenset({Equipment.HIGH_BAR}),),
        "harder": None,
        "aliases": ("branch hang",),
    }
)
SOUND = (HOLD, HARDER_HOLD, PRESS, HANG)
