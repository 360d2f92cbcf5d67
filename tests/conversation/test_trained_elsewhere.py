"""What is trained elsewhere: asked at the start, told in a line, and it moves our hard days."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.acts.intake_answers import Heard, Unclear
from bot.acts.intake_elsewhere import elsewhere_of, regular_of
from bot.acts.training_elsewhere import hard_days_of
from scheduler.catalogue.values import Demand, Direction
from scheduler.training.other_training import Load
from storage.queries import people
from storage.records.training import SessionState
from tests.conversation.athlete_stage import MONDAY, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("climbing tue thu, swim sat", [("climbing", 2), ("climbing", 4), ("swim", 6)]),
        ("I climb on Tuesdays and Thursdays", [("climb", 2), ("climb", 4)]),
        ("water polo: mon, wed and fri", [("water polo", 1), ("water polo", 3), ("water polo", 5)]),
        ("yoga every sunday morning", [("yoga", 7)]),
        ("nothing", []),
        ("no", []),
    ],
)
def test_activities_are_read_with_their_days(text: str, expected: list[tuple[str, int]]):
    found = elsewhere_of(text)
    assert isinstance(found, Heard)
    assert [(one["name"], one["weekday"]) for one in found.value] == expected


@pytest.mark.parametrize("text", ["climbing", "tuesday", "a lot of things"])
def test_what_has_no_name_or_no_day_is_asked_again(text: str):
    found = elsewhere_of(text)
    assert isinstance(found, Unclear)


def test_what_pulls_or_grips_counts_as_hard_until_more_is_known():
    climbing, swimming = regular_of(
        [{"name": "climbing", "weekday": 2}, {"name": "tennis", "weekday": 6}]
    )
    assert (climbing.tags, climbing.is_hard) == (frozenset({Load.PULL, Load.GRIP}), True)
    assert (swimming.tags, swimming.is_hard) == (frozenset({Load.OVERHEAD}), False)


def test_no_hang_on_the_day_after_a_climbing_day(stage: Stage):
    """COMMON PRACTICE: two hard pulling days in a row are what elbows stand least."""
    profile = stage.athlete.profile.model_copy(
        update={"regular_training": regular_of([{"name": "climbing", "weekday": 2}])}
    )
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, profile=profile)
    stage.go_to(MONDAY, 6)
    sessions = {one.on: one for one in stage.sessions()}
    wednesday = sessions[MONDAY + timedelta(days=2)]
    demands = [stage.movement(item).demands for item in wednesday.items]
    assert demands
    assert not any(Demand.TRACTION in one for one in demands)


def test_a_hard_class_told_today_moves_what_is_ahead(stage: Stage):
    stage.go_to(MONDAY + timedelta(days=1), 12)
    stage.write("climbing 90 min, effort 8")
    with stage.turn() as turn:
        (hard,) = hard_days_of(turn, stage.person, stage.athlete, monday=MONDAY)
    assert hard.on == MONDAY + timedelta(days=1)
    assert Direction.VERTICAL_PULL in hard.directions
    wednesday = stage.session_on(MONDAY + timedelta(days=2))
    assert wednesday.state is SessionState.PLANNED
    assert not any(Demand.TRACTION in stage.movement(item).demands for item in wednesday.items)


def test_an_easy_run_moves_nothing(stage: Stage):
    stage.go_to(MONDAY + timedelta(days=1), 12)
    before = stage.session_on(MONDAY + timedelta(days=2)).id
    stage.write("ran 40 min, effort 5")
    assert stage.session_on(MONDAY + timedelta(days=2)).id == before
