"""What a season is planned from, and its weeks: kind, stage, share of the sets, days off."""

from datetime import date, timedelta
from enum import StrEnum
from itertools import groupby

from pydantic import BaseModel, ConfigDict, Field, model_validator

from scheduler.catalogue.values import Equipment
from scheduler.reasons import Reason
from scheduler.training.values import StageState
from scheduler.training.volume import WeekKind

STRICT = ConfigDict(frozen=True, extra="forbid")
A_WEEK = timedelta(days=7)
EVERY_WEEKDAY = frozenset(range(1, 8))


def monday_of(on: date) -> date:
    """Return the Monday of the week of a day."""
    return on - timedelta(days=on.isoweekday() - 1)


class Span(BaseModel):
    """Days in a row, both ends included."""

    model_config = STRICT

    first: date
    last: date

    @model_validator(mode="after")
    def _is_in_order(self) -> "Span":
        if self.last < self.first:
            raise ValueError("expected the last day not before the first")
        return self

    @property
    def days(self) -> int:
        """How many days [days]."""
        return (self.last - self.first).days + 1

    def __contains__(self, on: date) -> bool:
        """Tell whether a day lies inside."""
        return self.first <= on <= self.last


class Travel(Span):
    """Days away with other equipment: a band, unless told otherwise."""

    equipment: frozenset[Equipment] = frozenset({Equipment.BAND})


class SeasonEvent(BaseModel):
    """A main event (A) is peaked for; any other (B) gets a lighter week."""

    model_config = STRICT

    on: date
    name: str = ""
    is_main: bool


class SeasonRequest(BaseModel):
    """Everything that a season depends on.

    ``began_on``: when the time to the next main event began to count (``today`` for a new
    season), so that a season planned again half-way keeps its proportions;
    ``training_age_months`` [months of regular training]; ``days_untrained_before`` [days without
    training when the programme began]; ``is_off_season``: a strong athlete between seasons;
    ``in_season``: while the sport itself is on; ``breaks``: announced days without training;
    ``travels``: days with a band only; ``weekdays`` are the ISO weekdays that are trained;
    ``past`` weeks, oldest first, for the count to the next lighter one.
    """

    model_config = STRICT

    today: date
    state: StageState
    training_age_months: float = Field(ge=0)
    days_untrained_before: int = Field(default=0, ge=0)
    is_off_season: bool = False
    began_on: date | None = None
    events: tuple[SeasonEvent, ...] = ()
    in_season: tuple[Span, ...] = ()
    breaks: tuple[Span, ...] = ()
    travels: tuple[Travel, ...] = ()
    weekdays: frozenset[int] = EVERY_WEEKDAY
    past: tuple[WeekKind, ...] = ()

    @model_validator(mode="after")
    def _has_days(self) -> "SeasonRequest":
        if not self.weekdays or not self.weekdays <= EVERY_WEEKDAY:
            raise ValueError("expected ISO weekdays, 1 for Monday to 7 for Sunday, at least one")
        if self.began_on is not None and self.began_on > self.today:
            raise ValueError("expected began_on not after today")
        return self

    @property
    def main_events(self) -> tuple[SeasonEvent, ...]:
        """The main events from today on, the nearest first; two on one day are one."""
        mains = {event.on: event for event in self.events if event.is_main}
        return tuple(mains[on] for on in sorted(mains) if on >= self.today)


class SeasonWeekKind(StrEnum):
    """What a week of a season is for."""

    ORDINARY = "ordinary"
    LIGHTER = "lighter"
    BAND_ONLY = "band_only"
    RETURNING = "returning"
    TAPER = "taper"
    IN_SEASON = "in_season"
    EASY_AFTER = "easy_after"
    BREAK = "break"

    @property
    def builds(self) -> bool:
        """True for the weeks that count towards a stage."""
        return self in {
            SeasonWeekKind.ORDINARY,
            SeasonWeekKind.LIGHTER,
            SeasonWeekKind.BAND_ONLY,
        }

    @property
    def may_step(self) -> bool:
        """True where doses may get harder; everywhere else the load is kept."""
        return self in {SeasonWeekKind.ORDINARY, SeasonWeekKind.BAND_ONLY}


class SeasonWeek(BaseModel):
    """One week as the season proposes it.

    ``sets_share`` [fraction, 0-1] of the ordinary sets; ``days_most`` [sessions];
    ``session_min_most`` [min]; ``equipment`` instead of the athlete's own; ``days_off`` are days
    on which nothing is planned. The stage is a proposal: the checklist and the coach decide.
    """

    model_config = STRICT

    monday: date
    stage: int = Field(ge=1, le=5)
    kind: SeasonWeekKind
    sets_share: float = Field(default=1.0, gt=0, le=1)
    days_most: int | None = Field(default=None, ge=1)
    session_min_most: int | None = Field(default=None, ge=15)
    equipment: frozenset[Equipment] | None = None
    days_off: frozenset[date] = frozenset()
    reasons: tuple[Reason, ...] = ()

    @property
    def sunday(self) -> date:
        """The week's last day."""
        return self.monday + timedelta(days=6)


class SeasonBlock(BaseModel):
    """Weeks in a row at one stage; ``kind`` is ordinary for all that build."""

    model_config = STRICT

    kind: SeasonWeekKind
    stage: int
    monday: date
    weeks: int


class Season(BaseModel):
    """The weeks from this one to the last easy one after the last main event, without a gap.

    ``is_open_ended``: without a main event, the weeks go on as they end.
    """

    model_config = STRICT

    request: SeasonRequest
    weeks: tuple[SeasonWeek, ...] = Field(min_length=1)
    is_open_ended: bool

    @property
    def blocks(self) -> tuple[SeasonBlock, ...]:
        """The season in a few lines."""
        return tuple(
            SeasonBlock(kind=kind, stage=stage, monday=run[0].monday, weeks=len(run))
            for (kind, stage), found in groupby(self.weeks, key=_block_of)
            if (run := tuple(found))
        )

    def stage_by(self, on: date) -> int:
        """Return the highest stage that is planned to be reached by a day [1-5]."""
        return max(
            (week.stage for week in self.weeks if week.monday <= on),
            default=self.request.state.stage,
        )


def _block_of(week: SeasonWeek) -> tuple[SeasonWeekKind, int]:
    kind = week.kind
    is_building = kind.builds or kind is SeasonWeekKind.RETURNING
    return (SeasonWeekKind.ORDINARY if is_building else kind, week.stage)
