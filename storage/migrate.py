"""Bring a database to the schema that this program knows, or refuse in plain words."""

from importlib.resources import files

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine


class NewerDatabaseError(Exception):
    """The database was written by a newer Holdwell; the message says what to do."""


def migrate(engine: Engine) -> None:
    """Migrate to the newest schema, as a whole or not at all.

    Raises:
        NewerDatabaseError: when the database is newer than this program.

    """
    with engine.begin() as connection:
        _refuse_newer(connection)
        command.upgrade(_config(connection), "head")


def draft_revision(engine: Engine, *, number: str, message: str) -> None:
    """Write a new migration from the difference between the database and the tables.

    ``number`` is the next of 0001, 0002, …: it is the revision's id and begins its file name.
    """
    with engine.begin() as connection:
        command.revision(_config(connection), message=message, rev_id=number, autogenerate=True)


def _config(connection: Connection) -> Config:
    config = Config()
    config.set_main_option("script_location", str(files("storage") / "migrations"))
    config.attributes["connection"] = connection
    return config


def _refuse_newer(connection: Connection) -> None:
    known = {
        script.revision
        for script in ScriptDirectory.from_config(_config(connection)).walk_revisions()
    }
    current = MigrationContext.configure(connection).get_current_heads()
    if unknown := set(current) - known:
        raise NewerDatabaseError(
            "This database was written by a newer Holdwell "
            f"(schema {', '.join(sorted(unknown))}): update the program, or restore an older copy."
        )
