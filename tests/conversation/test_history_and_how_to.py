"""How a movement is done, and what was done: by buttons, by a part of a name."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.acts import guided_tests
from bot.outcomes import Outcome
from tests.conversation.athlete_stage import ATHLETE_CHAT, MONDAY, Stage
from tests.conversation.tested_days import first_day

NEXT_MONDAY = date(2026, 3, 9)
ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def test_a_button_on_the_session_lists_its_movements_and_each_is_explained(stage: Stage) -> None:
    stage.tap("How to")
    names = [stage.movement(item).name for item in stage.session_on(MONDAY).items]
    assert list(stage.screen()[-1].buttons) == names
    for name in names:
        stage.tap(name)
        head, how, fault = stage.last().split("\n")
        assert head == f"<b>{name}</b>"
        assert how.count(". ") <= 1, "two sentences"
        assert fault.startswith("Often seen:")


def test_a_swapped_movement_is_explained_as_it_is_now(stage: Stage) -> None:
    for label in ("Swap one", "Bar hang", "I prefer another", "Hang, feet helping"):
        stage.tap(label)
    stage.tap("How to")
    assert "Hang, feet helping" in stage.screen()[-1].buttons
    assert "Bar hang" not in stage.screen()[-1].buttons


def test_any_movement_is_explained_by_a_part_of_its_name(stage: Stage) -> None:
    stage.write("/how bar hang")
    assert stage.last().startswith("<b>Bar hang</b>")
    stage.write("/how push")
    assert len(stage.screen()[-1].buttons) > 1
    stage.write("/how")
    assert "Wall slide" in stage.screen()[-1].buttons
    assert stage.write("/how xyzzy") is Outcome.NOT_UNDERSTOOD
    assert "/how hang" in stage.last()


def test_history_is_empty_before_the_first_answer(stage: Stage) -> None:
    stage.write("/history")
    assert "Nothing is recorded yet" in stage.last()


def test_bests_of_the_year_and_the_last_times_of_a_movement(stage: Stage) -> None:
    stage.write("1) 20 20 18\n2) 25 20 20")
    stage.tap("15")
    stage.go_to(NEXT_MONDAY, 7)
    stage.write("1) 25 25 20\n2) 20 20 20")
    stage.write("/history")
    assert "Wall reach hold: <b>25 s</b> (Mon 9 Mar)" in stage.last()
    assert "Bar hang: <b>25 s</b> (Mon 2 Mar)" in stage.last()
    stage.tap("Bar hang")
    lines = stage.last().splitlines()
    assert lines[0] == "<b>Bar hang</b>, the last 2 times"
    assert lines[1].startswith("Mon 2 Mar: <b>25, 20, 20 s")
    assert "How to do it" in stage.screen()[-1].buttons


def test_what_hurt_stands_beneath_what_loads_the_place(stage: Stage) -> None:
    stage.write(ALL)
    stage.write("left elbow inner 2/10")
    stage.write("/history bar hang")
    assert "hurt: left elbow (inside) 2 of 10" in stage.last()
    stage.write("/history wall reach hold")
    assert "hurt:" not in stage.last()


def test_a_name_that_was_not_trained_is_said_so(stage: Stage) -> None:
    stage.write(ALL)
    assert stage.write("/history handstand") is Outcome.NOT_UNDERSTOOD
    assert "no record of that" in stage.last()


def test_history_shows_the_tests_before_anything_was_trained(tmp_path: Path) -> None:
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        assert guided_tests.open_first(turn, stage.person, stage.athlete)
    first_day(stage)
    stage.write("/history")
    text = stage.last()
    assert "<b>Your latest tests</b>" in text
    assert "Push-up hold: <b>57 s</b>" in text  # what was tapped on the first test
    assert "Nothing is recorded yet" not in text
    stage.tap("Push-up hold")
    assert stage.last().startswith("<b>Push-up hold</b>\nTested: <b>57 s</b>")


def test_a_movement_s_picture_comes_from_three_times_on(stage: Stage) -> None:
    for week in range(3):
        stage.go_to(MONDAY + timedelta(days=7 * week), 7)
        stage.tap("All as planned")
        stage.write("/history bar hang")
        # CHOSEN: fewer than three points make no course
        is_drawn = stage.rows(ATHLETE_CHAT)[-1].operation == "photo"
        assert is_drawn is (week == 2)
