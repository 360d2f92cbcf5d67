"""Fetching: a text file that a coach sends is here before its update is handled.

The writer's transaction never waits for a download. While a file is on its way its own chat is
held, so that the order in it stays, and everybody else is answered. What was fetched is kept in
memory until it is handled: the platform holds the file, and after a restart it is fetched again.
"""

import asyncio
import json
import logging
from collections.abc import Callable, Sequence
from typing import Any

from pydantic import BaseModel, ConfigDict
from sqlmodel import Session
from telegram import Bot
from telegram.error import TelegramError

from bot.events import FileFault
from bot.wire.faults import Meaning, understand
from scheduler.calendar.clocks import Clock
from storage.records.wire import Received

log = logging.getLogger(__name__)

LARGEST_BYTES = 1_000_000  # [bytes] ch: a library of movements has 90 kB, a team as CSV a few
ENDINGS = (".csv", ".tsv", ".txt", ".yaml", ".yml")
ATTEMPTS = 3  # [attempts] ch: a passing fault passes; then the coach is asked to send it again
PAUSE_S = 2.0  # [s] ch: after the first failure, doubled after the second
LONGEST_PAUSE_S = 30.0  # [s] ch: the coach's chat is held no longer than this at a time
CODINGS = {b"\xff\xfe": "utf-16", b"\xfe\xff": "utf-16"}
"""What spreadsheets write where it is not UTF-8, told by the file's first two bytes."""

IsWanted = Callable[[Session, int], bool]


class Fetched(BaseModel):
    """A file's text, or why there is none."""

    model_config = ConfigDict(frozen=True)

    text: str = ""
    fault: FileFault | None = None


class Documents:
    """Text files of the people whose files are wanted: what was fetched, and what is on its way."""

    def __init__(
        self, *, bot: Bot, clock: Clock, is_wanted: IsWanted, on_fetched: Callable[[], None]
    ) -> None:
        """Keep what is needed; ``is_wanted`` tells of a chat, ``on_fetched`` wakes the writer."""
        self._bot = bot
        self._clock = clock
        self._is_wanted = is_wanted
        self._on_fetched = on_fetched
        self._fetched: dict[int, Fetched] = {}
        self._coming: dict[int, tuple[int, asyncio.Task[None]]] = {}
        self._given: set[int] = set()
        self._pausing = 0

    @property
    def held_chats(self) -> frozenset[int]:
        """The chats in which a file is on its way."""
        return frozenset(chat_id for chat_id, _ in self._coming.values())

    @property
    def is_idle(self) -> bool:
        """True when no call is in flight; a file may wait for its next attempt."""
        return len(self._coming) == self._pausing

    def ready(self, tx: Session, waiting: Sequence[Received]) -> tuple[Received, ...]:
        """Return what can be handled now, and begin to fetch what the rest needs.

        What an earlier call returned has been handled since, and its text is forgotten.
        """
        for handled in self._given:
            self._fetched.pop(handled, None)
        can_go = []
        for received in waiting:
            self._begin(tx, received)
            if received.chat_id not in self.held_chats:
                can_go.append(received)
        self._given = {received.id for received in can_go}
        return tuple(can_go)

    def of(self, received: Received) -> Fetched | None:
        """Return what was fetched for an update; None where it has no file that is wanted."""
        return self._fetched.get(received.id)

    async def stop(self) -> None:
        """Give up what is on its way; it is fetched again after a restart."""
        tasks = [task for _, task in self._coming.values()]
        for task in tasks:
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)

    async def fetch_text(self, file_id: str) -> Fetched:
        """Fetch a file as text, trying again while the platform fails."""
        pause_s = PAUSE_S
        for attempt in range(1, ATTEMPTS + 1):
            try:
                return await self._download(file_id)
            except TelegramError as error:
                fault = understand(error)
                log.warning("a file was not fetched (%s)", fault.detail)
                if fault.meaning is Meaning.REFUSED or attempt == ATTEMPTS:
                    break
                await self._pause(min(fault.retry_after_s or pause_s, LONGEST_PAUSE_S))
                pause_s *= 2
        return Fetched(fault=FileFault.NOT_FETCHED)

    async def _download(self, file_id: str) -> Fetched:
        file = await self._bot.get_file(file_id)
        if (file.file_size or 0) > LARGEST_BYTES:
            return Fetched(fault=FileFault.TOO_LARGE)
        return text_of(bytes(await file.download_as_bytearray()))

    async def _pause(self, seconds: float) -> None:
        self._pausing += 1
        try:
            await self._clock.sleep(seconds)
        finally:
            self._pausing -= 1

    def _begin(self, tx: Session, received: Received) -> None:
        chat_id, document = received.chat_id, text_document(received.raw or "")
        if (
            chat_id is None
            or document is None
            or received.id in self._fetched
            or received.id in self._coming
            or not self._is_wanted(tx, chat_id)
        ):
            return
        if document["file_size"] > LARGEST_BYTES:
            self._fetched[received.id] = Fetched(fault=FileFault.TOO_LARGE)
            return
        task = asyncio.create_task(self._bring(received.id, document["file_id"]))
        self._coming[received.id] = chat_id, task

    async def _bring(self, inbox_id: int, file_id: str) -> None:
        try:
            self._fetched[inbox_id] = await self.fetch_text(file_id)
        except Exception as error:  # noqa: BLE001 (whatever it is, the coach's chat goes on)
            log.error("a file was not fetched: %s", type(error).__name__)  # noqa: TRY400
            self._fetched[inbox_id] = Fetched(fault=FileFault.NOT_FETCHED)
        finally:
            self._coming.pop(inbox_id, None)
            self._on_fetched()


def text_document(raw: str) -> dict[str, Any] | None:
    """Return id and size of the text file that a raw update brings, if it brings one.

    The name's ending decides: what a platform says of a file's kind differs by the sender's
    machine, and a spreadsheet's CSV often comes as something else.
    """
    if '"document"' not in raw:
        return None  # nearly every update: not worth reading it twice
    message = json.loads(raw).get("message")
    document = message.get("document") if isinstance(message, dict) else None
    if not isinstance(document, dict) or not isinstance(document.get("file_id"), str):
        return None
    if not str(document.get("file_name", "")).lower().endswith(ENDINGS):
        return None
    size_bytes = document.get("file_size")
    return {
        "file_id": document["file_id"],
        "file_size": size_bytes if isinstance(size_bytes, int) else 0,
    }


def text_of(content: bytes) -> Fetched:
    """Read a file's bytes as text: UTF-8, or UTF-16 that says so. No other coding is guessed."""
    if len(content) > LARGEST_BYTES:
        return Fetched(fault=FileFault.TOO_LARGE)
    try:
        text = content.decode(CODINGS.get(content[:2], "utf-8-sig"))
    except UnicodeDecodeError:
        return Fetched(fault=FileFault.NOT_TEXT)
    if "\0" in text:
        return Fetched(fault=FileFault.NOT_TEXT)
    return Fetched(text=text.replace("\r\n", "\n").replace("\r", "\n"))
