"""The settings: every answer of the first questions, changed later by a tap or a short text."""

from datetime import date, time
from pathlib import Path

import pytest

from bot.events import Media, SentMedia
from bot.outcomes import Outcome
from scheduler.catalogue.values import Equipment
from storage import buttons
from storage.queries import people
from storage.records.people import AthleteState
from storage.records.training import SessionState
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage

TUESDAY, WEDNESDAY, FRIDAY = date(2026, 3, 3), date(2026, 3, 4), date(2026, 3, 6)
ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def choose(stage: Stage, *labels: str) -> None:
    stage.write("/settings")
    for label in labels:
        stage.tap(label)


def test_the_list_shows_every_answer_with_a_button_for_each(stage: Stage) -> None:
    stage.write("/settings")
    text = stage.last()
    assert "Days: <b>Mon, Wed, Fri</b>" in text
    assert "Dumbbells: <b>4, 6, 8, 10, 12 kg</b>" in text
    assert "Hour: <b>07:00</b>" in text
    assert "Time zone: <b>Madrid</b>" in text
    labels = set(stage.screen()[-1].buttons)
    assert {"Days", "Minutes", "Equipment", "Health", "Language", "Units", "Goal"} <= labels
    assert "Guardian" not in labels


def test_days_by_taps_draw_the_coming_days_anew_and_what_was_sent_stands(stage: Stage) -> None:
    choose(stage, "Days", "✓ Wed", "Thu", "Done")
    assert stage.athlete.profile.weekdays == (0, 3, 4)
    assert stage.session_on(MONDAY).state is SessionState.SENT
    assert stage.session_days_after(MONDAY) == [date(2026, 3, 5), FRIDAY]
    assert "planned anew" in stage.last()


def test_no_more_than_five_days_can_be_chosen(stage: Stage) -> None:
    choose(stage, "Days", "Tue", "Thu", "Sat")
    assert "Five days a week are the most" in stage.last()
    assert stage.athlete.profile.weekdays == (0, 2, 4)


def test_days_moved_behind_trained_ones_do_not_pile_up(stage: Stage) -> None:
    stage.write(ALL)
    stage.go_to(WEDNESDAY, 7)
    stage.write(ALL)
    stage.later(hours=2)
    choose(stage, "Days", "✓ Mon", "✓ Wed", "Thu", "Sat", "Done")
    assert stage.athlete.profile.weekdays == (3, 4, 5)
    # CHOSEN: three days a week were and are wanted; two are done, so one more is planned.
    week = [one.on for one in stage.sessions() if one.on <= date(2026, 3, 8)]
    assert len(week) == 3


@pytest.mark.parametrize(
    ("text", "minutes"), [("45", 45), ("an hour", 60), ("30 min", 30), ("una hora", 60)]
)
def test_minutes_can_be_written_as_the_answer(stage: Stage, text: str, minutes: int) -> None:
    choose(stage, "Minutes")
    assert "Now: 40 min" in stage.last()
    assert stage.write(text) is Outcome.ANSWERED
    assert stage.athlete.profile.minutes == minutes


def test_one_line_does_it_too_by_either_languages_name(stage: Stage) -> None:
    stage.write("/settings minutes 50")
    assert stage.athlete.profile.minutes == 50
    stage.write("/settings hour 6:30 pm")
    assert stage.athlete.session_at == time(18, 30)
    assert stage.athlete.evening_at == time(20, 30)  # CHOSEN: two hours behind, at least 20:00
    assert stage.write("/settings nonsense 4") is Outcome.NOT_UNDERSTOOD
    assert "I know no setting of that name" in "".join(stage.texts()[-2:])


def test_an_answer_that_cannot_be_read_says_what_to_send(stage: Stage) -> None:
    choose(stage, "Minutes")
    assert stage.write("a while") is Outcome.NOT_UNDERSTOOD
    assert "Send a number of minutes, like 40" in stage.last()
    stage.write("35")
    assert stage.athlete.profile.minutes == 35


def test_a_result_written_meanwhile_is_a_result(stage: Stage) -> None:
    choose(stage, "Minutes")
    assert stage.write("1) 20 20 18") is Outcome.RECORDED
    assert stage.athlete.profile.minutes == 40


def test_pain_written_meanwhile_is_heard_as_pain(stage: Stage) -> None:
    choose(stage, "Goal")
    assert stage.write("left wrist hurts 7/10") is Outcome.ANSWERED
    assert stage.athlete.profile.goal == ""
    assert stage.picture().level.name == "REST"


def test_a_red_flag_written_meanwhile_comes_first(stage: Stage) -> None:
    choose(stage, "Goal")
    assert stage.write("my chest is tight and I cannot breathe") is Outcome.SAFETY
    assert stage.alerts()


def test_figures_after_a_session_was_sent_are_its_own(stage: Stage) -> None:
    stage.write(ALL)
    stage.go_to(TUESDAY, 21)
    choose(stage, "Minutes")
    stage.go_to(WEDNESDAY, 7)
    stage.write("1) 20 20 20")
    assert stage.athlete.profile.minutes == 40


def test_equipment_leads_to_its_weights_and_the_coach_sees_it(stage: Stage) -> None:
    before = stage.count(COACH_CHAT)
    choose(stage, "Equipment", "Kettlebells", "Done")
    assert Equipment.KETTLEBELLS not in stage.athlete.profile.facts.equipment
    assert "Which kettlebells do you have" in stage.last()
    assert stage.write("8 12 16") is Outcome.ANSWERED
    facts = stage.athlete.profile.facts
    assert Equipment.KETTLEBELLS in facts.equipment
    assert facts.loads_kg[Equipment.KETTLEBELLS] == (8, 12, 16)
    assert Equipment.WALL in facts.equipment, "what no question asks about stays"
    told = "".join(stage.since(before, COACH_CHAT))
    assert "<b>Ines</b> changed a setting. Kettlebells: none → <b>8, 12, 16 kg</b>" in told


def test_what_is_gone_is_planned_no_more(stage: Stage) -> None:
    choose(stage, "Equipment", "✓ Bar to hang from", "Done")
    ahead = [one for one in stage.sessions() if one.on > MONDAY]
    assert ahead
    for session in ahead:
        for item in session.items:
            assert stage.movement(item).fits(stage.athlete.profile.facts.equipment)


def test_bands_leave_with_their_weights_and_come_back_by_name(stage: Stage) -> None:
    choose(stage, "Equipment", "✓ Bands", "Done")
    assert not stage.athlete.profile.facts.bands
    stage.write("/settings equipment dumbbells, bands, box")
    assert "Which bands do you have" in stage.last()
    stage.write("light, heavy")
    assert {band.key for band in stage.athlete.profile.facts.bands} == {"light", "heavy"}
    assert Equipment.BAND in stage.athlete.profile.facts.equipment


def test_pounds_count_where_pounds_are_chosen(stage: Stage) -> None:
    choose(stage, "Units", "Pounds (lb)")
    assert stage.write("/settings dumbbells 10 20") is Outcome.ANSWERED
    # DERIVED: 10 lb x 0.45359237 = 4.54 kg, 20 lb = 9.07 kg
    assert stage.athlete.profile.facts.loads_kg[Equipment.DUMBBELLS] == (4.54, 9.07)


def test_the_zone_by_a_city_and_in_another_country_the_coach_is_told_which_number(
    stage: Stage,
) -> None:
    choose(stage, "Time zone")
    assert stage.write("Munich") is Outcome.ANSWERED
    assert zone_of(stage) == "Europe/Berlin"
    assert "Safety messages name 112 there" in stage.last(COACH_CHAT)


def test_a_city_of_two_zones_is_asked_about(stage: Stage) -> None:
    choose(stage, "Time zone")
    assert stage.write("Portland") is Outcome.ASKED
    assert {
        "Portland (Los Angeles), now 22:00",
        "Portland (New York), now 01:00",
    } <= set(stage.screen()[-1].buttons)


def test_a_changed_zone_or_hour_sends_no_session_twice(stage: Stage) -> None:
    stage.write("/settings zone London")
    stage.write("/settings hour 9:00")
    before = stage.count()
    stage.go_to(MONDAY, 12)
    assert not [text for text in stage.since(before) if "Monday, day" in text]


def test_the_event_draws_the_season_anew_and_the_coach_sees_it(stage: Stage) -> None:
    choose(stage, "Goal")
    assert stage.write("12 June 2026 spring meet") is Outcome.ANSWERED
    assert stage.athlete.profile.event_on == date(2026, 6, 12)
    assert "Goal: no date → <b>12 June 2026 spring meet" in stage.last(COACH_CHAT)


def test_other_training_is_kept_with_its_name(stage: Stage) -> None:
    stage.write("/settings other training climbing tue thu")
    assert [one.weekday for one in stage.athlete.profile.regular_training] == [2, 4]
    stage.write("/settings")
    assert "Trained elsewhere: <b>climbing Tue, climbing Thu</b>" in stage.last()


def test_the_same_answer_again_changes_nothing(stage: Stage) -> None:
    changes = len(stage.audit("settings.changed"))
    choose(stage, "Minutes", "40 min")
    assert "That is as it was" in stage.last()
    assert len(stage.audit("settings.changed")) == changes


def test_each_change_is_written_down_with_before_and_after(stage: Stage) -> None:
    stage.write("/settings minutes 30")
    entry = stage.audit("settings.changed")[-1]
    assert (entry.actor_id, entry.athlete_id) == (stage.person.id, stage.person.id)
    assert entry.before == {"setting": "minutes", "value": 40}
    assert entry.after == {"setting": "minutes", "value": 30}
    stage.write("/audit Ines", chat_id=COACH_CHAT)
    assert "Minutes: 40 min → 30 min" in stage.last(COACH_CHAT)


def test_an_older_button_looks_at_the_facts_again(stage: Stage) -> None:
    choose(stage, "Equipment")
    card, done = stage.button("Done")
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, state=AthleteState.INTAKE)
    assert stage.tap_token(done, card.message_id) is Outcome.STALE_TAP
    assert "First come the questions" in stage.last()


def test_later_hours_and_units_say_what_to_send(stage: Stage) -> None:
    for name, wrong, hint in (
        ("evening", "9:00", "Send it like 20:30"),
        ("language", "klingon", "tap one of the buttons"),
        ("units", "stones", "tap one of the buttons"),
        ("decimals", "dash", "tap one of the buttons"),
    ):
        assert stage.write(f"/settings {name} {wrong}") is Outcome.NOT_UNDERSTOOD
        assert hint in stage.last()


def test_the_evening_hour_moves_the_one_reminder(stage: Stage) -> None:
    stage.write("/settings evening 21:30")
    before = stage.count()
    stage.go_to(MONDAY, 21)
    assert stage.count() == before
    stage.go_to(MONDAY, 22)
    assert "still open" in stage.last()


def test_a_shared_place_offers_the_zones_near_it_and_nothing_is_guessed(stage: Stage) -> None:
    # PUBLISHED (tzdata: zone.tab has Europe/Lisbon at +3843-00908, America/New_York at +404251)
    for latitude, longitude, first in (
        (38.7, -9.1, "Lisbon (Portugal), now 06:00"),
        (48.1, 11.6, "Berlin (Germany), now 07:00"),
    ):
        assert share(stage, latitude, longitude) is Outcome.ASKED
        labels = list(stage.screen()[-1].buttons)
        assert labels[0] == first
        assert zone_of(stage) == "Europe/Madrid"
    stage.tap("Berlin (Germany), now 07:00")
    assert zone_of(stage) == "Europe/Berlin"


def test_a_shared_place_says_what_time_it_is_in_each_zone(stage: Stage) -> None:
    share(stage, 38.7, -9.1)
    # DERIVED: 07:00 in Madrid (UTC+1 in March) is 06:00 in Lisbon (UTC)
    labels = stage.screen()[-1].buttons
    assert {"Lisbon (Portugal), now 06:00", "Madrid (Spain), now 07:00"} <= set(labels)


def test_a_shared_place_goes_to_no_coach(stage: Stage) -> None:
    before = stage.count(COACH_CHAT)
    share(stage, 38.7, -9.1)
    assert stage.count(COACH_CHAT) == before


def share(
    stage: Stage, latitude: float, longitude: float, *, chat_id: int = ATHLETE_CHAT
) -> Outcome:
    return stage.handle(
        SentMedia(
            chat_id=chat_id,
            at=stage.now,
            message_id=9000,
            media=Media.LOCATION,
            latitude=latitude,
            longitude=longitude,
        )
    )


def zone_of(stage: Stage) -> str:
    with stage.turn() as turn:
        return people.person(turn.tx, stage.person.id).zone


def test_a_shared_place_answers_the_first_questions_too(stage: Stage) -> None:
    newcomer = 3001
    person = stage.add_athlete("Robin", chat_id=newcomer, state=AthleteState.INTAKE)
    with stage.turn() as turn:
        buttons.keep_dialog(
            turn.tx,
            chat_id=newcomer,
            person_id=person.id,
            kind="intake",
            step="zone",
            answers={},
            now=stage.now,
        )
    assert share(stage, 38.7, -9.1, chat_id=newcomer) is Outcome.ASKED
    stage.tap("Lisbon (Portugal), now 06:00", chat_id=newcomer)
    with stage.turn() as turn:
        dialog = buttons.dialog(turn.tx, newcomer)
    assert dialog is not None
    assert dialog.answers["zone"] == "Europe/Lisbon"


@pytest.mark.parametrize(
    ("said", "shown"),
    [
        ("weekdays mon wed sat", "Days: <b>Mon, Wed, Sat</b>"),
        ("minutes 45", "Minutes: <b>45 min</b>"),
    ],
)
def test_a_plain_value_is_a_setting_and_no_sign(stage: Stage, said: str, shown: str) -> None:
    assert stage.write(f"/settings {said}") is Outcome.ANSWERED
    assert shown in stage.last()


@pytest.mark.parametrize(
    "said",
    ["minutes 45 my chest feels tight and heavy", "injury my chest feels tight and heavy"],
)
def test_a_sign_behind_a_setting_is_still_a_sign(stage: Stage, said: str) -> None:
    assert stage.write(f"/settings {said}") is Outcome.SAFETY
