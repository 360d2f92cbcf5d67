"""A session goes out at the athlete's own hour, once, wherever the athlete or the clock goes."""

from collections import Counter
from datetime import UTC, date, datetime, time, timedelta
from functools import cache, lru_cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.calendar.due import due_for
from scheduler.calendar.values import DueKind, Owed, PlannedSession
from scheduler.calendar.zones import zone_named, zone_names
from tests.calendar.people import daily_sessions, rounds, timing, utc


def found(owed, hours, since, until, handled=frozenset()):
    return due_for(
        person_id=1,
        timing=hours,
        owed=owed,
        since_utc=utc(since),
        until_utc=utc(until),
        handled=handled,
    )


MONDAY = Owed(sessions=(PlannedSession(session_id=7, local_date=date(2026, 6, 1)),))


def test_a_session_is_due_at_its_wall_time_and_not_a_minute_before():
    berlin = timing("Europe/Berlin", session_at=time(7))
    assert found(MONDAY, berlin, "2026-06-01 04:58", "2026-06-01 04:59") == ()
    # DERIVED: 07:00 at +02:00 (tzdata) is 05:00Z; evening 20:00 is 18:00Z
    (due,) = found(MONDAY, berlin, "2026-06-01 04:59", "2026-06-01 05:00")
    assert (due.kind, due.subject) == (DueKind.SESSION, "7")
    assert due.due_at_utc == utc("2026-06-01 05:00")
    assert due.useful_until_utc == utc("2026-06-01 18:00")


def test_a_session_may_have_an_hour_of_its_own():
    session = PlannedSession(session_id=7, local_date=date(2026, 6, 1), at=time(12, 15))
    (due,) = found(Owed(sessions=(session,)), timing("UTC"), "2026-06-01 12:00", "2026-06-01 13:00")
    assert due.due_at_utc == utc("2026-06-01 12:15")


def test_an_evening_session_is_useful_for_two_hours():
    # CHOSEN: two hours; DERIVED 19:30 + 2 h
    late = timing("UTC", session_at=time(19, 30), evening_at=time(20))
    (due,) = found(MONDAY, late, "2026-06-01 19:00", "2026-06-01 19:30")
    assert due.useful_until_utc == utc("2026-06-01 21:30")


def test_a_sent_session_is_not_due_again():
    sent = MONDAY.sessions[0].model_copy(update={"sent_at_utc": utc("2026-06-01 06:00")})
    assert (
        found(Owed(sessions=(sent,)), timing("UTC"), "2026-06-01 06:59", "2026-06-01 12:00") == ()
    )


@pytest.mark.parametrize(
    ("sent", "is_answered", "is_reminded"),
    [
        ("2026-06-01 07:00", False, True),
        ("2026-06-01 07:00", True, False),
        ("2026-06-01 18:00", False, True),  # CHOSEN: two hours before the evening at 20:00
        ("2026-06-01 18:01", False, False),
    ],
)
def test_one_reminder_in_the_evening_for_who_had_time_and_said_nothing(
    sent, is_answered, is_reminded
):
    session = PlannedSession(
        session_id=7,
        local_date=date(2026, 6, 1),
        sent_at_utc=utc(sent),
        is_answered=is_answered,
    )
    dues = found(Owed(sessions=(session,)), timing("UTC"), "2026-06-01 19:59", "2026-06-01 20:00")
    assert [due.kind for due in dues] == [DueKind.SESSION_REMINDER] * is_reminded
    handled = {due.key for due in dues}
    after = found(
        Owed(sessions=(session,)), timing("UTC"), "2026-06-01 20:00", "2026-06-03 20:00", handled
    )
    assert after == ()


@lru_cache(maxsize=1)
def distinct_zones(year: int) -> list[str]:
    """One zone of each group that changes its clocks in the same way in a year."""
    groups: dict[tuple[timedelta | None, ...], str] = {}
    for name in sorted(zone_names() - {"Factory"}):
        zone = zone_named(name)
        first = datetime(year, 1, 1, tzinfo=UTC)
        offsets = tuple(
            (first + timedelta(hours=12 * n)).astimezone(zone).utcoffset() for n in range(730)
        )
        if len(set(offsets)) > 1:
            groups.setdefault(offsets, name)
    return list(groups.values())


@cache
def change_dates(name: str, year: int) -> list[date]:
    zone, first = zone_named(name), datetime(year, 1, 1, tzinfo=UTC)
    days = [first + timedelta(days=n) for n in range(365)]
    return [
        day.date()
        for day in days
        if day.astimezone(zone).utcoffset()
        != (day + timedelta(days=1)).astimezone(zone).utcoffset()
    ]


# CHOSEN wall times: the hours at which clocks change, and an ordinary morning
@pytest.mark.parametrize("at", [time(0, 30), time(1, 45), time(2, 15), time(7, 0)])
def test_a_month_of_daily_sessions_across_every_change_is_due_once_a_day(at):
    zones = distinct_zones(2026)
    assert len(zones) > 10  # DERIVED by count of tzdata: the loop below has cases
    for name in zones:
        hours = timing(name, session_at=at)
        for change in change_dates(name, 2026):
            first = change - timedelta(days=15)
            start = datetime.combine(first, time(), tzinfo=UTC) - timedelta(days=1)
            seen = list(
                rounds(
                    Owed(sessions=daily_sessions(first, 30)),
                    hours,
                    start=start,
                    end=start + timedelta(days=33),
                    step=timedelta(hours=4),
                )
            )
            assert [due.subject for _, due in seen] == [str(n + 1) for n in range(30)], name
            zone = zone_named(name)
            on_wall = [due.due_at_utc.astimezone(zone).date() for _, due in seen]
            assert on_wall == [first + timedelta(days=n) for n in range(30)], name


ZONE_NAMES = st.sampled_from(sorted(zone_names() - {"Factory"}))


@settings(max_examples=60, deadline=None)
@given(
    trips=st.lists(st.tuples(st.integers(0, 10 * 24), ZONE_NAMES, st.integers(0, 23)), max_size=6)
)
def test_a_traveller_gets_each_session_once_whatever_the_zone_and_hour_become(trips):
    """Ten daily sessions, up to six changes of zone and hour at any time, a round an hour."""
    owed = Owed(sessions=daily_sessions(date(2026, 3, 1), 10))
    trips = sorted(trips)
    hours = timing("Europe/Berlin")
    start = utc("2026-02-27 00:00")
    handled: set[tuple[str, str]] = set()
    seen: Counter[str] = Counter()
    for hour in range(16 * 24):
        for _, zone, at in (trip for trip in trips if trip[0] == hour):
            hours = timing(zone, session_at=time(at))
        now = start + timedelta(hours=hour)
        dues = due_for(
            person_id=1,
            timing=hours,
            owed=owed,
            since_utc=now - timedelta(hours=1),
            until_utc=now,
            handled=handled,
        )
        handled |= {due.key for due in dues}
        seen.update(due.subject for due in dues)
    assert seen == {str(n + 1): 1 for n in range(10)}


def test_flying_east_past_the_hour_loses_nothing():
    # DERIVED: at 10:00Z New York (-04:00) waits for 07:00 = 11:00Z; in Berlin it is 12:00, late
    assert found(MONDAY, timing("America/New_York"), "2026-06-01 09:59", "2026-06-01 10:00") == ()
    (due,) = found(MONDAY, timing("Europe/Berlin"), "2026-06-01 10:00", "2026-06-01 10:01")
    assert (due.subject, due.due_at_utc) == ("7", utc("2026-06-01 05:00"))


def test_flying_west_after_it_was_sent_sends_no_second():
    (due,) = found(MONDAY, timing("Europe/Berlin"), "2026-06-01 04:59", "2026-06-01 05:00")
    again = found(
        MONDAY, timing("America/New_York"), "2026-06-01 10:59", "2026-06-01 11:00", {due.key}
    )
    assert again == ()
