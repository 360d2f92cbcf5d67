"""Where an athlete stands with pain: folded from everything that was said and decided.

Years of it are folded once: where the fold had come to is kept beside the history, and only what
was said since is folded onto it. A fold of the whole history gives the same picture, and is made
where something was corrected or where the rules are others than they were.
"""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from bot.turn import Turn
from scheduler.catalogue.values import Movement
from scheduler.pain.events import PAIN_EVENT, MorningAnswered, PainEvent, PainReported
from scheduler.pain.kept_fold import may_be_folded_onto, read_back, rules_version, written
from scheduler.pain.left_out import left_out_for
from scheduler.pain.levels import NOTHING_HEARD, PainState, fold
from scheduler.pain.levels import picture_of as drawn_from
from scheduler.pain.picture import PainPicture
from scheduler.pain.values import MIDLINE, LeftOut, Level, Region, Side, Site
from scheduler.training.values import PAIN_FREE, PainFacts
from storage.queries import care, first_tests, pain_folds
from storage.records.care import KeptPainFold
from storage.records.people import Athlete
from storage.records.training import SessionRecord

KEPT_EVERY = 16  # [events] ch: folded again at each look; a write at each event costs more


def events_of(turn: Turn, athlete_id: int, *, since: datetime | None = None) -> list[PainEvent]:
    """Return an athlete's pain history, whole or from an instant on."""
    return _read(care.pain_events(turn.tx, athlete_id, since=since))


def picture_of(turn: Turn, athlete: Athlete) -> PainPicture:
    """Return where an athlete stands now; once a turn, unless something is told in it."""
    found = turn.pictures.get(athlete.person_id)
    if found is None:
        found = turn.pictures[athlete.person_id] = _drawn(turn, athlete.person_id)
    return found


def _drawn(turn: Turn, athlete_id: int) -> PainPicture:
    kept, onto = _usable(turn, pain_folds.kept_fold(turn.tx, athlete_id))
    later = pain_folds.pain_events_since(turn.tx, athlete_id, kept)
    if not may_be_folded_onto(_read(later)):
        kept, onto = None, NOTHING_HEARD
        later = pain_folds.pain_events_since(turn.tx, athlete_id, None)
    events = _read(later)
    if len(events) >= KEPT_EVERY and events[-1].at_utc <= turn.now:
        onto = fold(events, onto=onto)
        _keep(turn, athlete_id, onto, kept, later, at=events[-1].at_utc)
        events = []
    return drawn_from(events, as_of_utc=turn.now, onto=onto)


def _read(events: Sequence[tuple[int, Mapping[str, Any]]]) -> list[PainEvent]:
    return [PAIN_EVENT.validate_python(event) for _, event in events]


def _usable(turn: Turn, kept: KeptPainFold | None) -> tuple[KeptPainFold | None, PainState]:
    """Return a kept fold by today's rules that is not beyond now, or that nothing is kept."""
    if kept is None or kept.rules != rules_version() or kept.through_at > turn.now:
        return None, NOTHING_HEARD
    state = read_back(kept.state)
    return (None, NOTHING_HEARD) if state is None else (kept, state)


def _keep(
    turn: Turn,
    athlete_id: int,
    state: PainState,
    kept: KeptPainFold | None,
    later: Sequence[tuple[int, Mapping[str, Any]]],
    *,
    at: datetime,
) -> None:
    pain_folds.keep_fold(
        turn.tx,
        athlete_id,
        rules=rules_version(),
        through_at=at,
        through_id=max(event_id for event_id, _ in later),
        events=(kept.events if kept else 0) + len(later),
        state=written(state, at_utc=at),
    )


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
    turn.pictures.pop(athlete_id, None)


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
            for event in events_of(turn, athlete.person_id, since=since)
            if isinstance(event, PainReported | MorningAnswered)
        ),
        default=0,
    )


def regions_loaded(turn: Turn, session: SessionRecord) -> frozenset[Region]:
    """Return every region that a session's movements load, by the table of what is left out."""
    library = turn.house.library.movements
    if session.is_test_day:
        tested = first_tests.movements_of_session(turn.tx, session.id)
        return regions_loaded_by([library[key] for key in sorted(tested & library.keys())])
    return regions_loaded_by(
        [
            library[item.movement_key]
            for item in session.items
            if item.dose is not None and not item.is_left_out
        ]
    )


def regions_loaded_by(movements: Sequence[Movement]) -> frozenset[Region]:
    """Return every region that movements load, by the table of what is left out."""
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
