"""Days and instants, short enough for a phone."""

from datetime import date, datetime, timedelta

from bot.wording.tongue import Tongue

SHORT_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
SHORT_MONTHS = (
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
)  # fmt: skip


def day(tongue: Tongue, on: date) -> str:
    """Write a day: ``Tue 24 Nov``."""
    return tongue.say(
        "{weekday} {day} {month}",
        weekday=tongue.say(SHORT_DAYS[on.weekday()]),
        day=on.day,
        month=tongue.say(SHORT_MONTHS[on.month - 1]),
    )


def moment(tongue: Tongue, local: datetime) -> str:
    """Write an instant that is already in the reader's zone: ``Tue 24 Nov, 18:05``."""
    return tongue.say("{day}, {time}", day=day(tongue, local), time=f"{local:%H:%M}")


def age(tongue: Tongue, since: timedelta) -> str:
    """Write how long ago something was: minutes, hours, then days."""
    minutes = max(0, int(since.total_seconds() // 60))
    if minutes < 60:
        return tongue.say("{n} min", n=minutes)
    if minutes < 48 * 60:
        return tongue.say("{n} h", n=minutes // 60)
    return tongue.say("{n} days", n=minutes // (24 * 60))
