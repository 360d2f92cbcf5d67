"""What buttons and open questions stand for: stored references, bound to a chat and a person."""

import secrets
from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import select
from sqlmodel import Session, col, delete, update

from storage.records.wire import Button, Dialog, OpenQuestion
from storage.tables import metadata
from storage.tables.wire import ButtonRow, DialogRow

TOKEN_BYTES = 12  # [bytes] ch: 96 random bits in 16 characters, far below the platform's 64 bytes
SECRET_BYTES = 24  # [bytes] ch: 192 random bits; at least 128 are asked for
BUTTON_KEPT = timedelta(days=90)  # [days] ch: what is tapped later is asked about anew
QUESTION_KEPT = timedelta(days=3)  # [days] ch: after that a bare number is no answer any more

QUESTIONS = metadata.tables["question"]

TokenMaker = Callable[[], str]


def random_token() -> str:
    """Return an opaque reference that says nothing about what it stands for."""
    return secrets.token_urlsafe(TOKEN_BYTES)


def random_secret() -> str:
    """Return the secret of a personal link, in the characters that a deep link allows."""
    return secrets.token_urlsafe(SECRET_BYTES)


def new_button(
    tx: Session,
    *,
    chat_id: int,
    person_id: int,
    act: str,
    arguments: Mapping[str, Any],
    now: datetime,
    make_token: TokenMaker = random_token,
) -> str:
    """Store what a button means and return its token."""
    token = make_token()
    tx.add(
        ButtonRow(
            token=token,
            chat_id=chat_id,
            person_id=person_id,
            act=act,
            arguments=dict(arguments),
            made_at=now,
        )
    )
    return token


def button(tx: Session, *, token: str, chat_id: int) -> Button | None:
    """Return what a token stands for in this chat; in any other chat it stands for nothing."""
    row = tx.get(ButtonRow, token)
    return None if row is None or row.chat_id != chat_id else Button.model_validate(row)


def unused_arguments(
    tx: Session, *, person_id: int, act: str, since: datetime
) -> tuple[Mapping[str, Any], ...]:
    """Return what the buttons of an act mean that somebody was shown lately and never tapped."""
    query = select(col(ButtonRow.arguments)).where(
        col(ButtonRow.person_id) == person_id,
        col(ButtonRow.act) == act,
        col(ButtonRow.made_at) >= since,
        col(ButtonRow.used_at).is_(None),
    )
    return tuple(row[0] for row in tx.execute(query))


def mark_used(tx: Session, token: str, *, at: datetime) -> None:
    """Remember the first tap."""
    tx.exec(
        update(ButtonRow)
        .where(col(ButtonRow.token) == token, col(ButtonRow.used_at).is_(None))
        .values(used_at=at)
    )


def forget_buttons(tx: Session, *, now: datetime) -> int:
    """Take away what was shown long ago, and the words that it holds; return how many."""
    gone = tx.exec(delete(ButtonRow).where(col(ButtonRow.made_at) < now - BUTTON_KEPT))
    return gone.rowcount


def ask(
    tx: Session,
    *,
    chat_id: int,
    person_id: int,
    kind: str,
    subject: Mapping[str, Any],
    now: datetime,
) -> None:
    """Make this the one question that is open in the chat."""
    close_question(tx, chat_id)
    tx.exec(
        QUESTIONS.insert().values(
            chat_id=chat_id,
            person_id=person_id,
            kind=kind,
            subject=dict(subject),
            asked_at=now,
            expires_at=now + QUESTION_KEPT,
        )
    )


def open_question(tx: Session, *, chat_id: int, now: datetime) -> OpenQuestion | None:
    """Return the open question of a chat, unless it is too old to be meant."""
    query: Any = select(QUESTIONS).where(QUESTIONS.c.chat_id == chat_id)
    row = tx.exec(query).first()
    return None if row is None or row.expires_at <= now else OpenQuestion.model_validate(row)


def close_question(tx: Session, chat_id: int) -> None:
    """Nothing is asked in this chat any more."""
    tx.exec(QUESTIONS.delete().where(QUESTIONS.c.chat_id == chat_id))


def dialog(tx: Session, chat_id: int) -> Dialog | None:
    """Return the dialog that a chat is in; it resumes days later where it stopped."""
    row = tx.get(DialogRow, chat_id)
    return None if row is None else Dialog.model_validate(row)


def keep_dialog(
    tx: Session,
    *,
    chat_id: int,
    person_id: int,
    kind: str,
    step: str,
    answers: Mapping[str, Any],
    now: datetime,
) -> None:
    """Remember where a dialog stands."""
    end_dialog(tx, chat_id)
    tx.add(
        DialogRow(
            chat_id=chat_id,
            person_id=person_id,
            kind=kind,
            step=step,
            answers=dict(answers),
            changed_at=now,
        )
    )
    tx.flush()


def end_dialog(tx: Session, chat_id: int) -> None:
    """The dialog is over."""
    tx.exec(delete(DialogRow).where(col(DialogRow.chat_id) == chat_id))
