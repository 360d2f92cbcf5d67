"""Clips that wait for a coach's answer, by the platform's reference."""

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlmodel import Session, col, func, select, update

from storage.records.media import Clip
from storage.tables.media import ClipRow


def add(tx: Session, *, athlete_id: int, at: datetime, **facts: Any) -> Clip:
    """Keep a clip until it is answered."""
    row = ClipRow(athlete_id=athlete_id, at=at, **facts)
    tx.add(row)
    tx.flush()
    return Clip.model_validate(row)


def clip(tx: Session, clip_id: int) -> Clip | None:
    """Return one clip."""
    row = tx.get(ClipRow, clip_id)
    return None if row is None else Clip.model_validate(row)


def waiting(tx: Session, athlete_ids: Sequence[int]) -> tuple[Clip, ...]:
    """Return the clips of these athletes that nobody has answered, the oldest first."""
    rows = tx.exec(
        select(ClipRow)
        .where(col(ClipRow.athlete_id).in_(athlete_ids), col(ClipRow.answered_at).is_(None))
        .order_by(col(ClipRow.at), col(ClipRow.id))
    )
    return tuple(Clip.model_validate(row) for row in rows)


def album(tx: Session, clip: Clip) -> tuple[Clip, ...]:
    """Return every part of the album that a clip belongs to, in order; a lone clip by itself."""
    if clip.album_id is None:
        return (clip,)
    rows = tx.exec(
        select(ClipRow)
        .where(ClipRow.athlete_id == clip.athlete_id, ClipRow.album_id == clip.album_id)
        .order_by(col(ClipRow.id))
    )
    return tuple(Clip.model_validate(row) for row in rows)


def name_item(tx: Session, clip_id: int, *, item_id: int, movement_key: str) -> None:
    """The athlete said what it shows."""
    tx.exec(
        update(ClipRow)
        .where(col(ClipRow.id) == clip_id)
        .values(item_id=item_id, movement_key=movement_key)
    )


def mark_answered(tx: Session, clip_id: int, *, by_id: int, at: datetime) -> None:
    """The coach has answered it."""
    tx.exec(
        update(ClipRow)
        .where(col(ClipRow.id) == clip_id)
        .values(answered_at=at, answered_by_id=by_id)
    )


def has_any_since(tx: Session, athlete_id: int, *, since: datetime) -> bool:
    """Tell whether the athlete sent a clip since an instant."""
    query = select(ClipRow.id).where(ClipRow.athlete_id == athlete_id, col(ClipRow.at) >= since)
    return tx.exec(query.limit(1)).first() is not None


def last_by_movement(tx: Session, athlete_id: int) -> dict[str, datetime]:
    """Return when each movement was last shown in a clip."""
    rows = tx.exec(
        select(ClipRow.movement_key, func.max(ClipRow.at))
        .where(ClipRow.athlete_id == athlete_id, col(ClipRow.movement_key).is_not(None))
        .group_by(col(ClipRow.movement_key))
    )
    return {str(key): at for key, at in rows}
