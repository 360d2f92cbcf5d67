"""When a dose has stood still for two months: COMMON figures are CHOSEN (60 days, 6 times)."""

from datetime import date, timedelta

from scheduler.catalogue.values import Measure
from scheduler.training.stood_still import stood_still
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
