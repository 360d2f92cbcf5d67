"""The first dose of a movement, and the first in another quality: careful, from what is known."""

from collections.abc import Sequence

from scheduler.catalogue.values import Loading, Measure, Movement
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.dose_bounds import TargetBounds, target_bounds
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.dose_making import Asked, longest_rest_for_work
from scheduler.training.endurance_time import is_fitted, load_for_time_kg
from scheduler.training.exposure_reading import is_easier
from scheduler.training.loads import nearest_owned, rungs
from scheduler.training.repetition_maximum import Equation, one_repetition_maximum
from scheduler.training.rulebook import Rulebook
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import NO_RESISTANCE, Exposure, Neighbour, Rung


def first_asked(facts: DoseFacts, *, rulebook: Rulebook) -> Decision[Asked]:
    """Decide what a movement that was never done asks for.

    From a tested best: half of it in the first two weeks (CP), two thirds later (CH), inside the
    row; where that is below the row, a lighter owned load, else the easier neighbour is asked
    for. Without a test: the bottom of the row, at the lightest sensible owned load.
    """
    if facts.best is None:
        return _untested(facts, rulebook=rulebook)
    start = rulebook.start
    is_early = facts.weeks_trained < start.careful_weeks.value
    share = start.careful_share_of_best if is_early else start.share_of_best
    why = reason(DoseReason.FIRST_FROM_BEST, share.source, best=facts.best.value, share=share.value)
    return reach(
        value=facts.best.value,
        rung=facts.best.rung,
        share=share.value,
        why=why,
        facts=facts,
        rulebook=rulebook,
    )


def first_asked_in_quality(
    history: Sequence[Exposure], *, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked]:
    """Decide what a movement asks for in a quality that it was not trained in lately.

    The same load as last time with fewer seconds or repetitions is where a heavier quality
    begins: never a heavier load and a new quality at once. Where the new row asks for more than
    was asked before, a lighter owned load, by what was last done. Rounds begin at the least share
    of the fresh maximum.
    """
    last = history[-1]
    bounds = target_bounds(facts, rulebook=rulebook)
    why = reason(
        DoseReason.NEW_QUALITY,
        "ch",
        was=last.dose.quality.value,
        quality=facts.quality.value,
        target=bounds.nearest(last.dose.target),
    )
    owned = nearest_owned(last.dose.rung, movement=facts.movement, profile=facts.profile)
    reached = min(_worst_done(last), last.dose.target)
    if rulebook.quality(facts.quality).rounds is not None and owned is not None:
        if bounds.is_too_hard:
            return _too_hard(facts, bounds=bounds, rulebook=rulebook, why=why)
        return Decision(value=_asked(facts, bounds.least, owned, rulebook), reasons=(why,))
    if owned is not None and reached >= bounds.least:
        return Decision(
            value=_asked(facts, bounds.nearest(reached), owned, rulebook), reasons=(why,)
        )
    return reach(
        value=max(1.0, reached),
        rung=last.dose.rung,
        share=1.0,
        why=why,
        facts=facts,
        rulebook=rulebook,
    )


def reach(
    *, value: float, rung: Rung, share: float, why: Reason, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked]:
    """Decide on ``share`` [fraction] of ``value`` [s, repetitions or m] done at ``rung``."""
    bounds = target_bounds(facts, rulebook=rulebook)
    owned = nearest_owned(rung, movement=facts.movement, profile=facts.profile)
    if owned is not None and value * share >= bounds.least:
        target = bounds.nearest(value * share)
        return Decision(value=_asked(facts, target, owned, rulebook), reasons=(why,))
    lighter = _lighter_for(needed=bounds.least / share, value=value, rung=rung, facts=facts)
    if lighter is not None:
        note = reason(DoseReason.NEW_QUALITY_LIGHTER, "ch", load_kg=lighter.load_kg or 0.0)
        return Decision(value=_asked(facts, bounds.least, lighter, rulebook), reasons=(why, note))
    return _too_hard(facts, bounds=bounds, rulebook=rulebook, why=why)


def easiest_asked(facts: DoseFacts, *, rulebook: Rulebook, why: Reason) -> Decision[Asked]:
    """Decide on the bottom of the row at the easiest owned load, and ask for an easier one."""
    bounds = target_bounds(facts, rulebook=rulebook)
    return _too_hard(facts, bounds=bounds, rulebook=rulebook, why=why)


def _untested(facts: DoseFacts, *, rulebook: Rulebook) -> Decision[Asked]:
    bounds = target_bounds(facts, rulebook=rulebook)
    owned = rungs(facts.movement, profile=facts.profile)
    start = rulebook.start
    why = reason(DoseReason.FIRST_CAREFUL, start.untested_load_share.source, target=bounds.least)
    if not owned or bounds.is_too_hard:
        return _too_hard(facts, bounds=bounds, rulebook=rulebook, why=why)
    body_kg = facts.profile.body_mass_kg
    is_carry = facts.movement.measure in {Measure.CARRY_M, Measure.CARRY_S}
    share = start.untested_carry_share if is_carry else start.untested_load_share
    limit_kg = share.value * body_kg
    sensible = [rung for rung in owned if (rung.load_kg or 0.0) <= limit_kg and rung.band is None]
    rung = sensible[-1] if sensible and facts.movement.loading is Loading.EXTERNAL else owned[0]
    asked = _asked(facts, bounds.least, rung, rulebook)
    if (rung.load_kg or 0.0) > start.untested_load_share_most.value * body_kg:
        heavy = reason(DoseReason.TRY_EASIER, "ch", load_kg=rung.load_kg or 0.0)
        asked = asked.model_copy(update={"neighbour": Neighbour.EASIER})
        return Decision(value=asked, reasons=(why, heavy))
    return Decision(value=asked, reasons=(why,))


def _too_hard(
    facts: DoseFacts, *, bounds: TargetBounds, rulebook: Rulebook, why: Reason
) -> Decision[Asked]:
    owned = rungs(facts.movement, profile=facts.profile)
    rung = owned[0] if owned else NO_RESISTANCE
    code = DoseReason.TRY_EASIER if owned else DoseReason.NO_OWNED_LOAD
    asked = _asked(facts, bounds.least, rung, rulebook)
    return Decision(
        value=asked.model_copy(update={"neighbour": Neighbour.EASIER}),
        reasons=(why, reason(code, "ch", target=bounds.least)),
    )


def _lighter_for(*, needed: float, value: float, rung: Rung, facts: DoseFacts) -> Rung | None:
    """Return the heaviest owned load at which ``needed`` [s, repetitions] can be expected."""
    if rung.load_kg is None or facts.movement.loading is not Loading.EXTERNAL:
        return None
    limit_kg = _load_for(needed, value=value, load_kg=rung.load_kg, movement=facts.movement)
    owned = rungs(facts.movement, profile=facts.profile)
    light = [one for one in owned if one.load_kg is not None and one.load_kg <= limit_kg]
    return light[-1] if light else None


def _load_for(needed: float, *, value: float, load_kg: float, movement: Movement) -> float:
    """Return the load [kg] for ``needed`` [s, repetitions], above ``value`` done at ``load_kg``.

    Repetitions by epley1985, holds by the joint's curve inside its fitted range (freylaw2010).
    Outside it in proportion to the time: every published curve is steeper, so that a lighter load
    lasts at least that long, and one second below the range does not mean the lightest load (CH).
    """
    if movement.measure is Measure.REPS:
        maximum_kg = one_repetition_maximum(
            load_kg=load_kg, reps=max(1.0, value), equation=Equation.EPLEY
        )
        return maximum_kg / (1 + needed / 30)
    joint = movement.limiting_joint
    if not (
        is_fitted(endurance_s=value, joint=joint) and is_fitted(endurance_s=needed, joint=joint)
    ):
        return load_kg * value / needed
    return load_for_time_kg(
        endurance_s=value, load_kg=load_kg, other_endurance_s=needed, joint=joint
    )


def _worst_done(exposure: Exposure) -> float:
    """Return the least of the planned sets [s, repetitions or m]; one done easier counts as 0."""
    values = [0.0 if is_easier(one, exposure) else one.value for one in exposure.sets]
    return min(values, default=0.0)


def _asked(facts: DoseFacts, target: int, rung: Rung, rulebook: Rulebook) -> Asked:
    return Asked(
        target=target,
        rung=rung,
        rest_for_work=longest_rest_for_work(facts, rulebook=rulebook),
    )
