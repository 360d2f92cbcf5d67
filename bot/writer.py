"""The one loop that changes anything: what arrived, in order, and what the clock says is due."""

import asyncio
import logging
import traceback
from collections.abc import Callable, Collection, Iterator, Sequence
from datetime import datetime
from typing import Protocol

from sqlmodel import Session

from bot.events import Event
from scheduler.calendar.clocks import Clock
from storage import inbox
from storage.database import Database
from storage.records.wire import Received

log = logging.getLogger(__name__)

GROUP = 8  # [updates] ch: share one commit; the first of them waits for the eighth, some 30 ms
BATCH = 48  # [updates] ch: handled before the loop looks whether a tick is due

ReadEvent = Callable[[Received], Event]
HandleEvent = Callable[[Session, Event, datetime], str]
TellSetAside = Callable[[Session, Received, datetime, str], None]
Tick = Callable[[Callable[[], datetime]], Iterator[None]]
"""Begins a round: asked the time at each step, it pauses behind each person."""


class Files(Protocol):
    """What updates may need before they can be handled: files that are on their way."""

    @property
    def held_chats(self) -> Collection[int]:
        """Return the chats that wait for one."""
        ...

    def ready(self, tx: Session, waiting: Sequence[Received]) -> Sequence[Received]:
        """Return what can be handled now."""
        ...


class NoFiles:
    """Nothing is fetched, and nothing waits for it."""

    held_chats: Collection[int] = ()

    def ready(self, _tx: Session, waiting: Sequence[Received]) -> Sequence[Received]:
        """Return everything."""
        return waiting


class Writer:
    """Handles stored updates one at a time, each in one transaction, and runs the ticks."""

    def __init__(
        self,
        *,
        database: Database,
        clock: Clock,
        read: ReadEvent,
        handle: HandleEvent,
        tell_set_aside: TellSetAside,
        tick: Tick,
        on_written: Callable[[], None],
        files: Files | None = None,
    ) -> None:
        """Keep what is needed; ``on_written`` wakes the sender."""
        self._database = database
        self._clock = clock
        self._read = read
        self._handle = handle
        self._tell_set_aside = tell_set_aside
        self._tick = tick
        self._on_written = on_written
        self._files: Files = files or NoFiles()
        self._wake = asyncio.Event()
        self._tick_asked = False
        self._busy = False
        self.on_committed: Callable[[Sequence[Received]], None] = _nobody_watches

    def wake(self) -> None:
        """Something was stored in the inbox."""
        self._wake.set()

    def ask_tick(self) -> None:
        """The clock struck; the round runs in this loop, and updates between two persons of it."""
        self._tick_asked = True
        self._wake.set()

    @property
    def is_idle(self) -> bool:
        """True when nothing waits and nothing is being done."""
        return not self._busy and not self._wake.is_set()

    async def run(self) -> None:
        """Work until cancelled."""
        while True:
            self._wake.clear()
            self._busy = True
            while await self.work():
                pass
            self._busy = False
            await self._wake.wait()

    async def work(self) -> bool:
        """Do one batch and one round if asked; False when there was nothing to do."""
        handled = await self._handle_waiting()
        is_tick = self._tick_asked
        if is_tick:
            self._tick_asked = False
            await self._run_round()
        return handled > 0 or is_tick

    async def _handle_waiting(self) -> int:
        """Handle one batch of what waits, and return how many were looked at."""
        with self._database.transaction() as tx:
            waiting = inbox.next_waiting(tx, most=BATCH, but_chats=self._files.held_chats)
            ready = self._files.ready(tx, waiting)
        for start in range(0, len(ready), GROUP):
            self._handle_group(ready[start : start + GROUP])
            self._on_written()
            await asyncio.sleep(0)  # the senders and the poll get their turn
        return len(waiting)

    async def _run_round(self) -> None:
        """Run a round person by person; who wrote meanwhile is answered before the next one."""
        steps = self._tick(self._clock.now)
        while self._is_stepped(steps):
            self._on_written()
            await asyncio.sleep(0)
            if self._wake.is_set():
                self._wake.clear()
                if await self._handle_waiting() == BATCH:
                    self._wake.set()  # more may wait: looked at again behind the next person
        self._on_written()

    def _is_stepped(self, steps: Iterator[None]) -> bool:
        """Go one person on; False at the end of the round, or where it failed as a whole."""
        try:
            next(steps)
        except StopIteration:
            return False
        except Exception as fault:  # noqa: BLE001 (what is due stays due for the next round)
            log_fault("tick", fault)
            return False
        return True

    def _handle_group(self, group: Sequence[Received]) -> None:
        """Handle a few updates that wait together, with one write to the disk for all of them.

        Each has a savepoint of its own: what it did and that it is handled stand or fall as one.
        A kill before the commit undoes the whole group, which then waits as before.
        """
        with self._database.transaction() as tx:
            for received in group:
                self._handle_one(tx, received)
        self.on_committed(group)

    def _handle_one(self, tx: Session, received: Received) -> None:
        """Handle one update, trying again at once: its chat's order holds, nobody waits long."""
        now = self._clock.now()
        reference = f"F{received.id}"
        for _ in range(inbox.ATTEMPTS_BEFORE_SET_ASIDE):
            try:
                event = self._read(received)
                with tx.begin_nested():
                    outcome = self._handle(tx, event, now)
                    inbox.mark_handled(tx, received.id, at=now, outcome=outcome)
            except Exception as fault:  # noqa: BLE001 (one update's fault never stops the rest)
                log_fault(reference, fault)
                if self._is_set_aside(tx, received, now, reference):
                    return
            else:
                return

    def _is_set_aside(self, tx: Session, received: Received, now: datetime, reference: str) -> bool:
        """Count the fault; the last one sets the update aside and tells so as one."""
        try:
            with tx.begin_nested():
                is_aside = inbox.note_fault(tx, received.id, at=now, reference=reference)
                if is_aside:
                    self._tell_set_aside(tx, received, now, reference)
        except Exception as fault:  # noqa: BLE001 (the raw text stays in the inbox)
            log_fault(f"{reference}-untold", fault)
            with tx.begin_nested():
                is_aside = inbox.note_fault(tx, received.id, at=now, reference=reference)
        return is_aside


def _nobody_watches(_group: Sequence[Received]) -> None:
    """A stopwatch may stand here; nothing else needs to know."""


def log_fault(reference: str, fault: BaseException) -> None:
    """Log where a fault happened, without what anybody wrote: its message may quote a text."""
    frames = traceback.extract_tb(fault.__traceback__)[-4:]
    places = " < ".join(
        f"{frame.filename.rsplit('/', 1)[-1]}:{frame.lineno}" for frame in reversed(frames)
    )
    log.error("%s: %s at %s", reference, type(fault).__name__, places)
