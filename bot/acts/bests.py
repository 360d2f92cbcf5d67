"""The bests of a span of days: like is compared with like, at the same resistance."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from math import inf

from bot.turn import Turn
from bot.wording import changes
from bot.wording.tongue import Tongue
from scheduler.training.exposure_reading import best_value
from scheduler.training.values import Exposure, Rung
from storage.queries import history


@dataclass(frozen=True)
class Best:
    """A line about one movement, and how much more it was than before [ratio, above 1]."""

    line: str
    gain: float


def bests_between(
    turn: Turn, tongue: Tongue, athlete_id: int, *, first: date, last: date
) -> list[Best]:
    """Return each movement whose longest set so far fell into the span, the largest gain first."""
    found = []
    for (key, _), exposures in _alike(history.all_exposures(turn.tx, athlete_id)).items():
        now = [one for one in exposures if first <= one.on <= last]
        before = [one for one in exposures if one.on < first]
        movement = turn.house.library.movements.get(key)
        if movement is None or not now or not before:
            continue
        best_now, best_before = best_value(now), best_value(before)
        if best_now > best_before:
            line = changes.best_line(tongue, movement, now=best_now, before=best_before)
            found.append(Best(line, best_now / best_before if best_before else inf))
    return sorted(found, key=lambda one: -one.gain)


def _alike(exposures: Sequence[Exposure]) -> dict[tuple[str, Rung], list[Exposure]]:
    found: dict[tuple[str, Rung], list[Exposure]] = {}
    for one in exposures:
        found.setdefault((one.dose.movement_key, one.dose.rung), []).append(one)
    return found
