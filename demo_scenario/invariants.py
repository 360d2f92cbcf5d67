"""What must hold after any play; each breach is named, and none is explained away."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime

from sqlmodel import Session, col, select

from bot.turn import Turn
from demo_scenario import season_invariants as season
from demo_scenario.play import Stage
from demo_scenario.sent_weeks import broken_weeks, left_out_but_sent
from storage.records.care import AlertState
from storage.records.wire import MessageKind, Operation
from storage.tables.care import AlertRow
from storage.tables.wire import DueRow, InboxRow, InboxState, OutboxRow, OutboxState

ONCE_ONLY = (MessageKind.SESSION.value, MessageKind.REMINDER.value)
SHOWN = frozenset(
    one.value
    for one in (
        Operation.SEND,
        Operation.COPY,
        Operation.MEDIA,
        Operation.DOCUMENT,
        Operation.PHOTO,
        Operation.ALBUM,  # a row each
    )
)


@dataclass(frozen=True, slots=True)
class Broken:
    """One breach: which invariant, and where."""

    rule: str
    where: str

    def __str__(self) -> str:
        """Write it in a line."""
        return f"{self.rule}: {self.where}"


def check(stage: Stage) -> tuple[Broken, ...]:
    """Return every breach at the end of a play."""
    with stage.house.database.transaction() as tx:
        return breaches_in(stage.house.turn(tx, stage.clock.now()), stage)


def breaches_in(turn: Turn, stage: Stage) -> tuple[Broken, ...]:
    """Return every breach in the database as this turn sees it."""
    tx, ended_at = turn.tx, turn.now
    return tuple(
        Broken(rule, where)
        for rule, found in (
            ("a message without an outcome", _unhandled(tx)),
            ("a message the bot never stored", _never_stored(tx, stage)),
            ("something sent twice", _twice(tx)),
            ("a message that was refused, lost or doubled", _not_sent(tx, ended_at)),
            ("the screens show something else than was sent", _other_than_sent(tx, stage)),
            ("an alert that is forgotten", _forgotten_alerts(tx, ended_at)),
            ("a week against its rules, without a word", broken_weeks(turn, start=_start(stage))),
            ("something left out was sent", left_out_but_sent(turn, start=_start(stage))),
            ("a clip that nobody sees", season.clips_out_of_sight(turn)),
            ("private words were told", season.private_words_told(stage)),
            ("something of an erased person is left", season.left_behind(tx, stage)),
            ("an album too long", season.albums_too_long(stage)),
            ("somebody could not do what they meant to", season.could_not_do(stage)),
        )
        for where in found
    )


def _start(stage: Stage) -> date:
    return stage.team.start


def _unhandled(tx: Session) -> Iterator[str]:
    for row in tx.exec(select(InboxRow).order_by(col(InboxRow.id))):
        if row.state is not InboxState.HANDLED or not row.outcome:
            yield f"inbox {row.id} is {row.state.value} ({row.fault_reference or 'no reference'})"


def _never_stored(tx: Session, stage: Stage) -> Iterator[str]:
    stored = len(tx.exec(select(InboxRow.id).where(InboxRow.update_id >= 0)).all())  # no files
    queue = stage.server.platform.updates
    if queue.confirmed != stored or queue.forgotten or len(queue):
        yield f"{queue.confirmed} confirmed, {stored} stored, {queue.forgotten} forgotten"


def _twice(tx: Session) -> Iterator[str]:
    dues = Counter(tx.exec(select(DueRow.person_id, DueRow.kind, DueRow.subject)).all())
    yield from (f"due {key}" for key, count in dues.items() if count > 1)
    sent = Counter(
        (row.chat_id, row.kind, row.subject)
        for row in tx.exec(select(OutboxRow).where(col(OutboxRow.kind).in_(ONCE_ONLY)))
        if row.operation == Operation.SEND.value
    )
    yield from (f"{key}" for key, count in sent.items() if count > 1)


def _not_sent(tx: Session, ended_at: datetime) -> Iterator[str]:
    for row in tx.exec(select(OutboxRow).order_by(col(OutboxRow.id))):
        is_ahead = row.state is OutboxState.WAITING and row.not_before > ended_at
        if row.is_doubtful or not (row.state is OutboxState.SENT or is_ahead):
            yield f"outbox {row.id} ({row.kind}) is {row.state.value}: {row.fault or 'no fault'}"


def _other_than_sent(tx: Session, stage: Stage) -> Iterator[str]:
    rows = tx.exec(select(OutboxRow).where(OutboxRow.state == OutboxState.SENT))
    sent = Counter(row.chat_id for row in rows if row.operation in SHOWN)
    for player in stage.players:
        if season.is_erased(player):
            continue  # of whom nothing is counted any more
        for person in (phone.person for phone in player.phones):
            shown, counted = len(person.sees_from_bot()), sent[person.chat_id]
            more = shown - counted
            if more < 0 or (more and not season.has_practised(tx, person.chat_id)):
                yield f"{player.name}: {counted} sent, {shown} on the screen"


def _forgotten_alerts(tx: Session, ended_at: datetime) -> Iterator[str]:
    for row in tx.exec(select(AlertRow).where(AlertRow.state == AlertState.OPEN)):
        if row.tell_at is None or row.tell_at <= ended_at:
            yield f"alert {row.id} is open and is not told again"
