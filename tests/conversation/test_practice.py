"""A coach's practice athlete: sees what athletes see, counts nowhere, and leaves nothing behind."""

from datetime import date, timedelta
from pathlib import Path

import pytest
from sqlalchemy import func, select

from bot.acts import answer_clip, send_digest
from bot.outcomes import Outcome
from storage.queries import care, people
from storage.records.people import Athlete
from storage.tables import metadata
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage
from tests.conversation.clip_stage import clips_of, send_clip

THURSDAY = date(2026, 3, 12)
WORDS_OF_THE_CHAT = {"inbox", "outbox", "button", "mark"}
"""Tables that every message of a coach goes through; their words are checked apart."""


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    stage.go_to(MONDAY, 12, 0)
    return stage


def _coach(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


def _practice(stage: Stage) -> Athlete | None:
    with stage.turn() as turn:
        return people.athlete(turn.tx, stage.coach.id)


def _counts(stage: Stage) -> dict[str, int]:
    with stage.database.transaction() as tx:
        return {
            name: tx.connection().scalar(select(func.count()).select_from(table)) or 0
            for name, table in metadata.tables.items()
            if name not in WORDS_OF_THE_CHAT
        }


def test_it_begins_with_an_invented_history_and_a_session_comes_in_a_minute(stage: Stage):
    assert _coach(stage, "/practice") is Outcome.COMMAND
    assert "3 invented weeks and 9 invented sessions" in stage.last(COACH_CHAT)
    own = _practice(stage)
    assert own is not None
    assert own.is_practice
    stage.go_to(MONDAY, 12, 1)
    assert any(row.kind == "session" for row in stage.rows(COACH_CHAT))
    # Every set of the invented weeks is there to be seen, as the rules asked for it.
    sessions = stage.sessions(stage.coach)
    done = [item for one in sessions for item in one.items if one.trained_at and item.sets]
    assert len(done) > 20
    assert all(item.dose is not None for item in done)


def test_the_coach_answers_it_like_an_athlete_and_still_coaches(stage: Stage):
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    stage.tap("All as planned", chat_id=COACH_CHAT)
    session = stage.session_on(MONDAY, stage.coach)
    assert any(item.sets for item in session.items)
    assert _coach(stage, "/today") is Outcome.COMMAND
    _coach(stage, "/tell Ines Nice even holds.")
    assert stage.last().endswith("Nice even holds.")
    _coach(stage, "/who practice")
    assert "<b>Mara</b>" in stage.last(COACH_CHAT)


def test_it_counts_in_no_roster_digest_house_or_round_letter(stage: Stage):
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    _coach(stage, "/roster")
    assert stage.last(COACH_CHAT).startswith("1 athlete")
    assert "Mara" not in stage.last(COACH_CHAT)
    with stage.turn() as turn:
        send_digest.send_digest(turn, stage.coach, MONDAY + timedelta(days=7))
    digest = next(row.payload["text"] for row in stage.rows(COACH_CHAT) if row.kind == "digest")
    assert "Mara" not in digest
    _coach(stage, "/tell all Hello.")
    assert "To everybody, 1 athlete" in stage.last(COACH_CHAT)
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.coach.id, is_owner=True)
    _coach(stage, "/house")
    assert "<b>Mara</b> (1): Ines" in stage.last(COACH_CHAT)


def test_a_warning_sign_in_practice_alerts_nobody_and_says_so(stage: Stage):
    other = stage.add_athlete("Otis", chat_id=3000)
    with stage.turn() as turn:
        people.change_person(turn.tx, other.id, is_coach=True)
        people.change_person(turn.tx, stage.coach.id, stand_in_id=other.id)
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    assert _coach(stage, "I fainted in the last set") is Outcome.SAFETY
    assert any("Practice: in earnest" in text for text in stage.texts(COACH_CHAT))
    with stage.turn() as turn:
        assert care.open_alerts(turn.tx) == ()
    stage.go_to(MONDAY, 14, 0)
    assert not any(row.kind == "alert" for row in stage.rows())
    assert not any("fainted" in text for text in stage.texts(3000))
    _coach(stage, "/roster")
    assert "Alerts" not in stage.last(COACH_CHAT)


def test_its_end_erases_everything_of_it(stage: Stage):
    before, began_at = _counts(stage), stage.now
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    stage.tap("All as planned", chat_id=COACH_CHAT)
    _coach(stage, "my left wrist hurts, 7/10")
    _coach(stage, "I fainted in the last set")
    stage.go_to(MONDAY, 12, 2)
    with stage.database.transaction() as tx:
        tx.connection().execute(metadata.tables["outbox"].update().values(state="sent"))
    assert _coach(stage, "/practice end") is Outcome.COMMAND
    assert _practice(stage) is None
    after = _counts(stage)
    audit = after.pop("audit") - before.pop("audit")
    assert after == before
    # That there was a practice stays on record, without anything of what it did.
    assert audit == 2
    assert {row.what for row in stage.audit()} >= {"practice.begun", "practice.ended"}
    assert stage.alerts() == []
    settled = [row for row in stage.rows(COACH_CHAT) if row.state == "sent"]
    assert settled
    assert not any(row.payload for row in settled if row.created_at >= began_at)


def test_an_old_button_of_it_does_nothing_in_a_later_practice(stage: Stage):
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    message, token = stage.button("All as planned", chat_id=COACH_CHAT)
    _coach(stage, "/practice end")
    _coach(stage, "/practice")
    assert stage.tap_token(token, message.message_id, chat_id=COACH_CHAT) is Outcome.STALE_TAP


def test_the_coachs_own_buttons_outlive_it(stage: Stage):
    _coach(stage, "/who ines")
    message, token = stage.button("History", chat_id=COACH_CHAT)
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    _coach(stage, "/practice end")
    assert stage.tap_token(token, message.message_id, chat_id=COACH_CHAT) is Outcome.COMMAND


def test_the_menu_follows_and_wrong_words_are_answered(stage: Stage):
    _coach(stage, "/practice")
    menus = [row.payload["commands"] for row in stage.rows(COACH_CHAT) if row.operation == "menu"]
    assert "today" in {name for name, _ in menus[-1]}
    assert _coach(stage, "/practice please") is Outcome.NOT_UNDERSTOOD
    assert _coach(stage, "/practice") is Outcome.COMMAND
    stage.tap("End and erase it", chat_id=COACH_CHAT)
    menus = [row.payload["commands"] for row in stage.rows(COACH_CHAT) if row.operation == "menu"]
    assert "today" not in {name for name, _ in menus[-1]}
    assert _coach(stage, "/practice end") is Outcome.STALE_TAP


def test_words_of_a_coach_in_practice_go_nowhere_and_say_how_to_write_to_an_athlete(stage: Stage):
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    before = stage.count(COACH_CHAT)
    assert _coach(stage, "hello") is Outcome.PASSED_ON
    (told,) = stage.since(before, COACH_CHAT)
    assert "/tell NAME" in told
    _coach(stage, "/roster")
    assert "hello" not in stage.last(COACH_CHAT)
    assert "unanswered" not in stage.last(COACH_CHAT).lower()


def test_a_coach_who_trains_here_needs_no_practice(stage: Stage):
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, is_coach=True)
    assert stage.write("/practice") is Outcome.COMMAND
    assert "You train here yourself" in stage.last()
    assert not stage.athlete.is_practice


def test_the_stand_in_never_sees_it(stage: Stage):
    other = stage.add_athlete("Otis", chat_id=3000)
    with stage.turn() as turn:
        people.change_person(turn.tx, other.id, is_coach=True)
        people.change_person(turn.tx, stage.coach.id, stand_in_id=other.id)
    _coach(stage, "/practice")
    assert stage.write("/who mara", chat_id=3000) is Outcome.NOT_UNDERSTOOD
    assert stage.write("/who practice", chat_id=3000) is Outcome.NOT_UNDERSTOOD


def test_an_old_button_of_its_clip_reaches_no_clip_of_an_athlete(stage: Stage):
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    send_clip(stage, chat_id=COACH_CHAT)
    (own,) = clips_of(stage)
    message, token = stage.button("Own words", chat_id=COACH_CHAT)
    _coach(stage, "/practice end")
    send_clip(stage)
    (later,) = clips_of(stage)
    assert later.id == own.id  # DERIVED from SQLite's documentation: a free number is given anew
    assert stage.tap_token(token, message.message_id, chat_id=COACH_CHAT) is Outcome.STALE_TAP


def test_a_reply_to_its_clip_reaches_no_athlete(stage: Stage):
    _coach(stage, "/practice")
    stage.go_to(MONDAY, 12, 1)
    send_clip(stage, chat_id=COACH_CHAT)
    with stage.database.transaction() as tx:
        outbox = metadata.tables["outbox"]
        tx.connection().execute(outbox.update().values(state="sent", message_id=outbox.c.id))
    row = next(one for one in reversed(stage.rows(COACH_CHAT)) if "clip:" in (one.subject or ""))
    with stage.turn() as turn:
        assert answer_clip.replied(turn, COACH_CHAT, row.message_id) is not None
    _coach(stage, "/practice end")
    send_clip(stage)
    with stage.turn() as turn:
        assert answer_clip.replied(turn, COACH_CHAT, row.message_id) is None


def test_its_end_brings_no_digest_for_an_hour_before_the_digest_was_moved(stage: Stage):
    stage.go_to(THURSDAY, 12)  # the last digest came on Saturday, 7 March
    _coach(stage, "/hours wednesday 18:00")
    _coach(stage, "/practice")
    _coach(stage, "/practice end")
    digests = [row for row in stage.rows(COACH_CHAT) if row.kind == "digest"]
    stage.go_to(THURSDAY, 13)
    # DERIVED: Wednesday, 11 March, 18:00 is at least four days behind the last, and was over
    assert [row for row in stage.rows(COACH_CHAT) if row.kind == "digest"] == digests
    stage.go_to(THURSDAY, 18)
    assert len([row for row in stage.rows(COACH_CHAT) if row.kind == "digest"]) > len(digests) > 0
