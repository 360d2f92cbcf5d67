"""Pain events, alerts, audit, and what waits for a person's answer."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlmodel import Session, col, select, update

from scheduler.pain.values import Level, Urgency
from scheduler.reasons import Reason
from storage.queries import pain_folds
from storage.records.care import Alert, AlertState, AuditEntry, PassedOn, Proposal
from storage.records.people import AthleteState
from storage.tables.care import AlertRow, AuditRow, PainEventRow, PassedOnRow, ProposalRow
from storage.tables.people import AthleteRow


def add_pain_event(
    tx: Session,
    *,
    athlete_id: int,
    at: datetime,
    kind: str,
    event: Mapping[str, Any],
    session_id: int | None = None,
    message_id: int | None = None,
) -> int:
    """Append one event to an athlete's pain history and return its id."""
    pain_folds.forget_fold_beyond(tx, athlete_id, at)
    row = PainEventRow(
        athlete_id=athlete_id,
        at=at,
        kind=kind,
        event=dict(event),
        session_id=session_id,
        message_id=message_id,
    )
    tx.add(row)
    tx.flush()
    return row.id or 0


def count_pain_events(tx: Session, athlete_id: int) -> int:
    """Count the events of an athlete's pain history."""
    kept = pain_folds.kept_fold(tx, athlete_id)
    return (kept.events if kept else 0) + pain_folds.count_since(tx, athlete_id, kept)


def pain_events(
    tx: Session, athlete_id: int, *, since: datetime | None = None
) -> tuple[tuple[int, Mapping[str, Any]], ...]:
    """Return the history in order, whole or from an instant on: the id and the event as data."""
    query = select(PainEventRow.id, PainEventRow.event).where(PainEventRow.athlete_id == athlete_id)
    if since is not None:
        query = query.where(col(PainEventRow.at) >= since)
    rows = tx.exec(query.order_by(col(PainEventRow.at), col(PainEventRow.id)))
    return tuple((event_id or 0, event) for event_id, event in rows)


def pain_events_from_message(tx: Session, athlete_id: int, message_id: int) -> tuple[int, ...]:
    """Return the ids of the events that a message caused."""
    return tuple(
        row or 0
        for row in tx.exec(
            select(PainEventRow.id).where(
                PainEventRow.athlete_id == athlete_id, PainEventRow.message_id == message_id
            )
        )
    )


def raise_alert(
    tx: Session,
    *,
    athlete_id: int,
    coach_id: int,
    level: Level,
    urgency: Urgency,
    words: str,
    reasons: Sequence[Reason],
    at: datetime,
    tell_at: datetime | None,
) -> Alert:
    """Open an alert."""
    row = AlertRow(
        athlete_id=athlete_id,
        coach_id=coach_id,
        level=int(level),
        urgency=urgency,
        words=words,
        reasons=tuple(reasons),
        raised_at=at,
        tell_at=tell_at,
    )
    tx.add(row)
    tx.flush()
    return Alert.model_validate(row)


def alert(tx: Session, alert_id: int) -> Alert | None:
    """Return one alert."""
    row = tx.get(AlertRow, alert_id)
    return None if row is None else Alert.model_validate(row)


def change_alert(tx: Session, alert_id: int, **facts: Any) -> Alert:
    """Change an alert and return it as it is now."""
    row = tx.get_one(AlertRow, alert_id)
    for name, value in facts.items():
        setattr(row, name, value)
    tx.add(row)
    tx.flush()
    return Alert.model_validate(row)


def open_alerts(
    tx: Session, *, athlete_id: int | None = None, coach_id: int | None = None
) -> tuple[Alert, ...]:
    """Return the alerts that nobody has answered, the most urgent level first."""
    query = select(AlertRow).where(AlertRow.state == AlertState.OPEN)
    if athlete_id is not None:
        query = query.where(AlertRow.athlete_id == athlete_id)
    if coach_id is not None:
        query = query.where(AlertRow.coach_id == coach_id)
    rows = tx.exec(query.order_by(col(AlertRow.level).desc(), col(AlertRow.id)))
    return tuple(Alert.model_validate(row) for row in rows)


def alerts_of(tx: Session, athlete_ids: Sequence[int]) -> tuple[Alert, ...]:
    """Return the open alerts of these athletes, whoever coaches them, the oldest first."""
    rows = tx.exec(
        select(AlertRow)
        .where(AlertRow.state == AlertState.OPEN, col(AlertRow.athlete_id).in_(athlete_ids))
        .order_by(col(AlertRow.id))
    )
    return tuple(Alert.model_validate(row) for row in rows)


def alerts_between(
    tx: Session, *, coach_id: int, since: datetime, until: datetime
) -> tuple[Alert, ...]:
    """Return the alerts raised in a span of time, whatever became of them."""
    rows = tx.exec(
        select(AlertRow)
        .where(
            AlertRow.coach_id == coach_id,
            col(AlertRow.raised_at) >= since,
            col(AlertRow.raised_at) < until,
        )
        .order_by(col(AlertRow.id))
    )
    return tuple(Alert.model_validate(row) for row in rows)


def write_audit(
    tx: Session,
    *,
    at: datetime,
    what: str,
    athlete_id: int | None,
    actor_id: int | None = None,
    words: str = "",
    reasons: Sequence[Reason] = (),
    before: Mapping[str, Any] | None = None,
    after: Mapping[str, Any] | None = None,
) -> None:
    """Record a decision. ``actor_id`` None means the rules decided."""
    tx.add(
        AuditRow(
            at=at,
            athlete_id=athlete_id,
            actor_id=actor_id,
            what=what,
            words=words,
            reasons=tuple(reasons),
            before=dict(before or {}),
            after=dict(after or {}),
        )
    )


def audit_of(
    tx: Session,
    athlete_id: int,
    *,
    most: int | None = None,
    what: Sequence[str] = (),
    since: datetime | None = None,
) -> tuple[AuditEntry, ...]:
    """Return an athlete's decisions, the newest first."""
    query = select(AuditRow).where(AuditRow.athlete_id == athlete_id)
    if since is not None:
        query = query.where(col(AuditRow.at) >= since)
    if what:
        query = query.where(col(AuditRow.what).in_(what))
    query = query.order_by(col(AuditRow.at).desc(), col(AuditRow.id).desc())
    if most is not None:
        query = query.limit(most)
    return tuple(AuditEntry.model_validate(row) for row in tx.exec(query))


def audit_between(
    tx: Session, athlete_ids: Sequence[int], *, since: datetime, until: datetime
) -> tuple[AuditEntry, ...]:
    """Return the decisions about these athletes in a span of time, the oldest first."""
    rows = tx.exec(
        select(AuditRow)
        .where(
            col(AuditRow.athlete_id).in_(athlete_ids),
            col(AuditRow.at) >= since,
            col(AuditRow.at) < until,
        )
        .order_by(col(AuditRow.at), col(AuditRow.id))
    )
    return tuple(AuditEntry.model_validate(row) for row in rows)


def pass_on(tx: Session, *, athlete_id: int, words: str, at: datetime) -> int:
    """Keep a message until a person has answered it."""
    row = PassedOnRow(athlete_id=athlete_id, words=words, at=at)
    tx.add(row)
    tx.flush()
    return row.id or 0


def unanswered(tx: Session, athlete_ids: Sequence[int]) -> tuple[PassedOn, ...]:
    """Return the messages of these athletes that wait for an answer, the oldest first."""
    rows = tx.exec(
        select(PassedOnRow)
        .where(col(PassedOnRow.athlete_id).in_(athlete_ids), col(PassedOnRow.answered_at).is_(None))
        .order_by(col(PassedOnRow.at), col(PassedOnRow.id))
    )
    return tuple(PassedOn.model_validate(row) for row in rows)


def mark_answered(tx: Session, athlete_id: int, *, at: datetime) -> int:
    """The coach wrote to the athlete: what waited is answered. Returns how many."""
    return tx.exec(
        update(PassedOnRow)
        .where(col(PassedOnRow.athlete_id) == athlete_id, col(PassedOnRow.answered_at).is_(None))
        .values(answered_at=at)
    ).rowcount


def set_answered(tx: Session, message_ids: Sequence[int], *, at: datetime | None) -> None:
    """Mark these messages as answered, or with None as waiting again."""
    tx.exec(
        update(PassedOnRow).where(col(PassedOnRow.id).in_(list(message_ids))).values(answered_at=at)
    )


def messages_of(tx: Session, athlete_id: int, message_ids: Sequence[int]) -> tuple[int, ...]:
    """Return which of these messages are the athlete's own."""
    rows = tx.exec(
        select(PassedOnRow.id).where(
            PassedOnRow.athlete_id == athlete_id, col(PassedOnRow.id).in_(list(message_ids))
        )
    )
    return tuple(row or 0 for row in rows)


def propose(
    tx: Session, *, athlete_id: int, kind: str, facts: Mapping[str, Any], at: datetime
) -> Proposal:
    """Draft a decision for the coach."""
    row = ProposalRow(athlete_id=athlete_id, kind=kind, facts=dict(facts), made_at=at)
    tx.add(row)
    tx.flush()
    return Proposal.model_validate(row)


def proposals(
    tx: Session, athlete_ids: Sequence[int], *, kind: str | None = None, only_open: bool = True
) -> tuple[Proposal, ...]:
    """Return drafted decisions of these athletes, the oldest first."""
    query = select(ProposalRow).where(col(ProposalRow.athlete_id).in_(athlete_ids))
    if only_open:
        query = query.where(col(ProposalRow.answered_at).is_(None))
    if kind is not None:
        query = query.where(ProposalRow.kind == kind)
    rows = tx.exec(query.order_by(col(ProposalRow.made_at), col(ProposalRow.id)))
    return tuple(Proposal.model_validate(row) for row in rows)


def proposals_to(tx: Session, coach_id: int, *, kind: str) -> tuple[Proposal, ...]:
    """Return what waits for a coach's decision about athletes who have not left, oldest first."""
    rows = tx.exec(
        select(ProposalRow)
        .join(AthleteRow, col(AthleteRow.person_id) == col(ProposalRow.athlete_id))
        .where(
            AthleteRow.coach_id == coach_id,
            AthleteRow.state != AthleteState.LEFT,
            ~col(AthleteRow.is_practice),
            ProposalRow.kind == kind,
            col(ProposalRow.answered_at).is_(None),
        )
        .order_by(col(ProposalRow.made_at), col(ProposalRow.id))
    )
    return tuple(Proposal.model_validate(row) for row in rows)


def proposal(tx: Session, proposal_id: int) -> Proposal | None:
    """Return one drafted decision."""
    row = tx.get(ProposalRow, proposal_id)
    return None if row is None else Proposal.model_validate(row)


def answer_proposal(tx: Session, proposal_id: int, *, at: datetime, answer: str) -> None:
    """The coach decided."""
    tx.exec(
        update(ProposalRow)
        .where(col(ProposalRow.id) == proposal_id)
        .values(answered_at=at, answer=answer)
    )
