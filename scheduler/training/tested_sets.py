"""What tested sets say later on: the best that first doses begin from, a look at a capacity."""

from collections.abc import Sequence

from scheduler.catalogue.values import Measure, Movement
from scheduler.pain.values import Side
from scheduler.reasons import Decision
from scheduler.training.baseline_values import TestedSet
from scheduler.training.capacity import Capacity, Observation, estimate
from scheduler.training.capacity_reading import SECONDS_AS_ONE_REP, observe_best
from scheduler.training.real_change import real_change
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Best


def best_of_tests(tested: Sequence[TestedSet], *, movement_key: str) -> Best | None:
    """Return what first doses begin from: the latest test of a movement, of the weaker arm.

    What was left is not added: a dose begins from what was really done (CH).
    """
    mine = [one for one in tested if one.movement_key == movement_key and one.value > 0]
    if not mine:
        return None
    latest = max(one.on for one in mine)
    weaker = min((one for one in mine if one.on == latest), key=lambda one: one.value)
    return Best(value=weaker.value, rung=weaker.rung)


def observe_tested(
    tested: TestedSet,
    *,
    movement: Movement,
    arm: Side,
    decrement: float,
    body_mass_kg: float,
    reference_kg: float,
) -> Observation | None:
    """Turn a tested set into a look at the last of several sets, with what was left of it.

    A test without an answer, or with the top one, says "at least". None for the other arm, for
    a set of nothing, and outside what the formulas are trusted for.
    """
    if tested.side not in {arm, Side.BOTH} or tested.value <= 0:
        return None
    answer = tested.reserve
    left = answer.left if answer else 0.0
    look = observe_best(
        Best(value=tested.value + left, rung=tested.rung),
        on=tested.on,
        movement=movement,
        decrement=decrement,
        body_mass_kg=body_mass_kg,
        reference_kg=reference_kg,
    )
    if look is None:
        return None
    is_reps = tested.measure is Measure.REPS
    return look.model_copy(
        update={
            "is_at_least": answer is None or answer.is_at_least,
            "reserve": left if is_reps else left / SECONDS_AS_ONE_REP,
        }
    )


def change_between(
    before: TestedSet, now: TestedSet, *, rulebook: Rulebook
) -> Decision[bool] | None:
    """Decide whether two tests of one movement, arm and resistance differ by more than chance.

    Two single looks, each with its own noise: for two at failure this is the published detectable
    change, 1.96 sqrt(2) SEM (hopkins2000). None where they cannot be compared: another
    resistance, nothing done, or only "at least" was said of what was left, which gives no range.
    """
    looks = (_alone(before, rulebook=rulebook), _alone(now, rulebook=rulebook))
    if looks[0] is None or looks[1] is None:
        return None
    if (before.movement_key, before.side, before.rung) != (now.movement_key, now.side, now.rung):
        return None
    return real_change(looks[0], looks[1])


def _alone(tested: TestedSet, *, rulebook: Rulebook) -> Capacity | None:
    """Return one test as an estimate by itself; None where it is only a bound."""
    answer = tested.reserve
    if tested.value <= 0 or answer is None or answer.is_at_least:
        return None
    is_reps = tested.measure is Measure.REPS
    look = Observation(
        on=tested.on,
        value=tested.value + answer.left,
        reserve=answer.left if is_reps else answer.left / SECONDS_AS_ONE_REP,
    )
    return estimate([look], rulebook=rulebook)
