"""Owned resistances in order, and how big the step to the next is."""

import pytest

from scheduler.catalogue.values import Equipment, Loading
from scheduler.training.loads import StepSize, nearest_owned, next_rung, rung_below, rungs
from scheduler.training.values import Band, Rung
from tests.training.athletes import (
    BAND_PULL,
    PRESS,
    PULL_UP,
    PUSH_UP_HOLD,
    RULEBOOK,
    athlete,
    movement,
)

STEPS = RULEBOOK.steps


def kg(*loads):
    return [Rung(load_kg=load) for load in loads]


def following(current_kg, loads_kg, of=PRESS):
    return next_rung(
        Rung(load_kg=current_kg),
        movement=of,
        profile=athlete(loads_kg=loads_kg),
        steps=STEPS,
    )


def test_weights_are_in_order_and_only_of_the_implement_asked_for():
    profile = athlete(
        loads_kg=(8, 6),
        equipment=frozenset({Equipment.DUMBBELLS, Equipment.BARBELL}),
    )
    loads = {**profile.loads_kg, Equipment.BARBELL: (40.0,)}
    profile = profile.model_copy(update={"loads_kg": loads})
    assert list(rungs(PRESS, profile=profile)) == kg(6, 8)


def test_two_implements_that_both_fit_lend_both_their_weights():
    swing = movement(
        equipment=(frozenset({Equipment.DUMBBELLS}), frozenset({Equipment.KETTLEBELLS}))
    )
    profile = athlete(
        equipment=frozenset({Equipment.DUMBBELLS, Equipment.KETTLEBELLS}), loads_kg=(10,)
    )
    loads = {**profile.loads_kg, Equipment.KETTLEBELLS: (8.0, 12.0)}
    profile = profile.model_copy(update={"loads_kg": loads})
    assert list(rungs(swing, profile=profile)) == kg(8, 10, 12)


def test_without_load_there_is_one_rung():
    assert rungs(PUSH_UP_HOLD, profile=athlete()) == (Rung(),)


def test_bands_of_the_biggest_family_are_ranked():
    bands = (
        Band(key="thick", family="long", rank=3),
        Band(key="thin", family="long", rank=1),
        Band(key="mini", family="short", rank=2),
    )
    found = rungs(BAND_PULL, profile=athlete(bands=bands))
    assert [rung.band for rung in found] == ["thin", "thick"]


def test_help_by_the_feet_needs_no_band():
    dip = movement("foot_assisted_dip", loading=Loading.ASSISTED, equipment=PRESS.equipment)
    assert rungs(dip, profile=athlete()) == (Rung(),)


@pytest.mark.parametrize(
    ("current_kg", "loads_kg", "next_kg", "size"),
    [
        # PUBLISHED acsm2009: 2-10 %; DERIVED shares in the comments
        (10, (10, 10.1, 10.5, 11), 10.5, StepSize.ORDINARY),  # 1 % passed over, 5 %
        (10, (10, 11), 11, StepSize.ORDINARY),  # 10 %
        # CHOSEN: above 10 and up to 25 %, and above
        (10, (10, 12), 12, StepSize.MODERATE),  # 20 %
        (8, (8, 10), 10, StepSize.MODERATE),  # 25 %
        (6, (6, 8), 8, StepSize.LARGE),  # 33 %
    ],
)
def test_how_big_the_next_owned_step_is(current_kg, loads_kg, next_kg, size):
    step = following(current_kg, loads_kg)
    assert (step.rung.load_kg, step.size) == (next_kg, size)


def test_added_weight_counts_with_the_body():
    # DERIVED: 80 -> 84 kg is 5 %
    step = next_rung(Rung(), movement=PULL_UP, profile=athlete(loads_kg=(4,)), steps=STEPS)
    assert step is not None
    assert (step.rung.load_kg, step.size) == (4, StepSize.ORDINARY)


def test_an_unknown_share_of_the_body_makes_the_step_large():
    unknown = PULL_UP.model_copy(update={"bodyweight_share": None})
    step = next_rung(Rung(), movement=unknown, profile=athlete(loads_kg=(4,)), steps=STEPS)
    assert step is not None
    assert step.size is StepSize.LARGE


def test_there_is_nothing_above_the_heaviest_nor_below_the_lightest():
    profile = athlete(loads_kg=(6, 8))
    assert following(8, (6, 8)) is None
    assert rung_below(Rung(load_kg=6), movement=PRESS, profile=profile) is None
    assert rung_below(Rung(load_kg=8), movement=PRESS, profile=profile) == Rung(load_kg=6)


def test_the_nearest_owned_is_never_heavier():
    profile = athlete(loads_kg=(6, 8))
    assert nearest_owned(Rung(load_kg=7), movement=PRESS, profile=profile) == Rung(load_kg=6)
    assert nearest_owned(Rung(load_kg=5), movement=PRESS, profile=profile) is None


def test_from_a_load_that_is_not_owned_there_is_no_next_step():
    profile = athlete(loads_kg=(6, 8))
    assert following(7, (6, 8)) is None
    assert rung_below(Rung(load_kg=7), movement=PRESS, profile=profile) is None
