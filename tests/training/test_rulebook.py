"""The rulebook: the design's ranges as data, and a wrong file refused with its line."""

from importlib.resources import files

import pytest

from scheduler.located_yaml import WrongFileError
from scheduler.training.labelled import Labelled, LabelledRange
from scheduler.training.rulebook import default_rulebook, read_rulebook
from scheduler.training.values import Quality

TEXT = (files("scheduler.training") / "rulebook.yaml").read_text("utf-8")

# COMMON PRACTICE and CHOSEN: sets, seconds, repetitions, rest, repetitions and seconds in reserve
ROWS = {
    Quality.MUSCULAR_ENDURANCE: ((2, 4), (20, 60), (15, 25), (30, 90), 3, 15),
    Quality.STRENGTH_ENDURANCE: ((3, 4), (15, 40), (8, 15), (60, 120), 2, 10),
    Quality.GENERAL_STRENGTH: ((3, 5), (10, 20), (5, 8), (120, 180), 2, 5),
    Quality.DYNAMIC_FRESH: ((3, 5), None, (3, 5), (120, 180), 3, 15),
    Quality.REPEATED_EFFORT: ((3, 8), (15, 30), (5, 10), None, 0, 0),
    # PUBLISHED acsm2009: rest 3-5 min for 1-6RM
    Quality.MAXIMAL_STRENGTH: ((3, 6), (5, 10), (1, 5), (180, 300), 1, 5),
}


def bounds(found: LabelledRange | None):
    return None if found is None else (found.least, found.most)


@pytest.mark.parametrize("quality", Quality)
def test_each_quality_has_its_row_of_doses(quality):
    row = default_rulebook().quality(quality)
    found = (
        bounds(row.sets),
        bounds(row.hold_s),
        bounds(row.reps),
        bounds(row.rest_s),
        row.reserve_reps.least,
        row.reserve_hold_s.value,
    )
    assert found == ROWS[quality]


def test_least_weeks_of_a_stage():
    # CHOSEN
    weeks = [default_rulebook().stage(stage).least_weeks for stage in range(1, 6)]
    assert [one and one.whole for one in weeks] == [6, 8, 4, 4, None]


def test_rows_that_depart_from_a_published_value_show_both():
    row = default_rulebook().quality(Quality.MUSCULAR_ENDURANCE)
    assert row.reps.published is not None
    assert (row.reps.source, row.reps.published.source) == ("ch", "acsm2009")


def refused(old, new):
    assert old in TEXT
    with pytest.raises(WrongFileError) as fault:
        read_rulebook(TEXT.replace(old, new, 1))
    return fault.value.problems


def line_of(old):
    return TEXT[: TEXT.index(old)].count("\n") + 1


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        ("growth_sets: {value: 2, unit", "growth_sets: {value: two, unit", "valid number"),
        ("growth_sets: {value: 2, ", "growth_sets: {", "missing, expected a value"),
        (
            "growth_sets: {value: 2, unit: sets a direction a week, source: cp}",
            "growth_sets: {value: 2, unit: sets a direction a week, source: hearsay}",
            "expected a key of the bibliography",
        ),
        ("growth_sets: {", "growth_of_sets: {", "unknown field, expected one of"),
    ],
)
def test_a_wrong_rulebook_is_refused_with_line_field_and_expected_value(old, new, expected):
    problems = refused(old, new)
    assert any(expected in problem for problem in problems)
    assert any(f"line {line_of(old)}" in problem for problem in problems)
    assert all("volume" in problem for problem in problems)


def test_bounds_the_wrong_way_round_are_refused():
    problems = refused("hold_s: {least: 20, most: 60,", "hold_s: {least: 70, most: 60,")
    assert "expected least (70.0) not above most (60.0)" in problems[0]


def test_a_missing_quality_is_refused():
    start = TEXT.index("  dynamic_fresh:\n")
    end = TEXT.index("  repeated_effort:\n", start)
    with pytest.raises(WrongFileError, match="dynamic_fresh"):
        read_rulebook(TEXT[:start] + TEXT[end:])


def test_a_whole_number_is_asked_for_where_only_one_makes_sense():
    assert Labelled(value=3, unit="sets", source="ch").whole == 3
    with pytest.raises(ValueError, match="whole number of sets"):
        _ = Labelled(value=2.5, unit="sets", source="ch").whole


def test_a_range_holds_its_bounds_and_moves_what_is_outside():
    row = LabelledRange(least=20, most=60, unit="s", source="ch")
    assert [number in row for number in (19, 20, 60, 61)] == [False, True, True, False]
    assert [row.nearest(number) for number in (10, 33, 90)] == [20, 33, 60]
