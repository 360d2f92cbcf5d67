"""Where an athlete stands with pain: folded anew from everything that was said and decided."""

from datetime import datetime

from bot.turn import Turn
from scheduler.catalogue.values import Movement
from scheduler.pain.events import PAIN_EVENT, MorningAnswered, PainEvent, PainReported
from scheduler.pain.left_out import left_out_for
from scheduler.pain.levels import picture_of as fold
from scheduler.pain.picture import PainPicture
from scheduler.pain.values import MIDLINE, LeftOut, Level, Region, Side, Site
from scheduler.training.values import PAIN_FREE, PainFacts
from storage.queries import care
from storage.records.people import Athlete
from storage.records.training import SessionRecord


def events_of(turn: Turn, athlete_id: int) -> list[PainEvent]:
    """Return an athlete's whole pain history."""
    return [PAIN_EVENT.validate_python(event) for _, event in care.pain_events(turn.tx, athlete_id)]


def picture_of(turn: Turn, athlete: Athlete) -> PainPicture:
    """Return where an athlete stands now."""
    return fold(events_of(turn, athlete.person_id), as_of_utc=turn.now)


def record_event(
    turn: Turn,
    athlete_id: int,
    event: PainEvent,
    *,
    session_id: int | None = None,
    message_id: int | None = None,
) -> None:
    """Append one event to the history."""
    care.add_pain_event(
        turn.tx,
        athlete_id=athlete_id,
        at=event.at_utc,
        kind=event.kind,
        event=event.model_dump(mode="json"),
        session_id=session_id,
        message_id=message_id,
    )


def new_key(turn: Turn, athlete_id: int) -> str:
    """Return a reference for the next event, unique for the athlete."""
    return f"e{care.count_pain_events(turn.tx, athlete_id) + 1}"


def facts_for(
    turn: Turn, athlete: Athlete, movement: Movement, *, arms: frozenset[Side] = Side.BOTH.arms
) -> PainFacts:
    """Return what a dose must know of the regions that a movement loads.

    ``arms`` are those that do it: where the sore one rests, the sound one is not cut for it.
    """
    picture = picture_of(turn, athlete)

    def loads(left_out: LeftOut) -> bool:
        return any(left_out.hits(movement, arm) for arm in arms)

    if loads(picture.eased) or loads(picture.rested):
        return PainFacts(level=Level.EASE, is_settled=False)
    if loads(picture.no_step) or return_share(picture, movement) < 1:
        return PainFacts(level=Level.WATCH, is_settled=False)
    if loads(picture.no_load_step):
        return PainFacts(level=Level.WATCH, is_settled=True)
    return PAIN_FREE


def return_share(picture: PainPicture, movement: Movement) -> float:
    """Return the share of the sets [fraction] that a movement has on its way back."""
    shares = [
        one.share_of_sets
        for one in picture.returns
        if one.region is None or touches(left_out_for(one.region.site, one.region.arm), movement)
    ]
    return min(shares, default=1.0)


def worst_score_since(turn: Turn, athlete: Athlete, since: datetime) -> int:
    """Return the highest number [0-10] that was said since an instant."""
    return max(
        (
            event.score or 0
            for event in events_of(turn, athlete.person_id)
            if isinstance(event, PainReported | MorningAnswered) and event.at_utc >= since
        ),
        default=0,
    )


def regions_loaded(turn: Turn, session: SessionRecord) -> frozenset[Region]:
    """Return every region that a session's movements load, by the table of what is left out."""
    movements = [
        turn.house.library.movements[item.movement_key]
        for item in session.items
        if item.dose is not None and not item.is_left_out
    ]
    arms = (Side.LEFT, Side.RIGHT)
    return frozenset(
        Region(site=site, arm=arm)
        for site in Site
        if site is not Site.ELSEWHERE
        for arm in arms
        if any(left_out_for(site, arm).hits(movement, arm) for movement in movements)
    )


def is_midline(site: Site) -> bool:
    """Tell whether a site has no sides."""
    return site in MIDLINE


def touches(left_out: LeftOut, movement: Movement) -> bool:
    """Tell whether a movement is hit for either arm."""
    return any(left_out.hits(movement, arm) for arm in (Side.LEFT, Side.RIGHT))
