"""What strikes every minute while the bot runs: the one user of the scheduling library."""

import logging
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime, timedelta

from apscheduler.schedulers.asyncio import AsyncIOScheduler
from apscheduler.triggers.interval import IntervalTrigger

from scheduler.calendar.clocks import Clock

log = logging.getLogger(__name__)

MINUTE = timedelta(minutes=1)  # [min] ch: how often the calendar is asked what is due

Tick = Callable[[datetime], Awaitable[None] | None]


class Ticker:
    """Calls ``tick(now)`` at the start and then at each interval, one at a time.

    What was missed while a tick ran, or the machine slept, comes as one tick: the calendar
    finds all that is due by then. A tick that fails is logged by the type of its fault, without
    what the fault says, and the next one comes all the same.
    """

    def __init__(
        self,
        tick: Tick,
        *,
        clock: Clock,
        every: timedelta = MINUTE,
        on_fault: Callable[[Exception], None] | None = None,
    ) -> None:
        """Keep what to call; ``on_fault`` hears of a failed tick in place of the log."""
        self._tick = tick
        self._clock = clock
        self._every = every
        self._on_fault = on_fault or _log_fault
        self._is_running = False
        self._is_stopping = False
        self._scheduler = AsyncIOScheduler(timezone=UTC)

    def start(self) -> None:
        """Begin in the running loop, with a tick at once."""
        self._scheduler.add_job(
            self._run,
            IntervalTrigger(seconds=self._every.total_seconds(), timezone=UTC),
            id="tick",
            next_run_time=datetime.now(UTC),
            coalesce=True,
            misfire_grace_time=None,
            max_instances=1,
        )
        self._scheduler.start()

    def stop(self) -> None:
        """Begin no other tick; one that has begun comes to its end."""
        self._is_stopping = True
        self._scheduler.pause()
        if not self._is_running:
            self._scheduler.shutdown(wait=False)

    async def _run(self) -> None:
        """Do one tick, whatever comes of it."""
        self._is_running = True
        try:
            done = self._tick(self._clock.now())
            if done is not None:
                await done
        except Exception as fault:  # noqa: BLE001 (one failed round never stops the rest)
            self._on_fault(fault)
        finally:
            self._is_running = False
            if self._is_stopping:
                self._scheduler.shutdown(wait=False)


def _log_fault(fault: Exception) -> None:
    log.error("A tick failed: %s", type(fault).__name__)
