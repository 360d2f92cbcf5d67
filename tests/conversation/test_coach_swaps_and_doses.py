"""/swap and /dose: by words, by taps where something is missing, against the rules, and back."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.training.training_reasons import DoseReason
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage

WEDNESDAY, NEXT_WEDNESDAY = MONDAY + timedelta(days=2), MONDAY + timedelta(days=9)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    found = Stage(tmp_path)
    found.go_to(MONDAY, 8)
    return found


def _say(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


def _tap(stage: Stage, label: str) -> Outcome:
    return stage.tap(label, chat_id=COACH_CHAT)


def _seen(stage: Stage) -> str:
    return stage.last(COACH_CHAT)


def _labels(stage: Stage) -> list[str]:
    return list(stage.screen(COACH_CHAT)[-1].buttons)


def _keys(stage: Stage, on: object) -> list[str]:
    return [item.movement_key for item in stage.session_on(on).items]  # type: ignore[arg-type]


def test_a_swap_by_words_changes_the_next_day_that_has_the_movement(stage: Stage):
    assert "push_up_hold" in _keys(stage, WEDNESDAY)
    said = "/swap ines push-up hold for kneeling push-up hold wrists feel better so"
    assert _say(stage, said) is Outcome.COMMAND
    assert "push_up_hold" not in _keys(stage, WEDNESDAY)
    assert "kneeling_push_up_hold" in _keys(stage, WEDNESDAY)
    (entry,) = stage.audit("plan.changed")
    assert entry.words == "wrists feel better so"
    assert "kneeling push-up hold instead of push-up hold" in stage.last()


def test_a_movement_is_not_swapped_for_itself_under_another_name(stage: Stage):
    before, told = _keys(stage, WEDNESDAY), stage.count(ATHLETE_CHAT)
    said = _say(stage, "/swap ines push-up hold for push up hold, likes it more")
    assert said is Outcome.ASKED
    assert any("so nothing changes" in text for text in stage.texts(COACH_CHAT))
    assert (_keys(stage, WEDNESDAY), stage.count(ATHLETE_CHAT)) == (before, told)


def test_a_swap_of_one_day_leaves_the_week_after_as_it_was(stage: Stage):
    _say(stage, "/swap ines push-up hold for kneeling push-up hold wrists feel better so")
    stage.go_to(NEXT_WEDNESDAY, 8)
    assert "push_up_hold" in _keys(stage, NEXT_WEDNESDAY)


def test_a_swap_for_every_time_stands_in_weeks_to_come(stage: Stage):
    _say(stage, "/swap ines push-up hold for kneeling push-up hold wrists feel better so")
    _tap(stage, "Every time from now on")
    _tap(stage, "To be on the safe side")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    stage.go_to(NEXT_WEDNESDAY, 8)
    assert "push_up_hold" not in _keys(stage, NEXT_WEDNESDAY)
    assert "kneeling_push_up_hold" in _keys(stage, NEXT_WEDNESDAY)


def test_what_is_missing_of_a_swap_is_asked_by_buttons(stage: Stage):
    assert _say(stage, "/swap ines") is Outcome.ASKED
    _tap(stage, "Push-up hold")
    assert "What instead of push-up hold?" in _seen(stage)
    _tap(stage, "Kneeling push-up hold")
    assert "Why? Tap" in _seen(stage)
    _tap(stage, "Technique first")
    assert "kneeling_push_up_hold" in _keys(stage, WEDNESDAY)


def test_a_movement_name_that_matches_two_is_asked_about(stage: Stage):
    assert _say(stage, "/swap ines band pull for face pull reason") is Outcome.ASKED
    assert "Several movements match" in _seen(stage)
    assert {"Band pull-apart", "Band pull-apart hold"} <= set(_labels(stage))


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("/swap ines zzz for yyy", "No movement is called"),
        ("/swap ines push-up hold for strict pull-up why not", "cannot be done"),
        ("/swap ines ring support for bar hang why not", "not in the coming two weeks"),
        ("/dose ines bar hang 99x25 steady", "cannot be done"),
        ("/dose ines bar hang 3x25 reps steady", "counted in s"),
        ("/dose ines farmer carry 3x30 @ 13 steady", "At hand: 4 kg, 6 kg, 8 kg"),
        ("/dose ines zzz 3x30 steady", "No movement is called"),
        ("/swap", "Whom is it about"),
        ("/dose nobodyatall bar hang 3x25", "No athlete of yours"),
    ],
)
def test_what_does_not_fit_changes_nothing_and_says_what_to_send(
    stage: Stage, text: str, said: str
):
    _say(stage, text)
    assert said in "\n".join(stage.texts(COACH_CHAT)[-2:])
    assert stage.athlete.profile.coach_plan.entries == ()


def test_a_movement_beyond_the_stage_is_said_first_and_then_shown_as_an_override(stage: Stage):
    _say(stage, "/swap ines push-up hold for floor push-up she is strong enough")
    assert "Stage 1 does not include floor push-up" in _seen(stage).replace("Floor", "floor")
    _tap(stage, "No, leave it")
    assert stage.athlete.profile.coach_plan.entries == ()
    _say(stage, "/swap ines push-up hold for floor push-up she is strong enough")
    _tap(stage, "Yes, all the same")
    assert "floor_push_up" in _keys(stage, WEDNESDAY)
    (entry,) = stage.audit("plan.changed")
    assert entry.reasons[0].code == "week.stage_forbids"
    _say(stage, "/plan ines")
    assert "(by you, beyond the stage)" in _seen(stage)


def test_a_dose_by_hand_changes_the_session_that_is_out_and_holds_once(stage: Stage):
    assert _say(stage, "/dose ines bar hang 3x25 long and even") is Outcome.COMMAND
    item = next(i for i in stage.session_on(MONDAY).items if i.movement_key == "bar_hang")
    assert item.dose is not None
    # DERIVED: the floor is 80 % of 25 s, so 20 s (CHOSEN share, TRAINING 5)
    assert (item.dose.sets, item.dose.target, item.dose.floor) == (3, 25, 20)
    assert item.reasons[0].code == DoseReason.BY_COACH
    assert "set your next dose of bar hang: 3 × 25 s" in stage.last()


def test_the_rules_go_on_from_a_dose_by_hand_once_it_was_done(stage: Stage):
    _say(stage, "/dose ines bar hang 3x35 long and even")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    stage.write("bar hang 35 35 35")
    _tap_if(stage, "20+")
    stage.go_to(MONDAY + timedelta(days=7), 8)
    for later in (one for one in stage.sessions() if one.on > MONDAY):
        for item in later.items:
            if item.movement_key == "bar_hang" and item.dose is not None:
                assert item.dose.target >= 35
                assert item.reasons[0].code != DoseReason.BY_COACH


def _tap_if(stage: Stage, label: str) -> None:
    if label in stage.screen()[-1].buttons:
        stage.tap(label)


def test_a_dose_outside_the_row_asks_once_more_and_says_why(stage: Stage):
    assert _say(stage, "/dose ines bar hang 5x90 test week") is Outcome.ASKED
    assert "90 is outside 20 to 60" in _seen(stage)
    assert "5 sets are more than the 4" in _seen(stage)
    _tap(stage, "Yes, all the same")
    item = next(i for i in stage.session_on(MONDAY).items if i.movement_key == "bar_hang")
    assert item.dose is not None
    assert (item.dose.sets, item.dose.target) == (5, 90)


def test_a_dose_is_offered_by_taps_and_taken_back(stage: Stage):
    _say(stage, "/dose ines")
    _tap(stage, "Bar hang")
    _tap(stage, "3 × 25 s")
    _tap(stage, "Technique first")
    item = next(i for i in stage.session_on(MONDAY).items if i.movement_key == "bar_hang")
    assert item.dose is not None
    assert item.dose.target == 25
    _tap(stage, "Take back")
    item = next(i for i in stage.session_on(MONDAY).items if i.movement_key == "bar_hang")
    assert item.dose is not None
    assert item.dose.target == 20


def test_a_dose_that_was_done_can_no_longer_be_taken_back(stage: Stage):
    _say(stage, "/dose ines bar hang 3x25 long and even")
    stage.write("bar hang 25 25 25")
    assert _tap(stage, "Take back") is Outcome.STALE_TAP
    assert "cannot be taken back" in _seen(stage)


def test_a_dose_set_after_the_movement_was_done_today_waits_for_the_next_time(stage: Stage):
    stage.write("bar hang 20 20 20")
    _say(stage, "/dose ines bar hang 3x25 long and even")
    if "Yes, all the same" in _labels(stage):
        _tap(stage, "Yes, all the same")
    (entry,) = stage.athlete.profile.coach_plan.entries
    assert entry.from_on == MONDAY + timedelta(days=1)  # type: ignore[union-attr]


def test_a_dose_that_stands_already_changes_nothing_and_tells_nobody(stage: Stage):
    assert _say(stage, "/dose ines bar hang 4x25 she can take more") is Outcome.COMMAND
    before = len(stage.rows(ATHLETE_CHAT))
    assert _say(stage, "/dose ines bar hang 4 x 25 s she can take more") is Outcome.COMMAND
    assert "the plan says that already. Nothing changed." in _seen(stage)
    assert len(stage.rows(ATHLETE_CHAT)) == before
    assert len(stage.audit("plan.changed")) == 1
