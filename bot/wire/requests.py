"""From an outbox operation to the platform's call."""

import asyncio
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from telegram import (
    Bot,
    BotCommand,
    BotCommandScopeChat,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputFile,
    InputMediaPhoto,
    LinkPreviewOptions,
    ReplyParameters,
)
from telegram.constants import ParseMode

from bot.pictures.handover_values import HandoverPage
from bot.pictures.studio import NotDrawnError, Studio
from storage.records.wire import Operation, Outgoing

NO_PREVIEW = LinkPreviewOptions(is_disabled=True)
PHOTO_NAME = "picture.png"

MakeFile = Callable[[Mapping[str, Any]], bytes]
"""Makes a file from its payload, in a thread beside the loop."""


@dataclass(frozen=True)
class Performed:
    """What came of an operation.

    ``message_id`` is the first message's; ``further`` are those of an album behind the first, each
    with the subject it is about; ``left_to_say`` are the words of pictures that were not drawn.
    """

    message_id: int | None
    further: tuple[tuple[int, str | None], ...] = ()
    left_to_say: tuple[Mapping[str, Any], ...] = ()


async def perform(
    bot: Bot, outgoing: Outgoing, *, studio: Studio, make_file: MakeFile | None = None
) -> Performed:
    """Make the call of one operation, drawing its pictures first."""
    match outgoing.operation:
        case Operation.PHOTO:
            return await _send_album(bot, outgoing, [outgoing.payload], studio)
        case Operation.ALBUM:
            return await _send_album(bot, outgoing, outgoing.payload["pictures"], studio)
        case _:
            return Performed(await _call(bot, outgoing, make_file))


async def _call(bot: Bot, outgoing: Outgoing, make_file: MakeFile | None) -> int | None:
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
        case _:  # pragma: no cover - what is drawn is handled above
            raise ValueError(outgoing.operation)


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


async def _send_album(
    bot: Bot, outgoing: Outgoing, pictures: Sequence[Mapping[str, Any]], studio: Studio
) -> Performed:
    """Send what could be drawn, as an album where there are several; else the words alone."""
    found = [(one, await _drawn(studio, one)) for one in pictures]
    ready = [(one, png) for one, png in found if png is not None]
    missing = [_in_words(one) for one, png in found if png is None]
    chat_id = outgoing.chat_id
    if not ready:
        first, *others = missing
        return Performed(await _send(bot, chat_id, first), left_to_say=tuple(others))
    if len(ready) == 1:
        message_id = await _send_photo(bot, chat_id, *ready[0])
        return Performed(message_id, left_to_say=tuple(missing))
    sent = await bot.send_media_group(
        chat_id,
        [
            InputMediaPhoto(png, caption=one["caption"], parse_mode=ParseMode.HTML)
            for one, png in ready
        ],
    )
    further = [
        (message.message_id, one.get("subject"))
        for message, (one, _) in zip(sent[1:], ready[1:], strict=True)
    ]
    return Performed(sent[0].message_id, tuple(further), tuple(missing))


async def _drawn(studio: Studio, picture: Mapping[str, Any]) -> bytes | None:
    try:
        return await studio.draw(picture["picture"])
    except NotDrawnError:
        return None


def _in_words(picture: Mapping[str, Any]) -> dict[str, Any]:
    """Return the message that stands in for a picture."""
    return {
        "text": f"{picture['caption']}\n{picture['instead']}",
        "buttons": picture.get("buttons", []),
        "subject": picture.get("subject"),
    }


async def _send_photo(bot: Bot, chat_id: int, picture: Mapping[str, Any], png: bytes) -> int:
    sent = await bot.send_photo(
        chat_id,
        InputFile(png, filename=PHOTO_NAME),
        caption=picture["caption"],
        parse_mode=ParseMode.HTML,
        reply_markup=_keyboard(picture),
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
