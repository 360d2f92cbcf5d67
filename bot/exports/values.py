"""What a file of one athlete's own data holds: the shape that its JSON Schema describes.

Loads are in kilograms, times of day in the athlete's own zone, instants in UTC. A field that is
null was not said or does not apply.
"""

from datetime import date, datetime, time
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field, JsonValue

from bot.exports.units import Unit

Who = Literal["athlete", "coach", "rules"]


class Exported(BaseModel):
    """What all parts share."""

    model_config = ConfigDict(frozen=True, extra="forbid")


class ExportedEvent(Exported):
    """A day that the season is planned around."""

    on: date
    name: str
    is_main: bool


class ExportedSpan(Exported):
    """Days in a row, both ends included."""

    first: date
    last: date


class ExportedProfile(Exported):
    """What the intake asked and the coach added; ``other`` holds what has no field of its own."""

    weekdays: tuple[int, ...] = Field(description="ISO weekdays, Monday 1")
    minutes: int = Field(description="of a session [min]")
    goal: str
    body_mass_kg: float
    training_age_months: float
    equipment: tuple[str, ...]
    loads_kg: dict[str, tuple[float, ...]] = Field(description="owned, by implement [kg]")
    events: tuple[ExportedEvent, ...]
    competing: tuple[ExportedSpan, ...]
    travels: tuple[ExportedSpan, ...]
    earlier_injury: str | None
    guardian: str | None
    country: str | None
    other: dict[str, JsonValue]


class ExportedAthlete(Exported):
    """Who it is about, and where they stand. ``profile`` is null before the intake is done."""

    name: str
    coach: str
    state: str
    stage: int = Field(ge=1, le=5)
    stage_since: date
    started_on: date | None
    paused_until: date | None
    agreed_at: datetime | None
    zone: str = Field(description="IANA time zone")
    language: str
    session_at: time
    evening_at: time
    profile: ExportedProfile | None


class ExportedDose(Exported):
    """What was asked for."""

    sets: int
    target: int = Field(description="in the item's unit")
    load_kg: float | None
    band: str | None
    help_kg: float | None
    rest_s: int
    reserve_asked: float
    quality: str
    is_try: bool


class ExportedSet(Exported):
    """One set as it stands after corrections; resistance is null where it was the planned one."""

    number: int
    side: Literal["left", "right", "both"]
    value: float = Field(ge=0, description="in the item's unit")
    load_kg: float | None
    band: str | None
    is_as_planned: bool
    reported_at: datetime


class ExportedItem(Exported):
    """One movement of a session. ``dose`` is null until the session was sent."""

    number: int
    movement: str
    name: str
    unit: Unit
    dose: ExportedDose | None
    sets: tuple[ExportedSet, ...]
    reserve_left: float | None
    is_reserve_at_least: bool
    is_skipped: bool
    is_left_out: bool


class ExportedSession(Exported):
    """One day's session."""

    on: date
    letter: str
    state: str
    sent_at: datetime | None
    trained_at: datetime | None
    effort: int | None = Field(ge=0, le=10)
    minutes: int | None
    called_off_because: str | None
    items: tuple[ExportedItem, ...]


class ExportedAttempt(Exported):
    """One arm's attempt at one guided test, as it stands after corrections; a test is no training.

    ``side`` is both where the arms are not tested apart.
    """

    on: date
    at: datetime
    test: str = Field(description="which test it was; the same for both arms")
    movement: str
    name: str
    side: Literal["left", "right", "both"]
    unit: Unit
    ended: Literal["done", "hurt", "skipped"] = Field(
        description="hurt: ended by pain, and no measure of what could be done"
    )
    left_out_because: str | None = Field(description="the reason tapped, where it was skipped")
    value: float | None = Field(ge=0, description="in the attempt's unit; null: nothing was done")
    load_kg: float | None
    band: str | None
    help_kg: float | None
    reserve_left: float | None = Field(description="what was left at the end, in the same unit")
    is_reserve_at_least: bool
    pain: int | None = Field(ge=0, le=10)


class ExportedPain(Exported):
    """One thing that was said or decided about pain, as it stands after corrections."""

    at: datetime
    kind: Literal["report", "next_morning", "sign", "rested", "cleared"]
    site: str | None
    side: Literal["left", "right", "both"] | None
    score: int | None = Field(ge=0, le=10)
    signs: tuple[str, ...]


class ExportedWords(Exported):
    """Something that the athlete wrote and that is kept in their words."""

    at: datetime
    words: str


class ExportedDecision(Exported):
    """That something was decided; ``said`` is what the athlete told, where it was theirs."""

    at: datetime
    what: str
    by: Who
    said: dict[str, JsonValue]


class AthleteData(Exported):
    """Everything that is kept about one athlete and is theirs.

    Version 2 holds the guided tests, which version 1 did not.
    """

    format: Literal["holdwell-athlete"] = "holdwell-athlete"
    version: Literal[2] = 2
    made_at: datetime
    athlete: ExportedAthlete
    sessions: tuple[ExportedSession, ...]
    tests: tuple[ExportedAttempt, ...] = Field(description="guided tests, the earliest first")
    pain: tuple[ExportedPain, ...]
    words: tuple[ExportedWords, ...]
    decisions: tuple[ExportedDecision, ...]
