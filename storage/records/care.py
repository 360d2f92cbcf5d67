"""What was decided and what waits for a person: audit, alerts, messages passed on, decisions."""

from collections.abc import Mapping
from datetime import datetime
from enum import StrEnum
from typing import Any

from pydantic import BaseModel, ConfigDict, Field

from scheduler.pain.values import Level, Urgency
from scheduler.reasons import Reason


class AlertState(StrEnum):
    """An alert is open until a person answers."""

    OPEN = "open"
    SEEN = "seen"
    CLEARED = "cleared"


class Alert(BaseModel):
    """Something that a coach must hear about."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    coach_id: int
    level: Level
    urgency: Urgency
    words: str
    reasons: tuple[Reason, ...]
    state: AlertState
    raised_at: datetime
    times_told: int
    tell_at: datetime | None
    answered_at: datetime | None
    answered_by_id: int | None


class AuditEntry(BaseModel):
    """One decision, by the rules or by a person: what, why, what it replaced."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    at: datetime
    athlete_id: int | None
    actor_id: int | None
    what: str
    words: str
    reasons: tuple[Reason, ...]
    before: Mapping[str, Any] = Field(default_factory=dict)
    after: Mapping[str, Any] = Field(default_factory=dict)


class PassedOn(BaseModel):
    """A message that only a person can answer."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    words: str
    at: datetime
    answered_at: datetime | None


class Proposal(BaseModel):
    """A decision drafted for the coach, who takes it or not."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    id: int
    athlete_id: int
    kind: str
    facts: Mapping[str, Any]
    made_at: datetime
    answered_at: datetime | None
    answer: str | None


class KeptPainFold(BaseModel):
    """Where a fold had come to: by which rules, through which event, and how many it holds."""

    model_config = ConfigDict(frozen=True, from_attributes=True)

    rules: str
    through_at: datetime
    through_id: int
    events: int
    state: Mapping[str, Any]
