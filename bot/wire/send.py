"""Sending: each chat in order, several chats at once, and every outcome written down."""

import asyncio
import logging
from collections.abc import Callable
from datetime import datetime, timedelta

from sqlmodel import Session
from telegram import Bot
from telegram.error import TelegramError

from bot.wire.faults import Fault, Meaning, understand
from bot.wire.pace import Pace
from bot.wire.requests import perform
from scheduler.calendar.clocks import Clock
from storage import outbox
from storage.database import Database
from storage.inbox import has_spoken_since
from storage.records.wire import Operation, Outgoing

log = logging.getLogger(__name__)

IN_FLIGHT = 16  # [requests] measured: more slows the stock transport's connection pool
LONGEST_WAIT_S = 60.0  # [s] ch: between attempts while the platform is failing
DOUBTFUL_ATTEMPTS = 2  # [attempts] ch: sent once more in doubt, not for ever

BlockedHook = Callable[[Session, int, datetime], None]


class Sender:
    """Claims what is due, sends it, and decides what a failure means for it."""

    def __init__(
        self,
        *,
        database: Database,
        bot: Bot,
        clock: Clock,
        pace: Pace,
        on_blocked: BlockedHook,
    ) -> None:
        """Keep what is needed; ``on_blocked`` tells the coach, in the same transaction."""
        self._database = database
        self._bot = bot
        self._clock = clock
        self._pace = pace
        self._on_blocked = on_blocked
        self._wake = asyncio.Event()
        self._tasks: set[asyncio.Task[None]] = set()

    def wake(self) -> None:
        """Something was written to the outbox."""
        self._wake.set()

    @property
    def is_idle(self) -> bool:
        """True when nothing is in flight and nothing new was announced."""
        return not self._tasks and not self._wake.is_set()

    def recover(self) -> int:
        """Put back what was in flight when the process ended, marked as doubtful."""
        with self._database.transaction() as tx:
            lost = outbox.in_flight(tx)
            for outgoing in lost:
                self._in_doubt(tx, outgoing, "process ended", crashed=True)
        return len(lost)

    async def run(self) -> None:
        """Send until cancelled."""
        while True:
            self._wake.clear()
            until = self._launch()
            await self._clock.wait(self._wake, until)

    async def drain(self) -> None:
        """Wait for what is in flight; used by a clean stop."""
        if self._tasks:
            await asyncio.gather(*self._tasks, return_exceptions=True)

    def _launch(self) -> datetime | None:
        """Start what may leave now; return when to look again."""
        now = self._clock.now()
        room = min(IN_FLIGHT - len(self._tasks), self._pace.room(now=now))
        if room <= 0:
            return None if self._tasks else self._pace.next_room_at(now=now)
        with self._database.transaction() as tx:
            claimed = outbox.claim_due(tx, now=now, most=room)
            leaving = [outgoing for outgoing in claimed if self._may_leave(tx, outgoing, now)]
            later = None if leaving else outbox.next_due_at(tx, after=now)
        for outgoing in leaving:
            task = asyncio.create_task(self._deliver(outgoing))
            self._tasks.add(task)
            task.add_done_callback(self._finished)
        return later

    def _may_leave(self, tx: Session, outgoing: Outgoing, now: datetime) -> bool:
        free_at = self._pace.chat_free_at(outgoing.chat_id, now=now)
        if free_at > now:
            outbox.give_back(tx, outgoing.id, not_before=free_at)
            return False
        self._pace.spend(outgoing.chat_id, now=now)
        return True

    def _finished(self, task: asyncio.Task[None]) -> None:
        self._tasks.discard(task)
        self._wake.set()
        if not task.cancelled() and task.exception() is not None:
            log.error("a send ended with a fault of ours: %s", type(task.exception()).__name__)

    async def _deliver(self, outgoing: Outgoing) -> None:
        now = self._clock.now()
        if outgoing.useful_until is not None and outgoing.useful_until < now:
            with self._database.transaction() as tx:
                outbox.mark_dropped(tx, outgoing.id, at=now, fault="too late to be useful")
            return
        try:
            message_id = await perform(self._bot, outgoing)
        except TelegramError as error:
            self._failed(outgoing, understand(error))
        except Exception as error:  # noqa: BLE001 (one row's fault never stops the others)
            fault = Fault(meaning=Meaning.REFUSED, detail=type(error).__name__)
            self._failed(outgoing, fault)
        else:
            with self._database.transaction() as tx:
                outbox.mark_sent(tx, outgoing.id, at=self._clock.now(), message_id=message_id)

    def _failed(self, outgoing: Outgoing, fault: Fault) -> None:
        now = self._clock.now()
        with self._database.transaction() as tx:
            match fault.meaning:
                case Meaning.DONE_ALREADY:
                    outbox.mark_sent(tx, outgoing.id, at=now, message_id=outgoing.edits_message_id)
                case Meaning.WAIT | Meaning.TRY_LATER | Meaning.OPERATOR:
                    self._later(tx, outgoing, fault)
                case Meaning.IN_DOUBT:
                    self._in_doubt(tx, outgoing, fault.detail)
                case Meaning.BLOCKED:
                    outbox.mark_blocked(tx, outgoing.chat_id, at=now)
                    self._on_blocked(tx, outgoing.chat_id, now)
                case Meaning.MOVED:
                    self._moved(tx, outgoing, fault)
                case Meaning.REFUSED:
                    log.error("the platform refused outbox row %d: %s", outgoing.id, fault.detail)
                    outbox.mark_refused(tx, outgoing.id, at=now, fault=fault.detail)

    def _later(self, tx: Session, outgoing: Outgoing, fault: Fault) -> None:
        wait_s = fault.retry_after_s or min(2.0 ** (outgoing.attempts - 1), LONGEST_WAIT_S)
        until = self._clock.now() + timedelta(seconds=wait_s)
        outbox.put_back(tx, outgoing.id, not_before=until, is_doubtful=False, fault=fault.detail)
        outbox.hold_chat(tx, outgoing.chat_id, until=until)

    def _in_doubt(
        self, tx: Session, outgoing: Outgoing, detail: str, *, crashed: bool = False
    ) -> None:
        """The platform may have accepted it; the kind of message decides what is worse."""
        now = self._clock.now()
        again = (
            outgoing.operation is Operation.EDIT
            or outgoing.kind.is_sent_again_in_doubt
            or crashed
            or (
                outgoing.attempts < DOUBTFUL_ATTEMPTS
                and not has_spoken_since(tx, outgoing.chat_id, since=outgoing.created_at)
            )
        )
        if not again:
            outbox.mark_dropped(tx, outgoing.id, at=now, fault=f"in doubt: {detail}")
            return
        wait_s = 0.0 if crashed else min(2.0 ** (outgoing.attempts - 1), LONGEST_WAIT_S)
        until = now + timedelta(seconds=wait_s)
        outbox.put_back(tx, outgoing.id, not_before=until, is_doubtful=True, fault=detail)

    def _moved(self, tx: Session, outgoing: Outgoing, fault: Fault) -> None:
        if fault.new_chat_id is not None:
            outbox.move_chat(tx, old_chat_id=outgoing.chat_id, new_chat_id=fault.new_chat_id)
        outbox.put_back(
            tx, outgoing.id, not_before=self._clock.now(), is_doubtful=False, fault="moved"
        )
