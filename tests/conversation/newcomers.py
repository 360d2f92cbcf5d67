"""A coach, people with phones, and a migrated database: events go in, outbox rows come out.

Taps are looked up as the desks do it: the button's token in this chat, then the act's name.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from html import unescape
from itertools import count
from pathlib import Path
from typing import Any

from sqlmodel import col, select

from bot.acts import ask_help, intake, join, pass_on
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.red_flags import read_red_flags
from bot.turn import House, Turn
from scheduler.catalogue.library import default_library
from scheduler.training.rulebook import default_rulebook
from storage import buttons
from storage.queries import care, people, training
from storage.records.care import AuditEntry
from storage.records.people import Athlete, Person, Role
from storage.records.training import SessionRecord
from storage.records.wire import Dialog
from storage.tables.wire import ButtonRow, OutboxRow
from tests.new_house import new_database

MONDAY_DAWN = datetime(2026, 10, 5, 4, 0, tzinfo=UTC)  # a Monday, 06:00 in Madrid (UTC+2)
COACH_CHAT = 500
TAPS = {**intake.TAPS, **intake.COACH_TAPS}
MENU = (("today", "what is next"), ("help", "how this works"))


@dataclass
class Said:
    """One message as a person sees it: text without markup left in, and buttons by label."""

    operation: str
    text: str
    buttons: dict[str, str] = field(default_factory=dict)
    kind: str = ""
    message_id: int | None = None
    commands: list[list[str]] = field(default_factory=list)


class Town:
    """The house, its coach, and the clock that the test moves."""

    def __init__(self, folder: Path) -> None:
        """Open an empty house with one coach in it."""
        self.database = new_database(folder / "house.sqlite3")
        self.house = House(
            library=default_library(), rulebook=default_rulebook(), bot_name="coach_test_bot"
        )
        self.now = MONDAY_DAWN
        self._numbers = count(1)
        with self.turn() as turn:
            self.coach = people.add_person(
                turn.tx,
                name="Mara Quill",
                now=self.now,
                chat_id=COACH_CHAT,
                is_coach=True,
                zone="Europe/Madrid",
                emergency_number="112",
            )

    @contextmanager
    def turn(self) -> Iterator[Turn]:
        """Give one turn of the writer."""
        with self.database.transaction() as tx:
            yield Turn(tx=tx, now=self.now, house=self.house)

    def invite(self, name: str = "Robin Vale") -> tuple[Person, str]:
        """Invite an athlete and return the secret of the link."""
        with self.turn() as turn:
            person, _ = join.add_athlete(turn, self.coach, name)
            url = join.invite(turn, self.coach, person)
        return person, url.rsplit("=", 1)[1]

    def link(self, person: Person, role: Role) -> str:
        """Make a link as the command line does and return its secret."""
        with self.turn() as turn:
            url = join.new_link(
                turn.tx,
                bot_name="coach_test_bot",
                person=person,
                role=role,
                issued_by_id=self.coach.id if role is Role.ATHLETE else None,
                now=self.now,
            )
        return url.rsplit("=", 1)[1]

    def later(self, **span: float) -> None:
        """Let time pass."""
        self.now += timedelta(**span)

    def write(self, chat_id: int, text: str, **facts: Any) -> Outcome:
        """Send a text from a chat."""
        event = Wrote(
            chat_id=chat_id, at=self.now, message_id=next(self._numbers), text=text, **facts
        )
        with self.turn() as turn:
            person = people.person_in_chat(turn.tx, chat_id)
            if secret := join.secret_in(text):
                return join.use_link(turn, event, secret, person, menu_of=lambda *_: MENU)
            assert person is not None
            if text in {"/start", "/help"}:
                act = join.start if text == "/start" else ask_help.athlete
                return act(turn, person, "", event)
            athlete, dialog = people.athlete(turn.tx, person.id), buttons.dialog(turn.tx, chat_id)
            assert athlete is not None
            if dialog is None:
                return pass_on.words(turn, person, event)
            flags = read_red_flags(text)
            return intake.hear(turn, person, athlete, dialog, event, flags=flags)

    def tap(self, chat_id: int, token: str, *, message_id: int | None = 900) -> Outcome:
        """Tap a button by its token."""
        with self.turn() as turn:
            person = people.person_in_chat(turn.tx, chat_id)
            button = buttons.button(turn.tx, token=token, chat_id=chat_id)
            assert person is not None
            assert button is not None
            assert button.person_id == person.id
            event = Tapped(chat_id=chat_id, at=self.now, message_id=message_id, token=token)
            return TAPS[button.act](turn, person, button.arguments, event)

    def press(self, chat_id: int, label: str) -> Outcome:
        """Tap the newest button with this label in the chat; a place's clock need not be named."""
        for said in reversed(self.heard(chat_id)):
            for shown, token in said.buttons.items():
                if label == shown or shown.startswith(f"{label}, now "):
                    return self.tap(chat_id, token)
        raise AssertionError(f"no button {label!r}; the last is {self.last(chat_id)}")

    def heard(self, chat_id: int) -> list[Said]:
        """Return everything that was sent to a chat, in order."""
        with self.turn() as turn:
            rows = turn.tx.exec(
                select(OutboxRow).where(OutboxRow.chat_id == chat_id).order_by(col(OutboxRow.id))
            ).all()
            return [
                Said(
                    operation=row.operation,
                    text=unescape(row.payload.get("text", "")),
                    buttons={
                        label: token
                        for line in row.payload.get("buttons", [])
                        for label, token in line
                    },
                    kind=row.kind,
                    message_id=row.payload.get("message_id"),
                    commands=row.payload.get("commands", []),
                )
                for row in rows
            ]

    def last(self, chat_id: int) -> Said:
        """Return the newest message of a chat."""
        return [said for said in self.heard(chat_id) if said.operation != "menu"][-1]

    def said_in(self, chat_id: int) -> str:
        """Return all texts of a chat in one."""
        return "\n".join(said.text for said in self.heard(chat_id))

    def raw(self, chat_id: int) -> str:
        """Return all texts of a chat with their markup."""
        with self.turn() as turn:
            rows = turn.tx.exec(select(OutboxRow).where(OutboxRow.chat_id == chat_id)).all()
            return "\n".join(row.payload.get("text", "") for row in rows)

    def acts(self, chat_id: int) -> list[str]:
        """Return the acts of the buttons that a chat was sent."""
        with self.turn() as turn:
            rows = turn.tx.exec(select(ButtonRow).where(ButtonRow.chat_id == chat_id)).all()
            return [row.act for row in rows]

    def come_in(self, chat_id: int, *presses: str) -> Person:
        """Let an invited athlete open the link, agree, and press these buttons."""
        person, secret = self.invite()
        self.write(chat_id, f"/start {secret}")
        for label in ("I agree", *presses):
            self.press(chat_id, label)
        return person

    def athlete(self, person: Person) -> Athlete:
        """Return an athlete as stored."""
        with self.turn() as turn:
            found = people.athlete(turn.tx, person.id)
        assert found is not None
        return found

    def person(self, person: Person) -> Person:
        """Return a person as stored."""
        with self.turn() as turn:
            return people.person(turn.tx, person.id)

    def dialog(self, chat_id: int) -> Dialog | None:
        """Return where the questions of a chat stand."""
        with self.turn() as turn:
            return buttons.dialog(turn.tx, chat_id)

    def step(self, chat_id: int) -> str | None:
        """Return which question is open in a chat."""
        dialog = self.dialog(chat_id)
        return dialog.step if dialog else None

    def audit(self, person: Person) -> list[AuditEntry]:
        """Return what was decided about a person, the earliest first."""
        with self.turn() as turn:
            return list(reversed(care.audit_of(turn.tx, person.id)))

    def sessions(self, person: Person) -> tuple[SessionRecord, ...]:
        """Return what is planned for a person in the coming fortnight."""
        with self.turn() as turn:
            return training.sessions_between(
                turn.tx,
                person.id,
                first=self.now.date() - timedelta(days=7),
                last=self.now.date() + timedelta(days=14),
            )
