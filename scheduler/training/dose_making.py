"""From what is asked to a whole dose: sets, floor, rest, clock, and the careful bounds on sets."""

import math

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Direction, Measure
from scheduler.pain.values import Level
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.dose_bounds import reserve_asked
from scheduler.training.dose_facts import DoseFacts, is_new_to_pulling
from scheduler.training.dose_rules import RoundsRow
from scheduler.training.gaps import sets_after_share
from scheduler.training.rulebook import Rulebook
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Dose, Exposure, Neighbour, Rung


class Asked(BaseModel):
    """The part of a dose that steps change; the rest follows from the facts.

    ``target`` [s, repetitions or m]; ``held_back`` [sets]; ``rest_for_work`` [s of rest for each
    s of work], for rounds.
    """

    model_config = ConfigDict(frozen=True)

    target: int = Field(ge=1)
    rung: Rung
    held_back: int = 0
    rest_for_work: float | None = None
    neighbour: Neighbour = Neighbour.STAY


class SetCount(BaseModel):
    """How many sets a dose gets, and what limited them."""

    model_config = ConfigDict(frozen=True)

    sets: int
    has_slow_lowering: bool
    reasons: tuple[Reason, ...]


def asked_before(exposure: Exposure) -> Asked:
    """Return what an earlier dose asked."""
    dose = exposure.dose
    return Asked(
        target=dose.target,
        rung=dose.rung,
        held_back=dose.held_back,
        rest_for_work=dose.rest_for_work,
    )


def make_dose(
    asked: Asked, *, facts: DoseFacts, rulebook: Rulebook, reasons: tuple[Reason, ...]
) -> Decision[Dose]:
    """Build the whole dose from what is asked; ``reasons`` come first, those for the sets after."""
    asked = _guarded(asked, facts=facts, rulebook=rulebook)
    count = count_sets(asked, facts=facts, rulebook=rulebook)
    work_s = _work_s(asked, facts=facts, rulebook=rulebook)
    dose = Dose(
        movement_key=facts.movement.key,
        quality=facts.quality,
        measure=facts.movement.measure,
        sets=count.sets,
        target=asked.target,
        floor=floor_of(target=asked.target, share=rulebook.steps.floor_share.value),
        rung=asked.rung,
        rest_s=_rest_s(asked, work_s=work_s, facts=facts, rulebook=rulebook),
        work_s=work_s,
        rest_for_work=asked.rest_for_work,
        reserve_asked=reserve_asked(facts, rulebook=rulebook),
        held_back=asked.held_back,
        has_slow_lowering=count.has_slow_lowering,
        neighbour=asked.neighbour,
    )
    return Decision(value=dose, reasons=(*reasons, *count.reasons))


def floor_of(*, target: int, share: float) -> int:
    """Return the floor [unit of ``target``]: ``share`` [0-1] of it, rounded up, at least 1 (CH)."""
    return max(1, math.ceil(round(target * share, 6)))


def count_sets(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> SetCount:
    """Return the sets of a dose [sets, 1 or more]: the week's, cut by every bound that applies.

    The row's upper bound always holds; its lower one gives way to the first two weeks, to cuts
    and to what the week has room for.
    """
    sets = min(facts.planned_sets, int(rulebook.sets_of(facts.movement, facts.quality).most or 1))
    reasons: list[Reason] = []
    start = rulebook.start
    if facts.weeks_trained < start.careful_weeks.value and sets > start.careful_sets.whole:
        sets = start.careful_sets.whole
        reasons.append(
            reason(DoseReason.FIRST_WEEKS_TWO_SETS, start.careful_weeks.source, sets=sets)
        )
    sets = max(1, sets - asked.held_back)
    is_guarded = _is_guarded(facts, rulebook=rulebook)
    if is_guarded:
        sets = _guarded_sets(sets, target=asked.target, rulebook=rulebook)
        reasons.append(reason(DoseReason.PULL_GUARD, rulebook.guards.pull_sets_most.source))
    if facts.pain.level is Level.EASE and not facts.pain.is_swapped:
        cut = rulebook.guards.ease_cut
        sets = sets_after_share(sets=sets, share=1 - cut.value)
        reasons.append(reason(DoseReason.EASE_CUT, cut.source, sets=sets))
    return SetCount(sets=sets, has_slow_lowering=not is_guarded, reasons=tuple(reasons))


def _is_guarded(facts: DoseFacts, *, rulebook: Rulebook) -> bool:
    """Tell whether this is one of the first pulls for repetitions of a new or returning athlete."""
    direction: Direction = facts.movement.direction
    return (
        not direction.is_push
        and facts.movement.measure is Measure.REPS
        and facts.pulling_exposures < rulebook.guards.pull_exposures.whole
        and is_new_to_pulling(facts.profile, returning=facts.returning, rulebook=rulebook)
    )


def _guarded(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> Asked:
    """Keep a guarded target within the repetitions that are allowed in all."""
    if not _is_guarded(facts, rulebook=rulebook):
        return asked
    most = rulebook.guards.pull_reps_most.whole
    return asked.model_copy(update={"target": min(asked.target, most)})


def _guarded_sets(sets: int, *, target: int, rulebook: Rulebook) -> int:
    guards = rulebook.guards
    by_reps = guards.pull_reps_most.whole // target
    return max(1, min(sets, guards.pull_sets_most.whole, by_reps))


def _work_s(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> int | None:
    """Return the clock of one round's work [s], None where the dose is not rounds."""
    if asked.rest_for_work is None:
        return None
    if facts.movement.measure is not Measure.REPS:
        return asked.target
    per_rep_s = facts.movement.seconds_per_rep or rulebook.steps.seconds_per_rep.value
    return math.ceil(asked.target * per_rep_s)


def _rest_s(asked: Asked, *, work_s: int | None, facts: DoseFacts, rulebook: Rulebook) -> int:
    """Return the rest [s]: the middle of the row (CH), or the clock's share of the work."""
    rest = rulebook.quality(facts.quality).rest_s
    if work_s is not None and asked.rest_for_work is not None:
        return math.ceil(work_s * asked.rest_for_work)
    if rest is None:
        message = f"expected a rest in the row of {facts.quality.value}"
        raise ValueError(message)
    return round((rest.least + (rest.most or rest.least)) / 2)


def longest_rest_for_work(facts: DoseFacts, *, rulebook: Rulebook) -> float | None:
    """Return the rest [s for each s of work] that rounds begin with; None for other doses."""
    rounds: RoundsRow | None = rulebook.quality(facts.quality).rounds
    return None if rounds is None else rounds.rest_for_work.most
