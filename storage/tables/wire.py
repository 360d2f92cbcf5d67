"""The platform's side: what arrived, what must be sent, and what a button stands for."""

from datetime import datetime
from enum import StrEnum
from typing import Any

from sqlalchemy import BigInteger, CheckConstraint, Column, ForeignKey, Index, Text, text
from sqlmodel import JSON, Field, SQLModel

from storage.column_types import UtcInstant, coded

EDITS = text("edits_outbox_id IS NOT NULL")


class InboxState(StrEnum):
    """How far an update has come."""

    WAITING = "waiting"
    HANDLED = "handled"
    SET_ASIDE = "set_aside"


class OutboxState(StrEnum):
    """How far an operation has come."""

    WAITING = "waiting"
    SENDING = "sending"
    SENT = "sent"
    REFUSED = "refused"
    BLOCKED = "blocked"
    DROPPED = "dropped"


class InboxRow(SQLModel, table=True):
    """One raw update, stored before it is confirmed to the platform."""

    __tablename__ = "inbox"
    __table_args__ = (
        Index("ix_inbox_state", "state", "id"),
        Index("ix_inbox_chat_received", "chat_id", "received_at"),
    )

    id: int | None = Field(default=None, primary_key=True)
    update_id: int = Field(sa_column=Column(BigInteger, nullable=False, unique=True))
    chat_id: int | None = Field(default=None, sa_column=Column(BigInteger))
    raw: str | None = Field(sa_column=Column(Text, nullable=True))
    received_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False, index=True))
    state: InboxState = Field(
        default=InboxState.WAITING,
        sa_column=Column(coded(InboxState, name="inbox_state"), nullable=False),
    )
    attempts: int = 0
    handled_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    outcome: str | None = None
    fault_reference: str | None = None


class OutboxRow(SQLModel, table=True):
    """One operation on the platform, with its text as rendered at commit."""

    __tablename__ = "outbox"
    __table_args__ = (
        Index("ix_outbox_turn", "state", "chat_id", "id"),
        Index("ix_outbox_message", "chat_id", "message_id"),
        Index("ix_outbox_edits", "edits_outbox_id", sqlite_where=EDITS, postgresql_where=EDITS),
        CheckConstraint("attempts >= 0", name="attempts_not_negative"),
    )

    id: int | None = Field(default=None, primary_key=True)
    chat_id: int = Field(sa_column=Column(BigInteger, nullable=False))
    operation: str
    kind: str
    payload: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    subject: str | None = None
    edits_outbox_id: int | None = Field(
        default=None, sa_column=Column(ForeignKey("outbox.id"), nullable=True)
    )
    state: OutboxState = Field(
        default=OutboxState.WAITING,
        sa_column=Column(coded(OutboxState, name="outbox_state"), nullable=False),
    )
    created_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False, index=True))
    not_before: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    useful_until: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    attempts: int = 0
    is_doubtful: bool = False
    sent_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    message_id: int | None = Field(default=None, sa_column=Column(BigInteger))
    fault: str | None = None


class ButtonRow(SQLModel, table=True):
    """What one button means: an act and its arguments, for one person in one chat."""

    __tablename__ = "button"

    token: str = Field(primary_key=True, max_length=32)
    chat_id: int = Field(sa_column=Column(BigInteger, nullable=False))
    person_id: int = Field(foreign_key="person.id", index=True)
    act: str
    arguments: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    made_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False, index=True))
    used_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))


class QuestionRow(SQLModel, table=True):
    """The one question that is open in a chat, so that a bare "4" finds its meaning."""

    __tablename__ = "question"

    chat_id: int = Field(sa_column=Column(BigInteger, primary_key=True, autoincrement=False))
    person_id: int = Field(foreign_key="person.id")
    kind: str
    subject: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    asked_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    expires_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))


class DialogRow(SQLModel, table=True):
    """A dialog with a fixed order of steps: where it stands, and what was answered so far."""

    __tablename__ = "dialog"

    chat_id: int = Field(sa_column=Column(BigInteger, primary_key=True, autoincrement=False))
    person_id: int = Field(foreign_key="person.id")
    kind: str
    step: str
    answers: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    changed_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))


class DueRow(SQLModel, table=True):
    """That something due was taken care of: unique, so that nobody is told twice."""

    __tablename__ = "due"
    __table_args__ = (
        Index("uq_due_person_kind_subject", "person_id", "kind", "subject", unique=True),
        Index("ix_due_person_due_at", "person_id", "due_at"),
        Index("ix_due_handled_at", "handled_at"),
    )

    id: int | None = Field(default=None, primary_key=True)
    person_id: int = Field(foreign_key="person.id")
    kind: str
    subject: str
    due_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    handled_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    outcome: str


class MarkRow(SQLModel, table=True):
    """An instant that the house remembers about itself, such as its last round."""

    __tablename__ = "mark"

    name: str = Field(primary_key=True, max_length=40)
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
