"""The engine, the one way to begin a transaction, and what keeps a power cut harmless."""

from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from typing import Any

from sqlalchemy import Engine, event
from sqlalchemy.engine import make_url
from sqlmodel import Session, create_engine

from storage.private_file import database_file, keep_private

BUSY_TIMEOUT_MS = 10_000  # [ms] ch: a backup or a reader may hold the file this long
READING = "is_reading"


class Database:
    """An engine and its transactions. Rolled back unless the block ends without an exception."""

    def __init__(self, url: str, *, is_throwaway: bool = False) -> None:
        """Open ``url``; nothing is read or written until the first transaction.

        A throwaway database (a demo's, a test's) does not wait for the disk at every commit.
        It still survives the kill of its process, only not a power cut.
        """
        self.engine = open_engine(url, is_throwaway=is_throwaway)

    @contextmanager
    def transaction(self) -> Iterator[Session]:
        """Yield a session whose work is committed as a whole, or not at all."""
        with Session(self.engine, expire_on_commit=False) as session:
            try:
                yield session
                session.commit()
            except BaseException:
                session.rollback()
                raise

    @contextmanager
    def reading(self) -> Iterator[Session]:
        """Yield a session that only reads, beside the one writer and without holding it up.

        It sees the database as it was at its first question. Whatever is written in it is undone.
        """
        engine = self.engine.execution_options(**{READING: True})
        with Session(engine, expire_on_commit=False, autoflush=False) as session:
            try:
                yield session
            finally:
                session.rollback()

    def close(self) -> None:
        """Give the file back."""
        self.engine.dispose()


def open_engine(url: str, *, is_throwaway: bool = False) -> Engine:
    """Create the engine, with SQLite's safety switched on where SQLite is used."""
    parsed = make_url(url)
    if parsed.get_backend_name() != "sqlite":
        return create_engine(parsed, hide_parameters=True)
    if (file := database_file(url)) is not None:
        keep_private(file)
    engine = create_engine(parsed, hide_parameters=True, connect_args={"check_same_thread": False})
    event.listen(engine, "connect", partial(_prepare_sqlite, is_throwaway=is_throwaway))
    event.listen(engine, "begin", _begin_immediate)
    return engine


def _prepare_sqlite(connection: Any, _record: object, *, is_throwaway: bool) -> None:
    # The driver's own implicit BEGIN would start DEFERRED and leave DDL outside transactions.
    connection.isolation_level = None
    cursor = connection.cursor()
    for pragma in (
        "foreign_keys=ON",
        "journal_mode=WAL",
        f"synchronous={'OFF' if is_throwaway else 'FULL'}",
        f"busy_timeout={BUSY_TIMEOUT_MS}",
        "secure_delete=ON",  # what is erased is overwritten, not only let go
    ):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _begin_immediate(connection: Any) -> None:
    """A writer takes its turn at once, so that none fails half-way; a reader takes none."""
    is_reading = connection.get_execution_options().get(READING, False)
    connection.exec_driver_sql("BEGIN" if is_reading else "BEGIN IMMEDIATE")
