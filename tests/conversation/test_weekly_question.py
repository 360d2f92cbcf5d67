"""Once a week, after its last session, one question on sleep and mood; it may lighten the week."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.acts.lighter_signals import signals_of
from tests.conversation.athlete_stage import MONDAY, Stage

FRIDAY = MONDAY + timedelta(days=4)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def _train(stage: Stage, on: date) -> None:
    stage.go_to(on, 8)
    stage.write("all as planned")
    while top := {"20+", "4+"} & set(stage.screen()[-1].buttons):
        stage.tap("15" if "20+" in top else "3")
    stage.tap("5")
    stage.tap("Nothing hurt")


def test_it_is_asked_once_after_the_last_session_of_the_week(stage: Stage):
    asked = "How were sleep and mood"
    _train(stage, MONDAY)
    assert not any(asked in text for text in stage.texts())
    _train(stage, MONDAY + timedelta(days=2))
    _train(stage, FRIDAY)
    assert sum(asked in text for text in stage.texts()) == 1
    stage.go_to(FRIDAY + timedelta(days=2), 20)
    assert sum(asked in text for text in stage.texts()) == 1


def test_a_poor_answer_is_one_of_the_signs_and_a_second_tap_corrects_it(stage: Stage):
    for day in (0, 2, 4):
        _train(stage, MONDAY + timedelta(days=day))
    message, poor = stage.button("Sleep poor")
    _, fine = stage.button("Both fine")
    stage.tap_token(poor, message.message_id)
    assert _is_poor(stage)
    stage.later(minutes=1)
    stage.tap_token(fine, message.message_id)
    assert not _is_poor(stage)


def _is_poor(stage: Stage) -> bool:
    with stage.turn() as turn:
        monday = MONDAY + timedelta(days=7)
        return signals_of(turn, stage.person.id, (), monday=monday).is_sleep_or_mood_poor
