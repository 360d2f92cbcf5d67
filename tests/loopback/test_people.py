"""The people's side: what the bot gets from them, and what they see of it."""

from datetime import timedelta

import pytest
from telegram import InlineKeyboardButton, InlineKeyboardMarkup, MessageOriginHiddenUser
from telegram.error import BadRequest

from demo_scenario.loopback.callbacks import ANSWERABLE_FOR
from demo_scenario.loopback.files import MediaKind
from demo_scenario.loopback.person import PersonCannotError
from demo_scenario.loopback.platform_state import LoopbackPlatform
from tests.loopback.stage import ANA, BRUNO, on_stage

GROUP = -500  # CHOSEN


def _buttons(**data_by_text):
    return InlineKeyboardMarkup(
        [[InlineKeyboardButton(text, callback_data=data)] for text, data in data_by_text.items()]
    )


@on_stage
async def test_written_text_arrives_as_the_library_reads_it(stage):
    first = stage.ana.write("/today please")
    stage.ana.write("45 40 38", reply_to_message_id=first)
    command, reply = await stage.bot.get_updates()
    assert list(command.message.parse_entities().values()) == ["/today"]
    assert command.message.from_user.language_code == "en"
    assert command.message.date == stage.clock.at
    assert (command.message.chat_id, command.message.id) == (ANA, first)
    assert reply.message.reply_to_message.id == first


@on_stage
async def test_an_edit_is_an_update_of_its_own(stage):
    message_id = stage.ana.write("48")
    stage.clock.advance(minutes=3)
    assert stage.ana.edit(message_id, "38") == message_id
    _, edited = await stage.bot.get_updates()
    assert edited.message is None
    assert (edited.edited_message.id, edited.edited_message.text) == (message_id, "38")
    assert edited.edited_message.edit_date == stage.clock.at
    (shown,) = stage.ana.sees()
    assert (shown.text, [old.text for old in shown.history]) == ("38", ["48"])


@on_stage
async def test_a_tap_is_asked_and_its_answer_kept(stage):
    sent = await stage.bot.send_message(ANA, "done?", reply_markup=_buttons(Yes="y", No="n"))
    query_id = stage.ana.tap(sent.id, stage.ana.sees()[0].data_of("No"))
    assert stage.platform.taps.unanswered() == (stage.platform.taps.of(query_id),)
    (update,) = await stage.bot.get_updates()
    assert (update.callback_query.id, update.callback_query.data) == (query_id, "n")
    assert update.callback_query.message.text == "done?"
    await stage.bot.answer_callback_query(query_id, "noted", show_alert=True)
    (answer,) = stage.platform.taps.of(query_id).answers
    assert (answer.text, answer.is_alert, answer.at) == ("noted", True, stage.clock.at)
    assert stage.platform.taps.unanswered() == ()
    assert len(stage.platform.taps.answered()) == 1


@on_stage
async def test_a_tap_can_be_answered_for_a_while_and_in_two_hundred_characters(stage):
    sent = await stage.bot.send_message(ANA, "x", reply_markup=_buttons(Yes="y"))
    query_id = stage.ana.tap(sent.id, "y")
    with pytest.raises(BadRequest, match="Message_too_long"):
        await stage.bot.answer_callback_query(query_id, "x" * 201)  # PUBLISHED botapi: 0 to 200
    stage.clock.advance(seconds=ANSWERABLE_FOR.total_seconds())
    await stage.bot.answer_callback_query(query_id, "x" * 200)
    stage.clock.advance(seconds=1)
    with pytest.raises(BadRequest, match="Query is too old"):
        await stage.bot.answer_callback_query(query_id)


@on_stage
async def test_only_a_button_that_is_there_can_be_tapped_unless_the_app_lags(stage):
    sent = await stage.bot.send_message(ANA, "x", reply_markup=_buttons(Yes="y"))
    await stage.bot.edit_message_text("x, done", ANA, sent.id)
    with pytest.raises(PersonCannotError, match="no button"):
        stage.ana.tap(sent.id, "y")
    stage.ana.tap(sent.id, "y", even_if_gone=True)
    (update,) = await stage.bot.get_updates()
    assert update.callback_query.data == "y"


@on_stage
async def test_an_edit_without_buttons_takes_them_away(stage):
    sent = await stage.bot.send_message(ANA, "x", reply_markup=_buttons(Yes="y"))
    await stage.bot.edit_message_reply_markup(ANA, sent.id, reply_markup=_buttons(No="n"))
    await stage.bot.edit_message_text("y", ANA, sent.id)
    (shown,) = stage.ana.sees()
    assert shown.buttons == ()
    texts = [[row[0].text for row in old.buttons] for old in shown.history]
    assert texts == [["Yes"], ["No"]]


@on_stage
async def test_every_kind_of_media_parses_in_the_library(stage):
    stage.ana.send_photo("front view")
    stage.ana.send_video("hold", declared_bytes=60_000_000)
    stage.ana.send_voice()
    stage.ana.send_sticker()
    stage.ana.send_location(latitude=1.5, longitude=2.5)
    stage.ana.send_contact(phone_number="000", first_name="Nobody")
    stage.ana.send_document("list.csv", b"name\n")
    messages = [update.message for update in await stage.bot.get_updates()]
    photo, video, voice, sticker, location, contact, document = messages
    assert (photo.caption, photo.photo[0].width) == ("front view", 1280)
    assert video.video.file_size == 60_000_000
    assert voice.voice.duration == timedelta(seconds=4)  # CHOSEN: the default of our own clip
    assert sticker.sticker.is_video is False
    assert location.location.latitude == 1.5
    assert contact.contact.first_name == "Nobody"
    assert document.document.file_name == "list.csv"
    kinds = [message.media for message in stage.ana.sees()]
    assert kinds == [
        MediaKind.PHOTO,
        MediaKind.VIDEO,
        MediaKind.VOICE,
        MediaKind.STICKER,
        MediaKind.LOCATION,
        MediaKind.CONTACT,
        MediaKind.DOCUMENT,
    ]


@on_stage
async def test_an_album_is_several_messages_of_one_group(stage):
    message_ids = stage.ana.send_album(("set 1", "", "set 3"))
    messages = [update.message for update in await stage.bot.get_updates()]
    assert [message.id for message in messages] == message_ids
    assert len({message.media_group_id for message in messages}) == 1
    assert messages[0].media_group_id is not None


@on_stage
async def test_forwards_say_where_they_come_from(stage):
    sent = await stage.bot.send_message(ANA, "from the bot")
    stage.ana.forward(sent.id)
    stage.ana.forward_from_elsewhere("/stage Bruno 5", sender_name="Somebody")
    own, other = [update.message for update in await stage.bot.get_updates()]
    assert own.forward_origin.sender_user.id == stage.bot.id
    assert isinstance(other.forward_origin, MessageOriginHiddenUser)
    assert [message.is_forward for message in stage.ana.sees()] == [False, True, True]


@on_stage
async def test_blocking_and_unblocking_are_updates(stage):
    stage.ana.block()
    with pytest.raises(PersonCannotError):
        stage.ana.write("x")
    with pytest.raises(PersonCannotError):
        stage.ana.block()
    stage.ana.unblock()
    changes = [update.my_chat_member for update in await stage.bot.get_updates()]
    assert [change.new_chat_member.status for change in changes] == ["kicked", "member"]


@on_stage
async def test_a_group_is_another_chat_with_its_own_message_numbers(stage):
    stage.ana.write("private")
    stage.server.people.make_group(GROUP, "Our team", by=stage.ana)
    message_id = stage.bruno.write("/today", in_chat_id=GROUP)
    _, joined, written = await stage.bot.get_updates()
    assert joined.my_chat_member.chat.type == "supergroup"
    assert (written.message.chat_id, written.message.from_user.id) == (GROUP, BRUNO)
    assert message_id == 1  # DERIVED: the first in this group
    assert stage.bruno.sees() == ()


@pytest.mark.parametrize("payload", ["", "x" * 65, "no spaces", "ñ"])
@on_stage
async def test_a_link_carries_only_what_the_platform_lets_it_carry(stage, payload):
    # PUBLISHED botapi: at most 64 of A-Z a-z 0-9 _ -
    with pytest.raises(PersonCannotError):
        stage.ana.open_link(payload)
    stage.ana.open_link("x" * 64)
    assert stage.ana.sees()[0].text == "/start " + "x" * 64


@on_stage
async def test_the_screen_shows_both_sides_in_order_and_drops_what_is_deleted(stage):
    stage.ana.write("hello")
    gone = await stage.bot.send_message(ANA, "gone soon")
    await stage.bot.send_message(ANA, "3 < 5", disable_notification=True)
    await stage.bot.delete_message(ANA, gone.id)
    hello, answer = stage.ana.sees()
    assert (hello.is_from_bot, hello.sender_name) == (False, "Ana")
    assert (answer.text, answer.html, answer.is_silent) == ("3 < 5", "3 &lt; 5", True)
    assert stage.ana.sees_from_bot() == (answer,)


@on_stage
async def test_the_same_seed_draws_the_same_numbers(stage):
    twins = [LoopbackPlatform(now=stage.clock.now, seed=7) for _ in range(2)]
    first, second = (twin.updates.inject({}) for twin in twins)
    assert first == second
    assert first != LoopbackPlatform(now=stage.clock.now, seed=8).updates.inject({})
