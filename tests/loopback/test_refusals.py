"""What the platform refuses, with which status and words.

Bounds: PUBLISHED botapi. Descriptions: botapi publishes none; they are the platform's own form as
its clients meet it, from memory, and the library's error classes are the check from outside.
"""

import json
from typing import Any

import pytest
import telegram
from telegram.constants import (
    BotCommandLimit,
    CallbackQueryLimit,
    FloodLimit,
    InlineKeyboardButtonLimit,
    InlineKeyboardMarkupLimit,
    MediaGroupLimit,
    MessageLimit,
    PollingLimit,
)
from telegram.error import BadRequest, Forbidden, InvalidToken

from demo_scenario.loopback import bounds, limits, updates
from tests.loopback.stage import ANA, UNKNOWN_CHAT, on_stage, request_without_certificates

MUSCLE = "💪"  # DERIVED: outside the basic plane, so two UTF-16 units and four bytes


def _keyboard(*rows):
    return {"inline_keyboard": [list(row) for row in rows]}


def _button(**fields):
    return {"text": "tap", **fields}


def _item(**fields):
    return {"type": "photo", "media": "unknown", **fields}


REFUSED: dict[str, tuple[str, dict[str, Any], str]] = {
    "empty text": ("sendMessage", {"text": ""}, "message text is empty"),
    "white space alone": ("sendMessage", {"text": " \n "}, "message text is empty"),
    "nothing left after parsing": (
        "sendMessage",
        {"text": "<b></b>", "parse_mode": "HTML"},
        "message text is empty",
    ),
    "4097 units": ("sendMessage", {"text": "x" * 4097}, "message is too long"),
    "2049 characters of two units": ("sendMessage", {"text": MUSCLE * 2049}, "too long"),
    "unknown parse mode": (
        "sendMessage",
        {"text": "x", "parse_mode": "poem"},
        "unsupported parse_mode",
    ),
    "no chat": ("sendMessage", {"chat_id": "", "text": "x"}, "chat_id is empty"),
    "unknown chat": ("sendMessage", {"chat_id": UNKNOWN_CHAT, "text": "x"}, "chat not found"),
    "reply to nothing": (
        "sendMessage",
        {"text": "x", "reply_parameters": {"message_id": 77}},
        "message to be replied not found",
    ),
    "65 bytes of data": (
        "sendMessage",
        {"text": "x", "reply_markup": _keyboard([_button(callback_data="d" * 65)])},
        "BUTTON_DATA_INVALID",
    ),
    "17 characters of four bytes": (
        "sendMessage",
        {"text": "x", "reply_markup": _keyboard([_button(callback_data=MUSCLE * 17)])},
        "BUTTON_DATA_INVALID",
    ),
    "empty data": (
        "sendMessage",
        {"text": "x", "reply_markup": _keyboard([_button(callback_data="")])},
        "Text buttons are unallowed in the inline keyboard",
    ),
    "neither url nor data": (
        "sendMessage",
        {"text": "x", "reply_markup": _keyboard([_button()])},
        "can't parse inline keyboard button: Text buttons are unallowed",
    ),
    "button without text": (
        "sendMessage",
        {"text": "x", "reply_markup": _keyboard([{"callback_data": "a"}])},
        'Can\'t find field "text"',
    ),
    "button to nowhere": (
        "sendMessage",
        {"text": "x", "reply_markup": _keyboard([_button(url="not a link")])},
        "inline keyboard button URL 'not a link' is invalid",
    ),
    "nine in a row": (
        "sendMessage",
        {"text": "x", "reply_markup": _keyboard([_button(callback_data="a")] * 9)},
        "REPLY_MARKUP_TOO_LONG",
    ),
    "a hundred and one in all": (
        "sendMessage",
        {
            "text": "x",
            "reply_markup": _keyboard(
                *[[_button(callback_data="a")] * 8] * 12, [_button(callback_data="a")] * 5
            ),  # DERIVED: 12 x 8 + 5 = 101
        },
        "REPLY_MARKUP_TOO_LONG",
    ),
    "broken markup": (
        "sendMessage",
        {"text": "x", "reply_markup": "{"},
        "can't parse reply_markup JSON object",
    ),
    "edit of nothing": (
        "editMessageText",
        {"message_id": 77, "text": "x"},
        "message to edit not found",
    ),
    "edit of no one": ("editMessageText", {"text": "x"}, "message identifier is not specified"),
    "buttons of nothing": (
        "editMessageReplyMarkup",
        {"message_id": 77},
        "message to edit not found",
    ),
    "deletion of nothing": ("deleteMessage", {"message_id": 77}, "message to delete not found"),
    "copy of nothing": (
        "copyMessage",
        {"from_chat_id": ANA, "message_id": 77},
        "message to copy not found",
    ),
    "copy from nowhere": (
        "copyMessage",
        {"from_chat_id": UNKNOWN_CHAT, "message_id": 1},
        "chat not found",
    ),
    "unknown tap": (
        "answerCallbackQuery",
        {"callback_query_id": "77"},
        "query is too old and response timeout expired or query ID is invalid",
    ),
    "unknown photo": ("sendPhoto", {"photo": "unknown"}, "wrong file identifier"),
    "photo by address": ("sendPhoto", {"photo": "https://x.test/a.png"}, "failed to get HTTP URL"),
    "no photo": ("sendPhoto", {}, "there is no photo in the request"),
    "caption of 1025": (
        "sendPhoto",
        {"photo": "unknown", "caption": "x" * 1025},
        "message caption is too long",
    ),
    "album of one": ("sendMediaGroup", {"media": [_item()]}, "at least 2 items"),
    "album of eleven": ("sendMediaGroup", {"media": [_item()] * 11}, "too many messages"),
    "mixed album": (
        "sendMediaGroup",
        {"media": [_item(), _item(type="document")]},
        "document can't be mixed with other media types",
    ),
    "album part missing": (
        "sendMediaGroup",
        {"media": [_item(media="attach://a"), _item(media="attach://b")]},
        "attached file not found",
    ),
    "unknown action": ("sendChatAction", {"action": "dancing"}, "wrong parameter action"),
    "unknown file": ("getFile", {"file_id": "unknown"}, "wrong file_id"),
    "command in capitals": (
        "setMyCommands",
        {"commands": [{"command": "Week", "description": "x"}]},
        "BOT_COMMAND_INVALID",
    ),
    "command of 33": (
        "setMyCommands",
        {"commands": [{"command": "w" * 33, "description": "x"}]},
        "BOT_COMMAND_INVALID",
    ),
    "command undescribed": (
        "setMyCommands",
        {"commands": [{"command": "week", "description": ""}]},
        "BOT_COMMAND_DESCRIPTION_INVALID",
    ),
    "commands for a stranger": (
        "setMyCommands",
        {
            "commands": [{"command": "week", "description": "x"}],
            "scope": {"type": "chat", "chat_id": UNKNOWN_CHAT},
        },
        "chat not found",
    ),
    "kinds that are no list": (
        "getUpdates",
        {"allowed_updates": {"message": True}},
        "can't parse allowed_updates",
    ),
    "offset in words": ("getUpdates", {"offset": "last"}, "must be an integer"),
}


@pytest.mark.parametrize("case", REFUSED)
@on_stage
async def test_refused_with_400_and_the_reason_and_nothing_is_shown(stage, case):
    method, params, reason = REFUSED[case]
    status, body = await stage.call(method, **{"chat_id": ANA, **params})
    assert (status, body["ok"], body["error_code"]) == (400, False, 400)
    assert body["description"].startswith("Bad Request: ")
    assert reason in body["description"]
    assert stage.ana.sees() == ()
    assert stage.platform.requests.of(method)[0].description == body["description"]


@pytest.mark.parametrize(
    ("method", "params"),
    [
        ("sendMessage", {"text": "x" * 4096}),  # PUBLISHED botapi: 1 to 4096
        ("sendMessage", {"text": MUSCLE * 2048}),  # DERIVED: 2048 x 2 = 4096 units
        ("sendMessage", {"text": "<b>" + "x" * 4096 + "</b>", "parse_mode": "HTML"}),
        ("sendMessage", {"text": "&lt;" * 4096, "parse_mode": "HTML"}),
        # PUBLISHED botapi: 1 to 64 bytes; DERIVED: 16 x 4 bytes = 64
        (
            "sendMessage",
            {"text": "x", "reply_markup": _keyboard([_button(callback_data="d" * 64)])},
        ),
        (
            "sendMessage",
            {"text": "x", "reply_markup": _keyboard([_button(callback_data=MUSCLE * 16)])},
        ),
        (
            "sendMessage",
            {"text": "x", "reply_markup": _keyboard([_button(callback_data="a")] * 8)},
        ),
        ("sendMessage", {"text": "x", "reply_markup": _keyboard([_button(url="https://x.test")])}),
        (
            "sendMessage",
            {
                "text": "x",
                "reply_parameters": json.dumps({"message_id": 77}),
                "allow_sending_without_reply": True,
            },
        ),
    ],
)
@on_stage
async def test_what_just_fits_is_sent(stage, method, params):
    status, body = await stage.call(method, chat_id=ANA, **params)
    assert status == 200, body
    assert len(stage.ana.sees()) == 1


def test_our_bounds_are_those_that_an_independent_library_publishes():
    # PUBLISHED botapi, by way of telegram.constants of python-telegram-bot
    assert bounds.TEXT_UNITS_MAX == MessageLimit.MAX_TEXT_LENGTH
    assert bounds.CAPTION_UNITS_MAX == MessageLimit.CAPTION_LENGTH
    assert bounds.CALLBACK_DATA_BYTES_MAX == InlineKeyboardButtonLimit.MAX_CALLBACK_DATA
    assert bounds.CALLBACK_ANSWER_CHARS_MAX == CallbackQueryLimit.ANSWER_CALLBACK_QUERY_TEXT_LENGTH
    assert bounds.BUTTONS_IN_ROW_MAX == InlineKeyboardMarkupLimit.BUTTONS_PER_ROW
    assert bounds.BUTTONS_MAX == InlineKeyboardMarkupLimit.TOTAL_BUTTON_NUMBER
    assert bounds.ALBUM_ITEMS_MIN == MediaGroupLimit.MIN_MEDIA_LENGTH
    assert bounds.ALBUM_ITEMS_MAX == MediaGroupLimit.MAX_MEDIA_LENGTH
    assert bounds.COMMANDS_MAX == BotCommandLimit.MAX_COMMAND_NUMBER
    assert bounds.COMMAND_DESCRIPTION_MAX == BotCommandLimit.MAX_DESCRIPTION
    assert updates.LIMIT_MAX == PollingLimit.MAX_LIMIT
    assert limits.CHAT_PER_S == FloodLimit.MESSAGES_PER_SECOND_PER_CHAT
    assert limits.OVERALL_PER_S == FloodLimit.MESSAGES_PER_SECOND
    assert limits.GROUP_PER_S * 60 == FloodLimit.MESSAGES_PER_MINUTE_PER_GROUP


def test_our_file_sizes_are_those_that_an_independent_library_publishes():
    published = telegram.constants.FileSizeLimit
    assert bounds.FileBounds() == bounds.FileBounds(
        photo_bytes=published.PHOTOSIZE_UPLOAD,
        upload_bytes=published.FILESIZE_UPLOAD,
        download_bytes=published.FILESIZE_DOWNLOAD,
    )


@on_stage
async def test_an_edit_that_changes_nothing_is_refused(stage):
    sent = await stage.bot.send_message(ANA, "<b>x</b>", parse_mode="HTML")
    with pytest.raises(BadRequest, match="Message is not modified"):
        await stage.bot.edit_message_text("<strong>x</strong> ", ANA, sent.id, parse_mode="HTML")
    with pytest.raises(BadRequest, match="Message is not modified"):
        await stage.bot.edit_message_reply_markup(ANA, sent.id)
    assert stage.ana.sees()[0].history == ()
    await stage.bot.edit_message_text("x", ANA, sent.id)  # other entities are a change


@on_stage
async def test_a_persons_message_cannot_be_edited_by_the_bot(stage):
    theirs = stage.ana.write("mine")
    with pytest.raises(BadRequest, match="Message can't be edited"):
        await stage.bot.edit_message_text("yours", ANA, theirs)


@on_stage
async def test_a_blocked_chat_is_forbidden_until_it_is_unblocked(stage):
    stage.ana.block()
    with pytest.raises(Forbidden, match="bot was blocked by the user"):
        await stage.bot.send_message(ANA, "x")
    assert stage.platform.requests.of("sendMessage")[0].status == 403
    stage.ana.unblock()
    await stage.bot.send_message(ANA, "x")
    assert len(stage.ana.sees()) == 1


@on_stage
async def test_one_who_never_started_the_bot_cannot_be_written_to(stage):
    clara = stage.server.people.add(1003, "Clara", has_started=False)
    with pytest.raises(BadRequest, match="Chat not found"):
        await stage.bot.send_message(clara.chat_id, "x")
    clara.open_link("invitation-7")
    await stage.bot.send_message(clara.chat_id, "x")


@on_stage
async def test_a_wrong_token_is_unauthorized(stage):
    stranger = telegram.Bot(
        "7000000002:another",
        base_url=stage.server.base_url,
        request=request_without_certificates(),
        get_updates_request=request_without_certificates(),
    )
    with pytest.raises(InvalidToken):
        await stranger.initialize()
    await stranger.shutdown()
    async with stage.http.get(f"{stage.server.base_url}7000000002:another/getMe") as answer:
        assert (answer.status, (await answer.json())["description"]) == (401, "Unauthorized")


@pytest.mark.parametrize("path", ["", "bot", "botnonsense/getMe", "elsewhere/getMe"])
@on_stage
async def test_an_address_that_is_no_method_is_not_found(stage, path):
    async with stage.http.get(f"{stage.server.base_url.removesuffix('bot')}{path}") as answer:
        assert (answer.status, (await answer.json())["description"]) == (404, "Not Found")


@on_stage
async def test_an_unknown_method_is_not_found(stage):
    status, body = await stage.call("sendWishes", chat_id=ANA)
    assert (status, body["description"]) == (404, "Not Found: method not found")


@on_stage
async def test_the_case_of_a_method_does_not_matter(stage):
    # PUBLISHED botapi, making requests: all methods are case-insensitive
    status, _ = await stage.call("SENDmessage", chat_id=ANA, text="x")
    assert status == 200


@on_stage
async def test_a_message_can_be_deleted_for_two_days(stage):
    early = await stage.bot.send_message(ANA, "early")
    late = await stage.bot.send_message(ANA, "late")
    stage.clock.advance(hours=48)  # PUBLISHED botapi, deleteMessage: less than 48 hours
    assert await stage.bot.delete_message(ANA, early.id)
    stage.clock.advance(seconds=1)
    with pytest.raises(BadRequest, match="can't be deleted"):
        await stage.bot.delete_message(ANA, late.id)
    assert [message.text for message in stage.ana.sees()] == ["late"]
