"""A coach's practice athlete, erased as if it had never been."""

from collections.abc import Collection
from datetime import datetime
from typing import Any

from sqlalchemy import Table
from sqlmodel import Session, col, delete, update

from storage import erasure
from storage.tables import metadata
from storage.tables.care import AuditRow
from storage.tables.people import AthleteRow
from storage.tables.wire import (
    ButtonRow,
    DialogRow,
    DueRow,
    InboxRow,
    InboxState,
    OutboxRow,
    OutboxState,
    QuestionRow,
)

OF_THE_CHAT = frozenset({"button", "question", "dialog", "due", "invitation"})
"""Tables in which the coach has rows of their own."""


def erase(
    tx: Session,
    person_id: int,
    *,
    chat_id: int | None,
    since: datetime,
    acts: Collection[str],
    due_kinds: Collection[str],
) -> None:
    """Erase everything of a practice athlete; the person, who coaches, stays.

    ``acts`` are an athlete's buttons, which go with the coach's own about it, and ``due_kinds``
    what falls due for one: no button may outlive what it was about, since the ids of what is gone
    are given out anew. Of the chat the words since then go too; what waits to be sent or handled
    stays.
    """
    _forget_references(tx, person_id)
    for table in reversed(metadata.sorted_tables):
        for column in _columns_to_athlete(table):
            tx.connection().execute(table.delete().where(column == person_id))
    tx.exec(delete(AuditRow).where(col(AuditRow.athlete_id) == person_id))
    tx.exec(delete(AthleteRow).where(col(AthleteRow.person_id) == person_id))
    tx.exec(
        delete(ButtonRow).where(
            col(ButtonRow.person_id) == person_id, col(ButtonRow.act).in_(list(acts))
        )
    )
    tx.exec(
        delete(DueRow).where(
            col(DueRow.person_id) == person_id, col(DueRow.kind).in_(list(due_kinds))
        )
    )
    if chat_id is not None:
        _forget_words(tx, chat_id, since=since)
    tx.expire_all()


def _forget_references(tx: Session, person_id: int) -> None:
    """Take away the coach's own buttons and questions about it: its clips, alerts, sessions."""
    found = erasure.rows_of(tx, person_id, None)
    about = {name: keys for name, keys in found.items() if name not in OF_THE_CHAT}
    erasure.forget_references(tx, about, person_id, name=None)
    for name in OF_THE_CHAT & about.keys():
        erasure.delete_rows(tx, metadata.tables[name], about[name])


def _columns_to_athlete(table: Table) -> list[Any]:
    """Return the columns of a table that point at an athlete, whatever tables there are."""
    wanted = metadata.tables["athlete"].c.person_id
    return [
        column for column in table.c if any(key.column is wanted for key in column.foreign_keys)
    ]


def _forget_words(tx: Session, chat_id: int, *, since: datetime) -> None:
    tx.exec(delete(QuestionRow).where(col(QuestionRow.chat_id) == chat_id))
    tx.exec(delete(DialogRow).where(col(DialogRow.chat_id) == chat_id))
    tx.exec(
        update(OutboxRow)
        .where(
            col(OutboxRow.chat_id) == chat_id,
            col(OutboxRow.created_at) >= since,
            col(OutboxRow.state) == OutboxState.SENT,
        )
        .values(payload={})
    )
    tx.exec(
        update(InboxRow)
        .where(
            col(InboxRow.chat_id) == chat_id,
            col(InboxRow.received_at) >= since,
            col(InboxRow.state) == InboxState.HANDLED,
        )
        .values(raw=None)
    )
