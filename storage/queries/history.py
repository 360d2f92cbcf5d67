"""What an athlete has done, as the training rules want it: exposures, the earliest first."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from sqlalchemy import JSON, exists, func, type_coerce
from sqlalchemy import select as select_columns
from sqlmodel import Session

from scheduler.training.values import NO_RESISTANCE, Exposure, Rung, SetDone
from storage.queries.session_rows import ITEMS, SESSIONS, SETS, read_rows
from storage.records.training import SessionState

TOLD = (ITEMS.c.id, ITEMS.c.dose, ITEMS.c.reserve, SESSIONS.c.on)
DOSE, DONE = type_coerce(ITEMS.c.dose, JSON), type_coerce(SETS.c.done, JSON)


@dataclass(frozen=True)
class BestSet:
    """The best set [s, repetitions or m] of a movement at what was planned and what was taken.

    ``taken`` None means the planned resistance.
    """

    movement_key: str
    planned: Rung
    taken: Rung | None
    value: float


def exposures(
    tx: Session,
    athlete_id: int,
    movement_keys: Sequence[str],
    *,
    before: date | None = None,
    since: date | None = None,
) -> tuple[Exposure, ...]:
    """Return every time the movements were done in a span, the earliest first."""
    query = _done(athlete_id, before=before, since=since)
    return _exposures(tx, _in_order(query.where(ITEMS.c.movement_key.in_(movement_keys))))


def all_exposures(
    tx: Session, athlete_id: int, *, since: date | None = None, before: date | None = None
) -> tuple[Exposure, ...]:
    """Return everything that an athlete did, in a span or ever, the earliest first."""
    return _exposures(tx, _in_order(_done(athlete_id, before=before, since=since)))


def latest_exposures(
    tx: Session,
    athlete_id: int,
    movement_keys: Sequence[str],
    *,
    most: int,
    before: date | None = None,
    since: date | None = None,
) -> tuple[Exposure, ...]:
    """Return the latest ``most`` times the movements were done, the earliest first."""
    query = (
        _done(athlete_id, before=before, since=since)
        .where(
            SESSIONS.c.state == SessionState.TRAINED,
            ITEMS.c.movement_key.in_(movement_keys),
            _has_sets(),
        )
        .order_by(SESSIONS.c.on.desc(), SESSIONS.c.id.desc(), ITEMS.c.position.desc())
        .limit(most)
    )
    return tuple(reversed(_exposures(tx, query)))


def first_exposures(
    tx: Session, athlete_id: int, movement_key: str, *, most: int
) -> tuple[Exposure, ...]:
    """Return the first ``most`` times that a movement was done, the earliest first."""
    query = _done(athlete_id).where(ITEMS.c.movement_key == movement_key, _has_sets())
    return _exposures(tx, _in_order(query).limit(most))


def best_sets(
    tx: Session,
    athlete_id: int,
    movement_keys: Sequence[str],
    *,
    before: date,
    since: date | None = None,
) -> tuple[BestSet, ...]:
    """Return the best of what was done in a span, one for each movement and resistance."""
    planned = DOSE["rung"].as_string().label("planned")
    taken = DONE["rung"].as_string().label("taken")
    query = (
        select_columns(
            ITEMS.c.movement_key, planned, taken, func.max(DONE["value"].as_float()).label("value")
        )
        .select_from(SESSIONS)
        .join(ITEMS, SESSIONS.c.id == ITEMS.c.session_id)
        .join(SETS, SETS.c.item_id == ITEMS.c.id)
        .where(
            SESSIONS.c.athlete_id == athlete_id,
            SESSIONS.c.on < before,
            ITEMS.c.movement_key.in_(movement_keys),
            ITEMS.c.dose.is_not(None),
            SETS.c.replaced_at.is_(None),
        )
        .group_by(ITEMS.c.movement_key, planned, taken)
    )
    if since is not None:
        query = query.where(SESSIONS.c.on >= since)
    return tuple(
        BestSet(
            movement_key=row.movement_key,
            planned=Rung.model_validate_json(row.planned) if row.planned else NO_RESISTANCE,
            taken=Rung.model_validate_json(row.taken) if row.taken else None,
            value=row.value,
        )
        for row in read_rows(tx, query)
    )


def movements_trained(tx: Session, athlete_id: int, *, since: date, before: date) -> frozenset[str]:
    """Return the movements with a reported set in a span of days, by key."""
    query = (
        select_columns(ITEMS.c.movement_key)
        .select_from(SESSIONS)
        .join(ITEMS, SESSIONS.c.id == ITEMS.c.session_id)
        .where(
            SESSIONS.c.athlete_id == athlete_id,
            SESSIONS.c.on >= since,
            SESSIONS.c.on < before,
            _has_sets(),
        )
        .distinct()
    )
    return frozenset(row.movement_key for row in read_rows(tx, query))


def _done(athlete_id: int, *, before: date | None = None, since: date | None = None) -> Any:
    query = (
        select_columns(*TOLD)
        .select_from(SESSIONS)
        .join(ITEMS, SESSIONS.c.id == ITEMS.c.session_id)
        .where(SESSIONS.c.athlete_id == athlete_id, ITEMS.c.dose.is_not(None))
    )
    if before is not None:
        query = query.where(SESSIONS.c.on < before)
    if since is not None:
        query = query.where(SESSIONS.c.on >= since)
    return query


def _in_order(query: Any) -> Any:
    return query.order_by(SESSIONS.c.on, SESSIONS.c.id, ITEMS.c.position)


def _has_sets() -> Any:
    return exists().where(SETS.c.item_id == ITEMS.c.id, SETS.c.replaced_at.is_(None))


def _exposures(tx: Session, query: Any) -> tuple[Exposure, ...]:
    """Read only what an exposure holds: reasons and the like are none of its business."""
    rows = read_rows(tx, query)
    sets = _sets_of(tx, [row.id for row in rows]) if rows else {}
    return tuple(
        Exposure(on=row.on, dose=row.dose, sets=tuple(sets[row.id]), reserve=row.reserve)
        for row in rows
        if row.id in sets
    )


def _sets_of(tx: Session, item_ids: Sequence[int]) -> dict[int, list[SetDone]]:
    query = (
        select_columns(SETS.c.item_id, SETS.c.done)
        .where(SETS.c.item_id.in_(item_ids), SETS.c.replaced_at.is_(None))
        .order_by(SETS.c.number, SETS.c.id)
    )
    found: dict[int, list[SetDone]] = {}
    for row in read_rows(tx, query):
        found.setdefault(row.item_id, []).append(row.done)
    return found
