"""Copies: consistent while the database is written, never over a file, only for their owner."""

import sqlite3
import stat
import threading
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from storage import backup
from storage.backup import CopyError
from storage.database import Database
from storage.erasure_list import list_beside, read_list, write_list
from storage.migrate import migrate
from storage.private_file import keep_private
from storage.queries import people
from storage.records.leaving import Erasure

NOW = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "house.sqlite3"


@pytest.fixture
def database(file: Path):
    database = Database(f"sqlite:///{file}")
    migrate(database.engine)
    yield database
    database.close()


def add(database: Database, name: str) -> None:
    with database.transaction() as tx:
        people.add_person(tx, name=name, now=NOW)


def names_in(file: Path) -> list[str]:
    with closing(sqlite3.connect(file)) as opened:
        return [row[0] for row in opened.execute("SELECT name FROM person ORDER BY id")]


def mode_of(file: Path) -> int:
    return stat.S_IMODE(file.stat().st_mode)


def test_a_copy_is_one_whole_file_that_only_its_owner_reads(database, file, tmp_path):
    add(database, "Ana")
    target = tmp_path / "copies" / "one.sqlite3"
    backup.back_up(file, target)
    assert backup.fault_of(target) is None
    assert names_in(target) == ["Ana"]
    assert mode_of(target) == 0o600
    assert [one.name for one in target.parent.iterdir()] == ["one.sqlite3"]


def test_the_database_itself_and_its_log_are_only_for_their_owner(database, file):
    add(database, "Ana")
    modes = {one.name: mode_of(one) for one in file.parent.iterdir()}
    assert modes == {
        "house.sqlite3": 0o600, "house.sqlite3-wal": 0o600, "house.sqlite3-shm": 0o600,
    }  # fmt: skip


def test_a_file_that_others_could_read_is_closed_to_them_when_it_is_opened(tmp_path):
    file = tmp_path / "old.sqlite3"
    file.touch()
    file.chmod(0o644)
    keep_private(file)
    assert mode_of(file) == 0o600


def test_a_copy_never_takes_the_place_of_a_file(database, file, tmp_path):
    target = tmp_path / "mine.txt"
    target.write_text("kept")
    with pytest.raises(CopyError, match="exists already and is left as it is"):
        backup.back_up(file, target)
    assert target.read_text() == "kept"


def test_without_a_database_nothing_is_made(tmp_path):
    with pytest.raises(CopyError, match="There is no database"):
        backup.back_up(tmp_path / "none.sqlite3", tmp_path / "copy.sqlite3")
    assert not (tmp_path / "copy.sqlite3").exists()


def test_a_copy_made_while_somebody_writes_is_of_one_instant(database, file, tmp_path):
    """DERIVED: each transaction writes two people; a torn copy would hold an odd number."""
    is_over = threading.Event()

    def write() -> None:
        while not is_over.is_set():
            with database.transaction() as tx:
                people.add_person(tx, name="left", now=NOW)
                people.add_person(tx, name="right", now=NOW)

    writer = threading.Thread(target=write)
    writer.start()
    try:
        counts = []
        for number in range(6):
            target = tmp_path / f"{number}.sqlite3"
            backup.back_up(file, target)
            counts.append(len(names_in(target)))
    finally:
        is_over.set()
        writer.join()
    assert all(count % 2 == 0 for count in counts)
    assert counts == sorted(counts)
    assert counts[-1] > counts[0]  # it was really written meanwhile


def test_a_reader_sees_one_instant_and_holds_no_writer_up(database):
    add(database, "Ana")
    with database.reading() as tx:
        assert len(people.everybody(tx)) == 1
        add(database, "Bea")
        assert len(people.everybody(tx)) == 1
    with database.reading() as tx:
        assert len(people.everybody(tx)) == 2


def test_what_is_written_in_a_reading_is_undone(database):
    with database.reading() as tx:
        people.add_person(tx, name="Nobody", now=NOW)
    with database.transaction() as tx:
        assert people.everybody(tx) == ()


def test_a_broken_copy_is_found_out(database, file, tmp_path):
    for number in range(200):
        add(database, f"Person {number}")
    target = tmp_path / "copy.sqlite3"
    backup.back_up(file, target)
    content = bytearray(target.read_bytes())
    middle = len(content) // 2
    content[middle : middle + 9000] = b"\xff" * 9000
    target.write_bytes(content)
    assert backup.fault_of(target) is not None


@pytest.mark.parametrize("content", [b"", b"not a database at all, but long enough to be read"])
def test_a_file_of_another_kind_is_found_out(tmp_path, content):
    file = tmp_path / "other"
    file.write_bytes(content)
    assert backup.fault_of(file) is not None


def test_who_runs_a_database_is_noticed_and_who_closed_it_is_not(database, file):
    add(database, "Ana")
    assert backup.is_in_use(file)
    database.close()
    assert not backup.is_in_use(file)


def test_of_the_daily_copies_the_newest_are_kept_and_other_files_are_left(tmp_path):
    for day in range(1, 6):
        (tmp_path / f"holdwell-2026030{day}T070000Z.sqlite3").touch()
    (tmp_path / "holdwell-notes.txt").touch()
    (tmp_path / "mine.sqlite3").touch()
    backup.rotate(tmp_path, kept=2)
    assert sorted(one.name for one in tmp_path.iterdir()) == [
        "holdwell-20260304T070000Z.sqlite3", "holdwell-20260305T070000Z.sqlite3",
        "holdwell-notes.txt", "mine.sqlite3",
    ]  # fmt: skip


def test_the_list_of_erasures_is_read_back_and_a_torn_line_is_passed_over(tmp_path):
    place = list_beside(tmp_path / "house.sqlite3")
    erasures = [
        Erasure(person_id=4, erased_at=NOW, is_whole=False), Erasure(person_id=2, erased_at=NOW),
    ]  # fmt: skip
    write_list(place, erasures)
    assert mode_of(place) == 0o600
    place.write_text(place.read_text() + "17 2026-0")
    assert read_list(place) == (erasures[1], erasures[0])
    assert read_list(tmp_path / "none") == ()
