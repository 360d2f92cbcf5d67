"""When a coach is told of an alert, first and again, until somebody answers."""

from datetime import datetime, timedelta

from scheduler.calendar.calendar_reasons import CalendarReason
from scheduler.calendar.values import Timing
from scheduler.calendar.waking_hours import after_waking, next_waking
from scheduler.pain.values import Urgency
from scheduler.reasons import Decision, reason
from scheduler.sources import CH

AGAIN_AFTER = {
    Urgency.NOW: timedelta(minutes=10),  # [min] ch: an emergency unseen
    Urgency.TODAY: timedelta(minutes=30),  # [min] ch: a clinician today, unseen
}
AGAIN_AT_MOST = timedelta(hours=4)  # [h] ch: doubling ends here
AGAIN_WAKING = timedelta(hours=4)  # [waking h] ch: rest, and what may wait until morning


def first_telling_at(
    urgency: Urgency, *, raised_at_utc: datetime, coach: Timing
) -> Decision[datetime | None]:
    """Return when a coach first hears of an alert.

    Args:
        urgency: how fast.
        raised_at_utc: when the alert was raised.
        coach: the coach's zone and waking hours.

    Returns:
        At once for ``now`` and ``today``, day or night; for ``soon`` at once in waking hours,
        else when they begin; for ``convenient`` no instant of its own: the next digest.

    """
    if urgency is Urgency.CONVENIENT:
        return Decision(value=None, reasons=(reason(CalendarReason.TOLD_IN_DIGEST, CH),))
    if urgency in AGAIN_AFTER:
        return Decision(value=raised_at_utc, reasons=(reason(CalendarReason.TOLD_AT_ONCE, CH),))
    at_utc = next_waking(raised_at_utc, timing=coach)
    wait_s = int((at_utc - raised_at_utc).total_seconds())
    why = reason(CalendarReason.TOLD_WHEN_AWAKE, CH, wait_s=wait_s)
    return Decision(value=at_utc, reasons=(why,))


def next_telling_at(
    urgency: Urgency, *, times_told: int, told_at_utc: datetime, coach: Timing
) -> Decision[datetime | None]:
    """Return when an unseen alert is told again.

    Args:
        urgency: how fast.
        times_told: how often it was told so far, 1 or more.
        told_at_utc: when it was told last. Counting from there, an outage costs no more than
            itself and never ends in a burst.
        coach: the coach's zone and waking hours.

    Returns:
        ``now`` after 10 min, ``today`` after 30 min, then at doubling intervals up to 4 h, day
        or night; ``soon`` after 4 waking hours; ``convenient`` with the next digest.

    """
    if times_told < 1:
        raise ValueError("An alert that was never told has a first telling, not a next one.")
    if urgency is Urgency.CONVENIENT:
        return Decision(value=None, reasons=(reason(CalendarReason.TOLD_IN_DIGEST, CH),))
    if urgency not in AGAIN_AFTER:
        at_utc = after_waking(told_at_utc, AGAIN_WAKING, timing=coach)
        why = reason(CalendarReason.TOLD_AGAIN_WHEN_AWAKE, CH, times_told=times_told)
        return Decision(value=at_utc, reasons=(why,))
    doublings = min(times_told - 1, 8)  # far past the cap: an alert told for days stays cheap
    wait = min(AGAIN_AFTER[urgency] * 2**doublings, AGAIN_AT_MOST)
    wait_s = int(wait.total_seconds())
    why = reason(CalendarReason.TOLD_AGAIN, CH, times_told=times_told, wait_s=wait_s)
    return Decision(value=told_at_utc + wait, reasons=(why,))
