"""What a bot may hang under a message, and what the platform refuses of it."""

from typing import Any

from demo_scenario.loopback.bounds import (
    BUTTONS_IN_ROW_MAX,
    BUTTONS_MAX,
    CALLBACK_DATA_BYTES_MAX,
)
from demo_scenario.loopback.refusals import bad_request

Markup = dict[str, Any]

_OTHER_MARKUPS = frozenset({"keyboard", "remove_keyboard", "force_reply"})
_OTHER_ACTIONS = (
    "web_app",
    "login_url",
    "switch_inline_query",
    "switch_inline_query_current_chat",
    "switch_inline_query_chosen_chat",
    "copy_text",
    "callback_game",
    "pay",
)
_LINK_STARTS = ("http://", "https://", "tg://")


def checked_markup(markup: Any) -> Markup | None:
    """Return the inline keyboard as the platform stores it; ``None`` when there is none.

    The other kinds (a reply keyboard, its removal, a forced reply) are let through unchecked and
    not shown: this server speaks of inline buttons alone.
    """
    if markup in (None, ""):
        return None
    if not isinstance(markup, dict):
        raise bad_request("object expected as reply markup")
    if "inline_keyboard" not in markup:
        if _OTHER_MARKUPS.isdisjoint(markup):
            raise bad_request("can't parse reply keyboard markup JSON object")
        return None
    rows = markup["inline_keyboard"]
    if not isinstance(rows, list) or not all(isinstance(row, list) for row in rows):
        raise bad_request('field "inline_keyboard" must be of type Array')
    checked = [[_checked_button(button) for button in row] for row in rows if row]
    if any(len(row) > BUTTONS_IN_ROW_MAX for row in checked) or (
        sum(len(row) for row in checked) > BUTTONS_MAX
    ):
        raise bad_request("REPLY_MARKUP_TOO_LONG")
    return {"inline_keyboard": checked} if checked else None


def _checked_button(button: Any) -> dict[str, Any]:
    if not isinstance(button, dict):
        raise bad_request("can't parse inline keyboard button: expected an Object")
    if "text" not in button:
        raise bad_request("can't parse inline keyboard button: Can't find field \"text\"")
    if not isinstance(button["text"], str):
        raise bad_request(
            'can\'t parse inline keyboard button: Field "text" must be of type String'
        )
    if not button["text"].strip():
        raise bad_request("inline keyboard button text is empty")
    if button.get("url"):
        _check_url(button["url"])
    elif button.get("callback_data"):
        _check_callback_data(button["callback_data"])
    elif not any(action in button for action in _OTHER_ACTIONS):
        raise bad_request(
            "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard"
        )
    return button


def _check_url(url: Any) -> None:
    if not isinstance(url, str) or not url.startswith(_LINK_STARTS) or " " in url:
        raise bad_request(f"inline keyboard button URL '{url}' is invalid: Wrong HTTP URL")


def _check_callback_data(data: Any) -> None:
    if not isinstance(data, str) or len(data.encode()) > CALLBACK_DATA_BYTES_MAX:
        raise bad_request("BUTTON_DATA_INVALID")


def button_with_data(markup: Markup | None, data: str) -> bool:
    """Say whether a keyboard has a button that carries ``data``."""
    rows = markup["inline_keyboard"] if markup else []
    return any(button.get("callback_data") == data for row in rows for button in row)
