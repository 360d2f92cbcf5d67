"""What only reads like a sign: asked at once, told to the coach when silence or a tap says so."""

from pathlib import Path

import pytest

from bot.reading import red_flags
from bot.reading.red_flag_learnt import Group, Weights
from scheduler.pain.values import Level
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, Stage

SAID = "purple zebra feeling since the ladder"  # CHOSEN: words that no rule and no line knows


@pytest.fixture
def stage(tmp_path: Path, monkeypatch) -> Stage:
    groups = (Group.HARMLESS, Group.CLINICIAN, Group.EMERGENCY, Group.CRISIS)
    zebra = Weights(groups, (2.0, 0.0, 0.0, 0.0), {"zebra": (-5.0, 5.0, 0.0, 0.0)})
    monkeypatch.setattr(red_flags, "weights", lambda: zebra)
    return Stage.with_first_session(tmp_path)


def test_it_is_asked_at_once_and_counts_until_it_is_answered(stage: Stage):
    stage.write(SAID)
    assert stage.picture().level is Level.CLINICIAN
    assert "unlike what training does to you?" in stage.last(ATHLETE_CHAT)


def test_the_coach_is_not_woken_before_ten_minutes(stage: Stage):
    stage.write(SAID)
    before = stage.count(COACH_CHAT)
    stage.later(minutes=5)
    stage.strike()
    assert stage.count(COACH_CHAT) == before
    stage.later(minutes=6)
    stage.strike()
    assert stage.count(COACH_CHAT) > before


def test_a_no_gives_the_session_back_and_tells_nobody(stage: Stage):
    stage.write(SAID)
    before = stage.count(COACH_CHAT)
    stage.tap("No, nothing of that kind")
    assert stage.picture().level is Level.NONE
    stage.later(minutes=20)
    stage.strike()
    assert stage.count(COACH_CHAT) == before


def test_a_yes_tells_the_coach_at_once(stage: Stage):
    stage.write(SAID)
    before = stage.count(COACH_CHAT)
    stage.tap("Yes, or not sure")
    stage.later(minutes=1)
    stage.strike()
    assert stage.count(COACH_CHAT) > before
    assert stage.picture().level is Level.CLINICIAN
