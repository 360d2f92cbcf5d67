"""What an athlete has done, as the training rules want it: exposures, the earliest first."""

from collections.abc import Sequence
from datetime import date
from typing import Any

from sqlalchemy import select as select_columns
from sqlmodel import Session

from scheduler.training.values import Exposure
from storage.queries.session_rows import ITEMS, SESSIONS, SETS, item_records, read_rows
from storage.records.training import SessionState


def exposures(
    tx: Session,
    athlete_id: int,
    movement_keys: Sequence[str],
    *,
    before: date | None = None,
    since: date | None = None,
) -> tuple[Exposure, ...]:
    """Return every time the movements were done in a span, the earliest first."""
    query = _done(athlete_id).where(ITEMS.c.movement_key.in_(movement_keys))
    if before is not None:
        query = query.where(SESSIONS.c.on < before)
    if since is not None:
        query = query.where(SESSIONS.c.on >= since)
    return _exposures(tx, query)


def latest_exposures(
    tx: Session,
    athlete_id: int,
    movement_keys: Sequence[str],
    *,
    most: int,
    before: date | None = None,
) -> tuple[Exposure, ...]:
    """Return the latest ``most`` times the movements were done, the earliest first."""
    query = (
        select_columns(ITEMS, SESSIONS.c.on)
        .join(SESSIONS, SESSIONS.c.id == ITEMS.c.session_id)
        .where(
            SESSIONS.c.athlete_id == athlete_id,
            SESSIONS.c.state == SessionState.TRAINED,
            ITEMS.c.movement_key.in_(movement_keys),
            ITEMS.c.dose.is_not(None),
        )
        .order_by(SESSIONS.c.on.desc(), SESSIONS.c.id.desc(), ITEMS.c.position.desc())
        .limit(most)
    )
    if before is not None:
        query = query.where(SESSIONS.c.on < before)
    return tuple(reversed(_exposures(tx, query)))


def movements_trained(tx: Session, athlete_id: int, *, since: date, before: date) -> frozenset[str]:
    """Return the movements with a reported set in a span of days, by key."""
    query = (
        select_columns(ITEMS.c.movement_key)
        .join(SESSIONS, SESSIONS.c.id == ITEMS.c.session_id)
        .join(SETS, SETS.c.item_id == ITEMS.c.id)
        .where(
            SESSIONS.c.athlete_id == athlete_id,
            SESSIONS.c.on >= since,
            SESSIONS.c.on < before,
            SETS.c.replaced_at.is_(None),
        )
        .distinct()
    )
    return frozenset(row.movement_key for row in read_rows(tx, query))


def all_exposures(tx: Session, athlete_id: int) -> tuple[Exposure, ...]:
    """Return everything that an athlete has done, the earliest first."""
    return _exposures(tx, _done(athlete_id))


def _done(athlete_id: int) -> Any:
    return (
        select_columns(ITEMS, SESSIONS.c.on)
        .join(SESSIONS, SESSIONS.c.id == ITEMS.c.session_id)
        .where(SESSIONS.c.athlete_id == athlete_id, ITEMS.c.dose.is_not(None))
        .order_by(SESSIONS.c.on, SESSIONS.c.id, ITEMS.c.position)
    )


def _exposures(tx: Session, query: Any) -> tuple[Exposure, ...]:
    found = read_rows(tx, query)
    pairs = zip(item_records(tx, found), (row.on for row in found), strict=True)
    return tuple(done for record, on in pairs if (done := record.exposure(on)) is not None)
