"""The clock strikes at the start and at each interval, one at a time, whatever a tick does.

Intervals are CHOSEN short; the bounds are wide, for a busy machine.
"""

import asyncio
import logging
import time
from datetime import datetime, timedelta

from scheduler.calendar.clocks import SimulatedClock
from scheduler.clock import MINUTE, Ticks
from tests.calendar.people import utc

NOW = utc("2026-06-01 07:00")
SHORT = timedelta(milliseconds=20)


async def until(condition):
    """Wait for something to become true; beyond two minutes something hangs."""
    async with asyncio.timeout(120):
        while not condition():  # noqa: ASYNC110 (what is waited for has no event of its own)
            await asyncio.sleep(0.002)


def test_it_strikes_at_the_start_and_reads_the_given_clock():
    async def play():
        seen: list[datetime] = []
        ticks = Ticks(seen.append, clock=SimulatedClock(NOW))
        ticks.start()
        await until(lambda: seen)
        await ticks.stop()
        assert seen == [NOW]  # one at the start; the next would be a minute later

    assert timedelta(minutes=1) == MINUTE
    asyncio.run(play())


def test_it_strikes_at_each_interval_until_stopped():
    async def play():
        seen, loop = [], asyncio.get_running_loop()
        ticks = Ticks(lambda _: seen.append(loop.time()), clock=SimulatedClock(NOW), every=SHORT)
        ticks.start()
        await until(lambda: len(seen) >= 5)
        await ticks.stop()
        count = len(seen)
        # DERIVED: the fifth strike is four intervals after the first, with half of it as slack
        assert seen[4] - seen[0] >= 4 * 0.02 / 2
        await asyncio.sleep(0.06)
        assert len(seen) == count

    asyncio.run(play())


def test_a_failing_tick_is_logged_without_its_words_and_the_next_one_comes(caplog):
    async def play():
        seen: list[datetime] = []

        def tick(now):
            seen.append(now)
            if len(seen) == 1:
                raise RuntimeError("my wrist hurts, says Ana")

        ticks = Ticks(tick, clock=SimulatedClock(NOW), every=SHORT)
        ticks.start()
        await until(lambda: len(seen) >= 3)
        await ticks.stop()

    with caplog.at_level(logging.WARNING):
        asyncio.run(play())
    assert "RuntimeError" in caplog.text
    assert "wrist" not in caplog.text


def test_a_failing_tick_can_be_heard_of():
    async def play():
        heard: list[Exception] = []

        async def tick(_):
            raise KeyError("x")

        ticks = Ticks(tick, clock=SimulatedClock(NOW), every=SHORT, on_fault=heard.append)
        ticks.start()
        await until(lambda: len(heard) >= 2)
        await ticks.stop()
        assert {type(fault) for fault in heard} == {KeyError}

    asyncio.run(play())


def test_slow_ticks_do_not_pile_up():
    async def play():
        running, most, begun = 0, 0, 0

        async def tick(_):
            nonlocal running, most, begun
            running, begun = running + 1, begun + 1
            most = max(most, running)
            await asyncio.sleep(0.07)  # CHOSEN: more than three intervals
            running -= 1

        ticks = Ticks(tick, clock=SimulatedClock(NOW), every=SHORT)
        ticks.start()
        began_at = asyncio.get_running_loop().time()
        await until(lambda: begun >= 3)
        took_s = asyncio.get_running_loop().time() - began_at
        await ticks.stop()
        assert most == 1
        # DERIVED: so long a time holds that many ticks of 0.07 s, each of them over three intervals
        assert begun <= took_s / 0.07 + 1
        await until(lambda: running == 0)

    asyncio.run(play())


def test_missed_strikes_come_as_one():
    async def play():
        loop = asyncio.get_running_loop()
        seen: list[float] = []

        def tick(_):
            seen.append(loop.time())
            if len(seen) == 1:
                time.sleep(0.1)  # CHOSEN: five intervals with the loop standing still

        ticks = Ticks(tick, clock=SimulatedClock(NOW), every=SHORT)
        ticks.start()
        await until(lambda: len(seen) >= 4)
        await ticks.stop()
        # DERIVED: two ticks after the missed ones are an interval later, not in the same turn
        assert seen[3] - seen[1] > 0.02 / 4

    asyncio.run(play())


def test_a_strike_that_comes_late_is_not_dropped():
    async def play():
        seen: list[datetime] = []
        ticks = Ticks(seen.append, clock=SimulatedClock(NOW))
        ticks.start()
        # PUBLISHED by the library's manual: a job late by more than 1 s is dropped by default
        time.sleep(1.1)  # noqa: ASYNC251 (the loop is blocked on purpose)
        await until(lambda: seen)
        await ticks.stop()

    asyncio.run(play())


def test_a_tick_that_has_begun_comes_to_its_end_before_the_stop_does():
    async def play():
        begun, ended = asyncio.Event(), asyncio.Event()

        async def tick(_):
            begun.set()
            await asyncio.sleep(0.03)
            ended.set()

        ticks = Ticks(tick, clock=SimulatedClock(NOW), every=SHORT)
        ticks.start()
        await begun.wait()
        await ticks.stop()
        assert ended.is_set()

    asyncio.run(play())
