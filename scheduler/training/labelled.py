"""Numbers of the rulebook: each carries its unit and where it comes from."""

from typing import Annotated, Self

from pydantic import AfterValidator, BaseModel, ConfigDict, model_validator

from scheduler.sources import SOURCES


def _resolves(key: str) -> str:
    if key not in SOURCES:
        message = f"expected a key of the bibliography, such as cp, ch or acsm2009; got {key!r}"
        raise ValueError(message)
    return key


SourceKey = Annotated[str, AfterValidator(_resolves)]
"""A key of :data:`scheduler.sources.SOURCES`, refused when it does not resolve."""


class Beside(BaseModel):
    """What a published source says where the rulebook's own number departs from it."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    says: str
    source: SourceKey


class Labelled(BaseModel):
    """One number with its unit and source, and the published one beside it where they differ."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    value: float
    unit: str
    source: SourceKey
    published: Beside | None = None

    @property
    def whole(self) -> int:
        """The number where only a whole one makes sense (weeks, sets, days)."""
        if self.value != int(self.value):
            message = f"expected a whole number of {self.unit}, got {self.value}"
            raise ValueError(message)
        return int(self.value)


class LabelledRange(BaseModel):
    """Two bounds, both allowed, with one unit and source. No ``most`` means no upper bound."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    least: float
    most: float | None = None
    unit: str
    source: SourceKey
    published: Beside | None = None

    @model_validator(mode="after")
    def _in_order(self) -> Self:
        if self.most is not None and self.most < self.least:
            message = f"expected least ({self.least}) not above most ({self.most})"
            raise ValueError(message)
        return self

    def __contains__(self, number: float) -> bool:
        """Tell whether ``number`` [the range's unit] lies within both bounds."""
        return self.least <= number and (self.most is None or number <= self.most)

    def nearest(self, number: float) -> float:
        """Return ``number`` [the range's unit], moved to the nearer bound when outside."""
        kept = max(number, self.least)
        return kept if self.most is None else min(kept, self.most)
