"""The process that draws: one worker beside the loop, started when first needed.

In a thread a drawing holds the loop up for tens of milliseconds at a time; in a process of its
own it does not. A drawing that fails, or takes too long, costs its picture and nothing else.
"""

import asyncio
import contextlib
import logging
import os
import signal
import threading
from collections.abc import Iterator, Mapping
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import get_context, parent_process
from typing import Any

log = logging.getLogger(__name__)

DRAW_MOST_S = 20  # [s] ch: a picture takes some 0.2 s; the worker ends itself behind this
WAIT_MOST_S = 60.0  # [s] ch: the worker's start on a busy machine, and one drawing
NICER_BY = 10  # [nice levels] ch: whoever writes is answered before a picture is drawn


class NotDrawnError(Exception):
    """There is no picture: its words have to do."""


class Studio:
    """Draws pictures from their facts, one after another."""

    def __init__(self) -> None:
        """Start nothing: many houses never draw."""
        self._pool: ProcessPoolExecutor | None = None
        self._turn = asyncio.Lock()

    @property
    def is_open(self) -> bool:
        """True while there is a worker."""
        return self._pool is not None

    async def draw(self, facts: Mapping[str, Any]) -> bytes:
        """Return the picture as the bytes of a PNG.

        Raises:
            NotDrawnError: it could not be drawn; the reason is logged without what is on it.

        """
        async with self._turn:  # so that the time limit is that of one drawing, not of a line
            pool = self._pool = self._pool or _new_pool()
            try:
                waiting = asyncio.get_running_loop().run_in_executor(pool, drawn, dict(facts))
                return await asyncio.wait_for(waiting, WAIT_MOST_S)
            except (BrokenProcessPool, TimeoutError) as fault:
                self._leave(pool)  # the next picture starts another
                raise _not_drawn(fault) from fault
            except Exception as fault:
                raise _not_drawn(fault) from fault

    def close(self) -> None:
        """Let the worker end; what it draws at this moment is given up."""
        if self._pool is not None:
            self._leave(self._pool)

    def _leave(self, pool: ProcessPoolExecutor) -> None:
        pool.shutdown(wait=False, cancel_futures=True)
        if self._pool is pool:
            self._pool = None


def _not_drawn(fault: Exception) -> NotDrawnError:
    log.error("a picture was not drawn: %s", type(fault).__name__)  # never what is on it
    return NotDrawnError(type(fault).__name__)


def _new_pool() -> ProcessPoolExecutor:
    # A fresh process, not a copy: a copy would share this one's database and sockets.
    return ProcessPoolExecutor(
        max_workers=1, mp_context=get_context("spawn"), initializer=_begin_worker
    )


def _begin_worker() -> None:
    """Leave Ctrl-C to the house, give way to it, and end when it ends, however it does."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    with contextlib.suppress(OSError, AttributeError):
        os.nice(NICER_BY)
    threading.Thread(target=_end_with_parent, daemon=True).start()


def _end_with_parent() -> None:
    house = parent_process()
    if house is not None:  # pragma: no branch - a worker has a parent
        house.join()
        os._exit(0)


def drawn(facts: Mapping[str, Any]) -> bytes:
    """Draw, in the worker. One that never comes to an end is ended by its own alarm."""
    from bot.pictures.draw import draw  # noqa: PLC0415  the drawing library is heavy

    with _alarm():
        return draw(facts)


@contextlib.contextmanager
def _alarm() -> Iterator[None]:
    has_alarm = hasattr(signal, "alarm") and threading.current_thread() is threading.main_thread()
    if has_alarm:
        signal.alarm(DRAW_MOST_S)
    try:
        yield
    finally:
        if has_alarm:
            signal.alarm(0)
