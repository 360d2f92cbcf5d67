"""Guided tests as the rest of the house sees them, and remarks beside results."""

from datetime import date, datetime
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side
from scheduler.reasons import Reason
from scheduler.training.baseline_values import Attempt, BaselinePlan, Ended
from scheduler.training.values import ReserveAnswer, Rung


class TestsWhy(StrEnum):
    """Why there are tests."""

    __test__ = False
    START = "start"
    RETURN = "return"
    COACH = "coach"

    @property
    def is_first(self) -> bool:
        """True where the stage to begin with is looked for."""
        return self is not TestsWhy.COACH


class Begins(StrEnum):
    """When a round begins: with the next session, or in the next lighter week."""

    NEXT = "next"
    LIGHTER = "lighter"


class RoundEnd(StrEnum):
    """How a round ended."""

    DONE = "done"
    LAPSED = "lapsed"
    CALLED_OFF = "called_off"


class TestRound(BaseModel):
    """A round of tests: ``days_sent`` [sessions] that it has taken so far."""

    __test__ = False
    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    why: TestsWhy
    begins: Begins
    opened_at: datetime
    opened_by_id: int | None
    stage_then: int
    plan: BaselinePlan
    reasons: tuple[Reason, ...]
    days_sent: int
    closed_at: datetime | None
    end: RoundEnd | None


class AttemptRecord(BaseModel):
    """One arm's attempt as it stands now; ``why`` it was skipped."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    round_id: int
    athlete_id: int
    session_id: int | None
    key: str
    movement_key: str
    measure: Measure
    side: Side
    on: date
    ended: Ended
    why: str
    value: float | None
    rung: Rung
    reserve: ReserveAnswer | None
    is_reserve_asked: bool
    pain: int | None
    message_id: int | None
    at: datetime

    @property
    def attempt(self) -> Attempt:
        """The attempt as the rules want it."""
        return Attempt(
            key=self.key,
            side=self.side,
            on=self.on,
            ended=self.ended,
            value=self.value,
            rung=self.rung,
            reserve=self.reserve,
            pain=self.pain,
        )


class Remark(BaseModel):
    """Words beside results, and the day of the session that they were about."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    at: datetime
    on: date
    words: str
