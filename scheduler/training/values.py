"""Doses, what was done with them, and the facts about an athlete that the rules ask for."""

from collections.abc import Mapping
from datetime import date
from enum import StrEnum

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Equipment, Measure
from scheduler.pain.values import Level, Side


class Quality(StrEnum):
    """What a slot of the week trains; each has a row of doses in the rulebook."""

    MUSCULAR_ENDURANCE = "muscular_endurance"
    STRENGTH_ENDURANCE = "strength_endurance"
    GENERAL_STRENGTH = "general_strength"
    DYNAMIC_FRESH = "dynamic_fresh"
    REPEATED_EFFORT = "repeated_effort"
    MAXIMAL_STRENGTH = "maximal_strength"


class Neighbour(StrEnum):
    """What a dose says about the movement itself: keep it, or look along the ladder."""

    STAY = "stay"
    EASIER = "easier"
    HARDER = "harder"


class Rung(BaseModel):
    """One resistance that an athlete can really take: never a weight that is not owned.

    ``load_kg`` [kg] is in each hand, or added to the body; ``band`` is the key of a band;
    ``assist_kg`` [kg] is the help of that band where the coach has measured it.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    load_kg: float | None = Field(default=None, ge=0)
    band: str | None = None
    assist_kg: float | None = Field(default=None, ge=0)


NO_RESISTANCE = Rung()
"""The rung of a movement that takes no resistance but the body."""


class Dose(BaseModel):
    """What is asked for: sets of a target, at a resistance, with something left.

    ``target``, ``floor`` [s, repetitions or m, as ``measure`` says]; ``reserve_asked`` [s for
    holds and carries, repetitions else]; ``held_back`` is how many of the week's sets this dose
    leaves out by itself, to be given back one at a time; ``work_s`` [s] and ``rest_for_work``
    [s of rest for each s of work] are the clock of rounds, None for sets; ``neighbour`` asks
    whoever picks movements to look along the ladder; ``is_try`` marks a standard asked for as it
    is written, which is no step and from which no step follows.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    movement_key: str
    quality: Quality
    measure: Measure
    sets: int = Field(ge=1)
    target: int = Field(ge=1)
    floor: int = Field(ge=1)
    rung: Rung = NO_RESISTANCE
    rest_s: int = Field(ge=0)
    work_s: int | None = Field(default=None, ge=1)
    rest_for_work: float | None = None
    reserve_asked: float = Field(ge=0)
    held_back: int = Field(default=0, ge=0)
    has_slow_lowering: bool = True
    neighbour: Neighbour = Neighbour.STAY
    is_try: bool = False

    @property
    def load_kg(self) -> float | None:
        """The load in each hand, or added to the body [kg]."""
        return self.rung.load_kg

    @property
    def core(self) -> tuple[Quality, int, Rung, int, float | None]:
        """What two doses share when a result under one counts under the other."""
        return (self.quality, self.target, self.rung, self.held_back, self.rest_for_work)


class SetDone(BaseModel):
    """One set as reported: a value [s, repetitions or m], on a side, at a resistance.

    ``rung`` None means the planned one.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    side: Side = Side.BOTH
    value: float = Field(ge=0)
    rung: Rung | None = None
    is_in_position: bool = True


class ReserveAnswer(BaseModel):
    """The tap after the last set: how much was left [s or repetitions].

    ``is_at_least`` marks the top answer (20+, 4+), which says only "this or more".
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    left: float = Field(ge=0)
    is_at_least: bool = False


class Exposure(BaseModel):
    """One movement in one trained session: what was asked, what was done, what was left."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    on: date
    dose: Dose
    sets: tuple[SetDone, ...]
    reserve: ReserveAnswer | None = None


class Best(BaseModel):
    """One tested set: ``value`` [s, repetitions or m] at a resistance."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    value: float = Field(gt=0)
    rung: Rung = NO_RESISTANCE


class ReferenceValues(StrEnum):
    """Which column of the standards an athlete is held to."""

    MEN = "men"
    WOMEN = "women"
    OWN = "own"


class Band(BaseModel):
    """One band: ``rank`` orders bands of one family from the lightest; ``help_kg`` [kg] by coach.

    For help the order turns: the strongest band makes the movement easiest.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    key: str
    family: str
    rank: int = Field(ge=1)
    help_kg: float | None = Field(default=None, gt=0)


class AthleteProfile(BaseModel):
    """The facts of one athlete that doses and standards depend on.

    ``body_mass_kg`` [kg]; ``training_age_months`` [months of regular training];
    ``days_untrained_before`` [days without training when the programme began];
    ``loads_kg`` [kg each, or on the bar] by implement.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    reference: ReferenceValues
    body_mass_kg: float = Field(gt=0)
    training_age_months: float = Field(ge=0)
    days_untrained_before: int = Field(default=0, ge=0)
    equipment: frozenset[Equipment] = frozenset()
    loads_kg: Mapping[Equipment, tuple[float, ...]] = Field(default_factory=dict)
    bands: tuple[Band, ...] = ()


class StageState(BaseModel):
    """Which stage an athlete is in, since when, and whether it had been reached before."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    stage: int = Field(ge=1, le=5)
    entered_on: date
    is_re_earned: bool = False

    def whole_weeks(self, on: date) -> int:
        """Return the whole weeks spent in the stage up to ``on`` [weeks]."""
        return max(0, (on - self.entered_on).days // 7)


class PainFacts(BaseModel):
    """The level of the most affected region that a movement loads.

    ``is_swapped`` tells that the movement is already the easier one taken because of the pain.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    level: Level = Level.NONE
    is_settled: bool = True
    is_swapped: bool = False


PAIN_FREE = PainFacts()
"""Nothing hurts in what the movement loads."""
