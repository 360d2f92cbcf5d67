"""Decisions that need no thought, approved together, each recorded and taken back on its own."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.acts import pain_picture, send_digest
from bot.outcomes import Outcome
from scheduler.pain.events import PainReported
from scheduler.pain.values import Side, Site
from storage.queries import care, people
from storage.records.people import Person
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage
from tests.conversation.test_rounds_propose import show_standards

# CHOSEN: the days on which every standard of stage 1 was shown, as in the tests of proposals.
SHOWN_DAYS_AGO = (10, 6, 3)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    """Three athletes whose checklists are complete and proposed."""
    stage = Stage(tmp_path)
    ines = stage.person
    others = [stage.add_athlete(name, chat_id=2000 + n) for n, name in enumerate(("Bo", "Cy"), 1)]
    for person in (ines, *others):
        stage.person = person
        show_standards(stage, days_ago=SHOWN_DAYS_AGO)
        with stage.turn() as turn:
            since = stage.athlete.stage_since.isoformat()
            facts = {"stage": 2, "from_stage": 1, "stage_since": since}
            care.propose(turn.tx, athlete_id=person.id, kind="stage_up", facts=facts, at=stage.now)
    stage.person = ines
    return stage


def _coach(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


def _tap(stage: Stage, label: str) -> Outcome:
    return stage.tap(label, chat_id=COACH_CHAT)


def _person(stage: Stage, chat_id: int) -> Person:
    with stage.turn() as turn:
        found = people.person_in_chat(turn.tx, chat_id)
    assert found is not None
    return found


def _hurt(stage: Stage, person: Person, score: int) -> None:
    with stage.turn() as turn:
        event = PainReported(
            key=pain_picture.new_key(turn, person.id),
            at_utc=stage.now,
            site=Site.WRIST,
            side=Side.LEFT,
            score=score,
        )
        pain_picture.record_event(turn, person.id, event)


def test_all_without_a_doubt_move_up_by_one_tap_after_a_list(stage: Stage):
    _coach(stage, "/roster")
    assert _tap(stage, "Approve 3 without a doubt") is Outcome.ASKED
    asked = stage.last(COACH_CHAT)
    assert [line for line in asked.split("\n") if "→" in line] == [
        "Ines: stage 1 → 2",
        "Bo: stage 1 → 2",
        "Cy: stage 1 → 2",
    ]
    assert stage.athlete.stage == 1
    _tap(stage, "Move up all 3")
    for chat_id in (2000, 2001, 2002):
        person = _person(stage, chat_id)
        assert stage.athlete_of(person).stage == 2
        assert any("stage" in text for text in stage.texts(chat_id))
        with stage.turn() as turn:
            whats = {one.what for one in care.audit_of(turn.tx, person.id)}
            assert {"stage.changed", "proposal.accepted"} <= whats
            assert care.proposals(turn.tx, [person.id]) == ()


def test_one_of_them_is_taken_back_and_the_others_stay(stage: Stage):
    _coach(stage, "/roster")
    _tap(stage, "Approve 3 without a doubt")
    _tap(stage, "Move up all 3")
    _tap(stage, "Take back Bo")
    assert stage.athlete_of(_person(stage, 2001)).stage == 1
    assert stage.athlete_of(_person(stage, 2002)).stage == 2


def test_pain_of_one_an_alert_or_a_waiting_message_asks_for_a_thought(stage: Stage):
    _hurt(stage, _person(stage, 2001), 1)
    with stage.turn() as turn:
        care.pass_on(turn.tx, athlete_id=_person(stage, 2002).id, words="hm", at=stage.now)
    _coach(stage, "/roster")
    assert not any("without a doubt" in shown for shown in stage.screen(COACH_CHAT)[-1].buttons)


def test_what_came_up_between_the_list_and_the_tap_is_not_approved(stage: Stage):
    _coach(stage, "/roster")
    _tap(stage, "Approve 3 without a doubt")
    _hurt(stage, _person(stage, 2001), 4)
    _tap(stage, "Move up all 3")
    assert stage.athlete_of(_person(stage, 2001)).stage == 1
    assert "Not moved, something changed since: Bo." in stage.last(COACH_CHAT)
    with stage.turn() as turn:
        assert len(care.proposals(turn.tx, [_person(stage, 2001).id])) == 1


def test_not_now_leaves_each_of_them_to_be_decided(stage: Stage):
    _coach(stage, "/roster")
    _tap(stage, "Approve 3 without a doubt")
    _tap(stage, "Not now")
    assert stage.athlete.stage == 1
    with stage.turn() as turn:
        assert len(care.proposals(turn.tx, [stage.person.id])) == 1


def test_the_digest_offers_the_same_list(stage: Stage):
    with stage.turn() as turn:
        send_digest.send_digest(turn, stage.coach, MONDAY + timedelta(days=1))
    buttons = [label for one in stage.screen(COACH_CHAT) for label in one.buttons]
    assert "Approve 3 without a doubt" in buttons
