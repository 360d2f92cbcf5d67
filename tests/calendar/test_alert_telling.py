"""An alert is told until somebody answers: by the clock when urgent, in waking hours when not.

Every interval is CHOSEN (SAFETY of this project): 10 min, 30 min, doubling to 4 h; 4 waking hours.
"""

from datetime import date, time, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.calendar.alert_telling import first_telling_at, next_telling_at
from scheduler.calendar.calendar_reasons import CalendarReason
from scheduler.calendar.waking_hours import after_waking, is_awake, next_waking
from scheduler.calendar.zones import zone_names
from scheduler.pain.values import Urgency
from tests.calendar.people import timing, utc

COACH = timing("UTC", waking_from=time(7), waking_until=time(22))


@pytest.mark.parametrize(
    ("urgency", "minutes"),
    [
        (Urgency.NOW, [10, 20, 40, 80, 160, 240, 240, 240]),
        (Urgency.TODAY, [30, 60, 120, 240, 240]),
    ],
)
def test_urgent_alerts_repeat_at_doubling_intervals_up_to_four_hours(urgency, minutes):
    told = utc("2026-06-01 02:00")  # at night: quiet hours hold back nothing
    for times_told, wait in enumerate(minutes, start=1):
        decision = next_telling_at(urgency, times_told=times_told, told_at_utc=told, coach=COACH)
        assert decision.value == told + timedelta(minutes=wait)
        told = decision.value


def test_an_alert_told_for_weeks_still_repeats_every_four_hours():
    told = utc("2026-06-01 02:00")
    decision = next_telling_at(Urgency.NOW, times_told=5000, told_at_utc=told, coach=COACH)
    assert decision.value == told + timedelta(hours=4)


@pytest.mark.parametrize(
    ("urgency", "raised", "told", "code"),
    [
        (Urgency.NOW, "03:00", "03:00", CalendarReason.TOLD_AT_ONCE),
        (Urgency.TODAY, "03:00", "03:00", CalendarReason.TOLD_AT_ONCE),
        (Urgency.SOON, "03:00", "07:00", CalendarReason.TOLD_WHEN_AWAKE),
        (Urgency.SOON, "12:00", "12:00", CalendarReason.TOLD_WHEN_AWAKE),
    ],
)
def test_a_coach_is_told_at_once_or_when_awake(urgency, raised, told, code):
    decision = first_telling_at(urgency, raised_at_utc=utc(f"2026-06-01 {raised}"), coach=COACH)
    assert decision.value == utc(f"2026-06-01 {told}")
    assert decision.reasons[0].code == code


def test_what_is_convenient_waits_for_the_digest():
    now = utc("2026-06-01 12:00")
    for decision in (
        first_telling_at(Urgency.CONVENIENT, raised_at_utc=now, coach=COACH),
        next_telling_at(Urgency.CONVENIENT, times_told=1, told_at_utc=now, coach=COACH),
    ):
        assert decision.value is None
        assert decision.reasons[0].code == CalendarReason.TOLD_IN_DIGEST


def test_an_alert_never_told_has_no_next_telling():
    with pytest.raises(ValueError, match="first telling"):
        next_telling_at(Urgency.NOW, times_told=0, told_at_utc=utc("2026-06-01 12:00"), coach=COACH)


@pytest.mark.parametrize(
    ("told", "again"),
    [
        ("2026-06-01 08:00", "2026-06-01 12:00"),
        ("2026-06-01 20:00", "2026-06-02 09:00"),  # DERIVED: 2 h to 22:00, 2 h from 07:00
        ("2026-06-01 23:00", "2026-06-02 11:00"),  # DERIVED: 4 h from 07:00
        ("2026-06-01 18:00", "2026-06-01 22:00"),  # DERIVED: just before bed
    ],
)
def test_what_may_wait_repeats_after_four_waking_hours(told, again):
    decision = next_telling_at(Urgency.SOON, times_told=2, told_at_utc=utc(told), coach=COACH)
    assert decision.value == utc(again)


def test_a_night_worker_is_awake_past_midnight():
    night = timing("UTC", waking_from=time(16), waking_until=time(8))
    assert is_awake(utc("2026-06-01 03:00"), timing=night)
    assert not is_awake(utc("2026-06-01 12:00"), timing=night)
    assert next_waking(utc("2026-06-01 12:00"), timing=night) == utc("2026-06-01 16:00")
    # DERIVED: 2 h to 08:00, 2 h from 16:00
    four = timedelta(hours=4)
    assert after_waking(utc("2026-06-01 06:00"), four, timing=night) == utc("2026-06-01 18:00")


def test_equal_ends_mean_any_hour():
    always = timing("UTC", waking_from=time(7), waking_until=time(7))
    now = utc("2026-06-01 03:00")
    assert next_waking(now, timing=always) == now
    assert after_waking(now, timedelta(hours=30), timing=always) == now + timedelta(hours=30)


@settings(max_examples=150, deadline=None)
@given(
    zone=st.sampled_from(sorted(zone_names() - {"Factory"})),
    on=st.dates(min_value=date(2011, 1, 1), max_value=date(2037, 1, 1)),
    minute=st.integers(0, 1439),
    start=st.times(),
    end=st.times(),
    hours=st.integers(1, 30),
)
def test_waking_time_passes_only_forward_and_never_faster_than_time(
    zone, on, minute, start, end, hours
):
    person = timing(zone, waking_from=start, waking_until=end)
    now = utc(f"{on} 00:00") + timedelta(minutes=minute)
    up = next_waking(now, timing=person)
    assert now <= up <= now + timedelta(hours=49)  # DERIVED: a day, a left-out one, an hour
    # waking hours of a second are left out here: they would take years to add up
    if (end.hour - start.hour) % 24 >= 2:
        waited = after_waking(now, timedelta(hours=hours), timing=person)
        assert waited - up >= timedelta(hours=hours)
