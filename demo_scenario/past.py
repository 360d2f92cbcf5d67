"""The weeks before the demo begins: drawn, dosed and trained through the bot's own rules."""

import math
from collections.abc import Iterator, Sequence
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.acts import draw_week, send_session
from bot.app import Holdwell
from bot.rounds.tick import LAST_ROUND
from bot.turn import Turn
from demo_scenario.hidden import HiddenBody
from demo_scenario.team import AthleteEntry, CoachEntry, Team
from scheduler.calendar.digest_day import subject_of
from scheduler.calendar.values import DueKind
from scheduler.calendar.wall_time import monday_of
from scheduler.catalogue.values import Measure, Sides
from scheduler.pain.values import Side
from scheduler.training.values import Dose, ReserveAnswer, Rung, SetDone
from storage.queries import due, history, people, training
from storage.records.people import AthleteState, Person
from storage.records.training import ItemRecord, SessionRecord, SessionState

HOLD_ANSWERS_S = (0, 5, 10, 15, 20)
REP_ANSWERS = (0, 1, 2, 3, 4)
FLOOR_SHARE = 0.8  # [fraction of the target] ch: as in the rulebook
EFFORT_BEFORE = 6  # [of 10] ch: what the past's sessions are recorded as


def settle_in(house: Holdwell, team: Team, bodies: dict[str, HiddenBody]) -> None:
    """Write the coach, the athletes and their past, as a house that has been running knows them."""
    began = team.begins_at() - timedelta(weeks=30)
    with house.database.transaction() as tx:
        coach = _add_coach(house.turn(tx, began), team.coach)
        for other in (one for one in team.athletes if one.coaches):
            _add_other_coach(house.turn(tx, began), other, team.coach)
    for entry in team.known:
        with house.database.transaction() as tx:
            person = _add_athlete(house.turn(tx, began), entry, coach, team.start)
        for week in _weeks_trained(entry, team.start):
            with house.database.transaction() as tx:
                _live_week(house, tx, person.id, entry, week, bodies[entry.name])
    with house.database.transaction() as tx:
        due.set_mark(tx, LAST_ROUND, at=team.begins_at() - timedelta(minutes=1))
        _take_old_digest(house.turn(tx, team.begins_at()), coach, team)


def _take_old_digest(turn: Turn, coach: Person, team: Team) -> None:
    """Mark last week's digest as sent: the coach has read it before the demo begins."""
    days_ago = (team.start.weekday() - team.coach.digest_weekday - 1) % 7 + 1
    due.take(
        turn.tx,
        person_id=coach.id,
        kind=DueKind.DIGEST.value,
        subject=subject_of(coach.id, team.start - timedelta(days=days_ago)),
        due_at=turn.now - timedelta(days=6),
        now=turn.now,
    )


def _add_coach(turn: Turn, entry: CoachEntry) -> Person:
    return people.add_person(
        turn.tx,
        name=entry.name,
        now=turn.now,
        zone=entry.zone,
        is_coach=True,
        is_owner=True,
        chat_id=entry.chat_id,
        digest_weekday=entry.digest_weekday,
        digest_at=entry.digest_at,
        waking_from=entry.waking_from,
        waking_until=entry.waking_until,
    )


def _add_other_coach(turn: Turn, entry: AthleteEntry, like: CoachEntry) -> Person:
    """Write a second coach, who has no athlete yet and will train with the first."""
    return people.add_person(
        turn.tx,
        name=entry.name,
        now=turn.now,
        zone=entry.zone,
        is_coach=True,
        chat_id=entry.chat_id,
        digest_weekday=like.digest_weekday,
        digest_at=like.digest_at,
    )


def _add_athlete(turn: Turn, entry: AthleteEntry, coach: Person, start: date) -> Person:
    person = people.add_person(
        turn.tx,
        name=entry.name,
        now=turn.now,
        zone=entry.zone,
        chat_id=entry.chat_id,
        language=entry.language,
    )
    mondays = list(_weeks_trained(entry, start))
    people.add_athlete(
        turn.tx,
        person_id=person.id,
        coach_id=coach.id,
        profile=entry.profile(),
        on=start - timedelta(weeks=entry.weeks_in_stage),
        session_at=entry.session_at,
        state=AthleteState.TRAINING,
        stage=entry.stage,
        started_on=min([*mondays, start - timedelta(weeks=entry.weeks_in_stage)]),
        agreed_at=turn.now,
    )
    return person


def _weeks_trained(entry: AthleteEntry, start: date) -> Iterator[date]:
    """Yield the Mondays of the recorded weeks; a layoff lies between the last and the start."""
    gap = timedelta(days=entry.last_trained_days_before or 0)
    last = start - gap if gap else start - timedelta(days=1)
    monday = monday_of(last)
    for back in range(entry.past_weeks - 1, -1, -1):
        yield monday - timedelta(weeks=back)


def _live_week(
    house: Holdwell, tx: object, person_id: int, entry: AthleteEntry, monday: date, body: HiddenBody
) -> None:
    """Draw a week as it would have been drawn, and train each of its days."""
    turn = house.turn(tx, _instant(entry, monday, time(3, 0)))  # type: ignore[arg-type]
    person = people.person(turn.tx, person_id)
    athlete = people.athlete(turn.tx, person_id)
    if athlete is None:
        raise RuntimeError(f"{entry.name} is not an athlete")
    draw_week.draw(turn, person, athlete, monday=monday)
    last = monday + timedelta(days=6)
    for session in training.sessions_between(turn.tx, person_id, first=monday, last=last):
        at = _instant(entry, session.on, entry.session_at)
        day = house.turn(turn.tx, at)
        if not send_session.fix_doses(day, person, athlete, session):
            continue
        _as_the_athlete_came(day, training.session(day.tx, session.id), entry)
        training.change_session(day.tx, session.id, sent_at=at, state=SessionState.SENT)
        body.begin_day(session.on)
        _train(day, training.session(day.tx, session.id), entry, body)


def _as_the_athlete_came(turn: Turn, session: SessionRecord, entry: AthleteEntry) -> None:
    """Where the coach knew at the start what an athlete could do, begin there and not below."""
    for item in session.items:
        came = entry.came_with.get(item.movement_key)
        if came is None or item.dose is None or item.is_left_out:
            continue
        before = history.exposures(
            turn.tx, session.athlete_id, [item.movement_key], before=session.on
        )
        if before:
            continue
        rung = item.dose.rung if came.load_kg is None else Rung(load_kg=came.load_kg)
        floor = max(1, math.ceil(FLOOR_SHARE * came.target))
        training.snapshot_dose(
            turn.tx,
            item.id,
            dose=item.dose.model_copy(update={"target": came.target, "rung": rung, "floor": floor}),
            reasons=item.reasons,
            arms=item.arms,
        )


def _train(turn: Turn, session: SessionRecord, entry: AthleteEntry, body: HiddenBody) -> None:
    done_at = turn.now + timedelta(minutes=entry.replies_after_min)
    for item in session.items:
        if item.dose is not None and not item.is_left_out:
            _train_item(turn, item, item.dose, entry, body, done_at)
    training.change_session(
        turn.tx,
        session.id,
        state=SessionState.TRAINED,
        trained_at=done_at,
        closed_at=done_at + timedelta(minutes=2),
        effort=EFFORT_BEFORE,
        is_pain_answered=True,
    )


def _train_item(
    turn: Turn,
    item: ItemRecord,
    dose: Dose,
    entry: AthleteEntry,
    body: HiddenBody,
    done_at: datetime,
) -> None:
    movement = turn.house.library.movements[item.movement_key]
    sides: Sequence[Side] = item.arms if movement.sides is Sides.EACH else (Side.BOTH,)
    ranks = {band.key: band.rank for band in entry.profile().facts.bands}
    sets, lefts = [], []
    for number in range(1, dose.sets + 1):
        for side in sides:
            effort = body.do_set(
                movement,
                target=dose.target,
                stop_with=dose.reserve_asked,
                load_kg=dose.load_kg,
                band_rank=ranks.get(dose.rung.band or "", 1),
                side=side,
            )
            sets.append((number, SetDone(side=side, value=effort.done), False))
            lefts.append(body.guess_left(effort, measure=dose.measure))
    body.end_exercise(movement)
    training.record_sets(turn.tx, item.id, sets, chat_id=entry.chat_id, message_id=None, at=done_at)
    if item.pair is not None:
        answer = _answer(lefts[-1], dose.measure)
        training.change_item(turn.tx, item.id, reserve=answer, is_reserve_asked=True)


def _answer(left: float, measure: Measure) -> ReserveAnswer:
    """Return the button that would have been tapped."""
    answers = REP_ANSWERS if measure is Measure.REPS else HOLD_ANSWERS_S
    tapped = max([one for one in answers if one <= left], default=answers[0])
    return ReserveAnswer(left=tapped, is_at_least=tapped == answers[-1])


def _instant(entry: AthleteEntry, on: date, at: time) -> datetime:
    return datetime.combine(on, at, ZoneInfo(entry.zone)).astimezone(UTC)
