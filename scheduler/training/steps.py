"""How a dose gets harder: one thing at a time, the smallest first."""

from collections.abc import Sequence

from scheduler.catalogue.values import Loading, Measure, Role
from scheduler.pain.values import Level
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.dose_bounds import TargetBounds, past_top, target_bounds
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.dose_making import Asked, longest_rest_for_work
from scheduler.training.dose_rules import StepRules
from scheduler.training.exposure_reading import (
    is_as_asked,
    is_at_target,
    is_never_lower,
    plainly_light_running,
    running,
)
from scheduler.training.loads import NextRung, StepSize, next_rung
from scheduler.training.rulebook import Rulebook
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Exposure, Neighbour

STEP_CODES = {
    Measure.HOLD_S: DoseReason.STEP_IN_TIME,
    Measure.CARRY_S: DoseReason.STEP_IN_TIME,
    Measure.REPS: DoseReason.STEP_IN_REPS,
    Measure.CARRY_M: DoseReason.STEP_IN_METRES,
}
"""What a step of the target is called, by what is measured."""


def step_up(
    asked: Asked, *, history: Sequence[Exposure], facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked]:
    """Step what was asked by one thing: a set held back, the target, the rest, or the load.

    Called after an exposure that earned it. Where pain is watched, load and harder neighbours
    stay shut (pain rules). What is plainly light does not wait for the top of the range. Before a
    large owned step the target goes past the top first (CH).
    """
    if asked.held_back > 0:
        return _changed(asked, DoseReason.SET_GIVEN_BACK, "ch", held_back=asked.held_back - 1)
    bounds = target_bounds(facts, rulebook=rulebook)
    following = next_rung(
        asked.rung, movement=facts.movement, profile=facts.profile, steps=rulebook.steps
    )
    light = _step_if_plainly_light(
        asked, following, history=history, bounds=bounds, facts=facts, rulebook=rulebook
    )
    if light is not None:
        return light
    size = following.size if following else StepSize.ORDINARY
    limit = past_top(bounds, size=size, rulebook=rulebook)
    if asked.target < limit:
        return _step_target(asked, bounds=bounds, limit=limit, facts=facts, rulebook=rulebook)
    shorter = _step_rest(asked, facts=facts, rulebook=rulebook)
    if shorter is not None:
        return shorter
    waits = _reason_to_wait(history, facts=facts, rulebook=rulebook)
    if waits is not None:
        return Decision(value=asked, reasons=(waits,))
    if following is not None:
        return _step_load(asked, following, bounds=bounds, facts=facts, rulebook=rulebook)
    return _look_harder(asked, facts=facts, rulebook=rulebook)


def target_step(*, target: int, measure: Measure, steps: StepRules) -> int:
    """Return the step of a target [its unit]: +5 s to 40 s, +10 s above; +1-2 repetitions."""
    if measure is Measure.REPS:
        is_many = target >= steps.many_reps_from.value
        return steps.many_reps_step.whole if is_many else steps.few_reps_step.whole
    if measure is Measure.CARRY_M:
        return steps.carry_step_m.whole
    is_long = target >= steps.long_hold_from_s.value
    return steps.long_hold_step_s.whole if is_long else steps.short_hold_step_s.whole


def _step_target(
    asked: Asked, *, bounds: TargetBounds, limit: int, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked]:
    measure = facts.movement.measure
    step = target_step(target=asked.target, measure=measure, steps=rulebook.steps)
    is_past = asked.target >= bounds.most
    new = min(asked.target + step, limit if is_past else bounds.most)
    code = DoseReason.STEP_PAST_TOP if is_past else STEP_CODES[measure]
    why = reason(code, "ch", was=asked.target, target=new, top=bounds.most)
    return Decision(value=asked.model_copy(update={"target": new}), reasons=(why,))


def _step_rest(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> Decision[Asked] | None:
    """Shorten the rest of rounds by one step of the clock, None where it is at its shortest."""
    rounds = rulebook.quality(facts.quality).rounds
    if rounds is None or asked.rest_for_work is None:
        return None
    shortest = rounds.rest_for_work.least
    if asked.rest_for_work <= shortest:
        return None
    new = max(shortest, asked.rest_for_work - rounds.rest_for_work_step.value)
    source = rounds.rest_for_work_step.source
    return _changed(asked, DoseReason.STEP_IN_REST, source, rest_for_work=new)


def _reason_to_wait(
    history: Sequence[Exposure], *, facts: DoseFacts, rulebook: Rulebook
) -> Reason | None:
    """Return why the load may not step yet: watched pain, or one good exposure too few."""
    if facts.pain.level >= Level.WATCH:
        return reason(DoseReason.SAME_PAIN_NO_LOAD, "silbernagel2007", level=facts.pain.level.value)
    needed = rulebook.steps.exposures_at_top
    is_good = is_at_target if facts.movement.role is Role.ACCESSORY else is_as_asked
    good = running(history, lambda one: is_good(one, movement=facts.movement))
    if good < needed.whole:
        return reason(
            DoseReason.ONE_MORE_AT_TOP, needed.source, exposures=good, needed=needed.whole
        )
    return None


def _step_if_plainly_light(
    asked: Asked,
    following: NextRung | None,
    *,
    history: Sequence[Exposure],
    bounds: TargetBounds,
    facts: DoseFacts,
    rulebook: Rulebook,
) -> Decision[Asked] | None:
    """Take the next resistance or movement where the present one is plainly light; else None.

    Two exposures in a row with every set at target and the top answer (CP). While nothing but
    top answers was ever given, a load is felt out: one is enough, for a step of up to twice the
    load (CH). Time or repetitions do not rise with it. Weight is put on the body only after the
    top of the range, as ever.
    """
    is_on_the_body = facts.movement.loading is Loading.BODYWEIGHT_PLUS
    if facts.pain.level >= Level.WATCH or asked.rest_for_work is not None or is_on_the_body:
        return None
    light = plainly_light_running(history, movement=facts.movement)
    is_two = light >= rulebook.steps.too_light_exposures.whole
    if following is None:
        return _look_harder_early(asked, facts=facts) if is_two else None
    if following.rung.load_kg is None:
        return _lighter_band_left(asked, following, bounds=bounds) if is_two else None
    most_kg = rulebook.steps.feeling_out_times_most.value * (asked.rung.load_kg or 0.0)
    is_felt_out = is_never_lower(history) and light >= 1 and following.rung.load_kg <= most_kg
    if not is_felt_out and (not is_two or following.size is StepSize.LARGE):
        return None
    is_small = following.size is not StepSize.LARGE
    target = bounds.nearest(asked.target) if is_small else bounds.least
    why = reason(
        DoseReason.PLAINLY_LIGHT,
        rulebook.steps.too_light_exposures.source,
        was_kg=asked.rung.load_kg or 0.0,
        load_kg=following.rung.load_kg,
        target=target,
    )
    new = asked.model_copy(update={"rung": following.rung, "target": target})
    return Decision(value=new, reasons=(why,))


def _lighter_band_left(
    asked: Asked, following: NextRung, *, bounds: TargetBounds
) -> Decision[Asked]:
    new = asked.model_copy(update={"rung": following.rung, "target": bounds.least})
    why = reason(DoseReason.PLAINLY_LIGHT_BAND, "cp", target=bounds.least)
    return Decision(value=new, reasons=(why,))


def _look_harder_early(asked: Asked, *, facts: DoseFacts) -> Decision[Asked] | None:
    if facts.movement.harder is None:
        return None
    why = reason(DoseReason.PLAINLY_EASY, "cp", harder=facts.movement.harder)
    return Decision(value=asked.model_copy(update={"neighbour": Neighbour.HARDER}), reasons=(why,))


def _step_load(
    asked: Asked, following: NextRung, *, bounds: TargetBounds, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked]:
    """Take the next owned resistance at the bottom of the range; a large step with a set fewer."""
    is_ordinary = following.size is StepSize.ORDINARY
    fewer = 0 if is_ordinary else rulebook.steps.fewer_sets_at_large_step.whole
    code = DoseReason.STEP_IN_LOAD if is_ordinary else DoseReason.STEP_IN_BIG_LOAD
    if following.rung.band is not None:
        code = DoseReason.STEP_IN_BAND
    new = asked.model_copy(
        update={
            "rung": following.rung,
            "target": bounds.least,
            "held_back": min(fewer, max(0, facts.planned_sets - 1)),
            "rest_for_work": longest_rest_for_work(facts, rulebook=rulebook),
        }
    )
    why = reason(
        code,
        rulebook.steps.load_step_share.source if is_ordinary else "ch",
        was_kg=asked.rung.load_kg or 0.0,
        load_kg=following.rung.load_kg or 0.0,
        target=bounds.least,
    )
    return Decision(value=new, reasons=(why,))


def _look_harder(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> Decision[Asked]:
    """Propose the harder neighbour, or say that there is nothing harder to take."""
    source = rulebook.steps.exposures_at_top.source
    if facts.movement.harder is None:
        return Decision(
            value=asked, reasons=(reason(DoseReason.NOTHING_HEAVIER, source, target=asked.target),)
        )
    why = reason(DoseReason.READY_FOR_HARDER, source, harder=facts.movement.harder)
    return Decision(value=asked.model_copy(update={"neighbour": Neighbour.HARDER}), reasons=(why,))


def _changed(asked: Asked, code: DoseReason, source: str, **change: float) -> Decision[Asked]:
    return Decision(
        value=asked.model_copy(update=change), reasons=(reason(code, source, **change),)
    )
