"""Everything that is kept about one athlete, for a file of their own: only read, in order."""

from collections.abc import Sequence
from datetime import date, datetime

from sqlalchemy import select as select_columns
from sqlmodel import Session, case, col, func, select

from storage.queries.session_rows import SESSIONS, session_records
from storage.records.care import AlertState, AuditEntry
from storage.records.first_tests import AttemptRecord
from storage.records.training import SessionRecord, SessionState
from storage.tables.care import AlertRow, AuditRow, PainEventRow, PassedOnRow
from storage.tables.first_tests import RemarkRow, TestAttemptRow
from storage.tables.media import ClipRow
from storage.tables.people import AthleteRow
from storage.tables.training import ItemRow, SessionRow, SetRow


def sessions(
    tx: Session, athlete_id: int, *, since: date | None = None
) -> tuple[SessionRecord, ...]:
    """Return every session of an athlete, or those from a day on, with all that was said."""
    query = select_columns(SESSIONS).where(SESSIONS.c.athlete_id == athlete_id)
    if since is not None:
        query = query.where(SESSIONS.c.on >= since)
    return session_records(tx, query.order_by(SESSIONS.c.on, SESSIONS.c.id))


def attempts(tx: Session, athlete_id: int) -> tuple[AttemptRecord, ...]:
    """Return every attempt of an athlete at a guided test as it stands, the earliest first."""
    rows = tx.exec(
        select(TestAttemptRow)
        .where(TestAttemptRow.athlete_id == athlete_id, col(TestAttemptRow.replaced_at).is_(None))
        .order_by(col(TestAttemptRow.on), col(TestAttemptRow.id))
    )
    return tuple(AttemptRecord.model_validate(row) for row in rows)


def words_kept(tx: Session, athlete_id: int) -> tuple[tuple[datetime, str], ...]:
    """Return the words of an athlete that went to the coach or raised an alert, with when.

    A remark beside results is shown to the coach, and so is what stands under a clip.
    """
    passed = tx.exec(
        select(PassedOnRow.at, PassedOnRow.words).where(PassedOnRow.athlete_id == athlete_id)
    )
    alerts = tx.exec(
        select(AlertRow.raised_at, AlertRow.words).where(AlertRow.athlete_id == athlete_id)
    )
    captions = tx.exec(
        select(ClipRow.at, ClipRow.caption).where(
            ClipRow.athlete_id == athlete_id, col(ClipRow.caption) != ""
        )
    )
    remarks = tx.exec(
        select(RemarkRow.at, RemarkRow.words).where(RemarkRow.athlete_id == athlete_id)
    )
    return (*passed.all(), *alerts.all(), *captions.all(), *remarks.all())


def decisions(tx: Session, athlete_id: int) -> tuple[AuditEntry, ...]:
    """Return everything that was decided about an athlete, the earliest first."""
    rows = tx.exec(
        select(AuditRow)
        .where(AuditRow.athlete_id == athlete_id)
        .order_by(col(AuditRow.at), col(AuditRow.id))
    )
    return tuple(AuditEntry.model_validate(row) for row in rows)


def counts(tx: Session, athlete_id: int) -> dict[str, int]:
    """Count what is kept about an athlete: no person is seen in these."""
    sets = (
        select(func.count())
        .select_from(SetRow)
        .join(ItemRow, col(ItemRow.id) == col(SetRow.item_id))
        .join(SessionRow, col(SessionRow.id) == col(ItemRow.session_id))
        .where(SessionRow.athlete_id == athlete_id)
    )
    found = {"sets": tx.exec(sets).one()}
    for name, table in (("sessions", SessionRow), ("alerts", AlertRow), ("decisions", AuditRow)):
        rows = select(func.count()).select_from(table).where(table.athlete_id == athlete_id)
        found[name] = tx.exec(rows).one()
    pain = (
        select(func.count()).select_from(PainEventRow).where(PainEventRow.athlete_id == athlete_id)
    )
    return {**found, "pain_events": tx.exec(pain).one()}


def last_trained_of(tx: Session, athlete_ids: Sequence[int]) -> dict[int, date]:
    """Return the last day on which each athlete trained."""
    rows = tx.exec(
        select(SessionRow.athlete_id, func.max(SessionRow.on))
        .where(
            col(SessionRow.athlete_id).in_(athlete_ids), SessionRow.state == SessionState.TRAINED
        )
        .group_by(col(SessionRow.athlete_id))
    )
    return dict(rows.all())


def waiting_of(tx: Session, athlete_ids: Sequence[int]) -> dict[int, tuple[int, int]]:
    """Count each athlete's open alerts and unanswered messages."""
    alerts = (
        select(func.count())
        .where(AlertRow.athlete_id == AthleteRow.person_id, AlertRow.state == AlertState.OPEN)
        .scalar_subquery()
    )
    messages = (
        select(func.sum(case((col(PassedOnRow.answered_at).is_(None), 1), else_=0)))
        .where(PassedOnRow.athlete_id == AthleteRow.person_id)
        .scalar_subquery()
    )
    rows = tx.exec(
        select(AthleteRow.person_id, alerts, messages).where(
            col(AthleteRow.person_id).in_(athlete_ids)
        )
    )
    return {athlete_id: (int(open_), int(waiting or 0)) for athlete_id, open_, waiting in rows}
