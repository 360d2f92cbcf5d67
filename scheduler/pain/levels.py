"""Fold everything that was said and decided about pain into where the athlete stands now.

A pure fold over typed events, so that a corrected report or a corrected rule can be replayed.
The bands' evidence is about tendons of the leg and is carried over here with care.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from scheduler.pain.clearing import (
    Return,
    clear_region,
    count_session,
    may_clear,
    meant_flags,
    meant_regions,
    returning,
)
from scheduler.pain.events import (
    Cleared,
    Corrected,
    FlagAnswered,
    FlagRaised,
    MorningAnswered,
    PainEvent,
    PainReported,
    Rested,
    SessionTrained,
    TapListAnswered,
)
from scheduler.pain.open_flags import OpenFlag, answer_flag, raise_flag
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.picture import PainPicture, draw_picture
from scheduler.pain.region_rules import hear_morning, hear_report, pass_time
from scheduler.pain.region_state import Held, RegionState, hold
from scheduler.pain.rises import RISE_TO_EASE, rise_of
from scheduler.pain.scores import level_of_report
from scheduler.pain.tap_list import is_list_due
from scheduler.pain.values import Level, Region, Urgency, regions_of
from scheduler.reasons import Decision, reason
from scheduler.sources import CP


@dataclass(frozen=True)
class PainState:
    """What the fold carries from event to event.

    ``sessions_before`` [sessions] counts those that are too long ago to be carried one by one.
    """

    regions: Mapping[Region, RegionState] = field(default_factory=dict)
    flags: tuple[OpenFlag, ...] = ()
    raised: tuple[FlagRaised, ...] = ()
    sessions_before: int = 0
    sessions: tuple[SessionTrained, ...] = ()
    returns: tuple[Return, ...] = ()
    list_due_since_utc: datetime | None = None


NOTHING_HEARD = PainState()
"""Where everybody begins."""


def picture_of(
    events: Iterable[PainEvent], *, as_of_utc: datetime, onto: PainState = NOTHING_HEARD
) -> PainPicture:
    """Return where an athlete stands at an instant; later events are not looked at.

    Args:
        events: the athlete's whole history, or what came after ``onto``, in any order; equal
            instants keep theirs.
        as_of_utc: the instant asked about.
        onto: where an earlier fold had come to (:func:`fold`).

    """
    state = fold(_in_order(events, as_of_utc), onto=onto)
    return draw_picture(
        regions=_pass_time(state, as_of_utc).regions.values(),
        flags=_standing(state.flags, as_of_utc),
        returns=state.returns,
        list_due_since_utc=state.list_due_since_utc,
        as_of_utc=as_of_utc,
    )


def clearing_decision(events: Iterable[PainEvent], clearing: Cleared) -> Decision[bool]:
    """Tell whether a coach's clearing is complete, before it is recorded."""
    state = fold(_in_order(events, clearing.at_utc))
    state = _pass_time(state, clearing.at_utc)
    return may_clear(
        clearing,
        regions=tuple(state.regions.values()),
        flags=_standing(state.flags, clearing.at_utc),
    )


def _in_order(events: Iterable[PainEvent], as_of_utc: datetime) -> list[PainEvent]:
    return sorted((e for e in events if e.at_utc <= as_of_utc), key=lambda event: event.at_utc)


def fold(events: Sequence[PainEvent], *, onto: PainState = NOTHING_HEARD) -> PainState:
    """Fold events, the earliest first, onto where an earlier fold had come to.

    A correction looks for its report among ``events`` alone: what corrects something that
    ``onto`` has heard must be folded from the beginning.
    """
    state = onto
    heard: list[PainEvent] = []
    for event in events:
        if isinstance(event, Corrected):
            state, heard = _correct(state, heard, event)
            continue
        state = _apply(_pass_time(state, event.at_utc), event)
        heard.append(event)
    return state


def _apply(state: PainState, event: PainEvent) -> PainState:
    match event:
        case PainReported() | MorningAnswered():
            return _hear(state, event)
        case SessionTrained():
            returns = count_session(state.returns, event)
            return replace(state, sessions=(*state.sessions, event), returns=returns)
        case FlagRaised():
            flags = raise_flag(state.flags, event, earlier=state.raised)
            return replace(
                state, flags=flags, raised=(*state.raised, event), list_due_since_utc=None
            )
        case FlagAnswered():
            return replace(state, flags=answer_flag(state.flags, event))
        case TapListAnswered():
            return replace(state, list_due_since_utc=None)
        case Rested():
            return _rest(state, event)
        case Cleared():
            return _clear(state, event)
    return state


def _hear(state: PainState, event: PainReported | MorningAnswered) -> PainState:
    regions = dict(state.regions)
    list_due = state.list_due_since_utc
    for region in regions_of(event.site, event.side):
        known = regions.get(region, RegionState(region=region))
        if list_due is None and _calls_for_list(known, event):
            list_due = event.at_utc
        regions[region] = (
            hear_report(known, event, state.sessions, sessions_before=state.sessions_before)
            if isinstance(event, PainReported)
            else hear_morning(known, event, state.sessions)
        )
    return replace(state, regions=regions, list_due_since_utc=list_due)


def _calls_for_list(known: RegionState, event: PainReported | MorningAnswered) -> bool:
    signs = event.signs if isinstance(event, PainReported) else frozenset()
    if level_of_report(event.score, signs).value is Level.NONE:
        return False
    rise = rise_of(event.score, at_utc=event.at_utc, earlier=known.answers)
    return is_list_due(
        score=event.score, is_new_site=not known.answers, is_rise=rise >= RISE_TO_EASE
    )


def _rest(state: PainState, event: Rested) -> PainState:
    regions = dict(state.regions)
    why = reason(PainReason.RESTED_BY_COACH, CP)
    for region in regions_of(event.site, event.side):
        known = regions.get(region, RegionState(region=region))
        regions[region] = hold(known, Held(Level.REST, Urgency.SOON, event.at_utc, (why,)))
    return replace(state, regions=regions)


def _clear(state: PainState, event: Cleared) -> PainState:
    """Apply a complete clearing; an incomplete one changes nothing."""
    flags = _standing(state.flags, event.at_utc)
    everyone = tuple(state.regions.values())
    if not may_clear(event, regions=everyone, flags=flags).value:
        return state
    regions, returns = dict(state.regions), list(state.returns)
    for known in meant_regions(event, everyone):
        regions[known.region], one = clear_region(known, event)
        returns = _with_return(returns, one)
    starts = max(event.trains_from_utc or event.at_utc, event.at_utc)
    meant = meant_flags(event, flags)
    for flag in meant:
        for region in flag.regions or (None,):
            returns = _with_return(returns, returning(region, flag.rule.level, starts))
    keys = {flag.key for flag in meant}
    kept = tuple(replace(f, ends_at_utc=starts) if f.key in keys else f for f in flags)
    return replace(
        state,
        regions=regions,
        flags=_standing(kept, event.at_utc),
        returns=tuple(returns),
        list_due_since_utc=None if event.site is None else state.list_due_since_utc,
    )


def _with_return(returns: list[Return], one: Return | None) -> list[Return]:
    """Keep one return a region, the more careful of two."""
    if one is None:
        return returns
    same = [known for known in returns if known.region == one.region]
    best = min([*same, one], key=lambda r: (r.share_of_sets, -r.sessions_left))
    careful = replace(one, share_of_sets=best.share_of_sets, is_one_step_back=best.is_one_step_back)
    return [*(known for known in returns if known.region != one.region), careful]


def _correct(
    state: PainState, heard: list[PainEvent], event: Corrected
) -> tuple[PainState, list[PainEvent]]:
    """Refold with the report replaced; what a person must clear stays until a person clears it."""
    original = next((e for e in heard if e.key == event.report_key), None)
    if not isinstance(original, PainReported | MorningAnswered):
        return state, heard
    put = event.replacement
    if put is not None:
        put = put.model_copy(update={"key": original.key, "at_utc": original.at_utc})
    replaced = [put if e is original else e for e in heard]
    corrected = [e for e in replaced if e is not None]
    fresh = _pass_time(fold(corrected), event.at_utc)
    held_before = _pass_time(state, event.at_utc)
    fresh = _keep_held(fresh, held_before)
    if put is not None and _level_of(put) >= Level.REST > _level_of(original):
        fresh = _hold_anew(fresh, put, event.at_utc)
    return fresh, corrected


def _keep_held(fresh: PainState, before: PainState) -> PainState:
    regions = dict(fresh.regions)
    for region, old in before.regions.items():
        known = regions.get(region, RegionState(region=region))
        for held in old.held:
            known = hold(known, held)
        regions[region] = known
    return replace(fresh, regions=regions)


def _level_of(event: PainReported | MorningAnswered) -> Level:
    signs = event.signs if isinstance(event, PainReported) else frozenset()
    return level_of_report(event.score, signs).value


def _hold_anew(
    state: PainState, put: PainReported | MorningAnswered, at_utc: datetime
) -> PainState:
    """Hold what a correction reveals, also when the report it mends was cleared since."""
    signs = put.signs if isinstance(put, PainReported) else frozenset()
    own = level_of_report(put.score, signs)
    regions = dict(state.regions)
    for region in regions_of(put.site, put.side):
        known = regions.get(region, RegionState(region=region))
        if not any(h.ends_at_utc is None for h in known.held):
            held = Held(Level.REST, Urgency.SOON, at_utc, own.reasons)
            regions[region] = hold(known, held)
    return replace(state, regions=regions)


def _pass_time(state: PainState, now_utc: datetime) -> PainState:
    regions = {region: pass_time(known, now_utc) for region, known in state.regions.items()}
    return replace(state, regions=regions, flags=_standing(state.flags, now_utc))


def _standing(flags: Sequence[OpenFlag], now_utc: datetime) -> tuple[OpenFlag, ...]:
    return tuple(f for f in flags if f.ends_at_utc is None or f.ends_at_utc > now_utc)
