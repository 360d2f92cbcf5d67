"""Beside the loop: daily copies, the list of erasures, and the file written anew."""

import asyncio
from collections.abc import Callable, Coroutine
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from pydantic import ValidationError

from bot.acts.erase_person import WIPE_ASKED
from bot.config import Settings, SetUpError, check_backup_place
from bot.keeper import Keeper
from scheduler.calendar.clocks import SimulatedClock
from storage import backup, erasure
from storage.erasure_list import list_beside, read_list
from storage.queries import due, leaving, people
from tests.new_house import new_database

NOW = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)


class Kept:
    """A database, its keeper, and a clock that the test moves."""

    def __init__(self, folder: Path, *, kept: int = 3, has_folder: bool = True) -> None:
        self.file = folder / "house.sqlite3"
        self.folder = folder / "copies"
        self.database = new_database(self.file)
        self.clock = SimulatedClock(NOW)
        self.failures: list[str] = []
        self.keeper = Keeper(
            database=self.database,
            url=f"sqlite:///{self.file}",
            clock=self.clock,
            folder=self.folder if has_folder else None,
            kept=kept,
            tell_failed=lambda _tx, why, _now: self.failures.append(why),
        )

    def copies(self) -> list[str]:
        return sorted(one.name for one in self.folder.glob("*.sqlite3"))

    async def later(self, **span: float) -> None:
        await self.clock.advance_to(self.clock.now() + timedelta(**span))
        await self.keeper.work()

    def erase(self, name: str) -> int:
        with self.database.transaction() as tx:
            person = people.add_person(tx, name=name, now=self.clock.now())
        with self.database.transaction() as tx:
            erasure.erase(tx, person.id, at=self.clock.now())
            erasure.note_erasure(tx, person.id, at=self.clock.now(), is_whole=True)
            due.set_mark(tx, WIPE_ASKED, at=self.clock.now())
        return person.id


def told(story: Callable[[], Coroutine[None, None, None]]) -> None:
    asyncio.run(story())


def test_a_copy_a_day_and_only_so_many_are_kept(tmp_path):
    async def story():
        kept = Kept(tmp_path, kept=3)
        for _ in range(5 * 24):
            await kept.later(hours=1)
        # DERIVED: the first an hour after 07:00, then every 24 hours; the last three stay.
        assert kept.copies() == [
            f"holdwell-2026030{day}T080000Z.sqlite3" for day in (4, 5, 6)
        ]  # fmt: skip
        assert backup.fault_of(kept.folder / kept.copies()[0]) is None

    told(story)


def test_a_restart_makes_no_second_copy_of_the_day(tmp_path):
    async def story():
        await Kept(tmp_path).later(hours=1)
        again = Kept(tmp_path)
        await again.later(hours=2)
        assert len(again.copies()) == 1

    told(story)


def test_without_a_folder_no_copies_are_made(tmp_path):
    async def story():
        kept = Kept(tmp_path, has_folder=False)
        await kept.later(days=2)
        assert not kept.folder.exists()

    told(story)


def test_a_failing_copy_is_told_once_a_day_and_tried_every_hour(tmp_path, monkeypatch):
    async def story():
        kept = Kept(tmp_path)
        tries = []

        def fail(source, target):
            tries.append(target)
            raise backup.CopyError("the disk is full")

        monkeypatch.setattr(backup, "back_up", fail)
        for _ in range(25 * 4):
            await kept.later(minutes=15)
        assert kept.failures == ["the disk is full"] * 2
        assert len(tries) == 25
        monkeypatch.undo()
        await kept.later(hours=1)
        assert len(kept.copies()) == 1

    told(story)


def test_erasures_are_listed_beside_the_database_and_the_copies(tmp_path):
    async def story():
        kept = Kept(tmp_path)
        await kept.later(hours=1)
        person_id = kept.erase("Xanthippe")
        await kept.later(minutes=1)
        for place in (list_beside(kept.file), kept.folder / list_beside(kept.file).name):
            assert [one.person_id for one in read_list(place)] == [person_id]

    told(story)


def test_the_file_is_written_anew_once_all_is_swept_and_not_again(tmp_path):
    async def story():
        kept = Kept(tmp_path, has_folder=False)
        kept.erase("Xanthippe")
        await kept.later(minutes=1)
        with kept.database.transaction() as tx:
            assert due.mark(tx, WIPE_ASKED) is not None  # not swept yet
            assert leaving.sweep(tx, at=kept.clock.now())
        await kept.later(minutes=1)
        with kept.database.transaction() as tx:
            assert due.mark(tx, WIPE_ASKED) is None
        assert b"Xanthippe" not in kept.file.read_bytes()
        assert b"Xanthippe" not in kept.file.with_name("house.sqlite3-wal").read_bytes()

    told(story)


def test_the_settings_are_read_and_checked(tmp_path, monkeypatch):
    monkeypatch.setenv("HOLDWELL_BACKUPS", str(tmp_path / "x"))
    monkeypatch.setenv("HOLDWELL_BACKUPS_KEPT", "14")
    settings = Settings(_env_file=None)
    assert (settings.backups, settings.backups_kept) == (tmp_path / "x", 14)
    check_backup_place(settings.backups)
    monkeypatch.setenv("HOLDWELL_BACKUPS_KEPT", "0")
    with pytest.raises(ValidationError):
        Settings(_env_file=None)
    (tmp_path / "file").touch()
    with pytest.raises(SetUpError, match="HOLDWELL_BACKUPS"):
        check_backup_place(tmp_path / "file" / "below")
