"""Who must wait: under 18, a yes to a health question; and what the athlete is told then."""

from pathlib import Path

import pytest

from bot.acts import intake_taps
from bot.events import Tapped
from bot.outcomes import Outcome
from storage.queries import people
from storage.records.people import AthleteState, Person
from tests.conversation.newcomers import COACH_CHAT, Town

PHONE = 701
# fmt: off
BEFORE_SCREEN = (
    "18 or older", "Men's table", "70 kg", "1 to 3 years", "Within the last week",
    "Tue", "Thu", "Done", "30 min", "Bands", "Done", "Light", "Done",
    "Nothing else", "No date", "Madrid", "07:00",
)
# fmt: on
SIGNS = ("1", "2", "3")
INJURIES = ("6", "7", "8")


@pytest.fixture
def town(tmp_path: Path) -> Town:
    return Town(tmp_path)


def answer_screen(town: Town, *numbers: str) -> Person:
    """Answer everything, with a yes to these numbers."""
    person = town.come_in(PHONE, *BEFORE_SCREEN, *numbers, "Done")
    if town.step(PHONE) == "injury":
        town.write(PHONE, "left shoulder, a fall, two years ago")
    town.press(PHONE, "Looks right")
    return person


def test_the_health_questions_are_listed_and_a_yes_is_no_verdict(town: Town) -> None:
    town.come_in(PHONE, *BEFORE_SCREEN)
    text = town.last(PHONE).text
    assert "A yes is no verdict: Mara Quill then looks before you start" in text
    assert [f"{n}." in text for n in range(1, 9)] == [True] * 8


@pytest.mark.parametrize("number", ["1", "2", "3", "4", "6", "7", "8"])
def test_a_yes_waits_for_the_coach_and_draws_nothing(town: Town, number: str) -> None:
    person = answer_screen(town, number)
    athlete = town.athlete(person)
    assert athlete.state is AthleteState.WAITS_FOR_COACH
    assert athlete.started_on is None
    assert town.sessions(person) == ()
    assert "No session comes until then" in town.said_in(PHONE)
    told = town.last(COACH_CHAT)
    assert "waits for you" in told.text
    assert list(told.buttons) == ["Open the record", "I have looked: let them start"]


def test_blood_pressure_or_eyes_alone_start_without_going_upside_down(town: Town) -> None:
    person = answer_screen(town, "5")
    athlete = town.athlete(person)
    assert athlete.state is AthleteState.TRAINING
    assert not athlete.profile.may_invert
    assert athlete.profile.screen_yes == ("pressure_or_eyes",)


def test_pregnancy_waits_and_never_goes_upside_down(town: Town) -> None:
    athlete = town.athlete(answer_screen(town, "4"))
    assert athlete.state is AthleteState.WAITS_FOR_COACH
    assert not athlete.profile.may_invert


@pytest.mark.parametrize("number", SIGNS)
def test_a_sign_sends_to_a_doctor_with_the_emergency_number(town: Town, number: str) -> None:
    answer_screen(town, number)
    told = next(said for said in town.heard(PHONE) if "call 112 now" in said.text)
    assert told.kind == "safety"
    assert "see a doctor" in told.text
    assert "licensed clinician" in town.last(COACH_CHAT).text


@pytest.mark.parametrize("number", INJURIES)
def test_an_injury_is_asked_about_and_reaches_the_coach(town: Town, number: str) -> None:
    person = answer_screen(town, number)
    assert town.athlete(person).profile.earlier_injury == "left shoulder, a fall, two years ago"
    assert "left shoulder, a fall, two years ago" in town.last(COACH_CHAT).text


def test_what_happened_may_be_told_in_person(town: Town) -> None:
    person = town.come_in(PHONE, *BEFORE_SCREEN, "6", "Done", "I tell my coach myself")
    town.press(PHONE, "Looks right")
    assert town.athlete(person).profile.earlier_injury == "told in person"


def test_words_about_an_injury_are_not_kept_with_the_decisions(town: Town) -> None:
    person = answer_screen(town, "6")
    assert all("a fall" not in str(entry.after) for entry in town.audit(person))


def test_who_hurts_now_is_asked_to_report_it(town: Town) -> None:
    answer_screen(town, "8")
    assert "Send /pain" in town.last(PHONE).text


def test_numbers_may_be_written(town: Town) -> None:
    town.come_in(PHONE, *BEFORE_SCREEN)
    town.write(PHONE, "2 and 7")
    assert town.step(PHONE) == "injury"
    dialog = town.dialog(PHONE)
    assert dialog is not None
    assert dialog.answers["screen"] == ["effort_signs", "recent_injury"]


def test_the_coach_lets_a_waiting_athlete_start(town: Town) -> None:
    person = answer_screen(town, "1")
    assert town.press(COACH_CHAT, "I have looked: let them start") is Outcome.COMMAND
    athlete = town.athlete(person)
    assert athlete.state is AthleteState.TRAINING
    assert athlete.started_on == town.now.date()
    assert len(town.sessions(person)) == 2
    assert "Mara Quill has looked at your answers" in town.said_in(PHONE)
    assert "Your first session comes on Tue 6 Oct at 07:00" in town.last(PHONE).text
    assert "Robin Vale starts" in town.last(COACH_CHAT).text
    confirmed = next(entry for entry in town.audit(person) if entry.what == "athlete.confirmed")
    assert confirmed.actor_id == town.coach.id


def test_letting_start_twice_changes_nothing(town: Town) -> None:
    person = answer_screen(town, "1")
    token = town.last(COACH_CHAT).buttons["I have looked: let them start"]
    town.tap(COACH_CHAT, token)
    assert town.tap(COACH_CHAT, token) is Outcome.STALE_TAP
    assert [entry.what for entry in town.audit(person)].count("athlete.confirmed") == 1


def test_a_waiting_athlete_may_not_be_let_start_by_somebody_elses_coach(town: Town) -> None:
    person = answer_screen(town, "1")
    with town.turn() as turn:
        other = people.add_person(turn.tx, name="B", now=town.now, chat_id=999, is_coach=True)
        event = Tapped(chat_id=999, at=town.now, message_id=1, token="")
        about = {"athlete": person.id, "is_guardian": False}
        assert intake_taps.let_start(turn, other, about, event) is Outcome.STALE_TAP
    assert town.athlete(person).state is AthleteState.WAITS_FOR_COACH


def test_under_18_stops_after_the_guardians_contact(town: Town) -> None:
    person = town.come_in(PHONE, "Under 18")
    assert "parent or guardian" in town.last(PHONE).text
    assert town.write(PHONE, "my mum") is Outcome.NOT_UNDERSTOOD
    assert "phone number or e-mail" in town.last(PHONE).text
    assert town.step(PHONE) == "guardian"
    assert town.write(PHONE, "Dana Vale, 555 012 34") is Outcome.INTAKE
    athlete = town.athlete(person)
    assert athlete.state is AthleteState.WAITS_FOR_COACH
    assert not athlete.profile.is_adult
    assert athlete.profile.guardian == "Dana Vale, 555 012 34"
    assert town.step(PHONE) == "guardian_wait"
    assert "No session comes until then" in town.last(PHONE).text
    told = town.last(COACH_CHAT)
    assert "Dana Vale, 555 012 34" in told.text
    assert list(told.buttons) == ["Open the record", "Guardian agrees: go on"]


def test_while_the_guardian_is_waited_for_words_go_to_the_coach(town: Town) -> None:
    town.come_in(PHONE, "Under 18")
    town.write(PHONE, "Dana Vale, dana@example.org")
    assert town.write(PHONE, "did you call?") is Outcome.PASSED_ON
    assert "did you call?" in town.last(COACH_CHAT).text


def test_with_the_guardians_word_the_questions_go_on_to_the_first_session(town: Town) -> None:
    person = town.come_in(PHONE, "Under 18")
    town.write(PHONE, "Dana Vale, dana@example.org")
    assert town.sessions(person) == ()
    town.press(COACH_CHAT, "Guardian agrees: go on")
    assert town.athlete(person).state is AthleteState.INTAKE
    assert "spoken with your guardian" in town.last(PHONE).text
    for label in (*BEFORE_SCREEN[1:], "None of these", "Looks right"):
        town.press(PHONE, label)
    athlete = town.athlete(person)
    assert athlete.state is AthleteState.TRAINING
    assert not athlete.profile.is_adult
    assert athlete.profile.guardian == "Dana Vale, dana@example.org"
    agreed = [entry.actor_id for entry in town.audit(person) if "guardian" in entry.what]
    assert agreed == [town.coach.id]


def test_a_guardian_named_anew_is_waited_for_anew(town: Town) -> None:
    person = town.come_in(PHONE, "Under 18")
    town.write(PHONE, "Dana Vale, dana@example.org")
    town.press(COACH_CHAT, "Guardian agrees: go on")
    town.press(PHONE, "‹ Back")
    town.write(PHONE, "Lee Vale, lee@example.org")
    assert town.athlete(person).state is AthleteState.WAITS_FOR_COACH
    assert town.step(PHONE) == "guardian_wait"


def test_an_adult_who_turns_out_under_18_cannot_finish_before_the_coach_agrees(town: Town) -> None:
    person = town.come_in(PHONE, *BEFORE_SCREEN, "None of these", "1. Age", "Under 18")
    assert town.step(PHONE) == "guardian"
    town.write(PHONE, "Dana Vale, dana@example.org")
    assert town.athlete(person).state is AthleteState.WAITS_FOR_COACH
    town.press(COACH_CHAT, "Guardian agrees: go on")
    assert town.step(PHONE) == "review"
    town.press(PHONE, "Looks right")
    assert town.athlete(person).state is AthleteState.TRAINING


def test_the_guardians_word_from_before_does_not_answer_the_health_questions(town: Town) -> None:
    person = town.come_in(PHONE, "Under 18")
    town.write(PHONE, "Dana Vale, dana@example.org")
    token = town.last(COACH_CHAT).buttons["Guardian agrees: go on"]
    town.tap(COACH_CHAT, token)
    for label in (*BEFORE_SCREEN[1:], "1", "Done", "Looks right"):
        town.press(PHONE, label)
    assert town.athlete(person).state is AthleteState.WAITS_FOR_COACH
    assert town.tap(COACH_CHAT, token) is Outcome.STALE_TAP
    assert town.athlete(person).state is AthleteState.WAITS_FOR_COACH
    assert town.sessions(person) == ()
