"""How far a test wanders by itself, and what is more than that."""

import pytest

from scheduler.training.typical_error import (
    detectable_change,
    detectable_change_pct,
    typical_error,
)

FIRST = [62, 78, 81, 55, 66]
SECOND = [67, 76, 87, 55, 63]


def test_typical_error_of_two_trials():
    # DERIVED with hopkins2000: differences 5 -2 6 0 -3, SD 4.0866, / sqrt 2
    assert typical_error(FIRST, SECOND) == pytest.approx(2.8896, abs=0.00005)


def test_detectable_change_of_two_trials():
    # DERIVED with hopkins2000: 1.96 * sqrt 2 * 2.8896 = 8.0096
    found = detectable_change(error=typical_error(FIRST, SECOND))
    assert found == pytest.approx(8.010, abs=0.0005)


def test_a_sixty_second_hold_must_change_by_thirteen_seconds():
    # DERIVED from isoholds2021 (CV 3.6-11.8 %): CV 8 % -> 22.2 %, of 60 s 13.3 s
    change_pct = detectable_change_pct(variation_pct=8)
    assert change_pct == pytest.approx(22.2, abs=0.05)
    assert 0.6 * change_pct == pytest.approx(13.3, abs=0.05)


def test_published_detectable_change_of_side_ratios():
    # PUBLISHED one-arm shot put symmetry, BMC Sports Sci Med Rehabil 2021: SEM .045 -> MDC95 .124;
    # exact arithmetic gives .1247, cut to .124 in the paper
    assert detectable_change(error=0.045) == pytest.approx(0.124, abs=0.001)


@pytest.mark.parametrize(("first", "second"), [([1, 2], [1]), ([1], [1])])
def test_trials_that_cannot_be_compared_are_refused(first, second):
    with pytest.raises(ValueError, match="expected"):
        typical_error(first, second)
