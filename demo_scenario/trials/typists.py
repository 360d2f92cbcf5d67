"""The athletes of a trial: each waits for the session, and answers at a pace of their own."""

import asyncio
import random
from dataclasses import dataclass, field

from demo_scenario.loopback.person import Person
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.trials.ledger import Ledger
from demo_scenario.trials.typed_results import Typed, typed_results
from scheduler.catalogue.library import default_library
from storage.database import Database
from storage.queries import people, training
from storage.records.training import SessionRecord

AS_PLANNED = "All as planned"
NOTHING_HURT = "Nothing hurt"
PATIENCE_S = 90.0  # [s] ch: how long somebody waits for the bot before the trial is lost
THINKS_S = (0.1, 0.6)  # [s] ch: between two messages, so that replies flow through every kill
TAPS_INSTEAD = 4  # [athletes] ch: every fourth taps one button instead of typing
RESERVE_MOST = ("4+", "20+")  # the last button of the question, in repetitions and in seconds
EFFORT_ASKED = "9"  # a button that only the question about the effort has
EFFORTS = (6, 7, 8)  # [0-10] ch: no other question offers these as buttons
QUESTIONS = ("Can I swap days next week?", "Is chalk fine on the bar?")


@dataclass
class Typist:
    """One athlete."""

    number: int
    person: Person
    platform: LoopbackPlatform
    database: Database
    ledger: Ledger
    chance: random.Random
    answered: set[str] = field(default_factory=set)

    async def train(self) -> None:
        """Train, or give up waiting for the bot, which is noted."""
        try:
            await self._train()
        except TimeoutError:
            self.ledger.gave_up.append(self.person.user["first_name"])

    async def _train(self) -> None:
        await self._question(AS_PLANNED)
        session = self._session()
        if self.number % TAPS_INSTEAD == TAPS_INSTEAD - 1:
            await self._tap_as_planned(session)
        else:
            await self._type(typed_results(session, default_library(), self.chance))
        await self._close(session)

    async def _tap_as_planned(self, session: SessionRecord) -> None:
        await self._think()
        self.ledger.tap(self.person, AS_PLANNED)
        self.ledger.planned.append(session.id)

    async def _type(self, lines: tuple[Typed, ...]) -> None:
        for line in lines:
            await self._think()
            self.ledger.write(self.person, line.text)
            self.ledger.typed[line.item_id] = line
        await self._think()
        self.ledger.write(self.person, self.chance.choice(QUESTIONS))

    async def _close(self, session: SessionRecord) -> None:
        """Answer what is asked about the reserve, then the effort, then the pain."""
        while (asked := await self._question(EFFORT_ASKED, *RESERVE_MOST)) != EFFORT_ASKED:
            await self._think()
            self.answered.add(self.ledger.tap(self.person, asked, but=self.answered))
        effort = self.chance.choice(EFFORTS)
        await self._think()
        self.ledger.tap(self.person, str(effort))
        self.ledger.efforts[session.id] = effort
        await self._question(NOTHING_HURT)
        await self._think()
        self.ledger.tap(self.person, NOTHING_HURT)

    async def _question(self, *labels: str) -> str:
        """Wait until one of these buttons is shown and was not tapped yet; the first goes before.

        What was shown twice after a kill stands there twice, with the same answer behind it.
        """
        await self.platform.until(lambda: bool(self._asked(labels)), within_s=PATIENCE_S)
        return self._asked(labels)

    def _asked(self, labels: tuple[str, ...]) -> str:
        shown = {
            button.text
            for message in self.person.sees_from_bot()
            for row in message.buttons
            for button in row
            if button.data not in self.answered
        }
        return next((label for label in labels if label in shown), "")

    async def _think(self) -> None:
        await asyncio.sleep(self.chance.uniform(*THINKS_S))

    def _session(self) -> SessionRecord:
        with self.database.transaction() as tx:
            person = people.person_in_chat(tx, self.person.chat_id)
            if person is None:
                raise LookupError(f"nobody has the chat {self.person.chat_id}")
            return training.open_sessions(tx, person.id)[0]
