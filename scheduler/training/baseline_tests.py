"""Which single sets can show the standards, with what is owned and may be loaded."""

import math
from dataclasses import dataclass

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Demand, Direction, Measure, Movement, Sides, Tempo
from scheduler.pain.values import Side
from scheduler.reasons import Figure, Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.baseline_values import BaselineRequest, BaselineTest, Shows
from scheduler.training.endurance_time import is_fitted, time_at_other_load_s
from scheduler.training.loads import rungs
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import Requirement, requirement
from scheduler.training.values import NO_RESISTANCE, Rung


@dataclass(frozen=True)
class Chosen:
    """The tests that can be done, the standards that cannot be tested, and why."""

    tests: tuple[BaselineTest, ...]
    by_coach: frozenset[tuple[int, str]]
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class _Set:
    """A resistance with the seconds or repetitions that show a standard at it."""

    rung: Rung
    target: int


def choose_tests(request: BaselineRequest, *, library: Library, rulebook: Rulebook) -> Chosen:
    """Choose a test for each standard asked for, else up to the stage that tests alone may open.

    Standards that one set of one movement at one load can show share it. Above a standard that
    is left to the coach nothing harder is tested.
    """
    tests: list[BaselineTest] = []
    by_coach: set[tuple[int, str]] = set()
    reasons: list[Reason] = []
    for stage in request.stages or range(1, rulebook.start.highest_stage.whole):
        if by_coach:
            reasons.append(reason(BaselineReason.AFTER_THE_COACH, CH, stage=stage))
            break
        for row in rulebook.standards.get(stage, ()):
            asked = requirement(row, profile=request.profile, rulebook=rulebook)
            found = _test_of(stage, row.key, asked, request, library=library, rulebook=rulebook)
            if isinstance(found, BaselineTest):
                tests.append(found)
            else:
                by_coach.add((stage, row.key))
                reasons += found.why
    shared = _shared(tests)
    reasons = [*(_asked(test) for test in shared), *reasons]
    return Chosen(
        tests=_with_those_before(shared),
        by_coach=frozenset(by_coach),
        reasons=tuple(reasons),
    )


@dataclass(frozen=True)
class _NoTest:
    """A standard that no test can show here."""

    why: tuple[Reason, ...]


def _test_of(
    stage: int,
    key: str,
    asked: Requirement | None,
    request: BaselineRequest,
    *,
    library: Library,
    rulebook: Rulebook,
) -> BaselineTest | _NoTest:
    """Take the first movement that shows a standard and can be done, at the nearest load."""
    if asked is None:
        return _NoTest((reason(BaselineReason.NO_FIGURES, CH, key=key),))
    against: list[Reason] = []
    known = (one for one in asked.movements if one in library.movements)
    for movement in (library.movements[one] for one in known):
        code = _forbidden_by(movement, request)
        if code is not None:
            against.append(reason(code, CH, key=key, direction=movement.direction.value))
            continue
        found = _set_of(movement, asked, request, rulebook=rulebook)
        if isinstance(found, Reason):
            against.append(found)
            continue
        return BaselineTest(
            key=f"{stage}.{key}",
            stage=stage,
            movement_key=movement.key,
            direction=movement.direction,
            arm=movement.arm,
            joint=asked.joint,
            measure=asked.measure,
            target=found.target,
            shows=(Shows(stage=stage, key=key, at=found.target, standard_load_kg=asked.load_kg),),
            rung=found.rung,
            is_each_side=movement.sides is Sides.EACH,
        )
    return _NoTest(tuple(against[:1]))


def is_hang(movement: Movement) -> bool:
    """Tell whether the body hangs still from the hands."""
    return (
        movement.direction is Direction.VERTICAL_PULL
        and movement.tempo is Tempo.STATIC
        and Demand.TRACTION in movement.demands
    )


def _forbidden_by(movement: Movement, request: BaselineRequest) -> BaselineReason | None:
    """Return what forbids a movement as a test, the body before the equipment."""
    intake = request.intake
    checks = (
        (BaselineReason.HANG_NOT_TESTED, is_hang(movement) and not intake.may_hang),
        (BaselineReason.DIRECTION_NOT_TESTED, movement.direction in intake.held),
        (
            BaselineReason.INVERSION_NOT_TESTED,
            Demand.INVERSION in movement.demands and not intake.may_invert,
        ),
        (
            BaselineReason.RESTED_NOT_TESTED,
            request.rested.arms_allowed(movement) != Side.BOTH.arms,
        ),
        (BaselineReason.NOT_OWNED, not movement.fits(request.profile.equipment)),
    )
    return next((code for code, holds in checks if holds), None)


def _set_of(
    movement: Movement, asked: Requirement, request: BaselineRequest, *, rulebook: Rulebook
) -> _Set | Reason:
    """Find the resistance: the standard's, else heavier and shorter, else lighter and longer.

    Holds and carries by the joint's curve, inside its fitted range (freylaw2010), and never
    beyond the seconds at which a test stops; repetitions only at the load asked or more. A first
    test is at most half as heavy again as the standard (CH): short and very heavy is no test
    for somebody whom nobody has seen train.
    """
    needed = asked.target * rulebook.start.test_factor.value
    stop_s = rulebook.start.test_stop_s.value
    if asked.load_kg is None:
        sets = [_Set(NO_RESISTANCE, _up(needed))]
    else:
        most_kg = asked_kg(asked) * (1 + rulebook.baseline.heavier_share_most.value)
        all_kg = [one.load_kg for one in rungs(movement, profile=request.profile) if one.load_kg]
        owned = [load_kg for load_kg in all_kg if load_kg <= most_kg]
        if not owned:
            return reason(BaselineReason.NOT_OWNED, CH, key=asked.key)
        nearest = sorted(owned, key=lambda kg: (kg < asked_kg(asked), abs(kg - asked_kg(asked))))
        found = (_at_load(kg, asked, needed) for kg in nearest)
        sets = [one for one in found if one is not None]
    fitting = [one for one in sets if not asked.measure.is_time or one.target <= stop_s]
    if fitting:
        return fitting[0]
    return reason(BaselineReason.BEYOND_STOP, CH, key=asked.key, at_most_s=stop_s)


def asked_kg(asked: Requirement) -> float:
    """Return the load that a standard asks [kg in each hand], 0 for none."""
    return asked.load_kg or 0.0


def _at_load(load_kg: float, asked: Requirement, needed: float) -> _Set | None:
    """Return what shows a standard at an owned load [kg]; None outside the published range."""
    wanted_kg = asked_kg(asked)
    rung = Rung(load_kg=load_kg)
    if load_kg == wanted_kg:
        return _Set(rung, _up(needed))
    if asked.measure is Measure.REPS:
        return _Set(rung, _up(needed)) if load_kg > wanted_kg else None
    other_s = time_at_other_load_s(
        endurance_s=needed, load_kg=wanted_kg, other_load_kg=load_kg, joint=asked.joint
    )
    if not all(is_fitted(endurance_s=time_s, joint=asked.joint) for time_s in (needed, other_s)):
        return None
    return _Set(rung, _up(other_s))


def _up(number: float) -> int:
    return math.ceil(round(number, 6))


def _asked(test: BaselineTest) -> Reason:
    """Say what a test asks, and where another load than the standard's is taken."""
    unit = "target_s" if test.measure.is_time else "target_reps"
    figures: dict[str, Figure] = {"movement": test.movement_key, unit: test.target}
    load_kg, standard_kg = test.rung.load_kg, test.shows[-1].standard_load_kg
    if load_kg is None or standard_kg is None:
        return reason(BaselineReason.TEST_ASKED, CH, **figures)
    figures["load_kg"] = load_kg
    if load_kg == standard_kg:
        return reason(BaselineReason.TEST_ASKED, CH, **figures)
    is_heavier = load_kg > standard_kg
    code = BaselineReason.HEAVIER_LOAD if is_heavier else BaselineReason.LIGHTER_LOAD
    source = CP if test.measure is Measure.REPS else "freylaw2010"
    return reason(code, source, was_kg=standard_kg, **figures)


def _shared(tests: list[BaselineTest]) -> list[BaselineTest]:
    """Let one set of a movement at one load serve every standard that it can show."""
    kept: dict[tuple[str, Rung], BaselineTest] = {}
    for test in tests:
        place = (test.movement_key, test.rung)
        first = kept.get(place)
        if first is None:
            kept[place] = test
            continue
        shows = tuple(sorted((*first.shows, *test.shows), key=lambda one: one.at))
        kept[place] = first.model_copy(update={"shows": shows, "target": shows[-1].at})
    return list(kept.values())


def _with_those_before(tests: list[BaselineTest]) -> tuple[BaselineTest, ...]:
    """Make every test wait for those of the stages before it."""
    return tuple(
        test.model_copy(update={"after": tuple(one.key for one in tests if one.stage < test.stage)})
        for test in tests
    )
