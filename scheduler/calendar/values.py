"""What can be due, for whom, and a person's own hours."""

from datetime import date, datetime, time
from enum import StrEnum
from typing import Annotated
from zoneinfo import ZoneInfo

from pydantic import AwareDatetime, BaseModel, BeforeValidator, ConfigDict, Field, model_validator

from scheduler.calendar.zones import zone_named

NOON = time(12, 0)  # [wall time] ch: end of a morning


class DueKind(StrEnum):
    """What falls due, the most urgent first: this is the order within a round."""

    ALERT = "alert"
    SILENCE_CHECK = "silence_check"
    MORNING_QUESTION = "morning_question"
    SESSION = "session"
    SESSION_REMINDER = "session_reminder"
    DIGEST = "digest"
    WEEK_DRAWING = "week_drawing"
    REVIEW = "review"


class Due(BaseModel):
    """One thing that is due.

    ``subject`` says what it belongs to and stays the same when a zone or an hour changes, so
    that (person, kind, subject) happens once. ``local_date`` is the wall date it was planned
    for. ``useful_until_utc`` None: useful however late.
    """

    model_config = ConfigDict(frozen=True)

    person_id: int
    kind: DueKind
    subject: str
    local_date: date
    due_at_utc: datetime
    useful_until_utc: datetime | None

    @property
    def key(self) -> tuple[str, str]:
        """Kind and subject: what is unique for one person."""
        return (self.kind.value, self.subject)


class Timing(BaseModel):
    """A person's zone and hours on their own wall clock. Weekdays count from Monday = 0."""

    model_config = ConfigDict(frozen=True)

    zone: Annotated[ZoneInfo, BeforeValidator(lambda z: zone_named(z) if isinstance(z, str) else z)]
    joined_at_utc: AwareDatetime
    session_at: time = time(7, 0)  # [wall time] ch
    evening_at: time = time(20, 0)  # [wall time] ch
    waking_from: time = time(7, 0)  # [wall time] ch
    waking_until: time = time(22, 0)  # [wall time] ch
    morning_question_at: time = time(7, 30)  # [wall time] ch
    digest_weekday: int = Field(default=0, ge=0, le=6)  # [weekday] ch: Monday
    digest_at: time = time(7, 0)  # [wall time] ch
    planning_at: time = time(3, 0)  # [wall time] ch

    @model_validator(mode="after")
    def _morning_is_before_noon(self) -> "Timing":
        if self.morning_question_at >= NOON:
            raise ValueError("The morning question belongs before noon.")
        return self


class PlannedSession(BaseModel):
    """A session in the plan; ``at`` is its own wall time where it differs from the usual."""

    model_config = ConfigDict(frozen=True)

    session_id: int
    local_date: date
    at: time | None = None
    sent_at_utc: AwareDatetime | None = None
    is_answered: bool = False


class MorningAfter(BaseModel):
    """A report of pain that wants a question on the next morning.

    ``subject`` is the report's own (its session, or its date); ``reported_on`` its local date.
    """

    model_config = ConfigDict(frozen=True)

    subject: str
    reported_on: date


class Silence(BaseModel):
    """Sessions sent and nothing heard: ``subject`` is the first of them, sent on ``since``."""

    model_config = ConfigDict(frozen=True)

    subject: str
    since: date


class Review(BaseModel):
    """A look back on an athlete's training: the first, second, … and the day it belongs to."""

    model_config = ConfigDict(frozen=True)

    number: int = Field(ge=1)
    on: date


class OpenAlert(BaseModel):
    """An alert that nobody has answered, and when it is to be told next."""

    model_config = ConfigDict(frozen=True)

    alert_id: int
    times_told: int = Field(ge=0)
    tell_at_utc: AwareDatetime


class Owed(BaseModel):
    """All that may fall due for one person.

    ``recurring`` names what comes round by itself: the digest and the drawing of weeks.
    ``last_digest_on`` is the day of the last digest that was sent, ``digest_moved_at_utc`` when
    its day or hour were last changed.
    """

    model_config = ConfigDict(frozen=True)

    sessions: tuple[PlannedSession, ...] = ()
    mornings: tuple[MorningAfter, ...] = ()
    silences: tuple[Silence, ...] = ()
    alerts: tuple[OpenAlert, ...] = ()
    reviews: tuple[Review, ...] = ()
    recurring: frozenset[DueKind] = frozenset()
    last_digest_on: date | None = None
    digest_moved_at_utc: AwareDatetime | None = None
