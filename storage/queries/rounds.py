"""What is to be known of the sessions around today, in one statement and without their items."""

from datetime import date
from typing import Any

from sqlalchemy import and_, exists, func, or_, select
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
        # What was left out before it was sent is nobody's answer.
        or_(ITEMS.c.is_skipped, and_(ITEMS.c.is_left_out, ITEMS.c.dose.is_not(None)), has_sets),
    )
    answered_at = (
        select(func.max(SETS.c.reported_at))
        .join(ITEMS, ITEMS.c.id == SETS.c.item_id)
        .where(
            ITEMS.c.session_id == SESSIONS.c.id,
            ITEMS.c.dose.is_not(None),
            ~ITEMS.c.is_left_out,
            SETS.c.replaced_at.is_(None),
        )
        .scalar_subquery()
    )
    columns = [SESSIONS.c[name] for name in ("id", "on", "state", "sent_at", "closed_at")]
    query: Any = (
        select(*columns, is_answered.label("has_answers"), answered_at.label("answered_at"))
        .where(SESSIONS.c.athlete_id == athlete_id, SESSIONS.c.on >= first, SESSIONS.c.on <= last)
        .order_by(SESSIONS.c.on, SESSIONS.c.id)
    )
    tx.flush()
    return tuple(SessionOutline.model_validate(row) for row in tx.exec(query))
