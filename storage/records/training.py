"""Weeks, sessions, items and sets as the rest of the house sees them."""

from datetime import date, datetime
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Direction, Role
from scheduler.pain.values import Side
from scheduler.reasons import Reason
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.values import Dose, Exposure, Quality, ReserveAnswer, SetDone

TEST_DAY = "T"
"""The letter of a session that is a guided test: its own items are left out for it."""


class SessionState(StrEnum):
    """How far a session has come."""

    PLANNED = "planned"
    SENT = "sent"
    TRAINED = "trained"
    MISSED = "missed"
    CALLED_OFF = "called_off"


class OffBecause(StrEnum):
    """Why a session was called off; with results in it, why it ended there.

    The athlete's own reasons have the names that the reader gives them.
    """

    UNSAID = ""
    ILL = "ill"
    TRAVELLING = "travelling"
    NO_TIME = "no_time"
    NO_EQUIPMENT = "no_equipment"
    HURTS = "hurts"
    BREAK = "break"
    TOO_LATE = "too_late"
    STARTED_LATER = "started_later"
    LEFT_OUT = "left_out"
    WAITS_FOR_COACH = "waits_for_coach"
    TESTS_STOPPED = "tests_stopped"


class SetRecord(BaseModel):
    """One set as it stands now, after corrections."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    number: int
    done: SetDone
    message_id: int | None
    is_as_planned: bool
    reported_at: datetime


class ItemRecord(BaseModel):
    """One movement of one session. ``dose`` is None until the session is sent."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    position: int
    pair: int | None
    direction: Direction
    role: Role
    movement_key: str
    quality: Quality
    planned_sets: int
    dose: Dose | None
    reasons: tuple[Reason, ...]
    arms: tuple[Side, ...]
    reserve: ReserveAnswer | None
    is_reserve_asked: bool
    is_skipped: bool
    is_left_out: bool
    sets: tuple[SetRecord, ...]

    @property
    def is_reported(self) -> bool:
        """True when nothing more is expected of the athlete about the sets."""
        return bool(self.sets) or self.is_skipped or self.is_left_out

    def exposure(self, on: date) -> Exposure | None:
        """Return what was done as the rules want it; None when nothing was done."""
        if self.dose is None or not self.sets:
            return None
        return Exposure(
            on=on,
            dose=self.dose,
            sets=tuple(record.done for record in self.sets),
            reserve=self.reserve,
        )


class SessionRecord(BaseModel):
    """One day's session."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    week_id: int
    on: date
    letter: str
    state: SessionState
    sent_at: datetime | None
    trained_at: datetime | None
    closed_at: datetime | None
    effort: int | None
    minutes: int | None
    is_pain_answered: bool
    is_step_by_step: bool
    called_off_because: OffBecause | None
    items: tuple[ItemRecord, ...]

    @property
    def is_open(self) -> bool:
        """True while answers to it are expected."""
        return self.state in {SessionState.SENT, SessionState.TRAINED} and self.closed_at is None

    @property
    def is_test_day(self) -> bool:
        """True when it is a guided test."""
        return self.letter == TEST_DAY

    @property
    def has_results(self) -> bool:
        """True when anything was done in it."""
        is_tested = self.is_test_day and self.trained_at is not None
        return is_tested or any(item.sets for item in self.items)


class SessionOutline(BaseModel):
    """One day's session without its items: ``answered_at`` is when its sets were last told."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    on: date
    state: SessionState
    sent_at: datetime | None
    closed_at: datetime | None
    has_answers: bool
    answered_at: datetime | None

    @property
    def is_open(self) -> bool:
        """True while answers to it are expected."""
        return self.state in {SessionState.SENT, SessionState.TRAINED} and self.closed_at is None


class WeekRecord(BaseModel):
    """One planned week: what was decided about it as a whole."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    monday: date
    stage: int
    is_lighter: bool
    kind: SeasonWeekKind
    sets_share: float
    next_letter: str
    relaxations: tuple[Reason, ...]
    reasons: tuple[Reason, ...]
