"""A coach's file, from the tap in their app to the links: announced, fetched, stored, read once.

The interface is the published one (botapi: getFile, and the file's own address); all calls are
held against an independent library's picture of it.
"""

import asyncio

import pytest
from sqlmodel import col, update

from demo_scenario.loopback.faults import FloodWait, GatewayFailure
from demo_scenario.loopback.interface_check import problems_of_all
from storage.tables.wire import InboxState, OutboxRow, OutboxState
from tests.wire.housed import Housed, housed

TEAM = "name;stage;Push-up hold\r\nRobin Field;2;45,5\r\nAlex Moor;9;\r\n".encode("utf-8-sig")
WITHIN_S = 120.0  # [s] CHOSEN: beyond it something hangs, and says so


async def until_said(stage: Housed, words: str) -> str:
    """Wait until the coach sees a message with these words, and return its text."""

    def said() -> list[str]:
        return [one.text for one in stage.coach.sees_from_bot() if words in one.text]

    await stage.platform.until(lambda: bool(said()), within_s=WITHIN_S)
    return said()[-1]


def calls(stage: Housed, method: str) -> int:
    return sum(one.method == method for one in stage.platform.requests)


def test_a_file_becomes_a_preview_and_a_tap_becomes_links(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            stage.coach.send_document("team.csv", TEAM)
            preview = await until_said(stage, "1 athlete to invite")
            assert "Robin Field · stage 2 · Push-up hold 46 s" in preview
            assert "line 3: stage “9”, expected 1 to 5." in preview
            message = next(one for one in stage.coach.sees_from_bot() if one.text == preview)
            stage.coach.tap(message.message_id, message.data_of("Invite 1"))
            links = await until_said(stage, "personal link")
            assert "Robin Field: https://t.me/" in links
            await stage.rest()
            assert calls(stage, "getFile") == 1
            assert {row.state for row in stage.inbox()} == {InboxState.HANDLED}
            assert problems_of_all(stage.platform.requests) == ()

    asyncio.run(story())


def test_a_failing_platform_delays_the_file_and_it_is_read_once(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            for fault in (GatewayFailure(status=502), FloodWait(retry_after_s=2)):
                stage.platform.faults.add(fault, method="getFile")
            stage.coach.send_document("team.csv", TEAM)
            await until_said(stage, "1 athlete to invite")
            await stage.rest()
            assert calls(stage, "getFile") == 3
            said = [one.text for one in stage.coach.sees_from_bot()]
            assert sum("1 athlete to invite" in text for text in said) == 1

    asyncio.run(story())


@pytest.mark.parametrize(
    ("name", "content", "words"),
    [
        ("team.pdf", b"%PDF-1.4", "I cannot use the file “team.pdf”"),
        ("team.csv", b"x" * 200_001, "too big"),
        ("team.csv", b"\x89PNG\r\n\x1a\n\x00", "no table of text"),
        ("push.yaml", b"movements: []", "I do not know what push.yaml is for"),
    ],
)
def test_what_cannot_be_read_is_answered_clearly(tmp_path, name, content, words):
    async def story():
        async with housed(tmp_path) as stage:
            stage.coach.send_document(name, content)
            await until_said(stage, words)
            await stage.rest()
            assert {row.state for row in stage.inbox()} == {InboxState.HANDLED}

    asyncio.run(story())


def test_a_file_that_was_fetched_twice_around_a_crash_is_read_once(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            stage.coach.send_document("team.csv", TEAM)
            await until_said(stage, "1 athlete to invite")
            await stage.rest()
            # As a kill between the fetch and its mark leaves it: still to be done.
            with stage.database.transaction() as tx:
                tx.exec(
                    update(OutboxRow)
                    .where(col(OutboxRow.operation) == "fetch")
                    .values(state=OutboxState.WAITING)
                )
            stage.house.sender.wake()
            await stage.platform.until(lambda: calls(stage, "getFile") == 2, within_s=WITHIN_S)
            await stage.rest()
            said = [one.text for one in stage.coach.sees_from_bot()]
            assert sum("1 athlete to invite" in text for text in said) == 1
            assert len(stage.inbox()) == 2

    asyncio.run(story())


def test_a_file_on_its_way_when_the_house_stops_is_fetched_after_the_restart(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            stage.platform.faults.add(GatewayFailure(status=502), times=None, method="getFile")
            stage.coach.send_document("team.csv", TEAM)
            await stage.platform.until(lambda: calls(stage, "getFile") >= 1, within_s=WITHIN_S)
            await stage.restart()
            stage.platform.faults.lift()
            await until_said(stage, "1 athlete to invite")
            await stage.rest()
            said = [one.text for one in stage.coach.sees_from_bot()]
            assert sum("1 athlete to invite" in text for text in said) == 1

    asyncio.run(story())


def test_a_file_that_is_gone_is_asked_for_again_in_words(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            stage.platform.faults.add(GatewayFailure(status=502), times=None, method="getFile")
            stage.coach.send_document("team.csv", TEAM)
            await stage.platform.until(lambda: calls(stage, "getFile") >= 6, within_s=WITHIN_S)
            await until_said(stage, "Please send it once more")
            assert calls(stage, "getFile") == 6

    asyncio.run(story())


def test_a_coachs_voice_note_as_a_reply_goes_to_the_athlete_it_is_about(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            athlete = stage.athletes[0]
            await stage.platform.until(lambda: len(athlete.sees_from_bot()) > 0, within_s=WITHIN_S)
            athlete.write("Can I swap days next week?")
            await until_said(stage, "swap days")
            asked = next(one for one in stage.coach.sees_from_bot() if "swap days" in one.text)
            stage.coach.send_video("like this", reply_to_message_id=asked.message_id)
            await until_said(stage, "1 waiting message is answered")
            await stage.rest()
            seen = athlete.sees_from_bot()
            assert any("sends you a clip" in one.text for one in seen)
            assert seen[-1].text == "like this"
            assert problems_of_all(stage.platform.requests) == ()

    asyncio.run(story())
