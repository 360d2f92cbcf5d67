"""A session behind a clearing says why it is shorter, where it is."""

from datetime import timedelta
from pathlib import Path

from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage

NEXT_MONDAY = MONDAY + timedelta(days=7)
SAID = "What was left out comes back in small steps, so there are fewer sets today."


def test_the_first_session_after_a_clearing_says_that_it_comes_back_in_steps(tmp_path: Path):
    stage = Stage(tmp_path)
    stage.go_to(MONDAY, 8)
    stage.write("left wrist 7/10")
    stage.go_to(MONDAY + timedelta(days=5), 9)
    stage.write("/clear ines two days without pain in daily use", chat_id=COACH_CHAT)
    before = stage.count()
    stage.go_to(NEXT_MONDAY + timedelta(days=2), 8)
    assert any(SAID in text for text in stage.since(before))


def test_a_session_without_a_clearing_says_nothing_of_it(tmp_path: Path):
    stage = Stage(tmp_path)
    stage.go_to(NEXT_MONDAY, 8)
    assert not any(SAID in text for text in stage.texts())
