"""From the platform's update to our own event."""

import json
from base64 import b64decode
from collections.abc import Iterator
from datetime import datetime
from typing import Any

from telegram import Bot, ChatMember, ChatMemberUpdated, Document, Message, Update
from telegram.constants import ChatType

from bot.events import (
    BlockedUs,
    ChatMoved,
    Event,
    FileArrived,
    Media,
    NotForUs,
    SentFile,
    SentMedia,
    Tapped,
    UnblockedUs,
    Wrote,
)
from bot.wire.fetch import fetched_from

WANTED_UPDATES = (
    Update.MESSAGE,
    Update.EDITED_MESSAGE,
    Update.CALLBACK_QUERY,
    Update.MY_CHAT_MEMBER,
)


class MalformedUpdateError(ValueError):
    """The stored update does not have the shape that the platform promises."""


def event_from(raw: str, bot: Bot, *, received_at: datetime) -> Event:
    """Read a stored raw update as one of our events.

    Raises:
        MalformedUpdateError: when it cannot be read at all.

    """
    fetched = fetched_from(raw)
    if fetched is not None:
        return _file(fetched, received_at)
    update = _parsed(raw, bot)
    if update is None:
        return NotForUs(chat_id=0, at=received_at, why="unknown_update")
    if update.callback_query is not None:
        query = update.callback_query
        return Tapped(
            chat_id=query.from_user.id,
            at=received_at,
            message_id=query.message.message_id if query.message else None,
            token=query.data or "",
        )
    if update.my_chat_member is not None:
        return _membership(update.my_chat_member, received_at)
    message = update.message or update.edited_message
    if message is None:
        return NotForUs(chat_id=0, at=received_at, why="unknown_update")
    return _message(message, is_edit=update.message is None, received_at=received_at)


def tap_ids(updates: list[dict[str, Any]]) -> Iterator[str]:
    """Yield the ids of the taps in raw updates, so that each can be answered at once."""
    for raw in updates:
        query = raw.get("callback_query")
        if isinstance(query, dict) and isinstance(query.get("id"), str):
            yield query["id"]


def _parsed(raw: str, bot: Bot) -> Update | None:
    """Parse what we asked for; another kind is None, whether the library can read it or not."""
    try:
        tree = _whole(json.loads(raw))
        if tree["update_id"] is not None and not tree.keys() & set(WANTED_UPDATES):
            return None
        return Update.de_json(tree, bot)
    except Exception as fault:
        raise MalformedUpdateError(f"{type(fault).__name__} in an update") from fault


def _whole(node: Any) -> Any:
    """Replace half surrogate pairs, which JSON can carry and no database takes."""
    if isinstance(node, str):
        return node.encode("utf-16", "surrogatepass").decode("utf-16", "replace")
    if isinstance(node, dict):
        return {key: _whole(value) for key, value in node.items()}
    return [_whole(value) for value in node] if isinstance(node, list) else node


def _membership(change: ChatMemberUpdated, at: datetime) -> Event:
    if change.chat.type != ChatType.PRIVATE:
        return NotForUs(chat_id=change.chat.id, at=at, why="group")
    if change.new_chat_member.status in {ChatMember.BANNED, ChatMember.LEFT}:
        return BlockedUs(chat_id=change.chat.id, at=at)
    return UnblockedUs(chat_id=change.chat.id, at=at)


def _message(message: Message, *, is_edit: bool, received_at: datetime) -> Event:
    chat_id = message.chat.id
    if message.migrate_to_chat_id is not None:
        return ChatMoved(chat_id=chat_id, at=received_at, new_chat_id=message.migrate_to_chat_id)
    if message.chat.type != ChatType.PRIVATE:
        return NotForUs(chat_id=chat_id, at=received_at, why="group")
    reply_to = message.reply_to_message.message_id if message.reply_to_message else None
    if message.text is None and is_edit and message.location is not None:
        # A place that is shared live moves every few seconds; its first position was heard.
        return NotForUs(chat_id=chat_id, at=received_at, why="live_location")
    if message.text is None:
        return _media(message, received_at, reply_to)
    replied_as, replied_file = (
        _reference(message.reply_to_message) if message.reply_to_message else ("", None)
    )
    return Wrote(
        chat_id=chat_id,
        at=received_at,
        message_id=message.message_id,
        text=message.text,
        is_edit=is_edit,
        is_forwarded=message.forward_origin is not None,
        reply_to_message_id=reply_to,
        reply_to_file_id=replied_file,
        reply_to_sent_as=replied_as,
        first_name=message.from_user.first_name if message.from_user else "",
        language_code=message.from_user.language_code if message.from_user else None,
    )


def _media(message: Message, received_at: datetime, reply_to: int | None) -> SentMedia:
    place = message.location or (message.venue.location if message.venue else None)
    kinds = {
        Media.PHOTO: message.photo,
        Media.VIDEO: message.video or message.animation,
        Media.VIDEO_NOTE: message.video_note,
        Media.VOICE: message.voice or message.audio,
        Media.STICKER: message.sticker,
        Media.DOCUMENT: message.document,
        Media.LOCATION: place,
    }
    media = next((kind for kind, content in kinds.items() if content), Media.OTHER)
    sent_as, file_id = _reference(message)
    return SentMedia(
        chat_id=message.chat.id,
        at=received_at,
        message_id=message.message_id,
        media=media,
        caption=message.caption or "",
        album_id=message.media_group_id,
        is_forwarded=message.forward_origin is not None,
        reply_to_message_id=reply_to,
        latitude=place.latitude if place else None,
        longitude=place.longitude if place else None,
        file=_sent_file(message.document),
        file_id=file_id,
        sent_as=sent_as,
        language_code=message.from_user.language_code if message.from_user else None,
    )


def _reference(message: Message) -> tuple[str, str | None]:
    """Return how a medium is sent again: the platform's name of its kind, and its file's id.

    An animation carries a document too, for old apps, so it is looked for first.
    """
    named = {
        "photo": message.photo[-1] if message.photo else None,
        "video": message.video,
        "animation": message.animation,
        "document": message.document,
    }
    return next(((name, one.file_id) for name, one in named.items() if one), ("", None))


def _sent_file(document: Document | None) -> SentFile | None:
    if document is None:
        return None
    return SentFile(
        file_id=document.file_id,
        name=document.file_name or "",
        size_bytes=document.file_size,
    )


def _file(fetched: dict[str, Any], at: datetime) -> FileArrived:
    """Read what we stored ourselves when a file had been fetched."""
    try:
        content = fetched.get("content")
        return FileArrived(
            chat_id=fetched["chat"]["id"],
            at=at,
            purpose=fetched["purpose"],
            name=fetched["text"],
            words=fetched.get("words", ""),
            content=None if content is None else b64decode(content),
            fault=fetched.get("fault", ""),
        )
    except Exception as fault:
        raise MalformedUpdateError(f"{type(fault).__name__} in a fetched file") from fault
