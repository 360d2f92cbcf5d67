"""An athlete's coming two weeks as they would be sent: as stored, else as they would be drawn."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts import draw_week, pain_picture
from bot.acts.checklist import local_today
from bot.acts.dose_today import dose_for
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.catalogue.values import Direction
from scheduler.pain.values import Side
from scheduler.reasons import Decision, Reason
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.values import Dose
from scheduler.training.week_values import DayLetter, Session, Slot
from storage.queries import training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import ItemRecord, SessionRecord, SessionState

WEEKS_SHOWN = 2  # [weeks] ch: this one and the next
NOT_STORED = 0  # the id of what is not drawn yet


@dataclass(frozen=True)
class ComingDay:
    """One day of training: sent, planned, or as it would be planned."""

    on: date
    letter: str
    minutes: int | None
    state: SessionState
    session_id: int
    items: tuple[ItemRecord, ...]

    @property
    def is_open(self) -> bool:
        """True while something of it may be changed."""
        return self.state in {SessionState.PLANNED, SessionState.SENT}


@dataclass(frozen=True)
class ComingWeek:
    """One week of the view."""

    monday: date
    kind: SeasonWeekKind
    is_lighter: bool
    reasons: tuple[Reason, ...]
    days: tuple[ComingDay, ...]


@dataclass(frozen=True)
class Place:
    """One place of a coming day, by what outlives a planning anew."""

    on: date
    pair: int | None
    direction: Direction


def coming_weeks(turn: Turn, person: Person, athlete: Athlete) -> tuple[ComingWeek, ...]:
    """Return this week and the next; none for an athlete who does not train now."""
    if athlete.state is not AthleteState.TRAINING:
        return ()
    first = monday_of(local_today(turn, person))
    mondays = [first + timedelta(weeks=ahead) for ahead in range(WEEKS_SHOWN)]
    return tuple(_week(turn, person, athlete, monday=monday) for monday in mondays)


def coming_days(turn: Turn, person: Person, athlete: Athlete) -> tuple[ComingDay, ...]:
    """Return the days from today on, the earliest first."""
    today = local_today(turn, person)
    weeks = coming_weeks(turn, person, athlete)
    return tuple(day for week in weeks for day in week.days if day.on >= today)


def coming_keys(days: Sequence[ComingDay]) -> tuple[str, ...]:
    """Return the movements that are still to come, in the order in which they come."""
    return tuple(
        dict.fromkeys(
            item.movement_key
            for day in days
            if day.is_open
            for item in day.items
            if not item.is_reported
        )
    )


def _week(turn: Turn, person: Person, athlete: Athlete, *, monday: date) -> ComingWeek:
    stored = training.week(turn.tx, person.id, monday)
    if stored is None:
        return _as_it_would_be(turn, person, athlete, monday=monday)
    sessions = training.sessions_between(
        turn.tx, person.id, first=monday, last=monday + timedelta(days=6)
    )
    return ComingWeek(
        monday=monday,
        kind=stored.kind,
        is_lighter=stored.is_lighter,
        reasons=(*stored.relaxations, *stored.reasons),
        days=tuple(stored_day(one) for one in sessions),
    )


def stored_day(session: SessionRecord) -> ComingDay:
    """Return a stored session as a day of the view."""
    return ComingDay(
        on=session.on,
        letter=session.letter,
        minutes=session.minutes,
        state=session.state,
        session_id=session.id,
        items=tuple(item for item in session.items if not item.is_left_out),
    )


def _as_it_would_be(turn: Turn, person: Person, athlete: Athlete, *, monday: date) -> ComingWeek:
    found = draw_week.drafted(turn, person, athlete, monday=monday)
    relaxed = tuple(relaxation.why for relaxation in found.draft.relaxations)
    return ComingWeek(
        monday=monday,
        kind=draw_week.kind_of(found.asked),
        is_lighter=found.asked.is_lighter,
        reasons=(*relaxed, *found.asked.reasons, *found.draft.reasons),
        days=tuple(_drafted_day(turn, one) for one in found.fresh),
    )


def _drafted_day(turn: Turn, session: Session) -> ComingDay:
    return ComingDay(
        on=session.on,
        letter=session.letter.value,
        minutes=round(session.minutes),
        state=SessionState.PLANNED,
        session_id=NOT_STORED,
        items=tuple(item_of_slot(turn, slot) for slot in session.slots),
    )


def item_of_slot(turn: Turn, slot: Slot) -> ItemRecord:
    """Return a place of a week that is not stored as an item, to ask for its dose."""
    return ItemRecord(
        id=NOT_STORED,
        position=slot.position,
        pair=slot.pair,
        direction=slot.direction,
        role=turn.house.library.movements[slot.movement_key].role,
        movement_key=slot.movement_key,
        quality=slot.quality,
        planned_sets=slot.sets,
        dose=None,
        reasons=(),
        arms=tuple(sorted(slot.arms)),
        reserve=None,
        is_reserve_asked=False,
        is_skipped=False,
        is_left_out=False,
        sets=(),
    )


def slot_of(day: ComingDay, item: ItemRecord) -> Slot:
    """Return an item as a place of the week."""
    return Slot(
        on=day.on,
        letter=DayLetter(day.letter),
        position=item.position,
        pair=item.pair,
        direction=item.direction,
        movement_key=item.movement_key,
        quality=item.quality,
        sets=item.planned_sets,
        arms=frozenset(item.arms) or Side.BOTH.arms,
    )


def arms_now(turn: Turn, athlete: Athlete, item: ItemRecord) -> frozenset[Side]:
    """Return the arms that would do an item if it were sent now; empty when it is left out."""
    movement = turn.house.library.movements[item.movement_key]
    allowed = pain_picture.picture_of(turn, athlete).rested.arms_allowed(movement)
    return allowed & frozenset(item.arms) if item.arms else allowed


def dose_as_sent(
    turn: Turn, person: Person, athlete: Athlete, day: ComingDay, item: ItemRecord
) -> Decision[Dose]:
    """Return the dose as it was sent, else as it would be fixed today."""
    if item.dose is not None:
        return Decision(value=item.dose, reasons=item.reasons)
    is_ahead = day.on > local_today(turn, person)
    return dose_for(turn, person, athlete, item, on=day.on, is_projection=is_ahead)


def find_item(
    days: Sequence[ComingDay], place: Place, *, was: str
) -> tuple[ComingDay, ItemRecord] | None:
    """Return what stands in a place now, if it is still the same movement."""
    return next(
        (
            (day, item)
            for day in days
            if day.on == place.on
            for item in day.items
            if (item.pair, item.direction) == (place.pair, place.direction)
            and item.movement_key == was
        ),
        None,
    )
