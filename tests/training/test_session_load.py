"""Session load, monotony and strain, and the weeks for which they are not defined."""

import pytest

from scheduler.training.session_load import Undefined, session_load, week_load


def test_session_load_is_effort_times_minutes():
    # DERIVED with foster2001: 6 x 40
    assert session_load(effort=6, duration_min=40) == 240


@pytest.mark.parametrize(("effort", "duration_min"), [(-1, 30), (11, 30), (5, -1)])
def test_impossible_efforts_and_durations_are_refused(effort, duration_min):
    with pytest.raises(ValueError, match="expected"):
        session_load(effort=effort, duration_min=duration_min)


@pytest.mark.parametrize(
    ("days", "load", "monotony", "strain"),
    [
        # DERIVED with foster1998, standard deviation with n - 1 (the paper does not say which)
        ([300, 0, 360, 0, 420, 240, 0], 1320, 1.021, 1347.66),
        ([200, 200, 220, 200, 200, 180, 0], 1200, 2.242, 2690.14),
    ],
)
def test_monotony_and_strain_of_a_week(days, load, monotony, strain):
    week = week_load(days)
    assert week.load == load
    assert week.monotony == pytest.approx(monotony, abs=0.0005)
    assert week.strain == pytest.approx(strain, abs=0.006)


def test_seven_equal_days_have_no_monotony_and_say_so():
    week = week_load([150] * 7)
    assert (week.load, week.monotony, week.strain) == (
        1050,
        Undefined.ALL_DAYS_EQUAL,
        Undefined.ALL_DAYS_EQUAL,
    )


def test_a_week_without_load_has_no_monotony_and_says_so():
    week = week_load([0] * 7)
    assert (week.load, week.monotony) == (0, Undefined.NO_LOAD)


def test_a_week_has_seven_days():
    with pytest.raises(ValueError, match="expected 7 days"):
        week_load([100] * 6)
