"""The figures of the comparison, recomputed by hand: every expected number is DERIVED here."""

from datetime import date, timedelta

import pytest

from demo_scenario.comparison.athletes import Goal
from demo_scenario.comparison.courses import Course, Declared, rise_in_a_week
from demo_scenario.comparison.figures import by_stratum, censored_quantile, figures_of
from demo_scenario.comparison.report import verdict
from demo_scenario.comparison.runs import ALL, OURS, TWO_FOR_TWO, Row
from scheduler.training.rulebook import default_rulebook
from scheduler.training.standards import requirements
from scheduler.training.values import Rung
from tests.training.athletes import OVERHEAD_HOLD, athlete, done, dose

DAY = date(2026, 3, 2)
TRUE, FALSE = Declared(on=DAY, is_below=False), Declared(on=DAY, is_below=True)


def course(gain, **fields):
    return Course(gain=gain, **fields)


THREE = (
    course(0.03, weeks=6.0, sessions=10, missed=1, short=4, jump=0.5, declared={"a": TRUE}),
    course(
        0.01,
        weeks=None,
        sessions=30,
        missed=2,
        short=6,
        tries=4,
        shown=3,
        jump=0.2,
        declared={"a": FALSE, "b": TRUE},
    ),
    course(0.02, weeks=9.0, sessions=20, jump=0.1, declared={"a": TRUE}),
)


def test_the_figures_of_three_courses():
    found = figures_of(THREE)
    assert (found.athletes, found.unfinished) == (3, 1)
    # DERIVED: of 6, 9 and not through, the second is 9; the third, at 90 %, never came
    assert (found.median_weeks, found.tail_weeks) == (9.0, None)
    # DERIVED: 3 and 10 of 60 sessions
    assert found.missed_share == pytest.approx(3 / 60)
    assert found.short_share == pytest.approx(10 / 60)
    assert (found.tries, found.shown_share) == (4, 0.75)
    # DERIVED: the middle and the largest of 0.5, 0.2, 0.1
    assert (found.jump_median, found.jump_most) == (0.2, 0.5)
    # DERIVED: one of four declared, and it is the slow body's, one of its two
    assert found.below_share == 0.25
    assert found.below_by_stratum == {"slow": 0.5, "middle": 0.0, "fast": 0.0}


def test_the_unfinished_come_last_and_are_given_no_time():
    weeks = [4.0, None, 2.0, 8.0, 6.0, None, 1.0, 3.0, 5.0, 7.0]
    # DERIVED: through in order 1 2 3 4 5 6 7 8; the fifth of ten is 5, the eighth 8, no ninth
    assert censored_quantile(weeks, share=0.5) == 5.0
    assert censored_quantile(weeks, share=0.8) == 8.0
    assert censored_quantile(weeks, share=0.9) is None


def test_thirds_are_by_the_bodies_own_gain_and_hold_everybody_once():
    seven = [course(gain) for gain in (7, 1, 6, 2, 5, 3, 4)]
    groups = {name: [one.gain for one in found] for name, found in by_stratum(seven).items()}
    # DERIVED: cuts after 7/3 and 14/3, rounded to 2 and 5
    assert groups == {"slow": [1, 2], "middle": [3, 4, 5], "fast": [6, 7]}


def overhead_goal(load_kg):
    rulebook = default_rulebook()
    asked = next(
        one
        for one in requirements(stage=1, profile=athlete(), rulebook=rulebook)
        if one.key == "one_arm_overhead_hold"
    )
    return Goal(
        asked=asked, movement=OVERHEAD_HOLD, rung=Rung(load_kg=load_kg), reference_kg=load_kg
    )


def test_a_rise_counts_against_the_least_of_the_seven_days_before():
    def on(day, target):
        was = dose(OVERHEAD_HOLD, "muscular_endurance", target=target, kg=8)
        return done(was).model_copy(update={"on": DAY + timedelta(days=day)})

    log = [on(0, 20), on(3, 25), on(8, 30)]
    # DERIVED: day 0 is eight days back, so 30 against 25; one day earlier it is 30 against 20
    assert rise_in_a_week(log, goal=overhead_goal(8)) == pytest.approx(0.2)
    log[-1] = on(7, 30)
    assert rise_in_a_week(log, goal=overhead_goal(8)) == pytest.approx(0.5)


def test_a_heavier_load_counts_by_the_published_curve():
    light = dose(OVERHEAD_HOLD, "muscular_endurance", target=40, kg=8)
    heavy = dose(OVERHEAD_HOLD, "muscular_endurance", target=30, kg=10)
    log = [
        done(was).model_copy(update={"on": DAY + timedelta(days=day)})
        for day, was in ((0, light), (3, heavy))
    ]
    # DERIVED, freylaw2010 (secondary) shoulder: 40 s at 8 kg is 40 * (10/8) ** -1.83 = 26.59 s
    # at 10 kg, and 30 / 26.59 - 1 = 0.1283
    assert rise_in_a_week(log, goal=overhead_goal(10)) == pytest.approx(0.1283, abs=1e-4)


def test_the_verdict_says_what_is_not_reached():
    slow = [course(0.01, weeks=10.0, sessions=10, missed=1), course(0.02, weeks=12.0, sessions=10)]
    quick = [course(0.01, weeks=8.0, sessions=10), course(0.02, weeks=9.0, sessions=10)]
    names = (OURS, *TWO_FOR_TWO)

    def lines(ours, other):
        groups = dict(zip(names, (ours, other, other), strict=True))
        rows = [Row(assumptions=ALL, rule=name, figures=figures_of(groups[name])) for name in names]
        return "\n".join(verdict(rows))

    # DERIVED: misses 1 of 20 against 0; medians 10 against 8 is 1.25, 8 against 10 is 0.80
    against = lines(slow, quick)
    assert against.count("not reached") == 6
    assert "(5.0% against 0.0%)" in against
    assert "(1.25)" in against
    favour = lines(quick, slow)
    assert "not reached" not in favour
    assert "(0.80)" in favour
