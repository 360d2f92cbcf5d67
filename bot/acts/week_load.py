"""The load of the last seven days, our sessions and other training, and how even it was."""

from datetime import date, timedelta

from bot.acts.training_elsewhere import reported_since
from bot.turn import Turn
from bot.wording import coach_week
from scheduler.training.session_load import DAYS_A_WEEK, WeekLoad, session_load, week_load
from storage.queries import training
from storage.records.people import Person


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
    for told in reported_since(turn, person, first=first):
        if told.effort is not None and told.minutes is not None and told.on <= today:
            daily[told.on] += session_load(effort=told.effort, duration_min=told.minutes)
    return week_load(list(daily.values()))
