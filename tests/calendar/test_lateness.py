"""A late message is sent while it is of use, else noted, and an outage is told of."""

from datetime import date, time, timedelta

import pytest

from scheduler.calendar.calendar_reasons import CalendarReason
from scheduler.calendar.due import due_for, morning_due, session_due, silence_due
from scheduler.calendar.lateness import Fate, fate_of, fates_of, stood_still
from scheduler.calendar.values import MorningAfter, Owed, PlannedSession, Silence
from scheduler.sources import SOURCES
from tests.calendar.people import daily_sessions, timing, utc

HOURS = timing("UTC", session_at=time(7), evening_at=time(20), morning_question_at=time(7, 30))
DAY = date(2026, 6, 1)
SESSION = session_due(PlannedSession(session_id=1, local_date=DAY), person_id=1, timing=HOURS)
MORNING = morning_due(
    MorningAfter(subject="s", reported_on=DAY - timedelta(days=1)), person_id=1, timing=HOURS
)
SILENCE = silence_due(
    Silence(subject="s", since=DAY - timedelta(days=3)), person_id=1, timing=HOURS
)


@pytest.mark.parametrize(
    ("due", "now", "fate", "code"),
    [
        # CHOSEN: five minutes unnoticed; a session until its evening; a morning until noon
        (SESSION, "07:00", Fate.SEND, CalendarReason.ON_TIME),
        (SESSION, "07:05", Fate.SEND, CalendarReason.ON_TIME),
        (SESSION, "07:06", Fate.SEND, CalendarReason.LATE_STILL_USEFUL),
        (SESSION, "19:59", Fate.SEND, CalendarReason.LATE_STILL_USEFUL),
        (SESSION, "20:00", Fate.NOTE, CalendarReason.TOO_LATE),
        (MORNING, "11:59", Fate.SEND, CalendarReason.LATE_STILL_USEFUL),
        (MORNING, "12:00", Fate.NOTE, CalendarReason.TOO_LATE),
        (SILENCE, "23:59", Fate.SEND, CalendarReason.LATE_STILL_USEFUL),
    ],
)
def test_what_is_late_is_sent_while_it_is_useful(due, now, fate, code):
    decision = fate_of(due, now_utc=utc(f"2026-06-01 {now}"))
    assert decision.value is fate
    assert decision.reasons[0].code == code
    assert decision.reasons[0].source in SOURCES


def test_the_reason_says_how_late():
    # DERIVED: 09:00 - 07:00 = 7200 s
    decision = fate_of(SESSION, now_utc=utc("2026-06-01 09:00"))
    assert decision.reasons[0].figures == {"late_s": 7200}


def fates_in_apia(sessions):
    apia = timing("Pacific/Apia", session_at=time(12))
    # PUBLISHED rfc5545 + tzdata: noon of 30 and of 31 December 2011 are both 22:00Z on the 30th
    now = utc("2011-12-30 22:00")
    dues = due_for(
        person_id=1,
        timing=apia.model_copy(update={"joined_at_utc": utc("2011-01-01 00:00")}),
        owed=Owed(sessions=sessions),
        since_utc=now - timedelta(minutes=1),
        until_utc=now,
    )
    return [
        (due.subject, decision.value, decision.reasons[0].code)
        for due, decision in fates_of(dues, zone=apia.zone, now_utc=now)
    ]


def test_two_dates_on_one_instant_are_one_message():
    assert fates_in_apia(daily_sessions(date(2011, 12, 30), 2)) == [
        ("1", Fate.NOTE, CalendarReason.DAY_LEFT_OUT),
        ("2", Fate.SEND, CalendarReason.ON_TIME),
    ]


def test_a_session_of_a_left_out_date_alone_is_sent_on_the_day_after():
    assert fates_in_apia(daily_sessions(date(2011, 12, 30), 1)) == [
        ("1", Fate.SEND, CalendarReason.ON_TIME)
    ]


@pytest.mark.parametrize(
    ("now", "is_outage"),
    [("07:01", False), ("07:05", False), ("07:06", True)],  # CHOSEN: 5 min
)
def test_an_outage_is_more_than_five_minutes_between_rounds(now, is_outage):
    decision = stood_still(last_round_utc=utc("2026-06-01 07:00"), now_utc=utc(f"2026-06-01 {now}"))
    assert decision.value is is_outage
