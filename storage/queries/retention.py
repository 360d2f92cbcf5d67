"""How long words are kept: facts stay as long as the athlete does, words come to an end.

Raw messages and sent texts end after 7 days (``storage.inbox``, ``storage.outbox``), reports of
pain with the athlete (``storage.erasure``).
"""

from datetime import datetime, timedelta

from sqlmodel import Session, col, delete, func, select, update

from storage.queries import due
from storage.records.care import AlertState
from storage.tables.care import AlertRow, AuditRow, PassedOnRow
from storage.tables.first_tests import RemarkRow
from storage.tables.media import ClipRow
from storage.tables.wire import ButtonRow, DialogRow

CAPTIONS_KEPT = timedelta(days=28)  # [days] ch: as long as the reading of a message
READING_KEPT = timedelta(days=28)  # [days] ch: a coach looks four weeks back, no further
WORDS_KEPT = timedelta(days=365)
"""[days] ch: a season and the talk about it. Who decided what, and when, stays; the sentences that
it was said in are of use to nobody later, and say more about a person than a decision needs."""
READ_ACTS = frozenset({"reading.choose"})
"""Buttons that hold what was read in a message, until one of them is tapped."""
WORDS_EMPTY_BEFORE = "words_empty_before"
TOLD_IN_WORDS = "other_training"
"""The entry of the record whose facts hold the athlete's own word for what they did."""


def forget_readings(tx: Session, *, now: datetime) -> int:
    """Take away what was read in a message and never chosen; return how many readings."""
    old = col(ButtonRow.made_at) < now - READING_KEPT
    return tx.exec(delete(ButtonRow).where(old, col(ButtonRow.act).in_(READ_ACTS))).rowcount


def forget_remarks(tx: Session, *, now: datetime) -> int:
    """Take away what stood beside results, as old as a reading may be; return how many."""
    return tx.exec(delete(RemarkRow).where(col(RemarkRow.at) < now - READING_KEPT)).rowcount


def forget_captions(tx: Session, *, now: datetime) -> int:
    """Empty the words under clips that were answered long enough ago; return of how many."""
    answered = col(ClipRow.answered_at) < now - CAPTIONS_KEPT
    clips = update(ClipRow).where(answered, col(ClipRow.caption) != "")
    return tx.exec(clips.values(caption="")).rowcount


def forget_words(tx: Session, *, now: datetime) -> int:
    """Empty words that are older than a year; return of how many records.

    What still waits for a person's answer keeps its words until it has one.
    """
    before = now - WORDS_KEPT
    passed_on = update(PassedOnRow).where(
        col(PassedOnRow.at) < before,
        col(PassedOnRow.answered_at).is_not(None),
        col(PassedOnRow.words) != "",
    )
    alerts = update(AlertRow).where(
        col(AlertRow.raised_at) < before,
        col(AlertRow.state) != AlertState.OPEN,
        col(AlertRow.words) != "",
    )
    emptied = tx.exec(passed_on.values(words="")).rowcount
    emptied += tx.exec(alerts.values(words="")).rowcount
    tx.exec(delete(DialogRow).where(col(DialogRow.changed_at) < before))
    return emptied + _forget_audit_words(tx, before=before)


def _forget_audit_words(tx: Session, *, before: datetime) -> int:
    """Empty the record's words, each row looked at once: the record of years is long."""
    since = due.mark(tx, WORDS_EMPTY_BEFORE)
    first = _first_id_from(tx, since) if since is not None else 0
    last = _first_id_from(tx, before)
    span = (col(AuditRow.id) >= first, col(AuditRow.id) < last)
    emptied = tx.exec(
        update(AuditRow).where(*span, col(AuditRow.words) != "").values(words="")
    ).rowcount
    for row in tx.exec(select(AuditRow).where(*span, AuditRow.what == TOLD_IN_WORDS)):
        row.after = {key: value for key, value in row.after.items() if key != "name"}
        tx.add(row)
    due.set_mark(tx, WORDS_EMPTY_BEFORE, at=before)
    return emptied


def _first_id_from(tx: Session, instant: datetime) -> int:
    """Find the first entry of the record from an instant on, by halving: ids grow with time."""
    low, high = 0, (tx.exec(select(func.max(AuditRow.id))).one() or 0) + 1
    while low < high:
        middle = (low + high) // 2
        row = tx.exec(
            select(AuditRow.id, AuditRow.at)
            .where(col(AuditRow.id) >= middle)
            .order_by(col(AuditRow.id))
            .limit(1)
        ).first()
        if row is None or row[1] >= instant:
            high = middle
        else:
            low = (row[0] or 0) + 1
    return low
