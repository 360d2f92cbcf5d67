"""What a round of the clock must know of the sessions around today: one statement, no items."""

from datetime import date
from typing import Any

from sqlalchemy import exists, or_, select
from sqlmodel import Session

from storage.queries.session_rows import ITEMS, SESSIONS, SETS
from storage.records.training import SessionOutline


def outlines(
    tx: Session, athlete_id: int, *, first: date, last: date
) -> tuple[SessionOutline, ...]:
    """Return an athlete's sessions in outline from ``first`` to ``last``, both included, by day."""
    has_sets = exists().where(SETS.c.item_id == ITEMS.c.id, SETS.c.replaced_at.is_(None))
    is_answered = exists().where(
        ITEMS.c.session_id == SESSIONS.c.id,
        or_(ITEMS.c.is_skipped, ITEMS.c.is_left_out, has_sets),
    )
    columns = (SESSIONS.c.id, SESSIONS.c.on, SESSIONS.c.state, SESSIONS.c.sent_at)
    query: Any = (
        select(*columns, is_answered.label("has_answers"))
        .where(SESSIONS.c.athlete_id == athlete_id, SESSIONS.c.on >= first, SESSIONS.c.on <= last)
        .order_by(SESSIONS.c.on, SESSIONS.c.id)
    )
    tx.flush()
    return tuple(SessionOutline.model_validate(row) for row in tx.exec(query))
