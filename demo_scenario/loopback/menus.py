"""The bot's command menus by scope and language, and the menu button."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from demo_scenario.loopback.bounds import COMMAND_DESCRIPTION_MAX, COMMAND_NAME, COMMANDS_MAX
from demo_scenario.loopback.refusals import bad_request

Scope = tuple[str, int | None, int | None]
Commands = list[dict[str, str]]

DEFAULT_SCOPE: Scope = ("default", None, None)
_PLAIN_SCOPES = frozenset(  # botapi: BotCommandScope
    {"default", "all_private_chats", "all_group_chats", "all_chat_administrators"}
)
_CHAT_SCOPES = frozenset({"chat", "chat_administrators", "chat_member"})


def scope_of(tree: Any, known_chats: Mapping[int, Any]) -> Scope:
    """Read a scope, refusing one of an unknown kind or chat."""
    if tree is None:
        return DEFAULT_SCOPE
    if not isinstance(tree, dict) or tree.get("type") not in _PLAIN_SCOPES | _CHAT_SCOPES:
        raise bad_request("can't parse BotCommandScope: Unsupported type specified")
    kind = str(tree["type"])
    if kind in _PLAIN_SCOPES:
        return (kind, None, None)
    chat_id = int(tree.get("chat_id") or 0)
    if chat_id not in known_chats:
        raise bad_request("chat not found")
    return (kind, chat_id, tree.get("user_id"))


def checked_commands(tree: Any) -> Commands:
    """Read a list of commands, refusing what the documentation's bounds exclude."""
    if not isinstance(tree, list) or not all(isinstance(each, dict) for each in tree):
        raise bad_request("expected an Array of BotCommand")
    if len(tree) > COMMANDS_MAX:
        raise bad_request("BOT_COMMANDS_TOO_MUCH")
    for command in tree:
        if not COMMAND_NAME.fullmatch(str(command.get("command", "")).removeprefix("/")):
            raise bad_request("BOT_COMMAND_INVALID")
        if not 1 <= len(str(command.get("description", ""))) <= COMMAND_DESCRIPTION_MAX:
            raise bad_request("BOT_COMMAND_DESCRIPTION_INVALID")
    return [
        {"command": each["command"].removeprefix("/"), "description": each["description"]}
        for each in tree
    ]


@dataclass(slots=True)
class MenuBook:
    """Command lists and menu buttons as set."""

    _commands: dict[tuple[Scope, str], Commands] = field(default_factory=dict)
    _buttons: dict[int | None, dict[str, Any]] = field(default_factory=dict)

    def set_commands(self, scope: Scope, language_code: str, commands: Commands) -> None:
        """Set one list; an empty one is none."""
        if commands:
            self._commands[scope, language_code] = commands
        else:
            self._commands.pop((scope, language_code), None)

    def commands(self, scope: Scope, language_code: str) -> Commands:
        """Return exactly the list that was set."""
        return self._commands.get((scope, language_code), [])

    def shown_to(self, chat_id: int, language_code: str) -> Commands:
        """Return what a person sees: the narrowest scope first, own language before none."""
        scopes: tuple[Scope, ...] = (  # botapi: determining list of commands, private chats
            ("chat", chat_id, None),
            ("all_private_chats", None, None),
            DEFAULT_SCOPE,
        )
        for scope in scopes:
            for language in (language_code, ""):
                if found := self._commands.get((scope, language)):
                    return found
        return []

    def set_button(self, chat_id: int | None, button: Any) -> None:
        """Set the menu button of one chat, or of all."""
        button = button or {"type": "default"}
        if not isinstance(button, dict) or button.get("type") not in {
            "commands",
            "web_app",
            "default",
        }:
            raise bad_request("can't parse MenuButton: Unsupported type specified")
        self._buttons[chat_id] = button

    def button(self, chat_id: int | None) -> dict[str, Any]:
        """Return the menu button in force."""
        return self._buttons.get(chat_id) or self._buttons.get(None) or {"type": "commands"}
