"""Made clocks wake sleepers in time order and never look at the real one."""

import asyncio
import time as real_time
from datetime import datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.calendar.clocks import ScaledClock, SimulatedClock, strike
from scheduler.clock import SystemClock
from tests.calendar.people import utc

START = utc("2026-06-01 07:00")
MINUTE = timedelta(minutes=1)


def test_sleepers_wake_in_time_order_each_at_its_instant():
    async def play():
        clock, woken = SimulatedClock(START), []

        async def sleeper(name, minutes):
            await clock.sleep(60 * minutes)
            woken.append((name, clock.now()))

        tasks = [asyncio.create_task(sleeper(n, m)) for n, m in (("c", 3), ("a", 1), ("b", 2))]
        await clock.advance_to(START + 2 * MINUTE)
        assert woken == [("a", START + MINUTE), ("b", START + 2 * MINUTE)]
        assert clock.next_wake() == START + 3 * MINUTE
        await clock.advance_to(START + 5 * MINUTE)
        assert woken[2] == ("c", START + 3 * MINUTE)
        assert clock.now() == START + 5 * MINUTE
        assert clock.next_wake() is None
        await asyncio.gather(*tasks)

    asyncio.run(play())


def test_who_sleeps_again_is_woken_again_within_one_advance():
    async def play():
        clock, times = SimulatedClock(START), []

        async def often():
            for _ in range(4):
                await clock.sleep(60)
                times.append(clock.now())

        task = asyncio.create_task(often())
        await clock.advance_to(START + timedelta(hours=1))
        assert times == [START + n * MINUTE for n in (1, 2, 3, 4)]
        await task

    asyncio.run(play())


def test_a_year_of_simulated_time_takes_no_real_time():
    async def play():
        clock = SimulatedClock(START)
        task = asyncio.create_task(clock.sleep_until(START + timedelta(days=365)))
        await clock.advance_to(START + timedelta(days=366))
        assert task.done()

    before = real_time.monotonic()
    asyncio.run(play())
    assert real_time.monotonic() - before < 3600  # CHOSEN, wide: a real wait would take a year


def test_a_simulated_clock_does_not_go_back():
    async def play():
        with pytest.raises(ValueError, match="does not go back"):
            await SimulatedClock(START).advance_to(START - MINUTE)

    asyncio.run(play())


def test_a_cancelled_sleeper_is_forgotten():
    async def play():
        clock = SimulatedClock(START)
        task = asyncio.create_task(clock.sleep(60))
        await asyncio.sleep(0)
        assert clock.next_wake() == START + MINUTE
        task.cancel()
        await asyncio.gather(task, return_exceptions=True)
        assert clock.next_wake() is None
        await clock.advance_to(START + 2 * MINUTE)

    asyncio.run(play())


def test_the_clock_waits_until_those_it_woke_have_settled():
    async def play():
        done = []

        async def settle():
            for _ in range(200):  # CHOSEN: more turns than the clock gives by itself
                await asyncio.sleep(0)

        clock = SimulatedClock(START, settle=settle)

        async def slow(name, minutes):
            await clock.sleep(60 * minutes)
            for _ in range(100):
                await asyncio.sleep(0)
            done.append((name, clock.now()))

        tasks = [asyncio.create_task(slow(*who)) for who in (("a", 1), ("b", 2))]
        await clock.advance_to(START + 3 * MINUTE)
        assert done == [("a", START + MINUTE), ("b", START + 2 * MINUTE)]
        await asyncio.gather(*tasks)

    asyncio.run(play())


@pytest.mark.parametrize("is_set", [True, False])
def test_waiting_ends_by_the_event_or_by_the_clock(is_set):
    async def play():
        clock, event = SimulatedClock(START), asyncio.Event()
        task = asyncio.create_task(clock.wait(event, START + 10 * MINUTE))
        await clock.advance_to(START + 5 * MINUTE)
        assert not task.done()
        if is_set:
            event.set()
        await clock.advance_to(START + 10 * MINUTE)
        assert await task is is_set
        assert clock.next_wake() is None

    asyncio.run(play())


def test_waiting_without_an_end_ends_by_the_event_alone():
    async def play():
        clock, event = SimulatedClock(START), asyncio.Event()
        task = asyncio.create_task(clock.wait(event, None))
        await clock.advance_to(START + timedelta(days=400))
        assert not task.done()
        event.set()
        assert await task is True

    asyncio.run(play())


def test_waiting_until_the_past_returns_what_the_event_is():
    async def play():
        clock, event = SimulatedClock(START), asyncio.Event()
        assert await clock.wait(event, START) is False
        event.set()
        assert await clock.wait(event, START) is True

    asyncio.run(play())


def test_strikes_come_at_once_and_at_each_interval_and_do_not_pile_up():
    async def play():
        clock, struck = SimulatedClock(START), []

        async def tick(now):
            struck.append((now - START) // MINUTE)
            if len(struck) == 2:
                await clock.sleep(150)  # CHOSEN: two and a half intervals

        task = asyncio.create_task(strike(clock, every=MINUTE, tick=tick))
        await clock.advance_to(START + 6 * MINUTE)
        # DERIVED: the tick of minute 1 ends at 3.5; the next whole interval is 4
        assert struck == [0, 1, 4, 5, 6]
        task.cancel()
        await asyncio.gather(task, return_exceptions=True)

    asyncio.run(play())


def test_a_scaled_clock_reads_the_same_after_a_restart():
    async def play():
        real = SimulatedClock(utc("2030-01-01 00:00"))
        origin = real.now()

        def process():
            return ScaledClock(real, real_origin=origin, origin=START, rate=600.0)

        first = process()
        await real.advance_to(origin + timedelta(seconds=6))
        # DERIVED: 6 s at 600 times is one hour
        assert first.now() == START + timedelta(hours=1)
        assert process().now() == first.now()

    asyncio.run(play())


def test_nobody_wakes_before_their_scaled_time():
    async def play():
        real = SimulatedClock(utc("2030-01-01 00:00"))
        clock = ScaledClock(real, real_origin=real.now(), origin=START, rate=7000.0)
        target = START + timedelta(seconds=1234.567)
        task = asyncio.create_task(clock.sleep_until(target))
        event = asyncio.Event()
        waiting = asyncio.create_task(clock.wait(event, target))
        await real.advance_to(real.now() + timedelta(seconds=0.17))
        assert not task.done()  # DERIVED: 0.17 s x 7000 = 1190 s, before 1234.567
        woken = real.next_wake()
        assert woken is not None
        await real.advance_to(woken)
        assert task.done()
        assert clock.now() >= target
        assert await waiting is False

    asyncio.run(play())


@settings(max_examples=100, deadline=None)
@given(
    rate=st.floats(min_value=0.5, max_value=20000),
    ahead_us=st.integers(min_value=1, max_value=10**12),
)
def test_whatever_the_rate_who_is_woken_reads_at_least_the_instant_asked_for(rate, ahead_us):
    async def play():
        real = SimulatedClock(utc("2030-01-01 00:00"))
        clock = ScaledClock(real, real_origin=real.now(), origin=START, rate=rate)
        target = START + timedelta(microseconds=ahead_us)
        task = asyncio.create_task(clock.sleep_until(target))
        await asyncio.sleep(0)
        woken = real.next_wake()
        assert woken is not None
        await real.advance_to(woken)
        assert task.done()
        assert clock.now() >= target
        # DERIVED: at most two real microseconds too late, in scaled time
        assert clock.now() - target <= timedelta(microseconds=2 * rate + 2)

    asyncio.run(play())


def test_a_scaled_clock_runs_forward():
    with pytest.raises(ValueError, match="above 0"):
        ScaledClock(SystemClock(), real_origin=START, origin=START, rate=0)


@pytest.mark.parametrize("make", [SimulatedClock, lambda at: SimulatedClock(START).sleep_until(at)])
def test_an_instant_without_a_zone_is_refused(make):
    async def play():
        made = make(datetime(2026, 1, 1))  # noqa: DTZ001 (the mistake under test)
        if asyncio.iscoroutine(made):
            await made

    with pytest.raises(ValueError, match="needs a zone"):
        asyncio.run(play())


def test_the_machine_s_clock_sleeps_and_wakes_by_the_event():
    async def play():
        clock, event = SystemClock(), asyncio.Event()
        target = clock.now() + timedelta(milliseconds=20)
        await clock.sleep_until(target)
        assert clock.now() >= target
        await clock.sleep_until(target)  # past: returns
        assert await clock.wait(event, clock.now() + timedelta(milliseconds=10)) is False
        asyncio.get_running_loop().call_later(0.01, event.set)
        assert await clock.wait(event, clock.now() + timedelta(seconds=30)) is True
        assert clock.now().utcoffset() == timedelta(0)

    asyncio.run(play())
