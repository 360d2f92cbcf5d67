"""What an athlete can do in the last of several sets, by movement family and side.

On a log scale, since errors grow with the number. Observations are the truth, and the estimate is
a fold over them: a corrected report is refolded from its date.
"""

import math
from collections.abc import Sequence
from datetime import date

from pydantic import BaseModel, ConfigDict, Field

from scheduler.training.dose_rules import CapacityRules
from scheduler.training.local_level import (
    Level,
    drifted,
    first_level,
    probability_at_least,
    updated,
    updated_at_least,
)
from scheduler.training.rulebook import Rulebook


class Observation(BaseModel):
    """One look at a capacity: seconds or repetitions to failure, or load lifted once.

    ``value`` [s or repetitions to failure at no load, kg of one repetition, or s at a reference
    load]; ``is_at_least`` marks a bound from below; ``reserve`` [repetitions, or seconds / 5]
    how far from failure it was seen.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    on: date
    value: float = Field(gt=0)
    is_at_least: bool = False
    reserve: float = Field(default=0, ge=0)


class Capacity(BaseModel):
    """The estimate: ``level`` of the natural log of the value, after ``observations``."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    level: Level
    on: date
    observations: int = Field(ge=0)

    @property
    def value(self) -> float:
        """The middle estimate [unit of the observations]."""
        return math.exp(self.level.mean)


def estimate(observations: Sequence[Observation], *, rulebook: Rulebook) -> Capacity | None:
    """Fold observations, oldest first, into an estimate; None where there is none.

    The first one starts the level: exactly where it was seen; where it says only "at least", from
    there with a wide spread (CH).
    """
    if not observations:
        return None
    rules = rulebook.capacity
    capacity = _begin(observations[0], rules=rules)
    for observation in observations[1:]:
        capacity = _see(capacity, observation, rules=rules)
    return capacity


def noise_variance(*, reserve: float, rules: CapacityRules) -> float:
    """Return the noise of one look [log units squared]: larger the further from failure.

    Reserve is good to about one repetition when 0-5 are left (hackett2017) and poor beyond: twice
    the step there (CH).
    """
    trusted = min(reserve, rules.reserve_trusted_reps.value)
    beyond = reserve - trusted
    sd = rules.noise_at_failure.value + rules.noise_per_reserve.value * (trusted + 2 * beyond)
    return sd * sd


def _begin(observation: Observation, *, rules: CapacityRules) -> Capacity:
    seen = math.log(observation.value)
    noise = noise_variance(reserve=observation.reserve, rules=rules)
    level = first_level(observed=seen, noise_variance=noise)
    if observation.is_at_least:
        wide = rules.first_spread.value**2
        level = Level(mean=seen, variance=wide + noise)
    return Capacity(level=level, on=observation.on, observations=int(not observation.is_at_least))


def _see(capacity: Capacity, observation: Observation, *, rules: CapacityRules) -> Capacity:
    days = max(0, (observation.on - capacity.on).days)
    before = drifted(capacity.level, days=days, drift_variance=rules.drift_per_day.value**2)
    seen = math.log(observation.value)
    noise = noise_variance(reserve=observation.reserve, rules=rules)
    level = (
        updated_at_least(before, at_least=seen, noise_variance=noise)
        if observation.is_at_least
        else updated(before, observed=seen, noise_variance=noise)
    )
    return Capacity(
        level=level,
        on=max(capacity.on, observation.on),
        observations=capacity.observations + int(not observation.is_at_least),
    )


def probability_of(capacity: Capacity, *, needed: float, on: date, rulebook: Rulebook) -> float:
    """Return the probability [0-1] of ``needed`` [unit of the capacity] to failure on a day."""
    rules = rulebook.capacity
    days = max(0, (on - capacity.on).days)
    level = drifted(capacity.level, days=days, drift_variance=rules.drift_per_day.value**2)
    return probability_at_least(
        mean=level.mean,
        variance=level.variance + noise_variance(reserve=0, rules=rules),
        bound=math.log(needed),
    )
