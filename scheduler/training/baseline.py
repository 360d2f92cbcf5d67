"""The first tests over two days, as data: what, in which order, when a set is over."""

from collections.abc import Sequence

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Arm, Joint, Measure
from scheduler.reasons import Decision, Reason, reason
from scheduler.sources import CH
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.baseline_tests import choose_tests
from scheduler.training.baseline_values import (
    BaselineDay,
    BaselinePlan,
    BaselineRequest,
    BaselineTest,
    IntakeState,
    TestStop,
)
from scheduler.training.rulebook import Rulebook
from scheduler.training.week_minutes import SECONDS_A_MINUTE


def baseline_plan(
    request: BaselineRequest, *, library: Library, rulebook: Rulebook
) -> Decision[BaselinePlan]:
    """Plan the first tests: two days, warm-up first, one set of 1.25 times each standard (CH).

    Straight-arm before bent, the hang on the first day and carries on the second, since both ask
    the grip (CP); what opens the next stage comes last and only after the rest was shown. What
    injuries, pain, equipment or the minutes leave out is the coach's to decide, and the plan says
    so; an athlete for whom nothing is left begins at stage 1. While an answer of the screen waits
    for the coach nothing is tested at all.
    """
    if request.intake.state is IntakeState.WAITS_FOR_COACH:
        nothing = BaselinePlan(days=(), stop=test_stop(rulebook=rulebook))
        return Decision(value=nothing, reasons=(reason(BaselineReason.NOTHING_WHILE_WAITING, CH),))
    chosen = choose_tests(request, library=library, rulebook=rulebook)
    days: list[BaselineDay] = []
    by_coach, reasons = set(chosen.by_coach), list(chosen.reasons)
    for number in (1, 2):
        mine = [test for test in chosen.tests if _day_of(test) == number]
        kept = _within_minutes(_in_order(mine), request, rulebook=rulebook)
        gone = [test for test in mine if test not in kept]
        reasons += [_no_time(test, request) for test in gone]
        by_coach |= {(one.stage, one.key) for test in gone for one in test.shows}
        if kept:
            days.append(_day(kept, after=days, rulebook=rulebook))
    days = _without_what_waits_for_the_coach(days, by_coach, rulebook=rulebook)
    plan = BaselinePlan(
        days=tuple(days), stop=test_stop(rulebook=rulebook), by_coach=frozenset(by_coach)
    )
    return Decision(value=plan, reasons=(_summary(plan, rulebook=rulebook), *reasons))


def test_stop(*, rulebook: Rulebook) -> TestStop:
    """Return when a test set is over: 2-3 in reserve, position lost, pain above 2, or 75 s (CH)."""
    rules = rulebook.start
    most = rules.test_stop_reserve_reps.most
    return TestStop(
        reserve_reps_least=int(rules.test_stop_reserve_reps.least),
        reserve_reps_most=int(rules.test_stop_reserve_reps.least if most is None else most),
        reserve_hold_s=rulebook.baseline.stop_reserve_hold_s.whole,
        pain_above=rules.test_stop_pain.whole,
        at_most_s=rules.test_stop_s.whole,
    )


def _day_of(test: BaselineTest) -> int:
    """Return the day of a test: hangs and the first stage on the first, carries on the second."""
    if test.measure in {Measure.CARRY_S, Measure.CARRY_M}:
        return 2
    return 1 if test.stage == 1 or test.joint is Joint.GRIP else 2


def _in_order(tests: Sequence[BaselineTest]) -> list[BaselineTest]:
    """Straight-arm before bent, the earlier stage first, what asks the grip last (CP)."""
    return sorted(
        tests, key=lambda test: (test.arm is Arm.BENT, test.stage, test.joint is Joint.GRIP)
    )


def _within_minutes(
    tests: Sequence[BaselineTest], request: BaselineRequest, *, rulebook: Rulebook
) -> list[BaselineTest]:
    """Drop the tests of the highest stage together, then one by one, until the day fits (CH)."""
    kept = list(tests)
    while len(kept) > 1 and _minutes(kept, rulebook=rulebook) > request.session_min:
        highest = max(test.stage for test in kept)
        fewer = [test for test in kept if test.stage < highest]
        kept = fewer or kept[:-1]
    return kept


def _warm_up_s(tests: Sequence[BaselineTest], *, rulebook: Rulebook) -> int:
    """Return the warm-up [s]: easy movement, shoulder blades, an easy set of each (CP)."""
    rules = rulebook.weeks.minutes
    before = rules.easy_movement_s.value + rules.shoulder_blade_s.value
    return round(before + len({test.movement_key for test in tests}) * rules.easy_set_s.value)


def _minutes(tests: Sequence[BaselineTest], *, rulebook: Rulebook) -> float:
    """Estimate a day [min]: warm-up, each set to its target, the rests between."""
    work_s = sum(
        (2 if test.is_each_side else 1)
        * test.target
        * (1 if test.measure.is_time else rulebook.steps.seconds_per_rep.value)
        for test in tests
    )
    rest_s = max(0, len(tests) - 1) * rulebook.baseline.rest_s.value
    return (_warm_up_s(tests, rulebook=rulebook) + work_s + rest_s) / SECONDS_A_MINUTE


def _day(
    tests: Sequence[BaselineTest], *, after: Sequence[BaselineDay], rulebook: Rulebook
) -> BaselineDay:
    free_days = rulebook.baseline.free_days_between.whole
    return BaselineDay(
        number=len(after) + 1,
        free_days_before=free_days if after else 0,
        warm_up_s=_warm_up_s(tests, rulebook=rulebook),
        rest_s=rulebook.baseline.rest_s.whole,
        tests=tuple(tests),
        minutes=_minutes(tests, rulebook=rulebook),
    )


def _without_what_waits_for_the_coach(
    days: Sequence[BaselineDay], by_coach: set[tuple[int, str]], *, rulebook: Rulebook
) -> list[BaselineDay]:
    """Test nothing of a later stage while the coach must decide on an earlier one."""
    first = min((stage for stage, _ in by_coach), default=None)
    if first is None:
        return list(days)
    found: list[BaselineDay] = []
    for day in days:
        tests = [test for test in day.tests if test.stage <= first]
        if tests:
            found.append(_day(tests, after=found, rulebook=rulebook))
    return found


def _no_time(test: BaselineTest, request: BaselineRequest) -> Reason:
    return reason(
        BaselineReason.NO_TIME, CH, movement=test.movement_key, session_min=request.session_min
    )


def _summary(plan: BaselinePlan, *, rulebook: Rulebook) -> Reason:
    if not plan.days:
        return reason(BaselineReason.NOTHING_TO_TEST, rulebook.start.highest_stage.source, stage=1)
    source = rulebook.baseline.free_days_between.source
    return reason(BaselineReason.TWO_DAYS, source, days=len(plan.days), tests=len(plan.tests))
