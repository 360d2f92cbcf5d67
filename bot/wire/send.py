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
        self._tasks: dict[asyncio.Task[None], Outgoing] = {}
        self._unsettled: list[Outgoing] = []

    def wake(self) -> None:
        """Something was written to the outbox."""
        self._wake.set()

    @property
    def is_idle(self) -> bool:
        """True when nothing is in flight and nothing new was announced."""
        return not self._tasks and not self._unsettled and not self._wake.is_set()

    def recover(self) -> int:
        """Put back what was in flight when the process ended, marked as doubtful."""
        with self._database.transaction() as tx:
            lost = outbox.in_flight(tx)
            for outgoing in lost:
                self._again_in_doubt(tx, outgoing, "process ended", wait_s=0.0)
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
        """Start what may leave now; return when to look again, None to be woken."""
        now = self._clock.now()
        self._settle_strays(now)
        room = min(IN_FLIGHT - len(self._tasks), self._pace.room(now=now))
        if room <= 0:
            return None if self._tasks else self._pace.next_room_at(now=now)
        with self._database.transaction() as tx:
            claimed = outbox.claim_due(tx, now=now, most=room)
            leaving = [outgoing for outgoing in claimed if self._may_leave(tx, outgoing, now)]
            later = None if leaving else outbox.next_due_at(tx, after=now)
        for outgoing in leaving:
            task = asyncio.create_task(self._deliver(outgoing))
            self._tasks[task] = outgoing
            task.add_done_callback(self._finished)
        # A full claim that only met chats that must wait has hidden others that need not.
        return now if claimed and not leaving and len(claimed) == room else later

    def _may_leave(self, tx: Session, outgoing: Outgoing, now: datetime) -> bool:
        free_at = self._pace.chat_free_at(outgoing.chat_id, now=now)
        if free_at > now:
            outbox.give_back(tx, outgoing.id, not_before=free_at)
            return False
        self._pace.spend(outgoing.chat_id, now=now)
        return True

    def _finished(self, task: asyncio.Task[None]) -> None:
        outgoing = self._tasks.pop(task)
        self._wake.set()
        if not task.cancelled() and (fault := task.exception()) is not None:
            log.error("outbox row %d was not settled: %s", outgoing.id, type(fault).__name__)
            self._unsettled.append(outgoing)

    def _settle_strays(self, now: datetime) -> None:
        """A send whose end could not be written down is in doubt; its chat must not wait for it."""
        if not self._unsettled:
            return
        with self._database.transaction() as tx:
            for outgoing in self._unsettled:
                self._in_doubt(tx, outgoing, "not settled", since=now)
        self._unsettled.clear()

    async def _deliver(self, outgoing: Outgoing) -> None:
        now = self._clock.now()
        if outgoing.useful_until is not None and outgoing.useful_until < now:
            with self._database.transaction() as tx:
                outbox.mark_dropped(tx, outgoing.id, at=now, fault="too late to be useful")
            return
        try:
            message_id = await perform(self._bot, outgoing)
        except TelegramError as error:
            self._failed(outgoing, understand(error), since=now)
        except Exception as error:  # noqa: BLE001 (one row's fault never stops the others)
            fault = Fault(meaning=Meaning.REFUSED, detail=type(error).__name__)
            self._failed(outgoing, fault, since=now)
        else:
            with self._database.transaction() as tx:
                outbox.mark_sent(tx, outgoing.id, at=self._clock.now(), message_id=message_id)

    def _failed(self, outgoing: Outgoing, fault: Fault, *, since: datetime) -> None:
        now = self._clock.now()
        with self._database.transaction() as tx:
            match fault.meaning:
                case Meaning.DONE_ALREADY:
                    outbox.mark_sent(tx, outgoing.id, at=now, message_id=outgoing.edits_message_id)
                case Meaning.WAIT | Meaning.TRY_LATER | Meaning.OPERATOR:
                    self._later(tx, outgoing, fault)
                case Meaning.IN_DOUBT:
                    self._in_doubt(tx, outgoing, fault.detail, since=since)
                case Meaning.BLOCKED:
                    outbox.mark_blocked(tx, outgoing.chat_id, at=now)
                    self._on_blocked(tx, outgoing.chat_id, now)
                case Meaning.MOVED:
                    self._moved(tx, outgoing, fault)
                case Meaning.REFUSED:
                    log.error("the platform refused outbox row %d: %s", outgoing.id, fault.detail)
                    outbox.mark_refused(tx, outgoing.id, at=now, fault=fault.detail)

    def _later(self, tx: Session, outgoing: Outgoing, fault: Fault) -> None:
        until = self._clock.now() + timedelta(seconds=fault.retry_after_s or _pause_s(outgoing))
        outbox.put_back(tx, outgoing.id, not_before=until, is_doubtful=False, fault=fault.detail)
        outbox.hold_chat(tx, outgoing.chat_id, until=until)

    def _in_doubt(self, tx: Session, outgoing: Outgoing, detail: str, *, since: datetime) -> None:
        """The platform may have accepted it; the kind of message decides what is worse.

        Whoever has spoken since ``since``, when this attempt began, has probably seen it.
        """
        is_sent_again = (
            outgoing.operation is Operation.EDIT
            or outgoing.kind.is_sent_again_in_doubt
            or not (outgoing.is_doubtful or has_spoken_since(tx, outgoing.chat_id, since=since))
        )
        if is_sent_again:
            self._again_in_doubt(tx, outgoing, detail, wait_s=_pause_s(outgoing))
        else:
            now = self._clock.now()
            outbox.mark_dropped(tx, outgoing.id, at=now, fault=f"in doubt: {detail}")

    def _again_in_doubt(
        self, tx: Session, outgoing: Outgoing, detail: str, *, wait_s: float
    ) -> None:
        until = self._clock.now() + timedelta(seconds=wait_s)
        outbox.put_back(tx, outgoing.id, not_before=until, is_doubtful=True, fault=detail)

    def _moved(self, tx: Session, outgoing: Outgoing, fault: Fault) -> None:
        if fault.new_chat_id is not None:
            outbox.move_chat(tx, old_chat_id=outgoing.chat_id, new_chat_id=fault.new_chat_id)
        outbox.put_back(
            tx, outgoing.id, not_before=self._clock.now(), is_doubtful=False, fault="moved"
        )


def _pause_s(outgoing: Outgoing) -> float:
    """Return how long to wait before the next attempt: doubled each time, up to a bound."""
    return min(2.0 ** min(outgoing.attempts - 1, 10), LONGEST_WAIT_S)
