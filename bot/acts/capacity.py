"""What an athlete can do with a movement today: folded anew from what is stored, arm by arm."""

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from bot.acts.tested import tested_of
from bot.turn import Turn
from scheduler.catalogue.values import Loading, Measure, Movement, Sides
from scheduler.pain.values import Side
from scheduler.training.baseline_values import TestedSet
from scheduler.training.capacity import Capacity, Observation, estimate
from scheduler.training.capacity_reading import decrement_factor, observe, resistance_kg
from scheduler.training.capacity_targets import sure_target
from scheduler.training.dose_bounds import target_bounds
from scheduler.training.dose_facts import DoseFacts, EstimatedReach
from scheduler.training.repetition_maximum import reps_to_failure
from scheduler.training.tested_sets import observe_tested
from scheduler.training.tries import reference_of
from scheduler.training.values import Dose, Exposure, Rung
from storage.queries import history

LOOKS_MOST = 24  # [exposures] ch: behind half a year the estimate has forgotten what it saw
LOOKED_BACK = timedelta(weeks=26)  # [weeks] ch: as far as the estimate remembers
SHARED = {Loading.BODYWEIGHT_PLUS, Loading.ASSISTED}
"""Loadings whose movements compare in kilograms, the body's share and the help counted."""


@dataclass(frozen=True)
class Known:
    """What was seen of a movement: its latest exposures, tries among them, and of its kin.

    ``tested`` are the guided tests of both, each a look at a full effort.
    """

    own: tuple[Exposure, ...]
    kin: tuple[tuple[Movement, Exposure], ...]
    tested: tuple[tuple[Movement, TestedSet], ...] = ()


def seen(turn: Turn, athlete_id: int, movement: Movement, *, before: date | None) -> Known:
    """Read the latest exposures of a movement and of what shares its capacity.

    A movement that was not done for so long goes on from where it was, however long ago.
    """
    kin = kin_of(turn, movement)
    since = (before or turn.now.date()) - LOOKED_BACK
    found = history.latest_exposures(
        turn.tx, athlete_id, [movement.key, *kin], most=LOOKS_MOST, before=before, since=since
    )
    if all(one.dose.movement_key != movement.key for one in found):
        earlier = history.latest_exposures(
            turn.tx, athlete_id, [movement.key], most=LOOKS_MOST, before=since
        )
        found = (*earlier, *found)
    own = [one for one in found if one.dose.movement_key == movement.key]
    library = turn.house.library.movements
    return Known(
        own=tuple(own),
        kin=tuple((library[one.dose.movement_key], one) for one in found),
        tested=tuple(
            (library[one.movement_key], one)
            for one in tested_of(turn, athlete_id, [movement.key, *kin], before=before)
        ),
    )


def kin_of(turn: Turn, movement: Movement) -> tuple[str, ...]:
    """Return the other movements of the family that compare in kilograms, by key.

    Where the body is no known part of the load, two movements of one family at the same weight
    are not equally hard: each keeps a capacity of its own.
    """
    if not _compares(movement):
        return ()
    return tuple(
        key
        for key, other in turn.house.library.movements.items()
        if other.family == movement.family and key != movement.key and _compares(other)
    )


def _compares(movement: Movement) -> bool:
    return movement.loading in SHARED and movement.bodyweight_share is not None


def capacities(
    turn: Turn, known: Known, *, facts: DoseFacts, reference_kg: float
) -> tuple[Capacity, ...]:
    """Fold what was seen into an estimate for each arm that works; none where none was seen."""
    arms = (Side.LEFT, Side.RIGHT) if facts.movement.sides is Sides.EACH else (Side.BOTH,)
    found = (
        _capacity(turn, known, arm=arm, facts=facts, reference_kg=reference_kg) for arm in arms
    )
    return tuple(one for one in found if one is not None)


def _capacity(
    turn: Turn, known: Known, *, arm: Side, facts: DoseFacts, reference_kg: float
) -> Capacity | None:
    looks = looks_of(turn, known, arm=arm, facts=facts, reference_kg=reference_kg)
    return estimate(looks, rulebook=turn.house.rulebook)


def looks_of(
    turn: Turn, known: Known, *, arm: Side, facts: DoseFacts, reference_kg: float
) -> list[Observation]:
    """Return every usable look at an arm's capacity, tests among them, the earliest first."""
    at: dict[str, Any] = {
        "arm": arm,
        "body_mass_kg": facts.profile.body_mass_kg,
        "reference_kg": reference_kg,
    }
    trained = [observe(exposure, movement=movement, **at) for movement, exposure in known.kin]
    factor = decrement_factor(known.own, rulebook=turn.house.rulebook)
    tested = [
        observe_tested(one, movement=movement, decrement=factor, **at)
        for movement, one in known.tested
    ]
    looks = [one for one in (*tested, *trained) if one is not None]
    return sorted(looks, key=lambda one: one.on)


def reach(
    turn: Turn, known: Known, *, dose: Dose, facts: DoseFacts, on: date
) -> EstimatedReach | None:
    """Return the largest target that is sure at a dose's resistance, of the weaker arm."""
    reference_kg = reference_of(dose.rung, facts=facts)
    found = [
        sure_target(
            one,
            most=target_bounds(facts, rulebook=turn.house.rulebook).most,
            reserve=dose.reserve_asked,
            movement=facts.movement,
            rung=dose.rung,
            body_mass_kg=facts.profile.body_mass_kg,
            reference_kg=reference_kg,
            on=on,
            rulebook=turn.house.rulebook,
        )
        for one in capacities(turn, known, facts=facts, reference_kg=reference_kg)
    ]
    return min(found, key=lambda one: one.sure_target, default=None)


def fresh_maximum(turn: Turn, known: Known, *, facts: DoseFacts) -> float | None:
    """Return what a fresh set to failure comes to [s or repetitions], at the latest resistance.

    The estimate is of the last set, so that what sets lose on the way is put back.
    """
    if not known.own:
        return None
    rung = known.own[-1].dose.rung
    reference_kg = reference_of(rung, facts=facts)
    found = capacities(turn, known, facts=facts, reference_kg=reference_kg)
    values = [value_at_rung(one.value, rung=rung, facts=facts) for one in found]
    usable = [value for value in values if value > 0]
    if not usable:
        return None
    return min(usable) / decrement_factor(known.own, rulebook=turn.house.rulebook)


def value_at_rung(value: float, *, rung: Rung, facts: DoseFacts) -> float:
    """Return a capacity's value at a resistance as seconds, metres or repetitions to failure.

    A maximum that the resistance is above gives 0: no repetition can be promised.
    """
    load_kg = resistance_kg(rung, movement=facts.movement, body_mass_kg=facts.profile.body_mass_kg)
    if facts.movement.measure is not Measure.REPS or load_kg is None:
        return value
    return reps_to_failure(load_kg=load_kg, maximum_kg=value)
