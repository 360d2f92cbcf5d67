"""Receiving: every update is stored before it is confirmed to the platform."""

import asyncio
import json
import logging
from collections.abc import Callable, Coroutine
from datetime import timedelta
from typing import Any
from urllib.parse import urlencode

from telegram import Bot
from telegram.error import TelegramError
from telegram.request import BaseRequest

from bot.wire.edge import WANTED_UPDATES, tap_ids
from bot.wire.faults import Fault, Meaning, understand
from scheduler.calendar.clocks import Clock
from storage.database import Database
from storage.inbox import LARGEST_ID, store_updates

log = logging.getLogger(__name__)

BATCH = 100  # [updates] botapi: getUpdates, the most that one call returns
LONGEST_PAUSE_S = 30.0  # [s] ch: after repeated failures; an athlete waits no longer than this
READ_MARGIN_S = 10.0  # [s] ch: beyond the long poll's own time before a poll counts as lost


class OperatorError(Exception):
    """Something that only the person who runs the bot can mend; said in one line."""


class Receiver:
    """Long polling that commits first and confirms after.

    The raw updates are fetched through the library's request class and not through its typed
    call, because there one update that does not parse would lose its whole batch.
    """

    def __init__(
        self,
        *,
        database: Database,
        bot: Bot,
        request: BaseRequest,
        clock: Clock,
        poll_s: int,
        on_stored: Callable[[], None],
    ) -> None:
        """Keep what is needed; ``on_stored`` wakes the writer."""
        self._database = database
        self._bot = bot
        self._request = request
        self._clock = clock
        self._poll_s = poll_s
        self._on_stored = on_stored
        self._offset: int | None = None
        self._failures = 0
        self._answers: set[asyncio.Task[None]] = set()

    @property
    def is_answering(self) -> bool:
        """True while a tap's empty answer is on its way."""
        return bool(self._answers)

    async def run(self) -> None:
        """Poll until cancelled."""
        try:
            while True:
                await self._receive()
        finally:
            for answer in self._answers:
                answer.cancel()
            await asyncio.gather(*self._answers, return_exceptions=True)

    async def _receive(self) -> None:
        try:
            updates = await self._poll()
        except TelegramError as error:
            await self._pause(understand(error))
            return
        self._failures = 0
        if updates:
            self.accept(updates)
        else:
            # All is confirmed. The ids restart at random after a quiet week, and an offset kept
            # from before would confirm unseen whatever happens to lie below it.
            self._offset = None

    def accept(self, updates: list[dict[str, Any]]) -> None:
        """Store a batch in one commit; only then does the next poll confirm it."""
        with self._database.transaction() as tx:
            store_updates(tx, updates, received_at=self._clock.now())
        self._offset = max(raw["update_id"] for raw in updates) + 1
        for tap_id in tap_ids(updates):
            self._start(self._answer(tap_id))
        self._on_stored()

    async def _poll(self) -> list[dict[str, Any]]:
        asked: dict[str, Any] = {
            "timeout": self._poll_s,
            "limit": BATCH,
            # Left out, the platform would keep whatever was asked for last.
            "allowed_updates": json.dumps(WANTED_UPDATES),
        }
        if self._offset is not None:
            asked["offset"] = self._offset
        result: Any = await self._request.post(
            f"{self._bot.base_url}/getUpdates?{urlencode(asked)}",
            read_timeout=self._poll_s + READ_MARGIN_S,
        )
        if not isinstance(result, list):
            raise TelegramError("not a list of updates")
        return [raw for raw in result if isinstance(raw, dict) and _has_number(raw)]

    async def _pause(self, fault: Fault) -> None:
        if fault.detail == "InvalidToken":
            raise OperatorError(
                "The platform does not know this bot token: check HOLDWELL_TOKEN and start again."
            )
        if fault.meaning is Meaning.OPERATOR:
            log.error("another program is receiving with this token; stop it, two cannot share it")
        self._failures += 1
        pause_s = fault.retry_after_s or min(2.0**self._failures / 2, LONGEST_PAUSE_S)
        log.warning("receiving failed (%s), again in %.0f s", fault.detail, pause_s)
        await self._clock.sleep_until(self._clock.now() + timedelta(seconds=pause_s))

    def _start(self, answer: Coroutine[Any, Any, None]) -> None:
        task = asyncio.create_task(answer)
        self._answers.add(task)
        task.add_done_callback(self._answers.discard)

    async def _answer(self, tap_id: str) -> None:
        # Empty and at once: a late answer is refused, and the reply comes by the outbox anyway.
        try:
            await self._bot.answer_callback_query(tap_id)
        except TelegramError as error:
            log.info("a tap was not answered (%s)", understand(error).detail)


def _has_number(raw: dict[str, Any]) -> bool:
    update_id = raw.get("update_id")
    return isinstance(update_id, int) and abs(update_id) <= LARGEST_ID
