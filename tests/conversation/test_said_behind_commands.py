"""What stands behind a command: a sign, a pain, or a name and its value; none of it is lost."""

from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.pain.values import Level, Site
from storage.queries import people
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    stage.go_to(MONDAY, 7)
    return stage


@pytest.mark.parametrize(
    "text",
    [
        "/stop my left wrist hurts 6/10",
        "/settings minutes 45, my left wrist hurts 6/10",
        "/pause 2 weeks, my left wrist hurts 6/10",
        "/hoy me duele la muñeca izquierda 6/10",
    ],
)
def test_pain_behind_a_command_about_something_else_is_a_report(stage: Stage, text: str) -> None:
    stage.write(text)
    # SAFETY: above 5 of 10 is rested, and the coach is told
    assert {(one.region.site, one.level) for one in stage.picture().regions} == {
        (Site.WRIST, Level.REST)
    }
    assert any("Ines" in one and "wrist" in one for one in stage.texts(COACH_CHAT))


def test_the_command_itself_is_done_all_the_same(stage: Stage) -> None:
    stage.write("/pause 2 weeks, my left wrist hurts 6/10")
    assert stage.athlete.paused_until is not None


def test_pain_beside_a_sign_behind_a_command_is_kept_too(stage: Stage) -> None:
    assert stage.write("/today I have a fever and my left wrist hurts 6/10") is Outcome.SAFETY
    assert Site.WRIST in {one.region.site for one in stage.picture().regions}


@pytest.mark.parametrize("text", ["/help pain", "/settings minutes 45", "/today", "/how hang"])
def test_command_without_a_place_or_a_number_reports_nothing(stage: Stage, text: str) -> None:
    stage.write(text)
    assert not stage.picture().regions


def test_what_a_coach_who_trains_says_of_another_is_not_their_own_pain(stage: Stage) -> None:
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, is_coach=True)
    stage.write("/pause Nobody 2 weeks, left wrist hurts 6/10")
    assert not stage.picture().regions


@pytest.mark.parametrize("text", ["/settings days", "/ajustes entrenando desde hace"])
def test_name_of_a_setting_alone_is_no_sign(stage: Stage, text: str) -> None:
    assert stage.write(text) is not Outcome.SAFETY
    assert not stage.picture().flags


def test_sign_behind_the_name_of_a_setting_is_heard(stage: Stage) -> None:
    assert stage.write("/settings days my chest is tight") is Outcome.SAFETY
