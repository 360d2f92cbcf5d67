"""What a simulated body can do: it gains, tires, and has good and bad days.

The rules never see any of it: they are given reports of sets and reserve answers, as from people.
"""

import math
import random
from dataclasses import dataclass, field
from datetime import date

from demo_scenario.comparison.assumptions import Assumptions

SET_SPREAD = 0.03  # [log units] ch: from set to set within a day
GAIN_MEDIAN = 0.025  # [log units an exposure] ch
GAIN_SPREAD = 0.5  # [log units] ch: people differ about threefold between the outer thirds
START_MEAN = 0.0  # [log units] ch: a fresh set beside the standard's target
START_SPREAD = 0.2  # [log units] ch
TIRES_SPREAD = 0.3  # [log units] ch: between athletes
EXPONENT_SPREAD = 0.15  # [log units] ch: own exponents differ from the published ones
FULL_EFFORT = 0.75  # [share of what could be done] ch: from here on a set trains fully
SETS_OF_FULL_GAIN = 3  # [sets] ch
LOST_A_DAY = 0.004  # [log units a day] ch: beyond so many days without training
FREE_DAYS = 10  # [days] ch
NOBODY_ANSWERS = 0.1  # [share of sessions] ch: without a reserve answer
ANSWERS_S = (0, 5, 10, 15, 20)  # [s] the taps; the last says "or more"


@dataclass(frozen=True, slots=True)
class Traits:
    """One body, as drawn: the same under every rule.

    ``gain`` [log units an exposure]; ``starts`` [log of seconds, a fresh set at the reference
    load, by movement]; ``exponents`` [1] of time over load; ``tires`` [log units a set];
    ``day_spread`` [log units]; ``leaning_s`` [s] of its reserve answers.
    """

    gain: float
    starts: dict[str, float]
    exponents: dict[str, float]
    tires: float
    day_spread: float
    leaning_s: float


def draw_traits(
    chance: random.Random,
    *,
    targets_s: dict[str, float],
    published: dict[str, float],
    assumptions: Assumptions,
) -> Traits:
    """Draw a body; ``targets_s`` [s] of its standards, ``published`` exponents by movement."""
    return Traits(
        gain=GAIN_MEDIAN * math.exp(chance.gauss(0, GAIN_SPREAD)),
        starts={
            key: math.log(target) + chance.gauss(START_MEAN, START_SPREAD)
            for key, target in targets_s.items()
        },
        exponents={
            key: power * math.exp(chance.gauss(0, EXPONENT_SPREAD))
            for key, power in published.items()
        },
        tires=assumptions.tires_a_set * math.exp(chance.gauss(0, TIRES_SPREAD)),
        day_spread=chance.uniform(*assumptions.day_spread),
        leaning_s=chance.gauss(0, assumptions.guess_bias_s),
    )


@dataclass(slots=True)
class Body:
    """A body in training under one rule; ``luck`` names its good and bad days, alike for all."""

    traits: Traits
    assumptions: Assumptions
    luck: str
    gained: dict[str, float] = field(default_factory=dict)
    fatigue: float = 0.0
    today: date | None = None

    def wake(self, on: date) -> None:
        """Rest until a training day; what was gained fades after long pauses."""
        if self.today is not None:
            days = (on - self.today).days
            self.fatigue *= 0.5 ** (days / self.assumptions.half_life_days)
            lost = LOST_A_DAY * max(0, days - FREE_DAYS)
            self.gained = {key: gained - lost for key, gained in self.gained.items()}
        self.today = on

    def level(self, key: str, *, load_ratio: float, sets_before: int) -> float:
        """Return the log seconds to failure on an ordinary, rested day [log s]."""
        traits = self.traits
        return (
            traits.starts[key]
            + self.gained.get(key, 0.0)
            + traits.exponents[key] * math.log(load_ratio)
            - traits.tires * sets_before
        )

    def train(
        self, key: str, *, load_ratio: float, wanted_s: tuple[int, ...]
    ) -> tuple[tuple[int, ...], float]:
        """Do sets of ``wanted_s`` [s]; return what was done [s] and what was left at the end [s].

        Each set goes on to what is wanted, or to failure.
        """
        chance = random.Random(f"{self.luck}/{self.today}/{key}")
        form = chance.gauss(0, self.traits.day_spread)
        done, could_s, effort = [], 0.0, 0.0
        for number, wanted in enumerate(wanted_s):
            level = self.level(key, load_ratio=load_ratio, sets_before=number)
            could_s = math.exp(level + form - self.fatigue + chance.gauss(0, SET_SPREAD))
            done.append(min(wanted, math.floor(could_s)))
            effort += min(1.0, done[-1] / could_s / FULL_EFFORT)
            self.fatigue += self.assumptions.lasting_a_set * done[-1] / could_s
        self._gain(key, effort / SETS_OF_FULL_GAIN)
        return tuple(done), max(0.0, could_s - done[-1])

    def guess_left_s(self, left_s: float, *, key: str) -> float | None:
        """Return the tap of what was left [s]: good near failure, poor far from it; None unasked.

        The character is the published one (hackett2017): about one repetition, or 5 s, near
        failure, and worse the further away.
        """
        chance = random.Random(f"{self.luck}/{self.today}/{key}/guess")
        if chance.random() < NOBODY_ANSWERS:
            return None
        spread = self.assumptions.guess_near_s + self.assumptions.guess_per_s * left_s
        guess = left_s + self.traits.leaning_s + chance.gauss(0, spread)
        return min(ANSWERS_S, key=lambda answer: abs(answer - guess))

    def _gain(self, key: str, stimulus: float) -> None:
        gained = self.gained.get(key, 0.0)
        most = self.assumptions.gain_most
        room = 1.0 if most is None else max(0.0, 1 - gained / most)
        self.gained[key] = gained + self.traits.gain * stimulus * room
