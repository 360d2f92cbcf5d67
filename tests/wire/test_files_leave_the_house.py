"""The running house: files are made when they leave, leaving empties the chat, copies are made."""

import asyncio
import csv
import io
import json
import re
import zipfile
from contextlib import asynccontextmanager
from pathlib import Path

from demo_scenario.loopback.interface_check import problems_of_all
from demo_scenario.trials.ready_team import name_of
from storage import backup
from storage.erasure_list import list_beside, read_list
from storage.queries import leaving
from storage.tables.wire import OutboxState
from tests.wire.housed import Housed, housed

WITHIN_S = 120.0  # [s] CHOSEN: beyond it something hangs, and says so
NAME = name_of(0).encode()


def button(person, label: str) -> tuple[int, str]:
    for message in reversed(person.sees_from_bot()):
        for row in message.buttons:
            for one in row:
                if label in one.text:
                    return message.message_id, one.data
    raise AssertionError(label)


def files(person) -> list[str]:
    return [one.file_name for one in person.sees_from_bot() if one.file_name]


async def taken(stage: Housed, person, label: str, *, count: int) -> list[bytes]:
    person.write("/export")
    await stage.platform.until(
        lambda: any(label in str(one.buttons) for one in person.sees_from_bot()), within_s=WITHIN_S
    )
    person.tap(*button(person, label))
    await stage.platform.until(lambda: len(files(person)) >= count, within_s=WITHIN_S)
    names = files(person)[-count:]
    stored = {one.file_name: one.content for one in stage.platform.files._by_id.values()}
    return [stored[name] for name in names]


def test_an_athletes_files_arrive_whole(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            athlete = stage.athletes[0]
            (archive,) = await taken(stage, athlete, "All in one archive", count=1)
            opened = zipfile.ZipFile(io.BytesIO(archive))
            assert opened.testzip() is None
            data = json.loads(opened.read("data.json"))
            assert data["athlete"]["name"] == name_of(0)
            results = opened.read("results.csv").decode("utf-8-sig")
            assert next(csv.reader(io.StringIO(results)))[0] == "date"
            await stage.rest()
            states = {row.state for row in stage.outbox(athlete.chat_id)}
            assert states == {OutboxState.SENT}
            assert problems_of_all(stage.platform.requests) == ()

    asyncio.run(story())


@asynccontextmanager
async def left(tmp_path: Path):
    """A house whose first athlete has just left, some rounds ago."""
    async with housed(tmp_path) as stage:
        athlete = stage.athletes[0]
        athlete.write("/leave")
        await stage.platform.until(
            lambda: any("erase everything" in str(one.buttons) for one in athlete.sees_from_bot()),
            within_s=WITHIN_S,
        )
        athlete.tap(*button(athlete, "Yes, erase everything"))
        for _ in range(int(10 * WITHIN_S)):
            await asyncio.sleep(0.1)
            with stage.database.transaction() as tx:
                known = leaving.erasures(tx)
            if known and known[0].swept_at is not None and stage.house.keeper.is_idle:
                break
        yield stage, athlete


def test_who_leaves_is_told_and_then_nothing_of_them_is_in_the_files(tmp_path):
    async def story():
        async with left(tmp_path) as (stage, athlete):
            assert athlete.sees_from_bot()[-1].text.startswith("Everything about you is erased now")
            assert any("left." in one.text for one in stage.coach.sees_from_bot())
            assert stage.outbox(athlete.chat_id) == []
            file = tmp_path / "house.sqlite3"
            # A number of a chat, and no part of an instant or of a longer number.
            chat = re.compile(rb"(?<!\d)%d(?!\d)" % athlete.chat_id)
            for _ in range(10 * int(WITHIN_S)):
                await asyncio.sleep(0.1)
                held = {one.name: one.read_bytes() for one in tmp_path.glob("house.sqlite3*")}
                kept = [name for name, all_ in held.items() if NAME in all_ or chat.search(all_)]
                if not kept:
                    break
            assert kept == []
            (known,) = read_list(list_beside(file))
            assert known.is_whole
            backup.back_up(file, tmp_path / "copy.sqlite3")  # the house runs on

    asyncio.run(story())
