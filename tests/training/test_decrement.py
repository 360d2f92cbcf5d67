"""Percentage decrement of repeated efforts."""

import pytest

from scheduler.training.decrement import decrement_pct


@pytest.mark.parametrize(
    ("efforts", "percent"),
    [
        # DERIVED with the formula of glaister2008: 100 * (1 - 139/160), 100 * (1 - 47/60)
        ([40, 36, 33, 30], 13.125),
        ([12, 10, 9, 8, 8], 21.667),
        ([7, 7], 0),
    ],
)
def test_decrement_where_higher_is_better(efforts, percent):
    assert decrement_pct(efforts) == pytest.approx(percent, abs=0.0005)


def test_decrement_of_times_where_lower_is_better():
    # DERIVED with the formula of glaister2008: 100 * 31.25 / (6 * 5.0) - 100
    times_s = [5.0, 5.1, 5.2, 5.3, 5.25, 5.4]
    assert decrement_pct(times_s, is_lower_better=True) == pytest.approx(4.167, abs=0.0005)


@pytest.mark.parametrize("efforts", [[], [30], [30, 0]])
def test_efforts_that_have_no_decrement_are_refused(efforts):
    with pytest.raises(ValueError, match="expected"):
        decrement_pct(efforts)
