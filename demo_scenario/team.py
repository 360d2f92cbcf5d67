"""The demo's team as data: who coaches, who trains, and how each of them is."""

from collections.abc import Mapping
from datetime import date, datetime, time, timedelta
from enum import StrEnum
from functools import cache
from importlib import resources
from zoneinfo import ZoneInfo

from pydantic import BaseModel, ConfigDict, Field
from ruamel.yaml import YAML

from scheduler.catalogue.values import Equipment
from scheduler.training.values import AthleteProfile, Band, ReferenceValues
from storage.records.people import Profile

BANDS = (
    Band(key="light", family="long", rank=1),
    Band(key="medium", family="long", rank=2),
    Band(key="heavy", family="long", rank=3),
)


class Part(StrEnum):
    """What an athlete is in the demo to show."""

    STEADY = "steady"
    OVER_EAGER = "over_eager"
    TRAVELLER = "traveller"
    ONE_WRIST = "one_wrist"
    BACK_FROM_LAYOFF = "back_from_layoff"
    RED_FLAG = "red_flag"
    NEWCOMER = "newcomer"
    SPANISH = "spanish"
    MINOR = "minor"
    OTHER_COACH = "other_coach"
    BY_FILE = "by_file"


class Habit(StrEnum):
    """One way of answering a session."""

    NUMBERED = "numbered"
    NUMBERED_COMMAS = "numbered_commas"
    PLAIN_LINES = "plain_lines"
    SLASHES = "slashes"
    TIMES = "times"
    NAMED_TIMES = "named_times"
    ITEM_BY_ITEM = "item_by_item"
    WORDS = "words"
    TYPOS = "typos"
    DECIMAL_COMMAS = "decimal_commas"
    ALL_AS_PLANNED = "all_as_planned"
    STEP_BY_STEP = "step_by_step"


class _Entry(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class Travel(_Entry):
    """A journey: days are counted from the start of the demo [days, 0 or more]."""

    on_day: int
    to_zone: str
    back_on_day: int


class CameWith(_Entry):
    """What an athlete could do of one movement when they came [s or reps; kg a hand]."""

    target: int
    load_kg: float | None = None


class CoachEntry(_Entry):
    """The coach, who looks at the phone some minutes after it buzzes [min]."""

    name: str
    chat_id: int
    zone: str
    digest_weekday: int
    digest_at: time
    waking_from: time
    waking_until: time
    looks_after_min: int
    looks_at_alerts_after_min: int


class AthleteEntry(_Entry):
    """One athlete: what the intake would have said, what the body can do, how they write.

    ``guardian``: who answers for somebody under 18; ``coaches``: coaches others as well.
    ``ability`` [1, 1 is an untrained adult], ``right_arm`` [right for left], ``recovers`` [1,
    1 is ordinary] and ``keeps`` [share of sessions trained] belong to the hidden side and are
    never written to the bot's database.
    """

    name: str
    part: Part
    chat_id: int
    zone: str
    session_at: time
    weekdays: tuple[int, ...]
    minutes: int
    reference: ReferenceValues
    body_mass_kg: float
    training_age_months: float
    equipment: frozenset[Equipment]
    dumbbells_kg: tuple[float, ...] = ()
    bands: bool = False
    stage: int = Field(ge=1, le=5)
    weeks_in_stage: int = 0
    past_weeks: int = 0
    last_trained_days_before: int | None = None
    joins: bool = False
    came_with: Mapping[str, CameWith] = Field(default_factory=dict)
    ability: float
    right_arm: float = 1.0
    recovers: float
    keeps: float
    goes_beyond: float = 0.0
    habits: tuple[Habit, ...]
    replies_after_min: int
    travels: Travel | None = None
    language: str = "en"
    guardian: str | None = None
    coaches: bool = False

    def profile(self) -> Profile:
        """Return what the intake would have stored."""
        loads = {
            tool: self.dumbbells_kg
            for tool in (Equipment.DUMBBELLS, Equipment.KETTLEBELLS)
            if tool in self.equipment
        }
        facts = AthleteProfile(
            reference=self.reference,
            body_mass_kg=self.body_mass_kg,
            training_age_months=self.training_age_months,
            equipment=self.equipment,
            loads_kg=loads,
            bands=BANDS if self.bands else (),
        )
        return Profile(facts=facts, weekdays=self.weekdays, minutes=self.minutes)


class Team(_Entry):
    """A coach and the athletes. ``start`` is the Monday on which the demo begins."""

    start: date
    coach: CoachEntry
    athletes: tuple[AthleteEntry, ...]

    @property
    def known(self) -> tuple[AthleteEntry, ...]:
        """The athletes who are with the coach when the demo begins."""
        return tuple(one for one in self.athletes if not one.joins)

    def part(self, part: Part) -> AthleteEntry:
        """Return the athlete who plays a part."""
        return next(one for one in self.athletes if one.part is part)

    def begins_at(self) -> datetime:
        """Return the first instant of the demo: before anybody's first session."""
        midnight = datetime.combine(self.start, time(), ZoneInfo(self.coach.zone))
        return midnight.astimezone(ZoneInfo("UTC"))

    def ends_at(self, *, weeks: int) -> datetime:
        """Return the last instant after so many weeks [weeks, 1 or more]."""
        return self.begins_at() + timedelta(weeks=weeks)


@cache
def default_team() -> Team:
    """Read the team that comes with the demo."""
    text = resources.files("demo_scenario").joinpath("team.yaml").read_text("utf-8")
    return Team.model_validate(YAML(typ="safe").load(text))
