"""What this athlete may well have done, and what must be asked about first."""

from math import exp

from bot.reading.known import KnownItem
from scheduler.catalogue.values import Measure

LEAST_SHARE = 0.3  # [fraction of the target] CH: less is asked about
MOST_SHARE = 2.5  # [fraction of the target] CH: more is asked about where there is no estimate
ALWAYS_FINE = (0.6, 1.25)  # [fraction of the target] CH: near the plan nothing is doubted
SPREADS = 3.0  # [standard deviations, log scale] CH: above the own best
FEW_REPS = 4  # [repetitions] CH: a few more than a small target is no surprise
LOAD_SHARES = (0.4, 2.0)  # [fraction of the planned load] CH
MOST = {  # [s, repetitions, m] CH: never recorded above, whatever was planned
    Measure.HOLD_S: 1800.0,
    Measure.CARRY_S: 1800.0,
    Measure.REPS: 300.0,
    Measure.CARRY_M: 2000.0,
}
MOST_LOAD_KG = 400.0  # [kg] CH


def is_possible(value: float, load_kg: float | None, item: KnownItem) -> bool:
    """Tell whether a person can have done it at all."""
    is_load = load_kg is None or 0 <= load_kg <= MOST_LOAD_KG
    return is_load and 0 <= value <= MOST[item.measure]


def is_plausible(value: float, load_kg: float | None, item: KnownItem) -> bool:
    """Tell whether this athlete may well have done it, by the own estimate, else by the target."""
    if item.measure is Measure.REPS and not value.is_integer():
        return False
    low, high = ALWAYS_FINE
    if not is_plausible_load(load_kg, item):
        return False
    if low * item.target <= value <= high * item.target:
        return True
    return LEAST_SHARE * item.target <= value <= _most(item)


def _most(item: KnownItem) -> float:
    slack = item.target + FEW_REPS if item.measure is Measure.REPS else 0.0
    if item.estimate is None:
        return max(MOST_SHARE * item.target, slack)
    return item.estimate.likely * exp(SPREADS * item.estimate.spread_log)


def is_plausible_load(load_kg: float | None, item: KnownItem) -> bool:
    """Tell whether the load is near the planned one; no load where none was planned."""
    if load_kg is None or not item.load_kg:
        return not load_kg
    return LOAD_SHARES[0] * item.load_kg <= load_kg <= LOAD_SHARES[1] * item.load_kg


def is_planned_load(load_kg: float, item: KnownItem) -> bool:
    """Tell whether a bare figure is the planned load itself."""
    return item.load_kg is not None and abs(load_kg - item.load_kg) < 0.01
