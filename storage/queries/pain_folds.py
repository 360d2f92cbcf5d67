"""Where an athlete's pain fold had come to, and what was said since: years are read once."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement
from sqlmodel import Session, col, delete, func, or_, select

from storage.records.care import KeptPainFold
from storage.tables.care import KeptPainFoldRow, PainEventRow


def kept_fold(tx: Session, athlete_id: int) -> KeptPainFold | None:
    """Return where the fold had come to, by whatever rules; None where nothing is kept."""
    row = tx.get(KeptPainFoldRow, athlete_id)
    return None if row is None else KeptPainFold.model_validate(row)


def keep_fold(
    tx: Session,
    athlete_id: int,
    *,
    rules: str,
    through_at: datetime,
    through_id: int,
    events: int,
    state: Mapping[str, Any],
) -> None:
    """Keep where the fold has come to, in place of what was kept before."""
    tx.merge(
        KeptPainFoldRow(
            athlete_id=athlete_id,
            rules=rules,
            through_at=through_at,
            through_id=through_id,
            events=events,
            state=dict(state),
        )
    )


def forget_fold_beyond(tx: Session, athlete_id: int, at: datetime) -> None:
    """Something was told of an instant that the kept fold is beyond: fold anew."""
    kept = tx.get(KeptPainFoldRow, athlete_id)
    if kept is not None and kept.through_at > at:
        tx.exec(delete(KeptPainFoldRow).where(col(KeptPainFoldRow.athlete_id) == athlete_id))
        tx.expunge(kept)


def pain_events_since(
    tx: Session, athlete_id: int, kept: KeptPainFold | None
) -> tuple[tuple[int, Mapping[str, Any]], ...]:
    """Return in order what a kept fold does not hold, all where none is: the id and the event."""
    query = (
        select(PainEventRow.id, PainEventRow.event)
        .where(*_not_held(athlete_id, kept))
        .order_by(col(PainEventRow.at), col(PainEventRow.id))
    )
    return tuple((event_id or 0, event) for event_id, event in tx.exec(query))


def count_since(tx: Session, athlete_id: int, kept: KeptPainFold | None) -> int:
    """Count what a kept fold does not hold, all where none is."""
    query = select(func.count()).select_from(PainEventRow).where(*_not_held(athlete_id, kept))
    return tx.exec(query).one()


def _not_held(athlete_id: int, kept: KeptPainFold | None) -> list[ColumnElement[bool]]:
    mine = [col(PainEventRow.athlete_id) == athlete_id]
    if kept is None:
        return mine
    is_later = col(PainEventRow.at) > kept.through_at
    # The same instant again, which the index finds: of it only what came after is new.
    is_next = or_(is_later, col(PainEventRow.id) > kept.through_id)
    return [*mine, col(PainEventRow.at) >= kept.through_at, is_next]
