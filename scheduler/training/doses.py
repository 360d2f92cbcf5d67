"""The dose of a movement: the first one, and the next one after what was reported.

The history of exposures is the state; every answer is a fold over it, so a corrected report gives
the corrected dose.
"""

from collections.abc import Sequence
from datetime import timedelta

from scheduler.catalogue.values import Role
from scheduler.pain.values import Level
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.dose_bounds import reserve_asked, target_bounds
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.dose_making import Asked, asked_before, count_sets, make_dose
from scheduler.training.exposure_reading import (
    is_at_target,
    is_enough_left,
    is_missed,
    is_nothing_left,
    lighter_rung_taken,
    running,
)
from scheduler.training.first_doses import easiest_asked, first_asked, first_asked_in_quality
from scheduler.training.loads import nearest_owned, rungs
from scheduler.training.rulebook import Rulebook
from scheduler.training.steps import step_up, target_step
from scheduler.training.steps_down import step_down
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Dose, Exposure, Rung

USUAL_SETS_OF = 4  # [exposures] ch: coming back to the usual sets after an easier week is no step


def next_dose(
    history: Sequence[Exposure], *, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Dose]:
    """Decide the dose of a movement from everything that was done with it.

    Parameters: ``history`` of this movement, oldest first; ``facts`` of the slot and the day.
    In the order of care: misses that run make it easier; pain, missed weeks and lighter weeks
    keep it; no answer keeps it; only then one thing gets harder. The bounds of the quality's row
    always hold, but for the target before a large owned step.
    """
    asked = _next_asked(history, facts=facts, rulebook=rulebook)
    return make_dose(asked.value, facts=facts, rulebook=rulebook, reasons=asked.reasons)


def _next_asked(
    history: Sequence[Exposure], *, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked]:
    history, last_try = _without_tries(history)
    if not history:
        return first_asked(facts, rulebook=rulebook)
    same = _lately_in_quality(history, facts=facts, rulebook=rulebook)
    if not same:
        return first_asked_in_quality(history, facts=facts, rulebook=rulebook)
    moved = _another_resistance(same[-1], facts=facts, rulebook=rulebook)
    if moved is not None:
        return moved
    asked = _inside_bounds(asked_before(same[-1]), facts=facts, rulebook=rulebook)
    if last_try is not None:
        return _after_try(asked, last_try, facts=facts, rulebook=rulebook)
    down = _down_because(same, facts=facts, rulebook=rulebook)
    if down is not None:
        is_only_hard = down.code == DoseReason.DOWN_LITTLE_LEFT
        return step_down(asked, why=down, facts=facts, rulebook=rulebook, keeps_sets=is_only_hard)
    kept = _kept_because(same, asked, facts=facts, rulebook=rulebook)
    if kept is not None:
        return Decision(value=asked, reasons=(kept,))
    return step_up(asked, history=same, facts=facts, rulebook=rulebook)


def _without_tries(history: Sequence[Exposure]) -> tuple[list[Exposure], Exposure | None]:
    """Return the ordinary exposures, and the try that came after them all, if one did."""
    ordinary = [one for one in history if not one.dose.is_try]
    last = history[-1] if history else None
    return ordinary, last if last is not None and last.dose.is_try else None


def _after_try(
    asked: Asked, tried: Exposure, *, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked]:
    """Go on after a try: from where as much is left as is asked, never lower than before (CH).

    Sets of 30 s with 10 s left are sets of 25 s with 15 s left. A try at another resistance, one
    that failed, or one without an answer says nothing new.
    """
    answer = tried.reserve
    is_told = answer is not None and is_at_target(tried, movement=facts.movement)
    if not is_told or answer is None or tried.dose.rung != asked.rung:
        return Decision(value=asked, reasons=(reason(DoseReason.SAME_AFTER_TRY, "ch"),))
    wanted = reserve_asked(facts, rulebook=rulebook)
    reached = tried.dose.target + answer.left - wanted
    target = target_bounds(facts, rulebook=rulebook).nearest(reached)
    if target <= asked.target:
        return Decision(value=asked, reasons=(reason(DoseReason.SAME_AFTER_TRY, "ch"),))
    why = reason(DoseReason.AFTER_TRY, "ch", was=asked.target, target=target, asked=wanted)
    return Decision(value=asked.model_copy(update={"target": target}), reasons=(why,))


def _lately_in_quality(
    history: Sequence[Exposure], *, facts: DoseFacts, rulebook: Rulebook
) -> list[Exposure]:
    """Return the exposures in the slot's quality, none if the last of them is too long ago (CH)."""
    same = [one for one in history if one.dose.quality is facts.quality]
    oldest = history[-1].on - timedelta(days=rulebook.gaps.long_from_days.value)
    return same if same and same[-1].on > oldest else []


def _another_resistance(
    last: Exposure, *, facts: DoseFacts, rulebook: Rulebook
) -> Decision[Asked] | None:
    """Follow a load that is no longer owned, or that the athlete took lighter; else None."""
    asked = asked_before(last)
    taken = lighter_rung_taken(last)
    code = DoseReason.LOAD_NO_LONGER_OWNED if taken is None else DoseReason.LIGHTER_TAKEN
    wanted = asked.rung if taken is None else taken
    owned = nearest_owned(wanted, movement=facts.movement, profile=facts.profile)
    why = reason(code, "ch", was_kg=asked.rung.load_kg or 0.0)
    if owned is None:
        unlisted = why if taken is None else _unlisted(taken, facts)
        return easiest_asked(facts, rulebook=rulebook, why=unlisted)
    if owned == asked.rung:
        return None
    inside = _inside_bounds(asked, facts=facts, rulebook=rulebook)
    return Decision(value=inside.model_copy(update={"rung": owned}), reasons=(why,))


def _unlisted(taken: Rung, facts: DoseFacts) -> Reason:
    """Say that a weight was taken which is lighter than all that are listed (CH)."""
    listed = rungs(facts.movement, profile=facts.profile)
    lightest_kg = min((rung.load_kg or 0.0 for rung in listed), default=0.0)
    return reason(
        DoseReason.LIGHTER_UNLISTED, "ch", took_kg=taken.load_kg or 0.0, load_kg=lightest_kg
    )


def _inside_bounds(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> Asked:
    """Raise a target that a changed row has left below its bottom.

    Rounds are only ever lowered, to the share of the fresh maximum that now holds: more is a step.
    """
    bounds = target_bounds(facts, rulebook=rulebook)
    if asked.rest_for_work is not None:
        return asked.model_copy(update={"target": min(asked.target, bounds.most)})
    return asked.model_copy(update={"target": max(asked.target, bounds.least)})


def _down_because(
    history: Sequence[Exposure], *, facts: DoseFacts, rulebook: Rulebook
) -> Reason | None:
    needed = rulebook.misses.running
    movement = facts.movement
    misses = running(history, lambda one: is_missed(one, movement=movement, rulebook=rulebook))
    if misses >= needed.whole:
        return reason(DoseReason.DOWN_AFTER_MISSES, needed.source, misses=misses)
    empty = running(history, is_nothing_left)
    if empty >= needed.whole:
        return reason(DoseReason.DOWN_NOTHING_LEFT, needed.source, exposures=empty)
    most = rulebook.misses.little_left_running
    little = running(history, lambda one: one.reserve is not None and not is_enough_left(one))
    if little >= most.whole:
        return reason(DoseReason.DOWN_LITTLE_LEFT, most.source, exposures=little)
    return None


def _kept_because(
    history: Sequence[Exposure], asked: Asked, *, facts: DoseFacts, rulebook: Rulebook
) -> Reason | None:
    """Return the first thing that keeps the dose as it is, in the order of care; else None."""
    last = history[-1]
    usual = max(one.dose.sets for one in history[-USUAL_SETS_OF:])
    by_circumstance = _kept_by_circumstance(asked, usual=usual, facts=facts, rulebook=rulebook)
    if by_circumstance is not None:
        return by_circumstance
    if is_missed(last, movement=facts.movement, rulebook=rulebook):
        return reason(DoseReason.SAME_MISSED, "ch", floor=last.dose.floor)
    if not is_at_target(last, movement=facts.movement):
        return reason(DoseReason.SAME_NOT_AT_TARGET, "ch", target=last.dose.target)
    if last.reserve is None:
        return _kept_unanswered(history, facts=facts, rulebook=rulebook)
    if not is_enough_left(last) and not _estimate_allows(asked, facts=facts, rulebook=rulebook):
        return reason(
            DoseReason.SAME_LITTLE_LEFT,
            "ch",
            left=last.reserve.left,
            asked=last.dose.reserve_asked,
        )
    return None


def _kept_unanswered(
    history: Sequence[Exposure], *, facts: DoseFacts, rulebook: Rulebook
) -> Reason | None:
    """Keep what was not judged; nobody is asked about accessories, which step after two (CP)."""
    if facts.movement.role is not Role.ACCESSORY:
        return reason(DoseReason.SAME_NO_ANSWER, "ch")
    needed = rulebook.steps.accessory_exposures
    good = running(history, lambda one: is_at_target(one, movement=facts.movement))
    if good >= needed.whole:
        return None
    return reason(DoseReason.ACCESSORY_TWICE, needed.source, exposures=good, needed=needed.whole)


def _kept_by_circumstance(
    asked: Asked, *, usual: int, facts: DoseFacts, rulebook: Rulebook
) -> Reason | None:
    """Return what of the week or the body keeps a dose; ``usual`` [sets] of the last exposures."""
    pain = facts.pain
    if pain.level >= Level.EASE or not pain.is_settled:
        return reason(
            DoseReason.SAME_PAIN,
            "silbernagel2007",
            level=pain.level.value,
            is_settled=pain.is_settled,
        )
    if not facts.returning.may_step:
        return reason(DoseReason.SAME_AFTER_GAP, "ch", share_of_sets=facts.returning.share_of_sets)
    if facts.is_lighter_week:
        return reason(DoseReason.SAME_LIGHTER_WEEK, "cp")
    if facts.holds_level:
        return reason(DoseReason.SAME_LEVEL_HELD, "cp")
    sets = count_sets(asked, facts=facts, rulebook=rulebook).sets
    if sets > usual:
        return reason(DoseReason.MORE_SETS_FIRST, "ch", was=usual, sets=sets)
    return None


def _estimate_allows(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> bool:
    """Tell whether enough observations say that the next step in the target is safe."""
    estimate = facts.estimate
    steps = rulebook.steps
    if estimate is None or estimate.observations < steps.observations_to_step.whole:
        return False
    step = target_step(target=asked.target, measure=facts.movement.measure, steps=steps)
    return estimate.sure_target >= asked.target + step
