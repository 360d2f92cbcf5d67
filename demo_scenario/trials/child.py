"""The process that is killed: the real house, on a clock that goes on over its restarts."""

import asyncio
import logging
import sys
from datetime import datetime, timedelta

from pydantic import BaseModel, ConfigDict

from bot.app import Holdwell, Wiring
from scheduler.calendar.clocks import ScaledClock, strike
from scheduler.clock import SystemClock

MINUTE = timedelta(minutes=1)  # [min] ch: as the real bot's ticks


class ChildPlan(BaseModel):
    """Everything that one life of the house needs to know; the same for every life."""

    model_config = ConfigDict(frozen=True)

    token: str
    api_url: str | None = None
    database_url: str
    real_origin: datetime
    origin: datetime
    rate: float
    poll_s: int = 20

    def clock(self) -> ScaledClock:
        """Return the clock, which reads the same in every process."""
        return ScaledClock(
            SystemClock(), real_origin=self.real_origin, origin=self.origin, rate=self.rate
        )


async def live(plan: ChildPlan) -> None:
    """Run the house until the process is killed."""
    clock = plan.clock()
    house = Holdwell(
        Wiring(
            token=plan.token,
            database_url=plan.database_url,
            clock=clock,
            api_url=plan.api_url,
            poll_s=plan.poll_s,
        )
    )
    await house.start()
    ticking = asyncio.create_task(strike(clock, every=MINUTE, tick=lambda _: house.strike()))
    try:
        await house.wait()
    finally:
        ticking.cancel()


def run_child(plan: ChildPlan) -> None:
    """Be the process; faults of ours are logged to stderr, where the trial counts them."""
    logging.basicConfig(level=logging.ERROR, stream=sys.stderr, format="%(levelname)s %(message)s")
    asyncio.run(live(plan))
