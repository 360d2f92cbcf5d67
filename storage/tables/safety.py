"""What a coach confirmed so that help can be reached."""

from datetime import datetime

from sqlalchemy import Column, ForeignKey
from sqlmodel import Field, SQLModel

from storage.column_types import UtcInstant


class EmergencyNumberRow(SQLModel, table=True):
    """The emergency number that a coach confirmed for a country."""

    __tablename__ = "emergency_number"

    coach_id: int = Field(
        sa_column=Column(ForeignKey("person.id"), primary_key=True, autoincrement=False)
    )
    country: str = Field(primary_key=True, max_length=2)
    number: str
    confirmed_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
