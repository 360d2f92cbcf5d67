"""The methods that this server speaks, by their documented names; their case does not matter."""

from collections.abc import Callable, Mapping
from typing import Any

from demo_scenario.loopback import asking, editing, sending
from demo_scenario.loopback.chats import StoredMessage
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.refusals import unknown_method

Method = Callable[[LoopbackPlatform, Params], Any]

METHODS: Mapping[str, Method] = {
    "getMe": asking.get_me,
    "getChat": asking.get_chat,
    "getFile": asking.get_file,
    "sendMessage": sending.send_message,
    "sendPhoto": sending.send_photo,
    "sendDocument": sending.send_document,
    "sendVideo": sending.send_video,
    "sendAnimation": sending.send_animation,
    "sendMediaGroup": sending.send_media_group,
    "copyMessage": sending.copy_message,
    "sendChatAction": asking.send_chat_action,
    "editMessageText": editing.edit_message_text,
    "editMessageCaption": editing.edit_message_caption,
    "editMessageReplyMarkup": editing.edit_message_reply_markup,
    "deleteMessage": editing.delete_message,
    "answerCallbackQuery": asking.answer_callback_query,
    "setMyCommands": asking.set_my_commands,
    "deleteMyCommands": asking.delete_my_commands,
    "getMyCommands": asking.get_my_commands,
    "setChatMenuButton": asking.set_chat_menu_button,
    "getChatMenuButton": asking.get_chat_menu_button,
    "deleteWebhook": asking.delete_webhook,
    "getWebhookInfo": asking.get_webhook_info,
}
_BY_LOWER_NAME = {name.lower(): method for name, method in METHODS.items()}


async def carry_out(
    platform: LoopbackPlatform, name: str, params: Params
) -> tuple[Any, list[StoredMessage]]:
    """Carry out one call; return its result, and the messages that it put into chats.

    Raises:
        RefusedError: when the platform would refuse it.

    """
    if name.lower() == "getupdates":
        return await platform.polls.get_updates(params), []
    method = _BY_LOWER_NAME.get(name.lower())
    if method is None:
        raise unknown_method()
    platform.sent_by_last_call = []
    return method(platform, params), platform.sent_by_last_call
