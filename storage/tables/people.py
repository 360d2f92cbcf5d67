"""Owner, coaches and athletes, and the links by which they come in."""

from datetime import date, datetime, time

from sqlalchemy import BigInteger, CheckConstraint, Column, ForeignKey
from sqlmodel import Field, SQLModel

from storage.column_types import Document, UtcInstant, coded
from storage.records.people import AthleteState, Profile, Role


class PersonRow(SQLModel, table=True):
    """Anybody who may talk to the bot."""

    __tablename__ = "person"
    __table_args__ = (CheckConstraint("digest_weekday BETWEEN 0 AND 6", name="weekday"),)

    id: int | None = Field(default=None, primary_key=True)
    name: str
    chat_id: int | None = Field(default=None, sa_column=Column(BigInteger, unique=True))
    language: str = "en"
    zone: str = "UTC"
    units: str = "kg"
    decimal_mark: str | None = None
    is_owner: bool = False
    is_coach: bool = False
    is_blocked: bool = False
    digest_weekday: int = 0
    digest_at: time = time(7, 0)
    waking_from: time = time(7, 0)
    waking_until: time = time(22, 0)
    emergency_number: str | None = None
    stand_in_id: int | None = Field(default=None, foreign_key="person.id")
    created_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))


class AthleteRow(SQLModel, table=True):
    """An athlete's standing. The person's name, chat and zone are in ``person``."""

    __tablename__ = "athlete"
    __table_args__ = (CheckConstraint("stage BETWEEN 1 AND 5", name="stage"),)

    person_id: int = Field(
        sa_column=Column(ForeignKey("person.id"), primary_key=True, autoincrement=False)
    )
    coach_id: int = Field(foreign_key="person.id", index=True)
    state: AthleteState = Field(
        default=AthleteState.INVITED,
        sa_column=Column(coded(AthleteState, name="athlete_state"), nullable=False),
    )
    profile: Profile = Field(sa_column=Column(Document(Profile), nullable=False))
    stage: int = 1
    stage_since: date
    stage_is_re_earned: bool = False
    session_at: time = time(7, 0)
    evening_at: time = time(20, 0)
    started_on: date | None = None
    agreed_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
    paused_until: date | None = None
    absence_reason: str | None = None
    group_name: str | None = None
    is_practice: bool = False


class InvitationRow(SQLModel, table=True):
    """A personal link: only the digest of its secret is kept."""

    __tablename__ = "invitation"

    id: int | None = Field(default=None, primary_key=True)
    secret_digest: str = Field(unique=True)
    person_id: int = Field(foreign_key="person.id", index=True)
    role: Role = Field(sa_column=Column(coded(Role, name="invited_role"), nullable=False))
    issued_by_id: int | None = Field(default=None, foreign_key="person.id")
    expires_at: datetime = Field(sa_column=Column(UtcInstant, nullable=False))
    used_at: datetime | None = Field(default=None, sa_column=Column(UtcInstant))
