"""How long words are kept, by a clock that the test moves; facts stay with the athlete."""

from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlmodel import Session, select

from bot.acts import review
from bot.outcomes import Outcome
from bot.rounds import house_round
from scheduler.pain.values import Level, Urgency
from storage import buttons, inbox, outbox
from storage.queries import care, clips, retention
from storage.records.care import AlertState
from storage.records.wire import MessageKind, Operation
from storage.tables.care import AlertRow, AuditRow, PainEventRow, PassedOnRow, ProposalRow
from storage.tables.media import ClipRow
from storage.tables.wire import ButtonRow, DialogRow, InboxRow, OutboxRow
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, Stage

WORDS = "these very words"
START = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    """One of everything that holds words, all written at the start."""
    stage = Stage(tmp_path)
    stage.now = START
    with stage.turn() as turn:
        _fill(turn.tx, stage)
    return stage


def _fill(tx: Session, stage: Stage) -> None:
    inbox.store_updates(
        tx, [{"update_id": 1, "message": {"chat": {"id": ATHLETE_CHAT}, "text": WORDS}}],
        received_at=START,
    )  # fmt: skip
    inbox.mark_handled(tx, inbox.next_waiting(tx, most=1)[0].id, at=START, outcome="recorded")
    sent = outbox.put(
        tx, chat_id=COACH_CHAT, operation=Operation.SEND, kind=MessageKind.NOTICE,
        payload={"text": WORDS}, now=START,
    )  # fmt: skip
    outbox.mark_sent(tx, sent, at=START, message_id=1)
    for act in ("reading.choose", "coach.who"):
        buttons.new_button(
            tx, chat_id=ATHLETE_CHAT, person_id=stage.person.id, act=act,
            arguments={"option": WORDS}, now=START,
        )  # fmt: skip
    buttons.keep_dialog(
        tx, chat_id=ATHLETE_CHAT, person_id=stage.person.id, kind="intake", step="goal",
        answers={"goal": WORDS}, now=START,
    )  # fmt: skip
    care.pass_on(tx, athlete_id=stage.person.id, words=WORDS, at=START)
    for state in (AlertState.SEEN, AlertState.OPEN):
        alert = care.raise_alert(
            tx, athlete_id=stage.person.id, coach_id=stage.coach.id, level=Level.REST,
            urgency=Urgency.SOON, words=WORDS, reasons=(), at=START, tell_at=None,
        )  # fmt: skip
        care.change_alert(tx, alert.id, state=state)
    care.write_audit(
        tx, at=START, what="stage.changed", athlete_id=stage.person.id, words=WORDS,
        after={"stage": 2},
    )  # fmt: skip
    care.write_audit(
        tx, at=START, what="other_training", athlete_id=stage.person.id, words=WORDS,
        after={"name": WORDS, "minutes": 40},
    )  # fmt: skip
    care.add_pain_event(
        tx, athlete_id=stage.person.id, at=START, kind="cleared", event={"reason": WORDS}
    )


def after(stage: Stage, **span: float) -> Stage:
    """Let the house's own round run once, so long after the start."""
    stage.now = START + timedelta(**span)
    for go in house_round.STEPS.values():
        with stage.turn() as turn:
            go(turn)
    return stage


def held(stage: Stage, table: Any, column: str) -> list[Any]:
    with stage.database.transaction() as tx:
        return [getattr(row, column) for row in tx.exec(select(table)).all()]


@pytest.mark.parametrize(("days", "is_kept"), [(6.9, True), (7.1, False)])
def test_raw_messages_and_sent_texts_end_after_seven_days(stage, days, is_kept):
    """CHOSEN: 7 days, as people are told when they come in."""
    after(stage, days=days)
    assert (WORDS in str(held(stage, InboxRow, "raw"))) is is_kept
    assert (WORDS in str(held(stage, OutboxRow, "payload"))) is is_kept


@pytest.mark.parametrize(("days", "acts"), [(27, 2), (29, 1), (91, 0)])
def test_what_was_read_and_never_chosen_ends_after_twenty_eight_days(stage, days, acts):
    """CHOSEN: 28 days for a reading, 90 for other buttons."""
    after(stage, days=days)
    assert len(held(stage, ButtonRow, "act")) == acts


@pytest.mark.parametrize(("days", "is_kept"), [(364, True), (366, False)])
def test_words_of_the_record_end_after_a_year_and_the_facts_stay(stage, days, is_kept):
    """CHOSEN: 365 days."""
    after(stage, days=days)
    assert held(stage, AuditRow, "words") == ([WORDS] * 2 if is_kept else [""] * 2)
    facts = held(stage, AuditRow, "after")
    assert facts[0] == {"stage": 2}
    assert facts[1]["minutes"] == 40
    assert ("name" in facts[1]) is is_kept
    assert (WORDS in str(held(stage, DialogRow, "answers"))) is is_kept
    assert (held(stage, AlertRow, "words")[0] == WORDS) is is_kept


@pytest.mark.parametrize(("days", "is_kept"), [(27, True), (29, False)])
def test_the_words_under_an_answered_clip_end_and_an_open_one_keeps_them(stage, days, is_kept):
    """CHOSEN: 28 days behind the answer."""
    with stage.turn() as turn:
        for number in (1, 2):
            clip = clips.add(
                turn.tx, athlete_id=stage.person.id, at=START, chat_id=ATHLETE_CHAT,
                message_id=number, caption=WORDS,
            )  # fmt: skip
        clips.mark_answered(turn.tx, clip.id, by_id=stage.coach.id, at=START)
    after(stage, days=days)
    assert held(stage, ClipRow, "caption") == [WORDS, WORDS if is_kept else ""]


@pytest.mark.parametrize(("days", "is_kept"), [(364, True), (366, False)])
def test_the_words_under_a_clip_that_nobody_answers_end_after_a_year_and_it_still_waits(
    stage, days, is_kept
):
    """CHOSEN: 365 days, as other words."""
    with stage.turn() as turn:
        clips.add(
            turn.tx, athlete_id=stage.person.id, at=START, chat_id=ATHLETE_CHAT, message_id=1,
            caption=WORDS,
        )  # fmt: skip
    after(stage, days=days)
    assert held(stage, ClipRow, "caption") == [WORDS if is_kept else ""]
    with stage.turn() as turn:
        assert len(clips.waiting(turn.tx, [stage.person.id])) == 1


def _drafts(stage: Stage) -> None:
    """Draft a review that is answered at once, and one that nobody answers."""
    with stage.turn() as turn:
        answered, _ = [
            care.propose(
                turn.tx, athlete_id=stage.person.id, kind=review.KIND, at=START,
                facts={"number": number, "text": WORDS},
            )
            for number in (1, 2)
        ]  # fmt: skip
        care.answer_proposal(turn.tx, answered.id, at=START, answer="sent")


@pytest.mark.parametrize(("days", "kept"), [(27, 2), (29, 1), (89, 1), (91, 0)])
def test_the_text_of_a_drafted_review_ends_and_that_there_was_one_stays(stage, days, kept):
    """CHOSEN: 28 days behind the answer, 90 days without one."""
    _drafts(stage)
    after(stage, days=days)
    facts = held(stage, ProposalRow, "facts")
    assert [one["number"] for one in facts] == [1, 2]
    assert sum(one.get("text") == WORDS for one in facts) == kept


def test_a_draft_that_nobody_answered_is_closed_and_its_button_says_so(stage):
    _drafts(stage)
    with stage.turn() as turn:
        tap = review.show_tap(
            turn, stage.coach, care.proposals(turn.tx, [stage.person.id])[0], name="Ines"
        )
        turn.say(stage.coach, "the roster", taps=[[tap]])
    after(stage, days=89)
    assert stage.tap(tap.label, chat_id=COACH_CHAT) is Outcome.ASKED
    after(stage, days=91)
    with stage.turn() as turn:
        assert care.proposals(turn.tx, [stage.person.id]) == ()
        turn.say(stage.coach, "the roster", taps=[[tap]])
    assert stage.tap(tap.label, chat_id=COACH_CHAT) is Outcome.STALE_TAP
    assert held(stage, ProposalRow, "answer") == ["sent", retention.LAPSED]


def test_what_waits_for_an_answer_keeps_its_words_until_it_has_one(stage):
    after(stage, days=400)
    assert held(stage, PassedOnRow, "words") == [WORDS]
    assert held(stage, AlertRow, "words")[1] == WORDS
    with stage.turn() as turn:
        care.mark_answered(turn.tx, stage.person.id, at=stage.now)
    after(stage, days=402)
    assert held(stage, PassedOnRow, "words") == [""]


def test_reports_of_pain_stay_until_the_athlete_is_erased(stage):
    after(stage, days=2000)
    assert held(stage, PainEventRow, "event") == [{"reason": WORDS}]


def test_the_round_does_it_once_a_day_and_each_entry_of_the_record_once(stage):
    after(stage, days=366)
    with stage.turn() as turn:
        care.write_audit(
            turn.tx, at=stage.now, what="stage.changed", athlete_id=stage.person.id, words="new"
        )
    after(stage, days=366, hours=23)
    after(stage, days=500)
    assert held(stage, AuditRow, "words") == ["", "", "new"]
    after(stage, days=366 + 366)
    assert held(stage, AuditRow, "words") == ["", "", ""]


def test_only_entries_that_became_old_since_are_looked_at(stage):
    after(stage, days=366)
    with stage.database.transaction() as tx:
        assert retention._first_id_from(tx, START) <= 1
        assert retention._first_id_from(tx, START + timedelta(seconds=1)) == 3
