"""getUpdates: confirm, fetch, or wait until something arrives; one poll at a time."""

import asyncio
from dataclasses import dataclass
from typing import Any

from demo_scenario.loopback.changes import Changes
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.refusals import bad_request, second_poller
from demo_scenario.loopback.updates import LIMIT_MAX, UpdateQueue

TIMEOUT_MAX_S = 50  # [s] from memory: a longer poll is cut to this


@dataclass(slots=True)
class PollDesk:
    """Where the bot's poll waits."""

    queue: UpdateQueue
    changes: Changes
    _waiting: asyncio.Future[None] | None = None

    @property
    def is_parked(self) -> bool:
        """A poll waits and nothing is unconfirmed: all that was sent has been fetched for good."""
        return self._is_waiting() and not len(self.queue)

    def wake(self) -> None:
        """Let the waiting poll fetch what has arrived."""
        if self._waiting is not None and not self._waiting.done():
            self._waiting.set_result(None)

    async def get_updates(self, params: Params) -> list[dict[str, Any]]:
        """Answer one call; the earlier poll, if one still waits, ends with a conflict."""
        if self._waiting is not None and not self._waiting.done():
            self._waiting.set_exception(second_poller())
        self._allow(params)
        self.queue.confirm(params.integer("offset") or 0)
        limit = params.integer("limit")
        limit = limit if limit and 0 < limit <= LIMIT_MAX else LIMIT_MAX
        timeout_s = min(max(0, params.integer("timeout") or 0), TIMEOUT_MAX_S)
        page = self.queue.page(limit)
        if not page and timeout_s:
            await self._wait(timeout_s)
            page = self.queue.page(limit)
        return page

    def _is_waiting(self) -> bool:
        return self._waiting is not None and not self._waiting.done()

    def _allow(self, params: Params) -> None:
        kinds = params.tree("allowed_updates")
        if kinds is None:
            return
        if not isinstance(kinds, list) or not all(isinstance(kind, str) for kind in kinds):
            raise bad_request("can't parse allowed_updates: expected an Array of String")
        self.queue.allow(kinds)

    async def _wait(self, timeout_s: float) -> None:
        loop = asyncio.get_running_loop()
        future = self._waiting = loop.create_future()
        alarm = loop.call_later(timeout_s, self.wake)
        self.changes.tell()
        try:
            await future
        finally:
            alarm.cancel()
            if self._waiting is future:
                self._waiting = None
