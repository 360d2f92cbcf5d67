"""We keep the platform's limits by ourselves, so that it never has to tell us.

PUBLISHED botapi (bots FAQ): about 30 messages a second in all, about one a second in a chat with
short bursts let through. CHOSEN: our own burst in a chat, three.
"""

from bisect import bisect_right
from datetime import UTC, datetime, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.wire.pace import Pace
from demo_scenario.loopback.limits import RateLimits
from tests.wire.stage import START, on_wire

SECOND = timedelta(seconds=1)


def most_within(times, window) -> int:
    """Return the most instants that any window of this length holds."""
    ordered = sorted(times)
    return max(
        number - bisect_right(ordered, at - window) for number, at in enumerate(ordered, start=1)
    )


@on_wire
async def test_a_burst_of_300_messages_to_100_chats_keeps_both_limits_and_meets_no_429(wire):
    people = [wire.server.people.add(5000 + number, f"P{number}") for number in range(100)]
    for number in range(300):
        wire.put(str(number), to=people[number % 100].chat_id)
    wire.start(wire.sender)
    await wire.pass_time(12)
    calls = wire.platform.requests.of("sendMessage")
    assert {call.status for call in calls} == {200}
    assert len(calls) == 300
    assert most_within([call.at for call in calls], SECOND) <= 30  # PUBLISHED botapi
    for person in people:
        times = [call.at for call in calls if call.params["chat_id"] == str(person.chat_id)]
        assert len(times) == 3
        assert most_within(times, SECOND) <= 3  # CHOSEN burst
    # DERIVED: 300 messages at 30 a second take 10 s; the bucket's beginning costs below 1 s
    assert max(call.at for call in calls) <= START + timedelta(seconds=11)


@on_wire
async def test_one_chat_gets_a_short_burst_and_then_one_a_second(wire):
    for number in range(20):
        wire.put(str(number))
    wire.start(wire.sender)
    await wire.pass_time(25)
    times = [call.at for call in wire.platform.requests.of("sendMessage")]
    assert len(times) == 20
    assert most_within(times, SECOND) <= 3  # CHOSEN burst
    # PUBLISHED botapi: one a second; DERIVED: 10 s hold 10, and the burst of 3
    assert most_within(times, 10 * SECOND) <= 13
    assert {call.status for call in wire.platform.requests.of("sendMessage")} == {200}


@on_wire
async def test_a_burst_in_one_chat_delays_no_other(wire):
    for number in range(20):
        wire.put(str(number))
    wire.start(wire.sender)
    await wire.pass_time(2)
    written_at = wire.clock.now()
    other = wire.put("other", to=wire.bruno.chat_id)
    await wire.pass_time(1)
    assert wire.out(other).sent_at - written_at < timedelta(milliseconds=100)  # CHOSEN


@on_wire
async def test_a_process_that_has_just_begun_does_not_spend_what_the_last_one_spent(wire):
    """PUBLISHED botapi: one a second in a chat; five restarts in a second must not multiply it."""
    for number in range(10):
        wire.put(str(number))
    for _ in range(5):
        wire.sender = wire.new_sender()
        wire.start(wire.sender)
        await wire.pass_time(0.2)
        await wire.stop()
    calls = wire.platform.requests.of("sendMessage")
    assert {call.status for call in calls} == {200}


@settings(max_examples=60, deadline=None)
@given(
    chats=st.lists(st.integers(1, 12), min_size=1, max_size=150),
    ways_ms=st.lists(st.integers(0, 300), min_size=150, max_size=150),
)
def test_messages_that_bunch_up_on_their_way_still_fit(chats, ways_ms):
    """Each is up to 0.3 s (CHOSEN) on its way; the platform's buckets refuse none of them."""
    pace, now = Pace(), datetime(2026, 3, 2, 7, tzinfo=UTC)
    arrivals = []
    for chat, way_ms in zip(chats, ways_ms, strict=False):
        while pace.room(now=now) < 1:
            now = pace.next_room_at(now=now)
        now = pace.busy_chats(now=now).get(chat, now)
        while pace.room(now=now) < 1:
            now = pace.next_room_at(now=now)
        pace.spend(chat, now=now)
        arrivals.append((now + timedelta(milliseconds=way_ms), chat))
    limits = RateLimits()
    assert [limits.retry_after_s(chat, at) for at, chat in sorted(arrivals)] == [0] * len(arrivals)


def test_a_clock_that_goes_back_gives_nothing():
    pace, now = Pace(), datetime(2026, 3, 2, 7, tzinfo=UTC)
    pace.spend(1, now=now)
    assert pace.busy_chats(now=now - timedelta(hours=1))[1] > now - timedelta(hours=1)
    assert pace.room(now=now - timedelta(hours=1)) == 0


def test_pace_that_is_off_lets_everything_through():
    pace, now = Pace(is_on=False), datetime(2026, 3, 2, 7, tzinfo=UTC)
    for _ in range(500):
        pace.spend(1, now=now)
    assert pace.room(now=now) > 100
    assert pace.busy_chats(now=now) == {}
