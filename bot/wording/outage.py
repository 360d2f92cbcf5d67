"""Owning up: when the bot was not there."""

from datetime import datetime

from bot.wording.tongue import Tongue
from scheduler.calendar.zones import zone_named


def stood_still(tongue: Tongue, zone: str, *, since: datetime, until: datetime) -> str:
    """Say from when to when nothing was sent or read, in the person's own time."""
    own = zone_named(zone)
    return tongue.say(
        "I was not running from {since} to {until}. What was still useful went out now. "
        "What was not is marked as late in the record. Messages sent to me meanwhile are read.",
        since=f"{since.astimezone(own):%d %b %H:%M}",
        until=f"{until.astimezone(own):%d %b %H:%M}",
    )


def no_copy(tongue: Tongue, *, why: str) -> str:
    """The daily copy of the database failed."""
    return tongue.say(
        "No daily copy of the database could be made: {why}\n"
        "I try again every hour. Everything else goes on.",
        why=why,
    )
