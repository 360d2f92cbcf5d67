"""What a coach's screens say of a tests day, of a clip, and of what an athlete was told."""

from datetime import UTC, date, datetime

from bot.wording.clips import of_athlete
from bot.wording.coach_alerts import AlertFacts, alert_text
from bot.wording.coach_plan import DayShown, day_head
from bot.wording.plan import TESTS, DayFacts, week
from bot.wording.tongue import tongue_of
from scheduler.pain.values import Level, Urgency
from storage.records.training import TEST_DAY

TONGUE = tongue_of("en")
MONDAY = date(2026, 3, 2)


def test_a_day_of_tests_is_called_so_and_not_by_its_letter():
    assert TESTS == TEST_DAY
    said = week(TONGUE, [DayFacts(on=MONDAY, letter=TEST_DAY, state="sent", movements=())])
    assert said == "<b>Monday, tests</b> · open"
    shown = DayShown(on=MONDAY, letter=TEST_DAY, minutes=13, state="trained", items=())
    assert day_head(TONGUE, shown) == "<b>Mon 2 Mar, tests</b> · 13 min · trained"


def test_a_day_that_was_trained_agrees_with_its_noun_in_spanish():
    days = [DayFacts(on=MONDAY, letter="A", state="trained", movements=())]
    assert week(tongue_of("es"), days) == "<b>Lunes, día A</b> · entrenado"


def test_a_clip_without_an_item_claims_no_question():
    said = of_athlete(
        TONGUE, name="Hal", kind="video", item=None, dose=None, caption="last set", is_asked=False
    )
    assert "asked" not in said
    assert "Item not named." in said


def test_an_alert_for_today_says_that_today_was_said():
    facts = AlertFacts(
        name="Dov",
        level=Level.CLINICIAN,
        urgency=Urgency.TODAY,
        raised_at=datetime(2026, 3, 4, 18, 15, tzinfo=UTC),
    )
    assert alert_text(TONGUE, facts).endswith(
        "Dov was told to stop and to have it seen by a doctor today."
    )
