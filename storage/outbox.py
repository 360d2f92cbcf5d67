"""The durable outbox: written with the decision that causes it, sent in order within a chat."""

from collections.abc import Collection, Mapping
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Text, cast
from sqlalchemy.orm import aliased
from sqlmodel import Session, col, func, select, update

from storage.records.wire import MessageKind, Operation, Outgoing
from storage.tables.wire import OutboxRow, OutboxState

UNSENT = (OutboxState.WAITING, OutboxState.SENDING)


def put(
    tx: Session,
    *,
    chat_id: int,
    operation: Operation,
    kind: MessageKind,
    payload: Mapping[str, Any],
    now: datetime,
    not_before: datetime | None = None,
    useful_until: datetime | None = None,
    subject: str | None = None,
    edits_outbox_id: int | None = None,
) -> int:
    """Write one operation; it is sent after this transaction commits. Returns its id."""
    row = OutboxRow(
        chat_id=chat_id,
        operation=operation.value,
        kind=kind.value,
        payload=dict(payload),
        subject=subject,
        created_at=now,
        not_before=not_before or now,
        useful_until=useful_until,
        edits_outbox_id=edits_outbox_id,
    )
    tx.add(row)
    tx.flush()
    if row.id is None:  # pragma: no cover - a flushed row has its key
        raise RuntimeError("the outbox row got no id")
    return row.id


def claim_due(
    tx: Session, *, now: datetime, most: int, but_chats: Collection[int] = ()
) -> tuple[Outgoing, ...]:
    """Claim up to ``most`` operations that are due: of each chat only the first unsent one.

    ``but_chats`` are those that have had enough for the moment.
    """
    waiting = aliased(OutboxRow)
    # Of each chat only its first unsent row may go, so that the order within a chat holds.
    firsts = (
        select(func.min(waiting.id))
        .where(col(waiting.state).in_(UNSENT), col(waiting.chat_id).not_in(list(but_chats)))
        .group_by(col(waiting.chat_id))
    )
    turn = (
        select(OutboxRow.id)
        .where(
            OutboxRow.state == OutboxState.WAITING,
            OutboxRow.not_before <= now,
            col(OutboxRow.id).in_(firsts),
        )
        .order_by(col(OutboxRow.id))
        .limit(most)
        .with_for_update(skip_locked=True)
    )
    claimed = tx.exec(
        update(OutboxRow)
        .where(col(OutboxRow.id).in_(turn))
        .values(
            state=OutboxState.SENDING,
            attempts=OutboxRow.attempts + 1,
        )
        .returning(col(OutboxRow.id))
        .execution_options(synchronize_session=False)
    )
    ids = sorted(row[0] for row in claimed)
    rows = tx.exec(select(OutboxRow).where(col(OutboxRow.id).in_(ids)).order_by(col(OutboxRow.id)))
    return tuple(_outgoing(tx, row) for row in rows)


def _outgoing(tx: Session, row: OutboxRow) -> Outgoing:
    edited = tx.get(OutboxRow, row.edits_outbox_id) if row.edits_outbox_id else None
    return Outgoing.model_validate(row).model_copy(
        update={"edits_message_id": edited.message_id if edited else None}
    )


def next_due_at(tx: Session, *, after: datetime) -> datetime | None:
    """Return when the next waiting operation may go, or None when nothing waits.

    What is due already and was not claimed waits behind an earlier one of its chat: that one's
    end wakes the sender, so only times after ``after`` matter.
    """
    return tx.exec(
        select(func.min(OutboxRow.not_before)).where(
            OutboxRow.state == OutboxState.WAITING, col(OutboxRow.not_before) > after
        )
    ).one()


def count_unsent(tx: Session) -> int:
    """Count the operations that are neither sent nor given up."""
    return tx.exec(
        select(func.count()).select_from(OutboxRow).where(col(OutboxRow.state).in_(UNSENT))
    ).one()


def mark_sent(tx: Session, outbox_id: int, *, at: datetime, message_id: int | None) -> None:
    """The platform accepted it."""
    _settle(tx, outbox_id, state=OutboxState.SENT, sent_at=at, message_id=message_id)


def note_sent(
    tx: Session, outgoing: Outgoing, *, message_id: int, subject: str | None, at: datetime
) -> None:
    """Note another message that an operation became, so that a reply to it finds its subject."""
    tx.add(
        OutboxRow(
            chat_id=outgoing.chat_id,
            operation=outgoing.operation.value,
            kind=outgoing.kind.value,
            payload={},
            subject=subject,
            created_at=outgoing.created_at,
            not_before=at,
            state=OutboxState.SENT,
            sent_at=at,
            message_id=message_id,
        )
    )


def mark_refused(tx: Session, outbox_id: int, *, at: datetime, fault: str) -> None:
    """The platform will never accept it: our fault, kept for the operator."""
    _settle(tx, outbox_id, state=OutboxState.REFUSED, sent_at=at, fault=fault)


def mark_blocked(tx: Session, chat_id: int, *, at: datetime) -> None:
    """The person blocked the bot: nothing that waits for that chat can be sent."""
    tx.exec(
        update(OutboxRow)
        .where(col(OutboxRow.chat_id) == chat_id, col(OutboxRow.state).in_(UNSENT))
        .values(state=OutboxState.BLOCKED, sent_at=at)
    )


def mark_dropped(tx: Session, outbox_id: int, *, at: datetime, fault: str) -> None:
    """It is no longer useful, or in doubt and not worth a double."""
    _settle(tx, outbox_id, state=OutboxState.DROPPED, sent_at=at, fault=fault)


def drop_unsent(tx: Session, *, at: datetime, fault: str) -> int:
    """Drop what waits, but for alerts and what is about safety; return how many."""
    kept = [kind.value for kind in MessageKind if kind.is_sent_again_in_doubt]
    return tx.exec(
        update(OutboxRow)
        .where(col(OutboxRow.state).in_(UNSENT), col(OutboxRow.kind).not_in(kept))
        .values(state=OutboxState.DROPPED, sent_at=at, fault=fault)
    ).rowcount


def put_back(
    tx: Session, outbox_id: int, *, not_before: datetime, is_doubtful: bool, fault: str
) -> None:
    """Let it wait again; ``is_doubtful`` marks that the platform may have accepted it already."""
    values: dict[str, Any] = {
        "state": OutboxState.WAITING,
        "not_before": not_before,
        "fault": fault,
    }
    if is_doubtful:
        values["is_doubtful"] = True
    tx.exec(update(OutboxRow).where(col(OutboxRow.id) == outbox_id).values(**values))


def hold_chat(tx: Session, chat_id: int, *, until: datetime) -> None:
    """Nothing goes to this chat before ``until``: the platform said so."""
    tx.exec(
        update(OutboxRow)
        .where(
            col(OutboxRow.chat_id) == chat_id,
            col(OutboxRow.state) == OutboxState.WAITING,
            col(OutboxRow.not_before) < until,
        )
        .values(not_before=until)
    )


def move_chat(tx: Session, *, old_chat_id: int, new_chat_id: int) -> None:
    """The platform gave the chat a new id; what waits goes there."""
    tx.exec(
        update(OutboxRow)
        .where(col(OutboxRow.chat_id) == old_chat_id, col(OutboxRow.state).in_(UNSENT))
        .values(chat_id=new_chat_id)
    )


def in_flight(tx: Session) -> tuple[Outgoing, ...]:
    """Return what was being sent when the process ended."""
    rows = tx.exec(
        select(OutboxRow).where(OutboxRow.state == OutboxState.SENDING).order_by(col(OutboxRow.id))
    )
    return tuple(Outgoing.model_validate(row) for row in rows)


def sent_message(tx: Session, *, chat_id: int, message_id: int) -> tuple[int, str | None] | None:
    """Find the operation that became this message: its id and subject."""
    row = tx.exec(
        select(OutboxRow.id, OutboxRow.subject).where(
            OutboxRow.chat_id == chat_id, OutboxRow.message_id == message_id
        )
    ).first()
    return None if row is None or row[0] is None else (row[0], row[1])


def forget_texts(
    tx: Session, *, now: datetime, kept: timedelta, since: datetime | None = None
) -> int:
    """Empty the payload of what was settled long enough ago; return how many rows it concerned.

    ``since``: all that was written before was emptied before (:func:`forgotten_until`).
    """
    query = update(OutboxRow).where(
        col(OutboxRow.created_at) < now - kept,
        col(OutboxRow.state).not_in(UNSENT),
        cast(col(OutboxRow.payload), Text) != "{}",
    )
    if since is not None:
        query = query.where(col(OutboxRow.created_at) >= since)
    return tx.exec(query.values(payload={})).rowcount


def forgotten_until(tx: Session, *, now: datetime, kept: timedelta) -> datetime:
    """Return the instant before which nothing is left to empty, right behind a forgetting."""
    waits_since: datetime | None = tx.exec(
        select(func.min(OutboxRow.created_at)).where(col(OutboxRow.state).in_(UNSENT))
    ).one()
    return min(now - kept, waits_since or now)


def _settle(tx: Session, outbox_id: int, **values: Any) -> None:
    tx.exec(update(OutboxRow).where(col(OutboxRow.id) == outbox_id).values(**values))
