"""What an athlete types after a session, chosen so that what was recorded can be compared."""

import random
from dataclasses import dataclass

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Sides
from scheduler.pain.values import Side
from storage.records.training import ItemRecord, SessionRecord

SHORTFALLS = (0, 0, 0, 1, 2)  # [repetitions or seconds] ch: near the plan, so that nothing is asked

SetSeen = tuple[int, str, float]
"""The number of a set, its side, and its value: what a database must say of it afterwards."""


@dataclass(frozen=True)
class Typed:
    """One line that an athlete types, and the sets that it reports."""

    item_id: int
    text: str
    sets: tuple[SetSeen, ...]


def typed_results(
    session: SessionRecord, library: Library, chance: random.Random
) -> tuple[Typed, ...]:
    """Return a line for each item that was sent, in an order of the athlete's own."""
    sent = [item for item in session.items if item.dose is not None]
    lines = [
        _line(number, item, library.movements[item.movement_key].sides, chance)
        for number, item in enumerate(sent, start=1)
        if not item.is_left_out
    ]
    chance.shuffle(lines)
    return tuple(lines)


def sets_seen(item: ItemRecord) -> tuple[SetSeen, ...]:
    """Return what the database says of an item, in the same form."""
    return tuple(
        sorted((one.number, one.done.side.value, float(one.done.value)) for one in item.sets)
    )


def _line(number: int, item: ItemRecord, sides: Sides, chance: random.Random) -> Typed:
    if item.dose is None:  # pragma: no cover - only sent items come here
        raise ValueError("the item has not been sent")
    arms = (Side.LEFT, Side.RIGHT) if sides is Sides.EACH else (Side.BOTH,)
    sets: list[SetSeen] = []
    parts = []
    for arm in arms:
        values = [_near(item.dose.target, chance) for _ in range(item.dose.sets)]
        sets += [(place, arm.value, value) for place, value in enumerate(values, start=1)]
        figures = " ".join(f"{value:g}" for value in values)
        parts.append(figures if arm is Side.BOTH else f"{arm.value[0].upper()} {figures}")
    return Typed(item.id, f"{number}) {' '.join(parts)}", tuple(sorted(sets)))


def _near(target: float, chance: random.Random) -> float:
    return max(1.0, float(target) - chance.choice(SHORTFALLS))
