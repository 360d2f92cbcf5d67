"""The durable inbox: stored first, confirmed after, handled in order, never lost, never twice."""

import json
from collections.abc import Collection, Mapping, Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import Session, col, func, not_, or_, select, update

from storage.records.wire import Received
from storage.tables.wire import InboxRow, InboxState

ATTEMPTS_BEFORE_SET_ASIDE = 3  # [attempts] ch: a passing fault passes, a poisoned update does not
LARGEST_ID = 2**63 - 1  # the most that the column holds; the platform's ids are far below
RAW_KEPT = timedelta(days=7)  # [days] ch: long enough to mend a fault, short enough for privacy


def store_updates(
    tx: Session, updates: Sequence[Mapping[str, Any]], *, received_at: datetime
) -> int:
    """Store raw updates, each once; return how many were new.

    The platform delivers an update again when the confirmation got lost, and its ids restart at
    random after a quiet week, so a unique key decides and not a high-water mark.
    """
    ids = [int(raw["update_id"]) for raw in updates]
    known = set(tx.exec(select(InboxRow.update_id).where(col(InboxRow.update_id).in_(ids))))
    before = len(known)
    for update_id, raw in zip(ids, updates, strict=True):
        if update_id not in known:
            known.add(update_id)
            # Escaped, because half a surrogate pair has no place in a database's text.
            text = json.dumps(raw)
            tx.add(
                InboxRow(
                    update_id=update_id,
                    chat_id=chat_of(raw),
                    raw=text,
                    received_at=received_at,
                )
            )
    return len(known) - before


def chat_of(raw: Mapping[str, Any]) -> int | None:
    """Find whose chat an update belongs to, however broken the rest of it is."""
    for part in raw.values():
        message = part.get("message", part) if isinstance(part, Mapping) else None
        chat = message.get("chat") if isinstance(message, Mapping) else None
        chat_id = chat.get("id") if isinstance(chat, Mapping) else None
        if isinstance(chat_id, int) and abs(chat_id) <= LARGEST_ID:
            return chat_id
    return None


def has_spoken_since(tx: Session, chat_id: int, *, since: datetime) -> bool:
    """Tell whether anything arrived from the chat after ``since``."""
    return (
        tx.exec(
            select(InboxRow.id)
            .where(InboxRow.chat_id == chat_id, col(InboxRow.received_at) > since)
            .limit(1)
        ).first()
        is not None
    )


def next_waiting(
    tx: Session, *, most: int, but_chats: Collection[int] = ()
) -> tuple[Received, ...]:
    """Return the oldest updates that wait, in the order in which they arrived.

    ``but_chats`` are held: something that they need first is on its way.
    """
    query = select(InboxRow).where(InboxRow.state == InboxState.WAITING)
    if but_chats:
        is_held = col(InboxRow.chat_id).in_(list(but_chats))
        query = query.where(or_(col(InboxRow.chat_id).is_(None), not_(is_held)))
    rows = tx.exec(query.order_by(col(InboxRow.id)).limit(most))
    return tuple(Received.model_validate(row) for row in rows)


def count_waiting(tx: Session) -> int:
    """Count the updates that are stored and not yet handled."""
    return tx.exec(
        select(func.count()).select_from(InboxRow).where(InboxRow.state == InboxState.WAITING)
    ).one()


def mark_handled(tx: Session, inbox_id: int, *, at: datetime, outcome: str) -> None:
    """Say what became of an update, in the transaction that did it."""
    tx.exec(
        update(InboxRow)
        .where(col(InboxRow.id) == inbox_id)
        .values(state=InboxState.HANDLED, handled_at=at, outcome=outcome)
    )


def note_fault(tx: Session, inbox_id: int, *, at: datetime, reference: str) -> bool:
    """Count a failed attempt; return True when the update is now set aside."""
    row = tx.get_one(InboxRow, inbox_id)
    row.attempts += 1
    row.fault_reference = reference
    if row.attempts >= ATTEMPTS_BEFORE_SET_ASIDE:
        row.state = InboxState.SET_ASIDE
        row.handled_at = at
        row.outcome = "set_aside"
    tx.add(row)
    return row.state is InboxState.SET_ASIDE


def forget_raw(tx: Session, *, now: datetime, since: datetime | None = None) -> int:
    """Empty the raw text of what was handled long enough ago; return how many rows it concerned.

    ``since``: all that arrived before was emptied before (:func:`forgotten_until`).
    """
    query = update(InboxRow).where(
        col(InboxRow.received_at) < now - RAW_KEPT,
        col(InboxRow.state) != InboxState.WAITING,
        col(InboxRow.raw).is_not(None),
    )
    if since is not None:
        query = query.where(col(InboxRow.received_at) >= since)
    return tx.exec(query.values(raw=None)).rowcount


def forgotten_until(tx: Session, *, now: datetime) -> datetime:
    """Return the instant before which nothing is left to empty, right behind a forgetting."""
    waits_since: datetime | None = tx.exec(
        select(func.min(InboxRow.received_at)).where(InboxRow.state == InboxState.WAITING)
    ).one()
    return min(now - RAW_KEPT, waits_since or now)


def outcomes(tx: Session) -> dict[str, int]:
    """Count what became of all updates so far."""
    rows = tx.exec(
        select(InboxRow.outcome, func.count())
        .where(col(InboxRow.outcome).is_not(None))
        .group_by(col(InboxRow.outcome))
    )
    return {str(outcome): count for outcome, count in rows}
