"""A coach's own picture or clip goes with a movement's how-to, kept by reference alone."""

from itertools import count
from pathlib import Path
from typing import Any

import pytest

from bot.acts import how_to
from bot.events import Media, SentMedia
from bot.outcomes import Outcome
from storage.queries import people
from storage.records.wire import Operation
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, Stage

HOLD = "wall_hinge_hold"
_IDS = count(30_000)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def send(
    stage: Stage,
    caption: str,
    *,
    file_id: str = "file-1",
    media: Media = Media.VIDEO,
    is_forwarded: bool = False,
) -> Outcome:
    return stage.handle(
        SentMedia(
            chat_id=COACH_CHAT,
            at=stage.now,
            message_id=next(_IDS),
            media=media,
            caption=caption,
            file_id=file_id,
            sent_as=media.value,
            is_forwarded=is_forwarded,
        )
    )


def shown_to_athlete(stage: Stage, key: str = HOLD) -> tuple[str, dict[str, Any]]:
    with stage.turn() as turn:
        how_to.show(turn, stage.person, key)
    row = stage.rows(ATHLETE_CHAT)[-1]
    return row.operation, dict(row.payload)


def test_without_a_medium_the_how_to_is_text_with_the_usual_fault(stage: Stage) -> None:
    operation, payload = shown_to_athlete(stage)
    movement = stage.house.library.movements[HOLD]
    assert operation == Operation.SEND.value
    assert payload["text"] == (
        f"<b>{movement.name}</b>\n{movement.how_to}\nOften seen: {movement.common_fault}"
    )


def test_a_clip_with_the_command_goes_with_the_how_to(stage: Stage) -> None:
    assert send(stage, "/howto wall reach hold") is Outcome.COMMAND
    operation, payload = shown_to_athlete(stage)
    assert operation == Operation.MEDIA.value
    assert (payload["file_id"], payload["sent_as"]) == ("file-1", "video")
    assert stage.house.library.movements[HOLD].how_to in payload["text"]
    assert "buttons" not in payload


def test_a_picture_is_kept_by_answering_it(stage: Stage) -> None:
    outcome = stage.write(
        "/howto wall reach hold",
        chat_id=COACH_CHAT,
        reply_to_message_id=5,
        reply_to_file_id="file-9",
        reply_to_sent_as="photo",
    )
    assert outcome is Outcome.COMMAND
    assert shown_to_athlete(stage)[1]["file_id"] == "file-9"


def test_a_later_one_replaces_and_one_can_be_taken_away(stage: Stage) -> None:
    send(stage, "/howto wall reach hold")
    send(stage, "/howto wall reach hold", file_id="file-2", media=Media.PHOTO)
    assert "in place of the one before" in stage.last(COACH_CHAT)
    assert shown_to_athlete(stage)[1]["file_id"] == "file-2"
    stage.tap("Take it away", chat_id=COACH_CHAT)
    assert shown_to_athlete(stage)[0] == Operation.SEND.value
    assert stage.tap("Take it away", chat_id=COACH_CHAT) is Outcome.STALE_TAP


def test_the_list_shows_what_is_kept_and_each_as_the_athletes_see_it(stage: Stage) -> None:
    stage.write("/howto", chat_id=COACH_CHAT)
    assert "no picture or clip of your own yet" in stage.last(COACH_CHAT)
    send(stage, "/howto wall reach hold")
    stage.write("/howto", chat_id=COACH_CHAT)
    stage.tap(stage.house.library.movements[HOLD].name, chat_id=COACH_CHAT)
    assert stage.rows(COACH_CHAT)[-1].payload["file_id"] == "file-1"


def test_several_of_a_name_are_asked_about_and_none_is_said(stage: Stage) -> None:
    assert send(stage, "/howto wall") is Outcome.ASKED
    stage.tap(stage.house.library.movements[HOLD].name, chat_id=COACH_CHAT)
    assert shown_to_athlete(stage)[1]["file_id"] == "file-1"
    assert send(stage, "/howto moonwalk") is Outcome.NOT_UNDERSTOOD
    assert "“moonwalk”" in stage.last(COACH_CHAT)
    assert send(stage, "/howto") is Outcome.NOT_UNDERSTOOD
    assert "/howto wall reach hold" in stage.last(COACH_CHAT)


@pytest.mark.parametrize("media", [Media.VOICE, Media.DOCUMENT])
def test_only_a_picture_or_clip_is_kept(stage: Stage, media: Media) -> None:
    assert send(stage, "/howto wall reach hold", media=media) is Outcome.NOT_UNDERSTOOD
    assert shown_to_athlete(stage)[0] == Operation.SEND.value


def test_a_forwarded_clip_is_not_kept(stage: Stage) -> None:
    assert send(stage, "/howto wall reach hold", is_forwarded=True) is Outcome.NOT_UNDERSTOOD
    assert shown_to_athlete(stage)[0] == Operation.SEND.value


def test_another_coachs_athletes_see_their_own_coachs(stage: Stage) -> None:
    with stage.turn() as turn:
        people.add_person(
            turn.tx, name="Kit", now=stage.now, chat_id=1001, is_coach=True, zone="Europe/Madrid"
        )
    stage.handle(
        SentMedia(
            chat_id=1001,
            at=stage.now,
            message_id=1,
            media=Media.VIDEO,
            caption="/howto wall reach hold",
            file_id="kits",
            sent_as="video",
        )
    )
    assert shown_to_athlete(stage)[0] == Operation.SEND.value


def test_a_movement_that_is_gone_is_said_so(stage: Stage) -> None:
    assert "no longer in use" in shown_to_athlete(stage, "moonwalk")[1]["text"]


def test_an_athletes_picture_with_the_command_is_a_picture(stage: Stage) -> None:
    stage.send_clip("/howto wall reach hold")
    assert "Passed on to Mara" in stage.last()
    assert shown_to_athlete(stage)[0] == Operation.SEND.value
