"""What every rule returns: a value, and why, as data that the wording can turn into sentences."""

from collections.abc import Mapping
from enum import StrEnum
from typing import Generic, TypeVar

from pydantic import BaseModel, ConfigDict, Field

Figure = bool | int | float | str
"""One figure of a reason: the number (or key) that the rule looked at, in the unit of its name."""

ValueT = TypeVar("ValueT")


class Reason(BaseModel):
    """Why a rule decided as it did.

    ``code`` is a member of the deciding room's own StrEnum (``dose.…``, ``week.…``, ``pain.…``);
    ``figures`` are what it compared, named with their units (``held_s``, ``floor_s``);
    ``source`` is a key of :mod:`scheduler.sources`.
    """

    model_config = ConfigDict(frozen=True)

    code: str
    figures: Mapping[str, Figure] = Field(default_factory=dict)
    source: str


def reason(code: StrEnum, source: str, /, **figures: Figure) -> Reason:
    """Build a reason from the room's own code, the source key, and the figures compared."""
    return Reason(code=code.value, figures=figures, source=source)


class Decision(BaseModel, Generic[ValueT]):
    """What a rule decided, with every reason that led there, the deciding one first."""

    model_config = ConfigDict(frozen=True)

    value: ValueT
    reasons: tuple[Reason, ...]
