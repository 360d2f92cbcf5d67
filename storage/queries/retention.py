"""How long words are kept: facts stay as long as the athlete does, words come to an end.

Raw messages and sent texts end after 7 days (``storage.inbox``, ``storage.outbox``), reports of
pain with the athlete (``storage.erasure``).
"""

from datetime import datetime, timedelta

from sqlalchemy import Text, cast
from sqlmodel import Session, col, delete, func, or_, select, update

from storage.queries import due
from storage.records.care import AlertState
from storage.tables.care import AlertRow, AuditRow, PassedOnRow, ProposalRow
from storage.tables.first_tests import RemarkRow
from storage.tables.media import ClipRow, FileDraftRow
from storage.tables.wire import ButtonRow, DialogRow

CAPTIONS_KEPT = timedelta(days=28)  # [days] ch: as long as the reading of a message
READING_KEPT = timedelta(days=28)  # [days] ch: a coach looks four weeks back, no further
WORDS_KEPT = timedelta(days=365)
"""[days] ch: a season and the talk about it. Who decided what, and when, stays; the sentences that
it was said in are of use to nobody later, and say more about a person than a decision needs."""
READ_ACTS = frozenset({"reading.choose"})
"""Buttons that hold what was read in a message, until one of them is tapped."""
DRAFTS_KEPT = timedelta(days=90)
"""[days] ch: a draft of a month that nobody sent in three is no longer about now."""
FILE_DRAFTS_KEPT = timedelta(days=7)  # [days] ch: as long as the message that it came with
REVIEW, LAPSED = "review", "lapsed"
"""The kind of a drafted review, and the answer of one that nobody gave."""
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
    """Empty the words under clips that were answered long enough ago; return of how many.

    A clip that nobody answers keeps its words for a year, and then still waits without them.
    """
    is_over = or_(
        col(ClipRow.answered_at) < now - CAPTIONS_KEPT, col(ClipRow.at) < now - WORDS_KEPT
    )
    clips = update(ClipRow).where(is_over, col(ClipRow.caption) != "")
    return tx.exec(clips.values(caption="")).rowcount


def forget_drafts(tx: Session, *, now: datetime) -> int:
    """Take the text out of drafted reviews: of answered ones as of a reading, of others at the end.

    A draft that nobody answered for so long is closed; return how many lost their text.
    """
    is_over = or_(
        col(ProposalRow.answered_at) < now - READING_KEPT,
        col(ProposalRow.made_at) < now - DRAFTS_KEPT,
    )
    has_text = cast(col(ProposalRow.facts), Text).like('%"text"%')
    rows = tx.exec(select(ProposalRow).where(ProposalRow.kind == REVIEW, is_over, has_text)).all()
    for row in rows:
        row.facts = {key: value for key, value in row.facts.items() if key != "text"}
        if row.answered_at is None:
            row.answered_at, row.answer = now, LAPSED
        tx.add(row)
    return len(rows)


def forget_file_drafts(tx: Session, *, now: datetime) -> int:
    """Take away files that a coach sent and did not put in force in time; return how many."""
    old = col(FileDraftRow.at) < now - FILE_DRAFTS_KEPT
    return tx.exec(delete(FileDraftRow).where(old)).rowcount


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
