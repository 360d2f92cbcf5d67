"""What the house does beside its loop: daily copies, the list of erasures, and the last wiping.

All of it is due by what is stored, so that a crash forgets nothing, and all of it runs in a thread:
replies go on meanwhile.
"""

import asyncio
import logging
from collections.abc import Callable
from datetime import datetime, timedelta
from pathlib import Path

from sqlmodel import Session

from bot.acts.erase_person import WIPE_ASKED
from bot.writer import log_fault
from scheduler.calendar.clocks import Clock
from storage import backup, erasure_list
from storage.database import Database
from storage.private_file import database_file
from storage.queries import due, leaving

log = logging.getLogger(__name__)

EVERY = timedelta(hours=24)  # [h] ch: at most a day is lost with a disk
TRY_AGAIN = timedelta(hours=1)  # [h] ch: a full disk is looked at again, and told of once a day
WIPE_MOST_BYTES = 300_000_000  # [bytes] measured: about 3 s, for which writers wait
BACKED_UP, BACKUP_TRIED = "backed_up", "backup_tried"

TellFailed = Callable[[Session, str, datetime], None]


class Keeper:
    """Looks after each round what is due, and does it in a thread."""

    def __init__(
        self,
        *,
        database: Database,
        url: str,
        clock: Clock,
        folder: Path | None,
        kept: int,
        tell_failed: TellFailed,
    ) -> None:
        """Keep what is needed; ``folder`` None means that no daily copies are made."""
        self._database = database
        self._file = database_file(url)
        self._clock = clock
        self._folder = folder
        self._kept = kept
        self._tell_failed = tell_failed
        self._wake = asyncio.Event()
        self._busy = False
        self._listed: int | None = None

    def wake(self) -> None:
        """A round is over."""
        self._wake.set()

    @property
    def is_idle(self) -> bool:
        """True when nothing is being done and no round was announced."""
        return not self._busy and not self._wake.is_set()

    async def run(self) -> None:
        """Work until cancelled."""
        while True:
            await self._wake.wait()
            self._busy = True
            self._wake.clear()
            try:
                await self.work()
            except Exception as fault:  # noqa: BLE001 (what is due stays due for the next round)
                log_fault("keeper", fault)
            finally:
                self._busy = False

    async def work(self) -> None:
        """Do what is due now."""
        if self._file is None:
            return  # another database looks after its own copies
        now = self._clock.now()
        with self._database.reading() as tx:
            count = len(leaving.erasures(tx))
            is_wipe_due = due.mark(tx, WIPE_ASKED) is not None
            is_swept = not leaving.is_sweeping_due(tx)
            is_copy_due = self._folder is not None and _is_copy_due(tx, now)
        if count and count != self._listed:
            await asyncio.to_thread(self._write_lists)
            self._listed = count
        if is_wipe_due and is_swept:
            await self._wipe()
        if is_copy_due:
            await self._copy(now)

    def _write_lists(self) -> None:
        with self._database.reading() as tx:
            known = leaving.erasures(tx)
        places = [erasure_list.list_beside(self._file)] if self._file is not None else []
        if self._folder is not None and self._file is not None:
            self._folder.mkdir(parents=True, exist_ok=True)
            places.append(self._folder / erasure_list.list_beside(self._file).name)
        for place in places:
            erasure_list.write_list(place, (*known, *erasure_list.read_list(place)))

    async def _wipe(self) -> None:
        """Write the file anew; of a large one the operator is told to do it while nobody waits."""
        if self._file is None:
            return
        if self._file.stat().st_size > WIPE_MOST_BYTES:
            log.warning("somebody was erased: stop the bot once and run holdwell wipe")
        else:
            await asyncio.to_thread(backup.wipe, self._file)
        with self._database.transaction() as tx:
            due.clear_mark(tx, WIPE_ASKED)

    async def _copy(self, now: datetime) -> None:
        if self._folder is None or self._file is None:
            return
        target = self._folder / backup.NAME.format(at=now)
        try:
            await asyncio.to_thread(backup.back_up, self._file, target)
            await asyncio.to_thread(backup.rotate, self._folder, kept=self._kept)
        except (backup.CopyError, OSError) as fault:
            log.error("no daily copy: %s", fault)  # noqa: TRY400 (the message says what to do)
            self._note_failure(str(fault), now)
            return
        with self._database.transaction() as tx:
            due.set_mark(tx, BACKED_UP, at=now)
            due.set_mark(tx, BACKUP_TRIED, at=now)

    def _note_failure(self, why: str, now: datetime) -> None:
        """Tell the owners once a day, and try again in an hour."""
        with self._database.transaction() as tx:
            told = due.mark(tx, "backup_failed")
            due.set_mark(tx, BACKUP_TRIED, at=now)
            if told is None or now - told >= EVERY:
                due.set_mark(tx, "backup_failed", at=now)
                self._tell_failed(tx, why, now)


def _is_copy_due(tx: Session, now: datetime) -> bool:
    made, tried = due.mark(tx, BACKED_UP), due.mark(tx, BACKUP_TRIED)
    if made is not None and now - made < EVERY:
        return False
    return tried is None or tried == made or now - tried >= TRY_AGAIN
