"""Step by step, typed: numbers, words for numbers, a load, what failed; in both languages."""

from pathlib import Path

import pytest

from bot.outcomes import Outcome
from storage.queries import people
from storage.records.training import ItemRecord
from tests.conversation.athlete_stage import MONDAY, Stage, values


@pytest.fixture(params=["en", "es"])
def stage(request: pytest.FixtureRequest, tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, language=request.param)
    stage.go_to(MONDAY, 7)
    stage.tap({"en": "Step by step", "es": "Paso a paso"}[request.param])
    return stage


def item(stage: Stage, number: int) -> ItemRecord:
    return stage.session_on(MONDAY).items[number - 1]


def told(stage: Stage, *, en: str, es: str) -> Outcome:
    with stage.turn() as turn:
        language = people.person(turn.tx, stage.person.id).language
    return stage.write({"en": en, "es": es}[language])


def test_numbers_after_a_question_are_still_for_the_item_asked_about(stage: Stage) -> None:
    assert stage.write("15") is Outcome.ASKED  # three sets were asked for, and one number came
    assert stage.write("15 15 14") is Outcome.RECORDED
    assert values(item(stage, 1)) == [15, 15, 14]


def test_one_number_is_asked_once_and_recorded_by_a_tap(stage: Stage) -> None:
    stage.write("15")
    same = next(one for one in stage.screen()[-1].buttons if "15 15 15" in one)
    assert stage.tap(same) is Outcome.RECORDED
    assert values(item(stage, 1)) == [15, 15, 15]


def test_next_item_s_numbers_count_while_the_reserve_is_still_asked(stage: Stage) -> None:
    stage.write("20 20 17")
    assert told(stage, en="twenty twenty fifteen", es="veinte veinte quince") is Outcome.RECORDED
    assert values(item(stage, 2)) == [20, 20, 15]


def test_a_word_for_a_number_answers_the_reserve(stage: Stage) -> None:
    stage.write("20 20 17")
    assert told(stage, en="fifteen", es="quince") is Outcome.ANSWERED
    answer = item(stage, 1).reserve
    assert answer is not None
    assert answer.left == 15


def test_load_beside_the_numbers_is_taken(stage: Stage) -> None:
    for _ in range(2):
        told(stage, en="skip", es="saltado")
    assert told(stage, en="15 15 14 with 8kg", es="15 15 14 con 8kg") is Outcome.RECORDED
    done = item(stage, 3).sets
    assert [one.done.value for one in done] == [15, 15, 14]
    assert {one.done.rung.load_kg for one in done if one.done.rung} == {8}


def test_could_not_leaves_the_item_undone_and_goes_on(stage: Stage) -> None:
    assert told(stage, en="couldn't", es="no pude") is Outcome.RECORDED
    assert item(stage, 1).is_skipped
    assert "2. " in stage.last()


def test_failed_set_is_asked_and_figures_may_follow(stage: Stage) -> None:
    assert told(stage, en="failed on the third", es="fallé en la tercera") is Outcome.ASKED
    offered = next(iter(stage.screen()[-1].buttons))
    assert "20 20 s" in offered
    assert stage.write("20 20 9") is Outcome.RECORDED
    assert values(item(stage, 1)) == [20, 20, 9]


def test_failed_set_by_a_tap_keeps_the_sets_before_it(stage: Stage) -> None:
    told(stage, en="failed on the last", es="fallé en la última")
    stage.tap(next(iter(stage.screen()[-1].buttons)))
    assert values(item(stage, 1)) == [20, 20]
