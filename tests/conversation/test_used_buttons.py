"""Buttons outlive what they were about: one that was used, or is of days ago, changes nothing."""

from pathlib import Path

import pytest

from bot.desks import front
from bot.events import Tapped
from bot.outcomes import Outcome
from storage.queries import care, people
from storage.records.people import AthleteState
from tests.conversation.athlete_stage import MONDAY, Stage
from tests.conversation.coach_bench import COACH_CHAT, Bench


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def again(bench: Bench, label: str) -> Outcome:
    """Tap a button that was tapped before, wherever it stands by now."""
    for row in bench.rows():
        for line in row.payload.get("buttons", ()):
            for shown, token in line:
                if label in shown:
                    event = Tapped(chat_id=COACH_CHAT, at=bench.now, message_id=row.id, token=token)
                    with bench.turn() as turn:
                        return front.handle(turn, event)
    raise AssertionError(f"no button {label!r}")


def test_a_stage_that_was_set_by_a_button_is_not_set_by_it_a_second_time(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/stage ana 2 strong and patient")
    bench.tap("Yes, stage 2")
    bench.write("/stage ana 1 too early")
    assert bench.athlete(ana).stage == 1
    assert again(bench, "Yes, stage 2") is Outcome.STALE_TAP
    assert bench.athlete(ana).stage == 1
    assert "was used already" in bench.last()


def test_who_was_chosen_for_a_message_does_not_get_it_a_second_time(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.add_athlete("Ana Finch")
    bench.write("/tell ana well held")
    bench.tap("Ana Lark")
    said = len(bench.texts(ana.chat_id))
    assert again(bench, "Ana Lark") is Outcome.STALE_TAP
    assert len(bench.texts(ana.chat_id)) == said


def test_the_way_a_break_was_is_told_within_days_and_not_later(stage: Stage):
    stage.write("/pause 1 week")
    stage.write("/pause off")
    message, token = stage.button(_first_label(stage))
    stage.later(days=10)
    before = _athlete(stage)
    assert stage.tap_token(token, message.message_id) is Outcome.STALE_TAP
    assert _athlete(stage) == before


def test_a_second_break_does_not_begin_by_an_old_button(stage: Stage):
    stage.write("/pause")
    label = _first_label(stage)
    message, token = stage.button(label)
    stage.tap(label)
    stage.write("/pause off")
    assert stage.tap_token(token, message.message_id) is Outcome.STALE_TAP
    assert _athlete(stage).state is AthleteState.TRAINING


def test_a_pain_score_of_days_ago_is_not_lowered_by_its_old_button(stage: Stage):
    stage.go_to(MONDAY, 8)
    stage.write("/pain")
    stage.tap("Wrist")
    stage.tap("Left")
    message, token = stage.button("1")
    stage.tap("7")
    before = stage.picture().level
    stage.later(days=3)
    assert stage.tap_token(token, message.message_id) is Outcome.STALE_TAP
    assert stage.picture().level is before
    assert "send /pain" in stage.last()


def test_the_same_answer_twice_leaves_one_line_in_the_record(stage: Stage):
    stage.go_to(MONDAY, 8)
    stage.write("/pain")
    for label in ("Wrist", "Left"):
        stage.tap(label)
    message, token = stage.button("5")
    stage.tap("5")
    with stage.turn() as turn:
        events = care.count_pain_events(turn.tx, stage.person.id)
    stage.tap_token(token, message.message_id)
    with stage.turn() as turn:
        assert care.count_pain_events(turn.tx, stage.person.id) == events


def _athlete(stage: Stage):
    with stage.turn() as turn:
        return people.athlete(turn.tx, stage.person.id)


def _first_label(stage: Stage) -> str:
    return next(iter(stage.screen()[-1].buttons))
