"""An invented history for a practice athlete: the rules plan and dose it, and it goes as asked."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, time, timedelta

from bot.acts import draw_week, pain_picture, send_session
from bot.turn import Turn
from scheduler.calendar.wall_time import due_instant, monday_of
from scheduler.calendar.zones import zone_named
from scheduler.catalogue.values import Equipment, Sides
from scheduler.pain.events import MorningAnswered, Occasion, PainReported, SessionTrained
from scheduler.pain.values import Side, Site
from scheduler.training.values import AthleteProfile, Dose, ReferenceValues, ReserveAnswer, SetDone
from storage.queries import training
from storage.records.people import Athlete, Person, Profile
from storage.records.training import ItemRecord, SessionRecord, SessionState

WEEKS = 3  # [weeks] ch: enough for steps and a history, little enough to invent at once
DRAWN_AT, TRAINED_AT, MORNING_AT = time(3, 0), time(18, 0), time(7, 30)
LEFT = (3, 2, 2)  # [repetitions in reserve] ch: an ordinary answer, week by week
LEFT_HOLD_S = (20, 15, 15)  # [s in reserve] ch: the same for holds
EFFORT = 6  # [0-10] ch: hard enough to be ordinary
HURT_IN_WEEK = 1  # [week, from 0] ch: a 2 in a wrist that is gone in the morning


def profile_for(weekday: int) -> Profile:
    """Invent what an intake would have said; today is a training day."""
    return Profile(
        facts=AthleteProfile(
            reference=ReferenceValues.WOMEN,
            body_mass_kg=65,
            training_age_months=18,
            equipment=frozenset(
                {
                    Equipment.FLOOR,
                    Equipment.WALL,
                    Equipment.BOX,
                    Equipment.DUMBBELLS,
                    Equipment.HIGH_BAR,
                }
            ),
            loads_kg={Equipment.DUMBBELLS: (4.0, 6.0, 8.0, 10.0, 12.0, 16.0)},
        ),
        weekdays=tuple(sorted((weekday + days) % 7 for days in (0, 2, 4))),
        goal="practice",
    )


def first_monday(today: date) -> date:
    """Return the Monday on which the invented history begins."""
    return monday_of(today) - timedelta(weeks=WEEKS)


def invent(turn: Turn, person: Person, athlete: Athlete, *, today: date) -> int:
    """Write the invented weeks and return how many sessions they hold."""
    count = 0
    for number in range(WEEKS):
        monday = first_monday(today) + timedelta(weeks=number)
        draw_week.draw(_at(turn, person, monday, DRAWN_AT), person, athlete, monday=monday)
        planned = training.sessions_between(
            turn.tx, person.id, first=monday, last=monday + timedelta(days=6)
        )
        for place, session in enumerate(planned):
            past = _at(turn, person, session.on, TRAINED_AT)
            _train(past, person, athlete, session, week=number)
            if number == HURT_IN_WEEK and place == 0:
                _hurt(turn, person, session)
        count += len(planned)
    turn.pictures.pop(person.id, None)
    return count


def _at(turn: Turn, person: Person, on: date, at: time) -> Turn:
    """Return the same transaction at an earlier instant, with no pain picture drawn yet."""
    now = due_instant(local_date=on, wall_time=at, zone=zone_named(person.zone))
    return replace(turn, now=now, pictures={})


def _train(
    turn: Turn, person: Person, athlete: Athlete, session: SessionRecord, *, week: int
) -> None:
    send_session.fix_doses(turn, person, athlete, session)
    fixed = training.session(turn.tx, session.id)
    for item in fixed.items:
        if item.dose is not None and not item.is_left_out:
            _do_as_asked(turn, person, item, item.dose, week=week)
    training.change_session(
        turn.tx,
        session.id,
        state=SessionState.TRAINED,
        sent_at=_morning(turn.now),
        trained_at=turn.now,
        closed_at=turn.now,
        effort=EFFORT,
        minutes=athlete.profile.minutes,
        is_pain_answered=True,
    )
    event = SessionTrained(
        key=pain_picture.new_key(turn, person.id),
        at_utc=turn.now,
        loaded=pain_picture.regions_loaded(turn, fixed),
    )
    pain_picture.record_event(turn, person.id, event, session_id=session.id)


def _morning(evening: datetime) -> datetime:
    return evening - timedelta(hours=11)


def _do_as_asked(turn: Turn, person: Person, item: ItemRecord, dose: Dose, *, week: int) -> None:
    sets = [
        (number, SetDone(side=side, value=dose.target), True)
        for number in range(1, dose.sets + 1)
        for side in _sides(turn, item)
    ]
    training.record_sets(
        turn.tx, item.id, sets, chat_id=person.chat_id or 0, message_id=None, at=turn.now
    )
    if item.pair is not None:
        left = LEFT_HOLD_S[week] if dose.measure.is_time else LEFT[week]
        answer = ReserveAnswer(left=left)
        training.change_item(turn.tx, item.id, reserve=answer, is_reserve_asked=True)


def _sides(turn: Turn, item: ItemRecord) -> Iterator[Side]:
    is_each = turn.house.library.movements[item.movement_key].sides is Sides.EACH
    yield from item.arms if is_each and item.arms else (Side.BOTH,)


def _hurt(turn: Turn, person: Person, session: SessionRecord) -> None:
    """Invent a small pain after a session that is gone in the morning."""
    place = {"site": Site.WRIST, "side": Side.LEFT}
    evening = _at(turn, person, session.on, TRAINED_AT)
    after = PainReported(
        key=pain_picture.new_key(evening, person.id),
        at_utc=evening.now,
        score=2,
        occasion=Occasion.AFTER_SESSION,
        **place,
    )
    pain_picture.record_event(evening, person.id, after, session_id=session.id)
    morning = _at(turn, person, session.on + timedelta(days=1), MORNING_AT)
    gone = MorningAnswered(
        key=pain_picture.new_key(morning, person.id), at_utc=morning.now, score=0, **place
    )
    pain_picture.record_event(morning, person.id, gone)
