"""The clock as everybody knows it: a protocol, and clocks whose time is made."""

import asyncio
import heapq
from collections.abc import Awaitable, Callable
from datetime import datetime, timedelta
from itertools import count
from typing import Any, Protocol

TURNS = 25  # [loop turns] ch: for whoever was woken to get on with it


class Clock(Protocol):
    """Tells the time and waits; the only way to either."""

    def now(self) -> datetime:
        """Return the instant, aware, in UTC."""
        ...

    async def sleep(self, seconds: float) -> None:
        """Wait so many seconds of this clock."""
        ...

    async def sleep_until(self, instant: datetime) -> None:
        """Wait until an instant of this clock; one in the past returns at the next turn."""
        ...

    async def wait(self, event: asyncio.Event, until: datetime | None) -> bool:
        """Wait for an event, at most until an instant; True when it was the event."""
        ...


async def let_others_run() -> None:
    """Give every task that can go on a number of turns."""
    for _ in range(TURNS):
        await asyncio.sleep(0)


async def event_or(sleeper: "asyncio.Future[None]", event: asyncio.Event) -> bool:
    """Wait for whichever comes first; True when it was the event."""
    if event.is_set():
        sleeper.cancel()
        return True
    waker = asyncio.ensure_future(event.wait())
    either: set[asyncio.Future[Any]] = {sleeper, waker}
    try:
        await asyncio.wait(either, return_when=asyncio.FIRST_COMPLETED)
        return waker.done()
    finally:
        sleeper.cancel()
        waker.cancel()


class SimulatedClock:
    """A clock that stands until it is advanced, and never looks at a real one."""

    def __init__(
        self, start: datetime, *, settle: Callable[[], Awaitable[None]] = let_others_run
    ) -> None:
        """Begin at ``start``; ``settle`` returns once those just woken have done their work."""
        self._now = aware(start)
        self._settle = settle
        self._order = count()
        self._sleepers: list[tuple[datetime, int, asyncio.Future[None]]] = []

    def now(self) -> datetime:
        """Return the simulated instant."""
        return self._now

    def next_wake(self) -> datetime | None:
        """Return when the earliest sleeper wakes; None when nobody sleeps."""
        while self._sleepers and self._sleepers[0][2].done():
            heapq.heappop(self._sleepers)
        return self._sleepers[0][0] if self._sleepers else None

    async def advance_to(self, instant: datetime) -> None:
        """Go on to an instant, waking sleepers one by one, in time order, each at its instant."""
        if aware(instant) < self._now:
            raise ValueError(f"A clock does not go back: it is {self._now}, not yet {instant}.")
        await self._settle()
        while (wake := self.next_wake()) is not None and wake <= instant:
            self._now = max(self._now, wake)
            heapq.heappop(self._sleepers)[2].set_result(None)
            await self._settle()
        self._now = instant

    async def sleep(self, seconds: float) -> None:
        """Wait so many simulated seconds."""
        await self.sleep_until(self._now + timedelta(seconds=seconds))

    async def sleep_until(self, instant: datetime) -> None:
        """Wait until the clock is advanced to an instant."""
        if aware(instant) <= self._now:
            await asyncio.sleep(0)
            return
        await self._sleeper(instant)

    async def wait(self, event: asyncio.Event, until: datetime | None) -> bool:
        """Wait for an event, at most until an instant; True when it was the event."""
        if until is None:
            return await event.wait()
        if aware(until) <= self._now:
            await asyncio.sleep(0)
            return event.is_set()
        return await event_or(self._sleeper(until), event)

    def _sleeper(self, instant: datetime) -> "asyncio.Future[None]":
        """Put a sleeper in line."""
        future: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        heapq.heappush(self._sleepers, (instant, next(self._order), future))
        return future


class ScaledClock:
    """A clock that runs ``rate`` times as fast as another, from a fixed pair of origins.

    Given the same origins again, a process started anew reads the time it would have read
    without the interruption.
    """

    def __init__(
        self, real: Clock, *, real_origin: datetime, origin: datetime, rate: float
    ) -> None:
        """At ``real_origin`` of the other clock this one read ``origin``."""
        if rate <= 0:
            raise ValueError("A clock runs forward: the rate must be above 0.")
        self._real = real
        self._real_origin = aware(real_origin)
        self._origin = aware(origin)
        self._rate = rate

    def now(self) -> datetime:
        """Return the scaled instant."""
        return self._origin + (self._real.now() - self._real_origin) * self._rate

    async def sleep(self, seconds: float) -> None:
        """Wait so many seconds of this clock."""
        await self.sleep_until(self.now() + timedelta(seconds=seconds))

    async def sleep_until(self, instant: datetime) -> None:
        """Wait until an instant of this clock."""
        await self._real.sleep_until(self._real_instant(instant))

    async def wait(self, event: asyncio.Event, until: datetime | None) -> bool:
        """Wait for an event, at most until an instant; True when it was the event."""
        return await self._real.wait(event, None if until is None else self._real_instant(until))

    def _real_instant(self, instant: datetime) -> datetime:
        """Return the other clock's instant, rounded up: nobody wakes before their time."""
        elapsed = (aware(instant) - self._origin) / self._rate
        return self._real_origin + elapsed + timedelta(microseconds=1)


async def strike(
    clock: Clock, *, every: timedelta, tick: Callable[[datetime], Awaitable[None] | None]
) -> None:
    """Call ``tick`` at once and then at each interval of a made clock, until cancelled.

    A tick that takes longer than the interval is followed by one, not by all it missed.
    """
    at = clock.now()
    while True:
        done = tick(clock.now())
        if done is not None:
            await done
        at += every * max(1, -(-(clock.now() - at) // every))
        await clock.sleep_until(at)


def aware(instant: datetime) -> datetime:
    """Return the instant, which must have a zone."""
    if instant.utcoffset() is None:
        raise ValueError("An instant needs a zone: give an aware datetime.")
    return instant
