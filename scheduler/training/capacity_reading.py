"""From reported sets and the reserve answer to one look at a capacity."""

from collections.abc import Sequence
from datetime import date

from scheduler.catalogue.values import Loading, Measure, Movement
from scheduler.pain.values import Side
from scheduler.training.capacity import Observation
from scheduler.training.endurance_time import is_fitted, time_at_other_load_s
from scheduler.training.exposure_reading import sets_of_arm
from scheduler.training.repetition_maximum import Equation, is_trusted, one_repetition_maximum
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Best, Exposure, Rung

SECONDS_AS_ONE_REP = 5.0  # [s in reserve] ch: one tap of the seconds counts as one repetition


def observe(
    exposure: Exposure, *, movement: Movement, arm: Side, body_mass_kg: float, reference_kg: float
) -> Observation | None:
    """Turn the sets of one exposure into one look at the capacity of an arm.

    The last set done with its reserve answer is the one that was asked about; an unanswered or
    top answer says "at least". Repetitions with a load become a one-repetition maximum [kg]
    (epley1985), the body's share added; holds with a load become seconds at ``reference_kg``
    [kg] by the joint's exponent (freylaw2010). None where the sets say nothing usable: none
    done, more repetitions than the equation is trusted for, or times outside the fitted range.
    """
    sets = [one for one in sets_of_arm(exposure, arm=arm) if one.value > 0]
    if not sets:
        return None
    answer = exposure.reserve
    left = answer.left if answer else 0.0
    done = sets[-1]
    rung = exposure.dose.rung if done.rung is None else done.rung
    value = at_reference(
        done.value + left,
        rung=rung,
        movement=movement,
        body_mass_kg=body_mass_kg,
        reference_kg=reference_kg,
    )
    if value is None:
        return None
    is_reps = exposure.dose.measure is Measure.REPS
    return Observation(
        on=exposure.on,
        value=value,
        is_at_least=answer is None or answer.is_at_least,
        reserve=left if is_reps else left / SECONDS_AS_ONE_REP,
    )


def at_reference(
    to_failure: float, *, rung: Rung, movement: Movement, body_mass_kg: float, reference_kg: float
) -> float | None:
    """Return a set to failure [s or repetitions] in the unit of the family's capacity."""
    load_kg = resistance_kg(rung, movement=movement, body_mass_kg=body_mass_kg)
    if load_kg is None:
        return to_failure
    if movement.measure is Measure.REPS:
        if not is_trusted(reps=to_failure):
            return None
        return one_repetition_maximum(load_kg=load_kg, reps=to_failure, equation=Equation.EPLEY)
    if load_kg == reference_kg:
        return to_failure
    joint = movement.limiting_joint
    at_reference_s = time_at_other_load_s(
        endurance_s=to_failure, load_kg=load_kg, other_load_kg=reference_kg, joint=joint
    )
    times = (to_failure, at_reference_s)
    return at_reference_s if all(is_fitted(endurance_s=t, joint=joint) for t in times) else None


def resistance_kg(rung: Rung, *, movement: Movement, body_mass_kg: float) -> float | None:
    """Return what is lifted [kg], the body's share added and help taken off; None if unknown."""
    if movement.loading is Loading.EXTERNAL:
        return rung.load_kg or None
    share = movement.bodyweight_share
    if share is None or movement.loading is Loading.NONE:
        return None
    if movement.loading is Loading.ASSISTED and rung.assist_kg is None:
        return None
    lifted_kg = share * body_mass_kg + (rung.load_kg or 0.0) - (rung.assist_kg or 0.0)
    return lifted_kg if lifted_kg > 0 else None


def observe_best(
    best: Best,
    *,
    on: date,
    movement: Movement,
    decrement: float,
    body_mass_kg: float,
    reference_kg: float,
) -> Observation | None:
    """Turn one fresh tested set into a look at the last of several sets.

    ``decrement`` [fraction, 0-1], see :func:`decrement_factor`, is what the last set keeps of a
    fresh one. None where the set is outside what the formulas are trusted for.
    """
    value = at_reference(
        best.value,
        rung=best.rung,
        movement=movement,
        body_mass_kg=body_mass_kg,
        reference_kg=reference_kg,
    )
    return None if value is None else Observation(on=on, value=value * decrement)


def decrement_factor(history: Sequence[Exposure], *, rulebook: Rulebook) -> float:
    """Return what the last set keeps of the first [fraction, 0-1]: own mean with a prior (CH).

    The prior of 0.8 counts as one exposure, so that a few exposures outweigh it.
    """
    own = [
        min(1.0, one.sets[-1].value / one.sets[0].value)
        for one in history
        if len(one.sets) > 1 and one.sets[0].value > 0
    ]
    prior = rulebook.capacity.decrement_prior.value
    return (prior + sum(own)) / (1 + len(own))
