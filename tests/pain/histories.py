"""Short ways to write a history of pain for the tests."""

from datetime import UTC, datetime, timedelta

from scheduler.pain.events import (
    Cleared,
    Corrected,
    FlagAnswered,
    FlagRaised,
    MorningAnswered,
    Occasion,
    PainReported,
    SessionTrained,
)
from scheduler.pain.levels import picture_of
from scheduler.pain.values import Level, Region, Side, Site

START = datetime(2026, 3, 2, 18, 0, tzinfo=UTC)
WRIST = Region(site=Site.WRIST, arm=Side.LEFT)


def at(day, hour=0):
    return START + timedelta(days=day, hours=hour)


def session(day, *regions):
    return SessionTrained(key=f"s{day}", at_utc=at(day), loaded=frozenset(regions or (WRIST,)))


def report(day, score, *signs, site=Site.WRIST, side=Side.LEFT, hour=1, message=False, **more):
    return PainReported(
        key=f"r{day}.{hour}",
        at_utc=at(day, hour),
        site=site,
        side=side,
        score=score,
        signs=frozenset(signs),
        occasion=Occasion.MESSAGE if message else Occasion.AFTER_SESSION,
        **more,
    )


def morning(day, score, site=Site.WRIST, side=Side.LEFT):
    """The answer on the morning after ``day``."""
    return MorningAnswered(key=f"m{day}", at_utc=at(day, 13), site=site, side=side, score=score)


def flag(day, flag_, certainty, site=None, **more):
    return FlagRaised(
        key=f"f{day}", at_utc=at(day, 2), flag=flag_, certainty=certainty, site=site, **more
    )


def answered(day, certainty, flag_day=None):
    return FlagAnswered(
        key=f"a{day}",
        at_utc=at(day, 3),
        flag_key=f"f{day if flag_day is None else flag_day}",
        certainty=certainty,
    )


def cleared(day, *, site=Site.WRIST, side=Side.LEFT, assessed=False, trains_from=None):
    return Cleared(
        key=f"c{day}",
        at_utc=at(day, 4),
        site=site,
        side=side,
        by="coach",
        reason="looked at it together",
        is_assessed=assessed,
        trains_from_utc=trains_from,
    )


def corrected(day, report_key, replacement, hour=5):
    return Corrected(
        key=f"x{day}.{hour}", at_utc=at(day, hour), report_key=report_key, replacement=replacement
    )


def picture(*events, day=None):
    last = max(event.at_utc for event in events)
    return picture_of(events, as_of_utc=last if day is None else at(day))


def level(*events, day=None, region=WRIST):
    found = picture(*events, day=day).region(region.site, region.arm)
    return found.level if found else Level.NONE
