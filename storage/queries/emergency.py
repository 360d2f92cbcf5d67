"""The emergency numbers that coaches confirmed, by country."""

from datetime import datetime

from sqlmodel import Session

from storage.tables.safety import EmergencyNumberRow


def number_of(tx: Session, *, coach_id: int, country: str) -> str | None:
    """Return what the coach confirmed for a country."""
    row = tx.get(EmergencyNumberRow, (coach_id, country))
    return None if row is None else row.number


def confirm(tx: Session, *, coach_id: int, country: str, number: str, at: datetime) -> None:
    """Write down what the coach confirmed; a later number replaces it."""
    row = tx.get(EmergencyNumberRow, (coach_id, country))
    if row is None:
        row = EmergencyNumberRow(coach_id=coach_id, country=country, number=number, confirmed_at=at)
    row.number, row.confirmed_at = number, at
    tx.add(row)
    tx.flush()
