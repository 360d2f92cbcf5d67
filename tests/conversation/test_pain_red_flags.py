"""Red flags in words and by tap, in every state; alerts told, told again, and never lost."""

from datetime import date, timedelta
from pathlib import Path

import pytest
from sqlmodel import col, select

from bot.events import BlockedUs
from bot.outcomes import Outcome
from scheduler.pain.red_flags import RedFlag
from scheduler.pain.values import Level, Urgency
from storage.queries import people
from storage.records.care import AlertState
from storage.records.people import AthleteState
from storage.records.training import SessionState
from storage.tables.care import AlertRow, AuditRow, PainEventRow, PassedOnRow
from storage.tables.wire import ButtonRow, OutboxRow
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage, local

FAINTED = "i passed out during training"
CHEST = "my chest feels tight"
STAND_IN_CHAT = 1500


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def standing(stage: Stage) -> set[RedFlag]:
    return {flag.flag for flag in stage.picture().flags}


def test_words_of_an_emergency_tell_the_athlete_what_to_do_and_the_coach_at_once(
    stage: Stage,
) -> None:
    assert stage.write(FAINTED) is Outcome.SAFETY
    assert stage.last().startswith("Please stop now. Call 112 now")
    assert "nobody may be watching this chat" in stage.last()
    assert FAINTED in stage.last(COACH_CHAT)
    assert stage.picture().level is Level.EMERGENCY


def test_an_emergency_stops_all_sessions(stage: Stage) -> None:
    stage.write(FAINTED)
    assert all(item.is_left_out for item in stage.session_on(MONDAY).items)
    before = stage.count()
    stage.go_to(date(2026, 3, 6), 8)
    assert not any(", day " in text for text in stage.since(before))


def test_all_as_planned_records_nothing_when_everything_is_left_out(stage: Stage) -> None:
    stage.write(FAINTED)
    stage.tap("All as planned")
    assert stage.session_on(MONDAY).state is SessionState.SENT


def test_one_message_raises_one_alert_however_many_signs_it_holds(stage: Stage) -> None:
    stage.write("my arm went numb and weak and i passed out")
    assert len(standing(stage)) > 1
    assert len(stage.alerts()) == 1
    assert stage.alerts()[0].urgency is Urgency.NOW


def test_no_second_question_stands_beside_a_red_flag(stage: Stage) -> None:
    before = stage.count()
    stage.write("my wrist hurts and i passed out")
    assert len(stage.since(before)) == 1


@pytest.mark.parametrize("text", [f"/foo {FAINTED}", f"/pain {FAINTED}", f"/today {FAINTED}"])
def test_a_red_flag_behind_a_slash_is_a_red_flag(stage: Stage, text: str) -> None:
    assert stage.write(text) is Outcome.SAFETY
    assert RedFlag.COLLAPSE in standing(stage)


def test_a_red_flag_under_a_clip_is_a_red_flag_and_the_clip_is_passed_on(stage: Stage) -> None:
    assert stage.send_clip("felt a pop and now i cannot lift the arm") is Outcome.SAFETY
    assert stage.picture().level >= Level.CLINICIAN
    assert any(row.operation == "copy" for row in stage.rows(COACH_CHAT))


def test_a_red_flag_is_heard_in_a_break(stage: Stage) -> None:
    stage.write("/pause 2 weeks")
    assert stage.write(FAINTED) is Outcome.SAFETY
    assert FAINTED in stage.last(COACH_CHAT)


@pytest.mark.parametrize("state", [AthleteState.INTAKE, AthleteState.WAITS_FOR_COACH])
def test_a_red_flag_is_heard_before_training_begins(stage: Stage, state: AthleteState) -> None:
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, state=state)
    assert stage.write(FAINTED) is Outcome.SAFETY
    assert len(stage.alerts()) == 1


def test_results_beside_a_red_flag_are_kept(stage: Stage) -> None:
    stage.write(f"1) 20 20 20\n{FAINTED}")
    assert len(stage.session_on(MONDAY).items[0].sets) == 3
    assert RedFlag.COLLAPSE in standing(stage)


def test_editing_the_message_does_not_raise_its_sign_twice(stage: Stage) -> None:
    stage.write_as(77, FAINTED)
    stage.edit(77, f"{FAINTED}, sorry for the typos")
    assert len(stage.alerts()) == 1
    assert len(stage.picture().flags) == 1


def test_a_line_of_the_short_list_counts_as_the_gravest_of_its_group(stage: Stage) -> None:
    for label in ("Something hurts", "Wrist", "Left", "3", "None of these"):
        stage.tap(label)
    assert stage.tap("Numb, weak, cannot lift it") is Outcome.SAFETY
    assert stage.picture().level >= Level.CLINICIAN
    assert len(stage.alerts()) == 1


def test_a_line_of_the_short_list_tapped_twice_is_raised_once(stage: Stage) -> None:
    for label in ("Something hurts", "Wrist", "Left", "3", "None of these"):
        stage.tap(label)
    message, token = stage.button("Out of shape, a pop, a fall")
    stage.tap_token(token, message.message_id)
    stage.tap_token(token, message.message_id)
    assert len(stage.picture().flags) == 1
    assert len(stage.alerts()) == 1


def test_the_chest_question_counts_for_athlete_and_training_at_once(stage: Stage) -> None:
    stage.write(CHEST)
    assert "call 112 now" in stage.last()
    assert stage.picture().level is Level.EMERGENCY
    assert all(item.is_left_out for item in stage.session_on(MONDAY).items)


def test_the_chest_question_waits_ten_minutes_for_the_coach_only(stage: Stage) -> None:
    stage.write(CHEST)
    stage.later(minutes=9)
    stage.strike()
    assert stage.count(COACH_CHAT) == 0
    stage.later(minutes=1)  # CHOSEN: ten minutes for the tap
    stage.strike()
    assert CHEST in stage.last(COACH_CHAT)


def test_inside_tapped_tells_the_coach_at_once(stage: Stage) -> None:
    stage.write(CHEST)
    stage.later(minutes=2)
    stage.tap("Inside, or not sure")
    assert CHEST in stage.last(COACH_CHAT)
    assert stage.last().startswith("Please stop now.")


def test_muscle_tapped_wakes_nobody_and_brings_the_session_back(stage: Stage) -> None:
    stage.write(CHEST)
    stage.tap("The muscle, when I press or move it")
    stage.later(minutes=30)
    stage.strike()
    assert stage.count(COACH_CHAT) == 0
    assert not any(item.is_left_out for item in stage.session_on(MONDAY).items)
    assert any(text.startswith("Back in today's session:") for text in stage.texts())


def test_a_sign_that_was_said_outright_is_not_tapped_away(stage: Stage) -> None:
    stage.write(CHEST)
    message, muscle = stage.button("The muscle, when I press or move it")
    stage.tap("Inside, or not sure")
    assert stage.tap_token(muscle, message.message_id) is Outcome.STALE_TAP
    assert RedFlag.CHEST_INSIDE in standing(stage)


def test_self_harm_is_answered_and_the_coach_hears_only_that_a_person_is_needed(
    stage: Stage,
) -> None:
    assert stage.write("i want to kill myself") is Outcome.SAFETY
    assert "this needs a person, not a bot" in stage.last()
    assert "112" in stage.last()
    assert "kill" not in stage.last(COACH_CHAT)
    assert "needs a person now" in stage.last(COACH_CHAT)


@pytest.mark.parametrize(
    "text",
    [
        "i want to kill myself zebra",
        "i want to kill myself zebra, left wrist 8/10",
        "1) 20 20 20 i want to kill myself zebra ok?",
        "20 20 18 i want to kill myself zebra",
        "can't today, i want to kill myself zebra",
        "can i take ibuprofen? i want to kill myself zebra",
        "/pain i want to kill myself zebra",
        "/zebra i want to kill myself",
    ],
)
def test_self_harm_words_are_nowhere_but_in_the_raw_inbox(stage: Stage, text: str) -> None:
    stage.write(text)
    stage.send_clip(text)
    stage.go_to(date(2026, 3, 4), 8)
    with stage.database.transaction() as tx:
        kept = [
            *(repr(row.payload) for row in tx.exec(select(OutboxRow))),
            *(repr(row.arguments) for row in tx.exec(select(ButtonRow))),
            *(repr(row.model_dump()) for row in tx.exec(select(AlertRow))),
            *(repr(row.model_dump()) for row in tx.exec(select(AuditRow))),
            *(repr(row.model_dump()) for row in tx.exec(select(PassedOnRow))),
            *(repr(row.model_dump()) for row in tx.exec(select(PainEventRow))),
        ]
    assert not any("zebra" in one or "kill" in one for one in kept)
    assert RedFlag.SELF_HARM in standing(stage)


def test_a_clip_with_such_words_is_not_copied_to_the_coach(stage: Stage) -> None:
    stage.send_clip("i want to kill myself")
    assert not any(row.operation == "copy" for row in stage.rows(COACH_CHAT))


def test_questions_of_medicine_are_for_licensed_people_and_passed_on_once(stage: Stage) -> None:
    stage.write("can I take ibuprofen?")
    assert stage.last().startswith("That is a question for a pharmacist")
    assert len(stage.texts(COACH_CHAT)) == 1


def test_an_unseen_emergency_is_told_again_at_doubling_intervals(stage: Stage) -> None:
    stage.write(FAINTED)
    told_at = []
    for _ in range(24 * 60 // 10):
        before = stage.count(COACH_CHAT)
        stage.later(minutes=10)
        stage.strike()
        if stage.count(COACH_CHAT) > before:
            told_at.append(stage.now - local(MONDAY, 7))
    # CHOSEN: 10 min, then 20, 40, 80, 160, and at most 4 h; DERIVED: the sums of these.
    assert told_at[:6] == [timedelta(minutes=m) for m in (10, 30, 70, 150, 310, 550)]
    assert told_at[6] - told_at[5] == timedelta(hours=4)


def test_seen_stops_the_repeats_and_the_level_stays(stage: Stage) -> None:
    stage.write(FAINTED)
    stage.tap("Seen", chat_id=COACH_CHAT)
    before = stage.count(COACH_CHAT)
    stage.go_to(MONDAY, 12)
    assert not any(FAINTED in text for text in stage.since(before, COACH_CHAT))
    assert stage.picture().level is Level.EMERGENCY
    assert stage.alerts()[0].state is AlertState.SEEN


def test_rest_raised_at_night_waits_for_the_morning(stage: Stage) -> None:
    stage.go_to(MONDAY, 23)
    stage.write("left wrist 7/10")
    assert stage.count(COACH_CHAT) == 0
    stage.go_to(date(2026, 3, 3), 7)
    assert "left wrist 7/10" in stage.last(COACH_CHAT)


def test_an_emergency_at_night_does_not_wait(stage: Stage) -> None:
    stage.go_to(MONDAY, 23)
    stage.write(FAINTED)
    assert FAINTED in stage.last(COACH_CHAT)


def with_stand_in(stage: Stage) -> None:
    with stage.turn() as turn:
        other = people.add_person(
            turn.tx, name="Sol", now=stage.now, chat_id=STAND_IN_CHAT, is_coach=True
        )
        people.change_person(turn.tx, stage.coach.id, stand_in_id=other.id)


def test_the_stand_in_hears_from_the_second_telling(stage: Stage) -> None:
    with_stand_in(stage)
    stage.write(FAINTED)
    assert not any(FAINTED in text for text in stage.texts(STAND_IN_CHAT))
    stage.later(minutes=10)
    stage.strike()
    assert any(FAINTED in text for text in stage.texts(STAND_IN_CHAT))


def test_the_stand_in_hears_at_once_when_the_coach_cannot_be_reached(stage: Stage) -> None:
    with_stand_in(stage)
    stage.handle(BlockedUs(chat_id=COACH_CHAT, at=stage.now))
    stage.write(FAINTED)
    assert any(FAINTED in text for text in stage.texts(STAND_IN_CHAT))


def test_nobody_reachable_is_told_to_the_athlete_and_to_the_owner(stage: Stage) -> None:
    with stage.turn() as turn:
        people.add_person(turn.tx, name="Olin", now=stage.now, chat_id=1700, is_owner=True)
    stage.handle(BlockedUs(chat_id=COACH_CHAT, at=stage.now))
    stage.write(FAINTED)
    assert any(text.startswith("I could not reach your coach.") for text in stage.texts())
    assert "Ines" in stage.last(1700)
    assert "kept" not in stage.last(1700)


def test_an_alert_survives_a_standstill_and_comes_with_the_next_round(stage: Stage) -> None:
    stage.write(CHEST)
    stage.jump_to(MONDAY, 13)
    assert any(CHEST in text for text in stage.texts(COACH_CHAT))


def test_alerts_are_of_the_kind_that_is_sent_again_in_doubt(stage: Stage) -> None:
    stage.write(FAINTED)
    with stage.database.transaction() as tx:
        kinds = tx.exec(select(OutboxRow.kind, OutboxRow.chat_id).order_by(col(OutboxRow.id))).all()
    assert ("alert", COACH_CHAT) in kinds
    assert ("safety", ATHLETE_CHAT) in kinds


def test_a_tingle_in_the_hang_that_passed_takes_the_hang_out_and_nothing_else(
    stage: Stage,
) -> None:
    stage.write("tingling in my hand during the hang, gone within minutes, strength is fine")
    left_out = [one.movement_key for one in stage.session_on(MONDAY).items if one.is_left_out]
    assert left_out == ["bar_hang"]
    assert any("We leave that movement out." in text for text in stage.texts())


def test_the_words_to_the_athlete_say_as_much_as_is_stopped(stage: Stage) -> None:
    stage.write("pain at night in my left shoulder for a week, also at rest")
    assert all(one.is_left_out for one in stage.session_on(MONDAY).items)
    assert "stop upper-body training" in stage.last()
