"""The same data as tables: results, sessions, pain, and the athlete's own words."""

from collections.abc import Callable, Mapping
from datetime import datetime
from zoneinfo import ZoneInfo

from bot.exports.spreadsheet import Table, table_bytes
from bot.exports.values import AthleteData

RESULTS = (
    "date", "session", "item", "movement", "set", "side", "value", "unit", "load_kg", "band",
    "planned_sets", "planned_value", "planned_load_kg", "planned_band", "as_planned",
    "reserve_left", "reserve_at_least", "reported_at",
)  # fmt: skip
SESSIONS = (
    "date", "session", "state", "effort", "minutes", "sent_at", "trained_at", "called_off_because",
    "items", "sets_reported",
)  # fmt: skip
PAIN = ("date", "time", "kind", "site", "side", "score", "signs")
WORDS = ("date", "time", "words")


def results(data: AthleteData) -> Table:
    """Return a row a set; what was skipped or left out has none."""
    zone = ZoneInfo(data.athlete.zone)
    return [
        [
            session.on, session.letter, item.number, item.name, one.number, one.side, one.value,
            item.unit,
            _first(one.load_kg, item.dose.load_kg if item.dose else None),
            one.band or (item.dose.band if item.dose else None),
            item.dose.sets if item.dose else None,
            item.dose.target if item.dose else None,
            item.dose.load_kg if item.dose else None,
            item.dose.band if item.dose else None,
            one.is_as_planned, item.reserve_left, item.is_reserve_at_least,
            _local(one.reported_at, zone),
        ]
        for session in data.sessions
        for item in session.items
        for one in item.sets
    ]  # fmt: skip


def sessions(data: AthleteData) -> Table:
    """Return a row a session."""
    zone = ZoneInfo(data.athlete.zone)
    return [
        [
            one.on, one.letter, one.state, one.effort, one.minutes, _local(one.sent_at, zone),
            _local(one.trained_at, zone), one.called_off_because, len(one.items),
            sum(len(item.sets) for item in one.items),
        ]
        for one in data.sessions
    ]  # fmt: skip


def pain(data: AthleteData) -> Table:
    """Return a row for each thing said or decided about pain."""
    zone = ZoneInfo(data.athlete.zone)
    return [
        [
            *_day_and_time(one.at, zone),
            one.kind,
            one.site,
            one.side,
            one.score,
            "; ".join(one.signs),
        ]
        for one in data.pain
    ]


def words(data: AthleteData) -> Table:
    """Return a row for each message that is kept in the athlete's words."""
    zone = ZoneInfo(data.athlete.zone)
    return [[*_day_and_time(one.at, zone), one.words] for one in data.words]


TABLES: Mapping[str, tuple[tuple[str, ...], Callable[[AthleteData], Table]]] = {
    "results": (RESULTS, results),
    "sessions": (SESSIONS, sessions),
    "pain": (PAIN, pain),
    "words": (WORDS, words),
}


def table_file(name: str, data: AthleteData, *, decimal_mark: str) -> bytes:
    """Return one of the tables as a file."""
    head, rows_of = TABLES[name]
    return table_bytes(head, rows_of(data), decimal_mark=decimal_mark)


def _first(one: float | None, other: float | None) -> float | None:
    return other if one is None else one


def _local(at: datetime | None, zone: ZoneInfo) -> datetime | None:
    return None if at is None else at.astimezone(zone)


def _day_and_time(at: datetime, zone: ZoneInfo) -> tuple[str, str]:
    local = at.astimezone(zone)
    return local.date().isoformat(), f"{local:%H:%M}"
