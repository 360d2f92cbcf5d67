"""The whole house beside the loopback platform, with a small team, on a fast clock."""

import asyncio
import os
import sys
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from pathlib import Path
from typing import Any

from sqlmodel import col, select

from bot.app import Holdwell, Wiring
from demo_scenario.loopback.person import Person
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.server import HOST, LoopbackServer
from demo_scenario.trials.ready_team import (
    COACH_CHAT,
    COACH_NAME,
    MONDAY,
    chat_of,
    make_team,
    name_of,
)
from scheduler.calendar.clocks import ScaledClock, strike
from scheduler.calendar.zones import use_packaged_zones
from scheduler.clock import SystemClock
from storage import inbox, outbox
from storage.database import Database
from storage.tables.wire import InboxRow, OutboxRow

TOKEN = "7000000001:a-token-that-opens-nothing"  # noqa: S105  no account has it
ATHLETES = 4  # CHOSEN
RATE = 30.0  # CHOSEN: half a minute a second
BEFORE_SESSIONS = MONDAY + timedelta(hours=6, minutes=59, seconds=50)
HANGS_S = 120.0  # [s] CHOSEN: beyond it something hangs, and says so
LOOK_EVERY_S = 0.05  # CHOSEN: a database tells nobody
SESSION_AT = time(7, 0)  # CHOSEN


@dataclass
class Housed:
    """The running house, its people, and its database."""

    house: Holdwell
    wired: Wiring
    platform: LoopbackPlatform
    coach: Person
    athletes: list[Person]
    database: Database

    async def restart(self) -> None:
        """Stop the house cleanly, and start it anew on the same database."""
        await self.house.stop()
        self.house = Holdwell(self.wired)
        await self.house.start()

    async def rest(self, *, within_s: float = HANGS_S) -> None:
        """Wait until nothing waits to be handled or sent."""
        for _ in range(int(within_s / LOOK_EVERY_S)):
            await asyncio.sleep(LOOK_EVERY_S)
            if self._is_at_rest():
                return
        raise TimeoutError("the house did not come to rest")

    def _is_at_rest(self) -> bool:
        return self.house.is_idle and self.platform.is_quiet and self._is_empty()

    def _is_empty(self) -> bool:
        with self.database.transaction() as tx:
            return inbox.count_waiting(tx) == 0 and outbox.count_unsent(tx) == 0

    def inbox(self) -> list[InboxRow]:
        with self.database.transaction() as tx:
            return list(tx.exec(select(InboxRow).order_by(col(InboxRow.id))))

    def outbox(self, chat_id: int) -> list[OutboxRow]:
        with self.database.transaction() as tx:
            rows = select(OutboxRow).where(OutboxRow.chat_id == chat_id)
            return list(tx.exec(rows.order_by(col(OutboxRow.id))))


@asynccontextmanager
async def housed(folder: Path, **wiring: Any) -> AsyncIterator[Housed]:
    """Run the house a few seconds before everybody's session is due."""
    use_packaged_zones()
    url = f"sqlite:///{folder / 'house.sqlite3'}"
    database = Database(url, is_throwaway=True)
    make_team(database, [SESSION_AT] * ATHLETES, bot_name="holdwell_loopback_bot")
    clock = ScaledClock(
        SystemClock(), real_origin=datetime.now(UTC), origin=BEFORE_SESSIONS, rate=RATE
    )
    platform = LoopbackPlatform(now=clock.now, token=TOKEN, seed=5)
    async with LoopbackServer(platform) as server:
        coach = server.people.add(COACH_CHAT, COACH_NAME)
        athletes = [server.people.add(chat_of(n), name_of(n)) for n in range(ATHLETES)]
        wired = Wiring(
            is_throwaway=True,
            token=TOKEN,
            database_url=url,
            clock=clock,
            api_url=f"http://{HOST}:{server.port}",
            **wiring,
        )
        stage = Housed(Holdwell(wired), wired, platform, coach, athletes, database)
        await stage.house.start()
        ticking = asyncio.create_task(
            strike(clock, every=timedelta(minutes=1), tick=lambda _: stage.house.strike())
        )
        try:
            yield stage
        finally:
            ticking.cancel()
            await stage.house.stop()
            database.close()


def holdwell(*arguments: str) -> list[str]:
    """Return the command line of the real program."""
    return [sys.executable, "-m", "bot.cli", *arguments]


def surroundings(**settings: str) -> dict[str, str]:
    """Return an environment without any setting of the machine's, and with these."""
    kept = {name: value for name, value in os.environ.items() if not name.startswith("HOLDWELL_")}
    return kept | {f"HOLDWELL_{name.upper()}": value for name, value in settings.items()}
