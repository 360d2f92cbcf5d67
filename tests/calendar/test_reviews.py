"""A look back comes round after 30 days and every twelve weeks, and waits for a heavier week.

All numbers are CHOSEN; the dates are DERIVED by counting days.
"""

from datetime import date, timedelta

import pytest

from scheduler.calendar.due import due_for
from scheduler.calendar.reviews import review_owed, review_span
from scheduler.calendar.values import DueKind, Owed, Review
from tests.calendar.people import timing, utc

STARTED = date(2026, 1, 5)


def owed(today: date, *, is_lighter_week: bool = False) -> Review | None:
    return review_owed(started_on=STARTED, today=today, is_lighter_week=is_lighter_week)


@pytest.mark.parametrize(
    ("today", "number", "on"),
    [
        (date(2026, 2, 4), 1, date(2026, 2, 4)),  # DERIVED: 5 January and 30 days
        (date(2026, 2, 13), 1, date(2026, 2, 4)),
        (date(2026, 4, 29), 2, date(2026, 4, 29)),  # DERIVED: 4 February and 84 days
        (date(2026, 7, 22), 3, date(2026, 7, 22)),  # DERIVED: 29 April and 84 days
    ],
)
def test_the_review_of_a_day_has_its_number(today: date, number: int, on: date):
    assert owed(today) == Review(number=number, on=on)


@pytest.mark.parametrize(
    "today", [STARTED, date(2026, 2, 3), date(2026, 2, 14), date(2026, 4, 28), date(2026, 5, 9)]
)
def test_on_other_days_none_is_owed(today: date):
    assert owed(today) is None


def test_in_a_lighter_week_it_waits_and_comes_after_it():
    assert owed(date(2026, 2, 4), is_lighter_week=True) is None
    assert owed(date(2026, 2, 9)) == Review(number=1, on=date(2026, 2, 4))


def test_each_review_looks_back_to_the_one_before():
    first, second = Review(number=1, on=date(2026, 2, 4)), Review(number=2, on=date(2026, 4, 29))
    assert review_span(first, started_on=STARTED) == (STARTED, date(2026, 2, 3))
    assert review_span(second, started_on=STARTED) == (date(2026, 2, 4), date(2026, 4, 28))


def test_over_two_years_every_number_is_owed_on_some_day_and_in_order():
    days = (STARTED + timedelta(days=n) for n in range(730))
    numbers = [found.number for day in days if (found := owed(day)) is not None]
    assert numbers == sorted(numbers)
    # DERIVED: (730 - 1 - 30) // 84 = 8 whole spans behind the first review.
    assert sorted(set(numbers)) == list(range(1, 10))


def test_it_falls_due_in_the_night_of_its_day_however_late():
    owed_now = Owed(reviews=(Review(number=1, on=date(2026, 2, 4)),))
    dues = due_for(
        person_id=5,
        timing=timing("Europe/Madrid"),
        owed=owed_now,
        since_utc=utc("2026-02-09 01:00"),
        until_utc=utc("2026-02-09 02:00"),
    )
    # DERIVED at +01:00 (tzdata): 03:00 is 02:00Z
    assert [(one.kind, one.subject, one.due_at_utc) for one in dues] == [
        (DueKind.REVIEW, "1", utc("2026-02-04 02:00"))
    ]
    assert dues[0].useful_until_utc is None
