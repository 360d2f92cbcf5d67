"""The crash trial: the house is killed again and again while replies flow, and loses nothing."""

import asyncio
import contextlib
import os
import random
import signal
import sys
from asyncio.subprocess import PIPE, Process
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, time, timedelta
from pathlib import Path

from sqlmodel import col, func, select

from demo_scenario.loopback.faults import Delayed
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.request_log import RequestLog
from demo_scenario.loopback.server import HOST, LoopbackServer
from demo_scenario.trials import checks
from demo_scenario.trials.checks import Check
from demo_scenario.trials.child import ChildPlan
from demo_scenario.trials.ledger import Ledger
from demo_scenario.trials.ready_team import (
    COACH_CHAT,
    COACH_NAME,
    MONDAY,
    chat_of,
    make_team,
    name_of,
)
from demo_scenario.trials.typists import Typist
from scheduler.calendar.zones import use_packaged_zones
from storage import inbox, outbox
from storage.database import Database
from storage.tables.wire import OutboxRow, OutboxState

ORIGIN = MONDAY + timedelta(hours=6, minutes=59)  # ch: a minute before the first session
FIRST_SESSION = ORIGIN + timedelta(minutes=1)
RATE = 60.0  # [simulated s / s] ch: a minute a second, so that ticks fall into every life
LIFE_S = (0.05, 1.0)  # [s] ch: from "not even awake" to "in full flow"
AFTER_REPLY_S = (0.0, 0.15)  # [s] ch: half of the kills fall while a reply is being handled
REPLY_WITHIN_S = 0.3  # [s] ch: then the kill falls without one
WAY_S = 0.04  # [s] ch: a message's answer is on its way so long, as over a real network
SESSIONS_OVER = 1.1  # [1] ch: of the lives alone, so that the last sessions meet the last kills
AT_REST_WITHIN_S = 60.0  # [s] ch
BOT_NAME = "holdwell_loopback_bot"
LOOK_EVERY_S = 0.1  # [s] ch


@dataclass(frozen=True)
class CrashPlan:
    """How hard to try."""

    kills: int = 40
    athletes: int = 20
    seed: int = 1


@dataclass
class CrashReport:
    """What came of it."""

    kills: int = 0
    kills_in_hand: int = 0
    doubtful: int = 0
    real_s: float = 0.0
    checks: list[Check] = field(default_factory=list)
    requests: RequestLog = field(default_factory=RequestLog)

    @property
    def is_kept(self) -> bool:
        """True when nothing was breached."""
        return bool(self.checks) and all(check.is_kept for check in self.checks)


@dataclass
class Trial:
    """One run: the platform and the people here, the house in a process that is killed."""

    plan: CrashPlan
    folder: Path
    say: Callable[[str], None]
    ledger: Ledger = field(default_factory=Ledger)
    report: CrashReport = field(default_factory=CrashReport)

    async def run(self) -> CrashReport:
        """Do everything, and return what was found."""
        use_packaged_zones()
        began = asyncio.get_running_loop().time()
        url = f"sqlite:///{self.folder / 'house.sqlite3'}"
        self.database = Database(url)
        self._chance = random.Random(self.plan.seed)
        make_team(self.database, self._session_times(), bot_name=BOT_NAME)
        child_plan = ChildPlan(
            token="7000000001:trial-token-that-opens-nothing",  # noqa: S106  no account has it
            database_url=url,
            real_origin=datetime.now(UTC),
            origin=ORIGIN,
            rate=RATE,
        )
        clock = child_plan.clock()
        platform = LoopbackPlatform(now=clock.now, token=child_plan.token, bot_name=BOT_NAME)
        async with LoopbackServer(platform) as server:
            address = f"http://{HOST}:{server.port}"
            await self._play(server, child_plan.model_copy(update={"api_url": address}))
        self.report.requests = platform.requests
        self._check()
        self.database.close()
        self.report.real_s = asyncio.get_running_loop().time() - began
        return self.report

    async def _play(self, server: LoopbackServer, child_plan: ChildPlan) -> None:
        typists = self._people(server)
        nursery = await asyncio.create_subprocess_exec(
            sys.executable,
            "-m",
            "demo_scenario.trials.nursery",
            child_plan.model_dump_json(),
            stdin=PIPE,
            stdout=PIPE,
        )
        # Accepted and shown at once, answered later: a kill in between leaves the send in doubt.
        server.platform.faults.add(
            Delayed(delay_s=WAY_S, after=True), times=None, method="sendMessage"
        )
        training = asyncio.gather(*(typist.train() for typist in typists))
        try:
            for number in range(self.plan.kills):
                await self._live_and_die(nursery, server.platform)
                if (number + 1) % 10 == 0:
                    self.say(f"{number + 1} kills, {self.ledger.count} replies so far")
            await _bear(nursery)
            await training
            await self._come_to_rest(server.platform)
        finally:
            training.cancel()
            if nursery.stdin is not None:
                nursery.stdin.close()
            await nursery.wait()

    def _people(self, server: LoopbackServer) -> list[Typist]:
        server.people.add(COACH_CHAT, COACH_NAME)
        return [
            Typist(
                number=number,
                person=server.people.add(chat_of(number), name_of(number)),
                platform=server.platform,
                database=self.database,
                ledger=self.ledger,
                chance=random.Random(f"{self.plan.seed}/{number}"),
            )
            for number in range(self.plan.athletes)
        ]

    def _session_times(self) -> list[time]:
        """Spread the sessions over the trial, at whole minutes."""
        expected_s = self.plan.kills * sum(LIFE_S) / 2
        span_min = max(1.0, SESSIONS_OVER * expected_s * RATE / 60)
        step_min = span_min / self.plan.athletes
        return [
            (FIRST_SESSION + timedelta(minutes=int(number * step_min))).time()
            for number in range(self.plan.athletes)
        ]

    async def _live_and_die(self, nursery: Process, platform: LoopbackPlatform) -> None:
        child = await _bear(nursery)
        await asyncio.sleep(self._chance.uniform(*LIFE_S))
        if self.report.kills % 2:
            await self._next_reply(platform)
            await asyncio.sleep(self._chance.uniform(*AFTER_REPLY_S))
        os.kill(child, signal.SIGKILL)
        self.report.kills += 1
        with self.database.transaction() as tx:
            in_hand = inbox.count_waiting(tx) + outbox.count_unsent(tx)
        self.report.kills_in_hand += in_hand > 0

    async def _next_reply(self, platform: LoopbackPlatform) -> None:
        before = self.ledger.count
        with contextlib.suppress(TimeoutError):
            await platform.until(lambda: self.ledger.count > before, within_s=REPLY_WITHIN_S)

    async def _come_to_rest(self, platform: LoopbackPlatform) -> None:
        for _ in range(int(AT_REST_WITHIN_S / LOOK_EVERY_S)):
            if platform.is_quiet and self._is_nothing_waiting():
                return
            await asyncio.sleep(LOOK_EVERY_S)
        self.say("the house did not come to rest")

    def _is_nothing_waiting(self) -> bool:
        with self.database.transaction() as tx:
            return inbox.count_waiting(tx) == 0 and outbox.count_unsent(tx) == 0

    def _check(self) -> None:
        with self.database.transaction() as tx:
            self.report.checks = [
                checks.stored_once_in_order(tx, self.ledger),
                checks.handled_once(tx),
                checks.recorded_as_typed(tx, self.ledger),
                checks.recorded_as_planned(tx, self.ledger),
                checks.closed_with_effort(tx, self.ledger),
                checks.nobody_gave_up(self.ledger, self.plan.athletes),
                checks.sessions_sent(tx, self.plan.athletes),
                checks.all_sent(tx),
                checks.shown_once(tx, self.report.requests),
            ]
            self.report.doubtful = tx.exec(
                select(func.count())
                .select_from(OutboxRow)
                .where(col(OutboxRow.is_doubtful), OutboxRow.state == OutboxState.SENT)
            ).one()


async def _bear(nursery: Process) -> int:
    if nursery.stdin is None or nursery.stdout is None:  # pragma: no cover - both are pipes
        raise RuntimeError("the nursery has no pipes")
    nursery.stdin.write(b"\n")
    line = await nursery.stdout.readline()
    if not line:
        raise RuntimeError("the nursery has ended: see what it wrote to stderr")
    return int(line)
