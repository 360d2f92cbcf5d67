"""The real program, told to stop: it ends soon, with success, and leaves nothing half done."""

import asyncio
import signal
from collections import Counter
from datetime import UTC, datetime

import pytest

from demo_scenario.loopback.faults import Delayed
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.server import HOST, LoopbackServer
from demo_scenario.trials.ready_team import COACH_CHAT, COACH_NAME, chat_of, make_team, name_of
from storage import inbox, outbox
from storage.database import Database
from tests.wire.housed import SESSION_AT, TOKEN, holdwell, surroundings

HANGS_S = 120.0  # [s] CHOSEN: beyond it something hangs, and says so
PEOPLE = 4  # CHOSEN


@pytest.mark.parametrize("told", [signal.SIGTERM, signal.SIGINT], ids=["SIGTERM", "SIGINT"])
def test_told_to_stop_it_ends_with_success_and_loses_nothing_in_flight(tmp_path, told):
    url = f"sqlite:///{tmp_path / 'house.sqlite3'}"
    database = Database(url)
    make_team(database, [SESSION_AT] * PEOPLE, bot_name="holdwell_loopback_bot")

    async def story():
        platform = LoopbackPlatform(now=lambda: datetime.now(UTC), token=TOKEN)
        async with LoopbackServer(platform) as server:
            settings = surroundings(
                token=TOKEN, database=url, api_url=f"http://{HOST}:{server.port}"
            )
            server.people.add(COACH_CHAT, COACH_NAME)
            athletes = [server.people.add(chat_of(n), name_of(n)) for n in range(PEOPLE)]
            process = await start(settings, tmp_path)
            await platform.until(lambda: platform.is_poll_parked, within_s=HANGS_S)
            platform.faults.add(
                Delayed(delay_s=0.7, after=True), times=None, method="sendMessage"
            )  # CHOSEN: long enough to be told in between
            for athlete in athletes:
                athlete.write("Is chalk fine on the bar?")
            await platform.until(
                lambda: all(one.sees_from_bot() for one in athletes), within_s=HANGS_S
            )
            process.send_signal(told)
            _, logged = await asyncio.wait_for(process.communicate(), timeout=HANGS_S)
            assert process.returncode == 0, logged.decode()
            assert "Traceback" not in logged.decode()
            assert TOKEN not in logged.decode()
            with database.transaction() as tx:
                assert inbox.count_waiting(tx) == 0
                assert outbox.in_flight(tx) == ()
            process = await start(settings, tmp_path)
            await until_sent(database)
            process.send_signal(told)
            await process.communicate()
            for athlete in athletes:
                shown = Counter(message.text for message in athlete.sees_from_bot())
                assert set(shown.values()) == {1}

    asyncio.run(story())
    database.close()


async def start(settings, folder):
    pipe = asyncio.subprocess.PIPE
    return await asyncio.create_subprocess_exec(
        *holdwell("run"), cwd=folder, env=settings, stdout=pipe, stderr=pipe
    )


async def until_sent(database):
    async with asyncio.timeout(HANGS_S):
        while True:
            with database.transaction() as tx:
                if outbox.count_unsent(tx) == 0:
                    return
            await asyncio.sleep(0.1)
