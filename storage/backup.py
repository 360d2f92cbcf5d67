"""Copies of the database: made while it runs, checked, and put back with the erasures since."""

import os
import sqlite3
from collections.abc import Sequence
from contextlib import closing, suppress
from datetime import UTC, datetime
from pathlib import Path

from storage.private_file import BESIDE, OWNER_ONLY, remove_with_log
from storage.records.leaving import Erasure

NAME = "holdwell-{at:%Y%m%dT%H%M%SZ}.sqlite3"
PATTERN = "holdwell-*T*Z.sqlite3"
ASIDE = "{name}.before-{at:%Y%m%dT%H%M%SZ}"


class CopyError(Exception):
    """A copy cannot be made or put back; the message says in one line what to do."""


def back_up(source: Path, target: Path) -> None:
    """Copy a database, as of one instant, while others read and write it.

    The copy is checked and on the disk before it gets its name, and only its owner may read it.

    Raises:
        CopyError: where there is nothing to copy, or the target exists, or the copy is not whole.

    """
    if not source.exists():
        raise CopyError(f"There is no database {source}: set HOLDWELL_DATABASE.")
    if target.exists():
        raise CopyError(f"{target} exists already and is left as it is: name another file.")
    part = target.with_name(f".{target.name}.part")
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        part.unlink(missing_ok=True)
        os.close(os.open(part, os.O_CREAT | os.O_EXCL | os.O_RDWR, OWNER_ONLY))
        copy_pages(source, part)
        _refuse_broken(part)
        _put_in_place(part, target)
    except (OSError, sqlite3.Error) as fault:
        raise CopyError(f"The copy {target} could not be made: {fault}.") from None
    finally:
        remove_with_log(part)


def copy_pages(source: Path, target: Path) -> None:
    """Copy all pages in one step: in WAL mode writers go on, and the copy is of one instant.

    In several steps the copy would begin anew whenever somebody else has written. The copy is
    left without a log of its own, so that it is one file.
    """
    with closing(_read_only(source)) as read, closing(sqlite3.connect(target)) as written:
        read.backup(written, pages=-1)
        written.execute("PRAGMA journal_mode=DELETE")


def fault_of(file: Path) -> str | None:
    """Return what is wrong with a database file, None when it is whole."""
    try:
        with closing(_read_only(file)) as read:
            found = [str(row[0]) for row in read.execute("PRAGMA integrity_check(1)")]
            broken = read.execute("PRAGMA foreign_key_check").fetchone()
            has_version = read.execute(
                "SELECT count(*) FROM sqlite_master WHERE name = 'alembic_version'"
            ).fetchone()[0]
    except sqlite3.Error as fault:
        return str(fault)
    if found != ["ok"]:
        return found[0] if found else "no answer"
    if broken is not None:
        return f"a row of {broken[0]} points at nothing"
    return None if has_version else "it is no database of Holdwell"


def is_in_use(file: Path) -> bool:
    """Tell whether another connection holds a database: who runs it always keeps one open.

    To leave the write-ahead log SQLite needs the file for itself, and says so at once.
    """
    if not file.exists():
        return False
    try:
        with closing(sqlite3.connect(file, timeout=0)) as mine:
            mode = mine.execute("PRAGMA journal_mode=DELETE").fetchone()[0]
    except sqlite3.OperationalError:
        return True
    except sqlite3.DatabaseError:
        return False  # broken: nobody can be using it
    return str(mode).lower() == "wal"


def put_aside(file: Path, *, at: datetime) -> Path | None:
    """Rename a database, and what lies beside it; return its new name, None if there is none."""
    if not file.exists():
        return None
    aside = file.with_name(ASIDE.format(name=file.name, at=at))
    for end in ("", *BESIDE):
        one = file.with_name(file.name + end)
        if one.exists():
            one.rename(aside.with_name(aside.name + end))
    with suppress(OSError):
        aside.chmod(OWNER_ONLY)
    return aside


def as_one_file(file: Path) -> None:
    """Write what lies in the log into the file, and leave the log."""
    with closing(sqlite3.connect(file)) as mine:
        mine.execute("PRAGMA journal_mode=DELETE")


def erasures_in(file: Path) -> tuple[Erasure, ...]:
    """Return the erasures that a database holds, whatever its schema; an older one holds none."""
    try:
        with closing(_read_only(file)) as read:
            rows = read.execute("SELECT person_id, erased_at, is_whole FROM erasure").fetchall()
    except sqlite3.Error:
        return ()
    return tuple(
        Erasure(
            person_id=person_id,
            erased_at=datetime.fromisoformat(at).replace(tzinfo=UTC),
            is_whole=bool(is_whole),
        )
        for person_id, at, is_whole in rows
    )


def rotate(folder: Path, *, kept: int) -> Sequence[Path]:
    """Remove the oldest of the daily copies beyond ``kept``; return those removed."""
    copies = sorted(folder.glob(PATTERN))
    gone = copies[: max(0, len(copies) - kept)]
    for one in gone:
        one.unlink(missing_ok=True)
    return gone


def wipe(file: Path) -> None:
    """Write the file anew without what was deleted, and empty the write-ahead log.

    Writers wait meanwhile (measured: about a second for each 100 MB).
    """
    with closing(sqlite3.connect(file, timeout=10, isolation_level=None)) as mine:
        mine.execute("VACUUM")
        mine.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def _refuse_broken(part: Path) -> None:
    fault = fault_of(part)
    if fault is not None:
        raise CopyError(f"The copy is not whole ({fault}), so it was not kept: try again.")


def _put_in_place(part: Path, target: Path) -> None:
    """Give the finished copy its name, without ever replacing a file."""
    with part.open("rb") as opened:
        os.fsync(opened.fileno())
    try:
        os.link(part, target)
    except FileExistsError:
        raise CopyError(f"{target} exists already and is left as it is.") from None
    except OSError:  # a disk without links
        part.rename(target)
    with suppress(OSError):
        folder = os.open(target.parent, os.O_RDONLY)
        os.fsync(folder)
        os.close(folder)


def _read_only(file: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{file.absolute().as_uri()}?mode=ro", uri=True, timeout=10)
