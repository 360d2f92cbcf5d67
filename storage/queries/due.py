"""What was due and taken care of, each once."""

from datetime import datetime

from sqlalchemy.dialects import postgresql, sqlite
from sqlmodel import Session, col, delete, select

from storage.tables.wire import DueRow, MarkRow


def take(
    tx: Session, *, person_id: int, kind: str, subject: str, due_at: datetime, now: datetime
) -> bool:
    """Claim a due thing for this transaction; False when it was taken care of before."""
    values = {
        "person_id": person_id,
        "kind": kind,
        "subject": subject,
        "due_at": due_at,
        "handled_at": now,
        "outcome": "sent",
    }
    dialect = tx.get_bind().dialect.name
    insert = sqlite.insert if dialect == "sqlite" else postgresql.insert
    done = tx.exec(
        insert(DueRow)
        .values(**values)
        .on_conflict_do_nothing(index_elements=["person_id", "kind", "subject"])
        .returning(col(DueRow.id))
    )
    return done.first() is not None


def note_outcome(tx: Session, *, person_id: int, kind: str, subject: str, outcome: str) -> None:
    """Say that what was due was not sent, and why."""
    row = tx.exec(
        select(DueRow).where(
            DueRow.person_id == person_id, DueRow.kind == kind, DueRow.subject == subject
        )
    ).one()
    row.outcome = outcome
    tx.add(row)


def handled_subjects(tx: Session, person_id: int, *, since: datetime) -> frozenset[tuple[str, str]]:
    """Return what was taken care of for a person since an instant: kind and subject."""
    rows = tx.exec(
        select(DueRow.kind, DueRow.subject).where(
            DueRow.person_id == person_id, col(DueRow.due_at) >= since
        )
    )
    return frozenset((kind, subject) for kind, subject in rows)


def sent(
    tx: Session, *, person_id: int, kind: str, most: int = 3
) -> tuple[tuple[str, datetime], ...]:
    """Return the last of a kind that were sent to a person, the last first: subject, and when."""
    rows = tx.exec(
        select(DueRow.subject, DueRow.due_at)
        .where(DueRow.person_id == person_id, DueRow.kind == kind, DueRow.outcome == "sent")
        .order_by(col(DueRow.due_at).desc())
        .limit(most)
    )
    return tuple((subject, due_at) for subject, due_at in rows)


def late(
    tx: Session, *, handled_from: datetime, due_before: datetime
) -> tuple[tuple[int, str, str], ...]:
    """Return what was handled late since an instant: whose it was, its kind, what became of it."""
    rows = tx.exec(
        select(DueRow.person_id, DueRow.kind, DueRow.outcome)
        .where(col(DueRow.handled_at) >= handled_from, col(DueRow.due_at) < due_before)
        .order_by(col(DueRow.handled_at), col(DueRow.id))
    )
    return tuple((person_id, kind, outcome) for person_id, kind, outcome in rows)


def mark(tx: Session, name: str) -> datetime | None:
    """Return when something of the house's own last happened."""
    row = tx.get(MarkRow, name)
    return None if row is None else row.at


def set_mark(tx: Session, name: str, *, at: datetime) -> None:
    """Remember when something of the house's own happened."""
    row = tx.get(MarkRow, name) or MarkRow(name=name, at=at)
    row.at = at
    tx.add(row)


def clear_mark(tx: Session, name: str) -> None:
    """Forget a mark: what it asked for is done."""
    tx.exec(delete(MarkRow).where(col(MarkRow.name) == name))
