"""The weeks as they were really sent, held against the judge of weeks and the pain of the hour."""

from collections.abc import Iterator
from datetime import date, timedelta

from bot.acts import pain_picture
from bot.turn import Turn
from scheduler.catalogue.values import Sides
from scheduler.pain.levels import picture_of
from scheduler.pain.values import Side
from scheduler.training.week_check import check_week
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import BOTH_ARMS, DayLetter, Invariant, Slot, WeekRequest
from storage.queries import people, training
from storage.records.people import Athlete, AthleteState
from storage.records.training import OffBecause, SessionRecord, SessionState, WeekRecord

JUDGED = (Invariant.PAIRING, Invariant.CHAINS)
RECORDED_AS = {
    Invariant.PAIRING: {WeekReason.PARTNER_MISSING, WeekReason.NOT_ALTERNATING},
    Invariant.CHAINS: {WeekReason.ONE_CHAIN_THIS_WEEK, WeekReason.ONE_CHAIN_ONLY},
}
EXCUSES = (OffBecause.LEFT_OUT, OffBecause.TOO_LATE)


def broken_weeks(turn: Turn, *, start: date) -> Iterator[str]:
    """Yield each week that was sent whole and is neither paired, nor in both chains, nor excused.

    A week excuses itself by the relaxation that was recorded with it, by a session that was
    called off because nothing of it might be trained, or by one that turned into tests.
    """
    for person, athlete in people.athletes_in(turn.tx, AthleteState.TRAINING):
        for week in training.weeks(turn.tx, person.id):
            sessions = _sessions(turn, week)
            if week.monday < start or not sessions or not _is_whole(sessions):
                continue
            for why in _breaches(turn, athlete, week, sessions):
                yield f"{person.name}, week of {week.monday}: {why}"


def _sessions(turn: Turn, week: WeekRecord) -> tuple[SessionRecord, ...]:
    last = week.monday + timedelta(days=6)
    return training.sessions_between(turn.tx, week.athlete_id, first=week.monday, last=last)


def _is_whole(sessions: tuple[SessionRecord, ...]) -> bool:
    return all(
        session.state is not SessionState.PLANNED
        and session.called_off_because not in EXCUSES
        and not session.is_test_day
        for session in sessions
    )


def _breaches(
    turn: Turn, athlete: Athlete, week: WeekRecord, sessions: tuple[SessionRecord, ...]
) -> Iterator[str]:
    request = WeekRequest(
        stage=week.stage,
        week_start=week.monday,
        session_min=athlete.profile.minutes,
        equipment=athlete.profile.facts.equipment,
    )
    found = check_week(
        sent_slots(sessions),
        request=request,
        library=turn.house.library,
        rulebook=turn.house.rulebook,
    )
    recorded = {one.code for one in week.relaxations}
    for breach in found:
        if breach.invariant in JUDGED and not RECORDED_AS[breach.invariant] & recorded:
            yield f"{breach.why.code} {dict(breach.why.figures)}"


def sent_slots(sessions: tuple[SessionRecord, ...]) -> list[Slot]:
    """Return what was sent as slots, also what was left out afterwards."""
    return [
        Slot(
            on=session.on,
            letter=DayLetter(session.letter),
            position=item.position,
            pair=item.pair,
            direction=item.direction,
            movement_key=item.movement_key,
            quality=item.quality,
            sets=item.dose.sets,
            arms=frozenset(item.arms) or BOTH_ARMS,
        )
        for session in sessions
        if session.sent_at is not None
        for item in session.items
        if item.dose is not None
    ]


def left_out_but_sent(turn: Turn, *, start: date) -> Iterator[str]:
    """Yield each item that was sent to an arm which was to rest at that hour."""
    for person, athlete in people.athletes_in(turn.tx, AthleteState.TRAINING):
        events = pain_picture.events_of(turn, athlete.person_id)
        sessions = training.sessions_between(
            turn.tx, person.id, first=start, last=turn.now.date() + timedelta(days=1)
        )
        for session in sessions:
            if session.sent_at is None:
                continue
            known = [event for event in events if event.at_utc <= session.sent_at]
            left_out = picture_of(known, as_of_utc=session.sent_at).rested
            for item in session.items:
                movement = turn.house.library.movements[item.movement_key]
                arms = set(item.arms) if movement.sides is Sides.EACH else {Side.LEFT, Side.RIGHT}
                if item.dose is not None and arms - left_out.arms_allowed(movement):
                    yield f"{person.name}, {session.on}: {movement.name}"
