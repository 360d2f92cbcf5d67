"""Why a dose is not more than it is: what it takes to go further, from what was decided."""

from collections.abc import Sequence

from scheduler.reasons import Reason, reason
from scheduler.training.dose_rules import StepRules
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Dose

STEPS = frozenset(
    {
        DoseReason.STEP_IN_TIME,
        DoseReason.STEP_IN_REPS,
        DoseReason.STEP_IN_METRES,
        DoseReason.STEP_IN_LOAD,
        DoseReason.STEP_IN_BIG_LOAD,
        DoseReason.STEP_IN_BAND,
        DoseReason.STEP_PAST_TOP,
        DoseReason.STEP_IN_REST,
        DoseReason.STEP_BY_ESTIMATE,
        DoseReason.SET_GIVEN_BACK,
        DoseReason.PLAINLY_LIGHT,
        DoseReason.PLAINLY_LIGHT_BAND,
        DoseReason.PLAINLY_EASY,
        DoseReason.AFTER_TRY,
        DoseReason.MORE_SETS_FIRST,
        DoseReason.READY_FOR_HARDER,
    }
)
"""Reasons of a dose that got harder: it did so by one thing."""
LOWER = frozenset(
    {
        DoseReason.DOWN_AFTER_MISSES,
        DoseReason.DOWN_NOTHING_LEFT,
        DoseReason.DOWN_LITTLE_LEFT,
        DoseReason.LIGHTER_TAKEN,
        DoseReason.LIGHTER_UNLISTED,
    }
)
"""Reasons of a dose that got easier."""


def why_not_more(dose: Dose, reasons: Sequence[Reason], *, steps: StepRules) -> Reason | None:
    """Return what keeps a dose from being more; None where the deciding reason says it itself.

    Parameters: ``dose`` as decided for next time; ``reasons``, the deciding one first. A dose
    that stays says why by its own reason; one that rose did so by one thing, one that fell goes
    up again by the ordinary steps, and a first one is careful (CP).
    """
    codes = {one.code for one in reasons}
    if not reasons:
        return None
    figures = {"target": dose.target, "sets": dose.sets, "asked": dose.reserve_asked}
    source = steps.exposures_at_top.source
    if codes & STEPS:
        needed = steps.exposures_at_top.whole
        return reason(DoseReason.ONE_THING_AT_A_TIME, source, needed=needed, **figures)
    if codes & LOWER:
        return reason(DoseReason.UP_AGAIN, source, **figures)
    if codes & {DoseReason.FIRST_CAREFUL, DoseReason.FIRST_FROM_BEST, DoseReason.NEW_QUALITY}:
        return reason(DoseReason.GOES_ON_FROM_REPORT, source, **figures)
    return None
