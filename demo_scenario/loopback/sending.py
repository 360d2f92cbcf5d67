"""The methods that put a message of the bot's into a chat."""

from typing import Any

from demo_scenario.loopback.bounds import (
    ALBUM_ITEMS_MAX,
    ALBUM_ITEMS_MIN,
    check_caption,
    check_text,
)
from demo_scenario.loopback.chats import Chat, Content, StoredMessage, message_json
from demo_scenario.loopback.entities import FormattedText, parse_html, plain_text, with_entities
from demo_scenario.loopback.files import MediaKind, StoredFile
from demo_scenario.loopback.keyboards import checked_markup
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.refusals import bad_request


def send_message(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """SendMessage."""
    chat = platform.writable_chat(params)
    words = check_text(formatted(params, text="text", entities="entities"))
    return _sent(platform, params, chat, Content(words))


def send_photo(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """SendPhoto, by upload or file id."""
    return _send_media(platform, params, MediaKind.PHOTO)


def send_document(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """SendDocument, by upload or file id."""
    return _send_media(platform, params, MediaKind.DOCUMENT)


def send_video(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """SendVideo, by upload or file id."""
    return _send_media(platform, params, MediaKind.VIDEO)


def send_animation(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """SendAnimation, by upload or file id."""
    return _send_media(platform, params, MediaKind.ANIMATION)


def send_media_group(platform: LoopbackPlatform, params: Params) -> list[dict[str, Any]]:
    """SendMediaGroup: one call, one message an item, none of them if one is refused."""
    chat = platform.writable_chat(params)
    items = params.tree("media")
    if not isinstance(items, list):
        raise bad_request("expected an Array of InputMedia")
    if len(items) < ALBUM_ITEMS_MIN:
        raise bad_request("group media must contain at least 2 items")
    if len(items) > ALBUM_ITEMS_MAX:
        raise bad_request("too many messages to send as an album")
    kinds = {_album_kind(item) for item in items}
    if MediaKind.DOCUMENT in kinds and len(kinds) > 1:
        raise bad_request("document can't be mixed with other media types")
    reply_to = _replied(params, chat)
    contents = [_album_content(platform, params, item) for item in items]
    platform.take_room(chat, messages=len(contents))
    album_id = platform.new_id()
    stored = [
        platform.store(
            chat,
            platform.bot,
            content,
            reply_to=reply_to,
            media_group_id=album_id,
            is_silent=params.flag("disable_notification"),
        )
        for content in contents
    ]
    return [message_json(chat, each) for each in stored]


def copy_message(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """CopyMessage: the content under the bot's own name, with another caption if one is given."""
    chat = platform.writable_chat(params)
    source = platform.known_chat(params, "from_chat_id").message(params.integer("message_id"))
    if source is None:
        raise bad_request("message to copy not found")
    content = source.content
    if content.media is not None and "caption" in params.values:
        words = check_caption(formatted(params, text="caption", entities="caption_entities"))
        content = Content(words, content.media, content.file, content.place_or_card)
    body = _sent(platform, params, chat, content, is_copy=True)
    return {"message_id": body["message_id"]}


def formatted(params: Params, *, text: str, entities: str) -> FormattedText:
    """Read a text with its parse mode, or with entities given beside it."""
    source = params.text(text)
    mode = params.text("parse_mode").lower()
    if mode == "html":
        return parse_html(source)
    if mode:
        # Markdown exists on the platform; the bot writes HTML alone, so a slip is refused here.
        raise bad_request("unsupported parse_mode")
    given = params.tree(entities)
    if given is None:
        return plain_text(source)
    if not isinstance(given, list):
        raise bad_request("can't parse entities: expected an Array of MessageEntity")
    return with_entities(source, given)


def _send_media(platform: LoopbackPlatform, params: Params, kind: MediaKind) -> dict[str, Any]:
    chat = platform.writable_chat(params)
    words = check_caption(formatted(params, text="caption", entities="caption_entities"))
    value = params.uploads.get(kind.value)
    if value is None and not params.text(kind.value):
        raise bad_request(f"there is no {kind} in the request")
    stored = (
        platform.files.keep_from_bot(kind, value)
        if value is not None
        else _named_file(platform, params, params.text(kind.value), kind)
    )
    return _sent(platform, params, chat, Content(words, kind, stored))


def _named_file(
    platform: LoopbackPlatform, params: Params, name: str, kind: MediaKind
) -> StoredFile:
    if name.startswith("attach://"):
        upload = params.uploads.get(name.removeprefix("attach://"))
        if upload is None:
            raise bad_request("attached file not found")
        return platform.files.keep_from_bot(kind, upload)
    if name.startswith(("http://", "https://")):
        # Loopback never reaches out, so any address is one that could not be fetched.
        raise bad_request("failed to get HTTP URL content")
    return platform.files.of_kind(name, kind)


def _album_kind(item: Any) -> MediaKind:
    kind = item.get("type") if isinstance(item, dict) else None
    if kind not in {MediaKind.PHOTO, MediaKind.VIDEO, MediaKind.DOCUMENT, MediaKind.AUDIO}:
        raise bad_request("can't parse InputMedia: Unsupported type specified")
    return MediaKind(kind)


def _album_content(platform: LoopbackPlatform, params: Params, item: dict[str, Any]) -> Content:
    kind = _album_kind(item)
    words = check_caption(formatted(Params(item), text="caption", entities="caption_entities"))
    return Content(words, kind, _named_file(platform, params, str(item.get("media", "")), kind))


def _replied(params: Params, chat: Chat) -> StoredMessage | None:
    """Return the message replied to, by either of the documented ways to name it."""
    tree = params.record("reply_parameters")
    message_id = tree.get("message_id") or params.integer("reply_to_message_id")
    if message_id is None:
        return None
    replied = chat.message(int(message_id))
    may_lack = tree.get("allow_sending_without_reply") or params.flag("allow_sending_without_reply")
    if replied is None and not may_lack:
        raise bad_request("message to be replied not found")
    return replied


def _sent(
    platform: LoopbackPlatform,
    params: Params,
    chat: Chat,
    content: Content,
    *,
    is_copy: bool = False,
) -> dict[str, Any]:
    markup = checked_markup(params.tree("reply_markup"))
    reply_to = _replied(params, chat)
    platform.take_room(chat)
    stored = platform.store(
        chat,
        platform.bot,
        content,
        markup=markup,
        reply_to=reply_to,
        is_copy=is_copy,
        is_silent=params.flag("disable_notification"),
    )
    return message_json(chat, stored)
