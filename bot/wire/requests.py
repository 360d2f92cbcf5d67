"""From an outbox operation to the platform's call."""

import asyncio
from collections.abc import Callable, Mapping
from typing import Any

from telegram import (
    Bot,
    BotCommand,
    BotCommandScopeChat,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputFile,
    LinkPreviewOptions,
    ReplyParameters,
)
from telegram.constants import ParseMode

from bot.pictures.handover_values import HandoverPage
from storage.records.wire import Operation, Outgoing

NO_PREVIEW = LinkPreviewOptions(is_disabled=True)

MakeFile = Callable[[Mapping[str, Any]], bytes]
"""Makes a file from its payload, in a thread beside the loop."""


async def perform(bot: Bot, outgoing: Outgoing, make_file: MakeFile | None = None) -> int | None:
    """Make the call of one operation; return the message id that the platform gave it."""
    payload = outgoing.payload
    match outgoing.operation:
        case Operation.SEND:
            return await _send(bot, outgoing.chat_id, payload)
        case Operation.EDIT:
            return await _edit(bot, outgoing)
        case Operation.COPY:
            copied = await bot.copy_message(
                outgoing.chat_id, payload["from_chat_id"], payload["message_id"]
            )
            return copied.message_id
        case Operation.DOCUMENT:
            if "file" in payload and make_file is not None:
                return await _send_file(bot, outgoing.chat_id, payload, make_file)
            return await _send_page(bot, outgoing.chat_id, payload)
        case Operation.FETCH:
            raise ValueError("a file is fetched, and not sent")
        case Operation.MEDIA:
            return await _send_media(bot, outgoing.chat_id, payload)
        case Operation.MENU:
            await bot.set_my_commands(
                [BotCommand(name, about) for name, about in payload["commands"]],
                scope=BotCommandScopeChat(outgoing.chat_id),
            )
            return None


async def _send(bot: Bot, chat_id: int, payload: Mapping[str, Any]) -> int:
    sent = await bot.send_message(
        chat_id,
        payload["text"],
        parse_mode=ParseMode.HTML,
        link_preview_options=NO_PREVIEW,
        reply_markup=_keyboard(payload),
        reply_parameters=_replied(payload),
    )
    return sent.message_id


async def _send_media(bot: Bot, chat_id: int, payload: Mapping[str, Any]) -> int:
    """Send a picture or clip that the platform keeps, by its reference."""
    how: dict[str, Any] = {
        "caption": payload["text"],
        "parse_mode": ParseMode.HTML,
        "reply_markup": _keyboard(payload),
    }
    match payload["sent_as"]:
        case "photo":
            sent = await bot.send_photo(chat_id, payload["file_id"], **how)
        case "animation":
            sent = await bot.send_animation(chat_id, payload["file_id"], **how)
        case _:
            sent = await bot.send_video(chat_id, payload["file_id"], **how)
    return sent.message_id


async def _send_page(bot: Bot, chat_id: int, payload: Mapping[str, Any]) -> int:
    """Draw the page beside the loop, and send it."""
    from bot.pictures.handover_page import draw  # noqa: PLC0415  the drawing library is heavy

    content = await asyncio.to_thread(draw, HandoverPage.model_validate(payload["page"]))
    return await _send_content(bot, chat_id, payload, content)


async def _send_file(
    bot: Bot, chat_id: int, payload: Mapping[str, Any], make_file: MakeFile
) -> int:
    """Make a file beside the loop, and send it."""
    return await _send_content(bot, chat_id, payload, await asyncio.to_thread(make_file, payload))


def _replied(payload: Mapping[str, Any]) -> ReplyParameters | None:
    """Name the message that is replied to; one that is gone does not hold the answer back."""
    message_id = payload.get("reply_to")
    if message_id is None:
        return None
    return ReplyParameters(message_id, allow_sending_without_reply=True)


async def _send_content(bot: Bot, chat_id: int, payload: Mapping[str, Any], content: bytes) -> int:
    sent = await bot.send_document(
        chat_id,
        InputFile(content, filename=payload["file_name"]),
        caption=payload["caption"],
        parse_mode=ParseMode.HTML,
    )
    return sent.message_id


async def _edit(bot: Bot, outgoing: Outgoing) -> int | None:
    payload = outgoing.payload
    message_id = outgoing.edits_message_id or payload.get("message_id")
    if message_id is None:
        return None
    if "text" in payload:
        await bot.edit_message_text(
            payload["text"],
            chat_id=outgoing.chat_id,
            message_id=message_id,
            parse_mode=ParseMode.HTML,
            link_preview_options=NO_PREVIEW,
            reply_markup=_keyboard(payload),
        )
    else:
        await bot.edit_message_reply_markup(
            chat_id=outgoing.chat_id, message_id=message_id, reply_markup=_keyboard(payload)
        )
    return message_id


def _keyboard(payload: Mapping[str, Any]) -> InlineKeyboardMarkup | None:
    rows = payload.get("buttons")
    if not rows:
        return None
    return InlineKeyboardMarkup(
        [[InlineKeyboardButton(text, callback_data=token) for text, token in row] for row in rows]
    )
