"""Every update is stored before it is confirmed, once, whatever fails in between."""

import asyncio
import json
import logging
from itertools import pairwise

import pytest

from bot.events import Wrote
from bot.wire.edge import WANTED_UPDATES
from bot.wire.receive import OperatorError
from demo_scenario.loopback.faults import (
    DroppedAfter,
    FloodWait,
    GatewayFailure,
    NotJson,
    Refusal,
)
from storage import inbox
from tests.wire.stage import START, on_wire, texts


def said(wire):
    return [event.text for event in wire.events if isinstance(event, Wrote)]


@on_wire
async def test_what_people_write_is_handled_and_answered_in_order(wire):
    wire.start()
    for number in range(5):
        wire.ana.write(f"a{number}")
        wire.bruno.write(f"b{number}")
    await wire.pass_time(10)
    assert said(wire) == [f"{who}{number}" for number in range(5) for who in "ab"]
    assert texts(wire.ana) == [f"a{number}" for number in range(5)]
    assert [row.outcome for row in wire.inbox()] == ["answered"] * 10


@on_wire
async def test_nothing_is_confirmed_before_it_is_stored(wire, monkeypatch):
    wire.ana.write("one")
    confirmed_while_storing = []

    class Watched:
        """A database that looks at the platform as each transaction ends."""

        def transaction(self):
            confirmed_while_storing.append(wire.platform.updates.confirmed)
            return wire.database.transaction()

    wire.receiver._database = Watched()
    wire.start(wire.receiver)
    await wire.platform.until(lambda: wire.platform.is_poll_parked)
    assert confirmed_while_storing == [0]
    assert wire.platform.updates.confirmed == 1
    assert len(wire.inbox()) == 1


@on_wire
async def test_a_crash_between_store_and_confirm_delivers_again_and_stores_once(wire):
    wire.ana.write("one")
    updates = await wire.receiver._poll()
    wire.receiver.accept(updates)  # stored; the process ends before its next poll confirms
    assert wire.platform.unconfirmed_updates == 1
    wire.receiver._offset = None  # what a new process knows of the old one's polls
    wire.start()
    await wire.pass_time(1)
    assert wire.platform.unconfirmed_updates == 0
    assert len(wire.inbox()) == 1
    assert said(wire) == ["one"]


@on_wire
async def test_a_crash_before_the_store_loses_nothing(wire):
    wire.ana.write("one")
    await wire.receiver._poll()  # fetched, and the process ends
    assert wire.inbox() == []
    wire.start()
    await wire.pass_time(1)
    assert said(wire) == ["one"]


@on_wire
async def test_a_store_that_fails_confirms_nothing(wire):
    wire.ana.write("one")

    class Full:
        def transaction(self):
            raise OSError("the disk is full")

    wire.receiver._database = Full()
    with pytest.raises(OSError, match="full"):
        await wire.receiver.run()
    assert wire.platform.unconfirmed_updates == 1


@on_wire
async def test_an_answer_lost_on_its_way_to_us_is_fetched_again(wire):
    wire.ana.write("one")
    wire.platform.faults.add(DroppedAfter(), method="getUpdates")
    wire.start()
    await wire.pass_time(3)
    assert said(wire) == ["one"]


@pytest.mark.parametrize(
    "broken",
    [
        {"message": "broken"},
        {"message": {"message_id": 9, "date": "soon", "chat": {"id": 1001, "type": "private"}}},
        {"callback_query": {"id": 7}},
        {"callback_query": "broken"},
        {"my_chat_member": []},
    ],
    ids=["text", "date", "tap", "tap text", "member"],
)
@on_wire
async def test_one_malformed_update_is_set_aside_and_its_batch_goes_on(wire, broken):
    wire.ana.write("before")
    wire.platform.updates.inject(broken)
    wire.ana.write("after")
    wire.start()
    await wire.pass_time(3)
    assert said(wire) == ["before", "after"]
    assert [row.outcome for row in wire.inbox()] == ["answered", "set_aside", "answered"]
    assert len(wire.asides) == 1
    assert json.loads(wire.inbox()[1].raw)  # the raw update is kept for whoever mends it


@on_wire
async def test_half_a_surrogate_pair_is_stored_and_heard(wire):
    wire.ana.write("45 \ud83d 40")
    wire.ana.write("after")
    wire.start()
    await wire.pass_time(3)
    assert said(wire) == ["45 � 40", "after"]


@on_wire
async def test_a_chat_number_that_no_column_holds_stops_nobody(wire):
    chat = {"id": 10**30, "type": "private"}
    wire.platform.updates.inject({"message": {"message_id": 9, "chat": chat, "date": 1}})
    wire.ana.write("after")
    wire.start()
    await wire.pass_time(2)
    assert said(wire) == ["after"]
    assert [row.chat_id for row in wire.inbox()] == [None, wire.ana.chat_id]


@pytest.mark.parametrize("update_id", ["7", None, 10**30, 1.5])
@on_wire
async def test_an_update_without_a_usable_number_stops_nobody(wire, update_id):
    wire.platform.updates.inject({"update_id": update_id, "message": {}})
    wire.ana.write("after")
    wire.start()
    await wire.pass_time(2)
    assert said(wire) == ["after"]


@pytest.mark.parametrize(
    "fault",
    [
        GatewayFailure(status=502),
        GatewayFailure(status=500),
        NotJson(),
        Refusal(status=409, description="Conflict: terminated by other getUpdates request"),
        FloodWait(retry_after_s=3),
    ],
    ids=lambda fault: type(fault).__name__,
)
@on_wire
async def test_receiving_goes_on_after_any_failure(wire, fault):
    wire.platform.faults.add(fault, times=3, method="getUpdates")
    wire.ana.write("one")
    wire.start()
    await wire.pass_time(20)
    assert said(wire) == ["one"]


@on_wire
async def test_pauses_after_failures_grow_and_stay_below_half_a_minute(wire):
    wire.platform.faults.add(GatewayFailure(), times=None, method="getUpdates")
    wire.start(wire.receiver)
    await wire.pass_time(300)
    times = [(call.at - START).total_seconds() for call in wire.platform.requests.of("getUpdates")]
    waits = [later - earlier for earlier, later in pairwise(times)]
    # CHOSEN: 1 s, doubled each time, at most 30 s
    assert waits == [1, 2, 4, 8, 16, 30, 30, 30, 30, 30, 30, 30, 30]


@on_wire
async def test_a_flood_wait_is_kept_to_the_second(wire):
    wire.platform.faults.add(FloodWait(retry_after_s=17), method="getUpdates")  # CHOSEN
    wire.start(wire.receiver)
    await wire.pass_time(17)
    first, second = wire.platform.requests.of("getUpdates")
    assert (second.at - first.at).total_seconds() == 17


@on_wire
async def test_a_second_program_with_the_same_token_is_named_in_the_log(wire, caplog):
    wire.start(wire.receiver)
    await wire.platform.until(lambda: wire.platform.is_poll_parked)
    with caplog.at_level(logging.ERROR):
        await wire.bot.get_updates(timeout=0)  # the other program
        await wire.pass_time(3)
    assert "another program is receiving with this token" in caplog.text
    assert wire.platform.token not in caplog.text


@on_wire
async def test_an_unknown_token_is_for_the_operator(wire):
    wire.platform.token = "1:another"  # noqa: S105  the platform forgets the one we have
    with pytest.raises(OperatorError, match="HOLDWELL_TOKEN"):
        await wire.receiver.run()


@on_wire
async def test_every_poll_names_the_kinds_it_wants(wire):
    wire.start()
    wire.ana.write("one")
    await wire.pass_time(1)
    wire.platform.faults.add(GatewayFailure(), method="getUpdates")
    wire.ana.write("two")
    await wire.pass_time(3)
    polls = wire.platform.requests.of("getUpdates")
    assert len(polls) >= 4
    for poll in polls:
        assert tuple(json.loads(poll.params["allowed_updates"])) == WANTED_UPDATES
    assert "message_reaction" not in wire.platform.updates.allowed


@on_wire
async def test_numbers_that_restart_lower_after_a_quiet_week_lose_nothing(wire):
    """PUBLISHED botapi, Update.update_id: after a week without any the next is random."""
    wire.platform.updates.inject({"update_id": 900_000_000, "poll": {}})
    wire.start()
    await wire.pass_time(1)
    wire.platform.updates.inject({"update_id": 200_000_000, "poll": {}})
    wire.ana.write("after a quiet week")
    await wire.pass_time(25)
    assert said(wire) == ["after a quiet week"]
    # With nothing left to confirm no offset is sent, so that none can confirm unseen.
    wire.receiver._request, kept = OnePoll([]), wire.receiver._request
    await wire.receiver._receive()
    wire.receiver._request = kept
    assert wire.receiver._offset is None


class OnePoll:
    """A transport that answers one poll with what it is given."""

    def __init__(self, result):
        self.result = result

    async def post(self, url, **rest):
        return self.result


@pytest.mark.parametrize("result", [{"not": "a list"}, 7, "text", None])
@on_wire
async def test_a_result_that_is_no_list_is_a_failure_to_try_again(wire, result):
    wire.receiver._request, kept = OnePoll(result), wire.receiver._request
    receiving = asyncio.create_task(wire.receiver._receive())
    await wire.pass_time(2)
    await receiving
    wire.receiver._request = kept
    wire.ana.write("one")
    wire.start()
    await wire.pass_time(1)
    assert said(wire) == ["one"]


@on_wire
async def test_a_tap_is_answered_at_once_and_empty(wire):
    row = wire.put("", payload={"text": "How was it?", "buttons": [[["Good", "g"]]]})
    wire.start()
    await wire.settle()
    query_id = wire.ana.tap(wire.out(row).message_id, "g")
    await wire.settle()
    (answer,) = wire.platform.taps.of(query_id).answers
    assert (answer.text, answer.is_alert, answer.at) == ("", False, START)
    assert wire.events[-1].token == "g"  # noqa: S105  what the button carried


@on_wire
async def test_a_tap_that_is_too_old_to_be_answered_is_handled_all_the_same(wire):
    row = wire.put("", payload={"text": "How was it?", "buttons": [[["Good", "g"]]]})
    wire.start(wire.sender)
    await wire.settle()
    query_id = wire.ana.tap(wire.out(row).message_id, "g")
    await wire.pass_time(3600)
    wire.start(wire.receiver, wire.writer)
    await wire.settle()
    assert wire.platform.taps.of(query_id).answers == []
    assert wire.events[-1].token == "g"  # noqa: S105


@on_wire
async def test_a_batch_of_many_is_one_commit(wire):
    for number in range(250):
        wire.ana.write(str(number))
    commits = []

    class Counted:
        def transaction(self):
            commits.append(1)
            return wire.database.transaction()

    wire.receiver._database = Counted()
    wire.start(wire.receiver)
    await wire.platform.until(lambda: wire.platform.is_poll_parked, within_s=120)
    assert len(commits) == 3  # DERIVED: 250 in pages of 100 (PUBLISHED botapi: limit)
    with wire.database.transaction() as tx:
        assert inbox.count_waiting(tx) == 250
