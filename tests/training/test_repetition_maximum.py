"""One-repetition maximum: the published equations, table and special cases."""

import pytest

from scheduler.training.repetition_maximum import (
    PERCENT_BY_REPS,
    Equation,
    is_trusted,
    maximum_from_table,
    one_repetition_maximum,
    reps_to_failure,
)

# DERIVED: each value is the published equation (epley1985, brzycki1993, lombardi1989, mayhew1992;
# formulas secondary) with the numbers put in, to three decimals.
BY_EQUATION = [
    # load_kg, reps, Epley, Brzycki, Lombardi, Mayhew
    (100, 3, 110.000, 105.882, 111.612, 113.990),
    (100, 5, 116.667, 112.500, 117.462, 119.011),
    (100, 8, 126.667, 124.138, 123.114, 126.286),
    (100, 10, 133.333, 133.333, 125.893, 130.934),
    (60, 8, 76.000, 74.483, 73.869, 75.772),
    (40, 12, 56.000, 57.600, 51.284, 54.159),
]


@pytest.mark.parametrize("row", BY_EQUATION, ids=lambda row: f"{row[0]}kg x {row[1]}")
def test_the_four_equations_give_their_published_values(row):
    load_kg, reps, *expected = row
    found = [one_repetition_maximum(load_kg=load_kg, reps=reps, equation=e) for e in Equation]
    assert found == pytest.approx(expected, abs=0.0006)


def test_epley_and_brzycki_agree_at_ten_repetitions():
    # DERIVED: 1 + 10/30 = 36/27 = 4/3
    by_epley = one_repetition_maximum(load_kg=72, reps=10, equation=Equation.EPLEY)
    by_brzycki = one_repetition_maximum(load_kg=72, reps=10, equation=Equation.BRZYCKI)
    assert by_epley == pytest.approx(by_brzycki) == pytest.approx(96)


@pytest.mark.parametrize("equation", Equation)
def test_one_repetition_is_the_load_itself(equation):
    # CHOSEN special case: Epley's and Mayhew's equations would say more than was lifted
    assert one_repetition_maximum(load_kg=83, reps=1, equation=equation) == 83


def test_brzycki_is_refused_where_it_diverges():
    # DERIVED: 36/(37 - r) has no value at 37
    assert one_repetition_maximum(load_kg=10, reps=36, equation=Equation.BRZYCKI) == 360
    with pytest.raises(ValueError, match="fewer than 37"):
        one_repetition_maximum(load_kg=10, reps=37, equation=Equation.BRZYCKI)


def test_fewer_than_one_repetition_is_refused():
    with pytest.raises(ValueError, match="at least one"):
        one_repetition_maximum(load_kg=10, reps=0, equation=Equation.EPLEY)


# PUBLISHED essentials2016 ch. 17 (secondary; 11, 12 and 15 from memory)
TABLE = dict(
    zip(
        [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15],
        [100, 95, 93, 90, 87, 85, 83, 80, 77, 75, 70, 67, 65],
        strict=True,
    )
)


def test_the_table_of_percentages_is_the_handbooks():
    assert TABLE == PERCENT_BY_REPS


@pytest.mark.parametrize(("load_kg", "maximum_kg"), [(60, 75), (120, 150)])
def test_the_tables_worked_examples(load_kg, maximum_kg):
    # PUBLISHED essentials2016 ch. 17 (secondary): 60 kg x 8 -> 75 kg, 120 kg x 8 -> 150 kg
    assert maximum_from_table(load_kg=load_kg, reps=8) == maximum_kg


def test_repetitions_outside_the_table_are_refused():
    with pytest.raises(ValueError, match="repetitions of the table"):
        maximum_from_table(load_kg=60, reps=13)


def test_estimates_are_trusted_up_to_twelve_repetitions():
    # PUBLISHED essentials2016 ch. 17 (secondary): not above about 12
    assert is_trusted(reps=12)
    assert not is_trusted(reps=12.5)


@pytest.mark.parametrize("reps", [2, 5, 8, 12])
def test_epley_turned_round_gives_the_repetitions_back(reps):
    maximum_kg = one_repetition_maximum(load_kg=40, reps=reps, equation=Equation.EPLEY)
    assert reps_to_failure(load_kg=40, maximum_kg=maximum_kg) == pytest.approx(reps)


def test_no_repetition_is_promised_above_the_maximum():
    assert reps_to_failure(load_kg=41, maximum_kg=40) == 0
    assert reps_to_failure(load_kg=40, maximum_kg=40) == 1
