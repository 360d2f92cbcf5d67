"""The coach-editable numbers of every training rule, read from one versioned data file."""

from functools import cache
from importlib.resources import files

from pydantic import BaseModel, ConfigDict, Field

from scheduler.located_yaml import read_located
from scheduler.training.week_rules import WeekRules


class Rulebook(BaseModel):
    """Every common-practice or chosen number, with unit and source."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    version: int = Field(ge=1)
    weeks: WeekRules = WeekRules()


def read_rulebook(text: str, *, file_name: str = "rulebook.yaml") -> Rulebook:
    """Check a rulebook's text; a wrong one is refused with line, field and expected value."""
    return read_located(text, Rulebook, file_name=file_name)


@cache
def default_rulebook() -> Rulebook:
    """Return the rulebook that every coach starts from."""
    return read_rulebook((files("scheduler.training") / "rulebook.yaml").read_text("utf-8"))
