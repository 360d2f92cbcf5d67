"""A coach's text file is here as text when its update is handled; nobody else waits for it."""

import pytest

from bot.events import FileFault, SentFile, SentMedia, Wrote
from bot.wire.edge import event_from
from bot.wire.fetch import LARGEST_BYTES, Documents, Fetched, text_document, text_of
from bot.writer import Writer
from demo_scenario.loopback.faults import FloodWait, GatewayFailure
from storage.inbox import next_waiting, store_updates
from tests.wire.stage import ANA, BRUNO, on_wire

TEAM = b"name,stage\nAna,1\n"


def with_documents(wire, *, wanted=frozenset({ANA})):
    """Put a writer with files in the place of the stage's own."""

    def wake():
        writer.wake()

    documents = Documents(
        bot=wire.bot,
        clock=wire.clock,
        is_wanted=lambda _tx, chat_id: chat_id in wanted,
        on_fetched=wake,
    )

    def read(received):
        return event_from(
            received.raw or "",
            wire.bot,
            received_at=received.received_at,
            fetched=documents.of(received),
        )

    writer = Writer(
        database=wire.database,
        clock=wire.clock,
        read=read,
        handle=wire._handle,
        tell_set_aside=wire._tell_set_aside,
        tick=wire._tick,
        on_written=wire.sender.wake,
        files=documents,
    )
    wire.writer, wire.documents = writer, documents
    wire.receiver._on_stored = writer.wake
    return documents


@on_wire
async def test_a_coachs_text_file_arrives_with_its_content(wire):
    with_documents(wire)
    sent = wire.ana.send_document("Team.CSV", b"\xef\xbb\xbfname,stage\r\nAna,1\r\n", "/invite")
    wire.start()
    await wire.settle()
    assert wire.events == [
        SentFile(
            chat_id=ANA,
            at=wire.clock.now(),
            message_id=sent,
            name="Team.CSV",
            text="name,stage\nAna,1\n",  # CHOSEN: without the mark, and with plain ends of lines
            caption="/invite",
        )
    ]


@on_wire
async def test_nobody_elses_file_is_fetched_and_no_other_kind_is(wire):
    with_documents(wire)
    wire.bruno.send_document("team.csv", TEAM)
    wire.ana.send_document("plan.pdf", b"%PDF-1.7")
    wire.start()
    await wire.settle()
    assert [type(event) for event in wire.events] == [SentMedia, SentMedia]
    assert "getFile" not in {call.method for call in wire.platform.requests}


@on_wire
async def test_while_a_file_is_on_its_way_only_its_own_chat_waits(wire):
    documents = with_documents(wire)
    wire.platform.faults.add(GatewayFailure(status=502), method="getFile")
    wire.ana.write("first")
    wire.ana.send_document("team.csv", TEAM)
    wire.ana.write("last")
    wire.bruno.write("45 40 38")
    wire.start()
    while "getFile" not in {call.method for call in wire.platform.requests}:
        await wire.settle_writer()
    assert documents.held_chats == {ANA}
    assert [(event.chat_id, getattr(event, "text", "")) for event in wire.events] == [
        (ANA, "first"),
        (BRUNO, "45 40 38"),
    ]
    await wire.pass_time(5)  # CHOSEN: beyond the pause of 2 s before the second attempt
    await wire.pass_time(1)
    assert [type(event) for event in wire.events[2:]] == [SentFile, Wrote]
    assert documents.is_idle


@on_wire
async def test_what_cannot_be_fetched_is_said_and_the_chat_goes_on(wire):
    with_documents(wire)
    for _ in range(3):  # CHOSEN: as many as there are attempts
        wire.platform.faults.add(FloodWait(retry_after_s=3), method="getFile")
    wire.ana.send_document("team.csv", TEAM)
    wire.ana.write("after it")
    wire.start()
    for _ in range(6):
        await wire.pass_time(3)
    file, text = wire.events
    assert (file.fault, file.text) == (FileFault.NOT_FETCHED, "")
    assert text.text == "after it"


@on_wire
async def test_a_file_above_the_bound_is_refused_without_a_call(wire):
    with_documents(wire)
    wire.ana.send_document("big.yaml", b"a" * (LARGEST_BYTES + 1))
    wire.start()
    await wire.settle()
    (event,) = wire.events
    assert (event.fault, event.text) == (FileFault.TOO_LARGE, "")
    assert "getFile" not in {call.method for call in wire.platform.requests}


@on_wire
async def test_after_a_restart_the_file_is_fetched_again(wire):
    documents = with_documents(wire)
    wire.ana.send_document("team.csv", TEAM)
    with wire.database.transaction() as tx:
        store_updates(tx, wire.platform.updates.page(10), received_at=wire.clock.now())
    with wire.database.transaction() as tx:
        assert documents.ready(tx, next_waiting(tx, most=9)) == ()
    await documents.stop()
    with_documents(wire)
    wire.start(wire.writer, wire.sender)
    wire.writer.wake()
    await wire.settle()
    assert [event.text for event in wire.events] == [TEAM.decode()]


@pytest.mark.parametrize(
    ("content", "read"),
    [
        ("name\nÁna".encode("utf-16"), Fetched(text="name\nÁna")),
        ("name\nÁna".encode("cp1252"), Fetched(fault=FileFault.NOT_TEXT)),
        (b"PK\x03\x04\x00\x00", Fetched(fault=FileFault.NOT_TEXT)),
        (b"", Fetched(text="")),
        (b"x" * (LARGEST_BYTES + 1), Fetched(fault=FileFault.TOO_LARGE)),
    ],
    ids=["UTF-16 with its mark", "another coding", "a workbook", "empty", "too large"],
)
def test_only_text_that_says_what_it_is_is_read(content, read):
    assert text_of(content) == read


@pytest.mark.parametrize(
    "raw",
    [
        '{"update_id": 1, "message": {"text": "a \\"document\\""}}',
        '{"update_id": 1, "message": {"document": {"file_name": "a.csv"}}}',
        '{"update_id": 1, "message": {"document": "broken"}}',
        '{"update_id": 1, "document": 3}',
    ],
)
def test_an_update_without_a_document_is_none(raw):
    assert text_document(raw) is None
