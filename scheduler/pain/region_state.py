"""Where one region stands: what the fold carries from event to event."""

from dataclasses import dataclass, replace
from datetime import datetime

from scheduler.pain.answers import Answer, SessionScore
from scheduler.pain.values import Level, Region, Urgency
from scheduler.reasons import Reason


@dataclass(frozen=True)
class Held:
    """A level that only a person ends; once cleared it may still run until a date."""

    level: Level
    urgency: Urgency
    since_utc: datetime
    reasons: tuple[Reason, ...]
    ends_at_utc: datetime | None = None


@dataclass(frozen=True)
class RegionState:
    """Everything remembered of a region.

    ``soft`` is the level that answers can end, ``held`` what a person must end. ``calm_morning``
    and ``calm_session`` are the two halves of ease's end. ``rest_score`` and ``rest_from_utc``
    are the number and the date that a rest's fall is measured against.
    """

    region: Region
    soft: Level = Level.NONE
    soft_since_utc: datetime | None = None
    soft_reasons: tuple[Reason, ...] = ()
    is_settled: bool = True
    held: tuple[Held, ...] = ()
    answers: tuple[Answer, ...] = ()
    sessions: tuple[SessionScore, ...] = ()
    unsettled_mornings: int = 0
    calm_morning: bool = False
    calm_session: bool = False
    is_words_only: bool = False
    must_ask_since_utc: datetime | None = None
    morning_due_since_utc: datetime | None = None
    counts_from_utc: datetime | None = None
    rest_score: int | None = None
    rest_from_utc: datetime | None = None

    @property
    def level(self) -> Level:
        """The higher of what answers can end and what a person must end."""
        return max([self.soft, *(held.level for held in self.held)])

    @property
    def is_rested(self) -> bool:
        """True when a person must end it."""
        return bool(self.held)

    @property
    def recent(self) -> tuple[Answer, ...]:
        """The answers since a person last cleared the region."""
        return tuple(
            answer
            for answer in self.answers
            if self.counts_from_utc is None or answer.at_utc >= self.counts_from_utc
        )


def hold(state: RegionState, held: Held) -> RegionState:
    """Add what a person must end; the same level is not held twice for the same reason."""
    codes = {why.code for why in held.reasons}
    for known in state.held:
        is_open = known.ends_at_utc is None and held.ends_at_utc is None
        if is_open and known.level == held.level and codes <= {w.code for w in known.reasons}:
            return state
    rest_from = state.rest_from_utc
    if all(known.ends_at_utc is not None for known in state.held):
        rest_from = held.since_utc
        state = replace(state, rest_score=_last_score(state))
    return replace(state, held=(*state.held, held), rest_from_utc=rest_from)


def soften(
    state: RegionState, level: Level, *, at_utc: datetime, reasons: tuple[Reason, ...]
) -> RegionState:
    """Set the level that answers can end, and since when."""
    since = state.soft_since_utc if level == state.soft else at_utc
    return replace(
        state,
        soft=level,
        soft_since_utc=since if level > Level.NONE else None,
        soft_reasons=reasons,
    )


def _last_score(state: RegionState) -> int | None:
    known = [answer.score for answer in state.answers if answer.score is not None]
    return known[-1] if known else None
