"""Who asked to leave and waits, and which persons were erased: ids, and nothing personal."""

from datetime import datetime

from sqlalchemy import Column, ForeignKey
from sqlmodel import Field, SQLModel

from storage.column_types import UtcInstant


class LeaveWishRow(SQLModel, table=True):
    """An athlete asked to leave, confirmed it, and waits until no alert is open."""

    __tablename__ = "leave_wish"

    person_id: int = Field(
        sa_column=Column(ForeignKey("person.id"), primary_key=True, autoincrement=False)
    )
    asked_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))


class ErasureRow(SQLModel, table=True):
    """That a person was erased. ``person_id`` is no foreign key: a restored copy may lack it.

    ``is_whole`` False: only what a coach or an owner was as an athlete. ``swept_at``: when nothing
    about the person waited to be sent any more, and what was sent to others was emptied.
    """

    __tablename__ = "erasure"

    id: int | None = Field(default=None, primary_key=True)
    person_id: int = Field(index=True)
    erased_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    is_whole: bool = True
    swept_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
