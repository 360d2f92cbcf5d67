"""Who is who, who coaches whom, and who may come in by which link."""

import hashlib
from collections.abc import Sequence
from datetime import date, datetime, time
from typing import Any

from sqlmodel import Session, col, delete, func, select, update

from storage.records.people import (
    Athlete,
    AthleteState,
    Invitation,
    Person,
    Profile,
    Role,
)
from storage.tables.people import AthleteRow, InvitationRow, PersonRow
from storage.tables.wire import InboxRow


def add_person(tx: Session, *, name: str, now: datetime, **facts: Any) -> Person:
    """Write a person who has no chat yet."""
    row = PersonRow(name=name, created_at=now, **facts)
    tx.add(row)
    tx.flush()
    return Person.model_validate(row)


def person(tx: Session, person_id: int) -> Person:
    """Return a person who is known to exist."""
    return Person.model_validate(tx.get_one(PersonRow, person_id))


def everybody(tx: Session) -> tuple[tuple[Person, Athlete | None], ...]:
    """Return everybody who was not erased, by id, with the athlete that they are."""
    rows = tx.exec(select(PersonRow).where(PersonRow.name != "").order_by(col(PersonRow.id)))
    known = [Person.model_validate(row) for row in rows]
    return tuple((one, athlete(tx, one.id)) for one in known)


def person_in_chat(tx: Session, chat_id: int) -> Person | None:
    """Return whose chat this is."""
    row = tx.exec(select(PersonRow).where(PersonRow.chat_id == chat_id)).first()
    return None if row is None else Person.model_validate(row)


def change_person(tx: Session, person_id: int, **facts: Any) -> Person:
    """Change what is known of a person and return it as it is now."""
    row = tx.get_one(PersonRow, person_id)
    for name, value in facts.items():
        setattr(row, name, value)
    tx.add(row)
    tx.flush()
    return Person.model_validate(row)


def owners(tx: Session) -> tuple[Person, ...]:
    """Return everybody who runs the bot."""
    rows = tx.exec(select(PersonRow).where(col(PersonRow.is_owner)).order_by(col(PersonRow.id)))
    return tuple(Person.model_validate(row) for row in rows)


def coaches(tx: Session) -> tuple[Person, ...]:
    """Return every coach."""
    rows = tx.exec(select(PersonRow).where(col(PersonRow.is_coach)).order_by(col(PersonRow.id)))
    return tuple(Person.model_validate(row) for row in rows)


def coaches_covered_by(tx: Session, stand_in_id: int) -> tuple[Person, ...]:
    """Return the coaches whose stand-in this person is."""
    rows = tx.exec(
        select(PersonRow)
        .where(PersonRow.stand_in_id == stand_in_id, col(PersonRow.is_coach))
        .order_by(col(PersonRow.id))
    )
    return tuple(Person.model_validate(row) for row in rows)


def last_heard(tx: Session, chat_ids: Sequence[int]) -> dict[int, datetime]:
    """Return when anything last arrived from each chat, as far back as the inbox is kept."""
    # A question a chat, which the index answers with one look, however long the chat.
    last = (
        select(func.max(InboxRow.received_at))
        .where(InboxRow.chat_id == PersonRow.chat_id)
        .scalar_subquery()
    )
    rows = tx.exec(select(PersonRow.chat_id, last).where(col(PersonRow.chat_id).in_(chat_ids)))
    return {chat_id: at for chat_id, at in rows if chat_id is not None and at is not None}


def add_athlete(
    tx: Session,
    *,
    person_id: int,
    coach_id: int,
    profile: Profile,
    on: date,
    session_at: time,
    **facts: Any,
) -> Athlete:
    """Make a person an athlete of a coach."""
    row = AthleteRow(
        person_id=person_id,
        coach_id=coach_id,
        profile=profile,
        stage_since=on,
        session_at=session_at,
        **facts,
    )
    tx.add(row)
    tx.flush()
    return Athlete.model_validate(row)


def athlete(tx: Session, person_id: int) -> Athlete | None:
    """Return the athlete that a person is, if they are one."""
    row = tx.get(AthleteRow, person_id)
    return None if row is None else Athlete.model_validate(row)


def change_athlete(tx: Session, person_id: int, **facts: Any) -> Athlete:
    """Change what is known of an athlete and return it as it is now."""
    row = tx.get_one(AthleteRow, person_id)
    for name, value in facts.items():
        setattr(row, name, value)
    tx.add(row)
    tx.flush()
    return Athlete.model_validate(row)


def athletes_of(
    tx: Session, coach_id: int, *, is_practice: bool = False
) -> tuple[tuple[Person, Athlete], ...]:
    """Return a coach's athletes who have not left, by name; a practice athlete counts apart."""
    rows = tx.exec(
        select(PersonRow, AthleteRow)
        .join(AthleteRow, col(AthleteRow.person_id) == col(PersonRow.id))
        .where(
            AthleteRow.coach_id == coach_id,
            AthleteRow.state != AthleteState.LEFT,
            col(AthleteRow.is_practice) == is_practice,
        )
        .order_by(col(PersonRow.name), col(PersonRow.id))
    )
    return tuple((Person.model_validate(p), Athlete.model_validate(a)) for p, a in rows)


def ids_of_coaches(tx: Session) -> tuple[int, ...]:
    """Return every coach by id."""
    rows = tx.exec(select(PersonRow.id).where(col(PersonRow.is_coach)).order_by(col(PersonRow.id)))
    return tuple(person_id or 0 for person_id in rows)


def ids_of_athletes_in(tx: Session, *states: AthleteState) -> tuple[int, ...]:
    """Return all athletes in these states by id: of ten thousand nothing else is held at once."""
    rows = tx.exec(
        select(AthleteRow.person_id)
        .where(col(AthleteRow.state).in_(states))
        .order_by(col(AthleteRow.person_id))
    )
    return tuple(rows)


def athletes_in(tx: Session, *states: AthleteState) -> tuple[tuple[Person, Athlete], ...]:
    """Return all athletes in these states, by id."""
    rows = tx.exec(
        select(PersonRow, AthleteRow)
        .join(AthleteRow, col(AthleteRow.person_id) == col(PersonRow.id))
        .where(col(AthleteRow.state).in_(states))
        .order_by(col(PersonRow.id))
    )
    return tuple((Person.model_validate(p), Athlete.model_validate(a)) for p, a in rows)


def add_invitation(
    tx: Session,
    *,
    secret: str,
    person_id: int,
    role: Role,
    issued_by_id: int | None,
    expires_at: datetime,
) -> None:
    """Store a personal link; an unused older one of the same person stops working."""
    tx.exec(
        delete(InvitationRow).where(
            col(InvitationRow.person_id) == person_id,
            col(InvitationRow.role) == role,
            col(InvitationRow.used_at).is_(None),
        )
    )
    tx.add(
        InvitationRow(
            secret_digest=_digest(secret),
            person_id=person_id,
            role=role,
            issued_by_id=issued_by_id,
            expires_at=expires_at,
        )
    )
    tx.flush()


def invitation(tx: Session, secret: str) -> Invitation | None:
    """Find the link with this secret, used or not, expired or not."""
    row = tx.exec(
        select(InvitationRow).where(InvitationRow.secret_digest == _digest(secret))
    ).first()
    return None if row is None else Invitation.model_validate(row)


def use_invitation(tx: Session, invitation_id: int, *, at: datetime) -> None:
    """A link works once."""
    tx.exec(update(InvitationRow).where(col(InvitationRow.id) == invitation_id).values(used_at=at))


def _digest(secret: str) -> str:
    return hashlib.sha256(secret.encode()).hexdigest()
