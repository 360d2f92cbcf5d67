"""Bests: like is compared with like, a movement with itself at the same resistance."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import inf

from bot.acts.item_facts import sent_items
from bot.turn import Turn
from bot.wording import changes
from bot.wording.tongue import Tongue
from scheduler.training.exposure_reading import best_value
from scheduler.training.values import Dose, Exposure, Rung, SetDone
from storage.queries import history, people
from storage.queries.history import BestSet
from storage.records.training import SessionRecord

COMPARED = timedelta(weeks=52)  # [weeks] ch: a best of the year is one; years back nobody asks
A_DAY = timedelta(days=1)


@dataclass(frozen=True)
class Best:
    """A line about one movement, and how much more it was than before [ratio, above 1]."""

    line: str
    gain: float


def bests_of_session(turn: Turn, tongue: Tongue, session: SessionRecord) -> list[str]:
    """Name each item of a session in which more was done than in the year before it."""
    items = [item for item in sent_items(session) if item.sets]
    done = [one for item in items if (one := item.exposure(session.on)) is not None]
    before = session.on
    return [best.line for best in _bests(turn, tongue, session.athlete_id, done, before=before)]


def bests_between(
    turn: Turn, tongue: Tongue, athlete_id: int, *, first: date, last: date
) -> list[Best]:
    """Return each movement whose longest set fell into the span, the largest gain first."""
    done = history.all_exposures(turn.tx, athlete_id, since=first, before=last + A_DAY)
    found = _bests(turn, tongue, athlete_id, done, before=first)
    return sorted(found, key=lambda one: -one.gain)


def _bests(
    turn: Turn, tongue: Tongue, athlete_id: int, done: Sequence[Exposure], *, before: date
) -> list[Best]:
    """Find what beats all that was done in the year before a day."""
    library, since = turn.house.library.movements, before - COMPARED
    keys = sorted({one.dose.movement_key for one in done} & library.keys())
    if not keys:
        return []
    earlier = history.best_sets(turn.tx, athlete_id, keys, since=since, before=before)
    athlete = people.athlete(turn.tx, athlete_id)
    began_on = athlete.started_on if athlete is not None else None
    found = []
    for alike in _alike(done).values():
        now, was = best_value(alike), _best_before(alike[-1].dose, earlier)
        if was is None or now <= was:
            continue
        line = changes.best_line(
            tongue,
            library[alike[-1].dose.movement_key],
            now=now,
            before=was,
            is_of_year=began_on is not None and began_on < since,
        )
        found.append(Best(line, now / was if was else inf))
    return found


def _best_before(dose: Dose, earlier: Sequence[BestSet]) -> float | None:
    """Return the best at a dose's resistance or more; None where it was never asked before."""
    alike = [
        SetDone(value=one.value, rung=one.taken)
        for one in earlier
        if (one.movement_key, one.planned) == (dose.movement_key, dose.rung)
    ]
    if not alike:
        return None
    return best_value([Exposure(on=date.min, dose=dose, sets=tuple(alike))])


def _alike(exposures: Sequence[Exposure]) -> dict[tuple[str, Rung], list[Exposure]]:
    found: dict[tuple[str, Rung], list[Exposure]] = {}
    for one in exposures:
        found.setdefault((one.dose.movement_key, one.dose.rung), []).append(one)
    return found
