"""The published rule for raising a load, as published."""

import pytest

from scheduler.training.two_for_two import is_load_raised


@pytest.mark.parametrize(
    ("last_sets", "is_raised"),
    [
        # PUBLISHED essentials2016 ch. 17 (secondary): goal 10, 12 and 12 -> raise; 12, 11 -> keep
        ([12, 12], True),
        ([12, 11], False),
        # DERIVED: two sessions in a row, the latest two count
        ([12], False),
        ([], False),
        ([11, 13, 12], True),
        ([12, 12, 11], False),
    ],
)
def test_two_over_the_goal_at_two_sessions_running(last_sets, is_raised):
    assert is_load_raised(last_sets, goal_reps=10) is is_raised
