"""How far a test wanders by itself, and how much it must change to be more than that."""

import math
import statistics
from collections.abc import Sequence

NORMAL_95 = 1.96  # [standard deviations] hopkins2000: two-sided 95 % of a normal distribution


def typical_error(first: Sequence[float], second: Sequence[float]) -> float:
    """Return the typical error of a test done twice by the same people [unit of the test].

    Parameters: ``first`` and ``second`` trials [any one unit], same people in the same order, at
    least two. Source: hopkins2000, standard deviation (n - 1) of the differences / sqrt(2).

    Raises:
        ValueError: for trials of different or too small numbers of people.

    """
    if len(first) != len(second) or len(first) < 2:
        raise ValueError("expected two trials of the same two or more people")
    differences = [b - a for a, b in zip(first, second, strict=True)]
    return statistics.stdev(differences) / math.sqrt(2)


def detectable_change(*, error: float) -> float:
    """Return the smallest change that is more than wandering [unit of ``error``], at 95 %.

    Parameters: ``error`` [unit of the test], a typical error or a standard error of measurement.
    Source: hopkins2000, 1.96 sqrt(2) typical error.
    """
    return NORMAL_95 * math.sqrt(2) * error


def detectable_change_pct(*, variation_pct: float) -> float:
    """Return the smallest change [%] for a coefficient of variation ``variation_pct`` [%]."""
    return detectable_change(error=variation_pct)
