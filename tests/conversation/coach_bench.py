"""A small house on a real database: events go in by the front desk, outbox rows come out."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import Any

from sqlmodel import col, select

from bot.acts import pain_picture, tell_alerts
from bot.desks import front
from bot.events import Event, Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import House, Turn
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Equipment
from scheduler.pain.events import Certainty, FlagRaised, PainReported
from scheduler.pain.red_flags import RedFlag
from scheduler.pain.values import Level, Side, Site, Urgency
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import AthleteProfile, ReferenceValues
from storage import outbox
from storage.queries import people
from storage.records.people import Athlete, AthleteState, Person, Profile
from storage.tables.wire import OutboxRow
from tests.new_house import new_database

MONDAY_MORNING = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
COACH_CHAT = 1000


class Bench:
    """One coach, some athletes, a clock that the test moves."""

    def __init__(self, folder: Path) -> None:
        self.database = new_database(folder / "house.sqlite3")
        self.house = House(
            library=default_library(), rulebook=default_rulebook(), bot_name="holdwell_test_bot"
        )
        self.now = MONDAY_MORNING
        self._chats = iter(range(2001, 9999))
        self._messages = iter(range(1, 100_000))
        with self.turn() as turn:
            self.coach = people.add_person(
                turn.tx,
                name="Mara Quill",
                now=self.now,
                chat_id=COACH_CHAT,
                is_coach=True,
                zone="Europe/Madrid",
            )

    @contextmanager
    def turn(self) -> Iterator[Turn]:
        with self.database.transaction() as tx:
            yield Turn(tx=tx, now=self.now, house=self.house)

    def later(self, **span: float) -> None:
        self.now += timedelta(**span)

    def add_coach(self, name: str, *, chat_id: int, **facts: Any) -> Person:
        with self.turn() as turn:
            return people.add_person(
                turn.tx, name=name, now=self.now, chat_id=chat_id, is_coach=True, **facts
            )

    def add_athlete(
        self,
        name: str,
        *,
        coach: Person | None = None,
        has_chat: bool = True,
        stage: int = 1,
        since: date = date(2026, 1, 5),
        state: AthleteState = AthleteState.TRAINING,
    ) -> Person:
        with self.turn() as turn:
            person = people.add_person(
                turn.tx,
                name=name,
                now=self.now,
                chat_id=next(self._chats) if has_chat else None,
                zone="Europe/Madrid",
            )
            people.add_athlete(
                turn.tx,
                person_id=person.id,
                coach_id=(coach or self.coach).id,
                profile=PROFILE,
                on=since,
                session_at=time(7, 0),
                stage=stage,
                state=state,
                started_on=since,
            )
            return person

    def athlete(self, person: Person) -> Athlete:
        with self.turn() as turn:
            found = people.athlete(turn.tx, person.id)
        assert found is not None
        return found

    def hurts(
        self, person: Person, score: int, *, site: Site = Site.WRIST, side: Side = Side.LEFT
    ) -> None:
        with self.turn() as turn:
            event = PainReported(
                key=pain_picture.new_key(turn, person.id),
                at_utc=self.now,
                site=site,
                side=side,
                score=score,
            )
            pain_picture.record_event(turn, person.id, event)

    def flags(self, person: Person, flag: RedFlag) -> None:
        with self.turn() as turn:
            event = FlagRaised(
                key=pain_picture.new_key(turn, person.id),
                at_utc=self.now,
                flag=flag,
                certainty=Certainty.CONFIRMED,
            )
            pain_picture.record_event(turn, person.id, event)

    def level(self, person: Person) -> Level:
        with self.turn() as turn:
            found = people.athlete(turn.tx, person.id)
            assert found is not None
            return pain_picture.picture_of(turn, found).level

    def alert(
        self,
        person: Person,
        *,
        words: str = "my wrist is bad, 7",
        level: Level = Level.REST,
        urgency: Urgency = Urgency.SOON,
        is_private: bool = False,
    ) -> int:
        with self.turn() as turn:
            found = people.athlete(turn.tx, person.id)
            assert found is not None
            return tell_alerts.raise_alert(
                turn,
                person,
                found,
                level=level,
                urgency=urgency,
                words=words,
                reasons=(),
                is_private=is_private,
            ).id

    def write(
        self, text: str, *, chat_id: int = COACH_CHAT, reply_to: int | None = None, **more: Any
    ) -> Outcome:
        event = Wrote(
            chat_id=chat_id,
            at=self.now,
            message_id=next(self._messages),
            text=text,
            reply_to_message_id=reply_to,
            **more,
        )
        return self._handle(event)

    def tap(self, label: str, *, chat_id: int = COACH_CHAT) -> Outcome:
        """Tap the newest button in the chat whose label contains ``label``."""
        for row in reversed(self.rows(chat_id)):
            for line in row.payload.get("buttons", ()):
                for shown, token in line:
                    if label in shown:
                        return self._handle(
                            Tapped(chat_id=chat_id, at=self.now, message_id=row.id, token=token)
                        )
        raise AssertionError(f"no button {label!r}")

    def _handle(self, event: Event) -> Outcome:
        with self.turn() as turn:
            return front.handle(turn, event)

    def rows(self, chat_id: int = COACH_CHAT) -> Sequence[OutboxRow]:
        with self.database.transaction() as tx:
            query = select(OutboxRow).where(OutboxRow.chat_id == chat_id)
            return tx.exec(query.order_by(col(OutboxRow.id))).all()

    def texts(self, chat_id: int | None = COACH_CHAT) -> list[str]:
        assert chat_id is not None
        return [row.payload["text"] for row in self.rows(chat_id) if "text" in row.payload]

    def last(self, chat_id: int | None = COACH_CHAT) -> str:
        return self.texts(chat_id)[-1]

    def labels(self, chat_id: int = COACH_CHAT) -> list[str]:
        """Return the labels of the newest message with text."""
        row = [one for one in self.rows(chat_id) if "text" in one.payload][-1]
        return [shown for line in row.payload.get("buttons", ()) for shown, _ in line]

    def deliver(self) -> int:
        """Let the platform accept everything; return the id of the coach's newest message."""
        newest = 0
        for chat_id in {row.chat_id for row in self._all()}:
            for row in self.rows(chat_id):
                assert row.id is not None
                with self.database.transaction() as tx:
                    outbox.mark_sent(tx, row.id, at=self.now, message_id=50_000 + row.id)
                if chat_id == COACH_CHAT:
                    newest = 50_000 + row.id
        return newest

    def _all(self) -> Sequence[OutboxRow]:
        with self.database.transaction() as tx:
            return tx.exec(select(OutboxRow)).all()


PROFILE = Profile(
    facts=AthleteProfile(
        reference=ReferenceValues.WOMEN,
        body_mass_kg=60,
        training_age_months=12,
        equipment=frozenset({Equipment.DUMBBELLS, Equipment.BAND, Equipment.HIGH_BAR}),
        loads_kg={Equipment.DUMBBELLS: (4.0, 6.0, 8.0, 10.0)},
    )
)
