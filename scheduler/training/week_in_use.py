"""How long movements stay in their place of the week."""

from collections.abc import Sequence

from scheduler.catalogue.values import Arm, Chain, Movement, Tempo
from scheduler.reasons import reason
from scheduler.training.week_places import Pick, Place
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import MovementInUse, Relaxation, Relaxed

Cell = tuple[Chain, Arm]


def in_use_for(place: Place, *, cell: Cell, shelf: Shelf, is_dynamic: bool) -> MovementInUse | None:
    """Return the movement last used in this kind of place, or None when there is none yet."""
    entries = [
        entry
        for entry in shelf.request.history
        if (entry.pair, entry.direction, entry.chain, entry.arm)
        == (place.pair, place.direction, *cell)
        and (movement := shelf.movement(entry.movement_key)) is not None
        and (movement.tempo is Tempo.DYNAMIC) is is_dynamic
    ]
    return max(entries, key=lambda entry: (entry.last_used_on, entry.movement_key), default=None)


def is_to_change(in_use: MovementInUse, *, others: Sequence[Movement], shelf: Shelf) -> bool:
    """Tell whether a movement's weeks are over, or may be and another one is still wanted."""
    stay = shelf.rulebook.weeks.stay
    wanted = shelf.request.wanted
    if in_use.pair == 1:
        is_over = in_use.weeks >= stay.first_pair_most.whole and in_use.movement_key not in wanted
        may_end = in_use.weeks >= stay.first_pair_least.whole
    else:
        is_long = stay.second_pair.most is not None and in_use.weeks >= stay.second_pair.most
        is_over = is_long and in_use.movement_key not in wanted
        may_end = in_use.weeks >= stay.second_pair.least
    other_is_wanted = in_use.movement_key not in wanted and any(o.key in wanted for o in others)
    return is_over or (may_end and other_is_wanted)


def stays_not_kept(picks: Sequence[Pick], *, shelf: Shelf) -> tuple[Relaxation, ...]:
    """Return where a movement left its place too early, or stayed since there is no other.

    A step along the ladder is no change; what a coach pinned is the coach's own.
    """
    gone: list[Relaxation] = []
    for pick in picks:
        if pick.place.pair is None or pick.movement.key in shelf.request.pinned:
            continue
        cell = (pick.movement.chain, pick.movement.arm)
        in_use = in_use_for(pick.place, cell=cell, shelf=shelf, is_dynamic=pick.is_dynamic)
        current = shelf.movement(in_use.movement_key) if in_use is not None else None
        if in_use is None or current is None:
            continue
        stay = shelf.rulebook.weeks.stay
        least = stay.first_pair_least.value if in_use.pair == 1 else stay.second_pair.least
        is_kept = in_use.pair == 1 or pick.movement.key in shelf.request.wanted
        most = None if is_kept else stay.second_pair.most
        is_same = pick.movement.key in shelf.ladder_of(current)
        if not is_same and in_use.weeks < least:
            gone.append(_stay(WeekReason.CHANGED_EARLY, in_use, pick=pick, shelf=shelf))
        elif is_same and most is not None and in_use.weeks >= most:
            gone.append(_stay(WeekReason.NO_OTHER_MOVEMENT, in_use, pick=pick, shelf=shelf))
    return tuple(gone)


def _stay(code: WeekReason, in_use: MovementInUse, *, pick: Pick, shelf: Shelf) -> Relaxation:
    current = shelf.movement(in_use.movement_key)
    obstacle = (
        shelf.obstacle(current, direction=pick.place.direction, on=pick.place.on)
        if current is not None
        else None
    )
    why = reason(
        code,
        shelf.rulebook.weeks.stay.second_pair.source,
        on=pick.place.on.isoformat(),
        direction=pick.place.direction.value,
        movement=in_use.movement_key,
        to=pick.movement.key,
        weeks=in_use.weeks,
        **({"because": obstacle.value} if obstacle is not None else {}),
    )
    return Relaxation(what=Relaxed.STAY, why=why)
