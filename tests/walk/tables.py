"""What is stored of the matter itself, row by row, so that two moments can be compared."""

from collections.abc import Mapping
from typing import Any

from sqlmodel import Session

from storage.tables import metadata

WIRE = frozenset({"inbox", "outbox", "button", "question", "dialog"})
DERIVED = frozenset({"kept_pain_fold", "mark"})
"""What is folded anew from the rest, and when the round last ran."""
Key = tuple[str, tuple[Any, ...]]
Row = Mapping[str, Any]


def stored(tx: Session) -> dict[Key, Row]:
    """Return every row of every table but those of the wire, by table and primary key."""
    tx.flush()
    found: dict[Key, Row] = {}
    for name, table in metadata.tables.items():
        if name in WIRE | DERIVED:
            continue
        keys = [column.name for column in table.primary_key]
        for row in tx.connection().exec_driver_sql(f'SELECT * FROM "{name}"').mappings():  # noqa: S608
            found[name, tuple(row[key] for key in keys)] = dict(row)
    return found


def changed(before: Mapping[Key, Row], after: Mapping[Key, Row]) -> list[Key]:
    """Return which rows are new, gone, or read otherwise."""
    return [key for key in {**before, **after} if before.get(key) != after.get(key)]


def whose(key: Key, rows: Mapping[Key, Row]) -> int | None:
    """Return the person whom a row is about; None for a row about nobody."""
    row = rows.get(key)
    if row is None:
        return None
    for column in ("athlete_id", "person_id", "coach_id", "actor_id"):
        if row.get(column) is not None:
            return int(row[column])
    if row.get("item_id") is not None:
        return whose(("item", (row["item_id"],)), rows)
    if row.get("session_id") is not None:
        return whose(("session", (row["session_id"],)), rows)
    return int(row["id"]) if key[0] == "person" else None
