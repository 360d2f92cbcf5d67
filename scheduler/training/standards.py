"""What a standard asks of one athlete, and what shows it."""

from collections.abc import Sequence
from datetime import date

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Joint, Measure
from scheduler.pain.values import Side
from scheduler.training.endurance_time import is_fitted, time_at_other_load_s
from scheduler.training.gate_rules import Standard, StandardColumn
from scheduler.training.labelled import Labelled
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import (
    NO_RESISTANCE,
    AthleteProfile,
    Exposure,
    ReferenceValues,
    Rung,
    SetDone,
)


class Requirement(BaseModel):
    """A standard in one athlete's own figures.

    ``target`` [s or repetitions a set]; ``load_kg`` [kg in each hand, at least]; ``help_most_kg``
    [kg of help, at most]; ``reserve_least`` [repetitions].
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    key: str
    movements: tuple[str, ...]
    measure: Measure
    joint: Joint
    sets: int
    target: int
    load_kg: float | None = None
    help_most_kg: float | None = None
    reserve_least: float = 0.0
    source: str


class BaselineSet(BaseModel):
    """One tested set of a baseline; ``value`` [s or repetitions], of the weaker side if each."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    on: date
    movement_key: str
    measure: Measure
    value: float = Field(ge=0)
    rung: Rung = NO_RESISTANCE


class Standing(BaseModel):
    """Where an athlete stands against one standard; ``days_shown`` [different days].

    ``is_by_test``: a test shows it, and sessions alone do not yet.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    requirement: Requirement
    days_shown: int
    best_set: float
    is_shown: bool
    is_by_test: bool = False


def requirement(
    standard: Standard, *, profile: AthleteProfile, rulebook: Rulebook
) -> Requirement | None:
    """Return what a standard asks of this athlete; None where a coach's own column is not set.

    Body weight counts up to 90 kg (women 75): heavier athletes are asked no more than that (CH).
    """
    column = standard.columns.get(profile.reference)
    if column is None:
        return None
    counted_kg = counted_body_mass_kg(profile, rulebook=rulebook)
    return Requirement(
        key=standard.key,
        movements=standard.movements,
        measure=standard.measure,
        joint=standard.joint,
        sets=standard.sets.whole,
        target=column.target.whole,
        load_kg=_share_kg(column.load_share, counted_kg),
        help_most_kg=_help_kg(column, profile.body_mass_kg),
        reserve_least=standard.reserve_least.value if standard.reserve_least else 0.0,
        source=column.target.source,
    )


def counted_body_mass_kg(profile: AthleteProfile, *, rulebook: Rulebook) -> float:
    """Return the body mass that the standards count [kg]."""
    most = rulebook.gates.body_mass_most_kg
    limit = most.get(profile.reference, most[ReferenceValues.WOMEN])
    return min(profile.body_mass_kg, limit.value)


def _share_kg(share: Labelled | None, body_kg: float) -> float | None:
    return None if share is None else round(share.value * body_kg, 2)


def _help_kg(column: StandardColumn, body_kg: float) -> float | None:
    return _share_kg(column.help_share_most, body_kg)


def requirements(
    *, stage: int, profile: AthleteProfile, rulebook: Rulebook
) -> tuple[Requirement, ...]:
    """Return what leaving ``stage`` [1-4] asks of this athlete; none at stage 5."""
    rows = rulebook.standards.get(stage, ())
    asked = (requirement(row, profile=profile, rulebook=rulebook) for row in rows)
    return tuple(one for one in asked if one is not None)


def standing(
    asked: Requirement,
    *,
    exposures: Sequence[Exposure],
    tests: Sequence[BaselineSet] = (),
    rulebook: Rulebook,
) -> Standing:
    """Say where an athlete stands: shown on two different days, or by one test set of 1.25 times.

    Shown means done as written or more, in position, in every set, on both sides.
    """
    days = {one.on for one in exposures if is_shown_by(one, asked)}
    needed = rulebook.gates.days_shown.whole
    is_tested = any(is_shown_by_test(one, asked, rulebook=rulebook) for one in tests)
    return Standing(
        requirement=asked,
        days_shown=len(days),
        best_set=_best_set(asked, exposures=exposures, tests=tests),
        is_shown=len(days) >= needed or is_tested,
        is_by_test=is_tested and len(days) < needed,
    )


def is_shown_by(exposure: Exposure, asked: Requirement) -> bool:
    """Tell whether one exposure shows a standard."""
    dose = exposure.dose
    if dose.movement_key not in asked.movements or dose.measure is not asked.measure:
        return False
    left = exposure.reserve.left if exposure.reserve else 0.0
    if left < asked.reserve_least:
        return False
    good = [one for one in exposure.sets if _is_good(one, exposure, asked)]
    return all(len(done) >= asked.sets for done in _by_side(exposure, good))


def _by_side(exposure: Exposure, good: Sequence[SetDone]) -> tuple[list[SetDone], ...]:
    """Return the good sets of each arm where any set names one arm, else all of them."""
    if all(one.side is Side.BOTH for one in exposure.sets):
        return (list(good),)
    return tuple([one for one in good if arm in one.side.arms] for arm in Side.BOTH.arms)


def _is_good(one: SetDone, exposure: Exposure, asked: Requirement) -> bool:
    rung = exposure.dose.rung if one.rung is None else one.rung
    return one.is_in_position and one.value >= asked.target and is_hard_enough(rung, asked)


def is_hard_enough(rung: Rung, asked: Requirement) -> bool:
    """Tell whether a resistance is the standard's or more; help counts only with known kg."""
    if asked.load_kg is not None and (rung.load_kg or 0.0) < asked.load_kg:
        return False
    is_helped = rung.band is not None or rung.assist_kg is not None
    if not is_helped:
        return True
    if asked.help_most_kg is None or rung.assist_kg is None:
        return False
    return rung.assist_kg <= asked.help_most_kg


def is_shown_by_test(test: BaselineSet, asked: Requirement, *, rulebook: Rulebook) -> bool:
    """Tell whether one tested set of 1.25 times the target shows a standard (CH).

    A hold or carry tested heavier than the standard counts by what the joint's curve makes of it
    at the standard's load, inside the fitted range (freylaw2010).
    """
    if test.movement_key not in asked.movements or test.measure is not asked.measure:
        return False
    if not is_hard_enough(test.rung, asked):
        return False
    needed = asked.target * rulebook.start.test_factor.value
    return max(test.value, _value_at_load(test, asked)) >= needed


def _value_at_load(test: BaselineSet, asked: Requirement) -> float:
    """Return what a heavier test says for the standard's load [s], 0 where it says nothing."""
    if asked.measure is Measure.REPS or not asked.load_kg or test.value == 0:
        return 0.0
    at_load_s = time_at_other_load_s(
        endurance_s=test.value,
        load_kg=test.rung.load_kg or asked.load_kg,
        other_load_kg=asked.load_kg,
        joint=asked.joint,
    )
    is_inside = is_fitted(endurance_s=test.value, joint=asked.joint) and is_fitted(
        endurance_s=at_load_s, joint=asked.joint
    )
    return at_load_s if is_inside else 0.0


def _best_set(
    asked: Requirement, *, exposures: Sequence[Exposure], tests: Sequence[BaselineSet]
) -> float:
    done = [
        one.value
        for exposure in exposures
        if exposure.dose.movement_key in asked.movements
        for one in exposure.sets
        if is_hard_enough(exposure.dose.rung if one.rung is None else one.rung, asked)
    ]
    tested = [
        one.value
        for one in tests
        if one.movement_key in asked.movements and is_hard_enough(one.rung, asked)
    ]
    return max((*done, *tested), default=0.0)
