"""Days and instants, short enough for a phone, by the customs of the reader's language."""

from datetime import date, datetime, timedelta

from babel.dates import format_date, get_day_names

from bot.wording.tongue import Tongue

SHORT = "EEE d MMM"
SHORT_WITH_YEAR = "EEE d MMM y"
WEEKDAY = "EEEE"
"""Patterns of dates (cldr: date field symbols)."""


def day(tongue: Tongue, on: date) -> str:
    """Write a day: ``Tue 24 Nov``, ``mar 24 nov``."""
    return format_date(on, SHORT, locale=tongue.locale)


def day_and_year(tongue: Tongue, on: date) -> str:
    """Write a day with its year: ``Tue 24 Nov 2026``."""
    return format_date(on, SHORT_WITH_YEAR, locale=tongue.locale)


def weekday(tongue: Tongue, on: date) -> str:
    """Write the day of the week as it stands within a sentence: ``Tuesday``, ``martes``."""
    return format_date(on, WEEKDAY, locale=tongue.locale)


def short_weekday(tongue: Tongue, number: int) -> str:
    """Write a day of the week in short, counted from Monday = 0: ``Tue``, ``mar``."""
    return str(get_day_names("abbreviated", locale=tongue.locale)[number])


def moment(tongue: Tongue, local: datetime) -> str:
    """Write an instant that is already in the reader's zone: ``Tue 24 Nov, 18:05``."""
    return f"{day(tongue, local)}, {local:%H:%M}"


def age(tongue: Tongue, since: timedelta) -> str:
    """Write how long ago something was: minutes, hours, then days."""
    minutes = max(0, int(since.total_seconds() // 60))
    if minutes < 60:
        return tongue.say("{n} min", n=minutes)
    if minutes < 48 * 60:
        return tongue.say("{n} h", n=minutes // 60)
    return tongue.say("{n} days", n=minutes // (24 * 60))
