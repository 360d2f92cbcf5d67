"""Session load, and how even a week of it was.

The ratio of acute to chronic load is not used: it predicts no better than random denominators
(Lolli et al. 2019; Impellizzeri et al. 2021).
"""

import statistics
from collections.abc import Sequence
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

DAYS_A_WEEK = 7  # [days] foster1998: daily loads of one week, rest days as 0


class Undefined(StrEnum):
    """Why a week has no monotony."""

    NO_LOAD = "no_load"
    ALL_DAYS_EQUAL = "all_days_equal"


class WeekLoad(BaseModel):
    """One week of session loads [effort x minutes], its monotony [1] and strain [same as load].

    Monotony and strain are ``Undefined`` where the formula divides by a spread of nothing.
    """

    model_config = ConfigDict(frozen=True)

    load: float
    monotony: float | Undefined
    strain: float | Undefined


def session_load(*, effort: float, duration_min: float) -> float:
    """Return the load of one session [effort x minutes].

    Parameters: ``effort`` [0-10], the athlete's answer for the whole session; ``duration_min``
    [min, 0 or more]. Source: foster2001, session effort times minutes.

    Raises:
        ValueError: for an effort outside 0-10 or a negative duration.

    """
    if not 0 <= effort <= 10:
        message = f"expected an effort of 0 to 10, got {effort}"
        raise ValueError(message)
    if duration_min < 0:
        message = f"expected a duration of 0 minutes or more, got {duration_min}"
        raise ValueError(message)
    return effort * duration_min


def week_load(daily_loads: Sequence[float]) -> WeekLoad:
    """Return load, monotony and strain of a week.

    Parameters: ``daily_loads`` [effort x minutes], seven of them, rest days as 0. Source:
    foster1998, monotony = daily mean / standard deviation, strain = load x monotony. Which
    standard deviation is not stated there: n - 1 is used here.

    Raises:
        ValueError: for other than seven days.

    """
    if len(daily_loads) != DAYS_A_WEEK:
        message = f"expected {DAYS_A_WEEK} days, rest days as 0, got {len(daily_loads)}"
        raise ValueError(message)
    load = sum(daily_loads)
    if load == 0:
        return WeekLoad(load=0, monotony=Undefined.NO_LOAD, strain=Undefined.NO_LOAD)
    if min(daily_loads) == max(daily_loads):
        equal = Undefined.ALL_DAYS_EQUAL
        return WeekLoad(load=load, monotony=equal, strain=equal)
    monotony = statistics.mean(daily_loads) / statistics.stdev(daily_loads)
    return WeekLoad(load=load, monotony=monotony, strain=load * monotony)
