"""How long a hold lasts: the published curves, turned round, and between two loads."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scheduler.catalogue.values import Joint
from scheduler.training.endurance_time import (
    endurance_time_s,
    fitted_range_s,
    fraction_of_maximum,
    is_fitted,
    load_for_time_kg,
    time_at_other_load_s,
)

# DERIVED from the published coefficients (freylaw2010, secondary, two transcriptions), to 0.1 s
BY_JOINT = {
    Joint.SHOULDER: (282.6, 79.5, 52.8, 37.8, 22.4),
    Joint.ELBOW: (630.3, 136.2, 83.2, 55.6, 29.4),
    Joint.GRIP: (447.7, 146.7, 102.4, 76.4, 48.1),
    Joint.TRUNK: (876.0, 181.6, 109.4, 72.3, 37.7),
    Joint.GENERAL: (530.6, 134.5, 86.5, 60.3, 34.1),
}
FRACTIONS = (0.2, 0.4, 0.5, 0.6, 0.8)


@pytest.mark.parametrize("joint", Joint)
def test_endurance_times_match_the_published_curves(joint):
    found = [endurance_time_s(fraction=fraction, joint=joint) for fraction in FRACTIONS]
    assert found == pytest.approx(BY_JOINT[joint], abs=0.06)


@pytest.mark.parametrize(("time_s", "percent"), [(30, 68.1), (60, 46.6), (120, 31.9)])
def test_the_shoulder_curve_turned_round(time_s, percent):
    # DERIVED from freylaw2010: (t / 14.86) ** (1 / -1.83)
    found = fraction_of_maximum(endurance_s=time_s, joint=Joint.SHOULDER)
    assert 100 * found == pytest.approx(percent, abs=0.06)


@pytest.mark.parametrize(
    ("joint", "range_s"),
    [
        (Joint.SHOULDER, (15, 188)),
        (Joint.ELBOW, (18, 385)),
        (Joint.GRIP, (34, 313)),
        (Joint.TRUNK, (23, 528)),
        (Joint.GENERAL, (22, 341)),
    ],
)
def test_the_fitted_range_reaches_from_the_whole_to_a_quarter_of_the_maximum(joint, range_s):
    # DERIVED: b0 and b0 * 0.25 ** b1 (freylaw2010; few data below 25 %, secondary)
    assert fitted_range_s(joint) == pytest.approx(range_s, abs=0.6)


def test_the_same_person_holds_a_lighter_load_longer_by_the_joints_exponent():
    # DERIVED: 30 s at 10 kg, shoulder: 30 * (8/10) ** -1.83 = 45.13 s
    found = time_at_other_load_s(endurance_s=30, load_kg=10, other_load_kg=8, joint=Joint.SHOULDER)
    assert found == pytest.approx(45.13, abs=0.005)


@given(
    time_s=st.floats(15, 180),
    load_kg=st.floats(1, 60),
    other_kg=st.floats(1, 60),
    joint=st.sampled_from(Joint),
)
def test_load_and_time_are_each_others_inverse(time_s, load_kg, other_kg, joint):
    other_s = time_at_other_load_s(
        endurance_s=time_s, load_kg=load_kg, other_load_kg=other_kg, joint=joint
    )
    back_kg = load_for_time_kg(
        endurance_s=time_s, load_kg=load_kg, other_endurance_s=other_s, joint=joint
    )
    assert back_kg == pytest.approx(other_kg)


def test_times_outside_the_fitted_range_are_told():
    assert is_fitted(endurance_s=15, joint=Joint.SHOULDER)
    assert not is_fitted(endurance_s=14, joint=Joint.SHOULDER)
    assert not is_fitted(endurance_s=189, joint=Joint.SHOULDER)


@pytest.mark.parametrize("fraction", [0, -0.1, 1.01])
def test_a_fraction_outside_its_meaning_is_refused(fraction):
    with pytest.raises(ValueError, match="above 0 and up to 1"):
        endurance_time_s(fraction=fraction, joint=Joint.ELBOW)
