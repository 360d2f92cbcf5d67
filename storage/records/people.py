"""People as the rest of the house sees them."""

from collections.abc import Mapping
from datetime import date, datetime, time
from enum import StrEnum

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Direction
from scheduler.training.baseline_values import EarlierInjury
from scheduler.training.coach_plan import CoachPlan
from scheduler.training.other_training import RegularTraining
from scheduler.training.season_values import SeasonEvent, Span, Travel
from scheduler.training.values import AthleteProfile, Best


class Role(StrEnum):
    """What a person may be; one person may be several."""

    OWNER = "owner"
    COACH = "coach"
    ATHLETE = "athlete"


class AthleteState(StrEnum):
    """Where an athlete stands with us, apart from training stage and pain."""

    INVITED = "invited"
    INTAKE = "intake"
    WAITS_FOR_COACH = "waits_for_coach"
    TRAINING = "training"
    PAUSED = "paused"
    LEFT = "left"


class Profile(BaseModel):
    """What the intake asked and the coach added. Weekdays count from Monday = 0.

    ``minutes`` [min] a session; ``events`` beside the intake's own main one (``event_on``);
    ``in_season``: while the sport itself is on; ``travels``: days with other equipment;
    ``lifted``: directions that the coach gave back after an old injury, ``are_hangs_lifted``
    likewise; ``has_upkeep``: bent-arm work done elsewhere goes on; ``asks_for_clips``: the bot
    asks for one a week; ``regular_training`` elsewhere, every week; ``coach_plan``: what the
    coach changed in the plan and stands; ``told_bests``: best single sets that the coach told, by
    movement, for first doses only.
    """

    model_config = ConfigDict(frozen=True)

    facts: AthleteProfile
    weekdays: tuple[int, ...] = (0, 2, 4)
    minutes: int = Field(default=40, ge=15, le=180)
    goal: str = ""
    event_on: date | None = None
    events: tuple[SeasonEvent, ...] = ()
    in_season: tuple[Span, ...] = ()
    travels: tuple[Travel, ...] = ()
    is_off_season: bool = False
    is_adult: bool = True
    may_invert: bool = True
    screen_yes: tuple[str, ...] = ()
    earlier_injury: str | None = None
    injuries: tuple[EarlierInjury, ...] = ()
    lifted: frozenset[Direction] = frozenset()
    are_hangs_lifted: bool = False
    has_upkeep: bool = False
    asks_for_clips: bool = False
    regular_training: tuple[RegularTraining, ...] = ()
    coach_plan: CoachPlan = CoachPlan()
    guardian: str | None = None
    country: str | None = None
    told_bests: Mapping[str, Best] = Field(default_factory=dict)

    @property
    def all_events(self) -> tuple[SeasonEvent, ...]:
        """Every event, the earliest first; the intake's is a main one."""
        own = [SeasonEvent(on=self.event_on, name=self.goal, is_main=True)] if self.event_on else []
        known = {event.on for event in self.events}
        events = (*(event for event in own if event.on not in known), *self.events)
        return tuple(sorted(events, key=lambda event: event.on))


class Person(BaseModel):
    """Anybody who may talk to the bot.

    ``units`` kg or lb, for loads; ``decimal_mark`` . or , where it differs from the language's.
    """

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    name: str
    chat_id: int | None
    language: str
    zone: str
    units: str
    decimal_mark: str | None
    is_owner: bool
    is_coach: bool
    is_blocked: bool
    digest_weekday: int
    digest_at: time
    waking_from: time
    waking_until: time
    emergency_number: str | None
    stand_in_id: int | None
    created_at: datetime


class Athlete(BaseModel):
    """An athlete: the person, the coach, the stage, and what the intake said.

    ``group_name`` is the coach's own word for a group; a practice athlete is the coach's own
    second self, and counts in no digest, alert or figure of the team.
    """

    model_config = ConfigDict(frozen=True, from_attributes=True)

    person_id: int
    coach_id: int
    state: AthleteState
    profile: Profile
    stage: int
    stage_since: date
    stage_is_re_earned: bool
    session_at: time
    evening_at: time
    started_on: date | None
    agreed_at: datetime | None
    paused_until: date | None
    absence_reason: str | None
    group_name: str | None
    is_practice: bool


class Invitation(BaseModel):
    """A personal link, as it was before it was used."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    person_id: int
    role: Role
    issued_by_id: int | None
    expires_at: datetime
    used_at: datetime | None
