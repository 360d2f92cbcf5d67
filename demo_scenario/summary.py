"""What came of a play, in figures: for the closing table and for a machine."""

import hashlib
import json
from collections import Counter
from datetime import datetime
from typing import Any

from pydantic import BaseModel, ConfigDict
from sqlmodel import Session, col, select

from demo_scenario.invariants import Broken
from demo_scenario.play import Stage
from demo_scenario.used import Used, used_in
from storage import inbox
from storage.tables.care import AlertRow, AuditRow
from storage.tables.people import PersonRow
from storage.tables.training import SessionRow

DOSE_CHANGES = {"up": "dose.up", "kept": "dose.kept", "down": "dose.down"}
TOP_REASONS = 4  # [reasons] ch: what a table has room for


class AlertFigures(BaseModel):
    """One alert; ``answered_after_min`` [min], None while it is open."""

    model_config = ConfigDict(frozen=True)

    athlete: str
    level: int
    urgency: str
    times_told: int
    answered_after_min: float | None


class Summary(BaseModel):
    """Everything that two plays of the same seed must agree on."""

    model_config = ConfigDict(frozen=True)

    seed: int
    weeks: int
    sessions_sent: int
    sessions: dict[str, int]
    replies: dict[str, int]
    doses: dict[str, int]
    dose_reasons: dict[str, dict[str, int]]
    stages: dict[str, list[str]]
    alerts: tuple[AlertFigures, ...]
    messages_from_people: int
    messages_from_bot: int
    breaches: tuple[str, ...]
    used: tuple[Used, ...]
    chats_sha256: str


def summary_of(stage: Stage, *, seed: int, weeks: int, broken: tuple[Broken, ...]) -> Summary:
    """Count what happened since the play began."""
    start, used = stage.team.begins_at(), used_in(stage)
    with stage.house.database.transaction() as tx:
        audits = tx.exec(
            select(AuditRow).where(col(AuditRow.at) >= start).order_by(col(AuditRow.id))
        ).all()
        sessions = _sessions(tx, start)
        shown = [message for player in stage.players for message in player.sees()]
        return Summary(
            seed=seed,
            weeks=weeks,
            sessions_sent=sum(sessions.values()),
            sessions=sessions,
            replies=dict(sorted(inbox.outcomes(tx).items())),
            doses={name: _count(audits, what) for name, what in DOSE_CHANGES.items()},
            dose_reasons={name: _reasons(audits, what) for name, what in DOSE_CHANGES.items()},
            stages=_stages(audits, tx),
            alerts=_alerts(tx),
            messages_from_people=sum(not message.is_from_bot for message in shown),
            messages_from_bot=sum(message.is_from_bot for message in shown),
            breaches=tuple(str(one) for one in broken),
            used=used,
            chats_sha256=digest_of_chats(stage),
        )


def _sessions(tx: Session, start: datetime) -> dict[str, int]:
    states = tx.exec(select(SessionRow.state).where(col(SessionRow.sent_at) >= start)).all()
    return dict(sorted(Counter(str(state) for state in states).items()))


def _count(audits: Any, what: str) -> int:
    return sum(row.what == what for row in audits)


def _reasons(audits: Any, what: str) -> dict[str, int]:
    """Count what first led to each decision."""
    found = Counter(row.reasons[0].code for row in audits if row.what == what and row.reasons)
    return dict(found.most_common(TOP_REASONS))


def _stages(audits: Any, tx: Session) -> dict[str, list[str]]:
    names = _names(tx)
    found: dict[str, list[str]] = {}
    for row in audits:
        if row.what == "stage.changed":
            change = f"{row.before['stage']} to {row.after['stage']}: {row.words}"
            found.setdefault(names.get(row.athlete_id, "?"), []).append(change)
    return found


def _names(tx: Session) -> dict[int, str]:
    return {row.id or 0: row.name for row in tx.exec(select(PersonRow))}


def _alerts(tx: Session) -> tuple[AlertFigures, ...]:
    names = _names(tx)
    return tuple(
        AlertFigures(
            athlete=names.get(row.athlete_id, "?"),
            level=row.level,
            urgency=str(row.urgency),
            times_told=row.times_told,
            answered_after_min=round((row.answered_at - row.raised_at).total_seconds() / 60, 1)
            if row.answered_at
            else None,
        )
        for row in tx.exec(select(AlertRow).order_by(col(AlertRow.id)))
    )


def digest_of_chats(stage: Stage) -> str:
    """Return one digest of all that anybody saw, in order: texts, buttons, instants."""
    told = [
        [
            player.name,
            [
                [
                    message.is_from_bot,
                    message.sent_at.isoformat(),
                    message.text,
                    [[button.text for button in row] for row in message.buttons],
                ]
                for message in player.sees()
            ],
        ]
        for player in stage.players
    ]
    return hashlib.sha256(json.dumps(told, ensure_ascii=False).encode()).hexdigest()
