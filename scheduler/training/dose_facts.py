"""What a dose depends on besides the history: the slot, the body, the week, what hurts."""

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Movement
from scheduler.training.gaps import NO_GAP, Return
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import PAIN_FREE, AthleteProfile, Best, PainFacts, Quality


class EstimatedReach(BaseModel):
    """What the estimate of the capacity says: the largest target that is safe to ask for.

    ``observations`` [uncensored observations] behind it; ``sure_target`` [s, repetitions or m]
    at the present resistance, whose sets are all done as asked with the wanted probability.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    observations: int = Field(ge=0)
    sure_target: int = Field(ge=0)


class DoseFacts(BaseModel):
    """Everything one dose is computed from, but for what was done so far.

    ``planned_sets`` [sets] is what the week's slot gives, lighter weeks included;
    ``weeks_trained`` [whole weeks, 0 in the first]; ``pulling_exposures`` [exposures] of pulling
    for repetitions since the start or the return; ``holds_level`` in a week of the season that
    keeps the level and steps nothing; ``beside_maximal``: general strength in a direction that
    has its maximal exposure too; ``best`` a tested set; ``fresh_maximum`` [s or
    repetitions] to failure, rested, for rounds.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    movement: Movement
    quality: Quality
    profile: AthleteProfile
    planned_sets: int = Field(ge=1)
    weeks_trained: int = Field(ge=0)
    pulling_exposures: int = Field(default=0, ge=0)
    is_lighter_week: bool = False
    holds_level: bool = False
    is_upkeep: bool = False
    beside_maximal: bool = False
    pain: PainFacts = PAIN_FREE
    returning: Return = NO_GAP
    best: Best | None = None
    fresh_maximum: float | None = Field(default=None, gt=0)
    estimate: EstimatedReach | None = None


def is_new_to_pulling(profile: AthleteProfile, *, returning: Return, rulebook: Rulebook) -> bool:
    """Tell whether newcomers' and returners' bounds for pulling apply to an athlete (CP)."""
    start = rulebook.start
    return (
        profile.training_age_months < start.newcomer_under_months.value
        or profile.days_untrained_before >= start.returner_from_days.value
        or returning.is_long
    )
