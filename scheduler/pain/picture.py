"""Where an athlete stands: levels, what is left out, what to ask, how training comes back."""

from collections.abc import Callable, Iterable, Sequence
from datetime import datetime
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.pain.answers import Answer
from scheduler.pain.clearing import Return
from scheduler.pain.events import Certainty
from scheduler.pain.left_out import HANGING, UPPER_BODY, left_out_for_regions
from scheduler.pain.open_flags import OpenFlag
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.patterns import EarlyPattern, early_patterns
from scheduler.pain.red_flags import FollowUp, RedFlag, Stops
from scheduler.pain.region_state import Held, RegionState
from scheduler.pain.values import LeftOut, Level, Region, Side, Site, Urgency
from scheduler.reasons import Reason, reason
from scheduler.sources import CH


class RegionPicture(BaseModel):
    """One arm's site: how careful, since when, why, and whether it has settled."""

    model_config = ConfigDict(frozen=True)

    region: Region
    level: Level
    urgency: Urgency
    since_utc: datetime | None
    is_settled: bool
    needs_person: bool
    last_score: int | None
    last_at_utc: datetime | None
    trains_from_utc: datetime | None = None
    reasons: tuple[Reason, ...]


class FlagPicture(BaseModel):
    """A red flag that stands."""

    model_config = ConfigDict(frozen=True)

    key: str
    flag: RedFlag
    certainty: Certainty
    level: Level
    urgency: Urgency
    stops: Stops
    follow_up: FollowUp
    is_private: bool
    since_utc: datetime
    regions: tuple[Region, ...]
    movement: str | None = None
    is_in_hang: bool = False
    reasons: tuple[Reason, ...]


class AskKind(StrEnum):
    """What to ask next, the most urgent first."""

    FLAG = "flag"
    TAP_LIST = "tap_list"
    NUMBER = "number"
    MORNING = "morning"


class Ask(BaseModel):
    """One question that is open; silence leaves it open, and it lowers nothing."""

    model_config = ConfigDict(frozen=True)

    kind: AskKind
    since_utc: datetime
    region: Region | None = None
    flag_key: str | None = None
    follow_up: FollowUp | None = None


class ReturnPicture(BaseModel):
    """How a cleared region comes back; ``region`` None means all of the upper body."""

    model_config = ConfigDict(frozen=True)

    region: Region | None
    share_of_sets: float
    is_one_step_back: bool
    sessions_left: int
    from_utc: datetime
    reasons: tuple[Reason, ...]


class PainPicture(BaseModel):
    """Everything that plans, doses and messages need to know about an athlete's pain.

    ``rested`` is what may not be trained, ``eased`` what is swapped or cut by a third,
    ``no_step`` what may not step at all, ``no_load_step`` what may step in time or reps only.
    """

    model_config = ConfigDict(frozen=True)

    as_of_utc: datetime
    level: Level
    urgency: Urgency
    stops: Stops | None
    regions: tuple[RegionPicture, ...]
    flags: tuple[FlagPicture, ...]
    rested: LeftOut
    eased: LeftOut
    no_step: LeftOut
    no_load_step: LeftOut
    waits_for_coach: bool
    asks: tuple[Ask, ...]
    returns: tuple[ReturnPicture, ...]
    patterns: tuple[EarlyPattern, ...]

    def region(self, site: Site, arm: Side) -> RegionPicture | None:
        """Return one arm's site, None where it was never spoken of."""
        wanted = Region(site=site, arm=arm)
        return next((one for one in self.regions if one.region == wanted), None)


def draw_picture(
    *,
    regions: Iterable[RegionState],
    flags: Sequence[OpenFlag],
    returns: Sequence[Return],
    list_due_since_utc: datetime | None,
    as_of_utc: datetime,
) -> PainPicture:
    """Draw the picture of one instant from what the fold has carried there."""
    states = sorted(regions, key=lambda state: state.region.order)
    drawn = tuple(_region(state) for state in states)
    shown = tuple(_flag(flag) for flag in flags)
    levels = [one.level for one in drawn] + [one.level for one in shown]
    urgencies = [one.urgency for one in drawn if one.level > Level.NONE]
    urgencies += [one.urgency for one in shown]
    return PainPicture(
        as_of_utc=as_of_utc,
        level=max(levels, default=Level.NONE),
        urgency=min(urgencies, key=tuple(Urgency).index, default=Urgency.CONVENIENT),
        stops=min((one.stops for one in shown), key=tuple(Stops).index, default=None),
        regions=drawn,
        flags=shown,
        rested=_rested(drawn, flags),
        eased=_of(drawn, lambda one: one.level is Level.EASE),
        no_step=_of(drawn, _may_not_step),
        no_load_step=_of(drawn, lambda one: one.level >= Level.WATCH),
        waits_for_coach=any(
            one.region.site is Site.ELSEWHERE and one.level >= Level.REST for one in drawn
        ),
        asks=_asks(states, flags, list_due_since_utc),
        returns=tuple(_return(one) for one in returns),
        patterns=early_patterns(_answers_by_region(states), as_of_utc=as_of_utc),
    )


def _region(state: RegionState) -> RegionPicture:
    top = max(state.held, key=lambda held: held.level, default=None)
    told = [answer for answer in state.answers if answer.score is not None]
    ends = [held.ends_at_utc for held in state.held]
    return RegionPicture(
        region=state.region,
        level=state.level,
        urgency=min(
            (held.urgency for held in state.held),
            key=tuple(Urgency).index,
            default=Urgency.CONVENIENT,
        ),
        since_utc=top.since_utc if top else state.soft_since_utc,
        is_settled=state.is_settled and not state.held,
        needs_person=any(end is None for end in ends),
        last_score=told[-1].score if told else None,
        last_at_utc=told[-1].at_utc if told else None,
        trains_from_utc=max((end for end in ends if end), default=None) if all(ends) else None,
        reasons=_reasons(state, top),
    )


def _reasons(state: RegionState, top: Held | None) -> tuple[Reason, ...]:
    held = tuple(why for one in state.held if one is not top for why in one.reasons)
    first = top.reasons if top else ()
    kept: list[Reason] = []
    for why in (*first, *held, *state.soft_reasons):
        if why not in kept:
            kept.append(why)
    return tuple(kept)


def _flag(flag: OpenFlag) -> FlagPicture:
    why = reason(
        PainReason.RED_FLAG, flag.rule.source, flag=flag.flag.value, certainty=flag.certainty.value
    )
    return FlagPicture(
        key=flag.key,
        flag=flag.flag,
        certainty=flag.certainty,
        level=flag.rule.level,
        urgency=flag.rule.urgency,
        stops=flag.stops,
        follow_up=flag.rule.follow_up,
        is_private=flag.rule.is_private,
        since_utc=flag.since_utc,
        regions=flag.regions,
        movement=flag.movement,
        is_in_hang=flag.is_in_hang,
        reasons=(why,),
    )


def _rested(drawn: Sequence[RegionPicture], flags: Sequence[OpenFlag]) -> LeftOut:
    """Return what may not be trained; pain that keeps coming back stops its region only."""
    rested = _of(drawn, lambda one: one.level >= Level.REST)
    for flag in flags:
        rested = rested | _stopped(flag)
    return rested


def _stopped(flag: OpenFlag) -> LeftOut:
    match flag.stops:
        case Stops.EVERYTHING:
            return LeftOut(everything=True)
        case Stops.UPPER_BODY:
            return UPPER_BODY
        case Stops.ITEM if flag.movement:
            return LeftOut(movements=frozenset({flag.movement}))
        case Stops.ITEM if not flag.regions:
            return HANGING
        case _:
            return left_out_for_regions(frozenset(flag.regions))


def _of(drawn: Sequence[RegionPicture], is_meant: Callable[[RegionPicture], bool]) -> LeftOut:
    return left_out_for_regions(frozenset(one.region for one in drawn if is_meant(one)))


def _may_not_step(one: RegionPicture) -> bool:
    return one.level >= Level.EASE or (one.level is Level.WATCH and not one.is_settled)


def _asks(
    states: Sequence[RegionState], flags: Sequence[OpenFlag], list_due_since_utc: datetime | None
) -> tuple[Ask, ...]:
    asks = [
        Ask(
            kind=AskKind.FLAG,
            since_utc=flag.since_utc,
            flag_key=flag.key,
            follow_up=flag.rule.follow_up,
        )
        for flag in flags
        if flag.certainty is Certainty.ASKED
    ]
    if list_due_since_utc:
        asks.append(Ask(kind=AskKind.TAP_LIST, since_utc=list_due_since_utc))
    for state in states:
        if state.must_ask_since_utc:
            since = state.must_ask_since_utc
            asks.append(Ask(kind=AskKind.NUMBER, since_utc=since, region=state.region))
    for state in states:
        if state.morning_due_since_utc:
            since = state.morning_due_since_utc
            asks.append(Ask(kind=AskKind.MORNING, since_utc=since, region=state.region))
    return tuple(asks)


def _return(one: Return) -> ReturnPicture:
    why = reason(one.code, CH, share=one.share_of_sets, sessions_left=one.sessions_left)
    return ReturnPicture(
        region=one.region,
        share_of_sets=one.share_of_sets,
        is_one_step_back=one.is_one_step_back,
        sessions_left=one.sessions_left,
        from_utc=one.from_utc,
        reasons=(why,),
    )


def _answers_by_region(states: Sequence[RegionState]) -> dict[Region, tuple[Answer, ...]]:
    return {state.region: state.answers for state in states}
