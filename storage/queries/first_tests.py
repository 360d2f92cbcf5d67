"""Guided tests: rounds and attempts, as they stand now."""

from collections.abc import Sequence
from datetime import date, datetime
from typing import Any

from sqlalchemy import select as select_columns
from sqlmodel import Session, col, select, update

from scheduler.reasons import Reason
from scheduler.training.baseline_values import BaselinePlan, Ended, TestedSet
from storage.queries.session_rows import read_rows
from storage.records.first_tests import AttemptRecord, Begins, RoundEnd, TestRound, TestsWhy
from storage.tables import metadata
from storage.tables.first_tests import TestAttemptRow, TestRoundRow

ATTEMPTS = metadata.tables["test_attempt"]


def open_round(
    tx: Session,
    *,
    athlete_id: int,
    why: TestsWhy,
    begins: Begins,
    plan: BaselinePlan,
    reasons: Sequence[Reason],
    stage_then: int,
    at: datetime,
    opened_by_id: int | None = None,
) -> TestRound:
    """Write a round that begins; an athlete has one open round at most."""
    row = TestRoundRow(
        athlete_id=athlete_id,
        why=why,
        begins=begins,
        plan=plan,
        reasons=tuple(reasons),
        stage_then=stage_then,
        opened_at=at,
        opened_by_id=opened_by_id,
    )
    tx.add(row)
    tx.flush()
    return TestRound.model_validate(row)


def round_open(tx: Session, athlete_id: int) -> TestRound | None:
    """Return the athlete's open round."""
    row = tx.exec(
        select(TestRoundRow).where(
            TestRoundRow.athlete_id == athlete_id, col(TestRoundRow.closed_at).is_(None)
        )
    ).first()
    return None if row is None else TestRound.model_validate(row)


def rounds(tx: Session, athlete_id: int, *, since: datetime | None = None) -> tuple[TestRound, ...]:
    """Return an athlete's rounds, the latest first."""
    query = select(TestRoundRow).where(TestRoundRow.athlete_id == athlete_id)
    if since is not None:
        query = query.where(col(TestRoundRow.opened_at) >= since)
    rows = tx.exec(query.order_by(col(TestRoundRow.opened_at).desc(), col(TestRoundRow.id).desc()))
    return tuple(TestRound.model_validate(row) for row in rows)


def close_round(tx: Session, round_id: int, *, at: datetime, end: RoundEnd) -> None:
    """The round is over."""
    row = tx.get_one(TestRoundRow, round_id)
    row.closed_at, row.end = at, end
    tx.add(row)
    tx.flush()


def count_day(tx: Session, round_id: int) -> None:
    """One more session went to this round."""
    row = tx.get_one(TestRoundRow, round_id)
    row.days_sent += 1
    tx.add(row)
    tx.flush()


def attempts_of(tx: Session, round_id: int) -> tuple[AttemptRecord, ...]:
    """Return the attempts of a round as they stand, the earliest first."""
    rows = tx.exec(
        select(TestAttemptRow)
        .where(TestAttemptRow.round_id == round_id, col(TestAttemptRow.replaced_at).is_(None))
        .order_by(col(TestAttemptRow.id))
    )
    return tuple(AttemptRecord.model_validate(row) for row in rows)


def attempts_in(tx: Session, session_id: int) -> tuple[AttemptRecord, ...]:
    """Return the attempts of one session as they stand, the earliest first."""
    rows = tx.exec(
        select(TestAttemptRow)
        .where(TestAttemptRow.session_id == session_id, col(TestAttemptRow.replaced_at).is_(None))
        .order_by(col(TestAttemptRow.id))
    )
    return tuple(AttemptRecord.model_validate(row) for row in rows)


def movements_of_session(tx: Session, session_id: int) -> frozenset[str]:
    """Return what was tested in a session, by key."""
    query = select_columns(ATTEMPTS.c.movement_key).where(
        ATTEMPTS.c.session_id == session_id,
        ATTEMPTS.c.replaced_at.is_(None),
        ATTEMPTS.c.ended != Ended.SKIPPED,
    )
    return frozenset(row.movement_key for row in read_rows(tx, query))


def tested_sets(tx: Session, athlete_id: int, *, since: date) -> tuple[TestedSet, ...]:
    """Return what was tested without pain from a day on, the earliest first."""
    query = (
        select_columns(ATTEMPTS)
        .where(
            ATTEMPTS.c.athlete_id == athlete_id,
            ATTEMPTS.c.on >= since,
            ATTEMPTS.c.replaced_at.is_(None),
            ATTEMPTS.c.ended == Ended.DONE,
            ATTEMPTS.c.value.is_not(None),
        )
        .order_by(ATTEMPTS.c.on, ATTEMPTS.c.id)
    )
    return tuple(
        TestedSet(
            on=row.on,
            movement_key=row.movement_key,
            measure=row.measure,
            side=row.side,
            value=row.value,
            rung=row.rung,
            reserve=row.reserve,
        )
        for row in read_rows(tx, query)
    )


def add_attempt(tx: Session, **facts: Any) -> int:
    """Write one arm's attempt and return its id."""
    row = TestAttemptRow(**facts)
    tx.add(row)
    tx.flush()
    return row.id or 0


def change_attempts(tx: Session, ids: Sequence[int], **facts: Any) -> None:
    """Change what is known of attempts, such as what was left."""
    tx.exec(update(TestAttemptRow).where(col(TestAttemptRow.id).in_(ids)).values(**facts))
    tx.expire_all()


def take_back_attempts(tx: Session, ids: Sequence[int], *, at: datetime) -> None:
    """These attempts stand no more; they stay on record as replaced."""
    change_attempts(tx, ids, replaced_at=at)
