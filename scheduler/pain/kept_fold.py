"""Where a fold had come to, kept as data, so that years of history are folded once.

It is a cache and never a truth: whatever it was folded from stays on record, and a fold of all of
it gives the same picture. Rules that change fold anew (:func:`rules_version`).
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from functools import cache
from hashlib import sha256
from importlib.resources import files
from typing import Any

from pydantic import TypeAdapter, ValidationError

from scheduler.pain.answers import BEFORE_WITHIN, Answer, SessionScore
from scheduler.pain.clearing import Return
from scheduler.pain.events import Corrected, FlagRaised, PainEvent, SessionTrained
from scheduler.pain.levels import PainState
from scheduler.pain.open_flags import TINGLING_AGAIN_WITHIN, OpenFlag
from scheduler.pain.patterns import WITHIN
from scheduler.pain.region_rules import SESSION_BEFORE_MORNING_WITHIN
from scheduler.pain.region_state import RegionState
from scheduler.pain.rises import (
    BACK_OF_WEEKS,
    EASE_RUNNING,
    RECURRING_OF,
    RISE_WITHIN,
    WEEK,
)

ANSWERS_ASKED_FOR = max(BACK_OF_WEEKS * WEEK, RISE_WITHIN, BEFORE_WITHIN, WITHIN)
"""[weeks] How far back the rules look among the answers, beside the latest of each sort."""


@dataclass(frozen=True)
class KeptFold:
    """What a fold carries, as plain fields that can be written down."""

    regions: tuple[RegionState, ...]
    flags: tuple[OpenFlag, ...]
    raised: tuple[FlagRaised, ...]
    sessions_before: int
    sessions: tuple[SessionTrained, ...]
    returns: tuple[Return, ...]
    list_due_since_utc: datetime | None


KEPT_FOLD = TypeAdapter(KeptFold)


def may_be_folded_onto(events: Iterable[PainEvent]) -> bool:
    """Tell whether events need only what a fold carries: a correction needs all that was heard."""
    return not any(isinstance(event, Corrected) for event in events)


def written(state: PainState, *, at_utc: datetime) -> dict[str, Any]:
    """Return a state as plain data, shortened to what the rules may still ask for.

    Parameters: ``at_utc``: the instant of the latest event in it; nothing earlier is folded onto
    it later.
    """
    sessions = _last_or_since(state.sessions, at_utc - SESSION_BEFORE_MORNING_WITHIN)
    kept = KeptFold(
        regions=tuple(_shortened(one, at_utc) for one in state.regions.values()),
        flags=state.flags,
        raised=tuple(one for one in state.raised if one.at_utc >= at_utc - TINGLING_AGAIN_WITHIN),
        sessions_before=state.sessions_before + len(state.sessions) - len(sessions),
        sessions=sessions,
        returns=state.returns,
        list_due_since_utc=state.list_due_since_utc,
    )
    data: dict[str, Any] = KEPT_FOLD.dump_python(kept, mode="json")
    return data


def read_back(data: Any) -> PainState | None:
    """Return the state that was written; None where it is not readable any more."""
    try:
        kept = KEPT_FOLD.validate_python(data)
    except ValidationError:
        return None
    return PainState(
        regions={one.region: one for one in kept.regions},
        flags=kept.flags,
        raised=kept.raised,
        sessions_before=kept.sessions_before,
        sessions=kept.sessions,
        returns=kept.returns,
        list_due_since_utc=kept.list_due_since_utc,
    )


@cache
def rules_version() -> str:
    """Return a name of the pain rules as they are: another one for any change of their files."""
    folder = files("scheduler.pain")
    texts = sorted(
        (one.name, one.read_bytes())
        for one in folder.iterdir()
        if one.name.endswith((".py", ".yaml"))
    )
    return sha256(repr(texts).encode()).hexdigest()[:32]


def _shortened(state: RegionState, at_utc: datetime) -> RegionState:
    return replace(
        state,
        answers=_answers_kept(state.answers, at_utc - ANSWERS_ASKED_FOR),
        sessions=_scores_kept(state.sessions),
    )


def _answers_kept(answers: Sequence[Answer], since: datetime) -> tuple[Answer, ...]:
    """Keep what is recent, and the latest at all, with a number, and not of a morning.

    A morning may look back from the latest report, so that what stood before that is kept too.
    """
    places = range(len(answers))
    scored = [place for place in places if answers[place].score is not None]
    reported = [place for place in places if not answers[place].is_morning]
    kept = {*places[-1:], *scored[-1:], *reported[-1:]}
    if reported:
        since = min(since, answers[reported[-1]].at_utc - BEFORE_WITHIN)
    return tuple(
        answer for place, answer in enumerate(answers) if place in kept or answer.at_utc >= since
    )


def _scores_kept(scores: Sequence[SessionScore]) -> tuple[SessionScore, ...]:
    """Keep the sessions that may recur, and the latest with a number."""
    told = [place for place, one in enumerate(scores) if one.score is not None][-EASE_RUNNING:]
    first = len(scores) - RECURRING_OF
    return tuple(one for place, one in enumerate(scores) if place >= first or place in told)


def _last_or_since(
    sessions: Sequence[SessionTrained], since: datetime
) -> tuple[SessionTrained, ...]:
    """Keep the recent sessions; the last one stays, however long ago."""
    recent = tuple(one for one in sessions if one.at_utc >= since)
    return recent or tuple(sessions[-1:])
