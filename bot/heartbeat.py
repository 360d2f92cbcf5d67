"""A heartbeat for outside monitoring: after each round a file is touched and a URL is asked for.

It beats only where the round was done, so that a house that stands still is seen to. A monitor
that does not answer is no reason to stop: it is logged, without the URL, which may hold a key.
"""

import asyncio
import logging
from pathlib import Path

import httpx

log = logging.getLogger(__name__)

ANSWER_WITHIN_S = 10.0  # [s] ch: well inside the minute until the next one


class Heartbeat:
    """Beats by what is set; with nothing set it does nothing."""

    def __init__(self, *, file: Path | None = None, url: str | None = None) -> None:
        """Keep where to beat."""
        self._file = file
        self._url = url
        self._asked: asyncio.Task[None] | None = None

    def beat(self) -> None:
        """Touch the file at once, and ask for the URL beside the loop, one at a time."""
        if self._file is not None:
            self._touch(self._file)
        if self._url is not None and (self._asked is None or self._asked.done()):
            self._asked = asyncio.get_running_loop().create_task(self._ask(self._url))

    async def stop(self) -> None:
        """Give up what has not been answered."""
        if self._asked is not None:
            self._asked.cancel()
            await asyncio.gather(self._asked, return_exceptions=True)

    def _touch(self, file: Path) -> None:
        try:
            file.touch()
        except OSError as fault:
            log.warning("the heartbeat file cannot be touched: %s", type(fault).__name__)

    async def _ask(self, url: str) -> None:
        try:
            async with httpx.AsyncClient(timeout=ANSWER_WITHIN_S) as client:
                answer = await client.get(url)
        except (httpx.HTTPError, httpx.InvalidURL) as fault:
            log.warning("the heartbeat's monitor did not answer: %s", type(fault).__name__)
            return
        if not answer.is_success:
            log.warning("the heartbeat's monitor answered %d", answer.status_code)
