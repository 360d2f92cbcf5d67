"""Sending: each chat in order, several chats at once, and every outcome written down."""

import asyncio
import logging
from collections.abc import Callable
from datetime import datetime, timedelta
from functools import partial
from typing import Any

from sqlmodel import Session
from telegram import Bot
from telegram.error import TelegramError

from bot.pictures.studio import Studio
from bot.wire.faults import Fault, Meaning, understand
from bot.wire.fetch import fetch
from bot.wire.pace import Pace
from bot.wire.requests import MakeFile, Performed, perform
from scheduler.calendar.clocks import Clock
from storage import outbox
from storage.database import Database
from storage.inbox import has_spoken_since, store_updates
from storage.records.wire import Operation, Outgoing

log = logging.getLogger(__name__)

IN_FLIGHT = 16  # [requests] measured: more slows the stock transport's connection pool
LONGEST_WAIT_S = 60.0  # [s] ch: between attempts while the platform is failing

BlockedHook = Callable[[Session, int, datetime], None]
RefusedHook = Callable[[Session, Outgoing, datetime], None]
Ending = Callable[[Session], None]


def _nobody_waits() -> None:
    """Nothing is fetched where nobody waits for it."""


class Sender:
    """Claims what is due, sends it, and decides what a failure means for it.

    How sends ended is written down together with the next claim, in one transaction: a crash in
    between leaves them in doubt, as it would have a moment earlier.
    """

    def __init__(
        self,
        *,
        database: Database,
        bot: Bot,
        clock: Clock,
        pace: Pace,
        on_blocked: BlockedHook,
        on_refused: RefusedHook,
        on_fetched: Callable[[], None] = _nobody_waits,
        make_file: MakeFile | None = None,
        studio: Studio | None = None,
    ) -> None:
        """Keep what is needed; the hooks tell whom it concerns, in the same transaction.

        ``on_fetched`` wakes the writer: a file that was asked for is in the inbox.
        ``make_file`` makes, in a thread, the files that are not made before they leave.
        """
        self._studio = studio or Studio()
        self._database = database
        self._bot = bot
        self._clock = clock
        self._pace = pace
        self._on_blocked = on_blocked
        self._on_refused = on_refused
        self._on_fetched = on_fetched
        self._make_file = make_file
        self._wake = asyncio.Event()
        self._tasks: dict[asyncio.Task[Ending], Outgoing] = {}
        self._ended: list[tuple[Outgoing, Ending]] = []

    def wake(self) -> None:
        """Something was written to the outbox."""
        self._wake.set()

    @property
    def is_idle(self) -> bool:
        """True when nothing is in flight, all is written down and nothing new was announced."""
        return not self._tasks and not self._ended and not self._wake.is_set()

    @property
    def is_drawing(self) -> bool:
        """True while a picture is drawn or sent: that takes time of the real clock."""
        return any(outgoing.operation.is_drawn for outgoing in self._tasks.values())

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
        """Wait for what is in flight and write down how it ended; used by a clean stop."""
        try:
            await asyncio.gather(*self._tasks, return_exceptions=True)
        finally:
            self._studio.close()
            with self._database.transaction() as tx:
                self._settle(tx)

    def _launch(self) -> datetime | None:
        """Start what may leave now; return when to look again, None to be woken."""
        now = self._clock.now()
        room = min(IN_FLIGHT - self._in_flight(), self._pace.room(now=now))
        if room <= 0 and not self._ended:
            return self._look_again_at(None, now)
        with self._database.transaction() as tx:
            self._settle(tx)
            leaving = self._claim(tx, now, room) if room > 0 else []
            later = outbox.next_due_at(tx, after=now)
        for outgoing in leaving:
            self._pace.spend(outgoing.chat_id, now=now, messages=_messages(outgoing))
            task = asyncio.create_task(self._deliver(outgoing))
            self._tasks[task] = outgoing
            task.add_done_callback(self._finished)
        return self._look_again_at(later, now)

    def _in_flight(self) -> int:
        """Count what is on its way. Pictures are not: they stand in line to be drawn, a moment
        of the transport each, and nobody's reply waits behind them."""
        return sum(not outgoing.operation.is_drawn for outgoing in self._tasks.values())

    def _look_again_at(self, later: datetime | None, now: datetime) -> datetime | None:
        """Return when a wait ends first: a row's own, its chat's, or everybody's."""
        if self._in_flight() >= IN_FLIGHT:
            return None  # the first to end wakes us
        if self._pace.room(now=now) <= 0:
            return self._pace.next_room_at(now=now)
        waits = [*self._pace.busy_chats(now=now).values(), *([later] if later else [])]
        return min(waits, default=None)

    def _claim(self, tx: Session, now: datetime, room: int) -> list[Outgoing]:
        """Lease what may leave now; what has come too late to be useful is dropped."""
        claimed = outbox.claim_due(
            tx, now=now, most=room, but_chats=self._pace.busy_chats(now=now).keys()
        )
        late = [one for one in claimed if one.useful_until is not None and one.useful_until < now]
        for outgoing in late:
            outbox.mark_dropped(tx, outgoing.id, at=now, fault="too late to be useful")
            self._wake.set()  # what waited behind it may leave
        return [outgoing for outgoing in claimed if outgoing not in late]

    def _finished(self, task: asyncio.Task[Ending]) -> None:
        outgoing = self._tasks.pop(task)
        if not task.cancelled():
            self._ended.append((outgoing, task.result()))
        self._wake.set()

    def _settle(self, tx: Session) -> None:
        """Write down how sends ended; a fault of ours leaves its own row in doubt, no other."""
        ended, self._ended = self._ended, []
        for outgoing, ending in ended:
            try:
                with tx.begin_nested():
                    ending(tx)
            except Exception as fault:  # noqa: BLE001 (one row's fault never holds the others)
                log.error("outbox row %d was not settled: %s", outgoing.id, type(fault).__name__)  # noqa: TRY400
                self._in_doubt(tx, outgoing, "not settled", since=self._clock.now())

    async def _deliver(self, outgoing: Outgoing) -> Ending:
        """Make the call, and return how to write down what came of it."""
        began_at = self._clock.now()
        try:
            if outgoing.operation is Operation.FETCH:
                return partial(self._fetched, outgoing, await fetch(self._bot, outgoing))
            performed = await perform(
                self._bot, outgoing, studio=self._studio, make_file=self._make_file
            )
        except TelegramError as error:
            return partial(self._failed, outgoing, understand(error), since=began_at)
        except Exception as error:  # noqa: BLE001 (one row's fault never stops the others)
            fault = Fault(meaning=Meaning.REFUSED, detail=type(error).__name__)
            return partial(self._failed, outgoing, fault, since=began_at)
        return partial(_sent, outgoing, performed, at=self._clock.now())

    def _fetched(self, outgoing: Outgoing, update: dict[str, Any], tx: Session) -> None:
        """Store a file like everything that arrives; the writer takes it in its turn."""
        now = self._clock.now()
        store_updates(tx, [update], received_at=now)
        outbox.mark_sent(tx, outgoing.id, at=now, message_id=None)
        self._on_fetched()

    def _failed(self, outgoing: Outgoing, fault: Fault, tx: Session, *, since: datetime) -> None:
        now = self._clock.now()
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
                self._on_refused(tx, outgoing, now)

    def _later(self, tx: Session, outgoing: Outgoing, fault: Fault) -> None:
        until = self._clock.now() + timedelta(seconds=fault.retry_after_s or _pause_s(outgoing))
        outbox.put_back(tx, outgoing.id, not_before=until, is_doubtful=False, fault=fault.detail)
        outbox.hold_chat(tx, outgoing.chat_id, until=until)

    def _in_doubt(self, tx: Session, outgoing: Outgoing, detail: str, *, since: datetime) -> None:
        """The platform may have accepted it; the kind of message decides what is worse.

        Whoever has spoken since ``since``, when this attempt began, has probably seen it.
        """
        is_sent_again = (
            outgoing.operation in {Operation.EDIT, Operation.FETCH}
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


def _sent(outgoing: Outgoing, performed: Performed, tx: Session, *, at: datetime) -> None:
    """Write down what arrived; words of a picture that was not drawn are said next."""
    outbox.mark_sent(tx, outgoing.id, at=at, message_id=performed.message_id)
    for message_id, subject in performed.further:
        outbox.note_sent(tx, outgoing, message_id=message_id, subject=subject, at=at)
    for words in performed.left_to_say:
        outbox.put(
            tx,
            chat_id=outgoing.chat_id,
            operation=Operation.SEND,
            kind=outgoing.kind,
            payload=words,
            now=at,
            subject=words.get("subject"),
            useful_until=outgoing.useful_until,
        )


def _messages(outgoing: Outgoing) -> int:
    """Return how many messages an operation becomes: an album counts as its pictures."""
    return len(outgoing.payload.get("pictures", ())) or 1


def _pause_s(outgoing: Outgoing) -> float:
    """Return how long to wait before the next attempt: doubled each time, up to a bound."""
    return min(2.0 ** min(outgoing.attempts - 1, 10), LONGEST_WAIT_S)
