"""The rulebook's numbers about the first tests and about earlier injuries."""

from pydantic import BaseModel, ConfigDict

from scheduler.training.labelled import Labelled

STRICT = ConfigDict(frozen=True, extra="forbid")


class BaselineRules(BaseModel):
    """Section ``baseline`` of the rulebook; the factor and the stops of a test are in ``start``."""

    model_config = STRICT

    free_days_between: Labelled
    rest_s: Labelled
    stop_reserve_hold_s: Labelled
    heavier_share_most: Labelled
    injury_months: Labelled
