"""What an exposure says: done as asked, missed, nothing left, and how often in a row."""

from collections.abc import Callable, Sequence

from scheduler.catalogue.values import Movement, Sides
from scheduler.pain.values import Side
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Exposure, Rung, SetDone


def is_at_target(exposure: Exposure, *, movement: Movement) -> bool:
    """Tell whether every set asked for was done at its target, in position, not easier."""
    dose = exposure.dose
    return all(
        len(done) >= dose.sets
        and all(
            one.value >= dose.target and one.is_in_position and not is_easier(one, exposure)
            for one in done[: dose.sets]
        )
        for done in _by_arm(exposure, movement)
    )


def is_missed(exposure: Exposure, *, movement: Movement, rulebook: Rulebook) -> bool:
    """Tell whether a set fell below its floor; a set left out counts as none done.

    Rounds also miss when one falls below the rulebook's share of the best round.
    """
    dose = exposure.dose
    for done in _by_arm(exposure, movement):
        values = [one.value for one in done[: dose.sets]]
        if len(values) < dose.sets or min(values) < dose.floor:
            return True
        rounds = rulebook.quality(dose.quality).rounds
        if rounds and min(values) < rounds.least_share_of_best_round.value * max(values):
            return True
    return False


def is_nothing_left(exposure: Exposure) -> bool:
    """Tell whether the athlete answered that nothing was left, where something was asked."""
    answer = exposure.reserve
    return answer is not None and answer.left == 0 and not answer.is_at_least


def is_enough_left(exposure: Exposure) -> bool:
    """Tell whether the reserve was answered as asked or better; no answer is not enough.

    Reserve is a lower bound: more left than the row's range says is as good.
    """
    answer = exposure.reserve
    return answer is not None and answer.left >= exposure.dose.reserve_asked


def is_as_asked(exposure: Exposure, *, movement: Movement) -> bool:
    """Tell whether every set was at its target with as much left as asked, or more."""
    return is_at_target(exposure, movement=movement) and is_enough_left(exposure)


def is_plainly_light(exposure: Exposure, *, movement: Movement) -> bool:
    """Tell whether every set was at its target and the answer was the top one, "or more"."""
    answer = exposure.reserve
    is_top = answer is not None and answer.is_at_least and is_enough_left(exposure)
    return is_top and is_at_target(exposure, movement=movement)


def plainly_light_running(history: Sequence[Exposure], *, movement: Movement) -> int:
    """Count the latest exposures in a row, at one resistance, that were plainly light."""
    count = 0
    for exposure in reversed(history):
        is_same = exposure.dose.rung == history[-1].dose.rung
        if not is_same or not is_plainly_light(exposure, movement=movement):
            break
        count += 1
    return count


def is_never_lower(history: Sequence[Exposure]) -> bool:
    """Tell whether every answer so far was the top one: the resistance is still felt out."""
    answers = [one.reserve for one in history if one.reserve is not None]
    return bool(answers) and all(one.is_at_least for one in answers)


def running(history: Sequence[Exposure], holds: Callable[[Exposure], bool]) -> int:
    """Count the latest exposures in a row that asked the same and for which ``holds`` is true."""
    count = 0
    for exposure in reversed(history):
        if exposure.dose.core != history[-1].dose.core or not holds(exposure):
            break
        count += 1
    return count


def is_easier(one: SetDone, exposure: Exposure) -> bool:
    """Tell whether a set was done with less than the planned resistance.

    Another band than planned counts as easier, since bands are ranked and not measured.
    """
    planned = exposure.dose.rung
    if one.rung is None or one.rung == planned:
        return False
    if one.rung.band != planned.band:
        return True
    return (one.rung.load_kg or 0.0) < (planned.load_kg or 0.0)


def lighter_rung_taken(exposure: Exposure) -> Rung | None:
    """Return the easier resistance that every set was done with, None where there is none."""
    taken = {one.rung for one in exposure.sets if is_easier(one, exposure)}
    done = {one.rung for one in exposure.sets}
    return taken.pop() if len(taken) == 1 and taken == done else None


def sets_of_arm(exposure: Exposure, *, arm: Side) -> tuple[SetDone, ...]:
    """Return the sets that an arm took part in, in order."""
    return tuple(one for one in exposure.sets if arm.arms & one.side.arms)


def _by_arm(exposure: Exposure, movement: Movement) -> tuple[tuple[SetDone, ...], ...]:
    """Return the sets of each arm that worked; a two-sided movement is one arm's worth.

    A one-sided movement that names one arm only was done with the sound one (the other rests).
    """
    if movement.sides is Sides.BOTH or not exposure.sets:
        return (exposure.sets,)
    arms = frozenset[Side]().union(*(one.side.arms for one in exposure.sets))
    return tuple(sets_of_arm(exposure, arm=arm) for arm in sorted(arms))


def best_value(exposures: Sequence[Exposure]) -> float:
    """Return the best single set [s, repetitions or m] at the planned resistance or more.

    Parameters: ``exposures`` of one movement. A set at a lighter resistance is no best; 0 where
    nothing counts.
    """
    return max(
        (done.value for one in exposures for done in one.sets if not is_easier(done, one)),
        default=0.0,
    )
