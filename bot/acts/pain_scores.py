"""Reported scores by place and day, as they stand after corrections."""

from datetime import date, datetime, time

from bot.acts import pain_picture
from bot.pictures.values import PainDay
from bot.turn import Turn
from scheduler.calendar.wall_time import due_instant, local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.events import Corrected, MorningAnswered, PainReported
from scheduler.pain.values import Region, regions_of
from storage.records.people import Person

Point = tuple[date, int, bool]
"""A day, a score [0-10], and whether it was told the morning after."""


def points_of(turn: Turn, person: Person, *, since: date) -> dict[Region, list[Point]]:
    """Return the scores of each place from a day on, the oldest first."""
    zone = zone_named(person.zone)
    begins_at: datetime = due_instant(local_date=since, wall_time=time(0), zone=zone)
    standing: dict[str, PainReported | MorningAnswered] = {}
    for event in pain_picture.events_of(turn, person.id, since=begins_at):
        if isinstance(event, PainReported | MorningAnswered):
            standing[event.key] = event
        elif isinstance(event, Corrected) and event.report_key in standing:
            original = standing.pop(event.report_key)
            if event.replacement is not None:
                standing[event.report_key] = event.replacement.model_copy(
                    update={"at_utc": original.at_utc}
                )
    found: dict[Region, list[Point]] = {}
    for event in sorted(standing.values(), key=lambda one: one.at_utc):
        on = local_date_of(event.at_utc, zone)
        if event.score is None or on < since:
            continue
        for region in regions_of(event.site, event.side):
            found.setdefault(region, []).append(
                (on, event.score, isinstance(event, MorningAnswered))
            )
    return found


def highest_of_days(turn: Turn, person: Person, *, since: date) -> tuple[PainDay, ...]:
    """Return the highest score of each day over all places, the oldest first."""
    highest: dict[date, Point] = {}
    for points in points_of(turn, person, since=since).values():
        for point in points:
            kept = highest.get(point[0])
            if kept is None or point[1] > kept[1]:
                highest[point[0]] = point
    return tuple(
        PainDay(on=on, score=min(10, max(0, score)), is_morning=is_morning)
        for on, score, is_morning in (highest[day] for day in sorted(highest))
    )
