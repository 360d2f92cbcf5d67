"""The rulebook's numbers about a season: base, taper, in season, after the event."""

from pydantic import BaseModel, ConfigDict

from scheduler.training.labelled import Labelled, LabelledRange

STRICT = ConfigDict(frozen=True, extra="forbid")


class TaperRules(BaseModel):
    """The last weeks before the main event. Shares are what is left of the sets."""

    model_config = STRICT

    last_week_share: Labelled
    week_before_share: Labelled
    two_weeks_from: Labelled
    counts_its_week_from: Labelled
    free_days_before: Labelled


class InSeasonRules(BaseModel):
    """What holds the level while the sport itself is on."""

    model_config = STRICT

    sessions: LabelledRange
    session_min: Labelled


class AfterRules(BaseModel):
    """The easy weeks after a main event."""

    model_config = STRICT

    weeks: LabelledRange
    two_weeks_from: Labelled
    sets_share: Labelled


class SeasonRules(BaseModel):
    """Section ``season`` of the rulebook."""

    model_config = STRICT

    base_last_stage: Labelled
    base_share: Labelled
    present_stage_least_weeks: Labelled
    last_stage_least_weeks: Labelled
    lighter_gives_way_weeks: Labelled
    open_weeks: Labelled
    taper: TaperRules
    in_season: InSeasonRules
    after: AfterRules
