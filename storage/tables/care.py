"""Pain, alerts, audit, and what waits for a person's answer."""

from datetime import datetime
from typing import Any

from sqlalchemy import BigInteger, Column, ForeignKey, Index, text
from sqlmodel import JSON, Field, SQLModel

from scheduler.pain.values import Urgency
from scheduler.reasons import Reason
from storage.column_types import Document, UtcInstant, coded
from storage.records.care import AlertState

OF_SESSION = text("session_id IS NOT NULL")


class PainEventRow(SQLModel, table=True):
    """One report, answer or clearing: the pain levels are folded from these, never stored."""

    __tablename__ = "pain_event"
    __table_args__ = (
        Index("ix_pain_event_athlete_at", "athlete_id", "at", "id"),
        Index(
            "ix_pain_event_session",
            "session_id",
            sqlite_where=OF_SESSION,
            postgresql_where=OF_SESSION,
        ),
    )

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id")
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    kind: str
    event: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    session_id: int | None = Field(default=None, foreign_key="session.id")
    message_id: int | None = Field(default=None, sa_column=Column(BigInteger))


class KeptPainFoldRow(SQLModel, table=True):
    """Where the fold of an athlete's pain history had come to: a cache, never a truth."""

    __tablename__ = "kept_pain_fold"

    athlete_id: int = Field(
        sa_column=Column(ForeignKey("athlete.person_id"), primary_key=True, autoincrement=False)
    )
    rules: str = Field(max_length=32)
    through_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    through_id: int
    events: int
    state: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))


class AlertRow(SQLModel, table=True):
    """A record that stays open until a person answers."""

    __tablename__ = "alert"
    __table_args__ = (Index("ix_alert_state_tell", "state", "tell_at"),)

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id", index=True)
    coach_id: int = Field(foreign_key="person.id")
    level: int
    urgency: Urgency = Field(sa_column=Column(coded(Urgency, name="urgency"), nullable=False))
    words: str
    reasons: Any = Field(default=(), sa_column=Column(Document(tuple[Reason, ...]), nullable=False))
    state: AlertState = Field(
        default=AlertState.OPEN,
        sa_column=Column(coded(AlertState, name="alert_state"), nullable=False),
    )
    raised_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    times_told: int = 0
    tell_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    answered_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    answered_by_id: int | None = Field(default=None, foreign_key="person.id")


class AuditRow(SQLModel, table=True):
    """One decision. Nothing here is ever changed."""

    __tablename__ = "audit"
    __table_args__ = (Index("ix_audit_athlete_at", "athlete_id", "at"),)

    id: int | None = Field(default=None, primary_key=True)
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    athlete_id: int | None = Field(default=None, foreign_key="person.id")
    actor_id: int | None = Field(default=None, foreign_key="person.id")
    what: str
    words: str = ""
    reasons: Any = Field(default=(), sa_column=Column(Document(tuple[Reason, ...]), nullable=False))
    before: dict[str, Any] = Field(default_factory=dict, sa_column=Column(JSON, nullable=False))
    after: dict[str, Any] = Field(default_factory=dict, sa_column=Column(JSON, nullable=False))


class PassedOnRow(SQLModel, table=True):
    """A message for the coach; on the roster until it is answered."""

    __tablename__ = "passed_on"

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id", index=True)
    words: str
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    answered_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))


class ProposalRow(SQLModel, table=True):
    """A decision drafted for the coach."""

    __tablename__ = "proposal"

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id", index=True)
    kind: str
    facts: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    made_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    answered_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    answer: str | None = None
