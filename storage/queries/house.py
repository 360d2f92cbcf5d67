"""How the house itself is doing: what was set aside, and what could not be sent."""

from sqlmodel import Session, col, func, select

from storage.tables.wire import InboxRow, InboxState, OutboxRow, OutboxState


def count_set_aside(tx: Session) -> int:
    """Count the updates that could not be handled."""
    return tx.exec(
        select(func.count()).select_from(InboxRow).where(InboxRow.state == InboxState.SET_ASIDE)
    ).one()


def count_unsendable(tx: Session) -> dict[str, int]:
    """Count what was refused, blocked or dropped, by the name of the state."""
    ends = (OutboxState.REFUSED, OutboxState.BLOCKED, OutboxState.DROPPED)
    rows = tx.exec(
        select(OutboxRow.state, func.count())
        .where(col(OutboxRow.state).in_(ends))
        .group_by(col(OutboxRow.state))
    )
    return {OutboxState(state).value: count for state, count in rows}
