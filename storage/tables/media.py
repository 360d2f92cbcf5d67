"""Clips that wait for a coach, a coach's own media for movements, and files in versions.

No bytes of a picture or clip are stored: the platform keeps them, and we keep its reference.
"""

from datetime import datetime
from typing import Any

from sqlalchemy import BigInteger, Column, ForeignKey, Index, Text, text
from sqlmodel import JSON, Field, SQLModel

from storage.column_types import UtcInstant, coded
from storage.records.media import FileKind

UNANSWERED = text("answered_at IS NULL")
OF_ITEM = text("item_id IS NOT NULL")


class ClipRow(SQLModel, table=True):
    """A clip or picture of an athlete; on the roster until it is answered."""

    __tablename__ = "clip"
    __table_args__ = (
        Index(
            "ix_clip_waiting",
            "athlete_id",
            sqlite_where=UNANSWERED,
            postgresql_where=UNANSWERED,
        ),
        Index("ix_clip_athlete_at", "athlete_id", "at"),
        Index("ix_clip_item", "item_id", sqlite_where=OF_ITEM, postgresql_where=OF_ITEM),
    )

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="athlete.person_id")
    chat_id: int = Field(sa_column=Column(BigInteger, nullable=False))
    message_id: int = Field(sa_column=Column(BigInteger, nullable=False))
    file_id: str | None = None
    sent_as: str = ""
    album_id: str | None = None
    caption: str = ""
    item_id: int | None = Field(default=None, foreign_key="item.id")
    movement_key: str | None = None
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    answered_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    answered_by_id: int | None = Field(default=None, foreign_key="person.id")


class HowToMediaRow(SQLModel, table=True):
    """A coach's own picture or clip of a movement."""

    __tablename__ = "how_to_media"

    coach_id: int = Field(
        sa_column=Column(ForeignKey("person.id"), primary_key=True, autoincrement=False)
    )
    movement_key: str = Field(primary_key=True)
    file_id: str
    sent_as: str
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))


class FileVersionRow(SQLModel, table=True):
    """One version of a coach's file. Nothing here is ever changed; the newest one is in force.

    ``content`` None is the file as it comes with the package; ``meaning`` is the content as it
    was understood when it was checked, so that nothing is parsed again to be used.
    """

    __tablename__ = "file_version"
    __table_args__ = (Index("ix_file_version_coach", "coach_id", "kind", "id"),)

    id: int | None = Field(default=None, primary_key=True)
    coach_id: int = Field(foreign_key="person.id")
    kind: FileKind = Field(sa_column=Column(coded(FileKind, name="file_kind"), nullable=False))
    name: str
    content: str | None = Field(default=None, sa_column=Column(Text, nullable=True))
    meaning: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    words: str = ""
    made_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    made_by_id: int = Field(foreign_key="person.id")


class FileDraftRow(SQLModel, table=True):
    """A file that a coach sent, as it was read, until the coach puts it in force or not.

    ``base_id`` is the newest version of the house when it was shown: behind it, what was shown is
    no longer what would change. The id is drawn by chance: a button must never mean another file.
    """

    __tablename__ = "file_draft"

    id: str = Field(primary_key=True, max_length=32)
    coach_id: int = Field(foreign_key="person.id")
    kind: FileKind = Field(
        sa_column=Column(coded(FileKind, name="file_draft_kind"), nullable=False)
    )
    name: str
    content: str | None = Field(default=None, sa_column=Column(Text, nullable=True))
    meaning: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    base_id: int | None = None
    at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
