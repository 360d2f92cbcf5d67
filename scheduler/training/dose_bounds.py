"""The bounds that a dose keeps: of its quality's row, of accessories, of rounds, of first weeks."""

import math

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Measure, Role
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.dose_rules import QualityRow, RoundsRow
from scheduler.training.labelled import LabelledRange
from scheduler.training.loads import StepSize
from scheduler.training.permissions import other_exposure_reps
from scheduler.training.rulebook import Rulebook


class TargetBounds(BaseModel):
    """The least and most target of a set [s, repetitions or m]; whether they come from too little.

    ``is_too_hard``: even the least is more than the fresh maximum allows.
    """

    model_config = ConfigDict(frozen=True)

    least: int
    most: int
    source: str
    is_too_hard: bool = False

    def nearest(self, target: float) -> int:
        """Return ``target`` [same unit], whole, moved inside the bounds."""
        return min(max(math.floor(target), self.least), self.most)


def target_bounds(facts: DoseFacts, *, rulebook: Rulebook) -> TargetBounds:
    """Return the bounds of the target [s, repetitions or m] for a slot's quality and movement.

    Carries counted in metres take the row's seconds at the rulebook's walking pace. Rounds stay
    between 40 and 60 % of the fresh maximum; where 60 % of it is below the row, the low row of
    repetitions holds, and so it does where no maximum is known. Beside a maximal exposure
    general strength keeps to 70-80 % of the one-repetition maximum.
    """
    row = rulebook.quality(facts.quality)
    span, factor = _row_range(facts.movement.measure, row, rulebook=rulebook)
    least, most = math.ceil(span.least * factor), math.floor((span.most or span.least) * factor)
    if facts.beside_maximal and facts.movement.measure is Measure.REPS:
        least, most = other_exposure_reps(rulebook=rulebook)
    if row.rounds is None:
        return TargetBounds(least=least, most=most, source=span.source)
    return _round_bounds(facts, least=least, most=most, rounds=row.rounds)


def _row_range(
    measure: Measure, row: QualityRow, *, rulebook: Rulebook
) -> tuple[LabelledRange, float]:
    """Return the row's range for a measure, and what one unit of it is in that measure."""
    if measure is Measure.REPS:
        return row.reps, 1.0
    if row.hold_s is None:
        message = f"expected repetitions: this quality has no row for {measure.value}"
        raise ValueError(message)
    pace = rulebook.steps.carry_pace_m_per_s.value if measure is Measure.CARRY_M else 1.0
    return row.hold_s, pace


def _round_bounds(facts: DoseFacts, *, least: int, most: int, rounds: RoundsRow) -> TargetBounds:
    share = rounds.share_of_fresh_maximum
    is_reps = facts.movement.measure is Measure.REPS
    low = rounds.low_reps
    if facts.fresh_maximum is None:
        if is_reps:
            return TargetBounds(least=int(low.least), most=int(low.most or 0), source=low.source)
        return TargetBounds(least=least, most=least, source=share.source)
    floor_target = math.ceil(round(share.least * facts.fresh_maximum, 6))
    top_target = math.floor(round((share.most or 1.0) * facts.fresh_maximum, 6))
    if is_reps and top_target < least:
        least, most = int(low.least), int(low.most or 0)
    return TargetBounds(
        least=min(max(least, floor_target), most),
        most=max(least, min(most, top_target)),
        source=share.source,
        is_too_hard=top_target < least,
    )


def past_top(bounds: TargetBounds, *, size: StepSize, rulebook: Rulebook) -> int:
    """Return how far the target [same unit] goes before a step of ``size``: the top, or past it.

    Before an owned step of more than 10 % and up to 25 %: 25 % past the top; before a larger or
    unknown one: 50 % (CH).
    """
    extra = {
        StepSize.MODERATE: rulebook.steps.past_top_moderate.value,
        StepSize.LARGE: rulebook.steps.past_top_large.value,
    }.get(size, 0.0)
    return math.ceil(round(bounds.most * (1 + extra), 6))


def reserve_asked(facts: DoseFacts, *, rulebook: Rulebook) -> float:
    """Return what is asked to be left after the last set [s for time and metres, repetitions]."""
    is_reps = facts.movement.measure is Measure.REPS
    row = rulebook.quality(facts.quality)
    asked = row.reserve_reps.least if is_reps else row.reserve_hold_s.value
    if facts.movement.role is Role.ACCESSORY:
        accessories = rulebook.accessories
        own = accessories.reserve_reps if is_reps else accessories.reserve_hold_s
        asked = max(asked, own.value)
    if facts.is_upkeep:
        extras = rulebook.stages.extras
        own = extras.upkeep_reserve_reps if is_reps else extras.upkeep_reserve_hold_s
        asked = max(asked, own.value)
    return asked
