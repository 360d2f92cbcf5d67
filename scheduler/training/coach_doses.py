"""A dose that the coach set: what to say before it is accepted, and when it holds."""

from collections.abc import Sequence
from datetime import date, timedelta

from scheduler.catalogue.values import Measure
from scheduler.pain.values import Level
from scheduler.reasons import Decision, Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.coach_plan import DoseSet
from scheduler.training.dose_bounds import target_bounds
from scheduler.training.dose_facts import DoseFacts, is_new_to_pulling
from scheduler.training.dose_making import Asked, floor_of, make_dose
from scheduler.training.loads import rungs
from scheduler.training.rulebook import Rulebook
from scheduler.training.steps import target_step
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Dose, Exposure, Rung

SETS_MOST = 12  # [sets] ch: more of one movement in a session is a slip of the thumb
TARGET_MOST = {
    Measure.HOLD_S: 300,  # [s] ch: a hold of more than five minutes is a slip
    Measure.CARRY_S: 300,  # [s] ch
    Measure.CARRY_M: 400,  # [m] ch: one round of a track
    Measure.REPS: 60,  # [repetitions] ch
}
STALE_AFTER = timedelta(days=14)  # [days] cp: from this gap on sets are cut on the return


def impossible(dose: DoseSet, *, facts: DoseFacts) -> Reason | None:
    """Return what makes a dose one that cannot be asked at all, or None.

    A weight that is not owned is never asked (CP), nor numbers that only a slip of the thumb
    writes (CH).
    """
    most = TARGET_MOST[facts.movement.measure]
    if dose.sets > SETS_MOST or dose.target > most:
        return reason(DoseReason.COACH_SLIP, CH, sets_most=SETS_MOST, target_most=most)
    if dose.rung not in rungs(facts.movement, profile=facts.profile):
        return reason(DoseReason.COACH_NOT_OWNED, CP, asked_kg=dose.rung.load_kg or 0.0)
    return None


def against(
    dose: DoseSet,
    *,
    decided: Dose,
    done: Sequence[Exposure],
    facts: DoseFacts,
    rulebook: Rulebook,
) -> tuple[Reason, ...]:
    """Return everything that is to be said before the dose is accepted.

    Parameters: ``decided`` by the rules for the same day; ``done`` lately with the movement. The
    stage's row of sets and targets, the largest step of a load (acsm2009), the best single set so
    far, the bound on a newcomer's pulls, pain, and the way back after a gap.
    """
    checks = (
        _sets(dose, facts=facts, rulebook=rulebook),
        _target(dose, facts=facts, rulebook=rulebook),
        _load(dose, decided=decided, rulebook=rulebook),
        _best(dose, done=done, facts=facts, rulebook=rulebook),
        _pulls(dose, facts=facts, rulebook=rulebook),
        _circumstance(dose, decided=decided, facts=facts),
    )
    return tuple(one for one in checks if one is not None)


def _sets(dose: DoseSet, *, facts: DoseFacts, rulebook: Rulebook) -> Reason | None:
    row = rulebook.sets_of(facts.movement, facts.quality)
    most = row.most or row.least
    if dose.sets <= most:
        return None
    return reason(DoseReason.COACH_SETS_OUTSIDE, row.source, sets=dose.sets, sets_most=most)


def _target(dose: DoseSet, *, facts: DoseFacts, rulebook: Rulebook) -> Reason | None:
    bounds = target_bounds(facts, rulebook=rulebook)
    if bounds.least <= dose.target <= bounds.most:
        return None
    return reason(
        DoseReason.COACH_TARGET_OUTSIDE,
        bounds.source,
        target=dose.target,
        least=bounds.least,
        most=bounds.most,
        quality=facts.quality.value,
    )


def _load(dose: DoseSet, *, decided: Dose, rulebook: Rulebook) -> Reason | None:
    """Say a load that is more than the largest step (P) above what the rules ask for."""
    was, now = decided.rung.load_kg, dose.rung.load_kg
    share = rulebook.steps.load_step_share
    if was is None or not was or now is None or now <= was * (1 + (share.most or 0)) + 1e-9:
        return None
    return reason(DoseReason.COACH_LOAD_JUMP, share.source, was_kg=was, load_kg=now)


def _best(
    dose: DoseSet, *, done: Sequence[Exposure], facts: DoseFacts, rulebook: Rulebook
) -> Reason | None:
    """Say a target more than one step above the best single set with what was left in it (CH).

    Only sets at this resistance or a heavier one say anything; without one nothing is said.
    """
    reached = [
        set_done.value + (exposure.reserve.left if exposure.reserve else 0.0)
        for exposure in done
        for set_done in exposure.sets
        if _is_as_heavy(set_done.rung or exposure.dose.rung, dose.rung)
    ]
    if not reached:
        return None
    best = max(reached)
    measure = facts.movement.measure
    step = target_step(target=round(best), measure=measure, steps=rulebook.steps)
    if dose.target <= best + step:
        return None
    return reason(DoseReason.COACH_ABOVE_BEST, CH, target=dose.target, best=best)


def _is_as_heavy(done: Rung, asked: Rung) -> bool:
    if done.band is not None or asked.band is not None:
        return done == asked
    return (done.load_kg or 0.0) >= (asked.load_kg or 0.0)


def _pulls(dose: DoseSet, *, facts: DoseFacts, rulebook: Rulebook) -> Reason | None:
    """Say the bound on the first pulls for repetitions of somebody new to them (CP)."""
    guards = rulebook.guards
    is_guarded = (
        not facts.movement.direction.is_push
        and facts.movement.measure is Measure.REPS
        and facts.pulling_exposures < guards.pull_exposures.whole
        and is_new_to_pulling(facts.profile, returning=facts.returning, rulebook=rulebook)
    )
    if not is_guarded or dose.sets * dose.target <= guards.pull_reps_most.whole:
        return None
    return reason(
        DoseReason.COACH_ABOVE_PULLS,
        guards.pull_reps_most.source,
        reps=dose.sets * dose.target,
        reps_most=guards.pull_reps_most.whole,
    )


def _circumstance(dose: DoseSet, *, decided: Dose, facts: DoseFacts) -> Reason | None:
    if not is_more(dose, decided):
        return None
    if _hurts(facts):
        return reason(DoseReason.COACH_WAITS_FOR_PAIN, CP, level=facts.pain.level.value)
    if not facts.returning.may_step:
        return reason(DoseReason.COACH_AFTER_GAP, CP, share_of_sets=facts.returning.share_of_sets)
    if facts.is_lighter_week or facts.holds_level:
        return reason(DoseReason.COACH_IN_EASY_WEEK, CP)
    return None


def _hurts(facts: DoseFacts) -> bool:
    return facts.pain.level >= Level.EASE or not facts.pain.is_settled


def is_more(dose: DoseSet, decided: Dose) -> bool:
    """Tell whether a dose asks more than the rules in sets, target or load; bands count as more."""
    is_other_band = dose.rung.band != decided.rung.band
    is_heavier = (dose.rung.load_kg or 0.0) > (decided.rung.load_kg or 0.0)
    return dose.sets > decided.sets or dose.target > decided.target or is_heavier or is_other_band


def is_used(dose: DoseSet, done: Sequence[Exposure]) -> bool:
    """Tell whether the movement was done since the dose was set: then the rules go on from it."""
    return any(one.on >= dose.from_on for one in done)


def with_coach_dose(
    decided: Decision[Dose],
    *,
    dose: DoseSet,
    done: Sequence[Exposure],
    facts: DoseFacts,
    on: date,
    rulebook: Rulebook,
) -> Decision[Dose]:
    """Return the coach's dose for a day where it holds, else what the rules decided.

    It holds once: what is done with it is the exposure that the rules go on from, fewer sets as
    sets held back. While anything hurts in what the movement loads, on the way back after a
    clearing, or once a gap has come between (CP), more than the rules decide is not asked. A
    weight that is no longer owned is not either.
    """
    if on < dose.from_on or is_used(dose, done):
        return decided
    if dose.rung not in rungs(facts.movement, profile=facts.profile):
        return decided
    if is_more(dose, decided.value) and (why := _waits(dose, facts=facts, on=on)) is not None:
        return Decision(value=decided.value, reasons=(why, *decided.reasons))
    return _as_set(decided, dose=dose, facts=facts, rulebook=rulebook)


def _waits(dose: DoseSet, *, facts: DoseFacts, on: date) -> Reason | None:
    if _hurts(facts):
        return reason(DoseReason.COACH_WAITS_FOR_PAIN, CP, level=facts.pain.level.value)
    if not facts.returning.may_step and on - dose.from_on >= STALE_AFTER:
        return reason(DoseReason.COACH_AFTER_GAP, CP, share_of_sets=facts.returning.share_of_sets)
    return None


def _as_set(
    decided: Decision[Dose], *, dose: DoseSet, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Dose]:
    held_back = max(0, facts.planned_sets - dose.sets)
    asked = Asked(
        target=dose.target,
        rung=dose.rung,
        held_back=held_back,
        rest_for_work=decided.value.rest_for_work,
    )
    made = make_dose(asked, facts=facts, rulebook=rulebook, reasons=()).value
    share = rulebook.steps.floor_share.value
    whole = made.model_copy(
        update={
            "sets": dose.sets,
            "target": dose.target,
            "floor": floor_of(target=dose.target, share=share),
        }
    )
    why = reason(
        DoseReason.BY_COACH,
        CP,
        sets=dose.sets,
        target=dose.target,
        was_sets=decided.value.sets,
        was_target=decided.value.target,
    )
    return Decision(value=whole, reasons=(why,))
