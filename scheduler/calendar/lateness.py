"""What becomes of something due: sent, or only noted because it is of no use any more."""

from collections.abc import Sequence
from datetime import datetime, timedelta
from enum import StrEnum
from zoneinfo import ZoneInfo

from scheduler.calendar.calendar_reasons import CalendarReason
from scheduler.calendar.values import Due, DueKind
from scheduler.calendar.wall_time import has_date
from scheduler.reasons import Decision, reason
from scheduler.sources import CH

UNNOTICED = timedelta(minutes=5)  # [min] ch: a delay that nobody minds or is told of


class Fate(StrEnum):
    """Sent, or written down and shown."""

    SEND = "send"
    NOTE = "note"


def fate_of(due: Due, *, now_utc: datetime) -> Decision[Fate]:
    """Send what is still useful, note the rest.

    Args:
        due: what fell due at or before now.
        now_utc: the instant of the round.

    Returns:
        ``SEND`` before ``useful_until_utc`` (always where there is none), else ``NOTE``; the
        reason carries how late it is [s].

    """
    late = now_utc - due.due_at_utc
    is_useful = due.useful_until_utc is None or now_utc < due.useful_until_utc
    if not is_useful:
        code = CalendarReason.TOO_LATE
    elif late > UNNOTICED:
        code = CalendarReason.LATE_STILL_USEFUL
    else:
        code = CalendarReason.ON_TIME
    why = reason(code, CH, late_s=int(late.total_seconds()))
    return Decision(value=Fate.SEND if is_useful else Fate.NOTE, reasons=(why,))


def fates_of(
    dues: Sequence[Due], *, zone: ZoneInfo, now_utc: datetime
) -> tuple[tuple[Due, Decision[Fate]], ...]:
    """Decide for one person's round, in its order.

    Where the zone left out a whole date, what was planned for it falls on the instant of the
    day after. If that day has its own, one message goes out: the left-out day's is noted
    (rfc5545: section 3.3.5 for the instant; one message is chosen).
    """
    taken = {(due.kind, due.due_at_utc) for due in dues if has_date(due.local_date, zone)}
    return tuple((due, _fate(due, taken, zone=zone, now_utc=now_utc)) for due in dues)


def _fate(
    due: Due, taken: set[tuple[DueKind, datetime]], *, zone: ZoneInfo, now_utc: datetime
) -> Decision[Fate]:
    """Look for a due of a real date on the same instant before asking about lateness."""
    if (due.kind, due.due_at_utc) in taken and not has_date(due.local_date, zone):
        why = reason(CalendarReason.DAY_LEFT_OUT, CH, local_date=due.local_date.isoformat())
        return Decision(value=Fate.NOTE, reasons=(why,))
    return fate_of(due, now_utc=now_utc)


def stood_still(*, last_round_utc: datetime, now_utc: datetime) -> Decision[bool]:
    """Tell whether the bot stood still between two rounds, so that people are told of it.

    Args:
        last_round_utc: when the last round was done.
        now_utc: the instant of this one.

    Returns:
        True for more than five minutes; the reason carries the span [s].

    """
    span = now_utc - last_round_utc
    is_outage = span > UNNOTICED
    code = CalendarReason.STOOD_STILL if is_outage else CalendarReason.RAN_THROUGH
    return Decision(value=is_outage, reasons=(reason(code, CH, span_s=int(span.total_seconds())),))
