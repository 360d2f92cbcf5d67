"""The rules of a zone as an iCalendar file carries them: what its clock showed, and from when."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from icalendar import Timezone, TimezoneDaylight, TimezoneStandard

A_DAY, A_MINUTE = timedelta(days=1), timedelta(minutes=1)


def zone_rules(zone: str, *, first: datetime, last: datetime) -> Timezone:
    """Write what a zone's clock does between two instants.

    Each change stands alone with its own onset, in the wall time before it (rfc5545: 3.6.5). Some
    readers take only the first of several dates on one line.
    """
    rules = Timezone()
    rules.add("tzid", zone)
    clock = ZoneInfo(zone)
    rules.add_component(_observed(clock, first, before=first))
    for change in _changes(clock, first, last):
        rules.add_component(_observed(clock, change, before=change - A_MINUTE))
    return rules


def _observed(
    clock: ZoneInfo, since: datetime, *, before: datetime
) -> TimezoneDaylight | TimezoneStandard:
    now, earlier = since.astimezone(clock), before.astimezone(clock)
    part = TimezoneDaylight() if now.dst() else TimezoneStandard()
    offset_before = earlier.utcoffset() or timedelta()
    part.add("dtstart", since.astimezone(UTC).replace(tzinfo=None) + offset_before)
    part.add("tzoffsetfrom", offset_before)
    part.add("tzoffsetto", now.utcoffset() or timedelta())
    part.add("tzname", now.tzname() or clock.key)
    return part


def _changes(clock: ZoneInfo, first: datetime, last: datetime) -> Iterator[datetime]:
    """Find the minutes at which the clock changes, a day at a time."""
    at = first
    while at < last:
        if _shows(clock, at) != _shows(clock, at + A_DAY):
            yield _change_between(clock, at, at + A_DAY)
        at += A_DAY


def _change_between(clock: ZoneInfo, low: datetime, high: datetime) -> datetime:
    shown = _shows(clock, low)
    while high - low > A_MINUTE:
        middle = low + (high - low) // (2 * A_MINUTE) * A_MINUTE
        if _shows(clock, middle) == shown:
            low = middle
        else:
            high = middle
    return high


def _shows(clock: ZoneInfo, at: datetime) -> tuple[timedelta | None, str | None]:
    local = at.astimezone(clock)
    return local.utcoffset(), local.tzname()
