"""The composition root: the only place that knows the real clock and puts the house together."""

import asyncio
import contextlib
import logging
import signal
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlmodel import Session
from telegram import Bot
from telegram.error import InvalidToken, TelegramError
from telegram.request import HTTPXRequest

from bot.acts import block_chat, export_files, refused_message, set_aside
from bot.config import Settings, token_of
from bot.desks import front
from bot.events import Event
from bot.heartbeat import Heartbeat
from bot.keeper import Keeper
from bot.rounds import house_round, tick
from bot.turn import House, Turn
from bot.wire.edge import event_from
from bot.wire.faults import understand
from bot.wire.pace import Pace
from bot.wire.receive import OperatorError, Receiver
from bot.wire.send import Sender
from bot.writer import Writer
from scheduler.calendar.clocks import Clock
from scheduler.catalogue.library import default_library
from scheduler.clock import SystemClock, Ticks
from scheduler.training.rulebook import default_rulebook
from storage import buttons
from storage.database import Database
from storage.migrate import migrate
from storage.records.wire import Outgoing, Received

log = logging.getLogger(__name__)

CONNECTIONS = 20  # [connections] ch: what is in flight, a poll, and the answers to taps
ANSWER_WITHIN_S = 15.0  # [s] ch: later a send is in doubt; a busy machine's answer is sooner
DRAIN_S = 10.0  # [s] ch: how long a clean stop waits for sends in flight


@dataclass(frozen=True)
class Wiring:
    """What differs between the real bot, the demo and the tests."""

    token: str
    database_url: str
    clock: Clock
    api_url: str | None = None
    poll_s: int = 25
    answer_within_s: float = ANSWER_WITHIN_S
    is_paced: bool = True
    is_throwaway: bool = False
    backups: Path | None = None
    backups_kept: int = 7
    make_token: Callable[[], str] = buttons.random_token
    make_secret: Callable[[], str] = buttons.random_secret
    heartbeat_file: Path | None = None
    heartbeat_url: str | None = None


class Holdwell:
    """The running house: one receiver, one writer, one sender, one ticker, one keeper."""

    def __init__(self, wiring: Wiring) -> None:
        """Put everything together; nothing runs before :meth:`start`."""
        self._wiring = wiring
        self.clock = wiring.clock
        self.database = Database(wiring.database_url, is_throwaway=wiring.is_throwaway)
        self._poll_request = HTTPXRequest(connection_pool_size=2)
        self.bot = make_bot(wiring, self._poll_request)
        self._house: House | None = None
        self._tasks: list[asyncio.Task[None]] = []
        self._heartbeat = Heartbeat(file=wiring.heartbeat_file, url=wiring.heartbeat_url)
        self.sender = Sender(
            database=self.database,
            bot=self.bot,
            clock=self.clock,
            pace=Pace(is_on=wiring.is_paced),
            on_blocked=self._on_blocked,
            on_refused=self._on_refused,
            on_fetched=self._on_fetched,
            make_file=self._make_file,
        )
        self.keeper = Keeper(
            database=self.database,
            url=wiring.database_url,
            clock=self.clock,
            folder=wiring.backups,
            kept=wiring.backups_kept,
            tell_failed=self._tell_no_copy,
        )
        self.writer = Writer(
            database=self.database,
            clock=self.clock,
            read=self._read,
            handle=self._handle,
            tell_set_aside=self._tell_set_aside,
            tick=self._tick,
            on_written=self.sender.wake,
        )
        self.receiver = Receiver(
            database=self.database,
            bot=self.bot,
            request=self._poll_request,
            clock=self.clock,
            poll_s=wiring.poll_s,
            on_stored=self.writer.wake,
        )

    @property
    def is_idle(self) -> bool:
        """True when nothing waits, nothing is being done and nothing is in flight."""
        parts = (self.writer, self.sender, self.keeper)
        return all(part.is_idle for part in parts) and not self.receiver.is_answering

    @property
    def is_drawing(self) -> bool:
        """True while a picture is drawn, beside the loop and by the real clock."""
        return self.sender.is_drawing

    async def start(self) -> None:
        """Migrate, meet the platform, recover what was in flight, and begin to work."""
        migrate(self.database.engine)
        await self.bot.initialize()
        self._house = House(
            library=default_library(),
            rulebook=default_rulebook(),
            bot_name=self.bot.username,
            make_token=self._wiring.make_token,
            make_secret=self._wiring.make_secret,
            copies_kept=self._wiring.backups_kept if self._wiring.backups is not None else 0,
        )
        doubtful = self.sender.recover()
        if doubtful:
            log.warning("%d sends were in flight when the process ended; sent again", doubtful)
        self.writer.wake()
        self._tasks = [
            asyncio.create_task(part.run(), name=type(part).__name__)
            for part in (self.receiver, self.writer, self.sender, self.keeper)
        ]

    def strike(self) -> None:
        """The clock struck: look what is due."""
        self.writer.ask_tick()

    async def wait(self) -> None:
        """Wait until a part fails; parts end only by a fault or by :meth:`stop`."""
        await asyncio.gather(*self._tasks)

    async def stop(self) -> None:
        """Stop taking in, let what is in flight arrive, and close. Nothing stored is lost."""
        for task in self._tasks:
            task.cancel()
        await asyncio.gather(*self._tasks, return_exceptions=True)
        await self._heartbeat.stop()
        with contextlib.suppress(TimeoutError):
            await asyncio.wait_for(self.sender.drain(), DRAIN_S)
        with contextlib.suppress(TelegramError, RuntimeError):
            await self.bot.shutdown()
        self.database.close()

    def turn(self, tx: Session, now: datetime) -> Turn:
        """Make the turn in which acts work."""
        if self._house is None:
            raise RuntimeError("the house has not started")
        return Turn(tx=tx, now=now, house=self._house)

    def _read(self, received: Received) -> Event:
        return event_from(received.raw or "", self.bot, received_at=received.received_at)

    def _handle(self, tx: Session, event: Event, now: datetime) -> str:
        return front.handle(self.turn(tx, now), event).value

    def _tell_set_aside(
        self, tx: Session, received: Received, now: datetime, reference: str
    ) -> None:
        set_aside.tell(self.turn(tx, now), received, reference)

    def _on_blocked(self, tx: Session, chat_id: int, now: datetime) -> None:
        block_chat.blocked(self.turn(tx, now), chat_id)

    def _on_refused(self, tx: Session, outgoing: Outgoing, now: datetime) -> None:
        refused_message.refused(self.turn(tx, now), outgoing)

    def _on_fetched(self) -> None:
        self.writer.wake()

    def _make_file(self, payload: Mapping[str, Any]) -> bytes:
        """Make a file in a thread of the sender's, from what is stored by then."""
        with self.database.reading() as tx:
            turn = self.turn(tx, self.clock.now())
            return export_files.content(turn, payload["file"], payload.get("page"))

    def _tick(self, now: Callable[[], datetime]) -> Iterator[None]:
        yield from tick.steps(self.database, now, self.turn)
        self._heartbeat.beat()  # only a round that came to its end is a sign of life
        self.keeper.wake()

    def _tell_no_copy(self, tx: Session, why: str, now: datetime) -> None:
        house_round.tell_no_copy(self.turn(tx, now), why)
        self.sender.wake()


def make_bot(wiring: Wiring, poll_request: HTTPXRequest | None = None) -> Bot:
    """Return the messaging library's bot for this wiring."""
    request = HTTPXRequest(
        connection_pool_size=CONNECTIONS,
        read_timeout=wiring.answer_within_s,
        write_timeout=wiring.answer_within_s,
    )
    if wiring.api_url is None:
        return Bot(wiring.token, request=request, get_updates_request=poll_request)
    return Bot(
        wiring.token,
        base_url=f"{wiring.api_url}/bot",
        base_file_url=f"{wiring.api_url}/file/bot",
        request=request,
        get_updates_request=poll_request,
    )


def wiring_from(settings: Settings) -> Wiring:
    """Return the wiring of the real bot, on the machine's own clock."""
    return Wiring(
        token=token_of(settings),
        database_url=settings.database_url,
        clock=SystemClock(),
        api_url=settings.api_url,
        poll_s=settings.poll_s,
        heartbeat_file=settings.heartbeat_file,
        heartbeat_url=settings.heartbeat_address,
        backups=settings.backups,
        backups_kept=settings.backups_kept,
    )


async def run_until_stopped(wiring: Wiring) -> None:
    """Run the house until SIGTERM or SIGINT; this is what ``holdwell run`` does.

    Raises:
        OperatorError: in one line, when only the operator can help.

    """
    house = Holdwell(wiring)
    try:
        await house.start()
    except InvalidToken:
        raise OperatorError(
            "The platform does not know this bot token: check HOLDWELL_TOKEN and start again."
        ) from None
    except TelegramError as error:
        raise OperatorError(
            f"The platform cannot be reached ({understand(error).detail}): check the network."
        ) from None
    stopped = asyncio.Event()
    for name in (signal.SIGTERM, signal.SIGINT):
        asyncio.get_running_loop().add_signal_handler(name, stopped.set)
    ticks = Ticks(lambda _: house.strike(), clock=house.clock)
    ticks.start()
    work = asyncio.create_task(house.wait())
    stop = asyncio.create_task(stopped.wait())
    try:
        await asyncio.wait({work, stop}, return_when=asyncio.FIRST_COMPLETED)
        if work.done():
            work.result()
    finally:
        stop.cancel()
        await ticks.stop()
        await house.stop()
        await asyncio.gather(work, stop, return_exceptions=True)
