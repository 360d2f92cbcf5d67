"""What was said and decided about pain, as it stands after corrections; private signs are not."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from bot.acts import pain_picture
from bot.exports.values import ExportedPain
from bot.turn import Turn
from scheduler.pain.events import (
    Certainty,
    Cleared,
    Corrected,
    FlagAnswered,
    FlagRaised,
    MorningAnswered,
    PainEvent,
    PainReported,
    Rested,
)
from scheduler.pain.red_flags import RED_FLAGS
from storage.records.people import Person


@dataclass
class _Standing:
    """What stands so far, by the key of its event."""

    told: dict[str, PainEvent] = field(default_factory=dict)
    denied: set[str] = field(default_factory=set)


def pain_of(turn: Turn, person: Person) -> tuple[ExportedPain, ...]:
    """Return an athlete's history of pain, the earliest first."""
    standing = _standing(pain_picture.events_of(turn, person.id))
    found = [_exported(one, is_denied=key in standing.denied) for key, one in standing.told.items()]
    return tuple(sorted(found, key=lambda one: (one.at, one.kind, one.site or "")))


def _standing(events: Sequence[PainEvent]) -> _Standing:
    standing = _Standing()
    for event in events:
        match event:
            case FlagRaised() if RED_FLAGS[event.flag].is_private:
                continue
            case PainReported() | MorningAnswered() | FlagRaised() | Rested() | Cleared():
                standing.told[event.key] = event
            case FlagAnswered() if event.certainty is Certainty.DENIED:
                standing.denied.add(event.flag_key)
            case Corrected():
                _correct(standing, event)
            case _:
                continue
    return standing


def _correct(standing: _Standing, event: Corrected) -> None:
    original = standing.told.pop(event.report_key, None)
    if original is not None and event.replacement is not None:
        at = {"at_utc": original.at_utc}
        standing.told[event.report_key] = event.replacement.model_copy(update=at)


def _exported(event: PainEvent, *, is_denied: bool) -> ExportedPain:
    kind, score, signs = _kind(event, is_denied=is_denied)
    site: Any = getattr(event, "site", None)
    side: Any = getattr(event, "side", None)
    return ExportedPain.model_validate(
        {
            "at": event.at_utc,
            "kind": kind,
            "site": site.value if site else None,
            "side": side.value if site and side else None,
            "score": score,
            "signs": signs,
        }
    )


def _kind(event: PainEvent, *, is_denied: bool) -> tuple[str, int | None, tuple[str, ...]]:
    match event:
        case PainReported():
            return "report", event.score, tuple(sorted(sign.value for sign in event.signs))
        case MorningAnswered():
            return "next_morning", event.score, ("worse",) if event.is_worse else ()
        case FlagRaised():
            answer = ("denied",) if is_denied else ()
            return "sign", None, (event.flag.value, *answer)
        case Cleared():
            return "cleared", None, ("assessed",) if event.is_assessed else ()
        case _:
            return "rested", None, ()
