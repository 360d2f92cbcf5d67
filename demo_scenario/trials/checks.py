"""What must be true after a trial, whatever happened: each check counts, and lists its breaches."""

from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import groupby

from sqlmodel import Session, col, select

from demo_scenario.loopback.request_log import RecordedRequest
from demo_scenario.trials.ledger import Ledger, act_in
from demo_scenario.trials.typed_results import sets_seen
from storage.queries import training
from storage.records.wire import MessageKind, Operation
from storage.tables.training import ItemRow, SessionRow, SetRow
from storage.tables.wire import InboxRow, InboxState, OutboxRow, OutboxState

SHOWN_BY = {Operation.SEND.value: "sendMessage", Operation.COPY.value: "copyMessage"}


@dataclass(frozen=True)
class Check:
    """One thing that must be true: how many were looked at, and which of them broke it."""

    what: str
    looked_at: int
    breaches: tuple[str, ...] = ()

    @property
    def is_kept(self) -> bool:
        """True without a breach, if there was anything to look at."""
        return self.looked_at > 0 and not self.breaches


def stored_once_in_order(tx: Session, ledger: Ledger) -> Check:
    """Hold the inbox against what each person wrote and tapped."""
    stored: dict[int, list[str]] = defaultdict(list)
    for row in tx.exec(select(InboxRow).order_by(col(InboxRow.id))):
        stored[row.chat_id or 0].append(act_in(row.raw))
    breaches = [
        f"chat {chat_id}: wrote {len(ledger.acts[chat_id])}, stored {len(stored[chat_id])}"
        for chat_id in ledger.acts.keys() | stored.keys()
        if ledger.acts[chat_id] != stored[chat_id]
    ]
    return Check("replies stored once, in order in each chat", ledger.count, tuple(breaches))


def handled_once(tx: Session) -> Check:
    """Look for updates that wait, were set aside, or met a fault."""
    rows = tx.exec(select(InboxRow)).all()
    breaches = [
        f"inbox {row.id}: {row.state.value}, outcome {row.outcome}, {row.attempts} faults"
        for row in rows
        if row.state is not InboxState.HANDLED or row.outcome is None or row.attempts
    ]
    return Check("replies handled once, with one outcome", len(rows), tuple(breaches))


def recorded_as_typed(tx: Session, ledger: Ledger) -> Check:
    """Hold the recorded sets against what was typed; none replaced, so none handled twice."""
    breaches = []
    for item_id, line in ledger.typed.items():
        item, _ = training.item(tx, item_id)
        if sets_seen(item) != line.sets:
            breaches.append(f"item {item_id}: typed {line.text!r}, recorded {sets_seen(item)}")
    breaches += [
        f"set {row.id} of item {row.item_id} was recorded twice"
        for row in tx.exec(select(SetRow).where(col(SetRow.replaced_at).is_not(None)))
    ]
    return Check("sets recorded as typed", len(ledger.typed), tuple(breaches))


def recorded_as_planned(tx: Session, ledger: Ledger) -> Check:
    """Look whether one tap recorded every item of its session, each set once."""
    breaches = []
    for session_id in ledger.planned:
        for item in training.session(tx, session_id).items:
            if item.dose is None or item.is_left_out:
                continue
            once = Counter((one.number, one.done.side) for one in item.sets)
            if len({number for number, _ in once}) != item.dose.sets or set(once.values()) != {1}:
                breaches.append(f"item {item.id}: {len(item.sets)} of {item.dose.sets} sets")
    return Check("sessions recorded by one tap", len(ledger.planned), tuple(breaches))


def closed_with_effort(tx: Session, ledger: Ledger) -> Check:
    """Hold each session's effort against the tap, and look whether it was closed."""
    breaches = []
    for session_id, effort in ledger.efforts.items():
        session = training.session(tx, session_id)
        if session.effort != effort or session.closed_at is None:
            breaches.append(f"session {session_id}: tapped {effort}, holds {session.effort}")
    return Check("sessions closed with their effort", len(ledger.efforts), tuple(breaches))


def nobody_gave_up(ledger: Ledger, athletes: int) -> Check:
    """Look whether everybody got each answer that they waited for."""
    breaches = tuple(f"{name} waited in vain" for name in ledger.gave_up)
    return Check("athletes answered to the end", athletes, breaches)


def sessions_sent(tx: Session, athletes: int) -> Check:
    """Look whether every session that was due went out, by one operation each."""
    sent = tx.exec(select(SessionRow).where(col(SessionRow.sent_at).is_not(None))).all()
    operations = Counter(
        row.subject
        for row in tx.exec(select(OutboxRow).where(OutboxRow.kind == MessageKind.SESSION.value))
        if row.state is OutboxState.SENT
    )
    breaches = [
        f"session {row.id}: sent by {operations[f'session:{row.id}']} operations"
        for row in sent
        if operations[f"session:{row.id}"] != 1
    ]
    without_dose = tx.exec(
        select(ItemRow.id).where(
            col(ItemRow.session_id).in_([row.id for row in sent]),
            col(ItemRow.dose).is_(None),
            ~col(ItemRow.is_left_out),
        )
    ).all()
    breaches += [f"item {item_id} has no dose" for item_id in without_dose]
    if len(sent) != athletes:
        breaches.append(f"{athletes} were due, {len(sent)} were sent")
    return Check("sessions sent", len(sent), tuple(breaches))


def shown_once(tx: Session, requests: Iterable[RecordedRequest]) -> Check:
    """Hold what was displayed against the outbox: only what is marked doubtful may show twice."""
    rows: dict[int, list[OutboxRow]] = defaultdict(list)
    for row in tx.exec(select(OutboxRow).order_by(col(OutboxRow.id))):
        if row.operation in SHOWN_BY:
            rows[row.chat_id].append(row)
    shown: dict[int, list[str]] = defaultdict(list)
    for call in requests:
        if call.is_accepted and call.method in SHOWN_BY.values():
            shown[int(call.params["chat_id"])].append(_shown_by_call(call))
    breaches = []
    for chat_id in rows.keys() | shown.keys():
        breaches += [
            f"chat {chat_id}: {fault}" for fault in _compare(rows[chat_id], shown[chat_id])
        ]
    return Check("messages shown once, or doubtful", sum(map(len, rows.values())), tuple(breaches))


def all_sent(tx: Session) -> Check:
    """Look for operations that were given up or still wait; none was asked to fail."""
    rows = tx.exec(select(OutboxRow)).all()
    breaches = [
        f"outbox {row.id} ({row.operation}): {row.state.value}, {row.fault}"
        for row in rows
        if row.state is not OutboxState.SENT
    ]
    return Check("operations sent", len(rows), tuple(breaches))


def _compare(rows: list[OutboxRow], shown: list[str]) -> list[str]:
    """Compare runs of equal messages: as many shown as rows, more only where one is in doubt."""
    wanted = [(text, list(run)) for text, run in groupby(rows, key=_shown_by_row)]
    displayed = [(text, len(list(run))) for text, run in groupby(shown)]
    if [text for text, _ in wanted] != [text for text, _ in displayed]:
        return [f"{len(rows)} operations and {len(shown)} messages in another order"]
    faults = []
    for (text, run), (_, times) in zip(wanted, displayed, strict=True):
        spare = sum(row.attempts - 1 for row in run if row.is_doubtful)
        if not len(run) <= times <= len(run) + spare:
            faults.append(f"{len(run)} operations were shown {times} times: {text[:40]!r}")
    return faults


def _shown_by_row(row: OutboxRow) -> str:
    if row.operation == Operation.COPY.value:
        return f"copy {row.payload['message_id']}"
    return str(row.payload["text"])


def _shown_by_call(call: RecordedRequest) -> str:
    if call.method == SHOWN_BY[Operation.COPY.value]:
        return f"copy {call.params['message_id']}"
    return str(call.params["text"])
