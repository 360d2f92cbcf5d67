"""Find a named day in a reply: "yesterday", "monday", "2 days ago", "2 march"."""

from collections.abc import Mapping, Sequence
from datetime import date, timedelta

from bot.reading.clauses import GAP
from bot.reading.tokens import Token
from bot.reading.words import Mark

WEEKDAYS: Mapping[str, int] = {
    word: day
    for day, words in enumerate(
        (
            "monday mon lunes",
            "tuesday tue tues martes",
            "wednesday wed miercoles",
            "thursday thu thurs jueves",
            "friday fri viernes",
            "saturday sabado",
            "sunday domingo",
        )
    )
    for word in words.split()
}
MONTHS: Mapping[str, int] = {
    word: month
    for month, words in enumerate(
        (
            "january jan enero",
            "february feb febrero",
            "march marzo",
            "april apr abril",
            "may mayo",
            "june jun junio",
            "july jul julio",
            "august aug agosto",
            "september sept septiembre",
            "october oct octubre",
            "november nov noviembre",
            "december dec diciembre",
        ),
        start=1,
    )
    for word in words.split()
}
LATEST_DAY = 31  # [day of the month] the calendar
DAYS_AGO: Mapping[str, int] = {"yesterday": 1, "yesterdays": 1, "yesterday's": 1, "ayer": 1}
"""Words that name a day by themselves [days before today]."""


def find_day(
    tokens: Sequence[Token], today: date, *, is_ahead: bool = False
) -> tuple[date | None, list[Token]]:
    """Return the day that is named, and the other tokens; ``is_ahead`` for a day still to come."""
    for at, token in enumerate(tokens):
        if token.mark is not Mark.WORD:
            continue
        day, start, end = _day_at(tokens, at, today)
        if is_ahead and day is not None and day < today and token.text in WEEKDAYS:
            day += timedelta(days=7)
        if day is not None:
            return day, [*tokens[:start], GAP, *tokens[end:]]
    return None, list(tokens)


def _day_at(tokens: Sequence[Token], at: int, today: date) -> tuple[date | None, int, int]:
    word = tokens[at].text
    if word in DAYS_AGO:
        return today - timedelta(days=DAYS_AGO[word]), at, at + 1
    if word in WEEKDAYS:
        return today - timedelta(days=(today.weekday() - WEEKDAYS[word]) % 7), at, at + 1
    before = tokens[at - 1] if at > 0 and tokens[at - 1].is_bare else None
    if before is None or before.value > LATEST_DAY:
        return None, at, at
    if word == "days" and at + 1 < len(tokens) and tokens[at + 1].text == "ago":
        return today - timedelta(days=int(before.value)), at - 1, at + 2
    if word in MONTHS:
        return _date(before.value, MONTHS[word], today), at - 1, at + 1
    return None, at, at


def _date(day: float, month: int, today: date) -> date | None:
    """Return the latest such date that is not after today, or None where there is none."""
    for year in (today.year, today.year - 1):
        try:
            named = date(year, month, int(day))
        except ValueError:
            continue
        if named <= today:
            return named
    return None
