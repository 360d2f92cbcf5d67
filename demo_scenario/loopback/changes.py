"""Waiting for the platform to get somewhere: every change wakes those who wait for a condition."""

import asyncio
from collections.abc import Callable
from dataclasses import dataclass, field


@dataclass(slots=True)
class Changes:
    """Told of each change; costs nothing while nobody waits."""

    _waiting: list[asyncio.Future[None]] = field(default_factory=list)

    def tell(self) -> None:
        """Wake everyone who waits, to look again."""
        if not self._waiting:
            return
        waiting, self._waiting = self._waiting, []
        for future in waiting:
            if not future.done():
                future.set_result(None)

    async def until(self, is_reached: Callable[[], bool], *, within_s: float) -> None:
        """Return as soon as ``is_reached()``.

        Raises:
            TimeoutError: when that has not come within ``within_s`` real seconds.

        """
        async with asyncio.timeout(within_s):
            while not is_reached():
                future: asyncio.Future[None] = asyncio.get_running_loop().create_future()
                self._waiting.append(future)
                await future
