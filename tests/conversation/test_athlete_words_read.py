"""What the reader newly understands, as the athlete meets it: clips, loads, other languages.

All figures CHOSEN.
"""

from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.pain.values import Side, Site
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage, values


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def first_item(stage: Stage) -> list[float]:
    return values(stage.session_on(MONDAY).items[0])


def test_results_under_a_clip_are_recorded_and_the_clip_is_passed_on(stage: Stage) -> None:
    assert stage.send_clip("1) 20 20 18") is Outcome.RECORDED
    assert first_item(stage) == [20, 20, 18]
    assert any("sent a clip" in text for text in stage.texts(COACH_CHAT))


def test_pain_under_a_clip_is_heard(stage: Stage) -> None:
    stage.send_clip("left wrist 4/10 here")
    assert stage.picture().region(Site.WRIST, Side.LEFT) is not None


def test_words_under_a_clip_that_are_no_result_go_to_the_coach_once(stage: Stage) -> None:
    assert stage.send_clip("look at my handstand") is Outcome.PASSED_ON
    assert sum("look at my handstand" in text for text in stage.texts(COACH_CHAT)) == 1


def test_an_item_that_is_named_is_taken_back_alone(stage: Stage) -> None:
    stage.write("1) 20 20 18\n2) 20 20 18")
    stage.later(minutes=1)
    assert stage.write("undo the wall reach hold") is Outcome.CORRECTED
    items = stage.session_on(MONDAY).items
    assert [values(item) for item in items[:2]] == [[], [20, 20, 18]]


def test_a_forgotten_last_set_is_added_to_what_stands(stage: Stage) -> None:
    stage.write("1) 20 20 then stopped")
    stage.later(minutes=1)
    assert stage.write("sorry, third set was 18") is Outcome.CORRECTED
    assert first_item(stage) == [20, 20, 18]
    assert "20, 20, 18" in stage.last()


def test_another_language_is_passed_on_with_the_emergency_line(stage: Stage) -> None:
    assert stage.write("heute kann ich leider nicht trainieren") is Outcome.PASSED_ON
    assert "weitergegeben. Im Notfall bitte" in stage.last()
    assert any("heute kann ich leider nicht" in text for text in stage.texts(COACH_CHAT))


def test_pain_in_another_language_is_heard_and_passed_on(stage: Stage) -> None:
    stage.write("Schulter schmerzt heute, was soll ich machen")
    assert stage.picture().region(Site.SHOULDER_FRONT, Side.LEFT) is not None


def test_never_mind_is_no_answer_to_how_much_was_left(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.later(minutes=1)
    assert stage.write("never mind") is Outcome.PASSED_ON
    assert stage.session_on(MONDAY).items[0].reserve is None


def test_the_rest_not_done_keeps_figures_that_are_still_asked_about(tmp_path: Path) -> None:
    stage = Stage.with_first_session(tmp_path)
    assert stage.write("1) 12 8") is Outcome.ASKED  # three sets were asked for
    stage.write("rest not done")
    items = stage.session_on(MONDAY).items
    assert [one.is_skipped for one in items] == [False, True, True, True, True]
    stage.tap("Wall reach hold: 12 8 s (stopped)")
    assert values(stage.session_on(MONDAY).items[0]) == [12, 8]
