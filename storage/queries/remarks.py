"""Remarks beside results, for the coach; gone when a reading would be (``retention``)."""

from collections.abc import Sequence
from datetime import date, datetime

from sqlmodel import Session, col, select

from storage.records.first_tests import Remark
from storage.tables.first_tests import RemarkRow

WORDS_MOST = 300  # [characters] ch: a remark, not a letter


def add_remark(tx: Session, *, athlete_id: int, at: datetime, on: date, words: str) -> None:
    """Keep what stood beside results."""
    tx.add(RemarkRow(athlete_id=athlete_id, at=at, on=on, words=words[:WORDS_MOST]))


def remarks(
    tx: Session, athlete_ids: Sequence[int], *, since: datetime, most: int
) -> tuple[Remark, ...]:
    """Return the latest remarks of these athletes, the newest first."""
    rows = tx.exec(
        select(RemarkRow)
        .where(col(RemarkRow.athlete_id).in_(athlete_ids), col(RemarkRow.at) >= since)
        .order_by(col(RemarkRow.at).desc(), col(RemarkRow.id).desc())
        .limit(most)
    )
    return tuple(Remark.model_validate(row) for row in rows)
