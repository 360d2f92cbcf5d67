"""One athlete, one coach, a clock that the test moves: events in, and the chat as it reads."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.acts import pain_picture
from bot.desks import front
from bot.events import Event, Media, SentMedia, Tapped, Wrote
from bot.outcomes import Outcome
from bot.rounds import tick
from bot.turn import House, Turn
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Equipment, Movement
from scheduler.pain.picture import PainPicture
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import AthleteProfile, Band, ReferenceValues
from storage.database import Database
from storage.queries import due, people, training
from storage.records.people import Athlete, AthleteState, Person, Profile
from storage.records.training import ItemRecord, SessionRecord
from storage.tables.care import AlertRow, AuditRow
from storage.tables.training import SessionRow
from storage.tables.wire import OutboxRow
from tests.new_house import new_database, open_database

MADRID = ZoneInfo("Europe/Madrid")
MONDAY = date(2026, 3, 2)
COACH_CHAT, ATHLETE_CHAT = 1000, 2000
SENT_AS = 50_000  # the platform's id of a message is this and the id of its outbox row
AN_HOUR = timedelta(hours=1)


@dataclass
class Shown:
    """A message as it reads now, after every edit."""

    message_id: int
    text: str
    kind: str
    buttons: dict[str, str] = field(default_factory=dict)


class Stage:
    """A house with Ines, who trains, and Mara, who coaches her."""

    def __init__(self, folder: Path) -> None:
        file = folder / "house.sqlite3"
        self._file = file
        self.database = new_database(file)
        self.house = House(
            library=default_library(), rulebook=default_rulebook(), bot_name="holdwell_test_bot"
        )
        self.now = local(MONDAY, 2, 0)
        self._ids = iter(range(1, 100_000))
        with self.turn() as turn:
            self.coach = people.add_person(
                turn.tx,
                name="Mara",
                now=self.now,
                chat_id=COACH_CHAT,
                is_coach=True,
                zone="Europe/Madrid",
                emergency_number="112",
                digest_weekday=5,
            )
        self.person = self.add_athlete("Ines", chat_id=ATHLETE_CHAT)

    @classmethod
    def with_first_session(cls, folder: Path) -> "Stage":
        """Return the stage on Monday at seven, the session just sent: played once a process."""
        stage = cls(folder)
        stage.database.close()
        stage._file.write_bytes(_monday_at_seven())
        stage.database = open_database(stage._file)
        stage.now = local(MONDAY, 7)
        return stage

    def add_athlete(
        self,
        name: str,
        *,
        chat_id: int,
        stage: int = 1,
        since: date = date(2026, 1, 5),
        state: AthleteState = AthleteState.TRAINING,
        profile: Profile | None = None,
        **facts: Any,
    ) -> Person:
        with self.turn() as turn:
            person = people.add_person(
                turn.tx,
                name=name,
                now=self.now - timedelta(days=60),
                chat_id=chat_id,
                zone="Europe/Madrid",
            )
            people.add_athlete(
                turn.tx,
                person_id=person.id,
                coach_id=self.coach.id,
                profile=profile or PROFILE,
                on=since,
                session_at=time(7, 0),
                stage=stage,
                state=state,
                started_on=since,
                **facts,
            )
            return person

    @contextmanager
    def turn(self) -> Iterator[Turn]:
        with self.database.transaction() as tx:
            yield self.make_turn(tx, self.now)

    def make_turn(self, tx: Session, now: datetime) -> Turn:
        return Turn(tx=tx, now=now, house=self.house)

    # the clock

    def strike(self) -> None:
        """Let the round run, as one minute after the last one."""
        with self.database.transaction() as tx:
            due.set_mark(tx, tick.LAST_ROUND, at=self.now - timedelta(minutes=1))
        tick.run(self.database, self.now, self.make_turn)

    def go_to(self, on: date, hour: int, minute: int = 0) -> None:
        """Let time pass, with a round every hour, and one at the end."""
        until = local(on, hour, minute)
        while self.now < until:
            self.now = min(_next_hour(self.now), until)
            self.strike()

    def jump_to(self, on: date, hour: int, minute: int = 0) -> None:
        """Stand still until then, as in an outage, and let the next round run."""
        self.now = local(on, hour, minute)
        tick.run(self.database, self.now, self.make_turn)

    def later(self, **span: float) -> None:
        self.now += timedelta(**span)

    # what people do

    def write(self, text: str, *, chat_id: int = ATHLETE_CHAT, **more: Any) -> Outcome:
        return self.write_as(next(self._ids), text, chat_id=chat_id, **more)

    def write_as(
        self, message_id: int, text: str, *, chat_id: int = ATHLETE_CHAT, **more: Any
    ) -> Outcome:
        event = Wrote(chat_id=chat_id, at=self.now, message_id=message_id, text=text, **more)
        return self.handle(event)

    def edit(self, message_id: int, text: str) -> Outcome:
        return self.write_as(message_id, text, is_edit=True)

    def send_clip(self, caption: str, media: Media = Media.VIDEO) -> Outcome:
        return self.handle(
            SentMedia(
                chat_id=ATHLETE_CHAT,
                at=self.now,
                message_id=next(self._ids),
                media=media,
                caption=caption,
            )
        )

    def tap(self, label: str, *, chat_id: int = ATHLETE_CHAT) -> Outcome:
        """Tap the newest button that says exactly this and can be seen now."""
        message, token = self.button(label, chat_id=chat_id)
        return self.tap_token(token, message.message_id, chat_id=chat_id)

    def button(self, label: str, *, chat_id: int = ATHLETE_CHAT) -> tuple[Shown, str]:
        for message in reversed(self.screen(chat_id)):
            if label in message.buttons:
                return message, message.buttons[label]
        seen = [shown for message in self.screen(chat_id) for shown in message.buttons]
        raise AssertionError(f"no button {label!r} among {seen}")

    def tap_token(
        self, token: str, message_id: int | None, *, chat_id: int = ATHLETE_CHAT
    ) -> Outcome:
        return self.handle(Tapped(chat_id=chat_id, at=self.now, message_id=message_id, token=token))

    def handle(self, event: Event) -> Outcome:
        with self.turn() as turn:
            return front.handle(turn, event)

    # what people see

    def screen(self, chat_id: int = ATHLETE_CHAT) -> list[Shown]:
        shown: dict[int, Shown] = {}
        for row in self.rows(chat_id):
            if "text" not in row.payload:
                continue
            message_id = row.payload.get("message_id") or SENT_AS + (row.id or 0)
            buttons = {
                label: token for line in row.payload.get("buttons", ()) for label, token in line
            }
            if row.operation == "edit" and message_id in shown:
                old = shown[message_id]
                shown[message_id] = Shown(message_id, row.payload["text"], old.kind, buttons)
            else:
                shown[message_id] = Shown(message_id, row.payload["text"], row.kind, buttons)
        return list(shown.values())

    def rows(self, chat_id: int | None = None) -> Sequence[OutboxRow]:
        with self.database.transaction() as tx:
            query = select(OutboxRow).order_by(col(OutboxRow.id))
            if chat_id is not None:
                query = query.where(OutboxRow.chat_id == chat_id)
            return tx.exec(query).all()

    def texts(self, chat_id: int = ATHLETE_CHAT) -> list[str]:
        """Return everything that was written to a chat, edits too, in order."""
        return [row.payload["text"] for row in self.rows(chat_id) if "text" in row.payload]

    def last(self, chat_id: int = ATHLETE_CHAT) -> str:
        return self.texts(chat_id)[-1]

    def count(self, chat_id: int = ATHLETE_CHAT) -> int:
        return len(self.rows(chat_id))

    def since(self, count: int, chat_id: int = ATHLETE_CHAT) -> list[str]:
        """Return what was written to a chat after its first ``count`` operations."""
        return [row.payload["text"] for row in self.rows(chat_id)[count:] if "text" in row.payload]

    # what is stored

    @property
    def athlete(self) -> Athlete:
        return self.athlete_of(self.person)

    def restart(self) -> None:
        """Stop and start again on the same file: nothing is remembered but what is stored."""
        self.database.engine.dispose()
        self.database = Database(f"sqlite:///{self._file}", is_throwaway=True)

    def athlete_of(self, person: Person) -> Athlete:
        with self.turn() as turn:
            found = people.athlete(turn.tx, person.id)
        assert found is not None
        return found

    def picture(self) -> PainPicture:
        with self.turn() as turn:
            return pain_picture.picture_of(turn, self.athlete)

    def session_on(self, on: date, person: Person | None = None) -> SessionRecord:
        with self.turn() as turn:
            found = training.sessions_between(
                turn.tx, (person or self.person).id, first=on, last=on
            )
        assert len(found) == 1, f"{len(found)} sessions on {on}"
        return found[0]

    def sessions(self, person: Person | None = None) -> list[SessionRecord]:
        with self.turn() as turn:
            ids = turn.tx.exec(
                select(SessionRow.id)
                .where(SessionRow.athlete_id == (person or self.person).id)
                .order_by(col(SessionRow.on))
            ).all()
            return [training.session(turn.tx, one) for one in ids if one is not None]

    def session_days_after(self, on: date) -> list[date]:
        return sorted(one.on for one in self.sessions() if one.on > on)

    def movement(self, item: ItemRecord) -> Movement:
        return self.house.library.movements[item.movement_key]

    def alerts(self) -> Sequence[AlertRow]:
        with self.database.transaction() as tx:
            return tx.exec(select(AlertRow).order_by(col(AlertRow.id))).all()

    def audit(self, what: str | None = None) -> Sequence[AuditRow]:
        with self.database.transaction() as tx:
            query = select(AuditRow).order_by(col(AuditRow.id))
            return tx.exec(query if what is None else query.where(AuditRow.what == what)).all()


@cache
def _monday_at_seven() -> bytes:
    with TemporaryDirectory() as folder:
        stage = Stage(Path(folder))
        stage.go_to(MONDAY, 7)
        stage.database.close()
        return stage._file.read_bytes()


def local(on: date, hour: int, minute: int = 0, zone: ZoneInfo = MADRID) -> datetime:
    return datetime.combine(on, time(hour, minute), tzinfo=zone).astimezone(UTC)


def values(item: ItemRecord) -> list[float]:
    """Return what is recorded for an item now, set by set."""
    return [one.done.value for one in item.sets]


def _next_hour(now: datetime) -> datetime:
    return now - (now - datetime.min.replace(tzinfo=UTC)) % AN_HOUR + AN_HOUR


PROFILE = Profile(
    facts=AthleteProfile(
        reference=ReferenceValues.WOMEN,
        body_mass_kg=60,
        training_age_months=24,
        equipment=frozenset(
            {
                Equipment.FLOOR,
                Equipment.WALL,
                Equipment.BOX,
                Equipment.DUMBBELLS,
                Equipment.BAND,
                Equipment.HIGH_BAR,
            }
        ),
        loads_kg={Equipment.DUMBBELLS: (4.0, 6.0, 8.0, 10.0, 12.0)},
        bands=(Band(key="light", family="loop", rank=1), Band(key="medium", family="loop", rank=2)),
    )
)
