"""When a capacity has changed by more than its own uncertainty."""

import math

from scheduler.reasons import Decision, reason
from scheduler.training.capacity import Capacity
from scheduler.training.training_reasons import CapacityReason
from scheduler.training.typical_error import NORMAL_95


def real_change(before: Capacity, now: Capacity) -> Decision[bool]:
    """Decide whether an estimate moved by more than both estimates' uncertainty together.

    Parameters: ``before`` and ``now``, the same capacity on two days, in the same unit. On the
    log scale the change must pass 1.96 times the root of both variances. For two single looks at
    failure that is the published detectable change, 1.96 sqrt(2) SEM (hopkins2000); the filter's
    later looks narrow it. That both share observations makes it careful, never bold (CH).
    """
    change = now.level.mean - before.level.mean
    needed = NORMAL_95 * math.sqrt(before.level.variance + now.level.variance)
    is_real = abs(change) > needed
    code = CapacityReason.REAL_CHANGE if is_real else CapacityReason.WITHIN_UNCERTAINTY
    why = reason(
        code,
        "hopkins2000",
        was=round(before.value, 1),
        now=round(now.value, 1),
        change_pct=round(100 * math.expm1(change)),
        needed_pct=round(100 * math.expm1(needed)),
    )
    return Decision(value=is_real, reasons=(why,))


def likely_range(known: Capacity) -> tuple[float, float]:
    """Return between what a capacity lies with 95 % probability [unit of the capacity]."""
    half = NORMAL_95 * math.sqrt(known.level.variance)
    return (math.exp(known.level.mean - half), math.exp(known.level.mean + half))
