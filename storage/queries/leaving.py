"""Who waits to leave, who was erased, and what is still to be emptied behind an erasure."""

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import Text, cast
from sqlmodel import Session, col, delete, func, or_, select, update

from storage.erasure import FAREWELL
from storage.outbox import UNSENT
from storage.records.leaving import Erasure, LeaveWish
from storage.tables.leaving import ErasureRow, LeaveWishRow
from storage.tables.people import PersonRow
from storage.tables.wire import InboxRow, InboxState, OutboxRow


def wish_to_leave(tx: Session, person_id: int, *, at: datetime) -> None:
    """Keep that an athlete wants to leave as soon as nothing is open."""
    tx.merge(LeaveWishRow(person_id=person_id, asked_at=at))
    tx.flush()


def wish_of(tx: Session, person_id: int) -> LeaveWish | None:
    """Return an athlete's wish to leave, if there is one."""
    row = tx.get(LeaveWishRow, person_id)
    return None if row is None else LeaveWish.model_validate(row)


def wishes(tx: Session) -> tuple[LeaveWish, ...]:
    """Return everybody who waits to leave."""
    rows = tx.exec(select(LeaveWishRow).order_by(col(LeaveWishRow.person_id)))
    return tuple(LeaveWish.model_validate(row) for row in rows)


def stay_after_all(tx: Session, person_id: int) -> bool:
    """Take a wish to leave back; False where there was none."""
    gone = tx.exec(delete(LeaveWishRow).where(col(LeaveWishRow.person_id) == person_id))
    return gone.rowcount > 0


def erasures(tx: Session) -> tuple[Erasure, ...]:
    """Return every erasure, the earliest first."""
    rows = tx.exec(select(ErasureRow).order_by(col(ErasureRow.erased_at), col(ErasureRow.id)))
    return tuple(Erasure.model_validate(row) for row in rows)


def is_sweeping_due(tx: Session) -> bool:
    """Tell whether something may be left behind an erasure."""
    waiting = select(func.count()).select_from(ErasureRow).where(col(ErasureRow.swept_at).is_(None))
    return tx.exec(waiting).one() > 0


def sweep(tx: Session, *, at: datetime) -> bool:
    """Empty what coaches and owners wrote and were sent about the erased; True when all is.

    All of it, since a list or a digest may name anybody: what was sent stands in their chats, and
    what they wrote was handled. The farewells' rows go with their chats' numbers.
    """
    chats = tuple(tx.exec(_chats_of_coaches()).all())
    latest: datetime | None = tx.exec(
        select(func.max(ErasureRow.erased_at)).where(col(ErasureRow.swept_at).is_(None))
    ).one()
    if latest is None:
        return True
    _empty(tx, chats, at=at)
    ended = col(OutboxRow.state).not_in(UNSENT)
    tx.exec(delete(OutboxRow).where(col(OutboxRow.subject) == FAREWELL, ended))
    if _is_anything_waiting(tx, chats, latest):
        return False
    tx.exec(update(ErasureRow).where(col(ErasureRow.swept_at).is_(None)).values(swept_at=at))
    return True


def _chats_of_coaches() -> Any:
    is_one = or_(col(PersonRow.is_coach), col(PersonRow.is_owner))
    return select(PersonRow.chat_id).where(is_one, col(PersonRow.chat_id).is_not(None))


def _empty(tx: Session, chats: Sequence[int | None], *, at: datetime) -> None:
    tx.exec(
        update(InboxRow)
        .where(
            col(InboxRow.chat_id).in_(chats),
            col(InboxRow.state) != InboxState.WAITING,
            col(InboxRow.received_at) <= at,
            col(InboxRow.raw).is_not(None),
        )
        .values(raw=None)
    )
    tx.exec(
        update(OutboxRow)
        .where(
            col(OutboxRow.chat_id).in_(chats),
            col(OutboxRow.state).not_in(UNSENT),
            cast(col(OutboxRow.payload), Text) != "{}",
        )
        .values(payload={})
    )


def _is_anything_waiting(tx: Session, chats: Sequence[int | None], until: datetime) -> bool:
    """Tell whether a message about the erased may still be on its way, or a farewell is."""
    about = or_(
        col(OutboxRow.subject) == FAREWELL,
        col(OutboxRow.chat_id).in_(chats) & (col(OutboxRow.created_at) <= until),
    )
    unsent = select(OutboxRow.id).where(col(OutboxRow.state).in_(UNSENT), about).limit(1)
    heard = (
        select(InboxRow.id)
        .where(
            col(InboxRow.chat_id).in_(chats),
            col(InboxRow.state) == InboxState.WAITING,
            col(InboxRow.received_at) <= until,
        )
        .limit(1)
    )
    return tx.exec(unsent).first() is not None or tx.exec(heard).first() is not None
