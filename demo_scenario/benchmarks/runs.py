"""The measures: the house beside a bare echo bot, over a slow network, and in a rush."""

import asyncio
import contextlib
import json
import sys
import time
from asyncio.subprocess import PIPE, Process
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from datetime import time as wall_time
from pathlib import Path
from random import Random

from sqlmodel import col, select

from bot.acts import send_session
from bot.turn import Turn
from demo_scenario.benchmarks.bots import BotPlan
from demo_scenario.benchmarks.crowd import PATIENCE_S, Crowd
from demo_scenario.benchmarks.report import Line, percentile
from demo_scenario.loopback.faults import Delayed
from demo_scenario.loopback.limits import RateLimits
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.server import HOST, LoopbackServer
from demo_scenario.trials.ready_team import (
    COACH_CHAT,
    COACH_NAME,
    MONDAY,
    chat_of,
    house,
    make_team,
    name_of,
)
from demo_scenario.trials.typed_results import typed_results
from scheduler.calendar.zones import use_packaged_zones
from scheduler.catalogue.library import default_library
from storage import inbox
from storage.database import Database
from storage.queries import people, training
from storage.tables.wire import InboxRow

ATHLETES = 60  # [athletes] ch: the team that the goals speak of
SESSION_AT = wall_time(7, 0)
ORIGIN = MONDAY + timedelta(hours=8)  # ch: an hour after the sessions
BOT_NAME = "holdwell_loopback_bot"
TOKEN = "7000000001:bench-token-that-opens-nothing"  # noqa: S105  no account has it
READY_WITHIN_S = 60.0  # [s] ch
WARM_UP = 120  # [messages] ch: two of each athlete, not counted
AT_ONCE = 900  # [messages] ch
HALF = 0.5  # [1] ch: the least part of the bare bot's throughput
ROUND_TRIP_S = 0.08  # [s] ch: a phone network's way there and back
SUSTAINED_PER_S, SUSTAINED_S = 30.0, 30  # botapi: about 30 a second; ch: for half a minute
SUSTAINED_PART = 0.98  # [1] ch: the last messages' way and the beginning take the rest
RUSH_PER_S, RUSH_S = 200.0, 10  # ch
RUSH_P99_MS = 100.0  # [ms] ch


@dataclass
class Stage:
    """One bot beside its platform and its crowd."""

    crowd: Crowd
    process: Process
    database: Database
    open_sends: int

    async def stop(self) -> bytes:
        """End the bot and return what it said."""
        with contextlib.suppress(ProcessLookupError):
            self.process.terminate()
        said, _ = await self.process.communicate()
        return said


@asynccontextmanager
async def staged(
    kind: str,
    folder: Path,
    *,
    is_paced: bool = False,
    profile_to: str | None = None,
    module: str = "demo_scenario.benchmarks.bots",
    prepare: Callable[[Database], None] | None = None,
) -> AsyncIterator[Stage]:
    """Start a platform, a team with an open session each, and one of the two bots.

    ``prepare`` may change the team before its sessions are sent.
    """
    use_packaged_zones()
    database = Database(f"sqlite:///{folder / f'{kind}-{time.time_ns()}.sqlite3'}")
    texts = _open_sessions(database, prepare)
    plan = BotPlan(
        token=TOKEN,
        api_url="",
        database_url=str(database.engine.url),
        real_origin=datetime.now(UTC),
        origin=ORIGIN,
        is_paced=is_paced,
        profile_to=profile_to,
    )
    platform = LoopbackPlatform(
        now=plan.clock().now, token=TOKEN, limits=RateLimits(are_on=is_paced)
    )
    async with LoopbackServer(platform) as server:
        crowd = Crowd(
            platform,
            [server.people.add(chat_of(number), name_of(number)) for number in range(ATHLETES)],
            texts,
        )
        server.people.add(COACH_CHAT, COACH_NAME)
        plan = plan.model_copy(update={"api_url": f"http://{HOST}:{server.port}"})
        process = await asyncio.create_subprocess_exec(
            sys.executable,
            "-m",
            module,
            kind,
            plan.model_dump_json(),
            stdin=PIPE,
            stdout=PIPE,
        )
        if process.stdout is None:  # pragma: no cover - it is a pipe
            raise RuntimeError("the bot has no pipe")
        await asyncio.wait_for(process.stdout.readline(), READY_WITHIN_S)
        stage = Stage(crowd, process, database, ATHLETES if kind == "house" else 0)
        try:
            await crowd.until_sent(stage.open_sends)
            yield stage
        finally:
            if process.returncode is None:
                await stage.stop()
            database.close()


def _open_sessions(
    database: Database, prepare: Callable[[Database], None] | None = None
) -> list[list[str]]:
    """Make the team, send everybody today's session, and return what each will type."""
    make_team(database, [SESSION_AT] * ATHLETES, bot_name=BOT_NAME)
    if prepare is not None:
        prepare(database)
    library, inside, texts = default_library(), house(BOT_NAME), []
    for number in range(ATHLETES):
        with database.transaction() as tx:
            turn = Turn(tx=tx, now=ORIGIN - timedelta(hours=1), house=inside)
            person = people.person_in_chat(tx, chat_of(number))
            athlete = people.athlete(tx, person.id) if person else None
            if person is None or athlete is None:  # pragma: no cover - made just above
                raise LookupError(f"athlete {number} is not there")
            (planned,) = training.sessions_between(
                tx, person.id, first=MONDAY.date(), last=MONDAY.date()
            )
            send_session.send(turn, person, athlete, planned.id, useful_until=None)
            session = training.session(tx, planned.id)
            texts.append([line.text for line in typed_results(session, library, Random(number))])
    return texts


async def messages_per_s(
    kind: str, folder: Path, *, count: int = AT_ONCE, profile_to: str | None = None
) -> float:
    """Measure how many waiting messages a second a bot answers, without limits or delay."""
    async with staged(kind, folder, profile_to=profile_to) as stage:
        stage.crowd.write_all(WARM_UP)
        await stage.crowd.until_sent(stage.open_sends + WARM_UP)
        began_s = time.perf_counter()
        stage.crowd.write_all(count)
        await stage.crowd.until_sent(stage.open_sends + WARM_UP + count)
        return count / (time.perf_counter() - began_s)


async def sustained_per_s(folder: Path) -> float:
    """Measure the rate that holds over a slow network, with the limits of both sides kept."""
    count = int(SUSTAINED_PER_S * SUSTAINED_S)
    async with staged("house", folder, is_paced=True) as stage:
        half = ROUND_TRIP_S / 2
        stage.crowd.platform.faults.add(Delayed(delay_s=half), times=None)
        stage.crowd.platform.faults.add(Delayed(delay_s=half, after=True), times=None)
        began_s = time.perf_counter()
        await stage.crowd.write_at(SUSTAINED_PER_S, count)
        await stage.crowd.until_sent(stage.open_sends + count)
        return count / (time.perf_counter() - began_s)


@dataclass(frozen=True)
class Rush:
    """What came of a rush: milliseconds from the inbox to the commit, and whether order held."""

    took_ms: tuple[float, ...]
    is_in_order: bool


async def rush(folder: Path, *, per_s: float = RUSH_PER_S, rush_s: float = RUSH_S) -> Rush:
    """Let so many replies a second arrive for so long, with the limits of both sides kept."""
    count = int(per_s * rush_s)
    async with staged("house", folder, is_paced=True) as stage:
        stage.crowd.write_all(WARM_UP)
        await stage.crowd.until_sent(stage.open_sends + WARM_UP)
        await stage.crowd.write_at(per_s, count)
        await _until_handled(stage.database, WARM_UP + count)
        handled = json.loads(await stage.stop())
        stored = _stored_texts(stage.database)
    written = [text for _, text in stage.crowd.in_turns(count)]
    ids = [inbox_id for inbox_id, _ in handled]
    took_ms = tuple(ms for _, ms in handled[-count:])
    return Rush(took_ms, is_in_order=ids == sorted(ids) and stored[-count:] == written)


async def _until_handled(database: Database, count: int) -> None:
    for _ in range(int(PATIENCE_S)):
        with database.transaction() as tx:
            if sum(inbox.outcomes(tx).values()) >= count:
                return
        await asyncio.sleep(1.0)


def _stored_texts(database: Database) -> list[str]:
    with database.transaction() as tx:
        rows = tx.exec(select(InboxRow.raw).order_by(col(InboxRow.id)))
        return [json.loads(raw or "{}")["message"]["text"] for raw in rows]


async def all_lines(folder: Path, say: Callable[[str], None]) -> list[Line]:
    """Run everything, one after the other."""
    say("a bare echo bot …")
    bare = await messages_per_s("echo", folder)
    say("the house …")
    full = await messages_per_s("house", folder)
    say(f"the house over {ROUND_TRIP_S * 1000:.0f} ms …")
    sustained = await sustained_per_s(folder)
    say("a rush …")
    rushed = await rush(folder)
    p50, p99 = percentile(rushed.took_ms, 50), percentile(rushed.took_ms, 99)
    return [
        Line("bare echo bot, stores nothing, messages/s", "", f"{bare:.0f}"),
        Line(
            "Holdwell, all stored, messages/s",
            f"{bare * HALF:.0f} (half)",
            f"{full:.0f}",
            full >= bare * HALF,
        ),
        Line(
            f"sustained for {SUSTAINED_S} s at 80 ms, limits kept, messages/s",
            f"{SUSTAINED_PER_S:.0f}",
            f"{sustained:.1f}",
            sustained >= SUSTAINED_PER_S * SUSTAINED_PART,
        ),
        Line(
            f"{RUSH_PER_S:.0f} replies/s for {RUSH_S} s, handled in order",
            "yes",
            "yes" if rushed.is_in_order else "no",
            rushed.is_in_order,
        ),
        Line("  inbox to commit, median", "", f"{p50:.0f} ms"),
        Line("  inbox to commit, p99", f"{RUSH_P99_MS:.0f} ms", f"{p99:.0f} ms", p99 < RUSH_P99_MS),
    ]
