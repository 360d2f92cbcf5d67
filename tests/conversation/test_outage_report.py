"""After an outage coach and owner are told from when to when, and what of it came late."""

from datetime import timedelta
from pathlib import Path

import pytest

from storage.queries import people
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage

OWNER, OTIS = 4000, 3000
TUESDAY = MONDAY + timedelta(days=1)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        add = people.add_person
        long_ago = stage.now - timedelta(days=60)
        add(turn.tx, name="Ada", now=long_ago, chat_id=OWNER, is_owner=True, zone="UTC")
        otis = add(turn.tx, name="Otis", now=long_ago, chat_id=OTIS, is_coach=True, zone="UTC")
        people.change_person(turn.tx, otis.id, digest_weekday=6)
    bo = stage.add_athlete("Bo", chat_id=2001)
    with stage.turn() as turn:
        people.change_athlete(turn.tx, bo.id, coach_id=otis.id)
    return stage


def reports(stage: Stage, chat_id: int) -> list[str]:
    return [text for text in stage.texts(chat_id) if "I was not running" in text]


def test_what_was_still_useful_and_what_was_not_is_named_to_each_in_their_own_time(stage: Stage):
    stage.go_to(MONDAY, 6, 30)
    stage.jump_to(MONDAY, 9, 0)
    (to_coach,) = reports(stage, COACH_CHAT)
    lines = to_coach.split("\n")
    assert lines[0].startswith("I was not running from Mon 2 Mar, 06:30 to Mon 2 Mar, 09:00.")
    assert lines[1:] == ["Sent late: 1 session (Ines)."]
    (to_other,) = reports(stage, OTIS)
    # DERIVED: Madrid is one hour ahead of UTC in March.
    assert "from Mon 2 Mar, 05:30 to Mon 2 Mar, 08:00" in to_other
    assert "Sent late: 1 session (Bo)." in to_other
    assert "Ines" not in to_other
    (to_owner,) = reports(stage, OWNER)
    assert "Sent late: 2 sessions (Ines, Bo)." in to_owner


def test_what_came_too_late_is_named_as_no_longer_of_use(stage: Stage):
    stage.go_to(MONDAY, 6, 30)
    stage.jump_to(MONDAY, 23, 0)
    (report,) = reports(stage, COACH_CHAT)
    assert "No longer of use: 1 session (Ines)." in report
    assert "Sent late" not in report


def test_an_outage_in_which_nothing_was_due_says_so(stage: Stage):
    stage.go_to(MONDAY, 7, 30)
    stage.jump_to(MONDAY, 8, 0)
    (report,) = reports(stage, COACH_CHAT)
    assert report.split("\n")[1:] == ["Nothing was due in that time."]


def test_a_house_that_ran_through_says_nothing(stage: Stage):
    stage.go_to(TUESDAY, 12)
    for chat_id in (COACH_CHAT, OWNER, OTIS):
        assert reports(stage, chat_id) == []


def test_a_coach_who_owns_the_house_is_told_once(stage: Stage):
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.coach.id, is_owner=True)
    stage.go_to(MONDAY, 6, 30)
    stage.jump_to(MONDAY, 9, 0)
    assert len(reports(stage, COACH_CHAT)) == 1
    assert "2 sessions (Ines, Bo)" in reports(stage, COACH_CHAT)[0]


def test_a_practice_athletes_session_is_no_figure_of_the_report(stage: Stage):
    stage.go_to(MONDAY, 11, 0)
    stage.write("/practice", chat_id=COACH_CHAT)
    stage.jump_to(MONDAY, 11, 30)
    (report,) = reports(stage, COACH_CHAT)
    assert report.split("\n")[1:] == ["Nothing was due in that time."]
