"""The filter beneath the estimates: the Nile example, and a reference library."""

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import truncnorm
from statsmodels.datasets import nile
from statsmodels.tsa.statespace.structural import UnobservedComponents

from scheduler.training.local_level import (
    Level,
    drifted,
    first_level,
    probability_at_least,
    truncated_below,
    updated,
    updated_at_least,
)

# PUBLISHED durbinkoopman2012 sec. 2.2.5, Nile flow 1871-1970
NOISE = 15099.0
DRIFT = 1469.1


def filtered(values, *, noise=NOISE, drift=DRIFT):
    """Run the filter over one value a step, None where missing; levels and prediction errors."""
    level, levels, log_likelihood = None, [], 0.0
    for value in values:
        if level is None:
            if value is not None:
                level = first_level(observed=value, noise_variance=noise)
        else:
            level = drifted(level, days=1, drift_variance=drift)
            if value is not None:
                spread = level.variance + noise
                error = value - level.mean
                log_likelihood -= (math.log(2 * math.pi * spread) + error**2 / spread) / 2
                level = updated(level, observed=value, noise_variance=noise)
        levels.append(level)
    return levels, log_likelihood


@pytest.fixture(scope="module")
def flow():
    return [float(value) for value in nile.load_pandas().data["volume"]]


@pytest.mark.parametrize(
    ("year", "mean", "variance"),
    [
        # DERIVED with the published variances and an exact diffuse start (statsmodels 0.15)
        (1871, 1120.0, 15099.0),
        (1872, 1140.9278, 7899.7364),
        (1880, 1162.9026, 4051.2842),
        (1970, 798.3703, 4032.1579),
    ],
)
def test_the_filter_reproduces_the_nile_example(flow, year, mean, variance):
    level = filtered(flow)[0][year - 1871]
    assert (level.mean, level.variance) == pytest.approx((mean, variance), abs=0.00006)


def test_the_filter_reproduces_the_niles_log_likelihood(flow):
    # DERIVED (statsmodels 0.15, exact diffuse): -633.46456; the diffuse first observation adds
    # -log(2 pi) / 2 there
    log_likelihood = filtered(flow)[1] - math.log(2 * math.pi) / 2
    assert log_likelihood == pytest.approx(-633.46456, abs=0.00001)


def test_the_filter_passes_over_what_is_missing(flow):
    # DERIVED (statsmodels 0.15): observations 21-40 and 61-80 missing
    gaps = {*range(21, 41), *range(61, 81)}
    thinned = [None if number in gaps else value for number, value in enumerate(flow, 1)]
    levels = filtered(thinned)[0]
    in_1890, in_1910, in_1911 = levels[19], levels[39], levels[40]
    assert (in_1890.mean, in_1890.variance) == pytest.approx((1026.1416, 4032.1962), abs=0.00006)
    assert in_1910.variance == pytest.approx(33414.1962, abs=0.00006)
    assert in_1911.mean == pytest.approx(889.9497, abs=0.00006)


@pytest.mark.parametrize("seed", range(5))
def test_irregular_days_agree_with_a_reference_library(seed):
    # DERIVED by statsmodels: an interval of d days is d daily steps with nothing observed between
    chance = random.Random(seed)
    noise, drift = chance.uniform(0.5, 4), chance.uniform(0.05, 1)
    days = sorted(chance.sample(range(1, 60), 14))
    daily = [math.nan] * 60
    level = None
    previous = 0
    for day in (0, *days):
        seen = chance.gauss(10, 3)
        daily[day] = seen
        if level is None:
            level = first_level(observed=seen, noise_variance=noise)
        else:
            level = drifted(level, days=day - previous, drift_variance=drift)
            level = updated(level, observed=seen, noise_variance=noise)
        previous = day
    model = UnobservedComponents(daily, "local level", use_exact_diffuse=True)
    reference = model.filter([noise, drift])
    assert level is not None
    mean = reference.filtered_state[0][days[-1]]
    variance = reference.filtered_state_cov[0, 0][days[-1]]
    assert (level.mean, level.variance) == pytest.approx((mean, variance), rel=1e-6)


@pytest.mark.parametrize("bound", [-3.0, -0.5, 0.0, 1.0, 2.5])
def test_truncated_moments_agree_with_a_reference_library(bound):
    # DERIVED by scipy.stats.truncnorm
    mean, sd = 1.2, 0.7
    reference = truncnorm((bound - mean) / sd, math.inf, loc=mean, scale=sd)
    found = truncated_below(mean=mean, variance=sd**2, bound=bound)
    assert (found.mean, found.variance) == pytest.approx((reference.mean(), reference.var()))


def test_truncated_moments_stay_finite_far_out():
    # DERIVED: far in the tail the mean is just above the bound and almost nothing is left to vary
    found = truncated_below(mean=0, variance=1, bound=60)
    assert 60 < found.mean < 60.1
    assert 0 <= found.variance < 0.01


@given(mean=st.floats(-2, 5), spread=st.floats(0.01, 2), bound=st.floats(-5, 8))
def test_at_least_never_lowers_an_estimate_nor_makes_it_less_certain(mean, spread, bound):
    before = Level(mean=mean, variance=spread)
    after = updated_at_least(before, at_least=bound, noise_variance=0.1)
    assert after.mean >= before.mean - 1e-9
    assert after.variance <= before.variance + 1e-9


def test_at_least_something_easy_says_nothing():
    before = Level(mean=4.0, variance=0.04)
    after = updated_at_least(before, at_least=1.0, noise_variance=0.01)
    assert (after.mean, after.variance) == pytest.approx((4.0, 0.04))


def test_half_lies_above_the_mean():
    assert probability_at_least(mean=3, variance=2, bound=3) == pytest.approx(0.5)
    # PUBLISHED normal table: 97.5 % lie above 1.96 standard deviations below the mean
    assert probability_at_least(mean=0, variance=1, bound=-1.96) == pytest.approx(0.975, abs=1e-4)
    assert probability_at_least(mean=3, variance=0, bound=3) == 1
