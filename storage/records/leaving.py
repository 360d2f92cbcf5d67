"""Who wants to leave, and who was erased."""

from datetime import datetime

from pydantic import BaseModel, ConfigDict


class LeaveWish(BaseModel):
    """An athlete confirmed that they want to leave."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    person_id: int
    asked_at: datetime


class Erasure(BaseModel):
    """A person who had come before ``erased_at`` was erased then; else as an athlete only."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    person_id: int
    erased_at: datetime
    is_whole: bool = True
    swept_at: datetime | None = None
