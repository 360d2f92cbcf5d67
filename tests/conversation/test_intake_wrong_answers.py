"""Wrong answers: the step stays, and the reply says what to send instead."""

from datetime import date
from pathlib import Path

import pytest

from bot.acts import intake_clock, intake_figures, intake_lists
from bot.acts.intake_answers import Answer, Heard, Several, Why
from bot.acts.intake_places import event_of, zone_of
from bot.acts.intake_steps import BY_KEY, STEPS
from bot.outcomes import Outcome
from bot.wording import intake as words
from tests.conversation.newcomers import COACH_CHAT, Town

PHONE = 701
ALL_OWNED = ("Dumbbells", "Kettlebells", "Barbell", "Bands", "Cable station", "Done")
PATH = {
    "adult": (),
    "reference": ("18 or older",),
    "mass_kg": ("Men's table",),
    "months": ("70 kg",),
    "untrained_days": ("1 to 3 years",),
    "weekdays": ("Within the last week",),
    "minutes": ("Mon", "Done"),
    "equipment": ("40 min",),
    "dumbbells": ALL_OWNED,
    "kettlebells": ("4 kg", "Done"),
    "barbell": ("8 kg", "Done"),
    "cable": ("20 kg", "Done"),
    "bands": ("5 kg", "Done"),
    "elsewhere": ("Light", "Done"),
    "event": ("Nothing else",),
    "zone": ("No date",),
    "session_at": ("Madrid",),
    "screen": ("07:00",),
    "injury": ("7", "Done"),
    "review": ("I tell my coach myself",),
}
WRONG = [
    ("adult", "perhaps", "tap one of the buttons"),
    ("reference", "both", "tap one of the buttons"),
    ("mass_kg", "heavy", "Send it like 72.5 kg or 160 lb"),
    ("mass_kg", "7", "Send it like 72.5 kg or 160 lb"),
    ("mass_kg", "160", "kg or pounds?"),
    ("mass_kg", "900 kg", "Send it like 72.5 kg or 160 lb"),
    ("mass_kg", "-70", "Send it like 72.5 kg or 160 lb"),
    ("months", "long", "Send it like 3 weeks"),
    ("months", "18", "days, weeks, months or years?"),
    ("months", "90 years", "longer than I can use"),
    ("untrained_days", "never", "Send it like 3 weeks"),
    ("untrained_days", "12", "days, weeks, months or years?"),
    ("weekdays", "whenever", "mon wed fri"),
    ("weekdays", "3 days", "mon wed fri"),
    ("weekdays", "mon to sat", "Five days a week are the most"),
    ("weekdays", "none", "mon wed fri"),
    ("minutes", "not much", "15 to 180"),
    ("minutes", "5", "15 to 180"),
    ("minutes", "4 h", "15 to 180"),
    ("equipment", "trampoline", "I do not know all of that"),
    ("dumbbells", "light ones", "with spaces, like 4 6 8 10"),
    ("dumbbells", "2,5", "one weight or two?"),
    ("dumbbells", "10 kg 10 lb", "all in kg, or all in pounds"),
    ("dumbbells", "2x10", "with spaces, like 4 6 8 10"),
    ("kettlebells", "0.1", "with spaces, like 4 6 8 10"),
    ("barbell", "500", "with spaces, like 4 6 8 10"),
    ("cable", "some", "with spaces, like 4 6 8 10"),
    ("bands", "red", "light, medium, heavy"),
    ("elsewhere", "climbing", "a name and its days"),
    ("elsewhere", "tuesdays", "a name and its days"),
    ("event", "03/04/2027 meet", "month as a word"),
    ("event", "31 february 2027", "month as a word"),
    ("event", "1 march 2020", "That day is over"),
    ("event", "1 march 2040", "two years ahead"),
    ("zone", "Nowhereville", "nearest big one"),
    ("session_at", "early", "6:30, 18:00 or 6 pm"),
    ("session_at", "25:00", "6:30, 18:00 or 6 pm"),
    ("session_at", "13 pm", "6:30, 18:00 or 6 pm"),
    ("screen", "9", "numbers that are true"),
    ("screen", "yes", "numbers that are true"),
    ("screen", "no chest trouble but 3 maybe", "numbers that are true"),
    ("injury", "x", "A few words are needed"),
    ("review", "hm", "looks right"),
    ("review", "99", "looks right"),
]


@pytest.fixture
def town(tmp_path: Path) -> Town:
    return Town(tmp_path)


def walk_to(town: Town, step: str) -> None:
    """Answer by buttons until this question is open."""
    keys = list(PATH)
    town.come_in(PHONE)
    for key in keys[: keys.index(step) + 1]:
        for label in PATH[key]:
            town.press(PHONE, label)
    assert town.step(PHONE) == step


@pytest.mark.parametrize(("step", "text", "says"), WRONG, ids=lambda value: str(value)[:20])
def test_a_wrong_answer_says_what_to_send_and_stays(
    town: Town, step: str, text: str, says: str
) -> None:
    walk_to(town, step)
    before = town.dialog(PHONE)
    assert town.write(PHONE, text) is Outcome.NOT_UNDERSTOOD
    assert town.dialog(PHONE) == before
    assert says in town.last(PHONE).text
    if step not in {"injury"}:
        assert town.last(PHONE).buttons, "the question comes again, with its buttons"


def test_every_question_is_tried_with_a_wrong_answer() -> None:
    tried = {step for step, _, _ in WRONG}
    assert tried >= {step.key for step in STEPS if not step.is_later} - {
        "guardian"
    }  # in test_intake_care


def test_done_without_a_choice_says_so(town: Town) -> None:
    walk_to(town, "weekdays")
    assert town.press(PHONE, "Done") is Outcome.NOT_UNDERSTOOD
    assert "Nothing is chosen yet" in town.last(PHONE).text
    assert town.step(PHONE) == "weekdays"


def test_a_sixth_day_is_refused(town: Town) -> None:
    walk_to(town, "weekdays")
    for label in ("Mon", "Tue", "Wed", "Thu", "Fri"):
        assert town.press(PHONE, label) is Outcome.INTAKE
    assert town.press(PHONE, "Sat") is Outcome.NOT_UNDERSTOOD
    assert "Five days a week are the most" in town.last(PHONE).text
    dialog = town.dialog(PHONE)
    assert dialog is not None
    assert dialog.answers["draft"] == [0, 1, 2, 3, 4]


def test_a_city_written_nearly_right_is_asked_about(town: Town) -> None:
    walk_to(town, "zone")
    assert town.write(PHONE, "Berlinn") is Outcome.ASKED
    town.press(PHONE, "Berlin")
    assert town.step(PHONE) == "session_at"


HEARD: list[tuple[Answer, object]] = [
    # DERIVED: pounds × 0.45359237, the international pound
    (intake_figures.mass_kg("220lbs"), 99.8),
    (intake_figures.mass_kg("72,5"), 72.5),
    (intake_figures.mass_kg("٧٠ kg"), 70.0),
    (intake_figures.days_of_span("3 weeks ago"), 21),
    (intake_figures.days_of_span("yesterday"), 1),
    (intake_figures.months_of_span("never"), 0.0),
    (intake_figures.months_of_span("a year"), 12.0),
    (intake_lists.weekdays("Mon–Fri"), [0, 1, 2, 3, 4]),
    (intake_lists.weekdays("fri to sun"), [4, 5, 6]),
    (intake_lists.weekdays("lunes y jueves"), [0, 3]),
    (intake_figures.minutes("1.5 hours"), 90),
    (intake_clock.session_clock("12 am"), "00:00"),
    (intake_clock.session_clock("12 pm"), "12:00"),
    (intake_clock.session_clock("19.30"), "19:30"),
    (intake_figures.weights_kg("2,5 5 7,5 kg"), [2.5, 5.0, 7.5]),
    (intake_figures.weights_kg("8,4,6"), [4.0, 6.0, 8.0]),
    (intake_figures.weights_kg("10 15 lb"), [4.54, 6.8]),
    (zone_of("são paulo"), "America/Sao_Paulo"),
    (zone_of("buenos aires"), "America/Argentina/Buenos_Aires"),
    (zone_of("europe/berlin"), "Europe/Berlin"),
    (
        event_of("meet on 2027-03-01", today=date(2026, 10, 5)),
        {"on": "2027-03-01", "goal": "meet on 2027-03-01"},
    ),
    (event_of("june 12", today=date(2026, 10, 5)), {"on": "2027-06-12", "goal": "june 12"}),
    (
        event_of("10 clean pull-ups", today=date(2026, 10, 5)),
        {"on": None, "goal": "10 clean pull-ups"},
    ),
    (BY_KEY["equipment"].read("a box and some bands", date(2026, 10, 5)), ["box", "band"]),
]


@pytest.mark.parametrize(("answer", "meant"), HEARD, ids=lambda value: str(value)[:40])
def test_answers_are_read_as_people_type_them(answer: Answer, meant: object) -> None:
    assert answer == Heard(meant)


def test_a_city_on_two_continents_is_asked_about() -> None:
    # PUBLISHED (tzdata: names of zones): no two continents share a whole city's name in it, so
    # the beginning of names stands in.
    found = zone_of("port")
    assert isinstance(found, Several)
    assert {name.rsplit("/", 1)[1] for name in found.values} >= {"Port-au-Prince", "Port_Moresby"}


def test_every_reason_has_a_sentence() -> None:
    assert set(Why) <= set(words.UNCLEAR)
    assert {step.key for step in STEPS} == set(words.QUESTIONS) == set(words.NAMES)


@pytest.mark.parametrize("text", ["what is this for?", "my son has pain"])
def test_a_question_or_a_pain_is_passed_on_and_the_step_stays(town: Town, text: str) -> None:
    town.come_in(PHONE, "18 or older", "Men's table")
    assert town.write(PHONE, text) is Outcome.PASSED_ON
    assert text in town.said_in(COACH_CHAT)
    assert town.step(PHONE) == "mass_kg"
    assert "What do you weigh?" in town.last(PHONE).text
