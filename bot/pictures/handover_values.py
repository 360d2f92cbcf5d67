"""What the handover page shows: headings and lines in the reader's words, and the scores."""

from datetime import date

from pydantic import BaseModel, ConfigDict


class Section(BaseModel):
    """A heading with its lines."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    heading: str
    lines: tuple[str, ...]


class Series(BaseModel):
    """The scores of one place [of 10], the oldest first."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    name: str
    points: tuple[tuple[date, int], ...]


class HandoverPage(BaseModel):
    """One page."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    title: str
    subtitle: str
    sections: tuple[Section, ...]
    chart_heading: str
    chart_days: tuple[date, date]
    chart_day_labels: tuple[str, str]
    series: tuple[Series, ...]
    foot: str
