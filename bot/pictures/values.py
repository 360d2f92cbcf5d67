"""What the pictures show: figures, and every text already in the reader's words."""

from datetime import date
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, TypeAdapter

STRICT = ConfigDict(frozen=True, extra="forbid")


class Tick(BaseModel):
    """A day that is named under an axis."""

    model_config = STRICT

    on: date
    words: str


class HistoryDay(BaseModel):
    """What was asked of every set and what the last set came to [s, repetitions or m].

    ``is_other_load``: under another resistance than the newest, so that it compares with none.
    """

    model_config = STRICT

    on: date
    asked: float = Field(ge=0)
    done: float = Field(ge=0)
    is_other_load: bool = False


class CoursePoint(BaseModel):
    """What the last set would have come to at the limit on a day, and its likely range."""

    model_config = STRICT

    on: date
    least: float
    likely: float
    most: float


class PainDay(BaseModel):
    """The highest score of a day [0-10]; ``is_morning``: told the morning after."""

    model_config = STRICT

    on: date
    score: int = Field(ge=0, le=10)
    is_morning: bool = False


class HistoryWords(BaseModel):
    """The words of the history picture."""

    model_config = STRICT

    title: str
    subtitle: str
    unit: str
    asked: str
    done: str
    other_load: str
    likely: str
    pain: str
    pain_of_session: str
    pain_of_morning: str
    no_pain: str
    nothing: str


class HistoryPicture(BaseModel):
    """One movement: what it may come to with its likely range, asked and done, pain beneath."""

    model_config = STRICT

    kind: Literal["history"] = "history"
    words: HistoryWords
    first: date
    last: date
    days: tuple[HistoryDay, ...] = ()
    course: tuple[CoursePoint, ...] = ()
    pain: tuple[PainDay, ...] = ()
    ticks: tuple[Tick, ...] = ()


class SeasonTile(BaseModel):
    """One week: its Monday, the stage that it is planned in, and what it is for.

    ``week_kind`` is the key of what the week is for; ``event`` is the gravest one in it.
    """

    model_config = STRICT

    day: str
    stage: int
    week_kind: str
    is_now: bool = False
    event: Literal["main", "other"] | None = None


class SeasonKey(BaseModel):
    """A pattern and what it stands for."""

    model_config = STRICT

    week_kind: str
    words: str


class SeasonPicture(BaseModel):
    """The weeks of a season in order, with what each is for."""

    model_config = STRICT

    kind: Literal["season"] = "season"
    title: str
    subtitle: str
    now: str
    stage: str
    tiles: tuple[SeasonTile, ...]
    keys: tuple[SeasonKey, ...]
    main_event: str
    other_event: str
    foot: str


class BalanceSide(BaseModel):
    """One side of a row [sets]."""

    model_config = STRICT

    words: str
    done: int = Field(ge=0)
    planned: int = Field(ge=0)


class BalanceRow(BaseModel):
    """What is set against what."""

    model_config = STRICT

    left: BalanceSide
    right: BalanceSide


class BalancePicture(BaseModel):
    """The sets of a week, planned and done, in rows of opposites; the first is the total."""

    model_config = STRICT

    kind: Literal["balance"] = "balance"
    title: str
    subtitle: str
    planned: str
    done: str
    nothing: str
    rows: tuple[BalanceRow, ...]


class TeamCount(BaseModel):
    """A number that stands large, and what it counts."""

    model_config = STRICT

    number: str
    words: str


UNKNOWN = "unknown"
"""The key of the shape for whose level could not be worked out."""


class TeamRow(BaseModel):
    """One athlete who needs a look; ``level`` is the key of the shape, its word beside it."""

    model_config = STRICT

    name: str
    sessions: str
    stage: str
    level: str
    level_word: str
    waits: str


class TeamShort(BaseModel):
    """One athlete who needs nothing."""

    model_config = STRICT

    name: str
    sessions: str
    stage: str


class TeamPicture(BaseModel):
    """A team's week: counts, who needs a look a row each, and the rest in columns."""

    model_config = STRICT

    kind: Literal["team"] = "team"
    title: str
    counts: tuple[TeamCount, ...]
    look_head: str
    looks: tuple[TeamRow, ...]
    looks_more: str
    rest_head: str
    rest: tuple[TeamShort, ...]
    rest_more: str


Picture = Annotated[
    HistoryPicture | SeasonPicture | BalancePicture | TeamPicture, Field(discriminator="kind")
]
PICTURE: TypeAdapter[Picture] = TypeAdapter(Picture)
