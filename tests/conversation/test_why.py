"""``/why``: why this dose, why not more, why not the next stage; the figures behind a button."""

from datetime import timedelta
from pathlib import Path

import pytest

from scheduler.reasons import reason
from scheduler.training.rulebook import default_rulebook
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Quality
from scheduler.training.why_not_more import STEPS, why_not_more
from tests.conversation.athlete_stage import MONDAY, Stage
from tests.training.athletes import PRESS, dose

RULES = default_rulebook().steps
DOSE = dose(PRESS, Quality.STRENGTH_ENDURANCE, target=10, kg=8)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def _train(stage: Stage, *, days: int, left: str) -> None:
    stage.go_to(MONDAY + timedelta(days=days), 8)
    stage.write("all as planned")
    while top := {"20+", "4+"} & set(stage.screen()[-1].buttons):
        stage.tap(left if "20+" in top else "3")
    stage.tap("5")
    stage.tap("Nothing hurt")


def test_before_anything_was_trained_it_says_that_it_starts_carefully(stage: Stage):
    stage.write("/why")
    assert "Nothing is decided yet" in stage.last()
    assert "Checklist to stage 2" in stage.last()


def test_it_answers_why_why_not_more_and_why_not_the_next_stage(stage: Stage):
    _train(stage, days=0, left="15")
    stage.write("/why")
    said = stage.last()
    assert "Your next doses" in said
    assert "Every set at target with enough left" in said
    assert "one thing steps at a time" in said
    assert "Checklist to stage 2" in said
    assert "not yet:" in said


def test_a_dose_that_stays_says_so_itself(stage: Stage):
    _train(stage, days=0, left="0")
    stage.write("/why")
    assert "Less was left than asked" in stage.last()


def test_the_figures_name_rule_numbers_and_source(stage: Stage):
    _train(stage, days=0, left="15")
    stage.write("/why")
    stage.tap("Show the figures")
    said = stage.last()
    assert "step in time: was 20, target 25" in said
    assert "chosen for Holdwell" in said


@pytest.mark.parametrize("code", sorted(STEPS))
def test_every_step_up_says_that_one_thing_steps_at_a_time(code: DoseReason):
    found = why_not_more(DOSE, (reason(code, "ch"),), steps=RULES)
    assert found is not None
    assert found.code == DoseReason.ONE_THING_AT_A_TIME


def test_one_that_fell_says_when_it_goes_up_again():
    found = why_not_more(DOSE, (reason(DoseReason.DOWN_AFTER_MISSES, "cp"),), steps=RULES)
    assert found is not None
    assert (found.code, found.figures["target"]) == (DoseReason.UP_AGAIN, 10)


def test_one_that_stays_needs_no_second_sentence():
    assert why_not_more(DOSE, (reason(DoseReason.SAME_MISSED, "ch"),), steps=RULES) is None
    assert why_not_more(DOSE, (), steps=RULES) is None
