"""The rulebook's rows about stages, weekly sets, lighter weeks, missed work and the start."""

from typing import Self

from pydantic import BaseModel, ConfigDict, Field, model_validator

from scheduler.catalogue.values import Arm
from scheduler.training.labelled import Labelled, LabelledRange, SourceKey
from scheduler.training.values import Quality

STRICT = ConfigDict(frozen=True, extra="forbid")


class StageRow(BaseModel):
    """What one stage permits, how long it lasts at least, and its weekly sets."""

    model_config = STRICT

    number: int = Field(ge=1, le=5)
    source: SourceKey
    arms: frozenset[Arm]
    qualities: frozenset[Quality]
    has_dynamic: bool
    has_unstable: bool
    straight_arm_share: Labelled
    least_weeks: Labelled | None = None
    sets_a_direction: LabelledRange
    lighter_every: Labelled


class StageExtras(BaseModel):
    """Permissions that depend on more than the number of the stage."""

    model_config = STRICT

    fresh_weeks_of_dynamic: Labelled
    strict_pull_sets: Labelled
    strict_pull_reps: Labelled
    strict_pull_movements: tuple[str, ...]
    maximal_exposures_a_week: Labelled
    maximal_other_exposures: LabelledRange
    upkeep_sets_a_week: Labelled
    upkeep_reserve_reps: Labelled
    upkeep_reserve_hold_s: Labelled


class VolumeRules(BaseModel):
    """How the weekly sets of a direction may grow and shrink."""

    model_config = STRICT

    growth_sets: Labelled
    growth_from_week: Labelled
    missed_share: Labelled
    missed_weeks: Labelled
    missed_cut: Labelled


class LighterRules(BaseModel):
    """When a lighter week is due, and what it takes away."""

    model_config = STRICT

    signals_needed: Labelled
    reserve_fall_reps: Labelled
    reserve_fall_hold_s: Labelled
    misses: Labelled
    cut: Labelled


class GapRules(BaseModel):
    """What missed days change."""

    model_config = STRICT

    no_step_from_days: Labelled
    short_from_days: Labelled
    long_from_days: Labelled
    again_from_days: Labelled
    again_stage_most: Labelled
    careful_from_stage: Labelled
    fever_clear_hours: Labelled
    healthy_shares: tuple[Labelled, ...]
    careful_shares: tuple[Labelled, ...]
    long_shares: tuple[Labelled, ...]


class StartRules(BaseModel):
    """How careful the beginning is, and who counts as new or as coming back."""

    model_config = STRICT

    newcomer_under_months: Labelled
    returner_from_days: Labelled
    careful_weeks: Labelled
    careful_sets: Labelled
    careful_share_of_best: Labelled
    share_of_best: Labelled
    untested_carry_share: Labelled
    untested_load_share: Labelled
    untested_load_share_most: Labelled
    test_factor: Labelled
    test_stop_s: Labelled
    test_stop_pain: Labelled
    test_stop_reserve_reps: LabelledRange
    highest_stage: Labelled


class OtherTrainingRules(BaseModel):
    """When training that is not ours counts as hard."""

    model_config = STRICT

    hard_from_effort: Labelled


class StageTable(BaseModel):
    """The five stages, in order."""

    model_config = STRICT

    rows: tuple[StageRow, ...]
    extras: StageExtras

    @model_validator(mode="after")
    def _has_each_stage_once(self) -> Self:
        if [row.number for row in self.rows] != [1, 2, 3, 4, 5]:
            raise ValueError("expected the stages 1 to 5, once each, in order")
        return self

    def row(self, stage: int) -> StageRow:
        """Return the row of ``stage`` [1-5]."""
        return self.rows[stage - 1]
