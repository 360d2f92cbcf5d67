"""A row of one athlete's in every table that the schema declares: a new one is filled too."""

from datetime import UTC, date, datetime, time
from typing import Any

from sqlalchemy import JSON, Boolean, Column, Date, DateTime, Enum, Float, Integer, Table, Time
from sqlmodel import Session

from storage.column_types import Document, UtcInstant
from storage.tables import metadata

AT = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)
OF_NOBODY = frozenset(
    {"mark", "emergency_number", "erasure", "how_to_media", "file_version", "file_draft"}
)
"""Tables that say nothing about an athlete: the house's own, and a coach's own.

A new table that does not either is named here.
"""


def fill(tx: Session, *, name: str, words: str, chat_id: int, coach_chat_id: int) -> int:
    """Write an athlete, a coach, and a row in every table about the athlete; return the id."""
    coach = _insert(tx, "person", {"name": "Mara", "chat_id": coach_chat_id, "is_coach": True})
    athlete: int = _insert(tx, "person", {"name": name, "chat_id": chat_id})
    known = {"person": athlete, "athlete": athlete}
    for table in metadata.sorted_tables:
        if table.name == "person" or table.name in OF_NOBODY:
            continue
        given: dict[str, Any] = {}
        for column in table.c:
            if column.name == "chat_id":
                given["chat_id"] = chat_id
            for key in column.foreign_keys:
                is_coach = column.name not in {"athlete_id", "person_id"}
                target = key.column.table.name
                if target == table.name:
                    given[column.name] = None
                else:
                    is_of_coach = target == "person" and is_coach
                    given[column.name] = coach if is_of_coach else known[target]
        known[table.name] = _insert(tx, table.name, given, words=words)
    return athlete


def _insert(tx: Session, name: str, given: dict[str, Any], *, words: str = "") -> Any:
    table = metadata.tables[name]
    values = {column.name: _value(table, column, words) for column in table.c}
    values = {key: value for key, value in {**values, **given}.items() if value is not _UNSET}
    # Past the column types' own checks: nothing reads these rows but what erases them.
    columns = ", ".join(f'"{key}"' for key in values)
    marks = ", ".join("?" for _ in values)
    plain = tuple(_plain(value) for value in values.values())
    statement = f"INSERT INTO {name} ({columns}) VALUES ({marks})"  # noqa: S608 (our own names)
    done = tx.connection().exec_driver_sql(statement, plain)
    return values.get(next(iter(table.primary_key.columns)).name, done.lastrowid)


_UNSET = object()


def _value(table: Table, column: Column[Any], words: str) -> Any:
    kind: Any = column.type
    if column.primary_key and isinstance(kind, Integer):
        return _UNSET
    match kind:
        case Enum():
            return kind.enums[0]
        case UtcInstant() | DateTime():
            return AT
        case Date():
            return AT.date()
        case Time():
            return time(7)
        case Boolean():
            return False
        case Float():
            return 1.0
        case Integer():
            return 1
        case JSON() | Document():
            return f'{{"words": "{words}"}}'
        case _:
            longest = getattr(kind, "length", None) or len(words)
            return words[:longest]


def _plain(value: Any) -> Any:
    match value:
        case datetime():
            return value.replace(tzinfo=None).isoformat(sep=" ")
        case date() | time():
            return value.isoformat()
        case _:
            return value


def texts_in_columns(tx: Session) -> dict[str, list[str]]:
    """Return every text and JSON value of the whole database, by table and column."""
    found: dict[str, list[str]] = {}
    for table in metadata.sorted_tables:
        rows = tx.connection().exec_driver_sql(f"SELECT * FROM {table.name}").mappings().all()  # noqa: S608
        for row in rows:
            for column, value in row.items():
                if isinstance(value, str | bytes):
                    found.setdefault(f"{table.name}.{column}", []).append(str(value))
    return found
