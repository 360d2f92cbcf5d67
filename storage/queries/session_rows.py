"""From plain rows to the records of sessions, items and sets: what stands now, corrections in."""

from collections.abc import Sequence
from typing import Any, cast

from sqlalchemy import Row
from sqlalchemy import select as select_columns
from sqlmodel import Session

from storage.records.training import ItemRecord, SessionRecord, SetRecord
from storage.tables import metadata

SESSIONS, ITEMS, SETS = (metadata.tables[name] for name in ("session", "item", "set_done"))


def read_rows(tx: Session, query: Any) -> Sequence[Row[Any]]:
    """Read plain rows: what becomes a record at once needs no object of the mapper's."""
    tx.flush()
    return cast("Sequence[Row[Any]]", tx.exec(query).all())


def item_records(tx: Session, rows: Sequence[Row[Any]]) -> list[ItemRecord]:
    """Return items with their current sets."""
    if not rows:
        return []
    sets: dict[int, list[SetRecord]] = {}
    current = (
        select_columns(SETS)
        .where(SETS.c.item_id.in_([row.id for row in rows]), SETS.c.replaced_at.is_(None))
        .order_by(SETS.c.number, SETS.c.id)
    )
    for row in read_rows(tx, current):
        sets.setdefault(row.item_id, []).append(SetRecord.model_validate(row))
    return [
        ItemRecord.model_validate({**row._mapping, "sets": tuple(sets.get(row.id, ()))})  # noqa: SLF001
        for row in rows
    ]


def session_records(tx: Session, query: Any) -> tuple[SessionRecord, ...]:
    """Return sessions with their items and current sets."""
    rows = read_rows(tx, query)
    if not rows:
        return ()
    found = read_rows(
        tx,
        select_columns(ITEMS)
        .where(ITEMS.c.session_id.in_([row.id for row in rows]))
        .order_by(ITEMS.c.position),
    )
    by_session: dict[int, list[ItemRecord]] = {}
    for record, row in zip(item_records(tx, found), found, strict=True):
        by_session.setdefault(row.session_id, []).append(record)
    return tuple(
        SessionRecord.model_validate(
            {**row._mapping, "items": tuple(by_session.get(row.id, ()))}  # noqa: SLF001
        )
        for row in rows
    )
