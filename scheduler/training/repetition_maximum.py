"""One-repetition maximum from a set of several repetitions: four published equations, one table.

Repetitions at a fixed percentage differ widely between people (6-26 at 70 %, zourdos2021), so no
estimate is shown or used without its uncertainty (see ``capacity``).
"""

import math
from enum import StrEnum

EPLEY_REPS = 30.0  # [repetitions] epley1985: w(1 + r/30)
BRZYCKI_REPS = 37.0  # [repetitions] brzycki1993: 36w/(37 - r)
LOMBARDI_POWER = 0.10  # [1] lombardi1989: w r^0.10
MAYHEW_FLOOR_PCT = 52.2  # [%] mayhew1992: 100w/(52.2 + 41.9 exp(-0.055 r))
MAYHEW_SPAN_PCT = 41.9  # [%] mayhew1992: same equation
MAYHEW_RATE = 0.055  # [1/repetition] mayhew1992: same equation
TRUSTED_REPS_MOST = 12  # [repetitions] essentials2016: ch. 17, estimates from few repetitions

PERCENT_BY_REPS = {
    1: 100,
    2: 95,
    3: 93,
    4: 90,
    5: 87,
    6: 85,
    7: 83,
    8: 80,
    9: 77,
    10: 75,
    11: 70,
    12: 67,
    15: 65,
}  # [% of one-repetition maximum] essentials2016: ch. 17, table of percentages


class Equation(StrEnum):
    """Which published equation."""

    EPLEY = "epley"
    BRZYCKI = "brzycki"
    LOMBARDI = "lombardi"
    MAYHEW = "mayhew"


def one_repetition_maximum(*, load_kg: float, reps: float, equation: Equation) -> float:
    """Estimate the one-repetition maximum [kg] from a set to failure.

    Parameters: ``load_kg`` [kg, above 0] of the set; ``reps`` [repetitions, 1 or more], done or
    done plus left. Sources: epley1985, brzycki1993, lombardi1989, mayhew1992. One repetition is
    the load itself in each (special case: Epley and Mayhew would say more). Not trusted above
    about 12 repetitions (:func:`is_trusted`); Brzycki diverges at 37 and is refused from there.

    Raises:
        ValueError: below one repetition, or where the equation is not defined.

    """
    if reps < 1:
        message = f"expected at least one repetition, got {reps}"
        raise ValueError(message)
    if reps == 1:
        return load_kg
    return load_kg * _factor(reps, equation)


def _factor(reps: float, equation: Equation) -> float:
    """Return maximum / load for a set of ``reps`` [repetitions, above 1]."""
    if equation is Equation.EPLEY:
        return 1 + reps / EPLEY_REPS
    if equation is Equation.LOMBARDI:
        return float(reps**LOMBARDI_POWER)
    if equation is Equation.MAYHEW:
        return 100 / (MAYHEW_FLOOR_PCT + MAYHEW_SPAN_PCT * math.exp(-MAYHEW_RATE * reps))
    if reps >= BRZYCKI_REPS:
        message = f"expected fewer than {BRZYCKI_REPS:.0f} repetitions, got {reps}"
        raise ValueError(message)
    return (BRZYCKI_REPS - 1) / (BRZYCKI_REPS - reps)


def maximum_from_table(*, load_kg: float, reps: int) -> float:
    """Estimate the one-repetition maximum [kg] from the handbook's table of percentages.

    Parameters: ``load_kg`` [kg]; ``reps`` [repetitions, one of the table's rows]. Source:
    essentials2016, ch. 17.

    Raises:
        ValueError: where the table has no row.

    """
    if reps not in PERCENT_BY_REPS:
        message = f"expected repetitions of the table {sorted(PERCENT_BY_REPS)}, got {reps}"
        raise ValueError(message)
    return load_kg * 100 / PERCENT_BY_REPS[reps]


def reps_to_failure(*, load_kg: float, maximum_kg: float) -> float:
    """Return how many repetitions a load allows [repetitions, 1 or more]: Epley turned round.

    Parameters: ``load_kg`` [kg, above 0]; ``maximum_kg`` [kg]. Source: epley1985. A load at or
    above the maximum gives 0: none can be promised.
    """
    if load_kg > maximum_kg:
        return 0.0
    return max(1.0, EPLEY_REPS * (maximum_kg / load_kg - 1))


def is_trusted(*, reps: float) -> bool:
    """Tell whether an estimate from so many repetitions is worth using (essentials2016)."""
    return 1 <= reps <= TRUSTED_REPS_MOST
