"""From the first tests to the stage to begin with."""

from collections.abc import Sequence

from scheduler.catalogue.values import Measure
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.baseline_values import (
    BaselinePlan,
    BaselineResult,
    BaselineTest,
    Shows,
)
from scheduler.training.endurance_time import time_at_other_load_s
from scheduler.training.gates import starting_stage
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import BaselineSet
from scheduler.training.values import AthleteProfile, Rung


def baseline_start(
    plan: BaselinePlan,
    results: Sequence[BaselineResult],
    *,
    profile: AthleteProfile,
    rulebook: Rulebook,
) -> Decision[int]:
    """Decide the stage to begin with from the results of the tests [1-5].

    A result with pain above the stop shows nothing. A hold at a lighter load than the standard's
    is converted by the joint's curve (freylaw2010); a heavier one is converted where it is
    compared. At most 3 from tests alone, 1 where nothing could be tested or was shown (CH).
    """
    counted, why = counted_sets(plan, results)
    start = starting_stage(counted, profile=profile, rulebook=rulebook)
    return Decision(value=start.value, reasons=(*start.reasons, *why))


def open_tests(
    plan: BaselinePlan, results: Sequence[BaselineResult], *, day: int
) -> Decision[tuple[BaselineTest, ...]]:
    """Return the tests of a day [1 or 2] that may be done now; the others wait for those before.

    A test is asked only once all that it comes after were shown without pain above the stop.
    """
    shown = {result.key for result in results if _is_shown(plan, result)}
    mine = [test for one in plan.days if one.number == day for test in one.tests]
    ready = tuple(test for test in mine if set(test.after) <= shown)
    waiting = tuple(
        reason(BaselineReason.TEST_NOT_YET, "ch", movement=test.movement_key, stage=test.stage)
        for test in mine
        if test not in ready
    )
    return Decision(value=ready, reasons=waiting)


def shown_by(plan: BaselinePlan, result: BaselineResult) -> tuple[Shows, ...]:
    """Return the standards that a result shows: at the planned load, without pain above the stop.

    What was done at another load counts in :func:`baseline_start` by the published curves.
    """
    test = _test(plan, result)
    if (result.rung or test.rung) != test.rung or result.pain > plan.stop.pain_above:
        return ()
    return tuple(one for one in test.shows if result.value >= one.at)


def _is_shown(plan: BaselinePlan, result: BaselineResult) -> bool:
    return bool(shown_by(plan, result))


def _test(plan: BaselinePlan, result: BaselineResult) -> BaselineTest:
    """Return the test of a result.

    Raises:
        ValueError: the plan has no such test.

    """
    for test in plan.tests:
        if test.key == result.key:
            return test
    raise ValueError(f"expected one of the plan's tests, got {result.key!r}")


def counted_sets(
    plan: BaselinePlan, results: Sequence[BaselineResult]
) -> tuple[tuple[BaselineSet, ...], tuple[Reason, ...]]:
    """Return the results as they count for standards, each at the load that a standard asks."""
    sets: list[BaselineSet] = []
    reasons: list[Reason] = []
    for result in results:
        test = _test(plan, result)
        if result.pain > plan.stop.pain_above:
            figures = {"pain": result.pain, "most": plan.stop.pain_above}
            movement = test.movement_key
            code = BaselineReason.RESULT_WITH_PAIN
            reasons.append(reason(code, "ch", movement=movement, **figures))
            continue
        for shown in test.shows:
            one, why = _at_standard_load(test, result, asked_kg=shown.standard_load_kg)
            sets.append(one)
            reasons += why
    return tuple(sets), tuple(reasons)


def _at_standard_load(
    test: BaselineTest, result: BaselineResult, *, asked_kg: float | None
) -> tuple[BaselineSet, tuple[Reason, ...]]:
    """Return a result as it counts: a lighter hold at the load that a standard asks."""
    rung = result.rung or test.rung
    taken_kg = rung.load_kg
    done = BaselineSet(
        on=result.on,
        movement_key=test.movement_key,
        measure=test.measure,
        value=result.value,
        rung=rung,
    )
    is_lighter = taken_kg is not None and asked_kg is not None and taken_kg < asked_kg
    is_hold = rung == test.rung and test.measure is not Measure.REPS
    if not is_lighter or not is_hold or taken_kg is None or asked_kg is None:
        return done, ()
    value = time_at_other_load_s(
        endurance_s=result.value, load_kg=taken_kg, other_load_kg=asked_kg, joint=test.joint
    )
    why = reason(
        BaselineReason.RESULT_AT_OTHER_LOAD,
        "freylaw2010",
        movement=test.movement_key,
        was_kg=taken_kg,
        load_kg=asked_kg,
        held_s=value,
    )
    at_asked = {"value": value, "rung": Rung(load_kg=asked_kg)}
    return done.model_copy(update=at_asked), (why,)
