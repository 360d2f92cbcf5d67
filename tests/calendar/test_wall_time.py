"""A wall time and a date mean one instant: the first of two, by the old offset in a gap.

Expected instants: PUBLISHED, rule of RFC 5545 section 3.3.5 over the zone data of tzdata 2026f.
"""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.calendar.wall_time import (
    WallTimeKind,
    due_instant,
    has_date,
    local_date_of,
    local_time_of,
    wall_time_kind,
)
from scheduler.calendar.zones import use_packaged_zones, zone_named, zone_names
from tests.calendar.people import utc

ONCE, TWICE, SKIPPED = WallTimeKind.ONCE, WallTimeKind.TWICE, WallTimeKind.SKIPPED

# PUBLISHED rfc5545 3.3.5 + tzdata 2026f, each row
PUBLISHED = [
    ("Europe/Berlin", "2026-03-29 02:30", SKIPPED, "2026-03-29 01:30"),
    ("Europe/Berlin", "2026-10-25 02:30", TWICE, "2026-10-25 00:30"),
    ("America/New_York", "2026-03-08 02:30", SKIPPED, "2026-03-08 07:30"),
    ("America/New_York", "2026-11-01 01:30", TWICE, "2026-11-01 05:30"),
    ("Australia/Lord_Howe", "2026-10-04 02:15", SKIPPED, "2026-10-03 15:45"),
    ("Australia/Lord_Howe", "2026-04-05 01:45", TWICE, "2026-04-04 14:45"),
    ("Pacific/Apia", "2011-12-30 12:00", SKIPPED, "2011-12-30 22:00"),
    ("Pacific/Apia", "2011-12-31 12:00", ONCE, "2011-12-30 22:00"),
    ("America/Santiago", "2026-09-06 00:30", SKIPPED, "2026-09-06 04:30"),
    ("Africa/Cairo", "2026-04-24 00:30", SKIPPED, "2026-04-23 22:30"),
    # the flag changes, the offset (+03:00, same tzdata) does not: DERIVED 00:30 - 3 h
    ("Asia/Amman", "2022-10-28 00:30", ONCE, "2022-10-27 21:30"),
    # own edges, DERIVED from the same rule and data
    ("Europe/Berlin", "2026-03-29 02:00", SKIPPED, "2026-03-29 01:00"),  # 02:00 - 1 h
    ("Europe/Berlin", "2026-03-29 03:00", ONCE, "2026-03-29 01:00"),  # 03:00 - 2 h
    ("Europe/Berlin", "2026-10-25 03:00", ONCE, "2026-10-25 02:00"),  # 03:00 - 1 h
    ("UTC", "2026-03-29 02:30", ONCE, "2026-03-29 02:30"),
]


@pytest.mark.parametrize(
    ("zone", "wall", "kind", "instant"), PUBLISHED, ids=[f"{z} {w}" for z, w, *_ in PUBLISHED]
)
def test_published_wall_times_mean_their_instants(zone, wall, kind, instant):
    on, at = datetime.fromisoformat(wall).date(), datetime.fromisoformat(wall).time()
    found = due_instant(local_date=on, wall_time=at, zone=zone_named(zone))
    assert found == utc(instant)
    assert found.tzinfo is UTC
    assert wall_time_kind(local_date=on, wall_time=at, zone=zone_named(zone)) is kind


def test_a_summer_time_flag_that_changes_alone_changes_nothing():
    amman = zone_named("Asia/Amman")
    before = datetime(2022, 10, 27, 21, 0, tzinfo=UTC) - timedelta(minutes=1)
    after = datetime(2022, 10, 27, 23, 0, tzinfo=UTC)
    # PUBLISHED tzdata 2026f: the flag differs across the change, the offset does not
    assert before.astimezone(amman).dst() != after.astimezone(amman).dst()
    assert before.astimezone(amman).utcoffset() == after.astimezone(amman).utcoffset()


def test_a_date_that_a_zone_left_out_is_known():
    apia = zone_named("Pacific/Apia")
    # PUBLISHED tzdata: Samoa left out 30 December 2011
    assert [has_date(date(2011, 12, d), apia) for d in (29, 30, 31)] == [True, False, True]


def test_a_day_whose_midnight_is_skipped_is_still_a_day():
    # PUBLISHED tzdata: Cairo and Santiago change at midnight
    assert has_date(date(2026, 4, 24), zone_named("Africa/Cairo"))
    assert has_date(date(2026, 9, 6), zone_named("America/Santiago"))


def test_date_and_time_on_the_wall_are_read_in_the_zone():
    # DERIVED: Auckland is 13 h ahead in January (tzdata): 11:30Z is 00:30 on the next day
    auckland = zone_named("Pacific/Auckland")
    assert local_date_of(utc("2026-01-05 11:30"), auckland) == date(2026, 1, 6)
    assert local_time_of(utc("2026-01-05 11:30"), auckland) == time(0, 30)


def test_the_second_half_past_two_reads_like_the_first():
    # PUBLISHED rfc5545: 01:30Z is the second 02:30 in Berlin on 2026-10-25
    found = local_time_of(utc("2026-10-25 01:30"), zone_named("Europe/Berlin"))
    assert (found, found.fold, found.tzinfo) == (time(2, 30), 0, None)


def test_a_wall_time_with_a_zone_of_its_own_is_refused():
    with pytest.raises(ValueError, match="no zone of its own"):
        due_instant(
            local_date=date(2026, 1, 1), wall_time=time(7, tzinfo=UTC), zone=zone_named("UTC")
        )


@pytest.mark.parametrize("read", [local_date_of, local_time_of])
def test_an_instant_without_a_zone_is_refused(read):
    with pytest.raises(ValueError, match="needs a zone"):
        read(datetime(2026, 1, 1), zone_named("UTC"))  # noqa: DTZ001 (the mistake under test)


# Own properties. CHOSEN: dates 1970 to 2080; every zone of the package.
DATES = st.dates(min_value=date(1970, 1, 5), max_value=date(2080, 12, 1))
WALL_TIMES = st.times().map(lambda t: t.replace(second=0, microsecond=0))
use_packaged_zones()
ZONES = st.sampled_from(sorted(zone_names() - {"Factory"})).map(zone_named)


def offset_at(instant: datetime, zone: ZoneInfo) -> timedelta:
    """How far the wall is ahead of UTC, by subtraction."""
    return instant.astimezone(zone).replace(tzinfo=None) - instant.replace(tzinfo=None)


def scanned(on: date, at: time, zone: ZoneInfo) -> datetime:
    """Derive the instant from UTC to wall alone, minute by minute, with no rule of folds."""
    wall = datetime.combine(on, at)
    start = wall.replace(tzinfo=UTC) - timedelta(hours=40)
    offsets: set[timedelta] = set()
    for minute in range(0, 80 * 60, 15):
        instant = start + timedelta(minutes=minute)
        offsets.add(offset_at(instant, zone))
    read_back = [
        instant
        for offset in offsets
        if (instant := (wall - offset).replace(tzinfo=UTC)).astimezone(zone).replace(tzinfo=None)
        == wall
    ]
    if read_back:
        return min(read_back)
    before = start
    while before.astimezone(zone).replace(tzinfo=None) < wall:
        before += timedelta(minutes=1)
    offset_before = offset_at(before - timedelta(minutes=1), zone)
    return (wall - offset_before).replace(tzinfo=UTC)


@settings(max_examples=300, deadline=None)
@given(on=DATES, at=WALL_TIMES, zone=ZONES)
def test_the_instant_is_the_one_found_by_reading_the_wall_minute_by_minute(on, at, zone):
    assert due_instant(local_date=on, wall_time=at, zone=zone) == scanned(on, at, zone)


@settings(max_examples=300, deadline=None)
@given(on=DATES, at=st.times(), zone=ZONES)
def test_later_dates_mean_later_instants(on, at, zone):
    days = [on + timedelta(days=n) for n in range(8)]
    instants = [due_instant(local_date=day, wall_time=at, zone=zone) for day in days]
    assert instants == sorted(instants)
    real = [i for i, day in zip(instants, days, strict=True) if has_date(day, zone)]
    assert len(set(real)) == len(real)


def changes_of(year: int):
    """Every change of an offset in every zone in a year: the zone, and an hour before it."""
    for name in sorted(zone_names() - {"Factory"}):
        zone = zone_named(name)
        hour = datetime(year, 1, 1, tzinfo=UTC)
        while hour.year == year:
            step = hour + timedelta(hours=6)
            if hour.astimezone(zone).utcoffset() != step.astimezone(zone).utcoffset():
                yield zone, hour
            hour = step


@pytest.mark.parametrize("year", [2011, 2026])  # CHOSEN: the year of Apia's leap, and this one
def test_around_every_change_of_the_year_the_instant_is_the_scanned_one(year):
    seen = set()
    for zone, hour in changes_of(year):
        mark = (hour, hour.astimezone(zone).utcoffset())
        if mark in seen:  # zones that change together are one case
            continue
        seen.add(mark)
        wall = hour.astimezone(zone).replace(tzinfo=None)
        for minutes in range(0, 9 * 60, 30):
            at = wall + timedelta(minutes=minutes)
            found = due_instant(local_date=at.date(), wall_time=at.time(), zone=zone)
            assert found == scanned(at.date(), at.time(), zone), (zone.key, at)
    assert len(seen) > 20  # DERIVED by count: many distinct changes a year, so the loop ran
