"""One loop changes things: in order, each in one transaction, and no fault stops the rest."""

import logging

from sqlmodel import func, select

from bot.writer import BATCH
from storage import inbox, outbox
from storage.records.wire import MessageKind, Operation
from storage.tables.wire import InboxRow, InboxState, OutboxRow
from tests.wire.stage import ANA, BRUNO, START, on_wire

SECRET_WORDS = "words that nobody may find in a log"  # noqa: S105  an athlete's text


def arrive(wire, *said, first_id=1):
    """Store texts as if they had come by the wire."""
    updates = [
        {
            "update_id": first_id + number,
            "message": {
                "message_id": first_id + number,
                "date": 1_772_434_800,
                "chat": {"id": chat_id, "type": "private", "first_name": "A"},
                "text": text,
            },
        }
        for number, (chat_id, text) in enumerate(said)
    ]
    with wire.database.transaction() as tx:
        inbox.store_updates(tx, updates, received_at=wire.clock.now())
    wire.writer.wake()


def say(tx, event, now):
    outbox.put(
        tx,
        chat_id=event.chat_id,
        operation=Operation.SEND,
        kind=MessageKind.REPLY,
        payload={"text": event.text},
        now=now,
    )


def count_outbox(wire):
    with wire.database.transaction() as tx:
        return tx.exec(select(func.count()).select_from(OutboxRow)).one()


@on_wire
async def test_updates_are_handled_in_the_order_of_arrival(wire):
    said = [(ANA if number % 2 else BRUNO, f"{number}") for number in range(2 * BATCH + 7)]
    arrive(wire, *said)
    wire.start(wire.writer)
    await wire.settle_writer()
    assert [event.text for event in wire.events] == [text for _, text in said]
    assert {row.state for row in wire.inbox()} == {InboxState.HANDLED}
    assert {row.handled_at for row in wire.inbox()} == {START}


@on_wire
async def test_a_fault_undoes_everything_that_its_update_did(wire):
    def fails_after_saying(tx, event, now):
        say(tx, event, now)
        raise ValueError("a fault of ours")

    wire.handle = fails_after_saying
    arrive(wire, (ANA, "one"))
    wire.start(wire.writer)
    await wire.settle_writer()
    assert count_outbox(wire) == 0
    assert wire.inbox()[0].state is InboxState.SET_ASIDE


@on_wire
async def test_three_faults_set_an_update_aside_and_those_behind_are_unaffected(wire):
    tried = []

    def fails_for_one(tx, event, now):
        tried.append(event.text)
        if event.text == "poison":
            raise ValueError(event.text)
        return "answered"

    wire.handle = fails_for_one
    arrive(wire, (ANA, "first"), (ANA, "poison"), (ANA, "same chat"), (BRUNO, "other chat"))
    wire.start(wire.writer)
    await wire.settle_writer()
    # CHOSEN: three attempts
    assert tried == ["first", *["poison"] * 3, "same chat", "other chat"]
    assert [row.outcome for row in wire.inbox()] == ["answered", "set_aside", *["answered"] * 2]
    aside = wire.inbox()[1]
    assert (aside.attempts, aside.fault_reference) == (3, f"F{aside.id}")
    assert wire.asides == [f"F{aside.id}"]


@on_wire
async def test_a_fault_that_passes_is_no_fault(wire):
    faults = iter([ValueError("once"), ValueError("twice")])

    def fails_twice(tx, event, now):
        for fault in faults:
            raise fault
        say(tx, event, now)
        return "answered"

    wire.handle = fails_twice
    arrive(wire, (ANA, "one"))
    wire.start(wire.writer)
    await wire.settle_writer()
    assert (wire.inbox()[0].outcome, wire.inbox()[0].attempts) == ("answered", 2)
    assert count_outbox(wire) == 1
    assert wire.asides == []


@on_wire
async def test_setting_aside_and_telling_so_are_one_step(wire):
    """Killed between the two, nobody would ever be told: so the one is not without the other."""
    states_when_told = []

    def tells(tx, received, now, reference):
        states_when_told.append(wire_state(tx, received.id))

    wire.writer._tell_set_aside = tells
    wire.handle = fails
    arrive(wire, (ANA, "one"))
    wire.start(wire.writer)
    await wire.settle_writer()
    assert states_when_told == [InboxState.SET_ASIDE]


@on_wire
async def test_an_update_is_set_aside_even_if_nobody_can_be_told(wire, caplog):
    def cannot_tell(tx, received, now, reference):
        say_row = {"text": "half a message"}
        outbox.put(
            tx,
            chat_id=ANA,
            operation=Operation.SEND,
            kind=MessageKind.SAFETY,
            payload=say_row,
            now=now,
        )
        raise LookupError("nobody there")

    wire.writer._tell_set_aside = cannot_tell
    wire.handle = fails
    arrive(wire, (ANA, "one"), (BRUNO, "two"))
    wire.start(wire.writer)
    with caplog.at_level(logging.ERROR):
        await wire.settle_writer()
    assert [row.outcome for row in wire.inbox()] == ["set_aside"] * 2
    assert count_outbox(wire) == 0
    assert "F1-untold: LookupError" in caplog.text


@on_wire
async def test_a_log_says_where_and_never_what_somebody_wrote(wire, caplog):
    def quotes(tx, event, now):
        raise ValueError(event.text)

    wire.handle = quotes
    arrive(wire, (ANA, SECRET_WORDS))
    wire.start(wire.writer)
    with caplog.at_level(logging.DEBUG):
        await wire.settle_writer()
    assert "F1: ValueError at test_writing.py" in caplog.text
    assert SECRET_WORDS not in caplog.text


@on_wire
async def test_a_tick_runs_between_two_updates_and_never_inside_one(wire):
    order = []
    wire.tick = lambda now: order.append("tick")

    def notes(tx, event, now):
        order.append(event.text)
        if event.text == "0":
            wire.writer.ask_tick()
        return "answered"

    wire.handle = notes
    arrive(wire, *[(ANA, str(number)) for number in range(BATCH + 5)])
    wire.start(wire.writer)
    await wire.settle_writer()
    # CHOSEN: a batch of 50 is handled before the loop looks whether a tick is due
    assert order.index("tick") == BATCH
    assert len(order) == BATCH + 5 + 1


@on_wire
async def test_who_writes_during_a_round_is_answered_before_its_next_person(wire):
    order = []

    def person(number):
        def step():
            order.append(f"person {number}")
            if number == 1:
                arrive(wire, (ANA, "0"), (BRUNO, "1"))

        return step

    def notes(tx, event, now):
        order.append(event.text)
        return "answered"

    wire.steps = [person(number) for number in range(3)]
    wire.handle = notes
    wire.writer.ask_tick()
    wire.start(wire.writer)
    await wire.settle_writer()
    assert order == ["person 0", "person 1", "0", "1", "person 2"]


@on_wire
async def test_a_long_rush_during_a_round_does_not_hold_it_up_for_good(wire):
    order = []

    def notes(tx, event, now):
        order.append(event.text)
        return "answered"

    def rush():
        order.append("person")
        arrive(wire, *[(ANA, str(number)) for number in range(2 * BATCH)])

    wire.steps = [rush, lambda: order.append("next"), lambda: order.append("last")]
    wire.handle = notes
    wire.writer.ask_tick()
    wire.start(wire.writer)
    await wire.settle_writer()
    # DERIVED: a batch of the rush, a person, the other batch, a person
    assert [order.index(one) for one in ("person", "next", "last")] == [0, BATCH + 1, 2 * BATCH + 2]
    assert len(order) == 2 * BATCH + 3


@on_wire
async def test_a_round_that_fails_as_a_whole_is_logged_and_stops_nothing(wire, caplog):
    def fails():
        raise ValueError(SECRET_WORDS)

    wire.steps = [fails]
    wire.writer.ask_tick()
    arrive(wire, (ANA, "hello"))
    wire.start(wire.writer)
    await wire.settle_writer()
    assert "tick: ValueError" in caplog.text
    assert SECRET_WORDS not in caplog.text
    assert [row.state for row in wire.inbox()] == [InboxState.HANDLED]


@on_wire
async def test_ticks_asked_for_while_one_runs_become_one(wire):
    wire.writer.ask_tick()
    wire.writer.ask_tick()
    wire.start(wire.writer)
    await wire.settle_writer()
    assert wire.ticks == [START]


@on_wire
async def test_a_tick_that_fails_stops_neither_updates_nor_the_next_tick(wire, caplog):
    faults = iter([ValueError(SECRET_WORDS)])

    def fails_once(now):
        for fault in faults:
            raise fault

    wire.tick = fails_once
    wire.writer.ask_tick()
    wire.start(wire.writer)
    with caplog.at_level(logging.ERROR):
        await wire.settle_writer()
    wire.writer.ask_tick()
    arrive(wire, (ANA, "one"))
    await wire.settle_writer()
    assert len(wire.ticks) == 2
    assert len(wire.events) == 1
    assert "tick: ValueError" in caplog.text
    assert SECRET_WORDS not in caplog.text


@on_wire
async def test_what_waited_when_the_process_ended_is_handled_at_the_next_start(wire):
    arrive(wire, (ANA, "one"), (ANA, "two"))
    await wire.writer.work()
    arrive(wire, (ANA, "three"), first_id=10)
    wire.start(wire.writer)
    await wire.settle_writer()
    assert [event.text for event in wire.events] == ["one", "two", "three"]


def fails(tx, event, now):
    raise ValueError("a fault of ours")


def wire_state(tx, inbox_id):
    return tx.get_one(InboxRow, inbox_id).state
