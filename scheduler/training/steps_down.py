"""How a dose gets easier after misses: load, else time or repetitions, else a set."""

import math

from scheduler.catalogue.values import Measure
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.dose_bounds import TargetBounds, target_bounds
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.dose_making import Asked, count_sets
from scheduler.training.loads import rung_below, step_share
from scheduler.training.rulebook import Rulebook
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Neighbour


def step_down(
    asked: Asked, *, why: Reason, facts: DoseFacts, rulebook: Rulebook, keeps_sets: bool = False
) -> Decision[Asked]:
    """Make what was asked easier by one thing, in the rulebook's order (CH).

    The owned load within 10 % below, else 10 % of the time, else 1-2 repetitions, else a set;
    at the bottom of everything any lighter owned load, and only then the easier neighbour.
    ``keeps_sets`` where the sets are all done and only too hard: no set is taken away then.
    """
    bounds = target_bounds(facts, rulebook=rulebook)
    fewer = () if keeps_sets else (_set,)
    for lower in (_little_load, _target, *fewer, _any_load):
        new = lower(asked, bounds=bounds, facts=facts, rulebook=rulebook)
        if new is not None:
            return Decision(value=new, reasons=(why,))
    easier = asked.model_copy(update={"neighbour": Neighbour.EASIER})
    return Decision(value=easier, reasons=(why, reason(DoseReason.TRY_EASIER, why.source)))


def _little_load(
    asked: Asked, *, bounds: TargetBounds, facts: DoseFacts, rulebook: Rulebook
) -> Asked | None:
    below = rung_below(asked.rung, movement=facts.movement, profile=facts.profile)
    if below is None:
        return None
    up = step_share(
        below, asked.rung, movement=facts.movement, body_mass_kg=facts.profile.body_mass_kg
    )
    if up is None:
        return None
    down = 1 - 1 / (1 + up)
    if round(down, 9) > rulebook.misses.load_share_most.value:
        return None
    return asked.model_copy(update={"rung": below, "target": min(asked.target, bounds.most)})


def _target(
    asked: Asked, *, bounds: TargetBounds, facts: DoseFacts, rulebook: Rulebook
) -> Asked | None:
    rules = rulebook.misses
    if facts.movement.measure is Measure.REPS:
        is_many = asked.target >= rulebook.steps.many_reps_from.value
        new = asked.target - (rules.many_reps.whole if is_many else rules.few_reps.whole)
    else:
        new = math.floor(round(asked.target * (1 - rules.time_share.value), 6))
    new = max(new, bounds.least)
    return asked.model_copy(update={"target": new}) if new < asked.target else None


def _set(
    asked: Asked, *, bounds: TargetBounds, facts: DoseFacts, rulebook: Rulebook
) -> Asked | None:
    del bounds  # a set less is a set less, whatever its target
    fewer = asked.model_copy(update={"held_back": asked.held_back + 1})
    sets_now = count_sets(asked, facts=facts, rulebook=rulebook).sets
    is_less = count_sets(fewer, facts=facts, rulebook=rulebook).sets < sets_now
    return fewer if is_less else None


def _any_load(
    asked: Asked, *, bounds: TargetBounds, facts: DoseFacts, rulebook: Rulebook
) -> Asked | None:
    del rulebook  # lighter is lighter, however large the step
    below = rung_below(asked.rung, movement=facts.movement, profile=facts.profile)
    if below is None:
        return None
    return asked.model_copy(update={"rung": below, "target": min(asked.target, bounds.most)})
