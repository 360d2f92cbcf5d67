"""An empty house as the migrations build it: built once a process, copied for every test."""

from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from storage.database import Database
from storage.migrate import migrate


def new_database(file: Path) -> Database:
    """Return an empty migrated database in ``file``."""
    file.write_bytes(_new_house())
    return Database(f"sqlite:///{file}", is_throwaway=True)


@cache
def _new_house() -> bytes:
    with TemporaryDirectory() as folder:
        file = Path(folder) / "new.sqlite3"
        database = Database(f"sqlite:///{file}", is_throwaway=True)
        migrate(database.engine)
        database.engine.dispose()  # the last one out writes everything into the one file
        return file.read_bytes()
