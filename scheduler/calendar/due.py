"""What is due for one person, from what is planned, open, and coming round."""

from collections.abc import Iterator, Set
from datetime import date, datetime, time, timedelta

from scheduler.calendar.digest_day import digest_dues
from scheduler.calendar.recurring import planning_dues
from scheduler.calendar.values import (
    NOON,
    Due,
    DueKind,
    MorningAfter,
    OpenAlert,
    Owed,
    PlannedSession,
    Review,
    Silence,
    Timing,
)
from scheduler.calendar.wall_time import due_instant, local_date_of

SESSION_LEAST_USEFUL = timedelta(hours=2)  # [h] ch: an evening athlete's session is not cut short
REMINDER_LEAST_WAIT = timedelta(hours=2)  # [h] ch: time to train before a reminder is kind
REMINDER_USEFUL = timedelta(hours=2)  # [h] ch: later it would only wake somebody
SILENT_DAYS = 3  # [d] ch: of silence before the coach hears of it

ORDER = {kind: place for place, kind in enumerate(DueKind)}


def due_for(
    *,
    person_id: int,
    timing: Timing,
    owed: Owed,
    since_utc: datetime,
    until_utc: datetime,
    handled: Set[tuple[str, str]] = frozenset(),
) -> tuple[Due, ...]:
    """Return what is due for a person by an instant and not taken care of yet.

    Args:
        person_id: whose.
        timing: the person's zone and hours as they are now.
        owed: what is planned, open, and coming round.
        since_utc: the last round; what comes round is looked for after it (and before it, as
            long as it is still useful). What is planned or open needs no window: whatever its
            zone or hour did meanwhile, it is due once its instant has passed.
        until_utc: now.
        handled: kind and subject of what was taken care of before.

    Returns:
        The dues, the most urgent kind first, then by instant. Whether a late one is still
        sent is for :mod:`scheduler.calendar.lateness`.

    """
    found = [
        due
        for due in _all(person_id, timing, owed, since_utc, until_utc)
        if due.due_at_utc <= until_utc and due.key not in handled
    ]
    return tuple(sorted(found, key=lambda due: (ORDER[due.kind], due.due_at_utc, due.subject)))


def _all(
    person_id: int, timing: Timing, owed: Owed, since_utc: datetime, until_utc: datetime
) -> Iterator[Due]:
    """Yield every candidate, past or to come."""
    for alert in owed.alerts:
        yield alert_due(alert, person_id=person_id, timing=timing)
    for silence in owed.silences:
        yield silence_due(silence, person_id=person_id, timing=timing)
    for morning in owed.mornings:
        yield morning_due(morning, person_id=person_id, timing=timing)
    for session in owed.sessions:
        if session.sent_at_utc is None:
            yield session_due(session, person_id=person_id, timing=timing)
        elif wants_reminder(session, timing=timing):
            yield reminder_due(session, person_id=person_id, timing=timing)
    for review in owed.reviews:
        yield review_due(review, person_id=person_id, timing=timing)
    if DueKind.DIGEST in owed.recurring:
        yield from digest_dues(
            person_id=person_id, timing=timing, owed=owed, since_utc=since_utc, until_utc=until_utc
        )
    if DueKind.WEEK_DRAWING in owed.recurring:
        yield from planning_dues(
            person_id=person_id, timing=timing, since_utc=since_utc, until_utc=until_utc
        )


def session_due(session: PlannedSession, *, person_id: int, timing: Timing) -> Due:
    """A session goes out at its wall time and is useful until the local evening.

    Where the evening comes sooner than two hours after it, those two hours count.
    """
    due_at_utc = _at(session.local_date, session.at or timing.session_at, timing)
    evening_utc = _at(session.local_date, timing.evening_at, timing)
    return Due(
        person_id=person_id,
        kind=DueKind.SESSION,
        subject=str(session.session_id),
        local_date=session.local_date,
        due_at_utc=due_at_utc,
        useful_until_utc=max(evening_utc, due_at_utc + SESSION_LEAST_USEFUL),
    )


def wants_reminder(session: PlannedSession, *, timing: Timing) -> bool:
    """Tell whether a session is sent, unanswered, and was there two hours before the evening."""
    if session.sent_at_utc is None or session.is_answered:
        return False
    evening_utc = _at(session.local_date, timing.evening_at, timing)
    return session.sent_at_utc + REMINDER_LEAST_WAIT <= evening_utc


def reminder_due(session: PlannedSession, *, person_id: int, timing: Timing) -> Due:
    """One kind reminder in the evening of the session's day, and never a second."""
    due_at_utc = _at(session.local_date, timing.evening_at, timing)
    return Due(
        person_id=person_id,
        kind=DueKind.SESSION_REMINDER,
        subject=str(session.session_id),
        local_date=session.local_date,
        due_at_utc=due_at_utc,
        useful_until_utc=due_at_utc + REMINDER_USEFUL,
    )


def morning_due(morning: MorningAfter, *, person_id: int, timing: Timing) -> Due:
    """The morning after a report of pain, until noon."""
    next_day = morning.reported_on + timedelta(days=1)
    return Due(
        person_id=person_id,
        kind=DueKind.MORNING_QUESTION,
        subject=morning.subject,
        local_date=next_day,
        due_at_utc=_at(next_day, timing.morning_question_at, timing),
        useful_until_utc=_at(next_day, NOON, timing),
    )


def silence_due(silence: Silence, *, person_id: int, timing: Timing) -> Due:
    """Three local days after the first unanswered session, at its usual hour, however late."""
    third_day = silence.since + timedelta(days=SILENT_DAYS)
    return Due(
        person_id=person_id,
        kind=DueKind.SILENCE_CHECK,
        subject=silence.subject,
        local_date=third_day,
        due_at_utc=_at(third_day, timing.session_at, timing),
        useful_until_utc=None,
    )


def review_due(review: Review, *, person_id: int, timing: Timing) -> Due:
    """A review is drafted in the night of its day, however late; its number is its subject."""
    return Due(
        person_id=person_id,
        kind=DueKind.REVIEW,
        subject=str(review.number),
        local_date=review.on,
        due_at_utc=_at(review.on, timing.planning_at, timing),
        useful_until_utc=None,
    )


def alert_due(alert: OpenAlert, *, person_id: int, timing: Timing) -> Due:
    """The next telling of an open alert; each telling is a subject of its own, never too late."""
    return Due(
        person_id=person_id,
        kind=DueKind.ALERT,
        subject=f"{alert.alert_id}:{alert.times_told}",
        local_date=local_date_of(alert.tell_at_utc, timing.zone),
        due_at_utc=alert.tell_at_utc,
        useful_until_utc=None,
    )


def _at(local_date: date, wall_time: time, timing: Timing) -> datetime:
    return due_instant(local_date=local_date, wall_time=wall_time, zone=timing.zone)
