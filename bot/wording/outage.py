"""Owning up: when the bot was not there, what came late of it, and what it could not do."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from bot.wording import dates
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Tongue
from scheduler.calendar.zones import zone_named

NAMES_UNITS = 300  # [UTF-16 units] ch: whom it concerned, at a glance

KINDS = (
    "session",
    "session_reminder",
    "morning_question",
    "digest",
    "alert",
    "silence_check",
)
"""What is worth telling; planning in the night that comes late concerns nobody."""


@dataclass(frozen=True)
class LateFacts:
    """What of one kind came late: still sent, or no longer of use; for whom."""

    kind: str
    is_sent: bool
    names: tuple[str, ...]


def report(
    tongue: Tongue, zone: str, *, since: datetime, until: datetime, late: Sequence[LateFacts]
) -> str:
    """Say from when to when nothing was sent or read, in the person's own time, and what of it."""
    own = zone_named(zone)
    lines = [
        tongue.say(
            "I was not running from {since} to {until}. Messages sent to me meanwhile are read.",
            since=dates.moment(tongue, since.astimezone(own)),
            until=dates.moment(tongue, until.astimezone(own)),
        )
    ]
    told = [one for one in late if one.kind in KINDS]
    for one in sorted(told, key=lambda found: (not found.is_sent, KINDS.index(found.kind))):
        what = _counted(tongue, one.kind, len(one.names))
        names = shortened(", ".join(dict.fromkeys(one.names)), NAMES_UNITS)
        if one.is_sent:
            lines.append(tongue.say("Sent late: {what} ({names}).", what=Marked(what), names=names))
        else:
            lines.append(
                tongue.say("No longer of use: {what} ({names}).", what=Marked(what), names=names)
            )
    if not told:
        lines.append(tongue.say("Nothing was due in that time."))
    return "\n".join(lines)


def _counted(tongue: Tongue, kind: str, number: int) -> str:
    match kind:
        case "session":
            return tongue.count(number, "1 session", "{n} sessions")
        case "session_reminder":
            return tongue.count(number, "1 reminder", "{n} reminders")
        case "morning_question":
            return tongue.count(number, "1 morning question", "{n} morning questions")
        case "digest":
            return tongue.count(number, "1 digest", "{n} digests")
        case "alert":
            return tongue.count(number, "1 alert", "{n} alerts")
        case _:
            return tongue.count(number, "1 notice of silence", "{n} notices of silence")


def not_worked_out(tongue: Tongue, *, coach: str, names: Sequence[str]) -> str:
    """A fault kept athletes' weeks out of their coach's digest."""
    return tongue.say(
        "A fault of mine: the week could not be worked out for {names}. "
        "{coach}'s digest says so. My log says where the fault lies.",
        names=shortened(", ".join(names), NAMES_UNITS),
        coach=coach,
    )


def no_copy(tongue: Tongue, *, why: str) -> str:
    """The daily copy of the database failed."""
    return tongue.say(
        "No daily copy of the database could be made: {why}\n"
        "I try again every hour. Everything else goes on.",
        why=why,
    )
