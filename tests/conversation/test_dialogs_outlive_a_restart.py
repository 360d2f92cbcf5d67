"""Whatever an athlete was in the middle of goes on after a restart, or is politely closed."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.pain.values import Level
from storage.queries import people
from storage.records.people import AthleteState
from storage.records.training import SessionState
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage, values

TUESDAY = date(2026, 3, 3)
NEW_CHAT, NEWCOMER_CHAT = 2999, 3001
ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def test_step_by_step_goes_on(stage: Stage) -> None:
    stage.tap("Step by step")
    stage.restart()
    stage.write("20 20 18")
    stage.restart()
    stage.tap("15")
    assert values(stage.session_on(MONDAY).items[0]) == [20, 20, 18]
    assert "2. Bar hang" in stage.last()


def test_the_questions_after_a_session_go_on(stage: Stage) -> None:
    stage.tap("All as planned")
    for label in ("15", "15", "3", "3", "6", "Nothing hurt"):
        stage.restart()
        stage.tap(label)
    assert stage.session_on(MONDAY).closed_at is not None


def test_where_it_hurts_goes_on_by_tap_and_by_text(stage: Stage) -> None:
    stage.tap("Something hurts")
    stage.restart()
    stage.tap("Wrist")
    stage.restart()
    stage.write("left")
    stage.restart()
    stage.write("7")
    assert stage.picture().level is Level.REST


def test_a_swap_goes_on(stage: Stage) -> None:
    for label in ("Swap one", "Bar hang", "I prefer another", "Hang, feet helping"):
        stage.restart()
        stage.tap(label)
    assert stage.session_on(MONDAY).items[1].movement_key == "foot_assisted_hang"


def test_a_reason_not_to_train_goes_on(stage: Stage) -> None:
    stage.tap("Can't today")
    stage.restart()
    stage.tap("No time")
    assert stage.session_on(MONDAY).state is SessionState.CALLED_OFF


def test_an_unclear_reading_goes_on(stage: Stage) -> None:
    assert stage.write("1) 20 20") is Outcome.ASKED
    options = list(stage.screen()[-1].buttons)
    stage.restart()
    stage.tap(options[0])
    assert any(values(item) for item in stage.session_on(MONDAY).items)


def test_a_number_to_change_goes_on(stage: Stage) -> None:
    stage.write(ALL)
    stage.tap("Change a number")
    stage.restart()
    name = next(label for label in stage.screen()[-1].buttons if "Bar hang" in label)
    stage.tap(name)
    stage.restart()
    stage.write("20 20 12")
    assert values(stage.session_on(MONDAY).items[1]) == [20, 20, 12]


def test_a_setting_goes_on_by_tap_and_by_text(stage: Stage) -> None:
    stage.write("/settings")
    stage.tap("Days")
    stage.tap("✓ Wed")
    stage.restart()
    stage.tap("Thu")
    stage.tap("Done")
    assert stage.athlete.profile.weekdays == (0, 3, 4)
    stage.tap("All settings")
    stage.tap("Minutes")
    stage.restart()
    stage.write("50")
    assert stage.athlete.profile.minutes == 50


@pytest.mark.parametrize("days", [4, 20])
def test_a_setting_that_was_left_is_closed_and_its_button_still_tells(
    stage: Stage, days: int
) -> None:
    stage.write(ALL)
    stage.write("/settings")
    stage.tap("Minutes")
    card, token = stage.button("50 min")
    stage.restart()
    stage.now += timedelta(days=days)
    assert stage.write("hello, is anybody there?") is Outcome.PASSED_ON
    assert stage.athlete.profile.minutes == 40
    stage.tap_token(token, card.message_id)
    assert stage.athlete.profile.minutes == 50


def test_first_questions_go_on_days_later(stage: Stage) -> None:
    person = stage.add_athlete(
        "Robin", chat_id=NEWCOMER_CHAT, state=AthleteState.INVITED, agreed_at=None
    )
    stage.write("/start", chat_id=NEWCOMER_CHAT)
    terms = stage.last(NEWCOMER_CHAT)
    for part in ("Mara", "7 days", "28 days", "not medical advice", "until you ask"):
        assert part in terms
    stage.restart()
    stage.tap("I agree", chat_id=NEWCOMER_CHAT)
    stage.tap("18 or older", chat_id=NEWCOMER_CHAT)
    stage.now += timedelta(days=9)
    stage.restart()
    stage.write("women", chat_id=NEWCOMER_CHAT)
    assert "What do you weigh?" in stage.last(NEWCOMER_CHAT)
    assert stage.athlete_of(person).state is AthleteState.INTAKE


def test_a_new_phone_has_the_history_and_what_was_open(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.write("/invite Ines", chat_id=COACH_CHAT)
    for label in list(stage.screen(COACH_CHAT)[-1].buttons):
        if "link" in label.lower():
            stage.tap(label, chat_id=COACH_CHAT)
            break
    link = next(text for text in reversed(stage.texts(COACH_CHAT)) if "?start=" in text)
    secret = link.split("?start=")[1].split()[0].split("<")[0].split('"')[0]
    stage.restart()
    assert stage.write(f"/start {secret}", chat_id=NEW_CHAT) is Outcome.JOINED
    assert "everything is kept" in "".join(stage.texts(NEW_CHAT))
    stage.write("2) 20 20 20", chat_id=NEW_CHAT)
    assert [values(one) for one in stage.session_on(MONDAY).items[:2]] == [
        [20, 20, 18],
        [20, 20, 20],
    ]
    stage.write("/history bar hang", chat_id=NEW_CHAT)
    assert "20, 20, 20 s" in stage.last(NEW_CHAT)
    assert stage.write("hello") is Outcome.STRANGER
    with stage.turn() as turn:
        assert people.person(turn.tx, stage.person.id).chat_id == NEW_CHAT


def test_the_language_turns_texts_and_menu(stage: Stage) -> None:
    stage.write("/settings language español")
    menus = [row for row in stage.rows(ATHLETE_CHAT) if row.operation == "menu"]
    assert len(menus) == 1
    names = [name for name, _ in menus[0].payload["commands"]]
    assert {"today", "history", "settings", "how", "pause", "help"} <= set(names)
    with stage.turn() as turn:
        assert people.person(turn.tx, stage.person.id).language == "es"
