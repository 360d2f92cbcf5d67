"""The course of the tests: which day is due, what waits, what comes of each arm."""

from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Demand, Equipment
from scheduler.pain.values import LeftOut, Side
from scheduler.training.baseline import baseline_plan
from scheduler.training.baseline_course import (
    arms_open,
    arms_tested,
    is_over,
    results_of,
    what_is_due,
)
from scheduler.training.baseline_values import (
    Attempt,
    BaselineRequest,
    Ended,
    IntakeOutcome,
    IntakeState,
)
from tests.training.athletes import MONDAY, RULEBOOK, athlete, codes

LIBRARY = default_library()
GYM = frozenset({Equipment.DUMBBELLS, Equipment.HIGH_BAR, Equipment.PARALLEL_BARS, Equipment.BOX})
NOTHING = LeftOut()


def request(state=IntakeState.BEGINS, **facts):
    return BaselineRequest(
        profile=athlete(loads_kg=(8.0, 12.0, 20.0, 32.0), equipment=GYM),
        intake=IntakeOutcome(state=state),
        session_min=60,
        **facts,
    )


PLAN = baseline_plan(request(), library=LIBRARY, rulebook=RULEBOOK).value


def the_test(key):
    return next(test for test in PLAN.tests if test.key == key)


def done(key, *, on=MONDAY, value=None, ended=Ended.DONE, arms=None, pain=None):
    test = the_test(key)
    return [
        Attempt(
            key=key,
            side=arm,
            on=on,
            ended=ended,
            value=None if ended is Ended.SKIPPED else (test.target if value is None else value),
            pain=pain,
        )
        for arm in (arms or arms_tested(test))
    ]


FIRST_DAY = [
    one for key in ("1.push_up_hold", "1.one_arm_overhead_hold", "1.hang") for one in done(key)
]


def due(attempts=(), *, on=MONDAY, rested=NOTHING, equipment=GYM):
    return what_is_due(PLAN, attempts, on=on, rested=rested, equipment=equipment, library=LIBRARY)


def keys(decision):
    return [test.key for test in decision.value.tests] if decision.value else []


def test_nothing_is_tested_while_an_answer_of_the_screen_waits():
    # CHOSEN
    asked = request(IntakeState.WAITS_FOR_COACH)
    plan = baseline_plan(asked, library=LIBRARY, rulebook=RULEBOOK)
    assert (plan.value.days, codes(plan)) == ((), ["baseline.nothing_while_waiting"])


def test_later_rounds_test_the_standards_of_the_stages_that_are_asked_for():
    plan = baseline_plan(request(stages=(2,)), library=LIBRARY, rulebook=RULEBOOK).value
    assert {test.stage for test in plan.tests} == {2}


def test_the_first_day_comes_first_and_what_was_tried_is_not_asked_again():
    assert keys(due()) == ["1.push_up_hold", "1.one_arm_overhead_hold", "1.hang"]
    assert keys(due(done("1.push_up_hold"))) == ["1.one_arm_overhead_hold", "1.hang"]
    one_arm = done("1.one_arm_overhead_hold", arms=(Side.LEFT,))
    assert arms_open(the_test("1.one_arm_overhead_hold"), one_arm) == (Side.RIGHT,)


@pytest.mark.parametrize(("days", "found"), [(0, []), (1, []), (2, ["1.carry"])])
def test_the_second_day_keeps_a_free_day_from_the_first(days, found):
    # COMMON PRACTICE: one free day between
    assert keys(due(FIRST_DAY, on=MONDAY + timedelta(days=days))) == found


def test_harder_tests_follow_on_the_second_day_only_once_all_before_were_shown():
    on = MONDAY + timedelta(days=2)
    carried = [*FIRST_DAY, *done("1.carry", on=on)]
    assert keys(due(carried, on=on)) == [
        "2.pike_hold",
        "2.support",
        "2.one_arm_overhead_hold",
        "2.carry",
    ]
    short = [*FIRST_DAY, *done("1.carry", on=on, value=1)]
    assert keys(due(short, on=on)) == []
    assert is_over(PLAN, short)


def test_a_hurt_arm_ends_its_test_and_shows_nothing():
    hurt = done("1.one_arm_overhead_hold", arms=(Side.LEFT,), ended=Ended.HURT)
    assert arms_open(the_test("1.one_arm_overhead_hold"), hurt) == ()
    # CHOSEN: "that hurt" without a number counts as the worst
    assert [one.pain for one in results_of(PLAN, hurt)] == [10]
    assert [one.pain for one in results_of(PLAN, done("1.hang", ended=Ended.HURT, pain=2))] == [2]


def test_the_weaker_arm_counts_and_one_arm_alone_does_not():
    key = "1.one_arm_overhead_hold"
    left, right = (
        done(key, arms=(arm,), value=v)[0] for arm, v in ((Side.LEFT, 30), (Side.RIGHT, 25))
    )
    assert results_of(PLAN, [left]) == ()
    assert [one.value for one in results_of(PLAN, [left, right])] == [25]


def test_what_hurts_or_is_not_at_hand_is_passed_over_and_no_try_to_fail():
    wrist = LeftOut(demands=frozenset({(Demand.WRIST_EXTENSION, Side.LEFT)}))
    found = due(rested=wrist)
    assert "1.push_up_hold" not in keys(found)
    assert "baseline.rested_not_tested" in codes(found)
    travel = due(equipment=GYM - {Equipment.HIGH_BAR})
    assert "1.hang" not in keys(travel)
    assert "baseline.not_owned" in codes(travel)
    assert not is_over(PLAN, [])


attempts = st.lists(
    st.tuples(
        st.sampled_from([test.key for test in PLAN.tests]),
        st.sampled_from(Ended),
        st.floats(0, 90),
        st.integers(0, 4),
    ),
    max_size=10,
    unique_by=lambda one: one[0],
)


@given(attempts, st.integers(0, 9), st.booleans())
def test_whatever_was_tried_no_test_comes_twice_or_before_what_it_waits_for(tried, days, is_hurt):
    made = [
        one
        for key, ended, value, day in tried
        for one in done(key, on=MONDAY + timedelta(days=day), value=value, ended=ended)
    ]
    rested = LeftOut(everything=is_hurt)
    found = due(made, on=MONDAY + timedelta(days=days), rested=rested)
    told = {one.key for one in made}
    shown = {
        one.key
        for one in results_of(PLAN, made)
        if one.pain <= PLAN.stop.pain_above and one.value >= the_test(one.key).shows[0].at
    }
    for key in keys(found):
        assert key not in told
        assert set(the_test(key).after) <= shown
        assert not is_hurt
