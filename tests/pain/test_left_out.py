"""What each site takes out: COMMON PRACTICE, the whole table."""

import pytest

from scheduler.catalogue.values import Demand, Direction, Measure
from scheduler.located_yaml import WrongFileError
from scheduler.pain.left_out import left_out_for, read_left_out_table
from scheduler.pain.values import Side, Site

PULLS = {Direction.VERTICAL_PULL, Direction.HORIZONTAL_PULL, Direction.UPWARD_PULL}
TABLE = [  # COMMON PRACTICE
    (Site.SHOULDER_FRONT, {"overhead", "shoulder_extension", "end_range_rotation"}, set(), False),
    (Site.SHOULDER_TOP, {"cross_body", "overhead"}, {Direction.DOWNWARD_PUSH}, False),
    (Site.SHOULDER_BACK, {"traction", "overhead"}, set(), False),
    (Site.ELBOW_OUTER, {"grip", "wrist_extension"}, set(), False),
    (Site.ELBOW_INNER, {"grip", "elbow_flexion", "traction"}, set(), False),
    (Site.ELBOW_BACK, {"elbow_extension", "impact"}, set(), False),
    (Site.FOREARM, {"grip"}, set(), False),
    (Site.HAND, {"grip"}, set(), False),
    (Site.WRIST, {"wrist_extension", "impact", "grip"}, set(), False),
    (Site.NECK, {"overhead", "neck_load", "inversion"}, set(), True),
    (
        Site.CHEST_MUSCLE,
        {"cross_body"},
        {Direction.HORIZONTAL_PUSH, Direction.DOWNWARD_PUSH},
        False,
    ),
    (Site.UPPER_BACK, set(), PULLS, True),
    (Site.UPPER_ARM, {"elbow_flexion", "elbow_extension", "overhead"}, set(), False),
]


@pytest.mark.parametrize(("site", "demands", "directions", "carries"), TABLE)
def test_a_site_takes_out_what_the_table_says(site, demands, directions, carries):
    out = left_out_for(site, Side.LEFT)
    assert {demand for demand, _ in out.demands} == {Demand(name) for name in demands}
    assert {direction for direction, _ in out.directions} == directions
    measures = {Measure.CARRY_M, Measure.CARRY_S} if carries else set()
    assert {measure for measure, _ in out.measures} == measures


def test_only_the_arm_that_hurts_is_left_out_but_the_middle_of_the_body_is_both():
    assert {arm for _, arm in left_out_for(Site.WRIST, Side.RIGHT).demands} == {Side.RIGHT}
    assert {arm for _, arm in left_out_for(Site.NECK, Side.RIGHT).demands} == {
        Side.LEFT,
        Side.RIGHT,
    }


def test_an_unnamed_place_lets_the_session_wait():
    assert left_out_for(Site.ELSEWHERE, Side.BOTH).everything


def test_a_table_that_forgets_a_site_or_misspells_a_demand_is_refused_with_its_line():
    with pytest.raises(WrongFileError, match="wrist"):
        read_left_out_table("version: 1\nsites:\n  hand:\n    demands: [grip]\n", file_name="t")
    with pytest.raises(WrongFileError, match="line 4"):
        read_left_out_table("version: 1\nsites:\n  hand:\n    demands: [grp]\n", file_name="t")
