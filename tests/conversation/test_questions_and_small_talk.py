"""What an athlete writes beside results: how-to questions, small talk, wishes to stop, commands."""

from datetime import date
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from storage.queries import care, people
from storage.records.people import AthleteState
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, Stage

TUESDAY = date(2026, 3, 3)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def spanish(stage: Stage) -> None:
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, language="es")


def waiting(stage: Stage) -> list[str]:
    with stage.turn() as turn:
        return [one.words for one in care.unanswered(turn.tx, [stage.person.id])]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("how do I do the push-up hold", "Push-up hold"),
        ("what is a scapular pull?", "Hang shrug"),
        ("como se hace la plancha", "Push-up hold"),
    ],
)
def test_question_how_a_movement_is_done_gives_the_how_to(
    stage: Stage, text: str, said: str
) -> None:
    before = stage.count(COACH_CHAT)
    assert stage.write(text) is Outcome.ANSWERED
    assert stage.last().startswith(f"<b>{said}</b>")
    assert stage.count(COACH_CHAT) == before
    assert waiting(stage) == []


def test_question_about_no_movement_goes_to_the_coach(stage: Stage) -> None:
    assert stage.write("what is a good weight for the bar hang?") is Outcome.PASSED_ON
    assert waiting(stage) == ["what is a good weight for the bar hang?"]


def test_question_that_names_a_pain_is_heard_as_pain(stage: Stage) -> None:
    stage.write("how do I do the push-up hold if my wrist hurts 6/10?")
    assert "see a doctor or physiotherapist" in " ".join(stage.texts())


@pytest.mark.parametrize("text", ["thanks, felt great", "gracias!", "ok", "👍", "good morning"])
def test_small_talk_waits_on_no_roster(stage: Stage, text: str) -> None:
    before = stage.count(COACH_CHAT)
    assert stage.write(text) is Outcome.ANSWERED
    assert waiting(stage) == []
    assert stage.count(COACH_CHAT) == before


def test_small_talk_with_a_remark_reaches_the_coach(stage: Stage) -> None:
    text = "thanks, felt great, but the band snapped"
    stage.write(text)
    assert waiting(stage) == [text]


def test_cheer_does_not_stand_for_the_day_s_numbers(stage: Stage) -> None:
    stage.write("felt great")
    assert "still open" in stage.last()
    stage.write("1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15")
    stage.write("felt great")
    assert stage.last() == "Good to hear."


@pytest.mark.parametrize("hurts", ["my left wrist hurts 2/10", "my elbow hurts"])
def test_cheer_beside_a_pain_is_noted_and_never_called_good(stage: Stage, hurts: str) -> None:
    stage.write(hurts)
    before = stage.picture().level
    assert stage.write("all good") is Outcome.ANSWERED
    assert stage.last().startswith("Noted.")
    # SAFETY: words never lower a level, and nobody is told to be fine
    assert stage.picture().level is before


def test_ok_behind_the_coach_s_words_is_shown_to_the_coach_and_waits_for_nobody(
    stage: Stage,
) -> None:
    stage.write("/tell ines Friday instead of Thursday, fine for you?", chat_id=COACH_CHAT)
    before = stage.count(COACH_CHAT)
    stage.write("ok")
    assert "ok" in stage.since(before, COACH_CHAT)[0]
    assert waiting(stage) == []


def test_thanks_while_a_sign_is_open_is_for_a_person(stage: Stage) -> None:
    stage.write("chest feels tight")
    stage.write("thanks")
    assert waiting(stage) == ["thanks"]


def test_wish_to_stop_is_asked_by_taps_and_the_coach_reads_it(stage: Stage) -> None:
    spanish(stage)
    assert stage.write("quiero dejarlo") is Outcome.ASKED
    asked = stage.screen()[-1]
    assert list(asked.buttons) == ["Solo esta sesión", "Algo me duele", "Hacer una pausa", "Irme"]
    assert waiting(stage) == ["quiero dejarlo"]


def test_each_tap_behind_a_wish_to_stop_leads_where_it_says(stage: Stage) -> None:
    for label, answer in (
        ("Only this session", "No problem. What is it today?"),
        ("Something hurts", "Where does it hurt?"),
        ("Take a break", "Tap how long"),
    ):
        stage.write("/stop")
        stage.tap(label)
        assert answer in stage.last()
    stage.write("/stop")
    stage.tap("Leave")
    assert "erase" in stage.last().lower()
    assert stage.athlete.state is AthleteState.TRAINING


def test_wish_to_stop_beside_an_open_sign_is_for_a_person(stage: Stage) -> None:
    stage.write("chest feels tight")
    seen = stage.count()
    stage.write("quiero dejarlo")
    assert not any("What would you like to stop?" in one for one in stage.since(seen))


@pytest.mark.parametrize("command", ["/ajustes", "/Ajustes", "/configuración", "/settings"])
def test_commands_are_known_by_their_spanish_names(stage: Stage, command: str) -> None:
    assert stage.write(command) is Outcome.COMMAND
    assert stage.last().startswith("<b>Your settings.</b>")


def test_value_behind_a_spanish_name_is_taken(stage: Stage) -> None:
    assert stage.write("/dolor left wrist 4/10") is Outcome.COMMAND
    assert stage.picture().regions


def test_command_with_a_slip_is_suggested(stage: Stage) -> None:
    assert stage.write("/setings") is Outcome.NOT_UNDERSTOOD
    assert stage.last() == "I do not know that command. Did you mean /settings?"


def test_sign_behind_an_unknown_command_is_heard_first(stage: Stage) -> None:
    assert stage.write("/setings my chest is tight") is Outcome.SAFETY


def test_help_lists_the_spanish_names(stage: Stage) -> None:
    spanish(stage)
    stage.write("/ayuda", chat_id=ATHLETE_CHAT)
    assert "/settings o /ajustes:" in stage.last()
