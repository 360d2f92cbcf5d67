"""What waits to be handled, what waits to be sent, and what a button stands for."""

from collections.abc import Mapping
from datetime import datetime
from enum import StrEnum
from typing import Any

from pydantic import BaseModel, ConfigDict, Field


class Operation(StrEnum):
    """What the platform is asked to do."""

    SEND = "send"
    EDIT = "edit"
    COPY = "copy"
    MENU = "menu"
    DOCUMENT = "document"
    FETCH = "fetch"
    MEDIA = "media"
    PHOTO = "photo"
    ALBUM = "album"

    @property
    def is_drawn(self) -> bool:
        """True where pictures are drawn before it leaves."""
        return self in {Operation.PHOTO, Operation.ALBUM}


class MessageKind(StrEnum):
    """What a message is for, which decides what happens when it may or may not have arrived."""

    SESSION = "session"
    QUESTION = "question"
    REPLY = "reply"
    ALERT = "alert"
    SAFETY = "safety"
    DIGEST = "digest"
    REMINDER = "reminder"
    NOTICE = "notice"
    MENU = "menu"

    @property
    def is_sent_again_in_doubt(self) -> bool:
        """Better twice than never: an alert, and what an athlete is told about safety."""
        return self in {MessageKind.ALERT, MessageKind.SAFETY}


class Received(BaseModel):
    """One stored update that waits for its turn."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    update_id: int
    chat_id: int | None
    raw: str | None
    received_at: datetime
    attempts: int


class Outgoing(BaseModel):
    """One operation as claimed by a sender."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    chat_id: int
    operation: Operation
    kind: MessageKind
    payload: Mapping[str, Any]
    edits_message_id: int | None = None
    subject: str | None = None
    attempts: int
    is_doubtful: bool
    created_at: datetime
    useful_until: datetime | None


class Button(BaseModel):
    """What a tap asks for."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    token: str
    chat_id: int
    person_id: int
    act: str
    arguments: Mapping[str, Any]
    made_at: datetime
    used_at: datetime | None


class OpenQuestion(BaseModel):
    """The question a chat is waiting on."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    person_id: int
    kind: str
    subject: Mapping[str, Any] = Field(default_factory=dict)
    asked_at: datetime
    expires_at: datetime


class Dialog(BaseModel):
    """A dialog with a fixed order of steps, such as the intake."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    chat_id: int
    person_id: int
    kind: str
    step: str
    answers: Mapping[str, Any] = Field(default_factory=dict)
