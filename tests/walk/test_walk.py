"""A walk through every command, button and question, over the loopback platform, by language."""

import asyncio
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from tests.walk import scenes_athlete as athletes
from tests.walk import scenes_coach as coaches
from tests.walk.stage import ATHLETE, COACH, MONDAY, OTHER_COACH, OWNER, SORE, WalkStage
from tests.walk.stale import taps_again
from tests.walk.trespass import trespass
from tests.walk.walker import Walker


def morning(day: int) -> datetime:
    """Return a minute after the sessions' time on a day of the walk."""
    return MONDAY + timedelta(days=day, hours=2, minutes=1)


async def walk(folder: Path, language: str) -> Walker:
    """Walk for ten days; what ends something comes last."""
    stage = WalkStage(folder, language)
    await stage.begin()
    walker = Walker(stage, trespass=trespass if language == "en" else None)
    try:
        await _first_days(walker)
        await _curious_days(walker)
        await _last_day(walker)
    finally:
        await stage.end()
    return walker


async def _first_days(walker: Walker) -> None:
    stage = walker.stage
    await athletes.stranger_tries(walker)
    await stage.strike_at(morning(0))
    await athletes.good_day(walker)
    await athletes.bad_day(walker)
    await athletes.newcomer_joins(walker)
    await walker.explores(COACH)
    await stage.strike_at(morning(1))
    await athletes.morning_after(walker)
    await coaches.clears_a_place(walker)
    await athletes.early_session(walker)
    await coaches.answers_clips(walker)
    await walker.explores(COACH)
    await stage.strike_at(morning(2))
    await athletes.cannot_today(walker)
    await athletes.tested(walker)
    await coaches.sends_files(walker)
    coaches.months_pass(stage)
    await stage.strike_at(morning(3))
    await coaches.decides(walker)
    await coaches.asks_for_tests(walker)
    await stage.strike_at(morning(4))
    await athletes.tested_again(walker)
    await athletes.tested_on(walker)
    await athletes.care_is_told(walker)
    await walker.taps_if_there(SORE, "as_planned")
    await athletes.answers_session(walker, SORE)
    await coaches.looks_around(walker)


async def _curious_days(walker: Walker) -> None:
    for day in (5, 7):
        await walker.stage.strike_at(morning(day))
        for chat_id in (ATHLETE, COACH, OWNER, OTHER_COACH):
            await walker.explores(chat_id)
            await walker.commands(chat_id, lines=4)


async def _last_day(walker: Walker) -> None:
    await walker.stage.strike_at(morning(9))
    await athletes.pain_gets_worse(walker)
    await walker.explores(COACH)
    await coaches.clears(walker)
    await coaches.practises(walker)
    await coaches.owner_moves(walker)
    await taps_again(walker)
    walker.is_erased = True
    await athletes.leaves(walker)
    await coaches.erases(walker)


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_command_button_and_question_is_answered(tmp_path, language):
    walker = asyncio.run(walk(tmp_path, language))
    assert walker.faults == []
