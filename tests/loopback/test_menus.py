"""Command menus: who sees which list (source: botapi, determining list of commands)."""

from telegram import (
    BotCommand,
    BotCommandScopeAllPrivateChats,
    BotCommandScopeChat,
    MenuButtonCommands,
)

from tests.loopback.stage import ANA, BRUNO, on_stage


def _names(commands):
    return [command["command"] for command in commands]


@on_stage
async def test_the_narrowest_scope_wins_and_within_it_the_own_language(stage):
    async def menu(name, scope=None, language_code=None):
        await stage.bot.set_my_commands(
            [BotCommand(name, "what it does")], scope=scope, language_code=language_code
        )

    assert stage.bruno.menu() == []
    await menu("everyone")
    assert _names(stage.bruno.menu()) == ["everyone"]
    await menu("todos", language_code="es")
    assert (_names(stage.bruno.menu()), _names(stage.ana.menu())) == (["todos"], ["everyone"])
    await menu("private", BotCommandScopeAllPrivateChats())
    assert _names(stage.bruno.menu()) == ["private"]
    await menu("coach", BotCommandScopeChat(BRUNO))
    assert (_names(stage.bruno.menu()), _names(stage.ana.menu())) == (["coach"], ["private"])
    await stage.bot.delete_my_commands(scope=BotCommandScopeChat(BRUNO))
    assert _names(stage.bruno.menu()) == ["private"]


@on_stage
async def test_a_list_reads_back_as_set(stage):
    await stage.bot.set_my_commands([BotCommand("week", "this week")])
    (command,) = await stage.bot.get_my_commands()
    assert (command.command, command.description) == ("week", "this week")
    assert await stage.bot.get_my_commands(scope=BotCommandScopeChat(ANA)) == ()


@on_stage
async def test_menu_button_chat_and_action(stage):
    await stage.bot.set_chat_menu_button(ANA, MenuButtonCommands())
    assert await stage.bot.get_chat_menu_button(ANA) == MenuButtonCommands()
    chat = await stage.bot.get_chat(ANA)
    assert (chat.id, chat.first_name) == (ANA, "Ana")
    await stage.bot.send_chat_action(ANA, "typing")
    assert stage.ana.chat.actions == ["typing"]
