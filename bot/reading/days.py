"""Find a named day in a reply: "yesterday", "monday", "2 days ago", "2 march", "2026-03-02"."""

from collections.abc import Mapping, Sequence
from datetime import date, timedelta

from bot.reading.clauses import GAP
from bot.reading.tokens import Token
from bot.reading.words import Mark


def _numbered(rows: Sequence[str], *, first: int) -> dict[str, int]:
    return {word: n for n, words in enumerate(rows, start=first) for word in words.split()}


WEEKDAYS: Mapping[str, int] = _numbered(
    (
        "monday mon mondays monday's lunes lun",
        "tuesday tue tues tuesdays tuesday's martes",
        "wednesday wed weds wednesdays wednesday's miercoles mierc",
        "thursday thu thurs thur thursdays thursday's jueves jue",
        "friday fri fridays friday's viernes vie",
        "saturday saturdays saturday's sabado sab",
        "sunday sundays sunday's domingo dom",
    ),
    first=0,
)
ONLY_IN_FRONT: Mapping[str, int] = {"sat": 5, "sun": 6}
"""Short names that are words of their own elsewhere in a message."""
MONTHS: Mapping[str, int] = _numbered(
    (
        "january jan enero ene",
        "february feb febrero",
        "march mar marzo",
        "april apr abril abr",
        "may mayo",
        "june jun junio",
        "july jul julio",
        "august aug agosto",
        "september sept sep septiembre",
        "october oct octubre",
        "november nov noviembre",
        "december dec diciembre dic",
    ),
    first=1,
)
LATEST_DAY = 31  # [day of the month] the calendar
DAYS_AGO: Mapping[tuple[str, ...], int] = {
    tuple(phrase.split()): days
    for days, phrases in {
        2: "day before yesterday|antes de ayer|anteayer|antier",
        1: "yesterday|yesterdays|yesterday's|ayer|last night|anoche",
    }.items()
    for phrase in phrases.split("|")
}
"""Words that name a day by themselves [days before today]."""
AGO = frozenset({"ago", "back"})
READ = frozenset({Mark.WORD, Mark.RISKY, Mark.CHAT, Mark.FILLER, Mark.ORDINAL, Mark.PART})


def find_day(
    tokens: Sequence[Token], today: date, *, is_ahead: bool = False
) -> tuple[date | None, list[Token]]:
    """Return the day that is named, and the other tokens; ``is_ahead`` for a day still to come."""
    for at, token in enumerate(tokens):
        if token.mark not in READ:
            continue
        day, start, end = _day_at(tokens, at, today)
        if is_ahead and day is not None and day < today and token.text in WEEKDAYS:
            day += timedelta(days=7)
        if day is not None:
            return day, [*tokens[:start], GAP, *tokens[end:]]
    return None, list(tokens)


def _day_at(tokens: Sequence[Token], at: int, today: date) -> tuple[date | None, int, int]:
    word = tokens[at].text
    for words, days in DAYS_AGO.items():
        if tuple(t.text for t in tokens[at : at + len(words)]) == words:
            return today - timedelta(days=days), at, at + len(words)
    weekday = WEEKDAYS.get(word, ONLY_IN_FRONT.get(word) if at == 0 else None)
    if weekday is not None:
        start = at - 1 if at > 0 and tokens[at - 1].text == "last" else at
        return today - timedelta(days=(today.weekday() - weekday) % 7), start, at + 1
    if _is_iso(word):
        return date.fromisoformat(word), at, at + 1
    return _counted(tokens, at, today)


def _is_iso(word: str) -> bool:
    try:
        date.fromisoformat(word)
    except ValueError:
        return False
    return len(word) == len("2026-01-01")


def _counted(tokens: Sequence[Token], at: int, today: date) -> tuple[date | None, int, int]:
    """Read a day with a figure: "2 days ago", "hace 2 dias", "2 march", "2nd of march"."""
    word = tokens[at].text
    before, start = _figure_before(tokens, at)
    after = tokens[at + 1] if at + 1 < len(tokens) else None
    if word in {"days", "day"} and before is not None and after is not None and after.text in AGO:
        return today - timedelta(days=before), start, at + 2
    is_hace = word == "hace" and after is not None and after.is_bare and after.value <= LATEST_DAY
    is_days = at + 2 < len(tokens) and tokens[at + 2].text in {"dias", "dia"}
    if is_hace and is_days and after is not None:
        return today - timedelta(days=int(after.value)), at, at + 3
    if word in MONTHS and before is not None:
        return _date(before, MONTHS[word], today), start, at + 1
    if word in MONTHS and after is not None and word != "may":
        n = after.n if after.mark is Mark.ORDINAL else int(after.value) if after.is_bare else 0
        if 1 <= n <= LATEST_DAY:
            return _date(n, MONTHS[word], today), at, at + 2
    return None, at, at


def _figure_before(tokens: Sequence[Token], at: int) -> tuple[int | None, int]:
    """Return the day of the month, or count of days, before a word, and where it begins."""
    i = at - 1
    if i >= 1 and tokens[i].text in {"of", "de"}:
        i -= 1
    if i < 0:
        return None, at
    token = tokens[i]
    if token.mark is Mark.ORDINAL and 1 <= token.n <= LATEST_DAY:
        return token.n, i
    if token.is_bare and token.value.is_integer() and token.value <= LATEST_DAY:
        return int(token.value), i
    return None, at


def _date(day: int, month: int, today: date) -> date | None:
    """Return the latest such date that is not after today, or None where there is none."""
    for year in (today.year, today.year - 1):
        try:
            named = date(year, month, day)
        except ValueError:
            continue
        if named <= today:
            return named
    return None
