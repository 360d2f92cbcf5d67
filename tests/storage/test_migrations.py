"""The migrated schema is the declared one, and a newer database is refused in plain words."""

import pytest
from alembic.autogenerate import compare_metadata
from alembic.runtime.migration import MigrationContext
from sqlalchemy import Engine, text

from storage.database import Database, open_engine
from storage.migrate import NewerDatabaseError, migrate
from storage.tables import metadata


@pytest.fixture
def engine(tmp_path):
    engine = open_engine(f"sqlite:///{tmp_path}/house.sqlite3")
    yield engine
    engine.dispose()


def test_migrated_schema_equals_the_declared_one(engine: Engine):
    migrate(engine)
    with engine.connect() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        assert compare_metadata(context, metadata) == []


def test_check_constraints_of_the_migrated_schema_are_those_of_the_declared_one(engine, tmp_path):
    migrate(engine)
    declared = open_engine(f"sqlite:///{tmp_path}/declared.sqlite3")
    metadata.create_all(declared)

    def checks(one: Engine) -> dict[str, list[str]]:
        with one.connect() as connection:
            rows = connection.execute(
                text("SELECT name, sql FROM sqlite_master WHERE type = 'table' ORDER BY name")
            ).all()
        return {
            name: sorted(part.strip().rstrip(",") for part in sql.split("\n") if "CHECK" in part)
            for name, sql in rows
            if name != "alembic_version"
        }

    assert any(checks(engine).values())
    assert checks(engine) == checks(declared)
    declared.dispose()


@pytest.mark.parametrize(
    ("question", "index"),
    [
        ("SELECT max(received_at) FROM inbox WHERE chat_id = 1", "ix_inbox_chat_received"),
        ("SELECT id FROM outbox WHERE chat_id = 1 AND message_id = 2", "ix_outbox_message"),
        ("SELECT kind FROM due WHERE person_id = 1 AND due_at >= '2026'", "ix_due_person_due_at"),
        ("DELETE FROM button WHERE made_at < '2026'", "ix_button_made_at"),
        ("SELECT id FROM test_attempt WHERE round_id = 1", "ix_test_attempt_round"),
        ("SELECT id FROM test_attempt WHERE session_id = 1", "ix_test_attempt_session"),
    ],
)
def test_what_is_asked_at_every_reply_or_tick_is_found_by_an_index(engine, question, index):
    migrate(engine)
    with engine.connect() as connection:
        plan = connection.execute(text(f"EXPLAIN QUERY PLAN {question}")).all()
    assert index in str(plan)


NEVER_DELETED = frozenset({"person", "athlete"})
"""Tables whose rows stay (a person's is blanked), or go one at a time."""


def test_a_row_that_goes_is_looked_for_by_an_index_in_every_table_that_may_name_it(engine):
    migrate(engine)
    with engine.connect() as connection:
        for table in metadata.tables.values():
            for key in table.foreign_keys:
                if key.column.table.name in NEVER_DELETED:
                    continue
                # DERIVED from SQLite's documentation of foreign keys: this is what it asks for
                # each deleted row of the parent table.
                question = f"SELECT rowid FROM {table.name} WHERE {key.parent.name} = 1"  # noqa: S608
                plan = str(connection.execute(text(f"EXPLAIN QUERY PLAN {question}")).all())
                assert "SEARCH" in plan, f"{table.name}.{key.parent.name}: {plan}"


def test_migrating_twice_changes_nothing(engine: Engine):
    migrate(engine)
    with engine.begin() as connection:
        connection.execute(text("INSERT INTO mark (name, at) VALUES ('x', '2026-01-01')"))
    migrate(engine)
    with engine.connect() as connection:
        assert connection.execute(text("SELECT count(*) FROM mark")).scalar_one() == 1


def test_a_newer_database_is_refused_and_left_as_it_is(engine: Engine):
    migrate(engine)
    with engine.begin() as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = '9999'"))
    with pytest.raises(NewerDatabaseError, match=r"newer Holdwell .*9999.*update the program"):
        migrate(engine)
    with engine.connect() as connection:
        version = connection.execute(text("SELECT version_num FROM alembic_version")).scalar_one()
    assert version == "9999"


def test_sqlite_keeps_every_commit_and_its_foreign_keys(tmp_path):
    database = Database(f"sqlite:///{tmp_path}/house.sqlite3")
    migrate(database.engine)
    with database.engine.connect() as connection:
        pragmas = {
            name: connection.execute(text(f"PRAGMA {name}")).scalar_one()
            for name in ("journal_mode", "synchronous", "foreign_keys")
        }
    database.close()
    # DERIVED from SQLite's documentation: synchronous FULL is 2, foreign keys on is 1.
    assert pragmas == {"journal_mode": "wal", "synchronous": 2, "foreign_keys": 1}
