"""An answer about pain that stays open: sessions say what it changes, and ask it at hand."""

from datetime import date
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.pain.values import Level, Side, Site
from tests.conversation.athlete_stage import Stage

TUESDAY, WEDNESDAY, FRIDAY = date(2026, 3, 3), date(2026, 3, 4), date(2026, 3, 6)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def session_of(stage: Stage, weekday: str) -> str:
    return next(one.text for one in reversed(stage.screen()) if f"<b>{weekday}, day" in one.text)


def test_session_says_what_is_shorter_for_which_report_and_that_the_side_is_open(
    stage: Stage,
) -> None:
    stage.write("my wrist hurts 5/10")
    stage.go_to(WEDNESDAY, 7)
    text = session_of(stage, "Wednesday")
    assert "That spares what you reported: wrist 5 of 10 (Monday)." in text
    assert "Still open: wrist, which side?" in text
    stage.tap("Say which side")
    stage.tap("Left")
    right = stage.picture().region(Site.WRIST, Side.RIGHT)
    assert right is None or right.level is Level.NONE
    stage.write("/today")
    assert "left wrist 5 of 10 (Monday)" in stage.last()
    assert "Still open" not in stage.last()


def test_the_side_is_asked_again_before_the_next_session(stage: Stage) -> None:
    stage.write("my wrist hurts 5/10")
    stage.go_to(WEDNESDAY, 6, 59)
    seen = stage.count()
    stage.go_to(WEDNESDAY, 7)
    assert stage.since(seen)[0] == "Wrist: which side?"


def test_the_next_morning_asks_which_side_before_it_names_one(stage: Stage) -> None:
    stage.write("my wrist hurts 5/10")
    stage.go_to(TUESDAY, 12)
    assert stage.last() == "Wrist: which side?"


def test_session_cut_for_a_whole_report_says_so_without_a_question(stage: Stage) -> None:
    stage.write("left wrist 4/10")
    stage.go_to(WEDNESDAY, 7)
    text = session_of(stage, "Wednesday")
    assert "Shorter or easier today:" in text
    assert "left wrist 4 of 10 (Monday)" in text
    assert "Still open" not in text


def test_session_with_something_rested_names_the_report(stage: Stage) -> None:
    stage.write("left wrist 7/10")
    stage.go_to(WEDNESDAY, 7)
    assert "That spares what you reported: left wrist 7 of 10 (Monday)." in session_of(
        stage, "Wednesday"
    )


def test_pain_without_a_place_is_asked_about_on_every_training_day(stage: Stage) -> None:
    stage.write("something hurts badly 8/10")
    assert any("Your sessions wait until I know where it hurts." in one for one in stage.texts())
    stage.go_to(TUESDAY, 12)
    seen = stage.count()
    stage.go_to(FRIDAY, 12)
    asked = [one for one in stage.since(seen) if "Where does it hurt?" in one]
    assert len(asked) == 2  # DERIVED: training days are Monday, Wednesday, Friday
    stage.tap("Wrist")
    assert stage.tap("Left") is Outcome.SAFETY
    found = stage.picture().region(Site.WRIST, Side.LEFT)
    assert found is not None
    assert found.level is Level.REST


def test_today_says_why_nothing_comes_while_the_place_is_open(stage: Stage) -> None:
    stage.write("something hurts badly 8/10")
    stage.go_to(WEDNESDAY, 12)
    stage.write("/today")
    assert "Where it hurts is still open." in stage.last()
    stage.tap("Say where it hurts")
    assert "Where does it hurt?" in stage.last()


def test_the_first_reply_to_a_seven_says_to_see_somebody(stage: Stage) -> None:
    seen = stage.count()
    stage.write("sharp pain in my left wrist, 7 of 10")
    first = stage.since(seen)[0]
    # CHOSEN wording, SAFETY level "rest": above 5, or a sudden sharp onset.
    assert first.startswith("Left wrist 7 of 10: stop what loads it.")
    assert "see a doctor or physiotherapist" in first


def test_a_sign_is_answered_before_the_session_is_corrected(stage: Stage) -> None:
    seen = stage.count()
    stage.write("my shoulder popped out and went back, left")
    assert "doctor" in stage.since(seen)[0]
    assert "leave out" not in stage.since(seen)[0]
