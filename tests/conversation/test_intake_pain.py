"""Pain and warning signs while the first questions go on: told, settled, then on with the rest."""

from pathlib import Path

import pytest

from bot.acts import join
from bot.outcomes import Outcome
from scheduler.catalogue.values import Demand
from scheduler.pain.values import Level, Side, Site
from storage import buttons
from storage.records.people import AthleteState
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage, local

PHONE = 4000
# fmt: off
TO_WEIGHT = ("I agree", "18 or older", "Women's table")
TO_GOAL = (*TO_WEIGHT, "65 kg", "6 to 12 months", "Within the last week",
           "Mon", "Wed", "Fri", "Done", "40 min",
           "Bar to hang from", "Dumbbells", "Done", "4 kg", "8 kg", "Done", "Nothing else")
# fmt: on
QUESTION = "What do you weigh?"
PAIN = "my left wrist hurts when I push, 4 of 10"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    stage.now = local(MONDAY, 6, 0)
    with stage.turn() as turn:
        person, _ = join.add_athlete(turn, stage.coach, "Robin Vale")
        url = join.invite(turn, stage.coach, person)
    stage.person = person
    stage.write(f"/start {url.rsplit('=', 1)[1]}", chat_id=PHONE)
    return stage


def press(stage: Stage, *labels: str) -> None:
    for label in labels:
        stage.tap(label, chat_id=PHONE)


def say(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=PHONE)


def step(stage: Stage) -> str | None:
    with stage.turn() as turn:
        dialog = buttons.dialog(turn.tx, PHONE)
    return dialog.step if dialog else None


def last(stage: Stage) -> str:
    return stage.last(PHONE)


def last_of_coach(stage: Stage) -> str:
    return next(text for text in reversed(stage.texts(COACH_CHAT)) if "begins" in text)


def to_the_zone(stage: Stage) -> None:
    press(stage, *TO_GOAL, "No date")


def to_the_end(stage: Stage) -> None:
    """Answer what is left by the words of the buttons."""
    assert step(stage) == "zone"
    say(stage, "Madrid")
    press(stage, "07:00", "None of these", "Looks right")


@pytest.mark.parametrize("text", [PAIN, "me duele la muñeca izquierda al empujar, 4 de 10"])
def test_pain_told_in_the_questions_is_a_report_and_the_question_comes_again(
    stage: Stage, text: str
):
    press(stage, *TO_WEIGHT)
    assert say(stage, text) is Outcome.SAFETY
    region = stage.picture().region(Site.WRIST, Side.LEFT)
    assert region is not None
    assert region.last_score == 4
    assert region.level is Level.EASE  # PUBLISHED by SAFETY.md's table: 3 to 5
    assert QUESTION not in last(stage)
    press(stage, "None of these", "None of these")
    assert QUESTION in last(stage)
    assert "70 kg" in stage.screen(PHONE)[-1].buttons
    assert step(stage) == "mass_kg"
    say(stage, "58")
    assert step(stage) == "months"


def test_what_is_missing_is_asked_and_typed_answers_are_the_pains_not_the_intakes(stage: Stage):
    press(stage, *TO_WEIGHT)
    say(stage, "my wrist hurts")
    assert "which side?" in last(stage)
    say(stage, "left")
    assert "how much, 0 to 10?" in last(stage)
    say(stage, "2")
    region = stage.picture().region(Site.WRIST, Side.LEFT)
    assert region is not None
    assert region.last_score == 2
    press(stage, "None of these")
    assert QUESTION in last(stage)
    assert step(stage) == "mass_kg"


@pytest.mark.parametrize("no", ["no", "none", "ninguna de estas"])
def test_a_typed_no_answers_what_was_asked_about_the_pain_and_not_the_intake(stage: Stage, no: str):
    press(stage, *TO_GOAL[:-1])
    assert step(stage) == "elsewhere"
    say(stage, PAIN)
    for text in (no, "climbing tue", no):
        assert "any of this" in last(stage)
        assert step(stage) == "elsewhere"
        say(stage, text)
    assert "Do you train anything else" in last(stage)
    assert step(stage) == "elsewhere"
    say(stage, "climbing tue")
    assert step(stage) == "event"


def test_signs_beside_a_pain_are_asked_about_before_an_intake_button_counts(stage: Stage):
    press(stage, *TO_WEIGHT)
    say(stage, PAIN)
    press(stage, "None of these")
    asked = last(stage)
    stage.tap("65 kg", chat_id=PHONE)
    assert last(stage) == asked
    assert step(stage) == "mass_kg"


def test_an_intake_button_tapped_instead_takes_what_is_typed_next_for_itself(stage: Stage):
    press(stage, *TO_WEIGHT)
    say(stage, "my left wrist hurts")
    press(stage, "65 kg", "6 to 12 months", "Within the last week", "Mon", "Done")
    assert step(stage) == "minutes"
    say(stage, "40")
    assert step(stage) == "equipment"
    region = stage.picture().region(Site.WRIST, Side.LEFT)
    assert region is not None
    assert region.last_score is None


def test_pain_is_never_stored_as_the_goal(stage: Stage):
    press(stage, *TO_GOAL)
    assert step(stage) == "event"
    say(stage, PAIN)
    assert step(stage) == "event"
    assert stage.picture().region(Site.WRIST, Side.LEFT) is not None


@pytest.mark.parametrize("goal", ["handstand without wrist pain", "fortalecer los hombros"])
def test_a_goal_that_names_a_place_is_a_goal_and_no_report(stage: Stage, goal: str):
    press(stage, *TO_GOAL)
    say(stage, goal)
    assert step(stage) == "zone"
    assert stage.picture().level is Level.NONE


def test_a_report_from_the_questions_counts_in_the_first_session(stage: Stage):
    to_the_zone(stage)
    say(stage, "my left wrist hurts when I push, 7 of 10")
    press(stage, "None of these", "None of these")
    assert stage.alerts(), "above 5 the coach is told"
    to_the_end(stage)
    assert stage.athlete.state is AthleteState.TRAINING
    assert "Reported meanwhile: left wrist 7 of 10" in last_of_coach(stage)
    library = stage.house.library.movements
    planned = [item for one in stage.sessions() for item in one.items]
    assert planned
    loaded = [
        library[item.movement_key]
        for item in planned
        if Demand.WRIST_EXTENSION in library[item.movement_key].demands and len(item.arms) == 2
    ]
    assert not loaded


def test_who_reports_while_the_coach_looks_makes_a_report_too(stage: Stage):
    to_the_zone(stage)
    say(stage, "Madrid")
    press(stage, "07:00", "8", "Done", "I tell my coach myself", "Looks right")
    assert stage.athlete.state is AthleteState.WAITS_FOR_COACH
    assert "Send /pain" in last(stage)
    assert say(stage, "/pain") is Outcome.COMMAND
    say(stage, "left wrist")
    say(stage, "3")
    region = stage.picture().region(Site.WRIST, Side.LEFT)
    assert region is not None
    assert region.last_score == 3
    say(stage, "my right elbow hurts, 5/10")
    assert any(one.region.arm is Side.RIGHT for one in stage.picture().regions)


@pytest.mark.parametrize(
    ("text", "is_report"),
    [
        ("left shoulder, a fall, two years ago", False),
        ("operated on my right elbow 3 years ago", False),
        ("left wrist, it hurts when I push, 4 of 10", True),
    ],
)
def test_words_about_an_injury_stay_the_answer(stage: Stage, text: str, *, is_report: bool):
    to_the_zone(stage)
    say(stage, "Madrid")
    press(stage, "07:00", "6", "8", "Done")
    assert step(stage) == "injury"
    say(stage, text)
    assert step(stage) == "review"
    if is_report:
        press(stage, "None of these", "None of these")
    assert text in last(stage)
    assert bool(stage.picture().regions) is is_report
    count = stage.count(PHONE)
    press(stage, "Looks right")
    told = "\n".join(stage.since(count, PHONE))
    assert ("Send /pain" in told) is not is_report
    assert stage.athlete.profile.earlier_injury == text


def test_the_number_that_the_coach_confirmed_is_named_from_the_terms_to_the_first_lesson(
    stage: Stage,
):
    assert "Call 112, or the local number where it does not hold" in last(stage)
    to_the_zone(stage)
    to_the_end(stage)
    assert "In an emergency call 112." in last(stage)
    stage.write("/help", chat_id=COACH_CHAT)
    assert "In an emergency call 112." in stage.last(COACH_CHAT)


def test_the_number_follows_the_zone_as_soon_as_it_is_told(stage: Stage):
    to_the_zone(stage)
    say(stage, "New York")
    press(stage, "07:00", "None of these", "Looks right")
    assert "In an emergency call your local emergency number." in last(stage)


def test_before_the_terms_nothing_that_hurts_is_kept(stage: Stage):
    say(stage, PAIN)
    assert stage.picture().level is Level.NONE
    assert "I keep nothing about what hurts" in "\n".join(stage.texts(PHONE))
    assert "I agree" in stage.screen(PHONE)[-1].buttons


def test_a_doubt_is_settled_before_any_further_question(stage: Stage):
    press(stage, *TO_WEIGHT)
    assert say(stage, "my chest feels tight") is Outcome.SAFETY
    asked = last(stage)
    assert "tap here" in asked
    for text in ("65 kg", "no", "back", "what?"):
        assert say(stage, text) is Outcome.SAFETY
        assert last(stage) == asked, "the same question, and nothing beside it"
        assert step(stage) == "mass_kg"
    stage.tap("65 kg", chat_id=PHONE)
    assert last(stage) == asked
    assert step(stage) == "mass_kg"


def test_after_a_doubt_is_denied_the_open_question_comes_again(stage: Stage):
    press(stage, *TO_WEIGHT)
    say(stage, "my chest feels tight")
    message = stage.screen(PHONE)[-1]
    stage.tap(list(message.buttons)[1], chat_id=PHONE)
    assert QUESTION in last(stage)
    assert "70 kg" in stage.screen(PHONE)[-1].buttons
    say(stage, "65 kg")
    assert step(stage) == "months"


def test_after_an_emergency_only_a_button_leads_back(stage: Stage):
    press(stage, *TO_WEIGHT)
    say(stage, "my chest feels tight")
    message = stage.screen(PHONE)[-1]
    stage.tap(next(iter(message.buttons)), chat_id=PHONE)
    assert QUESTION not in last(stage)
    assert stage.picture().level is Level.EMERGENCY
    press(stage, "Go on with the questions")
    assert QUESTION in last(stage)


def test_an_old_dislocation_in_words_is_not_asked_about_for_ever(stage: Stage):
    to_the_zone(stage)
    say(stage, "Madrid")
    press(stage, "07:00", "6", "Done")
    said = "my left shoulder popped out last week and i cannot lift it"
    assert say(stage, said) is Outcome.SAFETY
    assert step(stage) == "review"
    with stage.turn() as turn:
        dialog = buttons.dialog(turn.tx, PHONE)
    assert dialog is not None
    assert dialog.answers["injury"] == said


def test_private_words_at_the_injury_question_are_kept_nowhere(stage: Stage):
    to_the_zone(stage)
    say(stage, "Madrid")
    press(stage, "07:00", "6", "Done")
    say(stage, "i want to kill myself")
    assert step(stage) == "injury"


def test_a_question_of_medicine_goes_to_the_coach_once(stage: Stage):
    press(stage, *TO_WEIGHT)
    before = stage.count(COACH_CHAT)
    assert say(stage, "can i take ibuprofen before training?") is Outcome.PASSED_ON
    assert len(stage.since(before, COACH_CHAT)) == 1
    assert QUESTION in last(stage)
