"""A walk through every command, button and question, over the loopback platform, by language."""

import asyncio
from datetime import timedelta

import pytest

from tests.walk.stage import ATHLETE, COACH, MONDAY, STRANGER, WalkStage
from tests.walk.walker import Walker

DAYS = 12  # [days] CHOSEN: long enough for every line and for what comes by itself


async def walk(folder, language):
    stage = WalkStage(folder, language)
    await stage.begin()
    walker = Walker(stage)
    try:
        await walker.writes(STRANGER, "hello")
        for day in range(DAYS):
            morning = MONDAY + timedelta(days=day, hours=2, minutes=1)
            await stage.strike_at(morning)
            await walker.looks(ATHLETE)
            await walker.looks(COACH)
            for chat_id in (ATHLETE, COACH):
                await walker.commands(chat_id)
            await stage.strike_at(morning + timedelta(hours=12))
            await walker.looks(ATHLETE)
    finally:
        await stage.end()
    return walker


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_command_button_and_question_is_answered(tmp_path, language):
    walker = asyncio.run(walk(tmp_path, language))
    assert walker.faults == []
