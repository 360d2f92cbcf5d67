"""The coach-editable numbers of every training rule, read from one versioned data file."""

from functools import cache
from importlib.resources import files
from typing import Self

from pydantic import BaseModel, ConfigDict, Field, model_validator

from scheduler.catalogue.values import Movement, Role
from scheduler.located_yaml import read_located
from scheduler.training.baseline_rules import BaselineRules
from scheduler.training.dose_rules import (
    AccessoryRow,
    CapacityRules,
    GuardRules,
    MissRules,
    QualityRow,
    StepRules,
)
from scheduler.training.gate_rules import GateRules, Standard
from scheduler.training.labelled import LabelledRange
from scheduler.training.season_rules import SeasonRules
from scheduler.training.stage_rules import (
    GapRules,
    LighterRules,
    OtherTrainingRules,
    StageRow,
    StageTable,
    StartRules,
    VolumeRules,
)
from scheduler.training.values import Quality
from scheduler.training.week_rules import WeekRules


class Rulebook(BaseModel):
    """Every common-practice or chosen number, with unit and source."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    version: int = Field(ge=1)
    stages: StageTable
    qualities: dict[Quality, QualityRow]
    accessories: AccessoryRow
    steps: StepRules
    misses: MissRules
    guards: GuardRules
    volume: VolumeRules
    lighter: LighterRules
    gaps: GapRules
    start: StartRules
    capacity: CapacityRules
    gates: GateRules
    standards: dict[int, tuple[Standard, ...]]
    weeks: WeekRules
    other_training: OtherTrainingRules
    season: SeasonRules
    baseline: BaselineRules

    @model_validator(mode="after")
    def _covers_everything(self) -> Self:
        missing = set(Quality) - set(self.qualities)
        if missing:
            message = f"expected a row for each quality, missing: {sorted(missing)}"
            raise ValueError(message)
        if set(self.standards) != {1, 2, 3, 4}:
            raise ValueError("expected leave standards for the stages 1 to 4")
        return self

    def stage(self, stage: int) -> StageRow:
        """Return what the rulebook says of ``stage`` [1-5]."""
        return self.stages.row(stage)

    def quality(self, quality: Quality) -> QualityRow:
        """Return the row of doses of a quality."""
        return self.qualities[quality]

    def sets_of(self, movement: Movement, quality: Quality) -> LabelledRange:
        """Return the bounds of the sets [sets] of a movement: accessories have their own."""
        if movement.role is Role.ACCESSORY:
            return self.accessories.sets
        return self.qualities[quality].sets


def read_rulebook(text: str, *, file_name: str = "rulebook.yaml") -> Rulebook:
    """Check a rulebook's text; a wrong one is refused with line, field and expected value."""
    return read_located(text, Rulebook, file_name=file_name)


@cache
def default_rulebook() -> Rulebook:
    """Return the rulebook that every coach starts from."""
    return read_rulebook(packaged_text())


def packaged_text() -> str:
    """Return the file that comes with the package."""
    return (files("scheduler.training") / "rulebook.yaml").read_text("utf-8")
