"""Pain answered by typing, in few and sloppy words, where buttons are offered."""

from datetime import date
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.pain.values import Level, Side, Site
from storage.records.training import SessionState
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage

TUESDAY = date(2026, 3, 3)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def region(stage: Stage, site: Site, side: Side) -> tuple[Level, int | None]:
    found = stage.picture().region(site, side)
    return (found.level, found.last_score) if found else (Level.NONE, None)


def test_place_side_and_number_may_be_typed_one_after_another(stage: Stage) -> None:
    before = stage.count(COACH_CHAT)
    for text in ("my shoulder kinda hurts", "front i think", "right", "like a 2 maybe"):
        assert stage.write(text) is not Outcome.PASSED_ON, text
    # CHOSEN: a 2 is watched (SAFETY bands: 1 to 2), at the side that was typed and no other
    assert region(stage, Site.SHOULDER_FRONT, Side.RIGHT) == (Level.WATCH, 2)
    assert region(stage, Site.SHOULDER_FRONT, Side.LEFT)[0] is Level.NONE
    assert stage.count(COACH_CHAT) == before


def test_place_and_side_may_be_typed_in_one(stage: Stage) -> None:
    stage.write("my shoulder hurts")
    stage.write("right front")
    assert stage.last().startswith("Right shoulder (front): how much")


def test_a_number_before_the_place_counts_at_once_and_the_place_is_asked_again(
    stage: Stage,
) -> None:
    stage.write("my shoulder hurts")
    stage.write("like a 4")
    assert stage.picture().level is Level.EASE  # CHOSEN: 3 to 5 is eased
    assert stage.last().startswith("Where does it hurt?")


@pytest.mark.parametrize(
    ("text", "side"),
    [
        ("izquierda", Side.LEFT),
        ("la derecha", Side.RIGHT),
        ("en el lado izquierdo", Side.LEFT),
        ("las dos", Side.BOTH),
        ("the right one", Side.RIGHT),
    ],
)
def test_the_side_may_be_typed_in_either_language(stage: Stage, text: str, side: Side) -> None:
    stage.write("me duele la muñeca")
    assert stage.write(text) is Outcome.SAFETY
    stage.write("4")
    sides = {one.region.arm for one in stage.picture().regions if one.last_score == 4}
    assert sides == ({Side.LEFT, Side.RIGHT} if side is Side.BOTH else {side})


@pytest.mark.parametrize("text", ["4 de 10", "4 sobre 10", "4/10", "un 4"])
def test_a_number_in_spanish_counts_at_once_where_the_side_was_asked(
    stage: Stage, text: str
) -> None:
    stage.write("me duele la muñeca")
    assert stage.write(text) is Outcome.SAFETY
    assert stage.picture().level is Level.EASE  # SAFETY: 3 to 5 is eased


def test_a_side_before_the_place_is_kept_and_only_the_place_is_asked_again(stage: Stage) -> None:
    stage.write("my elbow hurts")
    assert stage.write("left") is Outcome.SAFETY
    assert stage.last().startswith("Where does it hurt?")
    stage.write("inside")
    assert stage.last().startswith("Left elbow (inside): how much")


@pytest.mark.parametrize("hurts", ["my wrist hurts", "my elbow hurts"])
def test_figures_of_one_arm_are_no_side_of_a_pain(stage: Stage, hurts: str) -> None:
    stage.write(hurts)
    stage.write("left 15 15 12")
    # it is asked what these figures are for; no side was told
    assert {one.region.arm for one in stage.picture().regions} == {Side.LEFT, Side.RIGHT}
    assert not stage.last().startswith("Left")


@pytest.mark.parametrize("text", ["5 kg a hand 15", "1) 20 20 20", "8 8 8", "rpe 7", "5 reps"])
def test_results_are_not_taken_for_a_score(stage: Stage, text: str) -> None:
    stage.write("my elbow hurts")
    stage.write(text)
    scores = {one.last_score for one in stage.picture().regions}
    assert scores == {None}


def test_a_place_typed_after_the_button_is_an_answer(stage: Stage) -> None:
    stage.tap("Something hurts")
    stage.write("wrist")
    assert stage.last() == "Wrist: which side?"
    stage.write("left")
    assert stage.last().startswith("Left wrist: how much")


def test_what_stands_behind_the_pain_command_is_the_report(stage: Stage) -> None:
    stage.write("/pain left wrist 4")
    assert region(stage, Site.WRIST, Side.LEFT) == (Level.EASE, 4)


def test_the_bare_pain_command_asks_where(stage: Stage) -> None:
    stage.write("/pain")
    assert stage.last().startswith("Where does it hurt?")


def test_no_pain_is_answered_before_and_after_the_first_result(stage: Stage) -> None:
    stage.write("no pain")
    assert stage.last() == "Good, nothing hurt."
    assert not stage.session_on(MONDAY).is_pain_answered
    stage.write("1) 20 20 20")
    before = stage.count()
    stage.write("no pain")
    assert len(stage.since(before)) == 1
    assert stage.session_on(MONDAY).is_pain_answered


def test_what_was_left_out_is_not_shown_again_under_today(stage: Stage) -> None:
    stage.write("left wrist 6")
    left_out = [one for one in stage.session_on(MONDAY).items if one.is_left_out]
    assert left_out
    stage.write("/today")
    for item in left_out:
        assert f". {stage.movement(item).name}\n" not in stage.last()


def test_an_emergency_is_the_last_word_and_today_repeats_the_call(stage: Stage) -> None:
    stage.write("I cannot breathe and my chest hurts")
    assert stage.last().startswith("Please stop now.")
    stage.write("/today")
    assert "call 112 now" in stage.last()  # CHOSEN: the number of the stage's coach


def test_words_that_stop_training_and_call_it_off_get_one_answer(stage: Stage) -> None:
    before = stage.count()
    stage.write("sick today, fever")
    assert stage.session_on(MONDAY).state is SessionState.CALLED_OFF
    assert len(stage.since(before)) == 1


def test_today_on_a_break_says_how_long_it_lasts(stage: Stage) -> None:
    stage.write("/pause 2 weeks")
    stage.write("/today")
    assert stage.last().startswith("You are on a break until Mon 16 Mar.")


def test_the_reminder_can_be_answered_where_it_stands(stage: Stage) -> None:
    stage.go_to(MONDAY, 20)
    message, _ = stage.button("All as planned")
    assert message.text.startswith("Today's session is still open.")
    stage.tap("All as planned")
    assert any(item.sets for item in stage.session_on(MONDAY).items)


@pytest.mark.parametrize("other", ["my right elbow hurts, 5/10", "right wrist 5/10 too"])
def test_a_second_pain_never_becomes_the_number_of_the_first(stage: Stage, other: str):
    stage.go_to(MONDAY, 12, 0)
    stage.write("my left wrist hurts")
    stage.write("3")
    stage.write(other)
    scores = {(one.region.arm, one.last_score) for one in stage.picture().regions}
    assert (Side.LEFT, 3) in scores
    assert any(arm is Side.RIGHT for arm, _ in scores)
