"""What only reads like a sign: asked at once, told to the coach when silence or a tap says so."""

from datetime import date
from pathlib import Path

import pytest

from bot.acts import send_digest
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


def test_the_alert_says_that_it_was_asked_and_does_not_name_a_doctor_nobody_named(stage: Stage):
    stage.write(SAID)
    assert "Mara can see your answer, and is told if none comes." in stage.last(ATHLETE_CHAT)
    stage.later(minutes=11)
    stage.strike()
    told = stage.last(COACH_CHAT)
    assert "was told to stop for now and asked whether it is so. There is no answer yet." in told
    assert "see a doctor" not in told


def test_a_no_after_the_alert_reaches_the_coach_and_the_alert_stays_open(stage: Stage):
    stage.write(SAID)
    stage.later(minutes=11)
    stage.strike()
    stage.tap("No, nothing of that kind")
    told = stage.last(COACH_CHAT)
    assert "has answered the question behind the alert: no, it is not so" in told
    assert [one.answered_at for one in stage.alerts()] == [None]
    stage.later(hours=1)
    stage.strike()
    assert "has answered no" in stage.last(COACH_CHAT)


def test_a_yes_after_the_alert_names_the_doctor(stage: Stage):
    stage.write(SAID)
    stage.tap("Yes, or not sure")
    stage.later(hours=1)
    stage.strike()
    assert "to have it seen by a doctor today" in stage.last(COACH_CHAT)


def test_pain_in_the_same_message_is_gone_on_with_after_a_no(stage: Stage):
    stage.write("zebra plank today, left wrist hurts 3/10")
    stage.tap("No, nothing of that kind")
    assert stage.last() == "Left wrist: is any of this so?"
    stage.tap("None of these")
    assert "Is any of this new or unusual for you?" in stage.last()
    stage.tap("None of these")
    assert "Noted, left wrist 3 of 10. What loads it is made easier" in stage.last()
    assert stage.picture().level is Level.EASE


def test_a_no_before_anybody_was_told_is_no_answered_alert_in_the_digest(stage: Stage):
    stage.write(SAID)
    stage.tap("No, nothing of that kind")
    stage.later(minutes=20)
    with stage.turn() as turn:
        send_digest.send_digest(turn, stage.coach, date(2026, 3, 9))
    told = "\n".join(stage.texts(COACH_CHAT))
    assert "Ines: asked about a sign, and answered no" in told
    assert "see a clinician, answered" not in told
