"""Which movement each place of the week belongs to, told from what was trained there."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Arm, Chain, Direction, Movement, Tempo
from scheduler.pain.values import LeftOut
from scheduler.training.values import Neighbour
from scheduler.training.week_shelf import arms_without
from scheduler.training.week_values import BOTH_ARMS, MovementInUse

DAYS_A_WEEK = 7  # [days] by definition


class PlaceUsed(BaseModel):
    """One main movement of one past session, in its place; ``asked`` is what its dose asked."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    on: date
    pair: int = Field(ge=1, le=2)
    direction: Direction
    movement_key: str
    asked: Neighbour = Neighbour.STAY


@dataclass(frozen=True)
class _Held:
    """A place: what it belongs to, what is asked of its ladder, what was done there last."""

    own: Movement
    asked: Neighbour
    last: Movement
    since: date
    last_on: date


Place = tuple[int, Direction, Chain, Arm, bool]


def movements_in_use(
    used: Iterable[PlaceUsed],
    *,
    week_start: date,
    library: Library,
    eased: LeftOut,
    no_step: LeftOut,
) -> tuple[MovementInUse, ...]:
    """Return what each place of the week belongs to before the week of ``week_start``.

    A movement that stood in for a while, since the place's own was eased or left out, does not
    take the place over: an easier neighbour that no dose asked for is such a stand-in. So an eased
    place is one rung down for as long as the ease lasts, and comes back to its own movement.

    Parameters
    ----------
    used: the main movements of past sessions; those from ``week_start`` on are passed over.
    eased: what is eased now.
    no_step: what nothing harder may come into now, ``eased`` included; a place whose stand-in
        may not be left yet keeps it.

    """
    held: dict[Place, _Held] = {}
    for one in sorted(used, key=lambda one: one.on):
        movement = library.movements.get(one.movement_key)
        if movement is None or one.on >= week_start:
            continue
        is_dynamic = movement.tempo is Tempo.DYNAMIC
        place = (one.pair, one.direction, movement.chain, movement.arm, is_dynamic)
        held[place] = _after(held.get(place), one, movement=movement, library=library)
    return tuple(
        MovementInUse(
            pair=pair,
            direction=direction,
            chain=chain,
            arm=arm,
            movement_key=_next(
                place, direction=direction, eased=eased, no_step=no_step, library=library
            ),
            weeks=max(0, (week_start - place.since).days // DAYS_A_WEEK),
            last_used_on=place.last_on,
        )
        for (pair, direction, chain, arm, _), place in held.items()
    )


def is_swapped(
    movement_key: str,
    *,
    pair: int | None,
    direction: Direction,
    history: Sequence[MovementInUse],
    library: Library,
) -> bool:
    """Tell whether a movement of a week is already the easier one of what its place belongs to.

    ``history`` is what the week was drawn from (:func:`movements_in_use`).
    """
    movement = library.movements.get(movement_key)
    own = [
        library.movements[entry.movement_key]
        for entry in history
        if (entry.pair, entry.direction) == (pair, direction)
        and entry.movement_key in library.movements
    ]
    return movement is not None and any(_is_below(movement, one, library=library) for one in own)


def _after(before: _Held | None, one: PlaceUsed, *, movement: Movement, library: Library) -> _Held:
    """Return the place after one more session."""
    is_new = before is None or before.own.family != movement.family
    since = one.on if before is None or is_new else before.since
    own, asked = movement, one.asked
    if before is not None and not is_new:
        meant = _step(before.own, before.asked, library=library)
        if movement != meant and _is_below(movement, before.own, library=library):
            down = before.asked is Neighbour.EASIER
            own = meant if down else before.own
            asked = one.asked if one.asked is Neighbour.EASIER else Neighbour.STAY
    return _Held(own=own, asked=asked, last=movement, since=since, last_on=one.on)


def _next(
    place: _Held, *, direction: Direction, eased: LeftOut, no_step: LeftOut, library: Library
) -> str:
    """Return the movement to draw from: nothing harder comes in while what it loads hurts."""
    meant = _step(place.own, place.asked, library=library)
    if place.asked is Neighbour.HARDER and _loads(no_step | eased, meant, direction=direction):
        meant = place.own
    is_standing_in = _is_below(place.last, meant, library=library)
    if is_standing_in and not _loads(eased, meant, direction=direction):
        is_too_early = _loads(no_step, meant, direction=direction)
        is_step_asked = meant != place.own
        return place.last.key if is_too_early and not is_step_asked else meant.key
    return meant.key


def _step(movement: Movement, asked: Neighbour, *, library: Library) -> Movement:
    neighbours = {
        Neighbour.STAY: None,
        Neighbour.EASIER: library.easier_of(movement),
        Neighbour.HARDER: library.harder_of(movement),
    }
    return neighbours[asked] or movement


def _is_below(movement: Movement, other: Movement, *, library: Library) -> bool:
    """Tell whether a movement is an easier rung of the other's ladder."""
    below = library.easier_of(other)
    while below is not None:
        if below.key == movement.key:
            return True
        below = library.easier_of(below)
    return False


def _loads(left_out: LeftOut, movement: Movement, *, direction: Direction) -> bool:
    return arms_without(left_out, movement, direction) != BOTH_ARMS
