"""A change is called real only beyond the estimate's own uncertainty."""

import math
from datetime import timedelta

import pytest

from scheduler.training.capacity import Observation, estimate
from scheduler.training.real_change import likely_range, real_change
from scheduler.training.training_reasons import CapacityReason
from scheduler.training.typical_error import detectable_change
from tests.training.athletes import MONDAY, RULEBOOK, codes

SEM = RULEBOOK.capacity.noise_at_failure.value


def _seen(*values, day=0):
    looks = [
        Observation(on=MONDAY + timedelta(days=day + 2 * n), value=value)
        for n, value in enumerate(values)
    ]
    found = estimate(looks, rulebook=RULEBOOK)
    assert found is not None
    return found


@pytest.mark.parametrize(("factor", "is_real"), [(0.99, False), (1.01, True)])
@pytest.mark.parametrize("sign", [1, -1])
def test_two_single_looks_need_the_published_detectable_change(factor, is_real, sign):
    # PUBLISHED hopkins2000: 1.96 sqrt(2) typical error, here on the log scale; CHOSEN: 0.08.
    change = sign * factor * detectable_change(error=SEM)
    found = real_change(_seen(60), _seen(60 * math.exp(change), day=28))
    assert found.value is is_real


def test_a_sixty_second_hold_must_gain_fourteen_or_fifteen_seconds_in_single_looks():
    # DERIVED from hopkins2000 and isoholds2021 (variation 8 %): exp(1.96 sqrt(2) 0.08) = 1.248.
    assert not real_change(_seen(60), _seen(74, day=28)).value
    assert real_change(_seen(60), _seen(76, day=28)).value


def test_more_looks_make_a_smaller_change_real():
    few = real_change(_seen(60), _seen(72, day=28))
    many = real_change(_seen(60, 60, 60, 60, 60), _seen(72, 72, 72, 72, 72, day=28))
    assert not few.value
    assert many.value
    assert codes(many) == [CapacityReason.REAL_CHANGE]
    assert (many.reasons[0].figures["was"], many.reasons[0].figures["now"]) == (60.0, 72.0)


def test_a_likely_range_holds_the_estimate_and_narrows_with_looks():
    one, five = _seen(60), _seen(60, 60, 60, 60, 60)
    least, most = likely_range(one)
    # DERIVED: 60 exp(-+1.96 x 0.08) = 51.3 and 70.2.
    assert least == pytest.approx(51.3, abs=0.05)
    assert most == pytest.approx(70.2, abs=0.05)
    narrow = likely_range(five)
    assert least < narrow[0] < 60 < narrow[1] < most
