"""A review is drafted from facts; the coach sends it, changes its words, or leaves it."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.training.season_values import SeasonWeekKind
from storage.queries import care, people, training
from storage.records.people import Person
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage

STARTED = MONDAY - timedelta(days=27)  # DERIVED: 30 days later it is Thursday, 5 March
THURSDAY = MONDAY + timedelta(days=3)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, started_on=STARTED)
    stage.go_to(MONDAY, 7, 30)
    stage.tap("All as planned")
    return stage


def drafts(stage: Stage) -> list[str]:
    return [text for text in stage.texts(COACH_CHAT) if "A draft; nothing is sent yet" in text]


def _tap(stage: Stage, label: str) -> Outcome:
    return stage.tap(label, chat_id=COACH_CHAT)


def _open(stage: Stage, person: Person | None = None) -> int:
    with stage.turn() as turn:
        return len(care.proposals(turn.tx, [(person or stage.person).id], kind="review"))


def test_on_day_30_a_draft_of_facts_comes_in_the_coachs_waking_hours(stage: Stage):
    stage.go_to(THURSDAY, 6, 30)
    assert drafts(stage) == []
    assert _open(stage) == 1
    stage.go_to(THURSDAY, 7, 0)
    (draft,) = drafts(stage)
    assert draft.startswith("<b>Ines</b> · Review of the first 30 days.")
    assert "1 of 2 sessions trained." in draft
    assert "Stage 1. Of the checklist to move up" in draft
    stage.go_to(MONDAY + timedelta(days=6), 12)
    assert len(drafts(stage)) == 1
    assert not any("Your training from" in text for text in stage.texts())


def test_send_as_it_is_sends_it_once_with_the_coachs_name(stage: Stage):
    stage.go_to(THURSDAY, 7, 0)
    assert _tap(stage, "Send as it is") is Outcome.PASSED_ON
    assert stage.last().startswith("<b>Mara</b>:\nYour training from ")
    assert _open(stage) == 0
    (entry,) = stage.audit("review.sent")
    assert entry.after == {"number": 1, "answer": "sent"}
    count = stage.count()
    assert _tap(stage, "Send as it is") is Outcome.STALE_TAP
    assert stage.count() == count


def test_the_words_are_changed_and_go_out_in_its_place(stage: Stage):
    stage.go_to(THURSDAY, 7, 0)
    _tap(stage, "Change the words")
    stage.write("Good month, Ines. Keep the holds quiet.", chat_id=COACH_CHAT)
    assert stage.last() == "<b>Mara</b>:\nGood month, Ines. Keep the holds quiet."
    assert stage.audit("review.sent")[0].after["answer"] == "changed"


def test_words_long_after_show_the_draft_again_and_go_nowhere(stage: Stage):
    stage.go_to(THURSDAY, 7, 0)
    _tap(stage, "Change the words")
    stage.later(hours=2)
    count = stage.count()
    stage.write("something else", chat_id=COACH_CHAT)
    assert stage.count() == count
    assert len(drafts(stage)) == 2


def test_leave_it_tells_the_athlete_nothing(stage: Stage):
    stage.go_to(THURSDAY, 7, 0)
    count = stage.count()
    _tap(stage, "Leave it")
    assert stage.count() == count
    assert _open(stage) == 0
    assert stage.audit("review.left")


@pytest.mark.parametrize("kind", [SeasonWeekKind.LIGHTER, SeasonWeekKind.TAPER])
def test_in_a_lighter_week_it_waits_for_the_next(stage: Stage, kind: SeasonWeekKind):
    with stage.turn() as turn:
        week = training.week(turn.tx, stage.person.id, MONDAY)
        assert week is not None
        is_lighter = kind is SeasonWeekKind.LIGHTER
        training.change_week(turn.tx, week.id, is_lighter=is_lighter, kind=kind)
    stage.go_to(MONDAY + timedelta(days=6), 22)
    assert _open(stage) == 0
    stage.go_to(MONDAY + timedelta(days=7), 8)
    assert _open(stage) == 1


def test_what_came_up_since_the_draft_is_said_before_it_goes_out(stage: Stage):
    stage.go_to(THURSDAY, 7, 0)
    stage.write("my left wrist hurts, 7/10")
    count = stage.count()
    assert _tap(stage, "Send as it is") is Outcome.ASKED
    assert "waits for you" in stage.last(COACH_CHAT)
    assert stage.count() == count
    _tap(stage, "Send all the same")
    assert stage.last().startswith("<b>Mara</b>:\nYour training from ")


def test_pain_and_what_is_left_out_are_told_as_facts(stage: Stage):
    stage.write("my left wrist hurts, 7/10")
    stage.go_to(THURSDAY, 7, 0)
    (draft,) = drafts(stage)
    assert "Pain was reported on 1 day, at most 7 of 10." in draft
    assert "Left out now: " in draft


def test_several_drafts_of_one_morning_come_as_one_list(stage: Stage):
    for number, name in enumerate(("Bo", "Cy"), start=1):
        person = stage.add_athlete(name, chat_id=2000 + number)
        with stage.turn() as turn:
            people.change_athlete(turn.tx, person.id, started_on=STARTED)
    stage.go_to(THURSDAY, 7, 0)
    assert drafts(stage) == []
    listed = [text for text in stage.texts(COACH_CHAT) if "reviews are drafted" in text]
    assert listed == ["3 reviews are drafted: Ines, Bo, Cy. They wait on /roster too."]
    _tap(stage, "Review: Bo")
    assert drafts(stage)[0].startswith("<b>Bo</b>")
    stage.write("/roster", chat_id=COACH_CHAT)
    assert "1 decision" in stage.last(COACH_CHAT)
    stage.write("/who cy", chat_id=COACH_CHAT)
    assert "Review of the first 30 days" in stage.last(COACH_CHAT)
    _tap(stage, "Review: Cy")
    assert drafts(stage)[1].startswith("<b>Cy</b>")


def test_a_later_review_takes_the_place_of_one_never_answered(stage: Stage):
    stage.go_to(THURSDAY, 7, 0)
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, started_on=date(2025, 11, 11))
    # DERIVED: 11 November and 30 + 84 days is 5 March.
    stage.go_to(THURSDAY, 9, 0)
    assert _open(stage) == 1
    assert "Review of the last 12 weeks" in drafts(stage)[-1]
