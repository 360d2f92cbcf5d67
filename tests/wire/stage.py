"""The wire without the house: receiver, writer and sender between a database and the loopback.

In place of the desks stands a handler that keeps every event and answers each text with itself.
After each scene all calls that were made are held against the published interface.
"""

import asyncio
import contextlib
import functools
import inspect
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from sqlmodel import Session, col, select
from telegram import Bot
from telegram.request import HTTPXRequest

from bot.events import Event, Wrote
from bot.wire.edge import event_from
from bot.wire.pace import Pace
from bot.wire.receive import Receiver
from bot.wire.send import Sender
from bot.writer import Writer
from demo_scenario.loopback.interface_check import problems_of_all
from demo_scenario.loopback.person import Person
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.server import LoopbackServer
from scheduler.calendar.clocks import SimulatedClock, let_others_run
from storage import outbox
from storage.database import Database
from storage.records.wire import MessageKind, Operation, Outgoing, Received
from storage.tables.wire import InboxRow, OutboxRow
from tests.new_house import new_database

START = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)  # CHOSEN: a Monday
ANA, BRUNO, CARLA = 1001, 1002, 1003  # CHOSEN: chat ids of our own invention
SETTLED_WITHIN_S = 120.0  # [s] CHOSEN: far beyond what any scene needs
POLL_S = 20  # [s] CHOSEN: a poll that waits for the whole scene


@dataclass
class Wire:
    """Everything that a scene acts with; the parts run only once they are started."""

    folder: Path
    clock: SimulatedClock
    platform: LoopbackPlatform
    server: LoopbackServer
    database: Database
    bot: Bot
    poll_request: HTTPXRequest
    ana: Person
    bruno: Person
    carla: Person
    events: list[Event] = field(default_factory=list)
    blocked: list[int] = field(default_factory=list)
    refused: list[tuple[int, datetime]] = field(default_factory=list)
    asides: list[str] = field(default_factory=list)
    ticks: list[datetime] = field(default_factory=list)
    tasks: list[asyncio.Task[None]] = field(default_factory=list)
    handle: Callable[[Session, Event, datetime], str] | None = None
    tick: Callable[[datetime], None] | None = None
    steps: list[Callable[[], None]] = field(default_factory=list)
    on_blocked: Callable[[Session, int, datetime], None] | None = None

    def __post_init__(self) -> None:
        self.sender = self.new_sender()
        self.writer = Writer(
            database=self.database,
            clock=self.clock,
            read=self._read,
            handle=self._handle,
            tell_set_aside=self._tell_set_aside,
            tick=self._tick,
            on_written=self._wake_sender,
        )
        self.receiver = Receiver(
            database=self.database,
            bot=self.bot,
            request=self.poll_request,
            clock=self.clock,
            poll_s=POLL_S,
            on_stored=self.writer.wake,
        )

    def new_sender(self, *, is_paced: bool = True) -> Sender:
        return Sender(
            database=self.database,
            bot=self.bot,
            clock=self.clock,
            pace=Pace(is_on=is_paced),
            on_blocked=self._on_blocked,
            on_refused=self._on_refused,
        )

    def start(self, *parts: Any) -> None:
        """Let parts run: all three unless some are named."""
        for part in parts or (self.receiver, self.writer, self.sender):
            self.tasks.append(asyncio.create_task(part.run()))

    async def stop(self) -> None:
        for task in self.tasks:
            task.cancel()
        await asyncio.gather(*self.tasks, return_exceptions=True)
        self.tasks.clear()
        await self.sender.drain()

    async def settle(self) -> None:
        """Wait until everything that can go on at this instant has come to rest."""
        async with asyncio.timeout(SETTLED_WITHIN_S):
            await let_others_run()
            while not (self.sender.is_idle and self.writer.is_idle and self._is_platform_quiet()):
                await asyncio.sleep(0.001)
                await let_others_run()

    async def settle_writer(self) -> None:
        """Wait until the writer alone has come to rest; no sender runs."""
        async with asyncio.timeout(SETTLED_WITHIN_S):
            await let_others_run()
            while not self.writer.is_idle:
                await let_others_run()

    def _is_platform_quiet(self) -> bool:
        polls = 1 if self.platform.polls.is_parked else 0
        return self.platform.requests.in_flight == polls and not self.receiver.is_answering

    async def pass_time(self, seconds: float) -> None:
        """Advance the clock, with everybody who wakes doing their work in between."""
        await self.settle()
        await self.clock.advance_to(self.clock.now() + timedelta(seconds=seconds))
        await self.settle()

    def put(
        self, text: str, *, to: int = ANA, kind: MessageKind = MessageKind.REPLY, **facts: Any
    ) -> int:
        """Write a message into the outbox, and announce it."""
        with self.database.transaction() as tx:
            row_id = outbox.put(
                tx,
                chat_id=to,
                operation=facts.pop("operation", Operation.SEND),
                kind=kind,
                payload=facts.pop("payload", {"text": text}),
                now=self.clock.now(),
                **facts,
            )
        self.sender.wake()
        return row_id

    def out(self, row_id: int) -> OutboxRow:
        with self.database.transaction() as tx:
            return tx.get_one(OutboxRow, row_id)

    def inbox(self) -> list[InboxRow]:
        with self.database.transaction() as tx:
            return list(tx.exec(select(InboxRow).order_by(col(InboxRow.id))))

    def _read(self, received: Received) -> Event:
        return event_from(received.raw or "", self.bot, received_at=received.received_at)

    def _handle(self, tx: Session, event: Event, now: datetime) -> str:
        if self.handle is not None:
            return self.handle(tx, event, now)
        self.events.append(event)
        if isinstance(event, Wrote):
            outbox.put(
                tx,
                chat_id=event.chat_id,
                operation=Operation.SEND,
                kind=MessageKind.REPLY,
                payload={"text": event.text},
                now=now,
            )
        return "answered"

    def _wake_sender(self) -> None:
        self.sender.wake()  # whichever stands there now: a scene may put another in its place

    def _tell_set_aside(
        self, tx: Session, received: Received, now: datetime, reference: str
    ) -> None:
        self.asides.append(reference)

    def _tick(self, now: Callable[[], datetime]) -> Iterator[None]:
        self.ticks.append(now())
        if self.tick is not None:
            self.tick(now())
        for step in self.steps:
            step()
            yield

    def _on_refused(self, tx: Session, outgoing: Outgoing, now: datetime) -> None:
        self.refused.append((outgoing.id, now))

    def _on_blocked(self, tx: Session, chat_id: int, now: datetime) -> None:
        self.blocked.append(chat_id)
        if self.on_blocked is not None:
            self.on_blocked(tx, chat_id, now)


def texts(person: Person) -> list[str]:
    """Return what the bot's messages to a person say, as shown."""
    return [message.text for message in person.sees_from_bot()]


def quick_request(**settings: Any) -> HTTPXRequest:
    """Return the library's own transport; loopback has no certificates to load."""
    return HTTPXRequest(httpx_kwargs={"verify": False}, **settings)


@asynccontextmanager
async def wired(folder: Path) -> AsyncIterator[Wire]:
    """Set up a platform, a database and the three parts."""
    database = new_database(folder / "house.sqlite3")
    wire: Wire | None = None

    async def settle() -> None:
        if wire is not None:
            await wire.settle()

    clock = SimulatedClock(START, settle=settle)
    platform = LoopbackPlatform(now=clock.now, seed=7)
    async with LoopbackServer(platform) as server:
        poll_request = quick_request(connection_pool_size=2)
        bot = Bot(
            platform.token,
            base_url=server.base_url,
            base_file_url=server.base_file_url,
            # CHOSEN: no slow machine makes a send doubtful, and a scene of silence is short.
            request=quick_request(connection_pool_size=20, read_timeout=3.0),
            get_updates_request=poll_request,
        )
        async with bot:
            ana, bruno, carla = (
                server.people.add(chat_id, name)
                for chat_id, name in ((ANA, "Ana"), (BRUNO, "Bruno"), (CARLA, "Carla"))
            )
            wire = Wire(
                folder, clock, platform, server, database, bot, poll_request, ana, bruno, carla
            )
            try:
                yield wire
            finally:
                await wire.stop()
    with contextlib.suppress(Exception):
        database.close()


def on_wire(scene: Callable[..., Awaitable[None]]) -> Callable[..., None]:
    """Run an async test with a :class:`Wire` as its first argument."""

    @functools.wraps(scene)
    def test(tmp_path: Path, **given: Any) -> None:
        asyncio.run(_play(scene, tmp_path, given))

    signature = inspect.signature(scene)
    rest = [each for name, each in signature.parameters.items() if name != "wire"]
    folder = inspect.Parameter("tmp_path", inspect.Parameter.POSITIONAL_OR_KEYWORD)
    test.__signature__ = signature.replace(parameters=[folder, *rest])  # type: ignore[attr-defined]
    return test


async def _play(scene: Callable[..., Awaitable[None]], folder: Path, given: dict[str, Any]) -> None:
    async with wired(folder) as wire:
        await scene(wire, **given)
        # PUBLISHED botapi, by the typed methods of an independent library
        assert problems_of_all(wire.platform.requests) == ()
