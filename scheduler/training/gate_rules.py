"""The rulebook's rows about standards and the checklist to move up."""

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Chain, Joint, Measure
from scheduler.training.labelled import Labelled
from scheduler.training.values import ReferenceValues

STRICT = ConfigDict(frozen=True, extra="forbid")


class StandardColumn(BaseModel):
    """What one column asks: seconds or repetitions a set, load and help as body weight shares."""

    model_config = STRICT

    target: Labelled
    load_share: Labelled | None = None
    help_share_most: Labelled | None = None


class Standard(BaseModel):
    """One line of a stage's leave standards.

    ``movements`` are the library keys any of which shows it, the named one first; ``is_push`` and
    ``chain`` say for which of the four kinds of strength it speaks.
    """

    model_config = STRICT

    key: str
    movements: tuple[str, ...] = Field(min_length=1)
    is_push: bool
    chain: Chain
    measure: Measure
    joint: Joint
    sets: Labelled
    reserve_least: Labelled | None = None
    columns: dict[ReferenceValues, StandardColumn]


class GateRules(BaseModel):
    """The conditions besides the standards."""

    model_config = STRICT

    body_mass_most_kg: dict[ReferenceValues, Labelled]
    days_shown: Labelled
    adherence_weeks: Labelled
    adherence_share: Labelled
    adherence_sessions: Labelled
    pain_days: Labelled
    pain_most: Labelled
    sides_sessions: Labelled
    sides_hold_ratio: Labelled
    sides_reps_ratio: Labelled
