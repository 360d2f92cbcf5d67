"""The clock's rounds: sent once and in time, late ones noted, one fault stopping nobody."""

from datetime import date, timedelta
from pathlib import Path

import pytest
from sqlmodel import select

from bot.rounds import athlete_round
from scheduler.catalogue.values import Equipment
from storage.queries import people, training
from storage.records.people import AthleteState
from storage.records.training import SessionState
from storage.tables.training import SessionRow
from storage.tables.wire import DueRow
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, PROFILE, Stage, local

TUESDAY, WEDNESDAY, THURSDAY = (MONDAY + timedelta(days=days) for days in (1, 2, 3))
ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def sessions_sent(stage: Stage, chat_id: int = 2000) -> list[str]:
    return [row.payload["text"] for row in stage.rows(chat_id) if row.kind == "session"]


def reminders(stage: Stage) -> list[str]:
    return [row.payload["text"] for row in stage.rows(2000) if row.kind == "reminder"]


def test_the_week_is_drawn_at_night_before_its_first_session(stage: Stage) -> None:
    stage.go_to(date(2026, 3, 9), 2, 59)
    assert max(one.on for one in stage.sessions()) == date(2026, 3, 6)
    stage.go_to(date(2026, 3, 9), 3)  # CHOSEN: planning at 03:00 local
    fresh = stage.sessions()[3:]
    assert [one.on for one in fresh] == [date(2026, 3, day) for day in (9, 11, 13)]
    assert all(one.state is SessionState.PLANNED for one in fresh)


def test_the_same_week_is_never_drawn_twice(stage: Stage) -> None:
    stage.go_to(date(2026, 3, 8), 22)
    assert len(stage.sessions()) == 3


def test_a_late_session_is_sent_while_it_is_still_useful(stage: Stage) -> None:
    stage.go_to(MONDAY, 4)
    stage.jump_to(MONDAY, 15)
    assert len(sessions_sent(stage)) == 1


def test_a_session_too_late_for_its_evening_is_noted_and_not_sent(stage: Stage) -> None:
    stage.go_to(MONDAY, 4)
    stage.jump_to(MONDAY, 23)
    assert sessions_sent(stage) == []
    session = stage.session_on(MONDAY)
    assert session.state is SessionState.CALLED_OFF
    assert session.called_off_because == "too_late"
    assert len(stage.audit("late.session")) == 1


def test_an_outage_is_told_to_the_coach_from_when_to_when(stage: Stage) -> None:
    stage.go_to(MONDAY, 8)
    before = stage.count(COACH_CHAT)
    stage.jump_to(MONDAY, 15)
    assert len(stage.since(before, COACH_CHAT)) == 1


def test_a_missed_day_of_standing_still_sends_only_what_is_of_today(stage: Stage) -> None:
    stage.go_to(MONDAY, 4)
    stage.jump_to(WEDNESDAY, 9)
    assert len(sessions_sent(stage)) == 1
    assert "Wednesday" in sessions_sent(stage)[0]


def test_an_unanswered_session_is_reminded_of_once_in_the_evening(stage: Stage) -> None:
    stage.go_to(MONDAY, 19, 59)
    assert reminders(stage) == []
    stage.go_to(TUESDAY, 6)
    assert len(reminders(stage)) == 1
    assert "nothing piles up" in reminders(stage)[0]


def test_an_answered_session_is_not_reminded_of(stage: Stage) -> None:
    stage.go_to(MONDAY, 7)
    stage.write("1) 20 20 20")
    stage.go_to(TUESDAY, 6)
    assert reminders(stage) == []


def test_three_silent_days_are_told_to_the_coach_once(stage: Stage) -> None:
    stage.go_to(THURSDAY, 6, 59)
    assert not any("three days" in text for text in stage.texts(COACH_CHAT))
    stage.go_to(date(2026, 3, 8), 22)
    told = [text for text in stage.texts(COACH_CHAT) if "three days" in text]
    assert len(told) == 1
    assert "Ines" in told[0]


def test_a_silence_of_weeks_is_told_once_and_a_new_one_after_an_answer_again(stage: Stage) -> None:
    stage.go_to(date(2026, 3, 18), 12)
    told = [text for text in stage.texts(COACH_CHAT) if "three days" in text]
    assert len(told) == 1
    stage.write("1) 20 20")  # after two weeks away: two sets
    stage.go_to(date(2026, 3, 25), 12)
    told = [text for text in stage.texts(COACH_CHAT) if "three days" in text]
    assert len(told) == 2


def test_an_answer_ends_the_silence(stage: Stage) -> None:
    stage.go_to(WEDNESDAY, 8)
    stage.write("1) 20 20 20")
    stage.go_to(date(2026, 3, 6), 23)
    assert not any("three days" in text for text in stage.texts(COACH_CHAT))


def test_yesterdays_session_is_closed_at_night_as_trained_or_as_missed(stage: Stage) -> None:
    stage.go_to(MONDAY, 7)
    stage.write("1) 20 20 20")
    stage.go_to(TUESDAY, 3)
    monday = stage.session_on(MONDAY)
    assert (monday.state, monday.closed_at) == (SessionState.TRAINED, stage.now)
    stage.go_to(THURSDAY, 3)
    assert stage.session_on(WEDNESDAY).state is SessionState.MISSED


def test_a_restart_between_round_and_send_doubles_nothing(stage: Stage) -> None:
    stage.go_to(MONDAY, 7)
    again = Stage.__new__(Stage)
    again.__dict__.update(stage.__dict__)
    for _ in range(3):
        again.strike()
        again.later(minutes=1)
    assert len(sessions_sent(stage)) == 1
    with stage.database.transaction() as tx:
        taken = tx.exec(select(DueRow).where(DueRow.kind == "session")).all()
    assert len(taken) == 1


def test_a_round_that_fails_halfway_is_done_in_full_by_the_next(stage: Stage) -> None:
    stage.go_to(MONDAY, 6, 30)
    stage.now = local(MONDAY, 7)
    with pytest.raises(ZeroDivisionError), stage.turn() as turn:
        athlete_round.go(turn, stage.person.id, stage.now - timedelta(minutes=1))
        raise ZeroDivisionError
    assert sessions_sent(stage) == []
    stage.strike()
    assert len(sessions_sent(stage)) == 1


def test_one_persons_fault_stops_nobody_else(stage: Stage) -> None:
    stage.add_athlete("Bo", chat_id=3000)
    stage.go_to(MONDAY, 4)
    with stage.database.transaction() as tx:
        session_id = stage.session_on(MONDAY).id
        row = tx.get_one(SessionRow, session_id)
        for item in training.session(tx, session_id).items:
            training.change_item(tx, item.id, movement_key="no_such_movement")
        assert row.athlete_id == stage.person.id
    stage.go_to(MONDAY, 7)
    assert sessions_sent(stage) == []
    assert len(sessions_sent(stage, 3000)) == 1


def test_each_athlete_is_served_by_their_own_zone(stage: Stage) -> None:
    other = stage.add_athlete("Kai", chat_id=3000)
    with stage.turn() as turn:
        people.change_person(turn.tx, other.id, zone="America/Bogota")
    stage.go_to(MONDAY, 12)
    assert len(sessions_sent(stage)) == 1
    assert sessions_sent(stage, 3000) == []
    stage.go_to(MONDAY, 13)  # 07:00 in Bogota: PUBLISHED tz database, UTC-5 against UTC+1
    assert len(sessions_sent(stage, 3000)) == 1


@pytest.mark.parametrize("zone", ["Asia/Tokyo", "America/Los_Angeles", "Pacific/Kiritimati"])
def test_a_change_of_zone_sends_each_session_once(stage: Stage, zone: str) -> None:
    stage.go_to(MONDAY, 8)
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, zone=zone)
    stage.go_to(date(2026, 3, 7), 12)
    days = [text.split(",")[0] for text in sessions_sent(stage)]
    assert days == ["<b>Monday", "<b>Wednesday", "<b>Friday"]


def test_a_blocked_chat_gets_no_session_and_is_no_fault(stage: Stage) -> None:
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, is_blocked=True)
    stage.go_to(MONDAY, 8)
    assert stage.count() == 0


def test_who_waits_for_the_coach_gets_no_session(stage: Stage) -> None:
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, state=AthleteState.WAITS_FOR_COACH)
    stage.go_to(MONDAY, 8)
    assert stage.count() == 0


def test_a_plan_ahead_needs_no_equipment_that_is_not_owned(stage: Stage) -> None:
    stage.go_to(MONDAY, 7)
    owned = PROFILE.facts.equipment
    assert Equipment.BARBELL not in owned
    for session in stage.sessions():
        for item in session.items:
            assert stage.movement(item).fits(owned)
