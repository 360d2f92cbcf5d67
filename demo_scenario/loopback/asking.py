"""The methods that put no message into a chat: who, which file, taps, menus, the webhook."""

from typing import Any

from demo_scenario.loopback.callbacks import TapAnswer
from demo_scenario.loopback.menus import checked_commands, scope_of
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.refusals import bad_request

_ACTIONS = frozenset(  # botapi: sendChatAction, action
    {
        "typing",
        "upload_photo",
        "record_video",
        "upload_video",
        "record_voice",
        "upload_voice",
        "upload_document",
        "choose_sticker",
        "find_location",
        "record_video_note",
        "upload_video_note",
    }
)


def get_me(platform: LoopbackPlatform, _params: Params) -> dict[str, Any]:
    """GetMe."""
    return {
        **platform.bot,
        "can_join_groups": True,
        "can_read_all_group_messages": False,
        "supports_inline_queries": False,
    }


def get_chat(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """GetChat, with the fields that the documentation does not call optional."""
    return {
        **platform.known_chat(params).as_json(),
        "accent_color_id": 0,
        "max_reaction_count": 11,
        "accepted_gift_types": dict.fromkeys(
            (
                "unlimited_gifts",
                "limited_gifts",
                "unique_gifts",
                "premium_subscription",
                "gifts_from_channels",
            ),
            False,
        ),
    }


def get_file(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """GetFile: where to fetch it, unless it is too big to be fetched."""
    stored = platform.files.downloadable(params.text("file_id"))
    return {
        "file_id": stored.file_id,
        "file_unique_id": stored.unique_id,
        "file_size": stored.size_bytes,
        "file_path": stored.path,
    }


def send_chat_action(platform: LoopbackPlatform, params: Params) -> bool:
    """SendChatAction."""
    chat = platform.writable_chat(params)
    action = params.text("action")
    if action not in _ACTIONS:
        raise bad_request("wrong parameter action in request")
    chat.actions.append(action)
    return True


def answer_callback_query(platform: LoopbackPlatform, params: Params) -> bool:
    """AnswerCallbackQuery."""
    answer = TapAnswer(platform.now(), params.text("text"), params.flag("show_alert"))
    platform.taps.answer(params.text("callback_query_id"), answer)
    return True


def set_my_commands(platform: LoopbackPlatform, params: Params) -> bool:
    """SetMyCommands."""
    scope = scope_of(params.tree("scope"), platform.chats)
    commands = checked_commands(params.tree("commands"))
    platform.menus.set_commands(scope, params.text("language_code"), commands)
    return True


def delete_my_commands(platform: LoopbackPlatform, params: Params) -> bool:
    """DeleteMyCommands."""
    scope = scope_of(params.tree("scope"), platform.chats)
    platform.menus.set_commands(scope, params.text("language_code"), [])
    return True


def get_my_commands(platform: LoopbackPlatform, params: Params) -> list[dict[str, str]]:
    """GetMyCommands."""
    scope = scope_of(params.tree("scope"), platform.chats)
    return platform.menus.commands(scope, params.text("language_code"))


def set_chat_menu_button(platform: LoopbackPlatform, params: Params) -> bool:
    """SetChatMenuButton, of one chat or of all."""
    chat_id = params.integer("chat_id")
    if chat_id is not None:
        platform.known_chat(params)
    platform.menus.set_button(chat_id, params.tree("menu_button"))
    return True


def get_chat_menu_button(platform: LoopbackPlatform, params: Params) -> dict[str, Any]:
    """GetChatMenuButton."""
    return platform.menus.button(params.integer("chat_id"))


def delete_webhook(platform: LoopbackPlatform, params: Params) -> bool:
    """DeleteWebhook; there is none, but what is pending may be dropped with it."""
    if params.flag("drop_pending_updates"):
        platform.updates.confirm_all()
    return True


def get_webhook_info(platform: LoopbackPlatform, _params: Params) -> dict[str, Any]:
    """GetWebhookInfo."""
    return {
        "url": "",
        "has_custom_certificate": False,
        "pending_update_count": platform.unconfirmed_updates,
    }
