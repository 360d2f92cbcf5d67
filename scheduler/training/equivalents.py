"""What may stand in for a loaded standard where its load is not owned."""

import math

from scheduler.catalogue.values import Measure
from scheduler.reasons import Decision, reason
from scheduler.training.endurance_time import is_fitted, time_at_other_load_s
from scheduler.training.repetition_maximum import (
    Equation,
    is_trusted,
    one_repetition_maximum,
    reps_to_failure,
)
from scheduler.training.standards import Requirement
from scheduler.training.training_reasons import GateReason


def equivalent(asked: Requirement, *, other_load_kg: float) -> Decision[Requirement | None]:
    """Turn a loaded standard into one at a load that is owned, inside the published ranges.

    Parameters: ``other_load_kg`` [kg in each hand, above 0]. Holds and carries by the joint's
    endurance exponent (freylaw2010), both times inside the fitted range; repetitions by epley1985
    up to 12. None where it is outside: then the coach decides on a clip.
    """
    if asked.load_kg is None:
        return _no_equivalent(asked, other_load_kg=other_load_kg)
    source = "epley1985" if asked.measure is Measure.REPS else "freylaw2010"
    target = (
        _equivalent_reps(asked, other_load_kg=other_load_kg)
        if asked.measure is Measure.REPS
        else _equivalent_time(asked, load_kg=asked.load_kg, other_load_kg=other_load_kg)
    )
    if target is None:
        return _no_equivalent(asked, other_load_kg=other_load_kg)
    new = asked.model_copy(
        update={"target": math.ceil(round(target, 6)), "load_kg": other_load_kg, "source": source}
    )
    why = reason(GateReason.EQUIVALENT, source, load_kg=other_load_kg, target=new.target)
    return Decision(value=new, reasons=(why,))


def _equivalent_time(asked: Requirement, *, load_kg: float, other_load_kg: float) -> float | None:
    other_s = time_at_other_load_s(
        endurance_s=asked.target, load_kg=load_kg, other_load_kg=other_load_kg, joint=asked.joint
    )
    times = (float(asked.target), other_s)
    return other_s if all(is_fitted(endurance_s=t, joint=asked.joint) for t in times) else None


def _equivalent_reps(asked: Requirement, *, other_load_kg: float) -> float | None:
    reps = asked.target + asked.reserve_least
    maximum_kg = one_repetition_maximum(
        load_kg=asked.load_kg or 0.0, reps=reps, equation=Equation.EPLEY
    )
    other = reps_to_failure(load_kg=other_load_kg, maximum_kg=maximum_kg)
    target = other - asked.reserve_least
    is_usable = is_trusted(reps=reps) and is_trusted(reps=other) and target >= 1
    return target if is_usable else None


def _no_equivalent(asked: Requirement, *, other_load_kg: float) -> Decision[Requirement | None]:
    why = reason(
        GateReason.EQUIVALENT_OUT_OF_RANGE, asked.source, key=asked.key, load_kg=other_load_kg
    )
    return Decision(value=None, reasons=(why,))
