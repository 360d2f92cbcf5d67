"""The whole day of a Spanish speaker, and of somebody who counts in pounds, as their chats read."""

import re
from datetime import date
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from bot.wording.tongue import tongue_of
from storage.queries import people
from storage.records.training import SessionState
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage

ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"
NEXT_MONDAY = date(2026, 3, 9)
ENGLISH = re.compile(
    r"\b(?:the|and|with|your|you|hold|hang|press-down|session|set|sets|next|pain|arm|left|right|"
    r"wrist|nothing|today|week|coach looks|reps? left|stop|done|shoulder|row|pull|push|reach)\b"
)
"""Words that no Spanish text has: CHOSEN, from what athletes are shown most."""


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, language="es")
        people.change_person(turn.tx, stage.coach.id, language="es")
    stage.go_to(MONDAY, 7)
    return stage


def english_in(stage: Stage, chat_id: int) -> list[str]:
    """Return what is English in everything that a chat has read, commands and codes apart."""
    found = []
    for shown in stage.screen(chat_id):
        for text in (shown.text, *shown.buttons):
            bare = re.sub(
                r"<code>.*?</code>|<pre>.*?</pre>|/\w+(?: off)?|<[^>]+>", " ", text, flags=re.DOTALL
            )
            found += [one[0] for one in ENGLISH.finditer(bare.casefold())]
    return found


def test_session_is_spanish_with_its_movements_and_its_example(stage: Stage):
    text = stage.last()
    assert text.startswith("<b>Lunes, día A</b> · unos ")
    assert "1. Aguante de alcance en pared" in text
    assert "<b>3 × 20 s</b>, para cuando te queden unos 15 s" in text
    assert "Todo según el plan" in stage.screen()[0].buttons
    assert english_in(stage, ATHLETE_CHAT) == []


def test_a_good_day_in_spanish_leaves_no_english_in_either_chat(stage: Stage):
    assert stage.write("suspensión en barra 20 20 20") is Outcome.RECORDED
    assert "2. Suspensión en barra: <b>20, 20, 20 s</b>" in stage.last()
    stage.write(ALL)
    assert stage.session_on(MONDAY).state is SessionState.TRAINED
    for left in ("15", "15", "3", "3"):
        stage.tap(left)
    stage.tap("6")
    stage.tap("Nada me dolió")
    assert "Gracias, eso es todo." in stage.last()
    for command in ("/why", "/week", "/today", "/season", "/help"):
        stage.write(command)
    assert english_in(stage, ATHLETE_CHAT) == []
    name = stage.person.name
    for command in ("/roster", f"/who {name}", f"/audit {name}", f"/season {name}", "/help"):
        stage.write(command, chat_id=COACH_CHAT)
    assert english_in(stage, COACH_CHAT) == []


def test_how_to_and_swap_are_spanish(stage: Stage):
    stage.tap("Cambiar uno")
    assert stage.last() == "¿Cuál cambio?"
    assert "Suspensión en barra" in stage.screen()[-1].buttons
    stage.tap("Suspensión en barra")
    assert english_in(stage, ATHLETE_CHAT) == []


def test_pain_in_spanish_says_what_is_left_out_and_tells_the_coach(stage: Stage):
    stage.write("me duele la muñeca izquierda 6/10")
    assert english_in(stage, ATHLETE_CHAT) == []
    assert english_in(stage, COACH_CHAT) == []
    assert any("muñeca" in shown.text for shown in stage.screen(COACH_CHAT))


@pytest.mark.parametrize("said", ["/pause 2 semanas", "/pause 10 días", "/pause 2 weeks"])
def test_a_break_is_understood_in_both_languages(stage: Stage, said: str):
    stage.write(said)
    assert stage.last().startswith("Una pausa hasta el ")


@pytest.mark.parametrize(
    ("said", "shown"),
    [
        ("principal 12 junio torneo", "Evento principal"),
        ("viaje 3 mayo a 10 mayo", "Fuera, con una banda"),
        ("compitiendo 1 mayo a 30 junio", "Compitiendo"),
        ("main 12 June meet", "Evento principal"),
    ],
)
def test_a_season_is_changed_with_the_words_that_the_coach_is_shown(stage: Stage, said, shown):
    stage.write(f"/season {stage.person.name} {said}", chat_id=COACH_CHAT)
    assert shown in stage.last(COACH_CHAT)


def test_somebody_who_counts_in_pounds_is_told_pounds_and_answers_in_pounds(tmp_path: Path):
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, units="lb")
    stage.go_to(MONDAY, 7)
    item = next(one for one in stage.session_on(MONDAY).items if one.dose and one.dose.load_kg)
    assert item.dose is not None
    load_kg = item.dose.load_kg
    assert load_kg is not None
    told = tongue_of("en", units="lb").load(load_kg)
    assert told in stage.last()
    assert " kg" not in stage.last()
    number = [one for one in stage.session_on(MONDAY).items if one.dose].index(item) + 1
    figures = " ".join([str(item.dose.target)] * item.dose.sets)
    assert stage.write(f"{number}) {told.split()[0]} x {figures}") in {Outcome.RECORDED}
    done = stage.session_on(MONDAY).items[number - 1].sets
    assert {one.done.rung.load_kg for one in done if one.done.rung} <= {load_kg}


def test_a_week_with_pain_a_digest_and_questions_leaves_no_english(stage: Stage):
    stage.write(ALL)
    for left in ("15", "15", "3", "3", "6"):
        stage.tap(left)
    stage.tap("Algo me duele")
    stage.tap("Muñeca")
    stage.tap("Izquierdo")
    stage.tap("4")
    stage.tap("Nada de esto")
    stage.go_to(NEXT_MONDAY, 12)
    for command in ("/pain", "/why", "/pause 1 semana", "/pause off"):
        stage.write(command)
    name = stage.person.name
    for command in (
        "/roster",
        f"/who {name}",
        f"/audit {name}",
        f"/clear {name}",
        f"/giveback {name} motivo",
        f"/upkeep {name}",
        f"/shown {name} motivo",
        f"/note {name} nota",
        "/emergency",
        "/invite",
        "/tell",
        "/nonsense",
        "/who nadie",
    ):
        stage.write(command, chat_id=COACH_CHAT)
    assert english_in(stage, ATHLETE_CHAT) == []
    assert english_in(stage, COACH_CHAT) == []
    assert any("sesiones" in text for text in stage.texts(COACH_CHAT))


def test_the_look_for_english_finds_it_where_it_is(tmp_path: Path):
    stage = Stage.with_first_session(tmp_path)
    assert english_in(stage, ATHLETE_CHAT) != []


def test_a_stranger_is_answered_in_the_language_of_their_own_screen(stage: Stage):
    stage.write("hola", chat_id=777, language_code="es-MX")
    assert stage.rows(777)[-1].payload["text"].startswith("Este es un bot de entrenamiento privado")
    stage.write("hello", chat_id=778, language_code=None)
    assert stage.rows(778)[-1].payload["text"].startswith("This is a private coaching bot")
