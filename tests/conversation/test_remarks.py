"""What stands beside results and no rule reads is shown to the coach, and forgotten in time."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from storage.queries import remarks
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    stage.go_to(MONDAY, 8)
    return stage


def first_item(stage: Stage) -> str:
    dose = stage.session_on(MONDAY).items[0].dose
    assert dose is not None
    return "1) " + " ".join([str(dose.target)] * dose.sets)


def kept(stage: Stage) -> list[str]:
    with stage.turn() as turn:
        found = remarks.remarks(
            turn.tx, [stage.person.id], since=stage.now - timedelta(weeks=9), most=9
        )
    return [one.words for one in found]


def test_a_remark_behind_figures_is_on_the_coachs_screen(stage: Stage):
    said = first_item(stage) + " assisted"
    assert stage.write(said) is Outcome.RECORDED
    stage.write("/who ines", chat_id=COACH_CHAT)
    assert f"“{said}”" in stage.last(COACH_CHAT)
    assert "Remarks beside results" in stage.last(COACH_CHAT)


def test_a_remark_for_which_the_figures_are_asked_about_is_not_lost(stage: Stage):
    said = first_item(stage) + " assisted by a towel"
    assert stage.write(said) is Outcome.ASKED
    assert kept(stage) == [said]


def test_plain_figures_are_no_remark(stage: Stage):
    assert stage.write(first_item(stage)) is Outcome.RECORDED
    assert kept(stage) == []


def test_words_of_crisis_beside_figures_are_kept_nowhere(stage: Stage):
    stage.write(first_item(stage) + " and I want to end my life")
    assert kept(stage) == []


def test_remarks_are_forgotten_with_the_words_of_a_reading(stage: Stage):
    stage.write(first_item(stage) + " assisted")
    assert len(kept(stage)) == 1
    stage.later(days=29)  # CHOSEN: 28 days
    stage.strike()
    assert kept(stage) == []
