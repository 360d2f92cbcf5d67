"""The versions of the files that a coach may replace; the newest of each name is in force."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlmodel import Session, col, func, select

from storage.records.media import FileKind, FileVersion
from storage.tables.media import FileVersionRow


def newest_id(tx: Session) -> int | None:
    """Return the newest version's id of the whole house, None where nothing was replaced."""
    return tx.exec(select(func.max(FileVersionRow.id))).one()


def add(
    tx: Session,
    *,
    coach_id: int,
    kind: FileKind,
    name: str,
    content: str | None,
    meaning: Mapping[str, Any],
    words: str,
    by_id: int,
    at: datetime,
) -> FileVersion:
    """Put a version in force."""
    row = FileVersionRow(
        coach_id=coach_id,
        kind=kind,
        name=name,
        content=content,
        meaning=dict(meaning),
        words=words,
        made_at=at,
        made_by_id=by_id,
    )
    tx.add(row)
    tx.flush()
    return FileVersion.model_validate(row)


def version(tx: Session, version_id: int) -> FileVersion | None:
    """Return one version."""
    row = tx.get(FileVersionRow, version_id)
    return None if row is None else FileVersion.model_validate(row)


def of_file(
    tx: Session, *, coach_id: int, kind: FileKind, name: str, most: int
) -> tuple[FileVersion, ...]:
    """Return the latest versions of a file, the newest first."""
    rows = tx.exec(
        select(FileVersionRow)
        .where(
            FileVersionRow.coach_id == coach_id,
            FileVersionRow.kind == kind,
            FileVersionRow.name == name,
        )
        .order_by(col(FileVersionRow.id).desc())
        .limit(most)
    )
    return tuple(FileVersion.model_validate(row) for row in rows)


def in_force(tx: Session, *, coach_id: int, kind: FileKind) -> tuple[FileVersion, ...]:
    """Return the newest version of each file of a kind."""
    newest = (
        select(func.max(FileVersionRow.id))
        .where(FileVersionRow.coach_id == coach_id, FileVersionRow.kind == kind)
        .group_by(col(FileVersionRow.name))
    )
    rows = tx.exec(
        select(FileVersionRow)
        .where(col(FileVersionRow.id).in_(newest))
        .order_by(col(FileVersionRow.name))
    )
    return tuple(FileVersion.model_validate(row) for row in rows)


def meanings(tx: Session, kind: FileKind) -> tuple[Mapping[str, Any], ...]:
    """Return what every version of anybody's files of a kind meant, the oldest first."""
    rows = tx.exec(
        select(FileVersionRow.meaning)
        .where(FileVersionRow.kind == kind)
        .order_by(col(FileVersionRow.id))
    )
    return tuple(rows)
