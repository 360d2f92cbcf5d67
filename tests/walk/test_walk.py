"""A walk through every command, button and question, over the loopback platform, by language."""

import asyncio
import sys
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from bot.desks import athlete as athlete_desk
from bot.desks import coach_commands
from bot.desks import owner as owner_desk
from bot.desks.coach_asked import ASKS
from tests.walk import scenes_athlete as athletes
from tests.walk import scenes_coach as coaches
from tests.walk.lines import ELSEWHERE
from tests.walk.stage import ATHLETE, COACH, MONDAY, OTHER_COACH, OWNER, SORE, WalkStage
from tests.walk.stale import taps_again
from tests.walk.trespass import trespass
from tests.walk.walker import Walker

ATHLETES_ASKED = frozenset(
    {"reserve", "effort", "pain", "item", "morning", "pain.unclear", "pain.place", "setting"}
    | {"intake", "tests"}
)
"""Kinds of questions and dialogs that an athlete is asked."""


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
        walker.counts_refusals()
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
def test_all_is_reached_answered_in_its_language_and_nobody_else_can_do_it(
    tmp_path, language, capsys
):
    """One test for all that a walk shows: another would walk the same way once more."""
    walker = asyncio.run(walk(tmp_path, language))
    with capsys.disabled():
        sys.stdout.write(f"\n{language}: {'; '.join(walker.costs)}\n")
    found = [
        *dict.fromkeys(walker.faults),
        *_buttons(walker),
        *_commands(walker),
        *_questions(walker),
        *(f"refused: {one}" for one in walker.refused),
    ]
    assert found == []
    assert walker.set_aside == 0


def _buttons(walker: Walker) -> list[str]:
    """Every button is reached, or a test that reaches it is named."""
    return [
        *(
            f"{act} was never tapped: lead there in tests/walk/scenes_*.py, so that its arguments "
            "are tried by others too, or name the test that does in lines.ELSEWHERE"
            for act in sorted(walker.unreached() - set(ELSEWHERE))
        ),
        *(
            f"{act} is reached after all: take it out of lines.ELSEWHERE"
            for act in sorted(set(ELSEWHERE) & set(walker.tapped))
        ),
        *(
            f"{act}: there is no test {why}"
            for act, why in ELSEWHERE.items()
            if not Path(why.split(":")[0]).is_file()
        ),
    ]


def _commands(walker: Walker) -> list[str]:
    given = {key for key, lines in walker.commanded.items() if lines}
    asked = {
        (chat_id, name)
        for chat_id, desk in ((ATHLETE, athlete_desk), (COACH, coach_commands), (OWNER, owner_desk))
        for name in desk.COMMANDS
    }
    by_a_scene = {(ATHLETE, "leave")}
    return [
        f"/{name} was never given: add its lines in tests/walk/lines.py"
        for _, name in sorted(asked - given - by_a_scene)
    ]


def _questions(walker: Walker) -> list[str]:
    asked = {kind.split("/")[0] for kind in walker.asked}
    return [
        f"{kind} was never asked: lead to it in tests/walk/scenes_*.py"
        for kind in sorted((ASKS | ATHLETES_ASKED) - asked)
    ]
