"""The load of the last seven days, our sessions and other training, and how even it was."""

from datetime import date, time, timedelta

from bot.turn import Turn
from bot.wording import coach_week
from scheduler.calendar.wall_time import due_instant, local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.training.session_load import DAYS_A_WEEK, WeekLoad, session_load, week_load
from storage.queries import care, training
from storage.records.people import Person

OTHER = "other_training"
NOW_TOO = timedelta(seconds=1)  # [s] what is written in this very turn counts


def load_line(turn: Turn, coach: Person, person: Person, *, today: date) -> str:
    """Write the week's load for the coach, empty where no effort was told."""
    found = last_week(turn, person, today=today)
    return coach_week.load_line(turn.tongue(coach), found) if found.load else ""


def last_week(turn: Turn, person: Person, *, today: date) -> WeekLoad:
    """Add up effort times minutes of each of the last seven days; a rest day counts as 0."""
    first = today - timedelta(days=DAYS_A_WEEK - 1)
    daily = {first + timedelta(days=n): 0.0 for n in range(DAYS_A_WEEK)}
    sessions = training.sessions_between(turn.tx, person.id, first=first, last=today)
    for session in sessions:
        if session.effort is not None and session.minutes:
            daily[session.on] += session_load(effort=session.effort, duration_min=session.minutes)
    for on, load in _other(turn, person, first=first, today=today):
        daily[on] += load
    return week_load(list(daily.values()))


def _other(turn: Turn, person: Person, *, first: date, today: date) -> list[tuple[date, float]]:
    """Return the load of other training that told both effort and minutes."""
    zone = zone_named(person.zone)
    since = due_instant(local_date=first, wall_time=time(0), zone=zone)
    entries = care.audit_between(turn.tx, [person.id], since=since, until=turn.now + NOW_TOO)
    return [
        (on, session_load(effort=float(effort), duration_min=float(minutes)))
        for entry in entries
        if entry.what == OTHER
        and (effort := entry.after.get("effort")) is not None
        and (minutes := entry.after.get("minutes")) is not None
        and first <= (on := local_date_of(entry.at, zone)) <= today
    ]
