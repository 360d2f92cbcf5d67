"""What the reader knows before it reads a message."""

from datetime import date
from enum import StrEnum
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Measure, Sides
from scheduler.pain.values import Side, Site


class Value(BaseModel):
    """A frozen value."""

    model_config = ConfigDict(frozen=True)


class Estimate(Value):
    """This athlete's own best single set at the planned load, with its uncertainty.

    ``likely`` is in the item's own unit [s, repetitions or m]; ``spread_log`` is the standard
    deviation of its natural logarithm.
    """

    likely: float = Field(gt=0)
    spread_log: float = Field(ge=0)


class KnownItem(Value):
    """One item of a session as it was sent; for ``Sides.EACH`` the sets are those of each arm.

    ``arms`` are those that are asked for where each arm has its own sets.
    """

    ref: str
    number: int
    names: tuple[str, ...]
    measure: Measure
    sets: int = Field(ge=1)
    target: float = Field(gt=0)
    load_kg: float | None = None
    band: str | None = None
    sides: Sides = Sides.BOTH
    arms: tuple[Side, ...] = (Side.LEFT, Side.RIGHT)
    is_main: bool = True
    is_reported: bool = False
    estimate: Estimate | None = None

    @property
    def arms_asked(self) -> tuple[Side, ...]:
        """The arms that have sets of their own: none where both work at once."""
        return self.arms if self.sides is Sides.EACH else ()


class KnownSession(Value):
    """A session that an answer may belong to."""

    ref: str
    day: date
    items: tuple[KnownItem, ...]


class Expects(StrEnum):
    """What kind of answer the open question takes."""

    EFFORT = "effort"
    RESERVE = "reserve"
    PAIN = "pain"
    YES_OR_NO = "yes_or_no"


class OpenQuestion(Value):
    """The one question that is open in this chat, and what it is about."""

    expects: Expects
    item_ref: str | None = None
    site: Site | None = None
    side: Side | None = None


class SetResult(Value):
    """One set: ``value`` in the item's unit; ``is_as_planned`` when no figure was said for it."""

    number: int = Field(ge=1)
    value: float = Field(ge=0, allow_inf_nan=False)
    side: Side = Side.BOTH
    load_kg: float | None = Field(default=None, ge=0, allow_inf_nan=False)
    band: str | None = None
    is_as_planned: bool = False


class Reserve(Value):
    """What was left after the last set [s for times, repetitions for repetitions]."""

    left: float = Field(ge=0)
    is_at_least: bool = False


class ItemResult(Value):
    """What was said about one item."""

    ref: str
    sets: tuple[SetResult, ...] = ()
    is_stopped: bool = False
    is_skipped: bool = False
    reserve: Reserve | None = None


class ReadingContext(Value):
    """All that the reader may look at besides the text.

    ``others`` are other recent sessions without an answer, ``asked_ref`` the item asked about
    when the session is answered step by step, ``last`` what the last message recorded, and
    ``earlier`` what the same session had before it.
    """

    session: KnownSession | None = None
    others: tuple[KnownSession, ...] = ()
    asked_ref: str | None = None
    question: OpenQuestion | None = None
    last: tuple[ItemResult, ...] = ()
    earlier: tuple[ItemResult, ...] = ()
    decimal_mark: Literal[".", ","] = "."
    unit: Literal["kg", "lb"] = "kg"
    language: str = "en"
    local_date: date
