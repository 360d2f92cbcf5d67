"""The rulebook's numbers about weeks."""

from pydantic import BaseModel, ConfigDict


class WeekRules(BaseModel):
    """Section ``weeks`` of the rulebook."""

    model_config = ConfigDict(frozen=True, extra="forbid")
