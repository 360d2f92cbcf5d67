"""The coach's view of the coming two weeks, and every change out of it."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from storage.queries import people
from storage.records.training import SessionState
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    found = Stage(tmp_path)
    found.go_to(MONDAY, 5)
    return found


def _say(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


def _tap(stage: Stage, label: str) -> Outcome:
    return stage.tap(label, chat_id=COACH_CHAT)


def _seen(stage: Stage) -> str:
    return stage.last(COACH_CHAT)


def _labels(stage: Stage) -> list[str]:
    return list(stage.screen(COACH_CHAT)[-1].buttons)


WEDNESDAY, NEXT_MONDAY = MONDAY + timedelta(days=2), MONDAY + timedelta(days=7)


def test_the_view_shows_days_items_and_doses_as_they_would_be_sent(stage: Stage):
    assert _say(stage, "/plan ines") is Outcome.COMMAND
    shown = _seen(stage)
    assert "week of Mon 2 Mar" in shown
    first = stage.movement(stage.session_on(MONDAY).items[0])
    assert f"{first.name}: " in shown
    stage.go_to(MONDAY, 8)
    dose = stage.session_on(MONDAY).items[0].dose
    assert dose is not None
    assert f"{first.name}: {dose.sets} × {dose.target} s" in shown


def test_the_next_week_is_shown_before_it_is_drawn_and_by_turning_the_same_message(stage: Stage):
    _say(stage, "/plan ines")
    messages = len(stage.screen(COACH_CHAT))
    _tap(stage, "Next week")
    assert "week of Mon 9 Mar" in _seen(stage)
    assert len(stage.screen(COACH_CHAT)) == messages
    assert [one.on for one in stage.sessions() if one.on >= NEXT_MONDAY] == []
    _tap(stage, "Mon 9 Mar")
    assert "Tap an item to change it" in _seen(stage)


def _change_first_item(stage: Stage, day: str) -> tuple[str, str]:
    _say(stage, "/plan ines")
    if day not in _labels(stage):
        _tap(stage, "Next week")
    _tap(stage, day)
    _tap(stage, "1")
    _tap(stage, "Another movement")
    head = _seen(stage)
    name = _labels(stage)[0]
    _tap(stage, name)
    return head, name


def test_another_movement_is_put_into_a_coming_day_with_a_reason_and_on_record(stage: Stage):
    before = stage.session_on(WEDNESDAY).items[0].movement_key
    _head, name = _change_first_item(stage, "Wed 4 Mar")
    assert "Why? Tap" in _seen(stage)
    _tap(stage, "Technique first")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    after = stage.movement(stage.session_on(WEDNESDAY).items[0])
    assert after.name == name
    (entry,) = stage.audit("plan.changed")
    assert entry.words == "Technique first"
    assert entry.after["entries"][0]["was"] == before
    assert entry.actor_id == stage.coach.id
    assert "Mara changed Wed 4 Mar" in stage.last()
    _say(stage, "/audit ines")
    assert "Plan changed: Wed 4 Mar" in _seen(stage)


def test_a_reason_may_be_written_instead_of_tapped(stage: Stage):
    _change_first_item(stage, "Wed 4 Mar")
    _say(stage, "she likes it better")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    (entry,) = stage.audit("plan.changed")
    assert entry.words == "she likes it better"


def test_a_change_of_a_week_that_is_not_drawn_survives_its_drawing(stage: Stage):
    _head, name = _change_first_item(stage, "Mon 9 Mar")
    _tap(stage, "Technique first")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    stage.go_to(NEXT_MONDAY, 8)
    first = stage.session_on(NEXT_MONDAY).items[0]
    assert stage.movement(first).name == name
    assert first.dose is not None


def test_a_change_is_taken_back_by_its_button_and_says_so_when_it_no_longer_can(stage: Stage):
    before = stage.session_on(WEDNESDAY).items[0].movement_key
    _change_first_item(stage, "Wed 4 Mar")
    _tap(stage, "Technique first")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    _tap(stage, "Take back")
    assert stage.session_on(WEDNESDAY).items[0].movement_key == before
    assert "Taken back" in _seen(stage)
    assert "took a change back" in stage.last()
    assert _tap(stage, "Take back") is Outcome.STALE_TAP
    assert "cannot be taken back" in _seen(stage)


def test_a_change_of_the_session_that_is_out_changes_it_at_once(stage: Stage):
    stage.go_to(MONDAY, 8)
    _head, name = _change_first_item(stage, "Mon 2 Mar")
    _tap(stage, "Technique first")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    item = stage.session_on(MONDAY).items[0]
    assert stage.movement(item).name == name
    assert item.dose is not None
    assert item.dose.movement_key == item.movement_key
    assert f"In today's session: 1. {name}" in stage.last()


def test_a_pinned_movement_comes_and_a_banned_one_does_not_in_weeks_to_come(stage: Stage):
    _say(stage, "/plan ines")
    _tap(stage, "Wed 4 Mar")
    _tap(stage, "1")
    _tap(stage, "Never take it")
    _tap(stage, "Equipment or room")
    banned = stage.athlete.profile.coach_plan.banned
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
        banned = stage.athlete.profile.coach_plan.banned
    assert len(banned) == 1
    stage.go_to(MONDAY + timedelta(days=22), 8)
    later = [one for one in stage.sessions() if one.on >= WEDNESDAY]
    assert len(later) >= 8
    keys = {item.movement_key for one in later for item in one.items}
    assert not keys & banned
    assert "takes" in "\n".join(stage.texts())


def test_what_breaks_the_week_is_said_before_it_is_accepted(stage: Stage):
    _say(stage, "/plan ines")
    _tap(stage, "Wed 4 Mar")
    _tap(stage, "Move this day")
    _tap(stage, "Tue 3 Mar")
    _tap(stage, "Time")
    if "Yes, all the same" in _labels(stage):
        assert "Against the rules" in _seen(stage)
        _tap(stage, "Yes, all the same")
    assert stage.session_on(date(2026, 3, 3)).state is SessionState.PLANNED
    assert "moved your session of Wed 4 Mar to Tue 3 Mar" in stage.last()
    _tap(stage, "Take back")
    assert stage.session_on(WEDNESDAY).state is SessionState.PLANNED


def test_leaving_it_changes_nothing(stage: Stage):
    before = [(one.on, [i.movement_key for i in one.items]) for one in stage.sessions()]
    _say(stage, "/plan ines")
    _tap(stage, "Wed 4 Mar")
    assert [(one.on, [i.movement_key for i in one.items]) for one in stage.sessions()] == before


def test_the_season_and_a_break_are_part_of_the_view(stage: Stage):
    _say(stage, "/plan ines")
    _tap(stage, "Season")
    assert "Ines" in _seen(stage)
    stage.write("/pause 2 weeks")
    _say(stage, "/plan ines")
    assert "on a break until" in _seen(stage)


def test_a_button_about_what_is_another_by_now_changes_nothing(stage: Stage):
    _say(stage, "/plan ines")
    _tap(stage, "Wed 4 Mar")
    _tap(stage, "1")
    stage.go_to(WEDNESDAY, 8)
    stage.write("as planned")
    _tap(stage, "Another movement")
    assert stage.audit("plan.changed") == []


def test_a_movement_is_pinned_and_freed_by_words(stage: Stage):
    key = "kneeling_push_up_hold"
    assert key not in {item.movement_key for item in stage.session_on(WEDNESDAY).items}
    _say(stage, "/plan ines pin kneeling push-up hold wrists first")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    assert key in {item.movement_key for item in stage.session_on(WEDNESDAY).items}
    assert "wants kneeling push-up hold in your coming weeks" in stage.last()
    _say(stage, "/plan ines pin kneeling push-up hold once more")
    assert "stands so already" in _seen(stage)
    _say(stage, "/plan ines free kneeling push-up hold wrists are fine")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    assert stage.athlete.profile.coach_plan.entries == ()
    assert "no longer asks for kneeling push-up hold" in stage.last()


def test_a_ban_ends_a_pin_of_the_same_movement(stage: Stage):
    _say(stage, "/plan ines pin kneeling push-up hold wrists first")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    _say(stage, "/plan ines ban kneeling push-up hold knees hurt on it")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    plan = stage.athlete.profile.coach_plan
    assert plan.pinned == frozenset()
    assert plan.banned == frozenset({"kneeling_push_up_hold"})


@pytest.mark.parametrize("text", ["/plan ines push harder", "/plan ines pin zzz why"])
def test_words_that_do_not_fit_change_nothing_and_show_an_example(stage: Stage, text: str):
    _say(stage, text)
    assert "/plan robin pin" in _seen(stage)
    assert stage.athlete.profile.coach_plan.entries == ()


def test_a_day_of_a_week_that_is_not_drawn_is_moved_and_moved_back(stage: Stage):
    _say(stage, "/plan ines")
    _tap(stage, "Next week")
    _tap(stage, "Wed 11 Mar")
    _tap(stage, "Move this day")
    _tap(stage, "Thu 12 Mar")
    _tap(stage, "Time")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    stage.go_to(NEXT_MONDAY, 8)
    days = [one.on for one in stage.sessions() if one.on >= NEXT_MONDAY]
    assert days == [NEXT_MONDAY, date(2026, 3, 12), date(2026, 3, 13)]
    stage.go_to(date(2026, 3, 12), 8)
    assert _tap(stage, "Take back") is Outcome.STALE_TAP


def test_a_spanish_coach_marks_a_movement_with_the_words_that_are_shown(stage: Stage):
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.coach.id, language="es")
    assert _say(stage, "/plan ines fijar") is Outcome.ASKED
    assert _say(stage, "/plan ines xyz") is Outcome.NOT_UNDERSTOOD
    assert "fijar, vetar o liberar" in _seen(stage)
    assert _say(stage, "/plan ines fijar plancha alta es lo que le falta") is Outcome.COMMAND
    assert "Plancha alta: siempre en el plan" in _seen(stage)
    assert "Motivo: es lo que le falta" in _seen(stage)
    assert _say(stage, "/plan ines liberar plancha alta ya basta") is Outcome.COMMAND
    assert stage.athlete.profile.coach_plan.pinned == frozenset()


def test_a_first_look_without_a_reason_asks_why_and_still_refuses_what_cannot_be(stage: Stage):
    assert _say(stage, "/plan ines ban push-up hold") is Outcome.ASKED
    assert "Why?" in _seen(stage)
