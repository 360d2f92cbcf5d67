"""Playback and change: in words, by editing the message, by button; asked before recorded."""

from datetime import date
from pathlib import Path

import pytest
from sqlmodel import select

from bot.outcomes import Outcome
from scheduler.catalogue.values import Sides
from scheduler.pain.values import Side
from storage.queries import training
from storage.records.training import SessionState
from storage.tables.training import SetRow
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage, values

TUESDAY, WEDNESDAY, FRIDAY = date(2026, 3, 3), date(2026, 3, 4), date(2026, 3, 6)
ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def first_item(stage: Stage, on: date = MONDAY) -> list[float]:
    return values(stage.session_on(on).items[0])


def test_sorry_this_not_that_changes_the_one_set_and_says_so(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.later(minutes=1)
    assert stage.write("sorry, 15 not 18") is Outcome.CORRECTED
    assert first_item(stage) == [20, 20, 15]
    assert stage.last().startswith("Changed. Wall reach hold: set 3: 18 → 15")


def test_a_corrected_set_stays_on_record_as_replaced(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.later(minutes=1)
    stage.write("sorry, 15 not 18")
    with stage.turn() as turn:
        rows = turn.tx.exec(select(SetRow)).all()
    assert [row.done.value for row in rows if row.replaced_at is not None] == [18]


def test_a_correction_keeps_the_question_that_was_open(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.later(minutes=1)
    stage.write("sorry, 15 not 18")
    assert "Wall reach hold, last set" in stage.last()


def test_undo_takes_back_all_that_the_last_message_recorded_and_no_more(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.later(minutes=1)
    stage.write("2) 20 20 18\n3) 15 15 15")
    stage.later(minutes=1)
    assert stage.write("undo") is Outcome.CORRECTED
    assert stage.last().startswith("Taken back: Bar hang, Lying dumbbell reach.")
    assert [values(item) for item in stage.session_on(MONDAY).items[:3]] == [[20, 20, 18], [], []]


def test_undo_takes_back_all_as_planned(stage: Stage) -> None:
    stage.tap("All as planned")
    stage.later(minutes=1)
    stage.write("undo")
    assert not any(item.sets for item in stage.session_on(MONDAY).items)


def test_other_arm_moves_the_last_results_to_the_other_side(stage: Stage) -> None:
    stage.go_to(FRIDAY, 7)
    stage.write("5) L 15 14")
    if stage.session_on(FRIDAY).items[4].sets == ():
        stage.tap(next(iter(stage.screen()[-1].buttons)))
    stage.later(minutes=1)
    assert stage.write("other arm") is Outcome.CORRECTED
    sides = {one.done.side for one in stage.session_on(FRIDAY).items[4].sets}
    assert sides == {Side.RIGHT}


def test_editing_the_message_corrects_the_record(stage: Stage) -> None:
    stage.write_as(77, "1) 20 20 18")
    stage.later(minutes=1)
    assert stage.edit(77, "1) 20 19 18") is Outcome.CORRECTED
    assert first_item(stage) == [20, 19, 18]
    assert "20, 19, 18 s" in stage.last()


def test_editing_a_message_to_another_item_moves_the_results(stage: Stage) -> None:
    stage.write_as(77, "1) 20 20 18")
    stage.tap("5")
    stage.edit(77, "2) 20 20 18")
    session = stage.session_on(MONDAY)
    assert [values(item) for item in session.items[:2]] == [[], [20, 20, 18]]
    assert session.items[0].reserve is None


def test_editing_a_message_to_something_unreadable_keeps_what_stood_and_says_so(
    stage: Stage,
) -> None:
    stage.write_as(77, "1) 20 20 18")
    stage.later(minutes=1)
    for text in ("what was I thinking", "9) 77 77 77 77 77 77 77", "never mind"):
        stage.edit(77, text)
        assert first_item(stage) == [20, 20, 18]
        assert "what it recorded before stands" in stage.last()
    assert stage.count(COACH_CHAT) == 0


def test_an_edit_is_no_answer_to_the_question_that_is_open(stage: Stage) -> None:
    stage.write_as(77, "1) 20 20 18")
    stage.later(minutes=1)
    stage.edit(77, "10")
    assert stage.session_on(MONDAY).items[0].reserve is None


def test_editing_after_the_session_is_closed_is_played_back_as_well(stage: Stage) -> None:
    stage.write_as(77, ALL)
    for left in ("15", "15", "3", "3"):
        stage.tap(left)
    stage.tap("6")
    stage.tap("Nothing hurt")
    before = stage.count()
    stage.edit(77, ALL.replace("1) 20 20 20", "1) 20 20 12"))
    assert first_item(stage) == [20, 20, 12]
    assert any("20, 20, 12 s" in text for text in stage.since(before))


def test_why_shows_a_movement_once_after_its_session_was_mended(stage: Stage) -> None:
    stage.write_as(77, ALL)
    for left in ("15", "15", "3", "3"):
        stage.tap(left)
    stage.tap("6")
    stage.tap("Nothing hurt")
    stage.later(minutes=5)
    stage.edit(77, ALL.replace("1) 20 20 20", "1) 20 20 12"))
    stage.write("/why")
    assert stage.last().count("Bar hang:") == 1


def test_sorry_works_after_the_session_is_closed(stage: Stage) -> None:
    stage.write(ALL)
    for left in ("15", "15", "3", "3"):
        stage.tap(left)
    stage.tap("6")
    stage.tap("Nothing hurt")
    stage.later(minutes=5)
    assert stage.write("sorry, last 12 instead of 15") in {Outcome.CORRECTED, Outcome.ASKED}


def test_change_button_asks_which_and_takes_the_numbers_anew(stage: Stage) -> None:
    stage.write("1) 20 20 18\n2) 20 20 20")
    stage.tap("Change a number")
    assert stage.last() == "Which one shall I change? Then write all its sets again."
    stage.tap("Wall reach hold")
    stage.later(minutes=1)
    assert stage.write("19 19 19") is Outcome.RECORDED
    assert first_item(stage) == [19, 19, 19]
    assert values(stage.session_on(MONDAY).items[1]) == [20, 20, 20]


def test_change_button_still_works_on_the_day_after(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.go_to(TUESDAY, 9)
    stage.tap("Change a number")
    stage.tap("Wall reach hold")
    stage.write("19 19 19")
    assert first_item(stage) == [19, 19, 19]
    assert "<b>For Monday</b>" in stage.last()


def test_nothing_is_recorded_before_the_question_about_it_is_answered(stage: Stage) -> None:
    assert stage.write("20 20 18") is Outcome.ASKED
    session = stage.session_on(MONDAY)
    assert session.state is SessionState.SENT
    assert not any(item.sets for item in session.items)
    stage.tap("Bar hang: 20 20 18 s")
    assert values(stage.session_on(MONDAY).items[1]) == [20, 20, 18]


def test_tapping_one_reading_twice_records_it_once(stage: Stage) -> None:
    stage.write("20 20 18")
    message, token = stage.button("Bar hang: 20 20 18 s")
    stage.tap_token(token, message.message_id)
    stage.tap_token(token, message.message_id)
    assert values(stage.session_on(MONDAY).items[1]) == [20, 20, 18]


def test_none_of_these_records_nothing_and_says_what_helps(stage: Stage) -> None:
    stage.write("20 20 18")
    stage.tap("None of these")
    assert not any(item.sets for item in stage.session_on(MONDAY).items)
    assert stage.last().startswith("Fine, nothing is recorded.")


def test_fewer_numbers_than_sets_are_asked_about_and_no_set_is_invented(stage: Stage) -> None:
    assert stage.write("1) 20 18") is Outcome.ASKED
    assert first_item(stage) == []


def test_assumptions_are_shown_beside_what_was_recorded(stage: Stage) -> None:
    stage.write("1) as planned")
    assert "<i>Taken as planned.</i>" in stage.last()


def test_a_day_that_is_named_takes_the_results_even_after_it_was_closed(stage: Stage) -> None:
    stage.go_to(WEDNESDAY, 7)
    assert stage.session_on(MONDAY).state is SessionState.MISSED
    assert stage.write("monday 1) 20 20 18") is Outcome.RECORDED
    assert first_item(stage) == [20, 20, 18]
    assert first_item(stage, WEDNESDAY) == []
    assert stage.last().startswith("<b>For Monday</b>")
    assert stage.session_on(MONDAY).state is SessionState.TRAINED


def test_with_two_open_sessions_the_latest_takes_what_names_no_day(stage: Stage) -> None:
    stage.go_to(WEDNESDAY, 7)
    stage.write("monday 1) 20 20 18")
    stage.later(minutes=1)
    stage.write("1) 19 19 19")
    assert first_item(stage, WEDNESDAY) == [19, 19, 19]
    assert first_item(stage) == [20, 20, 18]


def test_yesterdays_missed_session_takes_results_while_nothing_newer_is_out(stage: Stage) -> None:
    stage.go_to(TUESDAY, 9)
    assert stage.session_on(MONDAY).state is SessionState.MISSED
    stage.write("1) 20 20 18")
    assert first_item(stage) == [20, 20, 18]
    assert stage.last().startswith("<b>For Monday</b>")


def test_results_of_a_finished_day_are_not_overwritten_by_bare_numbers(stage: Stage) -> None:
    stage.write(ALL)
    for left in ("15", "15", "3", "3"):
        stage.tap(left)
    stage.tap("6")
    stage.tap("Nothing hurt")
    stage.later(hours=3)
    stage.write("1) 5 5 5")
    assert first_item(stage) == [20, 20, 20]


def test_a_correction_without_anything_to_correct_says_what_to_write(stage: Stage) -> None:
    assert stage.write("38 not 48") is Outcome.NOT_UNDERSTOOD
    assert not any(item.sets for item in stage.session_on(MONDAY).items)


def test_a_figure_that_stands_once_in_the_session_is_changed_after_another_item(
    stage: Stage,
) -> None:
    stage.write("1) 20 20 17")
    stage.later(minutes=1)
    stage.write("2) 20 20 20")
    stage.later(minutes=1)
    assert stage.write("sorry, 15 not 17") is Outcome.CORRECTED
    assert first_item(stage) == [20, 20, 15]


def test_a_figure_that_stands_twice_before_the_last_item_is_asked_about(stage: Stage) -> None:
    stage.write("1) 20 17 17")
    stage.later(minutes=1)
    stage.write("2) 20 20 20")
    stage.later(minutes=1)
    assert stage.write("sorry, 15 not 17") is Outcome.ASKED
    assert first_item(stage) == [20, 17, 17]


def test_an_item_for_one_arm_takes_bare_figures_for_that_arm(stage: Stage) -> None:
    with stage.turn() as turn:
        item = stage.session_on(MONDAY).items[4]
        one_armed = next(
            key
            for key, movement in turn.house.library.movements.items()
            if movement.sides is Sides.EACH and movement.measure is stage.movement(item).measure
        )
        training.change_item(turn.tx, item.id, movement_key=one_armed, arms=(Side.LEFT,))
    assert stage.write("5) 15 14") is Outcome.RECORDED
    kept = stage.session_on(MONDAY).items[4].sets
    assert [(one.done.side, one.done.value) for one in kept] == [(Side.LEFT, 15), (Side.LEFT, 14)]


def test_plain_lines_for_every_item_are_recorded_in_order_and_said_so(stage: Stage) -> None:
    assert stage.write("20 20 20\n20 20 20\n15 15 15\n15 15 15\n15 15") is Outcome.RECORDED
    assert "Taken line by line, items 1 to 5." in stage.last()
