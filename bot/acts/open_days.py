"""Which days of a week that has begun are still open: what moved or was missed never piles up."""

from collections.abc import Collection, Iterable
from datetime import date, timedelta

ISO_FIRST = 1  # [ISO weekday] Monday


def open_weekdays(
    weekdays: Iterable[int],
    *,
    monday: date,
    kept: Collection[date],
    open_from: date,
    days_a_week: int,
) -> tuple[int, ...]:
    """Return the weekdays on which sessions may still be drawn, no more than the week has room for.

    Every day that was sent, trained, missed or called off has used up one of the week's
    sessions, on whatever day it was. Where more days are left than sessions, those nearest to
    another session give way.

    Args:
        weekdays: the days that the athlete trains on [ISO, Monday 1].
        monday: the week's first day.
        kept: the days of the week that have a session already.
        open_from: the first day on which a session may still be drawn.
        days_a_week: how many sessions the week has [sessions].

    Returns:
        The open weekdays [ISO], the earliest first.

    """
    days = [monday + timedelta(days=one - ISO_FIRST) for one in sorted(weekdays)]
    open_days = [day for day in days if day >= open_from and day not in kept]
    room = max(0, days_a_week - len(kept))
    while len(open_days) > room:
        open_days.remove(min(open_days, key=lambda day: _nearest(day, open_days, kept)))
    return tuple(day.isoweekday() for day in open_days)


def _nearest(day: date, open_days: Iterable[date], kept: Iterable[date]) -> tuple[int, int, date]:
    """Return how near a day is to a session that stands, then to one to be drawn [days]."""
    to_kept = min((abs((day - other).days) for other in kept), default=7)
    to_open = min((abs((day - other).days) for other in open_days if other != day), default=7)
    return to_kept, to_open, day
