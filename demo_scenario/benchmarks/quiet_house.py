"""The house without a network: updates go in by the inbox, answers come out of the outbox.

The writer, the desks, the acts and the rounds are the real ones. The receiver and the sender are
missing; what they would write down is written here, outside what is timed.
"""

import asyncio
import time
from collections.abc import Callable, Iterator, Sequence
from datetime import datetime
from typing import Any

from sqlmodel import Session, col, func, select

from bot.app import Wiring, make_bot
from bot.desks import front
from bot.events import Event
from bot.rounds import tick
from bot.turn import Turn
from bot.wire.edge import event_from
from bot.writer import Writer
from demo_scenario.trials.ready_team import MONDAY, house
from scheduler.calendar.clocks import SimulatedClock
from storage import inbox, outbox
from storage.database import Database
from storage.queries import due
from storage.records.wire import Received
from storage.tables.wire import OutboxRow, OutboxState

BOT_NAME = "holdwell_loopback_bot"
TOKEN = "7000000001:bench-token-that-opens-nothing"  # noqa: S105  no account has it
FIRST_UPDATE = 10_000_000  # ch: above whatever the history has


class QuietHouse:
    """A house over a database, with a clock that is moved by hand."""

    def __init__(self, database: Database) -> None:
        """Put the writer together as the composition root does; the time is Monday, midnight."""
        self.database = database
        self.clock = SimulatedClock(MONDAY)
        self.inside = house(BOT_NAME)
        self._bot = make_bot(Wiring(token=TOKEN, database_url="", clock=self.clock))
        self._updates = FIRST_UPDATE
        self._faults: list[str] = []
        self._writer = Writer(
            database=database,
            clock=self.clock,
            read=self._read,
            handle=self._handle,
            tell_set_aside=self._set_aside,
            tick=self._tick,
            on_written=lambda: None,
        )
        with database.transaction() as tx:
            due.set_mark(tx, tick.LAST_ROUND, at=MONDAY)
            self._seen = tx.exec(select(func.max(OutboxRow.id))).one() or 0

    async def go_to(self, at: datetime) -> None:
        """Let time pass without anything in it."""
        await self.clock.advance_to(at)

    async def strike(self) -> float:
        """Run one round and return how long it took [ms]."""
        self._writer.ask_tick()
        return await self._work()

    async def hear(self, chat_id: int, name: str, text: str) -> float:
        """Let a person write, and return how long the answer took, from inbox to commit [ms]."""
        return await self._arrive({"message": {**self._envelope(chat_id, name), "text": text}})

    async def feel(self, chat_id: int, name: str, token: str, message_id: int) -> float:
        """Let a person tap, and return how long the answer took, from inbox to commit [ms]."""
        sender = {"id": chat_id, "is_bot": False, "first_name": name}
        shown = {**self._envelope(chat_id, name), "message_id": message_id, "text": "…"}
        query = {"id": "1", "from": sender, "chat_instance": "1", "data": token, "message": shown}
        return await self._arrive({"callback_query": query})

    def sent(self) -> list[OutboxRow]:
        """Return what was written since the last look, the newest first, as if it were sent."""
        with self.database.transaction() as tx:
            query = select(OutboxRow).where(col(OutboxRow.id) > self._seen)
            rows = list(tx.exec(query.order_by(col(OutboxRow.id).desc())))
            for row in rows:
                if row.state is OutboxState.WAITING and row.id is not None:
                    outbox.mark_sent(tx, row.id, at=self.clock.now(), message_id=row.id)
        self._seen = max((row.id or 0 for row in rows), default=self._seen)
        return rows

    def turn(self, tx: Session, now: datetime) -> Turn:
        """Make the turn in which acts work."""
        return Turn(tx=tx, now=now, house=self.inside)

    def _envelope(self, chat_id: int, name: str) -> dict[str, Any]:
        return {
            "message_id": self._updates,
            "date": int(self.clock.now().timestamp()),
            "chat": {"id": chat_id, "type": "private", "first_name": name},
            "from": {"id": chat_id, "is_bot": False, "first_name": name},
        }

    async def _arrive(self, update: dict[str, Any]) -> float:
        self._updates += 1
        updates: Sequence[dict[str, Any]] = [{"update_id": self._updates, **update}]
        with self.database.transaction() as tx:
            inbox.store_updates(tx, updates, received_at=self.clock.now())
        return await self._work()

    async def _work(self) -> float:
        began_s = time.perf_counter()
        await self._writer.work()
        took_ms = (time.perf_counter() - began_s) * 1000
        if self._faults:
            raise RuntimeError(f"set aside: {self._faults}")
        await asyncio.sleep(0)
        return took_ms

    def _read(self, received: Received) -> Event:
        return event_from(received.raw or "", self._bot, received_at=received.received_at)

    def _handle(self, tx: Session, event: Event, now: datetime) -> str:
        return front.handle(self.turn(tx, now), event).value

    def _set_aside(self, _tx: Session, _received: Received, _now: datetime, reference: str) -> None:
        self._faults.append(reference)

    def _tick(self, now: Callable[[], datetime]) -> Iterator[None]:
        return tick.steps(self.database, now, self.turn)
