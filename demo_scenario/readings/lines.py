"""The lines of a file of messages: places in a conversation, and messages with their reading."""

from datetime import date
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, field_validator

from scheduler.catalogue.values import Measure, Sides
from scheduler.pain.values import Side, Site

SETS_MOST = 20  # [sets] ch: more were never planned
ELSEWHERE_MOST = 8  # [sessions] ch

Kind = Literal[
    "recorded",
    "asked",
    "correction",
    "told",
    "cant_today",
    "other_training",
    "session_now",
    "passed_on",
    "not_understood",
]
Amount = Annotated[float, Field(ge=0, allow_inf_nan=False)]
Arm = Literal["left", "right"]


class Line(BaseModel):
    """A part of a line; a field that the format does not have is refused."""

    model_config = ConfigDict(frozen=True, extra="forbid")


class ItemLine(Line):
    """One item of a sent session."""

    number: int = Field(ge=1)
    names: tuple[str, ...] = Field(min_length=1)
    measure: Measure
    sets: int = Field(ge=1, le=SETS_MOST)
    target: float = Field(gt=0, allow_inf_nan=False)
    load_kg: Amount | None = None
    band: str | None = None
    sides: Sides = Sides.BOTH
    main: bool = True
    reported: bool = False
    likely: float | None = Field(default=None, gt=0, allow_inf_nan=False)
    spread: float | None = Field(default=None, ge=0, allow_inf_nan=False)


class SessionLine(Line):
    """A session that was sent on a day."""

    day: date
    items: tuple[ItemLine, ...] = Field(min_length=1)


class QuestionLine(Line):
    """The one open question."""

    kind: Literal["effort", "reserve", "pain", "yes_or_no"]
    item: int | None = None
    site: Site | None = None
    side: Side | None = None


class SetLine(Line):
    """One set: what was done, where it differs from the plan also with which load or band."""

    value: Amount | None = None
    side: Arm | None = None
    load_kg: Amount | None = None
    band: str | None = None
    planned: bool = False


class ResultLine(Line):
    """What was said about one item."""

    item: int = Field(ge=1)
    sets: tuple[SetLine, ...] = ()
    stopped: bool = False
    skipped: bool = False
    reserve: Amount | None = None


class PlaceLine(Line):
    """The place in a conversation where a message arrives."""

    language: Literal["en", "es", "pt", "de", "fr"] = "en"
    units: Literal["kg", "lb"] = "kg"
    decimal_mark: Literal[".", ","] = "."
    today: date
    session: SessionLine | None = None
    others: tuple[SessionLine, ...] = Field(default=(), max_length=ELSEWHERE_MOST)
    asked_item: int | None = None
    question: QuestionLine | None = None
    recorded: tuple[ResultLine, ...] = ()
    before: tuple[ResultLine, ...] = ()


class PainLine(Line):
    """A pain that was said; ``sites`` where the words fit several places."""

    site: Site | None = None
    sites: tuple[Site, ...] = ()
    side: Side | None = None
    score: int | None = Field(default=None, ge=0, le=10)


class ExpectLine(Line):
    """The reading that a careful coach would give the message."""

    outcome: Kind
    results: tuple[ResultLine, ...] = ()
    day: date | None = None
    reason: Literal["ill", "travelling", "no_time", "no_equipment", "hurts"] | None = None
    effort: Amount | None = None
    reserve: Amount | None = None
    yes: bool | None = None
    pain: tuple[PainLine, ...] = ()
    may_be: tuple[Kind, ...] = ()

    @field_validator("pain", mode="before")
    @classmethod
    def _one_or_several(cls, value: object) -> object:
        return [value] if isinstance(value, dict) else value


class ContextLine(Line):
    """A line that names a place for the messages behind it."""

    context: str
    place: PlaceLine = Field(alias="is")


class MessageLine(Line):
    """A line with a message, and where it arrives."""

    place: str = Field(alias="in")
    say: str
    expect: ExpectLine
    note: str = ""
