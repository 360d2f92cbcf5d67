"""What was trained elsewhere lately, and which days of a week it makes hard."""

from datetime import date, time, timedelta

from bot.turn import Turn
from scheduler.calendar.wall_time import due_instant, local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.training.other_training import OtherTraining, hard_days, tags_of
from scheduler.training.week_values import HardDay
from storage.queries import care
from storage.records.people import Athlete, Person

REPORTED = "other_training"
NOW_TOO = timedelta(seconds=1)  # [s] what is written in this very turn counts
LOOKED_BACK = timedelta(days=7)  # [days] ch: what is older tires nobody in this week


def reported_since(turn: Turn, person: Person, *, first: date) -> tuple[OtherTraining, ...]:
    """Return the other training that was told from a day on, by the day of the telling."""
    zone = zone_named(person.zone)
    since = due_instant(local_date=first, wall_time=time(0), zone=zone)
    entries = care.audit_between(turn.tx, [person.id], since=since, until=turn.now + NOW_TOO)
    return tuple(
        OtherTraining(
            on=local_date_of(entry.at, zone),
            tags=tags_of(f"{entry.words} {entry.after.get('name', '')}"),
            effort=entry.after.get("effort"),
            minutes=entry.after.get("minutes"),
        )
        for entry in entries
        if entry.what == REPORTED
    )


def hard_days_of(
    turn: Turn, person: Person, athlete: Athlete, *, monday: date
) -> tuple[HardDay, ...]:
    """Return the days that other training makes hard, in a week and right around it."""
    return hard_days(
        reported_since(turn, person, first=monday - LOOKED_BACK),
        athlete.profile.regular_training,
        week_start=monday,
        rulebook=turn.house.rulebook,
    )
