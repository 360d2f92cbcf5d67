"""The end of a round: the report of an outage, forgetting and the mark, none held up by another.

Each is made to fail by the database itself: a trigger refuses what that step writes.
"""

import logging
from datetime import timedelta

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DatabaseError
from sqlmodel import select

from bot.rounds import house_round, tick
from storage.queries import due, people, remarks
from storage.tables.first_tests import RemarkRow
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage, local

OTHER_CHAT = 3000  # CHOSEN
REFUSED = {
    "outage": "BEFORE INSERT ON outbox WHEN NEW.chat_id = 1000 AND NEW.kind = 'notice'",
    "forget": "BEFORE DELETE ON remark",
    "mark": "BEFORE UPDATE ON mark WHEN NEW.name = 'last_round'",
}


@pytest.fixture
def stage(tmp_path):
    """A house with two coaches, a remark that is to be forgotten, and an outage to tell."""
    stage = Stage(tmp_path)
    stage.go_to(MONDAY, 6, 30)
    with stage.turn() as turn:
        otis = people.add_person(
            turn.tx, name="Otis", now=stage.now, chat_id=OTHER_CHAT, is_coach=True, zone="UTC"
        )
        people.change_person(turn.tx, otis.id, digest_weekday=6)
        remarks.add_remark(
            turn.tx,
            athlete_id=stage.person.id,
            at=stage.now - timedelta(days=29),  # DERIVED: a day past the 28 that remarks are kept
            on=MONDAY - timedelta(days=29),
            words="felt light",
        )
        due.clear_mark(turn.tx, house_round.FORGOT)
    yield stage
    stage.database.close()


def refuse(stage, what):
    with stage.database.transaction() as tx:
        tx.execute(
            text(f"CREATE TRIGGER refused {REFUSED[what]} BEGIN SELECT RAISE(ABORT, 'no'); END")
        )


def told(stage, chat_id):
    return [words for words in stage.texts(chat_id) if "I was not running" in words]


def marked(stage):
    with stage.turn() as turn:
        return due.mark(turn.tx, tick.LAST_ROUND)


def remarks_kept(stage):
    with stage.database.transaction() as tx:
        return len(tx.exec(select(RemarkRow)).all())


def test_a_report_that_fails_costs_neither_the_other_coach_nor_forgetting_nor_the_mark(
    stage, caplog
):
    refuse(stage, "outage")
    with caplog.at_level(logging.ERROR):
        stage.jump_to(MONDAY, 9, 0)
    assert told(stage, COACH_CHAT) == []
    assert len(told(stage, OTHER_CHAT)) == 1
    assert remarks_kept(stage) == 0
    assert marked(stage) == local(MONDAY, 9, 0)
    assert f"P{stage.coach.id}:" in caplog.text


def test_forgetting_that_fails_costs_neither_the_report_nor_the_mark(stage, caplog):
    refuse(stage, "forget")
    with caplog.at_level(logging.ERROR):
        stage.jump_to(MONDAY, 9, 0)
    assert len(told(stage, COACH_CHAT)) == 1
    assert remarks_kept(stage) == 1
    assert marked(stage) == local(MONDAY, 9, 0)
    assert "forget:" in caplog.text


def test_a_mark_that_fails_costs_nothing_else_and_ends_the_round_without_a_sign_of_life(stage):
    refuse(stage, "mark")
    with pytest.raises(DatabaseError):
        stage.jump_to(MONDAY, 9, 0)
    assert len(told(stage, COACH_CHAT)) == 1
    assert remarks_kept(stage) == 0
    assert marked(stage) == local(MONDAY, 6, 30)


def test_a_round_that_lost_its_mark_tells_nobody_of_the_same_outage_again(stage):
    refuse(stage, "mark")
    sent = []
    for minute in (0, 1):
        with pytest.raises(DatabaseError):
            stage.jump_to(MONDAY, 9, minute)
        sent.append((len(told(stage, COACH_CHAT)), stage.count(ATHLETE_CHAT)))
    assert sent[0] == sent[1]
    assert sent[0][0] == 1
