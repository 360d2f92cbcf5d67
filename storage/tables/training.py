"""Weeks, sessions, items, sets: plans may change, what was sent and what was done stays."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import (
    BigInteger,
    CheckConstraint,
    Column,
    ForeignKey,
    Index,
    UniqueConstraint,
    text,
)
from sqlmodel import Field, SQLModel

from scheduler.catalogue.values import Direction, Role
from scheduler.pain.values import Side
from scheduler.reasons import Reason
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.values import Dose, Quality, ReserveAnswer, SetDone
from storage.column_types import Document, UtcInstant, coded
from storage.records.training import SessionState

OPEN = text("closed_at IS NULL")


class WeekRow(SQLModel, table=True):
    """One athlete's week, drawn once and redrawn for what is still ahead."""

    __tablename__ = "week"
    __table_args__ = (UniqueConstraint("athlete_id", "monday", name="uq_week_athlete_monday"),)

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id")
    monday: date
    stage: int
    is_lighter: bool = False
    kind: SeasonWeekKind = Field(
        default=SeasonWeekKind.ORDINARY,
        sa_column=Column(
            coded(SeasonWeekKind, name="week_kind"), nullable=False, server_default="ordinary"
        ),
    )
    sets_share: float = 1.0
    next_letter: str = "A"
    relaxations: Any = Field(
        default=(), sa_column=Column(Document(tuple[Reason, ...]), nullable=False)
    )
    reasons: Any = Field(default=(), sa_column=Column(Document(tuple[Reason, ...]), nullable=False))
    drawn_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))


class SessionRow(SQLModel, table=True):
    """One day of a week."""

    __tablename__ = "session"
    __table_args__ = (
        Index("ix_session_athlete_on", "athlete_id", "on"),
        # What is open is asked for at every reply: a few of the sessions of years.
        Index("ix_session_open", "athlete_id", "on", sqlite_where=OPEN, postgresql_where=OPEN),
        CheckConstraint("effort IS NULL OR effort BETWEEN 0 AND 10", name="effort"),
    )

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id")
    week_id: int = Field(foreign_key="week.id", index=True)
    on: date
    letter: str
    state: SessionState = Field(
        default=SessionState.PLANNED,
        sa_column=Column(coded(SessionState, name="session_state"), nullable=False),
    )
    sent_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    trained_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    closed_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    effort: int | None = None
    minutes: int | None = None
    is_pain_answered: bool = False
    is_step_by_step: bool = False
    called_off_because: str | None = None


class ItemRow(SQLModel, table=True):
    """One movement of a session; its dose is a snapshot taken when the session is sent."""

    __tablename__ = "item"
    # By session first: a movement is always looked for in one athlete's sessions, latest first.
    __table_args__ = (Index("ix_item_session_movement", "session_id", "movement_key"),)

    id: int | None = Field(default=None, primary_key=True)
    session_id: int = Field(
        sa_column=Column(ForeignKey("session.id", ondelete="CASCADE"), nullable=False)
    )
    position: int
    pair: int | None = None
    direction: Direction = Field(
        sa_column=Column(coded(Direction, name="item_direction"), nullable=False)
    )
    role: Role = Field(sa_column=Column(coded(Role, name="item_role"), nullable=False))
    movement_key: str
    quality: Quality = Field(sa_column=Column(coded(Quality, name="item_quality"), nullable=False))
    planned_sets: int
    dose: Any = Field(default=None, sa_column=Column(Document(Dose)))
    reasons: Any = Field(default=(), sa_column=Column(Document(tuple[Reason, ...]), nullable=False))
    arms: Any = Field(default=(), sa_column=Column(Document(tuple[Side, ...]), nullable=False))
    reserve: Any = Field(default=None, sa_column=Column(Document(ReserveAnswer)))
    is_reserve_asked: bool = False
    is_skipped: bool = False
    is_left_out: bool = False


class SetRow(SQLModel, table=True):
    """One reported set. A corrected one stays, marked as replaced: observations are the truth."""

    __tablename__ = "set_done"
    __table_args__ = (Index("ix_set_message", "chat_id", "message_id"),)

    id: int | None = Field(default=None, primary_key=True)
    item_id: int = Field(
        sa_column=Column(ForeignKey("item.id", ondelete="CASCADE"), nullable=False, index=True)
    )
    number: int
    done: Any = Field(sa_column=Column(Document(SetDone), nullable=False))
    is_as_planned: bool = False
    chat_id: int = Field(sa_column=Column(BigInteger, nullable=False))
    message_id: int | None = Field(default=None, sa_column=Column(BigInteger))
    reported_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    replaced_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
