"""Weeks, sessions, items and sets: drawn, sent, answered, corrected."""

from collections.abc import Iterable, Sequence
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import select as select_columns
from sqlmodel import Session, case, col, delete, func, select, update

from scheduler.catalogue.values import Direction, Role
from scheduler.pain.values import Side
from scheduler.reasons import Reason
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.values import Dose, Quality, SetDone
from storage.queries.session_rows import (
    ITEMS,
    SESSIONS,
    SETS,
    item_records,
    read_rows,
    session_records,
)
from storage.records.training import (
    ItemRecord,
    SessionRecord,
    SessionState,
    WeekRecord,
)
from storage.tables.training import ItemRow, SessionRow, SetRow, WeekRow

SENT_WITHIN = timedelta(days=2)  # [days] ch: a session is sent on its day, whatever the zone
COUNTED_AS_SENT = (SessionState.SENT, SessionState.TRAINED, SessionState.MISSED)


def add_week(
    tx: Session,
    *,
    athlete_id: int,
    monday: date,
    stage: int,
    is_lighter: bool,
    kind: SeasonWeekKind = SeasonWeekKind.ORDINARY,
    sets_share: float = 1.0,
    next_letter: str,
    relaxations: Sequence[Reason],
    reasons: Sequence[Reason],
    at: datetime,
) -> WeekRecord:
    """Write a drawn week without its sessions."""
    row = WeekRow(
        athlete_id=athlete_id,
        monday=monday,
        stage=stage,
        is_lighter=is_lighter,
        kind=kind,
        sets_share=sets_share,
        next_letter=next_letter,
        relaxations=tuple(relaxations),
        reasons=tuple(reasons),
        drawn_at=at,
    )
    tx.add(row)
    tx.flush()
    return WeekRecord.model_validate(row)


def week(tx: Session, athlete_id: int, monday: date) -> WeekRecord | None:
    """Return the week that begins on ``monday``, if it is drawn."""
    row = tx.exec(
        select(WeekRow).where(WeekRow.athlete_id == athlete_id, WeekRow.monday == monday)
    ).first()
    return None if row is None else WeekRecord.model_validate(row)


def week_of(tx: Session, week_id: int) -> WeekRecord:
    """Return a week by its id."""
    return WeekRecord.model_validate(tx.get_one(WeekRow, week_id))


def weeks(tx: Session, athlete_id: int, *, since: date | None = None) -> tuple[WeekRecord, ...]:
    """Return the drawn weeks that begin on a day or later, or all, the earliest first."""
    query = select(WeekRow).where(WeekRow.athlete_id == athlete_id)
    if since is not None:
        query = query.where(col(WeekRow.monday) >= since)
    rows = tx.exec(query.order_by(col(WeekRow.monday)))
    return tuple(WeekRecord.model_validate(row) for row in rows)


def week_before(tx: Session, athlete_id: int, monday: date) -> WeekRecord | None:
    """Return the latest drawn week that begins before ``monday``."""
    row = tx.exec(
        select(WeekRow)
        .where(WeekRow.athlete_id == athlete_id, col(WeekRow.monday) < monday)
        .order_by(col(WeekRow.monday).desc())
        .limit(1)
    ).first()
    return None if row is None else WeekRecord.model_validate(row)


def change_week(tx: Session, week_id: int, **facts: Any) -> None:
    """Change what was decided about a week as a whole."""
    tx.exec(update(WeekRow).where(col(WeekRow.id) == week_id).values(**facts))


def add_session(
    tx: Session, *, athlete_id: int, week_id: int, on: date, letter: str, **facts: Any
) -> int:
    """Write one day of a week and return its id."""
    row = SessionRow(athlete_id=athlete_id, week_id=week_id, on=on, letter=letter, **facts)
    tx.add(row)
    tx.flush()
    return row.id or 0


def add_item(
    tx: Session,
    *,
    session_id: int,
    position: int,
    pair: int | None,
    direction: Direction,
    role: Role,
    movement_key: str,
    quality: Quality,
    planned_sets: int,
    arms: Sequence[Side],
) -> int:
    """Write one movement of a session and return its id."""
    row = ItemRow(
        session_id=session_id,
        position=position,
        pair=pair,
        direction=direction,
        role=role,
        movement_key=movement_key,
        quality=quality,
        planned_sets=planned_sets,
        arms=tuple(arms),
    )
    tx.add(row)
    tx.flush()
    return row.id or 0


def forget_planned(tx: Session, week_id: int, *, from_date: date) -> None:
    """Take back what is planned and not sent, so that it can be drawn anew."""
    ids = list(
        tx.exec(
            select(SessionRow.id).where(
                SessionRow.week_id == week_id,
                SessionRow.state == SessionState.PLANNED,
                col(SessionRow.on) >= from_date,
            )
        )
    )
    tx.exec(delete(ItemRow).where(col(ItemRow.session_id).in_(ids)))
    tx.exec(delete(SessionRow).where(col(SessionRow.id).in_(ids)))


def session(tx: Session, session_id: int) -> SessionRecord:
    """Return one session with everything that was said about it."""
    return session_records(tx, select_columns(SESSIONS).where(SESSIONS.c.id == session_id))[0]


def sessions_between(
    tx: Session, athlete_id: int, *, first: date, last: date
) -> tuple[SessionRecord, ...]:
    """Return an athlete's sessions from ``first`` to ``last``, both included, by day."""
    return session_records(
        tx,
        select_columns(SESSIONS)
        .where(SESSIONS.c.athlete_id == athlete_id, SESSIONS.c.on >= first, SESSIONS.c.on <= last)
        .order_by(SESSIONS.c.on, SESSIONS.c.id),
    )


def kept_of_sent(
    tx: Session, athlete_ids: Sequence[int], *, first: date, last: date
) -> dict[int, tuple[int, int]]:
    """Count the sessions trained and the sessions sent of each athlete in a span of days."""
    rows = tx.exec(
        select(
            SessionRow.athlete_id,
            func.sum(case((col(SessionRow.state) == SessionState.TRAINED, 1), else_=0)),
            func.count(),
        )
        .where(
            col(SessionRow.athlete_id).in_(athlete_ids),
            col(SessionRow.on) >= first,
            col(SessionRow.on) <= last,
            col(SessionRow.state).in_(COUNTED_AS_SENT),
        )
        .group_by(col(SessionRow.athlete_id))
    )
    return {athlete_id: (int(kept), sent) for athlete_id, kept, sent in rows}


def next_planned(tx: Session, athlete_ids: Sequence[int], *, since: date) -> dict[int, date]:
    """Return the day of the next planned session of each athlete who has one."""
    rows = tx.exec(
        select(SessionRow.athlete_id, func.min(SessionRow.on))
        .where(
            col(SessionRow.athlete_id).in_(athlete_ids),
            col(SessionRow.on) >= since,
            col(SessionRow.state) == SessionState.PLANNED,
        )
        .group_by(col(SessionRow.athlete_id))
    )
    return {athlete_id: on for athlete_id, on in rows}  # noqa: C416 (a result is no mapping)


def sent_unanswered(
    tx: Session, athlete_ids: Sequence[int], *, since: datetime
) -> dict[int, tuple[datetime, ...]]:
    """Return when the sessions of each athlete that got no answer were sent, the oldest first."""
    rows = tx.exec(
        select(SessionRow.athlete_id, SessionRow.sent_at)
        .where(
            col(SessionRow.athlete_id).in_(athlete_ids),
            col(SessionRow.state).in_((SessionState.SENT, SessionState.MISSED)),
            col(SessionRow.sent_at) >= since,
            col(SessionRow.on) >= since.date() - SENT_WITHIN,
        )
        .order_by(col(SessionRow.sent_at))
    )
    found: dict[int, tuple[datetime, ...]] = {}
    for athlete_id, at in rows:
        if at is not None:
            found[athlete_id] = (*found.get(athlete_id, ()), at)
    return found


def open_sessions(tx: Session, athlete_id: int) -> tuple[SessionRecord, ...]:
    """Return what was sent and is not closed, the most recent first."""
    return session_records(
        tx,
        select_columns(SESSIONS)
        .where(
            SESSIONS.c.athlete_id == athlete_id,
            SESSIONS.c.state.in_((SessionState.SENT, SessionState.TRAINED)),
            SESSIONS.c.closed_at.is_(None),
        )
        .order_by(SESSIONS.c.on.desc(), SESSIONS.c.id.desc()),
    )


def last_trained(tx: Session, athlete_id: int, *, before: date | None = None) -> date | None:
    """Return the day of the last trained session of any direction."""
    query = select(col(SessionRow.on)).where(
        SessionRow.athlete_id == athlete_id, SessionRow.state == SessionState.TRAINED
    )
    if before is not None:
        query = query.where(col(SessionRow.on) < before)
    return tx.exec(query.order_by(col(SessionRow.on).desc()).limit(1)).first()


def trained_days(
    tx: Session, athlete_id: int, *, before: date | None = None, since: date | None = None
) -> tuple[date, ...]:
    """Return the days with a trained session, the earliest first.

    With ``since`` only those from that day on, and the last one before it: a gap that reaches
    across the bound is seen whole.
    """
    query = select_columns(SESSIONS.c.on).where(
        SESSIONS.c.athlete_id == athlete_id, SESSIONS.c.state == SessionState.TRAINED
    )
    if before is not None:
        query = query.where(SESSIONS.c.on < before)
    if since is None:
        earlier = None
    else:
        earlier = last_trained(tx, athlete_id, before=min(since, before or since))
        query = query.where(SESSIONS.c.on >= since)
    days = [row.on for row in read_rows(tx, query.distinct().order_by(SESSIONS.c.on))]
    return tuple(days) if earlier is None else (earlier, *days)


def change_session(tx: Session, session_id: int, **facts: Any) -> None:
    """Change what is known of a session."""
    tx.exec(SESSIONS.update().where(SESSIONS.c.id == session_id).values(**facts))


def item(tx: Session, item_id: int) -> tuple[ItemRecord, int]:
    """Return one item and the id of its session."""
    (row,) = read_rows(tx, select_columns(ITEMS).where(ITEMS.c.id == item_id))
    return item_records(tx, [row])[0], row.session_id


def change_item(tx: Session, item_id: int, **facts: Any) -> None:
    """Change what is known of an item."""
    tx.exec(ITEMS.update().where(ITEMS.c.id == item_id).values(**facts))


def snapshot_dose(
    tx: Session, item_id: int, *, dose: Dose, reasons: Sequence[Reason], arms: Iterable[Side]
) -> None:
    """Fix the dose of an item as it is sent."""
    change_item(
        tx,
        item_id,
        movement_key=dose.movement_key,
        dose=dose,
        reasons=tuple(reasons),
        arms=tuple(sorted(arms)),
    )


def record_sets(
    tx: Session,
    item_id: int,
    sets: Sequence[tuple[int, SetDone, bool]],
    *,
    chat_id: int,
    message_id: int | None,
    at: datetime,
) -> None:
    """Write sets (number, what was done, whether as planned), replacing those they correct."""
    keys = {(number, done.side) for number, done, _ in sets}
    current = select_columns(SETS.c.id, SETS.c.number, SETS.c.done).where(
        SETS.c.item_id == item_id, SETS.c.replaced_at.is_(None)
    )
    replaced = [row.id for row in read_rows(tx, current) if (row.number, row.done.side) in keys]
    if replaced:
        tx.exec(SETS.update().where(SETS.c.id.in_(replaced)).values(replaced_at=at))
    add_sets(tx, item_id, sets, chat_id=chat_id, message_id=message_id, at=at)


def add_sets(
    tx: Session,
    item_id: int,
    sets: Sequence[tuple[int, SetDone, bool]],
    *,
    chat_id: int,
    message_id: int | None,
    at: datetime,
) -> None:
    """Write sets of an item that has none, or whose sets were taken back."""
    tx.exec(
        SETS.insert(),
        params=[
            {
                "item_id": item_id,
                "number": number,
                "done": done,
                "is_as_planned": is_as_planned,
                "chat_id": chat_id,
                "message_id": message_id,
                "reported_at": at,
            }
            for number, done, is_as_planned in sets
        ],
    )


def take_back_sets(tx: Session, item_id: int, *, at: datetime) -> None:
    """Nothing is reported for this item any more; what was stays on record as replaced."""
    tx.exec(
        SETS.update()
        .where(SETS.c.item_id == item_id, SETS.c.replaced_at.is_(None))
        .values(replaced_at=at)
    )


def items_of_message(tx: Session, *, chat_id: int, message_id: int) -> tuple[int, ...]:
    """Return the items whose current sets came with this message."""
    rows = tx.exec(
        select(SetRow.item_id)
        .where(
            SetRow.chat_id == chat_id,
            SetRow.message_id == message_id,
            col(SetRow.replaced_at).is_(None),
        )
        .distinct()
    )
    return tuple(sorted(rows))
