"""Clips reach the coach with their item, wait in a queue, and the answer comes back under them.

All figures CHOSEN, unless said otherwise.
"""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.acts import answer_clip, refused_message
from bot.acts.send_digest import send_digest
from bot.events import Media, SentMedia, Tapped
from bot.outcomes import Outcome
from scheduler.pain.values import Side, Site
from storage import outbox
from storage.queries import care, people, training
from storage.records.wire import Operation
from tests.conversation.athlete_stage import (
    ATHLETE_CHAT,
    COACH_CHAT,
    MONDAY,
    SENT_AS,
    Stage,
)
from tests.conversation.clip_stage import clips_of, send_clip, send_media


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def names(stage: Stage) -> list[str]:
    library = stage.house.library.movements
    return [library[item.movement_key].name for item in stage.session_on(MONDAY).items]


def test_a_clip_after_an_answer_is_of_the_item_answered_last(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    assert send_clip(stage) is Outcome.PASSED_ON
    assert names(stage)[0] in stage.last()
    shown = stage.rows(COACH_CHAT)[-1]
    assert shown.operation == Operation.MEDIA.value
    assert (shown.payload["file_id"], shown.payload["sent_as"]) == ("file-1", "video")
    assert names(stage)[0] in shown.payload["text"]
    assert "3 × 20 s" in shown.payload["text"]


def test_a_clip_with_a_name_is_of_that_item_whatever_was_answered(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    send_clip(stage, f"second set of {names(stage)[1].lower()}")
    (clip,) = clips_of(stage)
    assert clip.movement_key == stage.session_on(MONDAY).items[1].movement_key


def test_the_coach_reads_that_the_item_was_asked_only_where_it_was(stage: Stage) -> None:
    send_clip(stage)
    assert "Item not named; I have asked." in stage.rows(COACH_CHAT)[-1].payload["text"]
    stage.write("/clips", chat_id=COACH_CHAT)
    assert "I have asked" not in stage.rows(COACH_CHAT)[-1].payload["text"]
    send_clip(stage, "chest feels tight")  # beside a sign nothing else is asked
    shown = [row for row in stage.rows(COACH_CHAT) if row.operation == Operation.MEDIA.value]
    assert "Item not named.\n" in shown[-1].payload["text"]


def test_results_under_a_clip_say_which_item_it_is(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    assert send_clip(stage, "2) 20 20 18") is Outcome.RECORDED
    (clip,) = clips_of(stage)
    assert clip.item_id == stage.session_on(MONDAY).items[1].id


def test_before_any_answer_the_athlete_is_asked_which_item_it_is(stage: Stage) -> None:
    send_clip(stage, "how is this?")
    assert "Which item is it?" in stage.last()
    stage.tap(names(stage)[2])
    (clip,) = clips_of(stage)
    assert clip.movement_key == stage.session_on(MONDAY).items[2].movement_key
    assert names(stage)[2] in stage.last()


def test_something_else_is_an_answer_too(stage: Stage) -> None:
    send_clip(stage)
    stage.tap("Something else")
    (clip,) = clips_of(stage)
    assert clip.item_id is None
    assert "Passed on to Mara" in stage.last()


def test_a_wrong_guess_is_changed_by_a_tap(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    send_clip(stage)
    stage.tap("Another item")
    stage.tap(names(stage)[1])
    (clip,) = clips_of(stage)
    assert clip.movement_key == stage.session_on(MONDAY).items[1].movement_key


def test_the_oldest_clip_is_shown_and_a_cue_goes_back_under_it(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    send_clip(stage, "is this right?", message_id=700)
    stage.later(hours=1)
    send_clip(stage, message_id=701)
    stage.later(hours=1)
    stage.write("/clips", chat_id=COACH_CHAT)
    text = stage.last(COACH_CHAT)
    assert "“is this right?”" in text
    # DERIVED: sent at 7:00, looked at at 9:00; two clips
    assert "Sent 2 h ago · 2 waiting" in text
    assert stage.tap("Usual fault", chat_id=COACH_CHAT) is Outcome.PASSED_ON
    movement = stage.house.library.movements[stage.session_on(MONDAY).items[0].movement_key]
    assert movement.common_fault in stage.last()
    assert stage.rows(ATHLETE_CHAT)[-1].payload["reply_to"] == 700
    assert "1 clip is still waiting" in stage.last(COACH_CHAT)
    assert [one.message_id for one in clips_of(stage) if one.answered_at is None] == [701]


def test_every_position_rule_of_the_movement_is_a_cue(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    send_clip(stage)
    movement = stage.house.library.movements[stage.session_on(MONDAY).items[0].movement_key]
    buttons = [label for line in stage.rows(COACH_CHAT)[-1].payload["buttons"] for label, _ in line]
    # DERIVED: looks right, one a rule, usual fault, own words
    assert len(buttons) == len(movement.position_rules) + 3


def test_a_second_tap_sends_nothing_and_a_reply_still_does(stage: Stage) -> None:
    send_clip(stage, message_id=700)
    shown = stage.rows(COACH_CHAT)[-1]
    stage.tap("Looks right", chat_id=COACH_CHAT)
    sent = stage.count()
    assert stage.tap("Looks right", chat_id=COACH_CHAT) is Outcome.STALE_TAP
    assert stage.count() == sent
    _reply(stage, shown.id, "and breathe on")
    assert "and breathe on" in stage.last()
    assert stage.rows(ATHLETE_CHAT)[-1].payload["reply_to"] == 700


def _reply(stage: Stage, row_id: int | None, text: str) -> Outcome:
    _deliver(stage)
    return stage.write(text, chat_id=COACH_CHAT, reply_to_message_id=SENT_AS + (row_id or 0))


def _deliver(stage: Stage) -> None:
    for row in stage.rows():
        with stage.turn() as turn:
            outbox.mark_sent(turn.tx, row.id or 0, at=stage.now, message_id=SENT_AS + (row.id or 0))


def test_own_words_by_reply_go_under_the_clip_and_clear_the_queue(stage: Stage) -> None:
    send_clip(stage, message_id=700)
    assert _reply(stage, stage.rows(COACH_CHAT)[-1].id, "Elbows <b>in</b>.") is Outcome.PASSED_ON
    assert "Elbows &lt;b&gt;in&lt;/b&gt;." in stage.last()
    assert stage.rows(ATHLETE_CHAT)[-1].payload["reply_to"] == 700
    stage.write("/clips", chat_id=COACH_CHAT)
    assert stage.last(COACH_CHAT) == "No clip is waiting for you."


def test_own_words_by_button_are_asked_about_long_after(stage: Stage) -> None:
    send_clip(stage)
    stage.tap("Own words", chat_id=COACH_CHAT)
    stage.later(hours=2)
    assert stage.write("Slower down.", chat_id=COACH_CHAT) is Outcome.ASKED
    assert "Slower down." not in stage.last()
    stage.tap("Yes, to Ines", chat_id=COACH_CHAT)
    assert "Slower down." in stage.last()


def test_the_coach_may_answer_by_a_clip_of_their_own(stage: Stage) -> None:
    send_clip(stage, message_id=700)
    row = stage.rows(COACH_CHAT)[-1].id
    _deliver(stage)
    outcome = stage.handle(
        SentMedia(
            chat_id=COACH_CHAT,
            at=stage.now,
            message_id=900,
            media=Media.VIDEO,
            reply_to_message_id=SENT_AS + (row or 0),
        )
    )
    assert outcome is Outcome.PASSED_ON
    assert stage.rows(ATHLETE_CHAT)[-1].payload == {
        "from_chat_id": COACH_CHAT,
        "message_id": 900,
    }


def test_next_leaves_one_waiting(stage: Stage) -> None:
    send_clip(stage, "first", message_id=700)
    send_clip(stage, "second", message_id=701)
    stage.write("/clips", chat_id=COACH_CHAT)
    stage.tap("Next clip", chat_id=COACH_CHAT)
    assert "“second”" in stage.last(COACH_CHAT)
    assert len([one for one in clips_of(stage) if one.answered_at is None]) == 2


def test_what_waits_is_on_the_roster_and_in_the_digest(stage: Stage) -> None:
    send_clip(stage)
    stage.write("/roster", chat_id=COACH_CHAT)
    assert "Ines · 1 clip" in stage.last(COACH_CHAT)
    with stage.turn() as turn:
        send_digest(turn, stage.coach, MONDAY + timedelta(days=7))
    assert "Clips to answer: /clips" in stage.last(COACH_CHAT)
    assert "Ines: 1 clip" in stage.last(COACH_CHAT)


def test_an_album_is_one_in_the_queue_and_answered_as_one(stage: Stage) -> None:
    for message_id in (700, 701, 702):
        send_clip(stage, message_id=message_id, album_id="a", media=Media.PHOTO)
    asked = [text for text in stage.texts() if "Which item" in text]
    assert len(asked) == 1
    stage.write("/clips", chat_id=COACH_CHAT)
    assert "1 waiting" in stage.last(COACH_CHAT)
    assert len([one for one in stage.rows(COACH_CHAT)[-3:] if one.operation == "media"]) == 3
    stage.tap("Looks right", chat_id=COACH_CHAT)
    assert all(one.answered_at is not None for one in clips_of(stage))


@pytest.mark.parametrize("media", [Media.VOICE, Media.STICKER, Media.VIDEO_NOTE])
def test_what_cannot_be_read_is_passed_on_and_said_so(stage: Stage, media: Media) -> None:
    assert send_media(stage, media) is Outcome.PASSED_ON
    assert "cannot hear or read" in stage.last()
    assert stage.rows(COACH_CHAT)[-1].operation == Operation.COPY.value
    assert clips_of(stage) == ()


def test_a_flag_under_a_clip_is_answered_first_and_nothing_else_is_asked(stage: Stage) -> None:
    assert send_clip(stage, "felt a pop and now i cannot lift the arm") is Outcome.SAFETY
    assert not any("Which item" in text for text in stage.texts())
    assert len(clips_of(stage)) == 1


def test_another_coachs_clip_is_not_answered(stage: Stage) -> None:
    send_clip(stage)
    (clip,) = clips_of(stage)
    with stage.turn() as turn:
        other = people.add_person(
            turn.tx, name="Kit", now=stage.now, chat_id=1001, is_coach=True, zone="Europe/Madrid"
        )
        outcome = answer_clip.cue(turn, other, {"clip": clip.id, "cue": "good"}, _tap(stage))
    assert outcome is Outcome.STALE_TAP
    assert clips_of(stage)[0].answered_at is None
    stage.write("/clips", chat_id=1001)
    assert stage.last(1001) == "No clip is waiting for you."


def _tap(stage: Stage) -> Tapped:
    return Tapped(chat_id=1001, at=stage.now, message_id=None, token="t")  # noqa: S106


def test_the_answer_is_on_record(stage: Stage) -> None:
    send_clip(stage)
    stage.tap("Looks right", chat_id=COACH_CHAT)
    with stage.turn() as turn:
        entry = care.audit_of(turn.tx, stage.person.id, what=("clip.answered",))[0]
    assert (entry.actor_id, entry.after["how"]) == (stage.coach.id, "good")


# asking for clips


def _asks(stage: Stage) -> int:
    return sum("would like a short clip of one set" in text for text in stage.texts())


def test_nothing_is_asked_for_unless_the_coach_switched_it_on(stage: Stage) -> None:
    stage.go_to(MONDAY + timedelta(days=7), 8)
    assert _asks(stage) == 0


def test_one_clip_a_week_is_asked_for_of_a_main_item(stage: Stage) -> None:
    stage.write("/clips ask on ines", chat_id=COACH_CHAT)
    assert "at most once a week" in stage.last()
    stage.go_to(MONDAY + timedelta(days=6), 20)
    assert _asks(stage) == 1
    stage.go_to(MONDAY + timedelta(days=13), 20)
    assert _asks(stage) == 2  # DERIVED: two weeks begun after it was switched on
    stage.write("/clips ask off ines", chat_id=COACH_CHAT)
    stage.go_to(MONDAY + timedelta(days=20), 20)
    assert _asks(stage) == 2


def test_who_sent_a_clip_this_week_is_not_asked(stage: Stage) -> None:
    stage.write("/clips ask on ines", chat_id=COACH_CHAT)
    send_clip(stage)
    stage.go_to(MONDAY + timedelta(days=6), 20)
    assert _asks(stage) == 0


def test_while_something_hurts_no_clip_is_asked_for(stage: Stage) -> None:
    stage.write("/clips ask on ines", chat_id=COACH_CHAT)
    stage.write("left wrist 4/10")
    assert stage.picture().region(Site.WRIST, Side.LEFT) is not None
    stage.go_to(MONDAY + timedelta(days=3), 20)
    assert _asks(stage) == 0


def test_in_a_lighter_week_no_clip_is_asked_for(stage: Stage) -> None:
    stage.write("/clips ask on ines", chat_id=COACH_CHAT)
    with stage.turn() as turn:
        week = training.week(turn.tx, stage.person.id, MONDAY)
        assert week is not None
        training.change_week(turn.tx, week.id, is_lighter=True)
    stage.go_to(MONDAY + timedelta(days=6), 20)
    assert _asks(stage) == 0


def test_a_clip_in_reply_to_the_question_is_of_its_item(stage: Stage) -> None:
    stage.write("/clips ask on ines", chat_id=COACH_CHAT)
    stage.go_to(MONDAY + timedelta(days=2), 8)
    asked = next(row for row in stage.rows(ATHLETE_CHAT) if (row.subject or "").startswith("clip_"))
    _deliver(stage)
    send_clip(stage, reply_to=SENT_AS + (asked.id or 0))
    (clip,) = clips_of(stage)
    assert f"clip_ask:{clip.item_id}" == asked.subject


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("/clips ask", "/clips ask on robin"),
        ("/clips ask maybe ines", "/clips ask on robin"),
        ("/clips ask on", "/clips ask on robin"),
        ("/clips ask on nobody", "nobody"),
        ("/clips nobody", "nobody"),
    ],
)
def test_a_slip_is_answered_with_what_to_send(stage: Stage, text: str, said: str) -> None:
    assert stage.write(text, chat_id=COACH_CHAT) is Outcome.NOT_UNDERSTOOD
    assert said in stage.last(COACH_CHAT)


def test_switching_it_twice_changes_nothing(stage: Stage) -> None:
    assert stage.write("/clips ask off ines", chat_id=COACH_CHAT) is Outcome.NOT_UNDERSTOOD
    assert stage.last(COACH_CHAT) == "I do not ask Ines for clips."


def test_a_clip_that_the_platform_no_longer_gives_is_still_told_of(stage: Stage) -> None:
    send_clip(stage, "is this right?")
    row = stage.rows(COACH_CHAT)[-1]
    with stage.turn() as turn:
        claimed = outbox.claim_due(turn.tx, now=stage.now, most=50)
        shown = [one for one in claimed if one.chat_id == COACH_CHAT]
        while not any(one.id == row.id for one in shown):
            for one in claimed:
                outbox.mark_sent(turn.tx, one.id, at=stage.now, message_id=one.id)
            claimed = outbox.claim_due(turn.tx, now=stage.now, most=50)
            shown = [one for one in claimed if one.chat_id == COACH_CHAT]
        refused_message.refused(turn, next(one for one in shown if one.id == row.id))
    last = stage.rows(COACH_CHAT)[-1]
    assert last.operation == Operation.SEND.value
    assert "“is this right?”" in last.payload["text"]
    assert "can no longer be shown" in last.payload["text"]
    assert last.payload["buttons"] == row.payload["buttons"]
