"""Questions, digests, planning and alerts fall due by the wall clock, each subject once."""

from datetime import date, time, timedelta

import pytest

from scheduler.calendar.due import due_for
from scheduler.calendar.values import (
    DueKind,
    MorningAfter,
    OpenAlert,
    Owed,
    PlannedSession,
    Silence,
)
from tests.calendar.people import rounds, timing, utc


def found(owed, hours, since, until, handled=frozenset()):
    return due_for(
        person_id=5,
        timing=hours,
        owed=owed,
        since_utc=utc(since),
        until_utc=utc(until),
        handled=handled,
    )


def test_the_morning_question_comes_on_the_next_morning_until_noon():
    owed = Owed(mornings=(MorningAfter(subject="session 7", reported_on=date(2026, 6, 1)),))
    madrid = timing("Europe/Madrid", morning_question_at=time(7, 30))
    assert found(owed, madrid, "2026-06-01 20:00", "2026-06-02 05:29") == ()
    # DERIVED at +02:00 (tzdata): 07:30 is 05:30Z, noon is 10:00Z
    (due,) = found(owed, madrid, "2026-06-02 05:29", "2026-06-02 05:30")
    assert (due.kind, due.subject) == (DueKind.MORNING_QUESTION, "session 7")
    assert due.useful_until_utc == utc("2026-06-02 10:00")


def test_a_morning_question_after_noon_is_no_morning_question():
    with pytest.raises(ValueError, match="before noon"):
        timing("UTC", morning_question_at=time(12))


DIGEST = Owed(recurring=frozenset({DueKind.DIGEST}))


def test_a_digest_comes_once_a_week_and_is_useful_until_the_next():
    hours = timing("UTC", digest_weekday=0, digest_at=time(7))
    seen = list(
        rounds(
            DIGEST,
            hours,
            start=utc("2026-06-01 00:00"),
            end=utc("2026-06-22 00:00"),
            step=timedelta(hours=1),
        )
    )
    # DERIVED: Mondays of that span after the digest of 25 May, which was still owed at the start
    assert [due.local_date for _, due in seen] == [
        date(2026, 5, 25),
        date(2026, 6, 1),
        date(2026, 6, 8),
        date(2026, 6, 15),
    ]
    assert seen[1][1].useful_until_utc == utc("2026-06-08 07:00")
    assert len({due.subject for _, due in seen}) == 4  # DERIVED: one a week


@pytest.mark.parametrize("joined", ["2026-06-01 12:00", "2026-06-03 12:00"])
def test_a_new_coach_is_owed_no_digest_of_before(joined):
    hours = timing("UTC", joined_at_utc=utc(joined))
    assert found(DIGEST, hours, "2026-06-01 00:00", "2026-06-03 12:01") == ()
    (due,) = found(DIGEST, hours, "2026-06-08 06:59", "2026-06-08 07:00")
    assert due.subject == "5:2026-06-08"


def test_planning_comes_every_night_through_both_changes():
    owed = Owed(recurring=frozenset({DueKind.WEEK_DRAWING}))
    for start in ("2026-03-20 12:00", "2026-10-15 12:00"):
        seen = list(
            rounds(
                owed,
                timing("Europe/Berlin", planning_at=time(2, 30)),
                start=utc(start),
                end=utc(start) + timedelta(days=20),
                step=timedelta(minutes=30),
            )
        )
        subjects = [due.subject for _, due in seen]
        # DERIVED: twenty nights, and the one before the start, still useful then
        assert len(subjects) == len(set(subjects)) == 21


def test_after_an_outage_each_missed_night_is_found_once():
    owed = Owed(recurring=frozenset({DueKind.WEEK_DRAWING}))
    dues = found(owed, timing("UTC"), "2026-06-01 12:00", "2026-06-15 12:00")
    # DERIVED: 03:00 on 2 June up to 15 June
    assert [due.local_date.day for due in dues] == list(range(2, 16))


def test_three_days_of_silence_are_due_however_late():
    owed = Owed(silences=(Silence(subject="session 7", since=date(2026, 6, 1)),))
    assert found(owed, timing("UTC"), "2026-06-04 06:00", "2026-06-04 06:59") == ()
    # CHOSEN: three local days, at the session's hour
    (due,) = found(owed, timing("UTC"), "2026-06-30 00:00", "2026-06-30 00:01")
    assert (due.kind, due.subject) == (DueKind.SILENCE_CHECK, "session 7")
    assert (due.due_at_utc, due.useful_until_utc) == (utc("2026-06-04 07:00"), None)


def test_each_telling_of_an_alert_is_due_once():
    first = OpenAlert(alert_id=3, times_told=0, tell_at_utc=utc("2026-06-01 10:00"))
    (due,) = found(Owed(alerts=(first,)), timing("UTC"), "2026-06-01 10:00", "2026-06-01 10:00")
    assert (due.subject, due.useful_until_utc) == ("3:0", None)
    again = OpenAlert(alert_id=3, times_told=1, tell_at_utc=utc("2026-06-01 10:10"))
    handled = {due.key}
    for until, subjects in (("2026-06-01 10:09", []), ("2026-06-09 10:00", ["3:1"])):
        dues = found(Owed(alerts=(again,)), timing("UTC"), "2026-06-01 10:00", until, handled)
        assert [due.subject for due in dues] == subjects


def test_the_most_urgent_comes_first():
    owed = Owed(
        sessions=(PlannedSession(session_id=1, local_date=date(2026, 6, 1)),),
        mornings=(MorningAfter(subject="session 9", reported_on=date(2026, 5, 31)),),
        silences=(Silence(subject="session 8", since=date(2026, 5, 28)),),
        alerts=(OpenAlert(alert_id=3, times_told=0, tell_at_utc=utc("2026-06-01 07:59")),),
        recurring=frozenset({DueKind.WEEK_DRAWING, DueKind.DIGEST}),
    )
    dues = found(owed, timing("UTC"), "2026-06-01 00:00", "2026-06-01 08:00")
    assert [due.kind for due in dues] == [
        DueKind.ALERT,
        DueKind.SILENCE_CHECK,
        DueKind.MORNING_QUESTION,
        DueKind.SESSION,
        DueKind.DIGEST,
        DueKind.WEEK_DRAWING,
    ]
    assert {due.person_id for due in dues} == {5}
