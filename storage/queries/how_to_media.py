"""A coach's own pictures and clips of movements, by the platform's reference."""

from datetime import datetime

from sqlmodel import Session, col, select

from storage.records.media import HowToMedia
from storage.tables.media import HowToMediaRow


def media_of(tx: Session, *, coach_id: int, movement_key: str) -> HowToMedia | None:
    """Return what the coach keeps for a movement."""
    row = tx.get(HowToMediaRow, (coach_id, movement_key))
    return None if row is None else HowToMedia.model_validate(row)


def all_of(tx: Session, coach_id: int) -> tuple[HowToMedia, ...]:
    """Return everything that the coach keeps, by movement."""
    rows = tx.exec(
        select(HowToMediaRow)
        .where(HowToMediaRow.coach_id == coach_id)
        .order_by(col(HowToMediaRow.movement_key))
    )
    return tuple(HowToMedia.model_validate(row) for row in rows)


def keep(
    tx: Session, *, coach_id: int, movement_key: str, file_id: str, sent_as: str, at: datetime
) -> None:
    """Keep a medium for a movement; a later one replaces it."""
    forget(tx, coach_id=coach_id, movement_key=movement_key)
    tx.add(
        HowToMediaRow(
            coach_id=coach_id, movement_key=movement_key, file_id=file_id, sent_as=sent_as, at=at
        )
    )
    tx.flush()


def forget(tx: Session, *, coach_id: int, movement_key: str) -> bool:
    """Take it away; False when there was none."""
    row = tx.get(HowToMediaRow, (coach_id, movement_key))
    if row is None:
        return False
    tx.delete(row)
    tx.flush()
    return True
