"""When a dose has stood still for two months: COMMON figures are CHOSEN (60 days, 6 times)."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from scheduler.catalogue.values import Measure
from scheduler.training.stood_still import is_told_between, stood_still
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Dose, Exposure, Quality, SetDone

TODAY = date(2026, 6, 1)


def _done(days_ago: int, *, target: int = 30, sets: int = 3, is_try: bool = False) -> Exposure:
    dose = Dose(
        movement_key="bar_hang",
        quality=Quality.MUSCULAR_ENDURANCE,
        measure=Measure.HOLD_S,
        sets=sets,
        target=target,
        floor=1,
        rest_s=60,
        reserve_asked=15,
        is_try=is_try,
    )
    day = TODAY - timedelta(days=days_ago)
    return Exposure(on=day, dose=dose, sets=(SetDone(value=target),))


def _weekly(first: int, *, last: int = 4, target: int = 30) -> list[Exposure]:
    return [_done(days, target=target) for days in range(first, last - 1, -7)]


def test_two_months_at_one_target_stand_still_and_say_how_long():
    decision = stood_still(_weekly(60), on=TODAY)
    assert decision.value == TODAY - timedelta(days=60)
    (why,) = decision.reasons
    assert why.code == DoseReason.STOOD_STILL
    # DERIVED: 60 days are 8 whole weeks; days 60, 53, 46, 39, 32, 25, 18, 11, 4 are 9 times
    assert (why.figures["weeks"], why.figures["times"]) == (8, 9)


def test_a_day_less_than_two_months_does_not_yet():
    assert stood_still(_weekly(59), on=TODAY).value is None


def test_any_step_begins_the_count_anew():
    moved = [*_weekly(70, last=32, target=25), *_weekly(25)]
    assert stood_still(moved, on=TODAY).value is None


def test_fewer_sets_of_a_lighter_week_are_no_step():
    done = [*_weekly(60), _done(3, sets=1)]
    assert stood_still(done, on=TODAY).value == TODAY - timedelta(days=60)


def test_a_try_is_no_dose():
    done = [*_weekly(60), _done(2, target=45, is_try=True)]
    assert stood_still(done, on=TODAY).value == TODAY - timedelta(days=60)


def test_what_is_trained_too_seldom_or_no_longer_does_not_stand_still():
    assert stood_still([_done(80), _done(40), _done(5)], on=TODAY).value is None
    assert stood_still([_done(days) for days in range(120, 22, -7)], on=TODAY).value is None
    assert stood_still([], on=TODAY).value is None


def test_it_is_told_when_two_months_are_over_and_every_four_weeks_from_there():
    mondays = [TODAY + timedelta(weeks=one) for one in range(20)]
    told = [
        (monday - TODAY).days
        for monday in mondays
        if is_told_between(since=TODAY, first=monday, last=monday + timedelta(days=6))
    ]
    # DERIVED: days 60, 88 and 116 lie in the weeks that begin on days 56, 84 and 112
    assert told == [56, 84, 112]


@given(since_days=st.integers(0, 400), gaps=st.lists(st.integers(4, 10), min_size=30, max_size=30))
def test_every_telling_falls_into_one_digest_however_far_apart_they_are(since_days, gaps):
    since, first, told = TODAY - timedelta(days=since_days), TODAY, 0
    for gap in gaps:
        last = first + timedelta(days=gap - 1)
        told += is_told_between(since=since, first=first, last=last)
        first = last + timedelta(days=1)
    due = [since + timedelta(days=60 + 28 * n) for n in range(40)]
    assert told == sum(TODAY <= day < first for day in due)
