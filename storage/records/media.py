"""Clips, a coach's own media, and files in versions, as the rest of the house sees them."""

from collections.abc import Mapping
from datetime import datetime
from enum import StrEnum
from typing import Any

from pydantic import BaseModel, ConfigDict


class FileKind(StrEnum):
    """What a coach may replace by a file of their own."""

    MOVEMENTS = "movements"
    STANDARDS = "standards"


class Clip(BaseModel):
    """A clip or picture of an athlete, by the platform's reference.

    ``sent_as`` is the platform's name of its kind; ``item_id`` and ``movement_key`` are None
    until it is known what it shows; the parts of an album share its id and one answer.
    """

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    chat_id: int
    message_id: int
    file_id: str | None
    sent_as: str
    album_id: str | None
    caption: str
    item_id: int | None
    movement_key: str | None
    at: datetime
    answered_at: datetime | None
    answered_by_id: int | None


class HowToMedia(BaseModel):
    """A coach's own picture or clip of a movement, by the platform's reference."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    coach_id: int
    movement_key: str
    file_id: str
    sent_as: str
    at: datetime


class FileVersion(BaseModel):
    """One version of a coach's file; ``content`` None is the file that comes with the package."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    coach_id: int
    kind: FileKind
    name: str
    content: str | None
    meaning: Mapping[str, Any]
    words: str
    made_at: datetime
    made_by_id: int


class FileDraft(BaseModel):
    """A file that a coach sent, as it was read; ``base_id`` is the newest version at that time."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: str
    coach_id: int
    kind: FileKind
    name: str
    content: str | None
    meaning: Mapping[str, Any]
    base_id: int | None
    at: datetime
