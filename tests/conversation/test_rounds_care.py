"""What the rounds owe people besides sessions: a look after long absence, answers, decent hours."""

from datetime import time, timedelta
from pathlib import Path

import pytest

from bot.acts import set_aside
from storage.queries import people
from storage.records.people import AthleteState
from storage.records.wire import Received
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage
from tests.conversation.test_rounds_propose import show_standards

TUESDAY = MONDAY + timedelta(days=1)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def state_of(stage: Stage) -> AthleteState:
    return stage.athlete.state


def test_after_twelve_weeks_away_nothing_is_sent_before_the_coach_has_looked(stage):
    # PUBLISHED (caterisano2019, PUBLISHED.md section 9, details from memory): long inactivity;
    # CHOSEN: 84 days, and stage 2 at most.
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, stage=3)
    show_standards(stage, days_ago=(90, 88, 86))
    stage.go_to(MONDAY, 8)
    assert state_of(stage) is AthleteState.WAITS_FOR_COACH
    assert stage.athlete.stage == 2
    assert not [text for text in stage.texts() if "Warm-up" in text]
    assert any("12 weeks" in text for text in stage.texts(COACH_CHAT))
    stage.go_to(TUESDAY, 8)
    assert sum("12 weeks" in text for text in stage.texts(COACH_CHAT)) == 1
    stage.tap("I have looked: let them start", chat_id=COACH_CHAT)
    assert state_of(stage) is AthleteState.TRAINING
    stage.go_to(MONDAY + timedelta(days=4), 8)
    assert [text for text in stage.texts() if "Warm-up" in text]
    assert state_of(stage) is AthleteState.TRAINING


def test_a_proposal_made_at_night_is_told_when_the_coach_is_awake(stage):
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.coach.id, waking_from=time(9, 0))
    show_standards(stage, days_ago=(5, 3, 1))
    stage.go_to(MONDAY, 8, 30)
    night = [text for text in stage.texts(COACH_CHAT) if "You decide" in text]
    stage.go_to(MONDAY, 9, 30)
    told = [text for text in stage.texts(COACH_CHAT) if "You decide" in text]
    assert night == []
    assert len(told) == 1
    assert "days asked" not in told[0]


def test_a_break_does_not_silence_the_morning_question(stage):
    stage.go_to(MONDAY, 8)
    stage.write("left wrist 3/10")
    stage.write("/pause 2 weeks")
    said = stage.count()
    stage.go_to(TUESDAY, 9)
    assert any("left wrist today" in text for text in stage.since(said))


def test_a_doubt_denied_before_the_coach_was_told_stays_on_record(stage):
    stage.go_to(MONDAY, 8)
    stage.write("my chest feels tight")
    stage.tap("The muscle, when I press or move it")
    assert stage.audit("alert.withdrawn")
    stage.go_to(MONDAY, 9)
    assert not [alert for alert in stage.alerts() if alert.times_told]


def test_safety_texts_name_the_number_that_the_coach_set(stage):
    stage.write("/emergency 999", chat_id=COACH_CHAT)
    # the table does not know 999 in Spain, so it is not named there until the coach says so
    assert "Still “your local emergency number”: Ines" in stage.last(COACH_CHAT)
    stage.write("/emergency 999 ES", chat_id=COACH_CHAT)
    assert "999" in stage.last(COACH_CHAT)
    stage.write("crushing pressure in my chest and I am sweating")
    assert any("Call 999 now" in text for text in stage.texts())


@pytest.mark.parametrize("said", ["one one two", "12 34", "1", "12345678", "112; drop"])
def test_what_is_no_emergency_number_changes_nothing(stage, said):
    stage.write(f"/emergency {said}", chat_id=COACH_CHAT)
    assert "Nothing is changed" in stage.last(COACH_CHAT)
    stage.write("/emergency", chat_id=COACH_CHAT)
    assert "112" in stage.last(COACH_CHAT)


def test_a_coachs_own_message_that_could_not_be_handled_is_owned_up_to(stage):
    received = Received(
        id=9, update_id=9, chat_id=COACH_CHAT, raw="{}", received_at=stage.now, attempts=3
    )
    with stage.turn() as turn:
        set_aside.tell(turn, received, "F9")
    assert "F9" in stage.last(COACH_CHAT)
    assert stage.count(ATHLETE_CHAT) == 0
