"""What a body can do, which the bot never reads: it grows, tires, and has good and bad days.

A stand-in for an athlete, not a claim about one. The figures are chosen (CH) so that doses of the
rulebook are sometimes easy and sometimes missed; nothing here is used to decide training.
"""

import math
import random
from dataclasses import dataclass, field
from datetime import date

from demo_scenario.team import AthleteEntry
from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Loading, Measure, Movement
from scheduler.pain.values import Side

BASE_HOLD_S = 42.0  # [s] ch: an untrained adult's hold of the movement that begins a ladder
BASE_CARRY_S = 52.0  # [s] ch
BASE_CARRY_M = 48.0  # [m] ch
BASE_REPS = 17.0  # [reps] ch
RUNG_EASIER = 0.85  # [1] ch: what one step up a ladder leaves of the seconds or repetitions
REFERENCE_SHARE = 0.09  # [share of body weight a hand] ch: the load at which the base holds
CARRY_REFERENCE_SHARE = 0.22  # [share of body weight a hand] ch
HOLD_EXPONENT = -1.1  # [1] ch: time over load, steep as in the published curves
REPS_EXPONENT = -0.9  # [1] ch
BAND_STEP = 0.8  # [1] ch: each stronger band
GAIN_AN_EXPOSURE = 0.011  # [log units] ch: slows as it adds up
GAIN_MOST = 0.30  # [log units] ch
DAY_SPREAD = 0.045  # [log units] ch: good and bad days
SET_SPREAD = 0.025  # [log units] ch
TIRES_A_SET = 0.07  # [log units] ch: within a session, for one family and arm
TIRES_OTHERS_A_SET = 0.008  # [log units] ch: what any set costs the rest of the session
LASTING_A_SET = 0.006  # [log units] ch: carried into the coming days
HALF_LIFE_DAYS = 1.2  # [days] ch
LOST_A_DAY = 0.004  # [log units a day] ch: beyond ten days without training
FREE_DAYS = 10  # [days] ch
GUESS_SPREAD_HOLD_S = 3.0  # [s] ch: nobody knows exactly how much was left
GUESS_SPREAD_REPS = 0.6  # [reps] ch

HOLDS = {Measure.HOLD_S: BASE_HOLD_S, Measure.CARRY_S: BASE_CARRY_S, Measure.CARRY_M: BASE_CARRY_M}


@dataclass(frozen=True, slots=True)
class Effort:
    """One set: what was done and what was left [s, m or repetitions]."""

    done: int
    left: float


@dataclass(slots=True)
class _Family:
    gained: float = 0.0
    sets_today: dict[Side, int] = field(default_factory=dict)


@dataclass(slots=True)
class HiddenBody:
    """One athlete's body. Asked set by set, in the order in which they are trained."""

    entry: AthleteEntry
    library: Library
    chance: random.Random
    _families: dict[str, _Family] = field(default_factory=dict)
    _fatigue: float = 0.0
    _sets_today: int = 0
    _today: date | None = None
    _day_form: float = 0.0

    def begin_day(self, on: date) -> None:
        """Wake up: rested by so many nights, in good form or bad."""
        if self._today is not None:
            days = (on - self._today).days
            self._fatigue *= 0.5 ** (days * self.entry.recovers / HALF_LIFE_DAYS)
            lost = LOST_A_DAY * max(0, days - FREE_DAYS)
            for family in self._families.values():
                family.gained -= lost
        self._today, self._sets_today = on, 0
        self._day_form = self.chance.gauss(0.0, DAY_SPREAD)
        for family in self._families.values():
            family.sets_today = {}

    def capacity(
        self, movement: Movement, *, load_kg: float | None, band_rank: int, side: Side
    ) -> float:
        """Return how long, how often or how far the body could go right now [s, reps, m]."""
        family = self._families.setdefault(movement.family, _Family())
        log_capacity = (
            math.log(self._base(movement) * self.entry.ability)
            + self._load_term(movement, load_kg=load_kg)
            + math.log(BAND_STEP) * (band_rank - 1)
            + family.gained
            + self._day_form
            - self._fatigue
            - TIRES_A_SET * family.sets_today.get(side, 0)
            - TIRES_OTHERS_A_SET * self._sets_today
        )
        arm = self.entry.right_arm if side is Side.RIGHT else 1.0
        return arm * math.exp(log_capacity)

    def do_set(
        self,
        movement: Movement,
        *,
        target: int,
        stop_with: float,
        load_kg: float | None = None,
        band_rank: int = 1,
        side: Side = Side.BOTH,
        eager: float = 0.0,
    ) -> Effort:
        """Do one set: up to the target, short of it when what is left runs low.

        ``stop_with`` [s or reps] is what the session asks to keep; ``eager`` [share] goes beyond
        the target, and does not keep it.
        """
        could = self.capacity(movement, load_kg=load_kg, band_rank=band_rank, side=side)
        could *= math.exp(self.chance.gauss(0.0, SET_SPREAD))
        wanted = target * (1 + eager)
        # People go on into what they were asked to keep, but rarely to the very end.
        stops_at = could - (0.0 if eager else 0.25 * stop_with)
        done = max(1, math.floor(min(wanted, stops_at)))
        self._tire(movement, side)
        return Effort(done=done, left=max(0.0, could - done))

    def guess_left(self, effort: Effort, *, measure: Measure) -> float:
        """Return what the athlete believes was left: noisy, never negative."""
        is_reps = measure is Measure.REPS
        spread = GUESS_SPREAD_REPS if is_reps else GUESS_SPREAD_HOLD_S
        return max(0.0, effort.left + self.chance.gauss(0.0, spread))

    def end_exercise(self, movement: Movement) -> None:
        """Gain from a finished item: less, the more was gained already."""
        family = self._families.setdefault(movement.family, _Family())
        family.gained += GAIN_AN_EXPOSURE * max(0.0, 1 - family.gained / GAIN_MOST)

    def _tire(self, movement: Movement, side: Side) -> None:
        sets = self._families.setdefault(movement.family, _Family()).sets_today
        sets[side] = sets.get(side, 0) + 1
        self._sets_today += 1
        self._fatigue += LASTING_A_SET

    def _base(self, movement: Movement) -> float:
        ladder = [one.key for one in self.library.ladder(movement.key)]
        steps = ladder.index(movement.key)
        base = HOLDS.get(movement.measure, BASE_REPS)
        return base * RUNG_EASIER**steps

    def _load_term(self, movement: Movement, *, load_kg: float | None) -> float:
        if not load_kg:
            return 0.0
        exponent = REPS_EXPONENT if movement.measure is Measure.REPS else HOLD_EXPONENT
        body_kg = self.entry.body_mass_kg
        if movement.loading is Loading.BODYWEIGHT_PLUS:
            return exponent * math.log((body_kg + load_kg) / body_kg)
        is_carry = movement.measure in {Measure.CARRY_S, Measure.CARRY_M}
        share = CARRY_REFERENCE_SHARE if is_carry else REFERENCE_SHARE
        return exponent * math.log(load_kg / (share * body_kg))
