"""An empty house as the migrations build it: built once a process, copied for every test."""

from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from storage.database import Database
from storage.migrate import migrate

_COMPILED: dict[Any, Any] = {}


def new_database(file: Path) -> Database:
    """Return an empty migrated database in ``file``."""
    file.write_bytes(_new_house())
    return open_database(file)


def open_database(file: Path) -> Database:
    """Open a database of a test; what is asked in every test is compiled for the first only."""
    database = Database(f"sqlite:///{file}", is_throwaway=True)
    database.engine.dialect = _first_dialect()
    database.engine.update_execution_options(compiled_cache=_COMPILED)
    return database


@cache
def _first_dialect() -> Any:
    with TemporaryDirectory() as folder:
        database = Database(f"sqlite:///{folder}/first.sqlite3", is_throwaway=True)
        with database.engine.connect():
            return database.engine.dialect


@cache
def _new_house() -> bytes:
    with TemporaryDirectory() as folder:
        file = Path(folder) / "new.sqlite3"
        database = Database(f"sqlite:///{file}", is_throwaway=True)
        migrate(database.engine)
        database.engine.dispose()  # the last one out writes everything into the one file
        return file.read_bytes()
