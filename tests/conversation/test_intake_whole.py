"""The first questions from the terms to the first session: by buttons, by text, with pauses."""

from datetime import UTC, date, datetime, time
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.catalogue.values import Equipment
from scheduler.training.values import Band, ReferenceValues
from storage.records.people import AthleteState
from storage.records.training import SessionState
from tests.conversation.newcomers import COACH_CHAT, Town

PHONE = 701
# fmt: off
BY_BUTTONS = (
    "18 or older", "Women's table", "65 kg", "6 to 12 months", "Within the last week",
    "Mon", "Wed", "Fri", "Done", "40 min",
    "Bar to hang from", "Dumbbells", "Bands", "Done",
    "4 kg", "8 kg", "Done", "Light", "Heavy", "Done",
    "Nothing else", "No date", "Madrid", "07:00", "None of these",
)
# fmt: on
BY_TEXT = (
    ("I am 18 or older", "reference"),
    ("men", "mass_kg"),
    ("176 lb", "months"),
    ("2 years", "untrained_days"),
    ("10 days", "weekdays"),
    ("tue, thu and sat", "minutes"),
    ("1 h", "equipment"),
    ("box, pull-up bar, dumbbells and bands", "dumbbells"),
    ("4 6 8 10", "bands"),
    ("light, medium", "elsewhere"),
    ("I climb tuesdays and thursdays, swim sat", "event"),
    ("12 June 2027 spring meet", "zone"),
    ("new york", "session_at"),
    ("6:30 pm", "screen"),
    ("none", "review"),
)


@pytest.fixture
def town(tmp_path: Path) -> Town:
    return Town(tmp_path)


def test_buttons_alone_lead_from_the_terms_to_the_first_session(town: Town) -> None:
    person = town.come_in(PHONE, *BY_BUTTONS)
    assert town.step(PHONE) == "review"
    assert town.athlete(person).state is AthleteState.INTAKE
    town.press(PHONE, "Looks right")
    athlete = town.athlete(person)
    facts = athlete.profile.facts
    assert athlete.state is AthleteState.TRAINING
    assert athlete.stage == 1
    assert athlete.started_on == athlete.stage_since == date(2026, 10, 5)
    assert athlete.session_at == time(7, 0)
    assert athlete.agreed_at == town.now
    assert athlete.profile.weekdays == (0, 2, 4)
    assert athlete.profile.minutes == 40
    assert facts.reference is ReferenceValues.WOMEN
    assert facts.body_mass_kg == 65
    assert facts.training_age_months == 6  # CHOSEN: the careful end of "6 to 12 months"
    assert facts.days_untrained_before == 6  # CHOSEN: the careful end of "the last week"
    assert facts.equipment == {Equipment.HIGH_BAR, Equipment.DUMBBELLS, Equipment.BAND}
    assert facts.loads_kg == {Equipment.DUMBBELLS: (4, 8)}
    assert facts.bands == (
        Band(key="light", family="long", rank=1),
        Band(key="heavy", family="long", rank=3),
    )
    assert town.person(person).zone == "Europe/Madrid"
    assert town.dialog(PHONE) is None


def test_the_present_week_is_drawn_and_the_first_day_is_named(town: Town) -> None:
    person = town.come_in(PHONE, *BY_BUTTONS, "Looks right")
    planned = town.sessions(person)
    assert [session.on for session in planned] == [
        date(2026, 10, 5),
        date(2026, 10, 7),
        date(2026, 10, 9),
    ]
    assert all(session.items for session in planned)
    last = town.last(PHONE)
    assert "Your first session comes on Mon 5 Oct at 07:00" in last.text
    for lesson in ("In reserve", "Soreness", "Pain", "0 to 10", "In an emergency call 112"):
        assert lesson in last.text


def test_the_coach_hears_who_begins_and_the_decisions_are_on_record(town: Town) -> None:
    person = town.come_in(PHONE, *BY_BUTTONS, "Looks right")
    told = town.last(COACH_CHAT)
    assert "<b>Robin Vale</b> has finished the questions and begins" in told.text
    assert "Dumbbells: 4, 8 kg" in told.text
    assert list(told.buttons) == ["Open the record"]
    assert [entry.what for entry in town.audit(person)] == [
        "athlete.invited",
        "athlete.joined",
        "athlete.agreed",
        "intake.finished",
        "stage.start",
        "tests.opened",
    ]


def test_text_alone_leads_there_too(town: Town) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    assert town.write(PHONE, "I agree") is Outcome.INTAKE
    for text, next_step in BY_TEXT:
        assert town.write(PHONE, text) is Outcome.INTAKE, text
        assert town.step(PHONE) == next_step, text
    assert town.write(PHONE, "looks right") is Outcome.INTAKE
    athlete = town.athlete(person)
    profile = athlete.profile
    assert athlete.state is AthleteState.TRAINING
    assert athlete.session_at == time(18, 30)
    assert athlete.evening_at == time(20, 30)  # CHOSEN: two hours after the session, at least 20:00
    assert town.person(person).zone == "America/New_York"
    # DERIVED: 176 lb × 0.45359237 kg = 79.83 kg, kept to a tenth
    assert profile.facts.body_mass_kg == 79.8
    assert profile.facts.training_age_months == 24  # DERIVED: 2 × 365.25 / 30.4 = 24.0
    assert profile.facts.days_untrained_before == 10
    assert profile.weekdays == (1, 3, 5)
    assert profile.minutes == 60
    assert profile.facts.loads_kg == {Equipment.DUMBBELLS: (4, 6, 8, 10)}
    assert [band.key for band in profile.facts.bands] == ["light", "medium"]
    assert profile.goal == "12 June 2027 spring meet"
    assert profile.event_on == date(2027, 6, 12)


def test_each_written_answer_is_played_back_with_the_next_question(town: Town) -> None:
    town.come_in(PHONE, "18 or older", "Men's table")
    town.write(PHONE, "160 lb")
    # DERIVED: 160 lb × 0.45359237 kg = 72.57 kg
    assert "Body weight: <b>72.6 kg</b>" in town.last(PHONE).text
    assert "How long have you trained" in town.last(PHONE).text


def test_a_tapped_question_turns_into_its_answer(town: Town) -> None:
    town.come_in(PHONE)
    token = town.last(PHONE).buttons["18 or older"]
    town.tap(PHONE, token, message_id=77)
    edit = next(said for said in town.heard(PHONE) if said.operation == "edit")
    assert edit.message_id == 77
    assert edit.text == "Age: <b>18 or older</b>"
    assert not edit.buttons


def test_somebody_without_experience_is_not_asked_when_they_last_trained(town: Town) -> None:
    town.come_in(PHONE, "18 or older", "Men's table", "70 kg", "Not yet")
    assert town.step(PHONE) == "weekdays"


def test_without_equipment_nothing_is_asked_about_weights(town: Town) -> None:
    person = town.come_in(
        PHONE, "18 or older", "My coach decides", "70 kg", "Not yet", "Tue", "Done", "20 min"
    )
    town.press(PHONE, "None of these")
    assert town.step(PHONE) == "elsewhere"
    rest = ("Nothing else", "No date", "Madrid", "19:00", "None of these", "Looks right")
    for label in rest:
        town.press(PHONE, label)
    assert town.athlete(person).profile.facts.equipment == frozenset()
    assert town.athlete(person).state is AthleteState.TRAINING


def test_weights_that_are_not_there_take_the_implement_off_the_list(town: Town) -> None:
    person = town.come_in(PHONE, *BY_BUTTONS[: BY_BUTTONS.index("4 kg")])
    assert town.step(PHONE) == "dumbbells"
    town.write(PHONE, "none")
    rest = (
        "Light",
        "Done",
        "Nothing else",
        "No date",
        "Madrid",
        "07:00",
        "None of these",
    )
    for label in rest:
        town.press(PHONE, label)
    town.press(PHONE, "Looks right")
    assert Equipment.DUMBBELLS not in town.athlete(person).profile.facts.equipment


def test_the_questions_resume_days_later_where_they_stopped(town: Town) -> None:
    person = town.come_in(PHONE, "18 or older", "Men's table")
    town.later(days=9)
    assert town.write(PHONE, "hello again") is Outcome.NOT_UNDERSTOOD
    assert "What do you weigh?" in town.last(PHONE).text
    town.press(PHONE, "80 kg")
    assert town.step(PHONE) == "months"
    assert town.athlete(person).state is AthleteState.INTAKE


def test_help_in_the_middle_asks_the_open_question_once_more(town: Town) -> None:
    town.come_in(PHONE, "18 or older")
    town.write(PHONE, "/help")
    assert "Which one shall we hold you to" in town.last(PHONE).text
    assert "not medical advice" in town.said_in(PHONE)
    assert "Call 112" in town.said_in(PHONE)
    assert "studies of leg tendons" in town.said_in(PHONE)


@pytest.mark.parametrize("how", ["press", "write"])
def test_back_leads_to_the_question_before_and_keeps_what_was_answered(
    town: Town, how: str
) -> None:
    town.come_in(PHONE, "18 or older", "Men's table", "70 kg")
    assert town.step(PHONE) == "months"
    for step in ("mass_kg", "reference", "adult"):
        if how == "press":
            town.press(PHONE, "‹ Back")
        else:
            town.write(PHONE, "back")
        assert town.step(PHONE) == step
    assert "‹ Back" not in town.last(PHONE).buttons, "nothing lies before the first question"
    town.press(PHONE, "18 or older")
    assert town.step(PHONE) == "months", "what was answered is not asked again"


def test_back_to_a_choice_of_several_shows_what_was_chosen(town: Town) -> None:
    town.come_in(PHONE, *BY_BUTTONS[: BY_BUTTONS.index("40 min")])
    town.press(PHONE, "‹ Back")
    labels = town.last(PHONE).buttons
    assert {"✓ Mon", "✓ Wed", "✓ Fri", "Tue"} <= set(labels)


def test_a_toggle_taps_on_and_off_in_its_own_message(town: Town) -> None:
    town.come_in(PHONE, *BY_BUTTONS[: BY_BUTTONS.index("Mon")])
    town.press(PHONE, "Mon")
    assert town.last(PHONE).operation == "edit"
    assert "✓ Mon" in town.last(PHONE).buttons
    town.press(PHONE, "✓ Mon")
    assert "Mon" in town.last(PHONE).buttons


def test_every_line_of_the_summary_can_be_changed_by_button(town: Town) -> None:
    person = town.come_in(PHONE, *BY_BUTTONS)
    town.press(PHONE, "3. Body weight")
    assert town.step(PHONE) == "mass_kg"
    town.write(PHONE, "61,5")
    assert town.step(PHONE) == "review"
    assert "Body weight: <b>61.5 kg</b>" in town.last(PHONE).text
    town.press(PHONE, "Looks right")
    assert town.athlete(person).profile.facts.body_mass_kg == 61.5


def test_a_line_can_be_changed_by_its_number(town: Town) -> None:
    town.come_in(PHONE, *BY_BUTTONS)
    town.write(PHONE, "change 7")
    assert town.step(PHONE) == "minutes"


def test_adding_equipment_in_the_end_asks_for_its_weights(town: Town) -> None:
    town.come_in(PHONE, *BY_BUTTONS)
    town.press(PHONE, "8. Equipment")
    town.press(PHONE, "Kettlebells")
    town.press(PHONE, "Done")
    assert town.step(PHONE) == "kettlebells"
    town.write(PHONE, "8 12")
    assert town.step(PHONE) == "review"


def test_equipment_taken_off_takes_its_weights_along(town: Town) -> None:
    person = town.come_in(PHONE, *BY_BUTTONS, "8. Equipment", "✓ Dumbbells", "Done", "Looks right")
    assert town.athlete(person).profile.facts.loads_kg == {}


def test_a_button_of_an_answered_question_changes_nothing(town: Town) -> None:
    town.come_in(PHONE)
    old = town.last(PHONE).buttons["Under 18"]
    town.press(PHONE, "18 or older")
    assert town.tap(PHONE, old) is Outcome.STALE_TAP
    assert town.step(PHONE) == "reference"
    assert "That question is answered" in town.said_in(PHONE)


def test_a_second_looks_right_starts_nothing_twice(town: Town) -> None:
    person = town.come_in(PHONE, *BY_BUTTONS)
    token = town.last(PHONE).buttons["Looks right"]
    town.tap(PHONE, token)
    assert town.tap(PHONE, token) is Outcome.STALE_TAP
    assert [entry.what for entry in town.audit(person)].count("stage.start") == 1
    assert len(town.sessions(person)) == 3


def test_an_edited_message_does_not_answer_the_open_question(town: Town) -> None:
    town.come_in(PHONE, "18 or older", "Men's table")
    assert town.write(PHONE, "82 kg", is_edit=True) is Outcome.NOT_UNDERSTOOD
    assert town.step(PHONE) == "mass_kg"


def test_not_agreeing_keeps_nothing_and_the_terms_can_be_read_again(town: Town) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    town.press(PHONE, "I do not agree")
    athlete = town.athlete(person)
    assert (athlete.state, athlete.agreed_at) == (AthleteState.INVITED, None)
    assert town.dialog(PHONE) is None
    assert "did not agree" in town.last(COACH_CHAT).text
    assert [entry.what for entry in town.audit(person)] == ["athlete.invited", "athlete.joined"]
    town.later(days=3)
    town.press(PHONE, "Show the terms again")
    town.press(PHONE, "I agree")
    assert town.athlete(person).state is AthleteState.INTAKE


@pytest.mark.parametrize("text", ["what is this", "maybe", "18"])
def test_nothing_but_agreement_agrees(town: Town, text: str) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    assert town.write(PHONE, text) is Outcome.NOT_UNDERSTOOD
    assert town.athlete(person).agreed_at is None
    assert "write agree or no" in town.last(PHONE).text


def test_whoever_finishes_after_the_hour_gets_todays_session_in_a_moment(town: Town) -> None:
    town.now = datetime(2026, 10, 5, 10, 0, tzinfo=UTC)  # 12:00 in Madrid, the hour was 07:00
    person = town.come_in(PHONE, *BY_BUTTONS, "Looks right")
    assert "Your first session comes today, in a moment" in town.last(PHONE).text
    assert town.sessions(person)[0].state is SessionState.PLANNED


def test_whoever_finishes_in_the_evening_begins_on_the_next_training_day(town: Town) -> None:
    town.now = datetime(2026, 10, 5, 19, 30, tzinfo=UTC)  # 21:30 in Madrid
    person = town.come_in(PHONE, *BY_BUTTONS, "Looks right")
    assert "Your first session comes on Wed 7 Oct at 07:00" in town.last(PHONE).text
    assert [session.state for session in town.sessions(person)] == [
        SessionState.CALLED_OFF,
        SessionState.PLANNED,
        SessionState.PLANNED,
    ]


def test_whoever_finishes_after_the_weeks_last_day_begins_next_week(town: Town) -> None:
    town.now = datetime(2026, 10, 10, 8, 0, tzinfo=UTC)  # a Saturday
    town.come_in(PHONE, *BY_BUTTONS, "Looks right")
    assert "Your first session comes on Mon 12 Oct at 07:00" in town.last(PHONE).text


def test_every_question_fits_the_messaging_limits(town: Town) -> None:
    town.come_in(PHONE, *BY_BUTTONS)
    for said in town.heard(PHONE):
        # PUBLISHED (botapi: a text holds 1-4096 UTF-16 units)
        assert len(said.text.encode("utf-16-le")) // 2 <= 4096
        # PUBLISHED (botapi: callback data holds 1-64 bytes)
        assert all(1 <= len(token.encode()) <= 64 for token in said.buttons.values())
