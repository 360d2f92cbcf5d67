"""The two bots that are measured, each in a process of its own.

Run as ``python -m demo_scenario.benchmarks.bots echo|house PLAN``. A bot says ``ready`` on stdout
once it polls, and at SIGTERM the house says how long each reply took from the inbox to its commit.
"""

import asyncio
import json
import logging
import os
import signal
import sys
from collections.abc import Callable, Sequence
from datetime import datetime, timedelta
from typing import Any

from pydantic import BaseModel, ConfigDict
from telegram import Update
from telegram.ext import Application, ApplicationBuilder, ContextTypes, MessageHandler, filters

from bot.app import Holdwell, Wiring
from scheduler.calendar.clocks import ScaledClock, strike
from scheduler.calendar.zones import use_packaged_zones
from scheduler.clock import SystemClock
from storage.records.wire import Received

MINUTE = timedelta(minutes=1)  # [min] ch: as the real bot's ticks


class BotPlan(BaseModel):
    """What a bot of a benchmark needs to know. The clock runs as fast as the machine's own."""

    model_config = ConfigDict(frozen=True)

    token: str
    api_url: str
    database_url: str
    real_origin: datetime
    origin: datetime
    is_paced: bool
    profile_to: str | None = None

    def clock(self) -> ScaledClock:
        """Return the clock of the run."""
        return ScaledClock(
            SystemClock(), real_origin=self.real_origin, origin=self.origin, rate=1.0
        )


def run_echo(plan: BotPlan) -> None:
    """Be a bare bot of the same library: it answers each text with itself and stores nothing."""

    async def echo(update: Update, _context: ContextTypes.DEFAULT_TYPE) -> None:
        if update.message is not None and update.message.text is not None:
            await update.message.reply_text(update.message.text)

    async def say_ready(_application: object) -> None:
        print("ready", flush=True)

    application: Application = (  # type: ignore[type-arg]  # its six parameters say nothing here
        ApplicationBuilder()
        .token(plan.token)
        .base_url(f"{plan.api_url}/bot")
        .base_file_url(f"{plan.api_url}/file/bot")
        .post_init(say_ready)
        .build()
    )
    application.add_handler(MessageHandler(filters.TEXT, echo))
    application.run_polling(timeout=20)


async def run_house(plan: BotPlan, at_end: Callable[[], Any] | None = None) -> None:
    """Be Holdwell, with a stopwatch at each reply.

    ``at_end`` is asked before the house stops, and what it answers is said beside the times.
    """
    clock = plan.clock()
    house = Holdwell(
        Wiring(
            token=plan.token,
            database_url=plan.database_url,
            clock=clock,
            api_url=plan.api_url,
            is_paced=plan.is_paced,
        )
    )
    took_ms: list[tuple[int, float]] = []

    def timed(group: Sequence[Received]) -> None:
        now = clock.now()
        took_ms.extend((one.id, (now - one.received_at) / MINUTE * 60_000) for one in group)

    house.writer.on_committed = timed
    stopped = asyncio.Event()
    asyncio.get_running_loop().add_signal_handler(signal.SIGTERM, stopped.set)
    await house.start()
    ticking = asyncio.create_task(strike(clock, every=MINUTE, tick=lambda _: house.strike()))
    print("ready", flush=True)
    await stopped.wait()
    ticking.cancel()
    found = at_end() if at_end is not None else None
    await house.stop()
    said = took_ms if at_end is None else {"took_ms": took_ms, "at_end": found}
    print(json.dumps(said), flush=True)


def main() -> None:
    """Be one of the two."""
    logging.basicConfig(level=logging.ERROR, stream=sys.stderr)
    use_packaged_zones()
    os.environ.setdefault("PTB_TIMEDELTA", "true")
    plan = BotPlan.model_validate_json(sys.argv[2])
    if sys.argv[1] == "echo":
        run_echo(plan)
    elif plan.profile_to is None:
        asyncio.run(run_house(plan))
    else:
        import cProfile  # noqa: PLC0415  only when asked for

        with cProfile.Profile() as profile:
            asyncio.run(run_house(plan))
        profile.dump_stats(plan.profile_to)


if __name__ == "__main__":
    main()
