"""Movements, athletes and exposures for the tests of the training rules."""

from datetime import date, timedelta

from scheduler.catalogue.values import (
    Arm,
    Chain,
    Direction,
    Equipment,
    Joint,
    Loading,
    Measure,
    Movement,
    Sides,
    Tempo,
)
from scheduler.pain.values import Side
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.doses import next_dose
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import (
    NO_RESISTANCE,
    AthleteProfile,
    Band,
    Dose,
    Exposure,
    Quality,
    ReferenceValues,
    ReserveAnswer,
    Rung,
    SetDone,
)

RULEBOOK = default_rulebook()
MONDAY = date(2026, 3, 2)


def movement(key="press", **changes):
    """A one-arm-at-a-time dumbbell press unless told otherwise."""
    fields = {
        "name": key.replace("_", " "),
        "direction": Direction.VERTICAL_PUSH,
        "chain": Chain.OPEN,
        "arm": Arm.BENT,
        "tempo": Tempo.CONTROLLED,
        "measure": Measure.REPS,
        "loading": Loading.EXTERNAL,
        "family": key,
        "limiting_joint": Joint.SHOULDER,
        "equipment": (frozenset({Equipment.DUMBBELLS}),),
        "how_to": "Press.",
        "common_fault": "Leaning back.",
    }
    return Movement(key=key, **(fields | changes))


PRESS = movement()
OVERHEAD_HOLD = movement(
    "one_arm_overhead_hold",
    arm=Arm.STRAIGHT,
    tempo=Tempo.STATIC,
    measure=Measure.HOLD_S,
    sides=Sides.EACH,
)
PUSH_UP_HOLD = movement(
    "push_up_hold",
    direction=Direction.HORIZONTAL_PUSH,
    chain=Chain.CLOSED,
    arm=Arm.STRAIGHT,
    tempo=Tempo.STATIC,
    measure=Measure.HOLD_S,
    loading=Loading.NONE,
    equipment=(frozenset({Equipment.FLOOR}),),
    harder="long_push_up_hold",
)
PULL_UP = movement(
    "pull_up",
    direction=Direction.VERTICAL_PULL,
    chain=Chain.CLOSED,
    loading=Loading.BODYWEIGHT_PLUS,
    bodyweight_share=1.0,
    limiting_joint=Joint.ELBOW,
    equipment=(frozenset({Equipment.HIGH_BAR}),),
)
BAND_PULL = movement(
    "band_pull",
    direction=Direction.HORIZONTAL_PULL,
    equipment=(frozenset({Equipment.BAND}),),
)


def athlete(loads_kg=(4, 6, 8, 10, 11, 12), **changes):
    """An athlete of 80 kg with two years of training and dumbbells."""
    fields = {
        "reference": ReferenceValues.MEN,
        "body_mass_kg": 80.0,
        "training_age_months": 24.0,
        "equipment": frozenset({Equipment.DUMBBELLS, Equipment.BAND, Equipment.HIGH_BAR}),
        "loads_kg": {Equipment.DUMBBELLS: tuple(float(kg) for kg in loads_kg)},
        "bands": (
            Band(key="green", family="loops", rank=2, help_kg=15),
            Band(key="red", family="loops", rank=1, help_kg=8),
        ),
    }
    return AthleteProfile(**(fields | changes))


def facts(of=PRESS, quality=Quality.STRENGTH_ENDURANCE, **changes):
    """An ordinary slot of three sets in the fifth week."""
    fields = {
        "movement": of,
        "quality": quality,
        "profile": athlete(),
        "planned_sets": 3,
        "weeks_trained": 4,
        "pulling_exposures": 9,
    }
    return DoseFacts(**(fields | changes))


def dose(of=PRESS, quality=Quality.STRENGTH_ENDURANCE, *, target, kg=None, **changes):
    """A dose of three sets as it would have been sent."""
    fields = {
        "rung": NO_RESISTANCE if kg is None else Rung(load_kg=kg),
        "sets": 3,
        "floor": max(1, -(-target * 4 // 5)),
        "rest_s": 90,
        "reserve_asked": 2 if of.measure is Measure.REPS else 10,
    }
    return Dose(
        movement_key=of.key,
        quality=quality,
        measure=of.measure,
        target=target,
        **(fields | changes),
    )


def left(amount, *, or_more=False):
    """The tap after the last set."""
    return ReserveAnswer(left=amount, is_at_least=or_more)


def done(of_dose: Dose, *values, reserve=None, day=0, rung=None):
    """An exposure; without values every set was done at its target."""
    values = values or (of_dose.target,) * of_dose.sets
    return Exposure(
        on=MONDAY + timedelta(days=day),
        dose=of_dose,
        sets=tuple(SetDone(value=value, rung=rung) for value in values),
        reserve=reserve,
    )


def done_by_side(of_dose: Dose, *, left_values, right_values, day=0, reserve=None):
    """An exposure of a one-sided movement."""
    sets = [SetDone(side=Side.LEFT, value=value) for value in left_values]
    sets += [SetDone(side=Side.RIGHT, value=value) for value in right_values]
    return Exposure(
        on=MONDAY + timedelta(days=day), dose=of_dose, sets=tuple(sets), reserve=reserve
    )


def after(*history, **changes):
    """The next dose after a history."""
    return next_dose(history, facts=facts(**changes), rulebook=RULEBOOK)


def codes(decision):
    """The codes of a decision's reasons."""
    return [why.code for why in decision.reasons]
