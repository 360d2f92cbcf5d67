"""The independent picture of the interface (aiogram's typed methods) finds what is wrong."""

import json

import pytest
from telegram import (
    BotCommand,
    BotCommandScopeChat,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputMediaPhoto,
    ReplyParameters,
)

from demo_scenario.loopback.interface_check import problems_of_all, problems_of_call
from demo_scenario.loopback.sample_uploads import PHOTO
from tests.loopback.stage import ANA, BRUNO, on_stage


@on_stage
async def test_the_real_librarys_calls_all_fit(stage):
    keyboard = InlineKeyboardMarkup([[InlineKeyboardButton("Yes", callback_data="y")]])
    sent = await stage.bot.send_message(
        ANA,
        "[not json] <b>x</b>",
        parse_mode="HTML",
        reply_markup=keyboard,
        disable_notification=True,
        reply_parameters=ReplyParameters(5, allow_sending_without_reply=True),
    )
    await stage.bot.edit_message_text("y", ANA, sent.id)
    await stage.bot.answer_callback_query(stage.ana.tap(sent.id, "y", even_if_gone=True), "ok")
    await stage.bot.copy_message(BRUNO, ANA, sent.id)
    await stage.bot.send_photo(ANA, PHOTO.content, caption="x")
    await stage.bot.send_document(ANA, b"x", filename="a.csv")
    await stage.bot.send_media_group(BRUNO, [InputMediaPhoto(PHOTO.content)] * 2)
    await stage.bot.set_my_commands([BotCommand("a", "b")], scope=BotCommandScopeChat(ANA))
    await stage.bot.send_chat_action(ANA, "typing")
    await stage.bot.get_updates(offset=-1, timeout=0, allowed_updates=["message"])
    assert stage.platform.requests.received >= 10
    assert all(record.status == 200 for record in stage.platform.requests)
    assert problems_of_all(stage.platform.requests) == ()


@pytest.mark.parametrize(
    ("method", "params", "problem"),
    [
        ("sendMesage", {}, "sendMesage: there is no such method"),
        ("sendMessage", {"chat_id": "1"}, "sendMessage.text: Field required"),
        ("sendMessage", {"chat_id": "1", "text": "x", "txt": "y"}, "sendMessage.txt: no such"),
        ("deleteMessage", {"chat_id": "1", "message_id": "one"}, "deleteMessage.message_id"),
        ("answerCallbackQuery", {"callback_query_id": "1", "show_alert": "maybe"}, "show_alert"),
        (
            "sendMessage",
            {
                "chat_id": "1",
                "text": "x",
                "reply_markup": json.dumps(
                    {"inline_keyboard": [[{"text": "a", "callbackdata": "b"}]]}
                ),
            },
            "reply_markup.inline_keyboard.0.0.callbackdata: no such field",
        ),
        (
            "sendMessage",
            {"chat_id": "1", "text": "x", "reply_markup": json.dumps({"inline_keyboard": [[{}]]})},
            "sendMessage.reply_markup.inline_keyboard",  # a button without text is no keyboard
        ),
        ("getUpdates", {"allowed_updates": "message"}, "getUpdates.allowed_updates"),
    ],
)
def test_a_wrong_call_is_caught(method, params, problem):
    assert any(problem in found for found in problems_of_call(method, params))


def test_a_file_that_nothing_names_is_caught():
    params = {"chat_id": "1", "media": json.dumps([{"type": "photo", "media": "attach://a"}] * 2)}
    assert problems_of_call("sendMediaGroup", params, {"a": "a.png"}) == ()
    (problem,) = problems_of_call("sendMediaGroup", params, {"a": "a.png", "b": "b.png"})
    assert problem == "sendMediaGroup.b: a file that nothing names"


def test_text_that_looks_like_json_stays_text():
    assert problems_of_call("sendMessage", {"chat_id": "1", "text": "[1, 2]"}) == ()
    assert problems_of_call("sendMessage", {"chat_id": "1", "text": "{}"}) == ()
