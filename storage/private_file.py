"""The database's file: where it is, and that nobody else on the machine can read it."""

import contextlib
import os
from pathlib import Path

from sqlalchemy.engine import make_url

OWNER_ONLY = 0o600  # [file mode] ch: health data of people; nobody else on the machine reads it
BESIDE = ("-wal", "-shm", "-journal")
"""What SQLite keeps beside a database while it is open; it takes over the database's mode."""


def database_file(url: str) -> Path | None:
    """Return the file of a SQLite address, None for a database elsewhere or in memory."""
    parsed = make_url(url)
    if parsed.get_backend_name() != "sqlite" or not parsed.database:
        return None
    if parsed.database == ":memory:" or parsed.database.startswith("file:"):
        return None
    return Path(parsed.database)


def keep_private(file: Path) -> None:
    """Make the file, or take from others what they may do with it; no such file, no fault.

    Somebody else's file stays as it is: who opens it will find out whether they may.
    """
    with contextlib.suppress(OSError):
        os.close(os.open(file, os.O_CREAT | os.O_RDWR, OWNER_ONLY))
    for one in (file, *(file.with_name(file.name + end) for end in BESIDE)):
        with contextlib.suppress(OSError):
            if one.stat().st_mode & 0o077:
                one.chmod(OWNER_ONLY)


def remove_with_log(file: Path) -> None:
    """Remove a database that is not needed, and what SQLite left beside it."""
    for one in (file, *(file.with_name(file.name + end) for end in BESIDE)):
        with contextlib.suppress(OSError):
            one.unlink(missing_ok=True)
