"""The rulebook's numbers about weeks: pairs by day, sets, minutes, how long a movement stays."""

from typing import Self

from pydantic import BaseModel, ConfigDict, Field, model_validator

from scheduler.catalogue.values import Arm, Chain, Direction
from scheduler.training.labelled import Labelled, LabelledRange, SourceKey
from scheduler.training.week_values import DayLetter

STRICT = ConfigDict(frozen=True, extra="forbid")


class PairRow(BaseModel):
    """One pair of one day: a push with its partner pull, in which chain, bent from which stage.

    No ``…_bent_from_stage`` keeps the arm straight at every stage.
    """

    model_config = STRICT

    push: Direction
    chain: Chain
    push_bent_from_stage: int | None = Field(default=None, ge=3, le=5)
    pull_bent_from_stage: int | None = Field(default=None, ge=3, le=5)

    @model_validator(mode="after")
    def _is_a_push(self) -> Self:
        if not self.push.is_push:
            raise ValueError("expected vertical_push, horizontal_push or downward_push")
        return self

    def arm(self, direction: Direction, *, stage: int) -> Arm:
        """Return how the arm is held in the push or the pull of this pair at ``stage`` [1-5]."""
        bent_from = self.push_bent_from_stage if direction.is_push else self.pull_bent_from_stage
        return Arm.BENT if bent_from is not None and stage >= bent_from else Arm.STRAIGHT


class DayRow(BaseModel):
    """A day of the turn: its main pair and its second pair."""

    model_config = STRICT

    letter: DayLetter
    source: SourceKey
    pairs: tuple[PairRow, PairRow]


class StayRules(BaseModel):
    """How long a movement stays in its place of the week [weeks]."""

    model_config = STRICT

    first_pair_least: Labelled
    first_pair_most: Labelled
    second_pair: LabelledRange


class MinutesRules(BaseModel):
    """What the estimate of a session's length is made of."""

    model_config = STRICT

    easy_movement_s: Labelled
    shoulder_blade_s: Labelled
    easy_set_s: Labelled
    ramp_sets: Labelled
    ramp_from_stage: Labelled
    change_s: Labelled
    work_in_range: Labelled
    accessory_rest_s: Labelled
    rest_share_in_pair: Labelled


class WeekRules(BaseModel):
    """Section ``weeks`` of the rulebook."""

    model_config = STRICT

    days: tuple[DayRow, DayRow, DayRow]
    exposures_a_week: Labelled
    sets_wanted: tuple[Labelled, Labelled, Labelled, Labelled, Labelled]
    accessory_sets: Labelled
    short_session_under_min: Labelled
    single_pair_sets: Labelled
    push_to_pull: LabelledRange
    free_days_between_hard: Labelled
    grip_spared_to_stage: Labelled
    partial_body_share: Labelled
    open_rungs: Labelled
    stay: StayRules
    minutes: MinutesRules

    @model_validator(mode="after")
    def _turns_through_the_three_days(self) -> Self:
        if [day.letter for day in self.days] != [DayLetter.A, DayLetter.B, DayLetter.C]:
            raise ValueError("expected the days A, B and C, once each, in order")
        return self

    def day(self, letter: DayLetter) -> DayRow:
        """Return the day A, B or C."""
        return next(day for day in self.days if day.letter is letter)
