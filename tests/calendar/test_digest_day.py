"""The digest through every change of its day: at most ten days apart, every day told once."""

from collections.abc import Mapping
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest

from scheduler.calendar.digest_day import told_from
from scheduler.calendar.due import due_for
from scheduler.calendar.values import Due, DueKind, Owed
from tests.calendar.people import timing, utc

MONDAY, FRIDAY, SUNDAY = 0, 4, 6
BETWEEN_ROUNDS = timedelta(hours=1)
DAY = timedelta(days=1)


class Reader:
    """A coach whose bot looks every hour, and who moves the digest when the test says so."""

    def __init__(self, start: str, *, weekday: int, at: time = time(7), zone: str = "UTC"):
        self.now = utc(start)
        self.hours = timing(zone, digest_weekday=weekday, digest_at=at, joined_at_utc=self.now)
        self.moved_at: datetime | None = None
        self.sent: list[tuple[datetime, Due]] = []

    def read_until(self, until: str | datetime) -> None:
        end = utc(until) if isinstance(until, str) else until
        while self.now < end:
            since, self.now = self.now, self.now + BETWEEN_ROUNDS
            owed = Owed(
                recurring=frozenset({DueKind.DIGEST}),
                last_digest_on=self.sent[-1][1].local_date if self.sent else None,
                digest_moved_at_utc=self.moved_at,
            )
            handled = {due.key for _, due in self.sent}
            for due in due_for(
                person_id=5,
                timing=self.hours,
                owed=owed,
                since_utc=since,
                until_utc=self.now,
                handled=handled,
            ):
                self.sent.append((self.now, due))

    def move(self, **hours) -> None:
        self.hours = self.hours.model_copy(update=hours)
        self.moved_at = self.now

    @property
    def days(self) -> list[date]:
        return [due.local_date for _, due in self.sent]

    def told(self) -> Mapping[date, int]:
        """Count how often each day was told, from the first digest on."""
        counts: dict[date, int] = {}
        for before, on in pairwise(self.days):
            day = told_from(last_on=before, on=on)
            while day < on:
                counts[day] = counts.get(day, 0) + 1
                day += DAY
        return counts


def assert_nothing_is_lost(reader: Reader) -> None:
    gaps = [(after - before).days for before, after in pairwise(reader.days)]
    assert max(gaps) <= 10  # CHOSEN: the longest wait of a coach, after a move too
    assert min(gaps) >= 4  # CHOSEN: less is hardly worth a digest
    told = reader.told()
    span = (reader.days[-1] - reader.days[0]).days
    assert sorted(told) == [reader.days[0] + n * DAY for n in range(span)]
    assert set(told.values()) == {1}


def test_moved_from_monday_to_sunday_the_next_comes_on_that_sunday():
    reader = Reader("2026-06-01 06:00", weekday=MONDAY)
    reader.read_until("2026-06-03 12:00")
    reader.move(digest_weekday=SUNDAY, digest_at=time(18))
    reader.read_until("2026-06-22 00:00")
    assert reader.days == [date(2026, 6, 1), date(2026, 6, 7), date(2026, 6, 14), date(2026, 6, 21)]
    assert_nothing_is_lost(reader)


def test_moved_on_a_sunday_evening_one_comes_in_between():
    reader = Reader("2026-06-01 06:00", weekday=MONDAY)
    reader.read_until("2026-06-07 20:00")
    reader.move(digest_weekday=SUNDAY, digest_at=time(18))
    reader.read_until("2026-06-08 17:00")
    assert reader.days == [date(2026, 6, 1)]  # none at once
    reader.read_until("2026-06-22 00:00")
    # DERIVED: waiting for 14 June would be 13 days; 8 June is the next time it is 18:00
    assert reader.days == [date(2026, 6, 1), date(2026, 6, 8), date(2026, 6, 14), date(2026, 6, 21)]
    assert_nothing_is_lost(reader)


def test_moved_from_sunday_to_monday_the_next_comes_after_eight_days():
    reader = Reader("2026-06-07 06:00", weekday=SUNDAY)
    reader.read_until("2026-06-10 12:00")
    reader.move(digest_weekday=MONDAY)
    reader.read_until("2026-06-23 00:00")
    assert reader.days == [date(2026, 6, 7), date(2026, 6, 15), date(2026, 6, 22)]
    assert_nothing_is_lost(reader)


@pytest.mark.parametrize("zone", ["Europe/Berlin", "America/New_York"])
@pytest.mark.parametrize("start", ["2026-03-16 00:00", "2026-10-12 00:00"])
@pytest.mark.parametrize("old", [MONDAY, SUNDAY])
def test_whenever_and_wherever_it_moves_no_day_is_lost_or_told_twice(zone, start, old):
    """Through both changes of the clock: every new day, moved on every day of a week."""
    for new in range(7):
        for days in range(7):
            reader = Reader(start, weekday=old, zone=zone)
            # CHOSEN: an odd hour, behind the old and before the new one
            reader.read_until(utc(start) + timedelta(days=7 + days, hours=13))
            reader.move(digest_weekday=new, digest_at=time(18))
            reader.read_until(reader.now + timedelta(days=20))
            assert_nothing_is_lost(reader)
            assert reader.days[-1].weekday() == new


def test_moved_there_and_back_within_an_hour_nothing_changes():
    reader = Reader("2026-06-01 06:00", weekday=MONDAY)
    reader.read_until("2026-06-05 12:00")
    reader.move(digest_weekday=FRIDAY)
    reader.read_until("2026-06-05 13:00")
    reader.move(digest_weekday=MONDAY)
    reader.read_until("2026-06-16 00:00")
    assert reader.days == [date(2026, 6, 1), date(2026, 6, 8), date(2026, 6, 15)]


def test_day_and_hour_moved_by_two_taps_bring_none_in_between():
    reader = Reader("2026-06-01 06:00", weekday=MONDAY)
    reader.read_until("2026-06-07 12:00")
    reader.move(digest_weekday=SUNDAY)  # 07:00 of this Sunday is past …
    reader.move(digest_at=time(18))  # … 18:00 is not
    reader.read_until("2026-06-15 00:00")
    assert reader.days == [date(2026, 6, 1), date(2026, 6, 7), date(2026, 6, 14)]


def test_a_coach_who_flies_gets_no_second_digest_of_the_day():
    reader = Reader("2026-06-01 06:00", weekday=MONDAY, zone="Asia/Tokyo")
    reader.read_until("2026-06-07 23:00")  # Monday 8 June, 08:00 in Tokyo
    assert reader.days == [date(2026, 6, 8)]
    reader.hours = reader.hours.model_copy(update={"zone": ZoneInfo("America/New_York")})
    reader.read_until("2026-06-16 00:00")
    assert reader.days == [date(2026, 6, 8), date(2026, 6, 15)]


def test_the_hour_stays_on_the_wall_through_the_change_of_the_clock():
    reader = Reader("2026-03-22 00:00", weekday=SUNDAY, zone="Europe/Berlin")
    reader.read_until("2026-04-06 00:00")
    # PUBLISHED tzdata Europe/Berlin: +01:00 until 29 March 2026 01:00Z, then +02:00
    assert [at.astimezone(UTC).hour for at, _ in reader.sent] == [6, 5, 5]


def test_after_three_weeks_without_one_the_next_tells_of_all_of_them():
    last = date(2026, 6, 1)
    assert told_from(last_on=last, on=date(2026, 6, 22)) == last
    assert told_from(last_on=last, on=date(2026, 12, 7)) == date(2026, 11, 9)  # CHOSEN: 28 days
    assert told_from(last_on=None, on=date(2026, 6, 8)) == last  # DERIVED: a week before
