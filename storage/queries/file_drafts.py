"""Files that a coach sent and that are not in force yet: kept as they were read."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlmodel import Session, col, delete

from storage.records.media import FileDraft, FileKind
from storage.tables.media import FileDraftRow


def keep(
    tx: Session,
    *,
    draft_id: str,
    coach_id: int,
    kind: FileKind,
    name: str,
    content: str | None,
    meaning: Mapping[str, Any],
    base_id: int | None,
    at: datetime,
) -> None:
    """Keep a file as it was read; ``draft_id`` is drawn by chance, so that none is given anew."""
    tx.add(
        FileDraftRow(
            id=draft_id,
            coach_id=coach_id,
            kind=kind,
            name=name,
            content=content,
            meaning=dict(meaning),
            base_id=base_id,
            at=at,
        )
    )
    tx.flush()


def draft(tx: Session, draft_id: str, *, coach_id: int) -> FileDraft | None:
    """Return a coach's own draft, while it is kept."""
    row = tx.get(FileDraftRow, draft_id)
    return None if row is None or row.coach_id != coach_id else FileDraft.model_validate(row)


def forget(tx: Session, draft_id: str) -> None:
    """Let go of a draft: it is in force now, as a version."""
    tx.exec(delete(FileDraftRow).where(col(FileDraftRow.id) == draft_id))
