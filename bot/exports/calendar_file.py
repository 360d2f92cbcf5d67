"""The season as an iCalendar file (RFC 5545): training days in local time, events, breaks."""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from icalendar import Calendar, Event
from pydantic import BaseModel, ConfigDict

from bot.exports.zone_rules import zone_rules

PRODUCT = "-//Holdwell//season//EN"
A_DAY = timedelta(days=1)


class CalendarEntry(BaseModel):
    """One entry, in words already.

    ``starts`` is a local wall time without zone, or a day; ``lasts`` counts from it, in whole days
    for a day. ``is_tentative``: not drawn yet, so the day may move.
    """

    model_config = ConfigDict(frozen=True)

    uid: str
    summary: str
    starts: datetime | date
    lasts: timedelta
    about: str = ""
    is_tentative: bool = False
    is_busy: bool = False


class CalendarFacts(BaseModel):
    """What the file holds: the name, the zone of all wall times, when it was made, the entries."""

    model_config = ConfigDict(frozen=True)

    name: str
    zone: str
    made_at: datetime
    entries: tuple[CalendarEntry, ...]


def calendar_bytes(facts: CalendarFacts) -> bytes:
    """Write the file, with the rules of the zone that its times are in."""
    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("x-wr-calname", facts.name)
    timed = sorted(one.starts.date() for one in facts.entries if isinstance(one.starts, datetime))
    if timed:
        first, last = (datetime.combine(on, time(), UTC) for on in (timed[0], timed[-1]))
        rules = zone_rules(facts.zone, first=first - 2 * A_DAY, last=last + 2 * A_DAY)
        calendar.add_component(rules)
    for entry in facts.entries:
        calendar.add_component(_event(entry, facts))
    return bytes(calendar.to_ical())


def _event(entry: CalendarEntry, facts: CalendarFacts) -> Event:
    event = Event()
    event.add("uid", entry.uid)
    event.add("dtstamp", facts.made_at)
    event.add("summary", entry.summary)
    if isinstance(entry.starts, datetime):
        starts = entry.starts.replace(tzinfo=ZoneInfo(facts.zone))
        event.add("dtstart", starts)
        event.add("duration", entry.lasts)
    else:
        event.add("dtstart", entry.starts)
        event.add("dtend", entry.starts + max(entry.lasts, A_DAY))
    event.add("status", "TENTATIVE" if entry.is_tentative else "CONFIRMED")
    event.add("transp", "OPAQUE" if entry.is_busy else "TRANSPARENT")
    if entry.about:
        event.add("description", entry.about)
    return event
