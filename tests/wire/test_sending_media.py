"""A picture or clip goes on by the platform's reference, with words and buttons under it."""

import pytest

from storage.records.wire import MessageKind, Operation
from storage.tables.wire import OutboxState
from tests.wire.stage import ANA, BRUNO, on_wire


async def _reference(wire, send):
    send(wire.bruno)
    (update,) = await wire.bot.get_updates()
    message = update.message
    return (message.video or message.photo[-1]).file_id


@pytest.mark.parametrize(
    ("sent_as", "send"),
    [("video", lambda one: one.send_video("mine")), ("photo", lambda one: one.send_photo("mine"))],
    ids=["video", "photo"],
)
@on_wire
async def test_a_clip_goes_on_by_its_reference(wire, sent_as, send):
    file_id = await _reference(wire, send)
    payload = {
        "sent_as": sent_as,
        "file_id": file_id,
        "text": "<b>Bruno</b> · Wall reach hold",
        "buttons": [[["Looks right", "t1"]]],
    }
    row = wire.put("", operation=Operation.MEDIA, payload=payload)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(row).state is OutboxState.SENT
    (shown,) = wire.ana.sees_from_bot()
    assert (shown.file_id, shown.text) == (file_id, "Bruno · Wall reach hold")
    assert shown.message_id == wire.out(row).message_id
    assert "getFile" not in {call.method for call in wire.platform.requests}


@on_wire
async def test_an_animation_is_sent_as_one(wire):
    sent = await wire.bot.send_animation(BRUNO, b"GIF89a", filename="a.gif")
    file_id = sent.animation.file_id
    payload = {"sent_as": "animation", "file_id": file_id, "text": ""}
    row = wire.put("", operation=Operation.MEDIA, payload=payload)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(row).state is OutboxState.SENT
    assert wire.ana.sees_from_bot()[0].file_id == file_id


@on_wire
async def test_what_the_platform_no_longer_has_is_handed_on(wire):
    payload = {"sent_as": "video", "file_id": "gone", "text": "words"}
    row = wire.put("", operation=Operation.MEDIA, kind=MessageKind.NOTICE, payload=payload)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(row).state is OutboxState.REFUSED
    assert [one for one, _ in wire.refused] == [row]


@on_wire
async def test_an_answer_stands_under_the_message_it_answers(wire):
    asked = wire.ana.write("is this right?")
    wire.put("", payload={"text": "yes", "reply_to": asked})
    gone = wire.put("", payload={"text": "still here", "reply_to": 987_654})
    wire.start(wire.sender)
    await wire.pass_time(5)
    answers = {
        message.content.words.text: message.reply_to and message.reply_to.message_id
        for message in wire.platform.chats[ANA].messages.values()
        if message.sender["is_bot"]
    }
    # the one that is gone does not hold its answer back
    assert answers == {"yes": asked, "still here": None}
    assert wire.out(gone).state is OutboxState.SENT
