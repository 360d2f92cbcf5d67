"""The course of the first tests: which day is due, which test is next, what came of them."""

from collections.abc import Sequence
from datetime import date, timedelta

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Equipment
from scheduler.pain.values import LeftOut, Side
from scheduler.reasons import Decision, Reason, reason
from scheduler.sources import CH
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.baseline_start import open_tests
from scheduler.training.baseline_values import (
    Attempt,
    BaselinePlan,
    BaselineResult,
    BaselineTest,
    Ended,
)

HURT_WITHOUT_NUMBER = 10.0  # [0-10] ch: "that hurt" without a number counts as the worst


class TestsOfDay(BaseModel):
    """What a session tests: the day of the plan, and the tests that are still to do."""

    __test__ = False
    model_config = ConfigDict(frozen=True, extra="forbid")

    day: int
    tests: tuple[BaselineTest, ...]


def arms_tested(test: BaselineTest) -> tuple[Side, ...]:
    """Return the arms that a test is done with, each by itself, in order."""
    return (Side.LEFT, Side.RIGHT) if test.is_each_side else (Side.BOTH,)


def arms_open(test: BaselineTest, attempts: Sequence[Attempt]) -> tuple[Side, ...]:
    """Return the arms that have not been tried yet; none where one arm hurt."""
    mine = [one for one in attempts if one.key == test.key]
    if any(one.ended is Ended.HURT for one in mine):
        return ()
    told = {one.side for one in mine}
    return tuple(arm for arm in arms_tested(test) if arm not in told and Side.BOTH not in told)


def results_of(plan: BaselinePlan, attempts: Sequence[Attempt]) -> tuple[BaselineResult, ...]:
    """Return the result of each test whose every arm was tried: that of the weaker arm.

    One that hurt counts with its number, and without one as the worst (CH): it shows nothing.
    """
    found = []
    for test in plan.tests:
        mine = [one for one in attempts if one.key == test.key and one.value is not None]
        hurt = [one for one in attempts if one.key == test.key and one.ended is Ended.HURT]
        has_all = {one.side for one in mine} >= set(arms_tested(test))
        if not mine or not (has_all or hurt):
            continue
        weaker = min(mine, key=lambda one: one.value or 0.0)
        scores = [HURT_WITHOUT_NUMBER if one.pain is None else one.pain for one in hurt]
        result = BaselineResult(
            key=test.key,
            on=max(one.on for one in mine),
            value=weaker.value or 0.0,
            rung=weaker.rung,
            pain=max(scores, default=0.0),
        )
        found.append(result)
    return tuple(found)


def what_is_due(
    plan: BaselinePlan,
    attempts: Sequence[Attempt],
    *,
    on: date,
    rested: LeftOut,
    equipment: frozenset[Equipment],
    library: Library,
) -> Decision[TestsOfDay | None]:
    """Decide what is tested on a day: the earliest day of the plan with a test still to do.

    A test waits for those that it comes after, and is passed over while what it loads is rested
    or the equipment is not at hand (it is no try to fail). The second day keeps its free day from
    the first (CP). None where nothing may be tested on that day; what is settled never comes
    again by itself.
    """
    results = results_of(plan, attempts)
    why: list[Reason] = []
    for day in plan.days:
        ready = open_tests(plan, results, day=day.number)
        waiting = [test for test in ready.value if arms_open(test, attempts)]
        against = {
            test.key: _against(test, rested=rested, equipment=equipment, library=library)
            for test in waiting
        }
        able = [test for test in waiting if against[test.key] is None]
        why += [one for one in against.values() if one is not None]
        if not able:
            continue
        before = [one.on for one in attempts if not _is_of_day(plan, one, day=day.number)]
        first_on = max(before, default=date.min) + timedelta(days=day.free_days_before)
        if before and on <= first_on and day.free_days_before:
            too_soon = reason(BaselineReason.TOO_SOON, CH, free_days=day.free_days_before)
            return Decision(value=None, reasons=(*why, too_soon))
        return Decision(value=TestsOfDay(day=day.number, tests=tuple(able)), reasons=tuple(why))
    return Decision(value=None, reasons=tuple(why))


def is_over(plan: BaselinePlan, attempts: Sequence[Attempt]) -> bool:
    """Tell whether nothing is left that may be tested, whatever is rested now."""
    results = results_of(plan, attempts)
    return not any(
        arms_open(test, attempts)
        for day in plan.days
        for test in open_tests(plan, results, day=day.number).value
    )


def _is_of_day(plan: BaselinePlan, attempt: Attempt, *, day: int) -> bool:
    mine = next(one for one in plan.days if one.number == day)
    return any(test.key == attempt.key for test in mine.tests)


def _against(
    test: BaselineTest, *, rested: LeftOut, equipment: frozenset[Equipment], library: Library
) -> Reason | None:
    """Return what stands against a test today: the body before the equipment."""
    movement, key = library.movements.get(test.movement_key), test.shows[0].key
    if movement is not None and rested.arms_allowed(movement) != Side.BOTH.arms:
        return reason(BaselineReason.RESTED_NOT_TESTED, CH, key=key)
    if movement is None or not movement.fits(equipment):
        return reason(BaselineReason.NOT_OWNED, CH, key=key)
    return None
