"""Each chat in order, one chat's trouble is nobody else's, and every outcome is written down."""

from datetime import timedelta

import pytest

from demo_scenario.loopback.faults import (
    Delayed,
    DroppedAfter,
    DroppedBefore,
    FloodWait,
    GatewayFailure,
    NotJson,
    Refusal,
)
from storage import inbox
from storage.records.wire import MessageKind, Operation
from storage.tables.wire import OutboxState
from tests.wire.stage import ANA, BRUNO, START, on_wire, texts

ONCE_MORE = (
    MessageKind.SESSION,
    MessageKind.QUESTION,
    MessageKind.REPLY,
    MessageKind.DIGEST,
    MessageKind.REMINDER,
    MessageKind.NOTICE,
)
ALWAYS_AGAIN = (MessageKind.ALERT, MessageKind.SAFETY)


@on_wire
async def test_each_chat_gets_its_messages_in_the_order_they_were_written(wire):
    for number in range(6):
        wire.put(f"a{number}", to=ANA)
        wire.put(f"b{number}", to=BRUNO)
    wire.start(wire.sender)
    await wire.pass_time(10)
    assert texts(wire.ana) == [f"a{number}" for number in range(6)]
    assert texts(wire.bruno) == [f"b{number}" for number in range(6)]


@on_wire
async def test_what_was_sent_keeps_its_time_and_the_platforms_message_id(wire):
    row = wire.put("hello")
    wire.start(wire.sender)
    await wire.settle()
    sent = wire.out(row)
    assert (sent.state, sent.message_id) == (
        OutboxState.SENT,
        wire.ana.sees_from_bot()[0].message_id,
    )
    assert (sent.sent_at, sent.attempts, sent.is_doubtful) == (START, 1, False)


@on_wire
async def test_a_429_holds_its_chat_as_long_as_asked_and_no_other_chat(wire):
    wire.platform.faults.add(FloodWait(retry_after_s=30), chat_id=ANA)  # CHOSEN
    first, second = wire.put("one"), wire.put("two")
    wire.put("other", to=BRUNO)
    wire.start(wire.sender)
    await wire.pass_time(29)
    assert texts(wire.ana) == []
    assert texts(wire.bruno) == ["other"]
    # PUBLISHED botapi, ResponseParameters: the seconds left before the request can be repeated
    assert wire.out(first).not_before == START + timedelta(seconds=30)
    await wire.pass_time(2)
    assert texts(wire.ana) == ["one", "two"]
    assert not wire.out(first).is_doubtful
    assert not wire.out(second).is_doubtful


@pytest.mark.parametrize("status", [500, 502, 503])
@on_wire
async def test_a_gateway_failure_is_tried_again_and_keeps_the_order(wire, status):
    wire.platform.faults.add(GatewayFailure(status=status), times=2, chat_id=ANA)
    row = wire.put("one")
    wire.put("two")
    wire.start(wire.sender)
    await wire.pass_time(10)
    assert texts(wire.ana) == ["one", "two"]
    assert wire.out(row).attempts == 3  # DERIVED: two failures and one success


@on_wire
async def test_waits_between_attempts_double_up_to_a_minute(wire):
    wire.platform.faults.add(GatewayFailure(), times=None, chat_id=ANA)
    row = wire.put("one")
    wire.start(wire.sender)
    # DERIVED: attempts at 0, 1, 1+2, 1+2+4 … s; after 64 s the wait stays at 60 s (CHOSEN)
    await wire.pass_time(63.5)
    assert wire.out(row).attempts == 7
    await wire.pass_time(120)
    assert wire.out(row).attempts == 9
    wire.platform.faults.lift()
    await wire.pass_time(60)
    assert texts(wire.ana) == ["one"]


@on_wire
async def test_a_dead_server_loses_nothing(wire):
    await wire.server.stop()
    row = wire.put("one")
    wire.start(wire.sender)
    await wire.pass_time(1)
    assert wire.out(row).state is OutboxState.WAITING
    assert not wire.out(row).is_doubtful  # nobody answered the door, so nothing was accepted
    await wire.server.start()
    await wire.pass_time(10)
    assert texts(wire.ana) == ["one"]


@pytest.mark.parametrize("kind", ONCE_MORE)
@on_wire
async def test_what_broke_off_is_sent_once_more_and_marked_doubtful(wire, kind):
    wire.platform.faults.add(DroppedBefore(), chat_id=ANA)
    row = wire.put("one", kind=kind)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert texts(wire.ana) == ["one"]
    assert (wire.out(row).state, wire.out(row).is_doubtful) == (OutboxState.SENT, True)


@pytest.mark.parametrize("kind", ONCE_MORE)
@on_wire
async def test_nothing_is_sent_again_to_a_chat_that_has_spoken_since(wire, kind):
    wire.platform.faults.add(Delayed(delay_s=4.5, after=True), chat_id=ANA)
    row = wire.put("one", kind=kind)
    wire.start(wire.sender)
    await wire.platform.until(lambda: len(wire.ana.sees()) == 1)
    hear(wire, seconds=1)
    await wire.pass_time(90)
    assert texts(wire.ana) == ["one"]
    assert wire.out(row).state is OutboxState.DROPPED
    assert wire.out(row).fault == "in doubt: ReadTimeout"


@on_wire
async def test_what_was_said_before_the_attempt_is_no_sign_that_it_arrived(wire):
    wire.platform.faults.add(GatewayFailure(), chat_id=ANA)
    wire.platform.faults.add(DroppedBefore(), chat_id=ANA)
    row = wire.put("session", kind=MessageKind.SESSION)
    hear(wire, seconds=0.5)
    wire.start(wire.sender)
    await wire.pass_time(10)
    assert texts(wire.ana) == ["session"]
    assert wire.out(row).state is OutboxState.SENT


@pytest.mark.parametrize("kind", ONCE_MORE)
@on_wire
async def test_twice_in_doubt_is_enough(wire, kind):
    wire.platform.faults.add(DroppedAfter(), times=None, chat_id=ANA)
    row = wire.put("one", kind=kind)
    wire.start(wire.sender)
    await wire.pass_time(300)
    assert texts(wire.ana) == ["one", "one"]
    assert wire.out(row).state is OutboxState.DROPPED


@on_wire
async def test_failures_without_a_doubt_do_not_use_up_the_one_more_attempt(wire):
    wire.platform.faults.add(GatewayFailure(), times=3, chat_id=ANA)
    wire.platform.faults.add(DroppedBefore(), chat_id=ANA)
    row = wire.put("session", kind=MessageKind.SESSION)
    wire.start(wire.sender)
    await wire.pass_time(60)
    assert texts(wire.ana) == ["session"]
    assert wire.out(row).is_doubtful


@pytest.mark.parametrize("kind", ALWAYS_AGAIN)
@on_wire
async def test_an_alert_is_sent_again_however_often_it_is_in_doubt(wire, kind):
    wire.platform.faults.add(DroppedAfter(), times=3, chat_id=ANA)
    row = wire.put("alert", kind=kind)
    wire.start(wire.sender)
    await wire.pass_time(1)
    hear(wire, seconds=0)
    await wire.pass_time(60)
    assert texts(wire.ana) == ["alert"] * 4  # DERIVED: three in doubt and one that is sure
    assert (wire.out(row).state, wire.out(row).is_doubtful) == (OutboxState.SENT, True)


@on_wire
async def test_an_answer_that_is_no_answer_leaves_the_message_in_doubt(wire):
    wire.platform.faults.add(NotJson(is_accepted=True), chat_id=ANA)
    row = wire.put("one")
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert texts(wire.ana) == ["one", "one"]
    assert wire.out(row).is_doubtful


@on_wire
async def test_a_blocked_chat_is_a_state_and_the_house_hears_of_it_once(wire):
    wire.ana.block()
    rows = [wire.put("one"), wire.put("two")]
    wire.put("other", to=BRUNO)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert [wire.out(row).state for row in rows] == [OutboxState.BLOCKED] * 2
    assert wire.blocked == [ANA]
    assert len(wire.platform.requests.of("sendMessage")) == 2  # DERIVED: "one" and "other"
    assert texts(wire.bruno) == ["other"]


@on_wire
async def test_a_chat_that_the_platform_does_not_know_is_as_good_as_blocked(wire):
    row = wire.put("one", to=424_242)
    wire.start(wire.sender)
    await wire.settle()
    assert wire.out(row).state is OutboxState.BLOCKED
    assert wire.blocked == [424_242]


@on_wire
async def test_an_edit_that_changes_nothing_is_done(wire):
    first = wire.put("same")
    wire.start(wire.sender)
    await wire.settle()
    edit = wire.put("", operation=Operation.EDIT, payload={"text": "same"}, edits_outbox_id=first)
    await wire.pass_time(3)
    assert wire.out(edit).state is OutboxState.SENT
    assert wire.platform.requests.of("editMessageText")[0].status == 400


@on_wire
async def test_an_edit_waits_for_its_message_and_changes_it(wire):
    wire.platform.faults.add(GatewayFailure(), chat_id=ANA)
    first = wire.put("before")
    wire.put("", operation=Operation.EDIT, payload={"text": "after"}, edits_outbox_id=first)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert texts(wire.ana) == ["after"]


@on_wire
async def test_an_edit_in_doubt_is_made_again_and_shows_once(wire):
    first = wire.put("before")
    wire.start(wire.sender)
    await wire.settle()
    wire.platform.faults.add(DroppedAfter(), method="editMessageText")
    edit = wire.put("", operation=Operation.EDIT, payload={"text": "after"}, edits_outbox_id=first)
    await wire.pass_time(5)
    assert texts(wire.ana) == ["after"]
    assert wire.out(edit).state is OutboxState.SENT


@on_wire
async def test_a_moved_chat_gets_what_waited_at_its_new_address(wire):
    wire.platform.faults.add(
        # PUBLISHED botapi, ResponseParameters: migrate_to_chat_id
        Refusal(
            status=400,
            description="Bad Request: group chat was upgraded to a supergroup chat",
            parameters={"migrate_to_chat_id": BRUNO},
        ),
        chat_id=ANA,
    )
    wire.put("one")
    wire.put("two")
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert texts(wire.bruno) == ["one", "two"]
    assert texts(wire.ana) == []


@on_wire
async def test_a_refused_message_is_kept_for_the_operator_and_blocks_nobody(wire):
    bad = wire.put("<b>never closed")
    good = wire.put("good")
    wire.start(wire.sender)
    await wire.pass_time(3)
    assert wire.out(bad).state is OutboxState.REFUSED
    assert wire.out(good).state is OutboxState.SENT


@on_wire
async def test_an_operation_that_we_cannot_make_blocks_nobody(wire):
    bad = wire.put("", operation=Operation.COPY, payload={})
    wire.put("good")
    wire.start(wire.sender)
    await wire.pass_time(3)
    assert (wire.out(bad).state, wire.out(bad).fault) == (OutboxState.REFUSED, "KeyError")
    assert texts(wire.ana) == ["good"]


@on_wire
async def test_what_comes_too_late_to_be_useful_is_dropped(wire):
    wire.platform.faults.add(FloodWait(retry_after_s=60), chat_id=ANA)
    row = wire.put("good morning", useful_until=START + timedelta(seconds=30))
    wire.put("still useful")
    wire.start(wire.sender)
    await wire.pass_time(70)
    assert texts(wire.ana) == ["still useful"]
    assert (wire.out(row).state, wire.out(row).fault) == (
        OutboxState.DROPPED,
        "too late to be useful",
    )


@on_wire
async def test_what_was_in_flight_at_a_crash_is_sent_again_and_marked(wire):
    wire.platform.faults.add(Delayed(delay_s=0.2, after=True), chat_id=ANA)
    row = wire.put("session", kind=MessageKind.SESSION)
    wire.start(wire.sender)
    await wire.platform.until(lambda: len(wire.ana.sees()) == 1)
    for task in (*wire.tasks, *wire.sender._tasks):
        task.cancel()  # as a kill would, before the answer
    assert wire.out(row).state is OutboxState.SENDING
    wire.sender = wire.new_sender()
    assert wire.sender.recover() == 1
    wire.start(wire.sender)
    await wire.pass_time(3)
    assert texts(wire.ana) == ["session", "session"]
    assert (wire.out(row).state, wire.out(row).is_doubtful) == (OutboxState.SENT, True)


@on_wire
async def test_a_call_that_hangs_keeps_nobody_else_waiting(wire):
    wire.platform.faults.add(Delayed(delay_s=0.4, after=True), chat_id=ANA)
    wire.put("hangs")
    due_at = START + timedelta(seconds=1)
    wire.put("due meanwhile", to=BRUNO, not_before=due_at)
    wire.start(wire.sender)
    await wire.platform.until(lambda: len(wire.ana.sees()) == 1)
    assert not wire.sender.is_idle
    assert wire.clock.next_wake() <= due_at
    await wire.pass_time(2)
    assert texts(wire.bruno) == ["due meanwhile"]


@on_wire
async def test_a_fault_of_ours_while_settling_does_not_hold_the_chat_for_ever(wire):
    faults = iter([ValueError("a fault of ours")])

    def fails_once(tx, chat_id, now):
        for fault in faults:
            raise fault

    wire.on_blocked = fails_once
    wire.ana.block()
    row = wire.put("one")
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.blocked == [ANA, ANA]
    assert wire.out(row).state is OutboxState.BLOCKED


@on_wire
async def test_buttons_menus_and_copies_reach_the_app(wire):
    bring = wire.bruno.write("from Bruno")
    wire.put("", payload={"text": "<b>hi</b>", "buttons": [[["Yes", "y"]]]})
    copied = {"from_chat_id": BRUNO, "message_id": bring}
    wire.put("", operation=Operation.COPY, payload=copied)
    menu = {"commands": [["today", "what is next"]]}
    wire.put("", operation=Operation.MENU, payload=menu, kind=MessageKind.MENU)
    wire.start(wire.sender)
    await wire.pass_time(10)
    hello, copy = wire.ana.sees_from_bot()
    assert (hello.html, hello.data_of("Yes")) == ("<b>hi</b>", "y")
    assert (copy.text, copy.is_copy) == ("from Bruno", True)
    assert wire.ana.menu() == [{"command": "today", "description": "what is next"}]


def hear(wire, *, seconds: float) -> None:
    """Let something arrive from Ana, ``seconds`` from now, without a receiver."""
    update = {"update_id": 5, "message": {"message_id": 1, "chat": {"id": ANA}, "text": "seen"}}
    with wire.database.transaction() as tx:
        at = wire.clock.now() + timedelta(seconds=seconds)
        inbox.store_updates(tx, [update], received_at=at)
