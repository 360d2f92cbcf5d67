"""getUpdates: what an offset confirms, who may poll, what is queued (botapi, getUpdates)."""

import asyncio
import time

import pytest
from telegram.error import Conflict

from tests.loopback.stage import on_stage

POLL_S = 50  # [s] PUBLISHED botapi, getUpdates (from memory): the longest wait


def _ids(updates):
    return [update["update_id"] for update in updates]


async def _four_written(stage):
    for word in ("one", "two", "three", "four"):
        stage.ana.write(word)
    return _ids(await stage.result("getUpdates"))


@on_stage
async def test_without_an_offset_the_same_updates_come_again(stage):
    first = await _four_written(stage)
    assert len(first) == 4  # DERIVED: four were written
    assert _ids(await stage.result("getUpdates")) == first
    assert stage.platform.unconfirmed_updates == 4  # DERIVED: reading confirms nothing


@on_stage
async def test_numbers_follow_one_another_from_a_seeded_start(stage):
    first = await _four_written(stage)
    # PUBLISHED botapi, Update: sequential; DERIVED: start + 0, 1, 2, 3
    assert first == [first[0] + step for step in range(4)]
    assert first[0] > 1  # CHOSEN: random nine digits, never a count from one


@on_stage
async def test_an_offset_confirms_everything_below_it_and_nothing_else(stage):
    first = await _four_written(stage)
    # PUBLISHED botapi, getUpdates: confirmed once called with an offset higher than its number
    assert _ids(await stage.result("getUpdates", offset=first[2])) == first[2:]
    assert stage.platform.unconfirmed_updates == 2  # DERIVED: 4 - 2
    assert _ids(await stage.result("getUpdates", offset=first[0])) == first[2:]
    assert await stage.result("getUpdates", offset=first[3] + 1) == []
    assert stage.platform.unconfirmed_updates == 0


@on_stage
async def test_a_negative_offset_counts_from_the_end_and_forgets_the_rest(stage):
    first = await _four_written(stage)
    # PUBLISHED botapi, getUpdates: -1 starts with the last; all previous are forgotten
    assert _ids(await stage.result("getUpdates", offset=-1)) == first[3:]
    assert _ids(await stage.result("getUpdates")) == first[3:]


@on_stage
async def test_a_negative_offset_beyond_the_start_keeps_all(stage):
    first = await _four_written(stage)
    assert _ids(await stage.result("getUpdates", offset=-9)) == first


@on_stage
async def test_limit_cuts_the_page_and_leaves_the_rest_for_later(stage):
    first = await _four_written(stage)
    assert _ids(await stage.result("getUpdates", limit=3)) == first[:3]
    assert _ids(await stage.result("getUpdates", offset=first[2] + 1)) == first[3:]


@on_stage
async def test_a_page_is_never_longer_than_a_hundred(stage):
    for number in range(105):  # CHOSEN: just above
        stage.ana.write(str(number))
    for limit in (None, 0, 500):
        # PUBLISHED botapi, getUpdates: limit 1 to 100, 100 when left out
        assert len(await stage.result("getUpdates", limit=limit)) == 100


@on_stage
async def test_a_waiting_poll_returns_as_soon_as_something_arrives(stage):
    poll = asyncio.create_task(stage.bot.get_updates(timeout=POLL_S))
    await stage.platform.until(lambda: stage.platform.is_poll_parked)
    started = time.monotonic()
    stage.ana.write("now")
    updates = await poll
    assert time.monotonic() - started < POLL_S - 10  # CHOSEN: well below what was asked for
    assert [update.message.text for update in updates] == ["now"]


@on_stage
async def test_a_waiting_poll_takes_all_that_arrived_together(stage):
    poll = asyncio.create_task(stage.bot.get_updates(timeout=20))
    await stage.platform.until(lambda: stage.platform.is_poll_parked)
    stage.ana.write("one")
    stage.bruno.write("two")
    assert len(await poll) == 2  # DERIVED: two were written before the server could answer


@on_stage
async def test_quiet_means_parked_confirmed_and_alone(stage):
    assert not stage.platform.is_quiet
    stage.ana.write("one")
    (only,) = await stage.result("getUpdates")
    assert not stage.platform.is_poll_parked
    poll = asyncio.create_task(stage.bot.get_updates(offset=only["update_id"] + 1, timeout=20))
    await stage.platform.until_quiet()
    assert stage.platform.is_poll_parked
    stage.ana.write("two")
    assert not stage.platform.is_quiet  # something has arrived that nobody has fetched
    await poll


@on_stage
async def test_waiting_for_quiet_gives_up_in_time(stage):
    with pytest.raises(TimeoutError):
        await stage.platform.until_quiet(within_s=0.02)


@on_stage
async def test_a_poll_whose_client_is_gone_is_not_parked(stage):
    poll = asyncio.create_task(stage.call("getUpdates", timeout=20))
    await stage.platform.until(lambda: stage.platform.is_poll_parked)
    poll.cancel()
    await stage.platform.until(lambda: not stage.platform.is_poll_parked, within_s=60.0)
    assert stage.platform.requests.in_flight == 0


@on_stage
async def test_a_second_poller_ends_the_first_with_a_conflict(stage):
    first = asyncio.create_task(stage.bot.get_updates(timeout=20))
    await stage.platform.until(lambda: stage.platform.is_poll_parked)
    second = asyncio.create_task(stage.call("getUpdates", timeout=20))
    with pytest.raises(Conflict, match="terminated by other getUpdates request"):
        await first
    stage.ana.write("to the second")
    status, body = await second
    assert (status, len(body["result"])) == (200, 1)
    statuses = [record.status for record in stage.platform.requests.of("getUpdates")]
    assert statuses == [409, 200]  # PUBLISHED botapi (from memory): Conflict is 409


@on_stage
async def test_allowed_updates_left_out_keep_the_previous_choice(stage):
    # PUBLISHED botapi, getUpdates: "if not specified, the previous setting will be used"
    await stage.result("getUpdates", allowed_updates=["callback_query"])
    await stage.result("getUpdates")
    stage.ana.write("unwanted")
    assert await stage.result("getUpdates") == []
    await stage.result("getUpdates", allowed_updates=[])
    stage.ana.write("wanted again")
    assert len(await stage.result("getUpdates")) == 1


@on_stage
async def test_a_choice_does_not_reach_back_to_what_is_queued(stage):
    stage.ana.write("queued before")
    # PUBLISHED botapi, getUpdates: does not affect updates created before the call
    assert len(await stage.result("getUpdates", allowed_updates=["callback_query"])) == 1


@on_stage
async def test_updates_are_kept_for_a_day(stage):
    stage.ana.write("old")
    stage.clock.advance(hours=24)
    assert len(await stage.result("getUpdates")) == 1
    stage.clock.advance(seconds=1)
    # PUBLISHED botapi, getting updates: not longer than 24 hours
    assert await stage.result("getUpdates") == []
    assert stage.platform.updates.forgotten == 1


@on_stage
async def test_after_a_quiet_week_numbers_start_anywhere_and_an_old_offset_harms_nothing(stage):
    first = await _four_written(stage)
    await stage.result("getUpdates", offset=first[3] + 1)
    stage.clock.advance(days=7)  # PUBLISHED botapi, Update: random after a week without updates
    stage.ana.write("back")
    (restarted,) = _ids(await stage.result("getUpdates"))
    assert restarted != first[3] + 1
    assert restarted < first[3]  # DERIVED: seed 7 draws a lower one, the harder case
    assert _ids(await stage.result("getUpdates", offset=first[3] + 1)) == [restarted]


@on_stage
async def test_a_raw_update_is_delivered_as_it_is(stage):
    malformed = {"message": {"message_id": "not a number", "chat": None}}
    number = stage.platform.updates.inject(malformed)
    huge = {"message": {"text": "x" * 1_000_000}}  # CHOSEN: far above any real one
    stage.platform.updates.inject(huge)
    first, second = await stage.result("getUpdates")
    assert first == {"update_id": number, **malformed}
    assert second["message"] == huge["message"]


@on_stage
async def test_dropping_what_is_pending_empties_the_queue(stage):
    await _four_written(stage)
    info = await stage.bot.get_webhook_info()
    assert info.pending_update_count == 4  # DERIVED: four were written
    await stage.bot.delete_webhook()
    assert stage.platform.unconfirmed_updates == 4
    await stage.bot.delete_webhook(drop_pending_updates=True)
    assert stage.platform.unconfirmed_updates == 0
