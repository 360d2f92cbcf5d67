"""When a person is up, by their own wall clock."""

from datetime import datetime, time, timedelta

from scheduler.calendar.values import Timing
from scheduler.calendar.wall_time import due_instant, local_date_of, local_time_of


def is_awake(instant_utc: datetime, *, timing: Timing) -> bool:
    """Tell whether an instant lies in the waking hours; they may run past midnight.

    Equal ends mean that the person may be told at any hour.
    """
    now, start, end = (
        local_time_of(instant_utc, timing.zone),
        timing.waking_from,
        timing.waking_until,
    )
    if start == end:
        return True
    return start <= now < end if start < end else now >= start or now < end


def next_waking(instant_utc: datetime, *, timing: Timing) -> datetime:
    """Return the instant itself when the person is up, else when they next get up."""
    if is_awake(instant_utc, timing=timing):
        return instant_utc
    return _next_at(instant_utc, timing.waking_from, timing)


def after_waking(instant_utc: datetime, waking: timedelta, *, timing: Timing) -> datetime:
    """Return the instant by which the person has been up for so long, asleep time left out."""
    here = next_waking(instant_utc, timing=timing)
    if timing.waking_from == timing.waking_until:
        return here + waking
    left = waking
    while (to_bed := _next_at(here, timing.waking_until, timing)) < here + left:
        left -= to_bed - here
        here = next_waking(to_bed, timing=timing)
    return here + left


def _next_at(instant_utc: datetime, wall_time: time, timing: Timing) -> datetime:
    """Return the first instant after this one that a wall time means."""
    today = local_date_of(instant_utc, timing.zone)
    instants = (
        due_instant(local_date=today + timedelta(days=days), wall_time=wall_time, zone=timing.zone)
        for days in range(-1, 4)  # a left-out date, a repeated one, and a day to spare
    )
    return next(instant for instant in instants if instant > instant_utc)
