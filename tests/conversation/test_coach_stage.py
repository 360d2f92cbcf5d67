"""A coach changes stages: against the checklist, with reasons, and back again."""

from datetime import date
from pathlib import Path

import pytest

from bot.acts import stage_history
from bot.outcomes import Outcome
from storage.queries import care
from tests.conversation.coach_bench import Bench


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def test_up_against_an_open_checklist_asks_once_more_and_shows_what_is_not_met(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    assert bench.write("/stage ana 2 holds look even") is Outcome.ASKED
    assert "not complete" in bench.last()
    assert "Push-up hold" in bench.last()
    assert "<b>not yet:</b>" in bench.last()
    assert bench.athlete(ana).stage == 1
    assert bench.labels() == ["Yes, stage 2", "No, leave it"]


def test_moving_up_all_the_same_is_recorded_with_who_why_before_and_after(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/stage ana 2 holds look even")
    bench.tap("Yes, stage 2")
    athlete = bench.athlete(ana)
    assert (athlete.stage, athlete.stage_since) == (2, date(2026, 3, 2))
    assert not athlete.stage_is_re_earned
    with bench.turn() as turn:
        entry = care.audit_of(turn.tx, ana.id, what=("stage.changed",))[0]
    assert entry.actor_id == bench.coach.id
    assert entry.words == "holds look even"
    assert (entry.before["stage"], entry.after["stage"]) == (1, 2)
    assert "Mara Quill moved you from stage 1 to stage 2" in bench.last(ana.chat_id)


def test_a_change_is_taken_back_by_a_button_which_is_recorded_itself(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/stage ana 2 holds look even")
    bench.tap("Yes, stage 2")
    bench.tap("Take back")
    athlete = bench.athlete(ana)
    assert (athlete.stage, athlete.stage_since) == (1, date(2026, 1, 5))
    assert "as before" in bench.last(ana.chat_id)
    with bench.turn() as turn:
        assert next(one.what for one in care.audit_of(turn.tx, ana.id)) == "stage.taken_back"
    assert bench.tap("Take back") is Outcome.STALE_TAP
    assert bench.athlete(ana).stage == 1


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("/stage ana 1 again", "in stage 1 already"),
        ("/stage ana 6 strong", "There is no stage 6"),
        ("/stage ana 0 weak", "There is no stage 0"),
        ("/stage ana up please", "the stage from 1 to 5"),
        ("/stage", "Whom is it about"),
    ],
)
def test_a_request_that_does_not_fit_changes_nothing_and_says_what_to_send(
    bench: Bench, text: str, said: str
):
    ana = bench.add_athlete("Ana Lark")
    assert bench.write(text) is Outcome.NOT_UNDERSTOOD
    assert said in bench.last()
    assert "/stage" in bench.last()
    assert bench.athlete(ana).stage == 1


def test_without_a_reason_it_is_asked_for_and_the_next_text_changes_the_stage(bench: Bench):
    ana = bench.add_athlete("Ana Lark", stage=2)
    assert bench.write("/stage ana 1") is Outcome.ASKED
    assert bench.last().startswith("Ana Lark: stage 2 → 1.")
    assert bench.athlete(ana).stage == 2
    bench.write("back to quiet holds")
    assert bench.athlete(ana).stage == 1
    with bench.turn() as turn:
        (entry, *_) = care.audit_of(turn.tx, ana.id, most=1, what=(stage_history.CHANGED,))
    assert entry.words == "back to quiet holds"


def test_a_reason_that_comes_long_after_is_asked_for_again(bench: Bench):
    ana = bench.add_athlete("Ana Lark", stage=2)
    bench.write("/stage ana 1")
    bench.later(hours=2)  # CHOSEN: an hour is fresh
    assert bench.write("when do we test?") is Outcome.ASKED
    assert bench.athlete(ana).stage == 2


def test_going_down_needs_no_second_question_and_a_stage_left_upwards_is_re_earned(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/stage ana 2 strong holds")
    bench.tap("Yes, stage 2")
    bench.later(days=10)
    assert bench.write("/stage ana 1 long illness") is Outcome.COMMAND
    athlete = bench.athlete(ana)
    assert (athlete.stage, athlete.stage_is_re_earned) == (1, True)
    assert athlete.stage_since == date(2026, 3, 12)


def test_a_stage_held_for_a_day_by_mistake_is_not_re_earned(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    for text, tap in (("2 first try", "Yes, stage 2"), ("1 slip", ""), ("2 now", "Yes, stage 2")):
        bench.write(f"/stage ana {text}")
        if tap:
            bench.tap(tap)
        bench.later(days=1)
    # DERIVED: stage 2 was held for 1 day, its least weeks are 8 (CHOSEN, TRAINING 4.1)
    athlete = bench.athlete(ana)
    assert (athlete.stage, athlete.stage_is_re_earned) == (2, False)


def test_leaving_it_changes_nothing_and_says_so(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/stage ana 2 holds look even")
    bench.tap("No, leave it")
    assert bench.athlete(ana).stage == 1
    assert "stays in stage 1" in bench.last()


def test_a_stage_button_tapped_after_another_change_does_nothing(bench: Bench):
    ana = bench.add_athlete("Ana Lark", stage=2)
    bench.write("/stage ana 4 wishful")
    bench.write("/stage ana 1 careful after all")
    assert bench.tap("Yes, stage 4") is Outcome.STALE_TAP
    assert bench.athlete(ana).stage == 1


def test_an_athlete_without_a_chat_is_changed_and_the_coach_hears_that_nobody_was_told(
    bench: Bench,
):
    ana = bench.add_athlete("Ana Lark", has_chat=False, stage=2)
    bench.write("/stage ana 1 careful start")
    assert bench.athlete(ana).stage == 1
    assert "has no open chat" in bench.last()
