"""Rounds of guided tests, and each arm's attempt at each test; what was corrected stays."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import BigInteger, Column, ForeignKey, Index, text
from sqlmodel import Field, SQLModel

from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side
from scheduler.reasons import Reason
from scheduler.training.baseline_values import BaselinePlan, Ended
from scheduler.training.values import ReserveAnswer, Rung
from storage.column_types import Document, UtcInstant, coded
from storage.records.first_tests import Begins, RoundEnd, TestsWhy

OPEN = text("closed_at IS NULL")


class TestRoundRow(SQLModel, table=True):
    """One round of tests of one athlete; its plan is a snapshot."""

    __test__ = False
    __tablename__ = "test_round"
    __table_args__ = (
        Index("ix_test_round_athlete", "athlete_id", "opened_at"),
        Index(
            "uq_test_round_open",
            "athlete_id",
            unique=True,
            sqlite_where=OPEN,
            postgresql_where=OPEN,
        ),
    )

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id")
    why: TestsWhy = Field(sa_column=Column(coded(TestsWhy, name="tests_why"), nullable=False))
    begins: Begins = Field(sa_column=Column(coded(Begins, name="tests_begin"), nullable=False))
    opened_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    opened_by_id: int | None = Field(default=None, foreign_key="person.id")
    stage_then: int
    plan: Any = Field(sa_column=Column(Document(BaselinePlan), nullable=False))
    reasons: Any = Field(default=(), sa_column=Column(Document(tuple[Reason, ...]), nullable=False))
    days_sent: int = 0
    closed_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    end: RoundEnd | None = Field(
        default=None, sa_column=Column(coded(RoundEnd, name="tests_end"), nullable=True)
    )


class TestAttemptRow(SQLModel, table=True):
    """One arm's attempt; a corrected one stays, marked as replaced."""

    __test__ = False
    __tablename__ = "test_attempt"
    __table_args__ = (
        Index("ix_test_attempt_athlete_on", "athlete_id", "on"),
        Index("ix_test_attempt_round", "round_id"),
        Index("ix_test_attempt_session", "session_id"),
    )

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(
        sa_column=Column(ForeignKey("test_round.id", ondelete="CASCADE"), nullable=False)
    )
    athlete_id: int = Field(foreign_key="athlete.person_id")
    session_id: int | None = Field(default=None, foreign_key="session.id")
    key: str
    movement_key: str
    measure: Measure = Field(
        sa_column=Column(coded(Measure, name="attempt_measure"), nullable=False)
    )
    side: Side = Field(sa_column=Column(coded(Side, name="attempt_side"), nullable=False))
    on: date
    ended: Ended = Field(sa_column=Column(coded(Ended, name="attempt_ended"), nullable=False))
    why: str = ""
    value: float | None = None
    rung: Any = Field(sa_column=Column(Document(Rung), nullable=False))
    reserve: Any = Field(default=None, sa_column=Column(Document(ReserveAnswer)))
    is_reserve_asked: bool = False
    pain: int | None = None
    message_id: int | None = Field(default=None, sa_column=Column(BigInteger))
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    replaced_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))


class RemarkRow(SQLModel, table=True):
    """Words beside results that no rule read: for the coach, kept as long as a reading's text."""

    __tablename__ = "remark"
    __table_args__ = (Index("ix_remark_athlete_at", "athlete_id", "at"),)

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id")
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    on: date
    words: str
