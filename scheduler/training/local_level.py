"""A level that wanders, seen through noise, on irregular days.

The local-level model (durbinkoopman2012, ch. 2): y_t = level_t + noise, level_{t+1} = level_t +
drift, in closed form, with an exact diffuse start: the first observation is the level.
"""

import math

from pydantic import BaseModel, ConfigDict, Field

SMALLEST_TAIL = 1e-300  # [probability] ch: below it the tail's own asymptote is used


class Level(BaseModel):
    """What is known of a level: mean and variance [unit of the observations, its square]."""

    model_config = ConfigDict(frozen=True)

    mean: float
    variance: float = Field(ge=0)


class Moments(BaseModel):
    """Mean and variance of a distribution."""

    model_config = ConfigDict(frozen=True)

    mean: float
    variance: float


def first_level(*, observed: float, noise_variance: float) -> Level:
    """Return the level after the very first observation (exact diffuse start)."""
    return Level(mean=observed, variance=noise_variance)


def drifted(level: Level, *, days: float, drift_variance: float) -> Level:
    """Return the level after ``days`` [days, 0 or more] without an observation.

    ``drift_variance`` [square of the unit, a day]: uncertainty grows in proportion to the days,
    so an irregular or missing observation is a longer interval (durbinkoopman2012, sec. 2.7).
    """
    return level.model_copy(update={"variance": level.variance + days * drift_variance})


def updated(level: Level, *, observed: float, noise_variance: float) -> Level:
    """Return the level after an observation (durbinkoopman2012, sec. 2.2).

    K = P / F with F = P + noise; mean + K (y - mean); variance P (1 - K).
    """
    gain = level.variance / (level.variance + noise_variance)
    return Level(
        mean=level.mean + gain * (observed - level.mean), variance=level.variance * (1 - gain)
    )


def updated_at_least(level: Level, *, at_least: float, noise_variance: float) -> Level:
    """Return the level after an answer that says only "this or more".

    The unseen observation is a normal one cut off below ``at_least`` [unit of the level]; its
    mean stands for it, and its remaining spread is handed on: mean + K (E - mean), variance
    P - K^2 (F - V). With ``at_least`` far below it changes nothing; it never lowers the mean.
    """
    spread = level.variance + noise_variance
    gain = level.variance / spread
    seen = truncated_below(mean=level.mean, variance=spread, bound=at_least)
    return Level(
        mean=level.mean + gain * (seen.mean - level.mean),
        variance=max(0.0, level.variance - gain**2 * (spread - seen.variance)),
    )


def truncated_below(*, mean: float, variance: float, bound: float) -> Moments:
    """Return the moments of a normal distribution cut off below ``bound``.

    With a = (bound - mean) / sd and the ratio r = density(a) / tail(a): mean + sd r, and
    variance (1 + a r - r^2), the textbook moments. Far out r is taken from its asymptote.
    """
    sd = math.sqrt(variance)
    a = (bound - mean) / sd
    tail = math.erfc(a / math.sqrt(2)) / 2
    density = math.exp(-a * a / 2) / math.sqrt(2 * math.pi)
    ratio = density / tail if tail > SMALLEST_TAIL else a + 1 / a
    return Moments(
        mean=mean + sd * ratio, variance=max(0.0, variance * (1 + a * ratio - ratio * ratio))
    )


def probability_at_least(*, mean: float, variance: float, bound: float) -> float:
    """Return the probability [0-1] that a normal value is ``bound`` or more."""
    if variance == 0:
        return 1.0 if mean >= bound else 0.0
    return math.erfc((bound - mean) / math.sqrt(2 * variance)) / 2
