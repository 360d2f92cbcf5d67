"""An athlete with years behind them: real weeks, laid one before the other in bulk.

The rules draw and dose one week of each of two stages; those are written again and again back in
time, eight weeks of the one and eight of the other, with what was done, asked, hurt and decided.
Counted back from today one year and five years are the same as far as both go.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from random import Random
from typing import Any

from sqlalchemy import Table, func, select
from sqlmodel import Session, col, delete

from bot.acts import draw_week, pain_picture, send_session
from bot.turn import Turn
from demo_scenario.benchmarks.quiet_house import BOT_NAME
from demo_scenario.trials.ready_team import MONDAY, WEEKDAYS, chat_of, house, make_team, name_of
from scheduler.calendar.values import DueKind
from scheduler.catalogue.values import Sides
from scheduler.pain.events import MorningAnswered, Occasion, PainReported, SessionTrained
from scheduler.pain.values import Side, Site
from scheduler.training.values import Dose, ReserveAnswer, SetDone
from storage.database import Database
from storage.queries import people, training
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord, SessionRecord, SessionState
from storage.tables import metadata
from storage.tables.training import ItemRow, SessionRow, WeekRow
from storage.tables.wire import InboxState, OutboxState

WEEKS_A_YEAR = 52
STAGE, STAGE_BEFORE = 2, 1  # [stage] ch: where most athletes are most of the time
IN_STAGE = timedelta(weeks=20)  # [weeks] ch: the same, however long the history
STARTED_BEFORE = timedelta(weeks=5 * WEEKS_A_YEAR)  # the same in every database
BLOCK_WEEKS = 8  # [weeks] ch: as long as a movement stays
HURTS_EVERY = 4  # [weeks] ch: a 2 after the first session, gone in the morning
TOLD_EVERY = 4  # [messages] ch: of a session, beside its results
SESSION_AT = time(7, 0)
TRAINED_AT, MORNING_AT, PLANNED_AT = time(18, 0), time(7, 30), time(3, 0)

SHORT_OF_TARGET = (0, 0, 0, 1)  # [repetitions or seconds] ch: near the plan
LEFT = (1, 2, 3)  # [repetitions] ch


@dataclass(frozen=True)
class Model:
    """One week as the rules drew and dosed it: rows to be written again for other days."""

    week: Mapping[str, Any]
    sessions: tuple[tuple[Mapping[str, Any], SessionRecord], ...]
    loaded: tuple[frozenset[Any], ...]


def write_years(database: Database, *, years: int) -> int:
    """Make a house with one athlete who has trained for so many years; return the person's id."""
    make_team(database, [SESSION_AT], bot_name=BOT_NAME)
    with database.transaction() as tx:
        person = people.person_in_chat(tx, chat_of(0))
        if person is None:  # pragma: no cover - made just above
            raise LookupError(f"{name_of(0)} is not there")
        people.change_person(tx, person.id, created_at=MONDAY - STARTED_BEFORE)
        models = [
            _model(Turn(tx=tx, now=MONDAY, house=house(BOT_NAME)), person, stage)
            for stage in (STAGE, STAGE_BEFORE)
        ]
        people.change_athlete(
            tx,
            person.id,
            stage=STAGE,
            stage_since=(MONDAY - IN_STAGE).date(),
            started_on=(MONDAY - STARTED_BEFORE).date(),
        )
        writer = _Bulk(tx, person)
        for back in range(years * WEEKS_A_YEAR, 0, -1):
            model = models[(back - 1) // BLOCK_WEEKS % len(models)]
            writer.add_week(model, back=back)
        writer.write()
    return person.id


def write_years_of_team(database: Database, count: int, *, years: int) -> None:
    """Give each athlete of a ready team so many years behind this week: the same weeks for all."""
    with database.transaction() as tx:
        turn = Turn(tx=tx, now=MONDAY, house=house(BOT_NAME))
        first = _person(tx, 0)
        athlete = people.athlete(tx, first.id)
        if athlete is None:  # pragma: no cover - a ready team's
            raise LookupError(f"{name_of(0)} does not train")
        models = [_model(turn, first, stage) for stage in (STAGE, STAGE_BEFORE)]
        people.change_athlete(tx, first.id, stage=athlete.stage)
        draw_week.draw(turn, first, athlete, monday=MONDAY.date())
    for number in range(count):
        with database.transaction() as tx:
            person = _person(tx, number)
            people.change_person(tx, person.id, created_at=MONDAY - STARTED_BEFORE)
            people.change_athlete(
                tx,
                person.id,
                stage=STAGE,
                stage_since=(MONDAY - IN_STAGE).date(),
                started_on=(MONDAY - STARTED_BEFORE).date(),
            )
            writer = _Bulk(tx, person)
            own = [_of(model, person) for model in models]
            for back in range(years * WEEKS_A_YEAR, 0, -1):
                writer.add_week(own[(back - 1) // BLOCK_WEEKS % len(own)], back=back)
            writer.write()


def _person(tx: Session, number: int) -> Person:
    person = people.person_in_chat(tx, chat_of(number))
    if person is None:  # pragma: no cover - a ready team's
        raise LookupError(f"{name_of(number)} is not there")
    return person


def _of(model: Model, person: Person) -> Model:
    """Return the same week for another athlete."""
    own = {"athlete_id": person.id}
    return replace(
        model,
        week={**model.week, **own},
        sessions=tuple(({**row, **own}, session) for row, session in model.sessions),
    )


def _model(turn: Turn, person: Person, stage: int) -> Model:
    """Let the rules draw and dose one week, and take it out of the database again."""
    _forget(turn.tx, person.id)
    athlete = people.change_athlete(turn.tx, person.id, stage=stage)
    draw_week.draw(turn, person, athlete, monday=MONDAY.date())
    sessions = _dosed(turn, person, athlete)
    week = _rows(turn.tx, "week", col(WeekRow.athlete_id) == person.id)[0]
    rows = {
        row["id"]: row for row in _rows(turn.tx, "session", col(SessionRow.week_id) == week["id"])
    }
    model = Model(
        week=week,
        sessions=tuple((rows[session.id], session) for session in sessions),
        loaded=tuple(pain_picture.regions_loaded(turn, session) for session in sessions),
    )
    _forget(turn.tx, person.id)
    return model


def _dosed(turn: Turn, person: Person, athlete: Athlete) -> tuple[SessionRecord, ...]:
    span = {"first": MONDAY.date(), "last": MONDAY.date() + timedelta(days=6)}
    for session in training.sessions_between(turn.tx, person.id, **span):
        send_session.fix_doses(turn, person, athlete, session)
    return training.sessions_between(turn.tx, person.id, **span)


def _rows(tx: Session, name: str, where: Any) -> list[dict[str, Any]]:
    found = tx.connection().execute(select(metadata.tables[name]).where(where))
    return [dict(row._mapping) for row in found]  # noqa: SLF001  the row's own public view


def _forget(tx: Session, person_id: int) -> None:
    mine = select(col(SessionRow.id)).where(col(SessionRow.athlete_id) == person_id)
    tx.exec(delete(ItemRow).where(col(ItemRow.session_id).in_(mine)))
    tx.exec(delete(SessionRow).where(col(SessionRow.athlete_id) == person_id))
    tx.exec(delete(WeekRow).where(col(WeekRow.athlete_id) == person_id))


class _Bulk:
    """Gathers rows of every table and writes them at once."""

    def __init__(self, tx: Session, person: Person) -> None:
        self._tx = tx
        self._person = person
        self._chat_id = person.chat_id or 0
        self._rows: dict[str, list[dict[str, Any]]] = {}
        self._next = {
            name: (tx.connection().scalar(select(func.max(table.c.id))) or 0) + 1
            for name, table in metadata.tables.items()
            if "id" in table.c
        }
        self._events = 0

    def write(self) -> None:
        """Insert everything, parents first."""
        for table in metadata.sorted_tables:
            if table.name in self._rows:
                self._insert(table, self._rows[table.name])

    def _insert(self, table: Table, rows: Sequence[dict[str, Any]]) -> None:
        self._tx.connection().execute(table.insert(), rows)

    def _add(self, name: str, **facts: Any) -> int:
        row_id = self._next[name]
        self._next[name] += 1
        self._rows.setdefault(name, []).append({**facts, "id": row_id})
        return row_id

    def add_week(self, model: Model, *, back: int) -> None:
        """Write one week, ``back`` weeks before the Monday of today."""
        chance = Random(back)
        monday = MONDAY.date() - timedelta(weeks=back)
        at = _instant(monday, PLANNED_AT)
        stage = STAGE if timedelta(weeks=back) <= IN_STAGE else STAGE_BEFORE
        week_id = self._add(
            "week",
            **{**model.week, "monday": monday, "stage": stage, "drawn_at": at},
        )
        for day in range(7):
            self._due(DueKind.WEEK_DRAWING, str(monday + timedelta(days=day)), at)
        for place, ((row, session), loaded) in enumerate(
            zip(model.sessions, model.loaded, strict=True)
        ):
            on = monday + timedelta(days=WEEKDAYS[place % len(WEEKDAYS)])
            session_id = self._session(row, session, on, week_id, chance)
            self._hurt(on, session_id, loaded, is_hurting=not place and not back % HURTS_EVERY)

    def _session(
        self,
        row: Mapping[str, Any],
        session: SessionRecord,
        on: date,
        week_id: int,
        chance: Random,
    ) -> int:
        sent_at, done_at = _instant(on, SESSION_AT), _instant(on, TRAINED_AT)
        facts = {
            "week_id": week_id,
            "on": on,
            "state": SessionState.TRAINED,
            "sent_at": sent_at,
            "trained_at": done_at,
            "closed_at": done_at,
            "effort": 6,
            "is_pain_answered": True,
        }
        session_id = self._add("session", **{**row, **facts})
        self._due(DueKind.SESSION, str(session_id), sent_at)
        for item in session.items:
            if item.dose is not None:
                self._item(item, item.dose, session_id, done_at, chance)
        for number in range(len(session.items) + TOLD_EVERY):
            self._message(done_at + timedelta(minutes=number), session_id)
        return session_id

    def _item(
        self, item: ItemRecord, dose: Dose, session_id: int, at: datetime, chance: Random
    ) -> None:
        left = chance.choice(LEFT)
        item_id = self._add(
            "item",
            **{
                **item.model_dump(exclude={"sets", "id"}),
                "session_id": session_id,
                "dose": dose,
                "reasons": item.reasons,
                "arms": item.arms,
                "reserve": ReserveAnswer(left=left) if item.pair is not None else None,
                "is_reserve_asked": item.pair is not None,
            },
        )
        for number, side in _sets(item, dose):
            value = max(1, dose.target - chance.choice(SHORT_OF_TARGET))
            self._add(
                "set_done",
                item_id=item_id,
                number=number,
                done=SetDone(side=side, value=value),
                is_as_planned=value == dose.target,
                chat_id=self._chat_id,
                message_id=item_id,
                reported_at=at,
            )
        written = dose.model_dump(mode="json")
        self._audit(
            at,
            what="dose.kept",
            reasons=item.reasons,
            before={"movement": item.movement_key, "dose": written},
            after={"dose": written, "session": session_id},
        )

    def _hurt(self, on: date, session_id: int, loaded: frozenset[Any], *, is_hurting: bool) -> None:
        at = _instant(on, TRAINED_AT)
        self._pain(SessionTrained(key=self._key(), at_utc=at, loaded=loaded), session_id)
        if not is_hurting:
            return
        place = {"site": Site.WRIST, "side": Side.LEFT}
        said_at = at + timedelta(minutes=5)
        occasion = Occasion.AFTER_SESSION
        self._pain(
            PainReported(key=self._key(), at_utc=said_at, score=2, occasion=occasion, **place),
            session_id,
        )
        morning_at = _instant(on + timedelta(days=1), MORNING_AT)
        self._due(DueKind.MORNING_QUESTION, on.isoformat(), morning_at)
        self._pain(MorningAnswered(key=self._key(), at_utc=morning_at, score=0, **place), None)

    def _key(self) -> str:
        self._events += 1
        return f"e{self._events}"

    def _pain(
        self, event: SessionTrained | PainReported | MorningAnswered, session_id: int | None
    ) -> None:
        self._add(
            "pain_event",
            athlete_id=self._person.id,
            at=event.at_utc,
            kind=event.kind,
            event=event.model_dump(mode="json"),
            session_id=session_id,
            message_id=None,
        )

    def _due(self, kind: DueKind, subject: str, at: datetime) -> None:
        self._add(
            "due",
            person_id=self._person.id,
            kind=kind.value,
            subject=subject,
            due_at=at,
            handled_at=at,
            outcome="sent",
        )

    def _audit(self, at: datetime, **facts: Any) -> None:
        self._add("audit", at=at, athlete_id=self._person.id, actor_id=None, words="", **facts)

    def _message(self, at: datetime, session_id: int) -> None:
        """Write a reply and its answer, their texts forgotten as they are after a week."""
        number = self._next["inbox"]
        self._add(
            "inbox",
            update_id=number,
            chat_id=self._chat_id,
            raw=None,
            received_at=at,
            state=InboxState.HANDLED,
            attempts=0,
            handled_at=at,
            outcome="recorded",
        )
        self._add(
            "outbox",
            chat_id=self._chat_id,
            operation="send",
            kind="reply",
            payload={},
            subject=f"session:{session_id}",
            state=OutboxState.SENT,
            created_at=at,
            not_before=at,
            attempts=1,
            is_doubtful=False,
            sent_at=at,
            message_id=number,
        )


def _sets(item: ItemRecord, dose: Dose) -> Iterator[tuple[int, Side]]:
    sides: Sequence[Side] = item.arms if _is_each(item) else (Side.BOTH,)
    for number in range(1, dose.sets + 1):
        for side in sides:
            yield number, side


def _is_each(item: ItemRecord) -> bool:
    return house(BOT_NAME).library.movements[item.movement_key].sides is Sides.EACH


def _instant(on: date, at: time) -> datetime:
    return datetime.combine(on, at, MONDAY.tzinfo)
