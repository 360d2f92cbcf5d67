"""A migrated database in a folder of its own for each test."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from storage.database import Database
from tests.new_house import new_database


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    """Return an empty migrated database."""
    database = new_database(tmp_path / "house.sqlite3")
    yield database
    database.close()


@pytest.fixture
def now() -> datetime:
    """Return the instant at which these tests take place."""
    return datetime(2026, 10, 5, 6, 0, tzinfo=UTC)
