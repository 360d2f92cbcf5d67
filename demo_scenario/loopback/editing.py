"""The methods that change or remove a message."""

from typing import Any

from demo_scenario.loopback.bounds import DELETABLE_FOR_S, check_caption, check_text
from demo_scenario.loopback.chats import Chat, Content, StoredMessage, message_json
from demo_scenario.loopback.keyboards import Markup, checked_markup
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.refusals import bad_request
from demo_scenario.loopback.sending import formatted


def edit_message_text(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """EditMessageText; buttons that are left out go away."""
    chat, stored = _editable(platform, params)
    if stored.content.media is not None:
        raise bad_request("there is no text in the message to edit")
    words = check_text(formatted(params, text="text", entities="entities"))
    return _revised(platform, chat, stored, Content(words), _markup(params))


def edit_message_caption(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """EditMessageCaption; buttons that are left out go away."""
    chat, stored = _editable(platform, params)
    old = stored.content
    if old.media is None:
        raise bad_request("there is no caption in the message to edit")
    words = check_caption(formatted(params, text="caption", entities="caption_entities"))
    content = Content(words, old.media, old.file, old.place_or_card)
    return _revised(platform, chat, stored, content, _markup(params))


def edit_message_reply_markup(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """EditMessageReplyMarkup; left out, the buttons go away."""
    chat, stored = _editable(platform, params)
    return _revised(platform, chat, stored, stored.content, _markup(params))


def delete_message(platform: LoopbackPlatform, params: Params) -> bool:
    """DeleteMessage, for 48 hours, of either side in a private chat."""
    chat = platform.writable_chat(params)
    stored = chat.message(params.integer("message_id"))
    if stored is None:
        raise bad_request("message to delete not found")
    if (platform.now() - stored.sent_at).total_seconds() > DELETABLE_FOR_S:
        raise bad_request("message can't be deleted for everyone")
    stored.is_deleted = True
    return True


def _editable(platform: LoopbackPlatform, params: Params) -> tuple[Chat, StoredMessage]:
    chat = platform.writable_chat(params)
    message_id = params.integer("message_id")
    if message_id is None:
        raise bad_request("message identifier is not specified")
    stored = chat.message(message_id)
    if stored is None:
        raise bad_request("message to edit not found")
    if not stored.is_from_bot:
        raise bad_request("message can't be edited")
    return chat, stored


def _markup(params: Params) -> Markup | None:
    return checked_markup(params.tree("reply_markup"))


def _revised(
    platform: LoopbackPlatform,
    chat: Chat,
    stored: StoredMessage,
    content: Content,
    markup: Markup | None,
) -> dict[str, Any]:
    if content.says_the_same_as(stored.content) and markup == stored.markup:
        raise bad_request(
            "message is not modified: specified new message content and reply markup "
            "are exactly the same as a current content and reply markup of the message"
        )
    platform.take_room(chat)
    stored.revise(content, markup, platform.now())
    return message_json(chat, stored)
