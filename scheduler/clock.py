"""The real clock: it tells the time, and strikes every minute. Nothing else reads it."""

import asyncio
import logging
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime, timedelta

from apscheduler.schedulers.asyncio import AsyncIOScheduler
from apscheduler.triggers.interval import IntervalTrigger

from scheduler.calendar.clocks import Clock, aware, event_or

log = logging.getLogger(__name__)

MINUTE = timedelta(minutes=1)  # [min] ch: how often the calendar is asked what is due

LONGEST_SLEEP_S = 60.0  # [s] ch: then the time is read again, in case the machine's clock was set

Tick = Callable[[datetime], Awaitable[None] | None]


class SystemClock:
    """The machine's own clock."""

    def now(self) -> datetime:
        """Return the instant, aware, in UTC."""
        return datetime.now(UTC)

    async def sleep(self, seconds: float) -> None:
        """Wait so many seconds."""
        await asyncio.sleep(seconds)

    async def sleep_until(self, instant: datetime) -> None:
        """Wait until an instant, also when the machine's clock is set meanwhile."""
        left_s = (aware(instant) - self.now()).total_seconds()
        await asyncio.sleep(0)
        while left_s > 0:
            await asyncio.sleep(min(left_s, LONGEST_SLEEP_S))
            left_s = (instant - self.now()).total_seconds()

    async def wait(self, event: asyncio.Event, until: datetime | None) -> bool:
        """Wait for an event, at most until an instant; True when it was the event."""
        if until is None:
            return await event.wait()
        return await event_or(asyncio.ensure_future(self.sleep_until(until)), event)


class Ticks:
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
        self._idle = asyncio.Event()
        self._idle.set()
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

    async def stop(self) -> None:
        """Begin no other tick, and let one that has begun come to its end."""
        self._scheduler.pause()
        await self._idle.wait()
        self._scheduler.shutdown(wait=False)
        await asyncio.sleep(0)  # the shutdown itself happens in the loop's next turn

    async def _run(self) -> None:
        """Do one tick, whatever comes of it."""
        self._idle.clear()
        try:
            done = self._tick(self._clock.now())
            if done is not None:
                await done
        except Exception as fault:  # noqa: BLE001 (one failed round never stops the rest)
            self._on_fault(fault)
        finally:
            self._idle.set()


def _log_fault(fault: Exception) -> None:
    log.error("A tick failed: %s", type(fault).__name__)
