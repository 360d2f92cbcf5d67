"""Choose the movement for one place of the week."""

from collections.abc import Sequence

from scheduler.catalogue.values import Arm, Chain, Movement, Tempo
from scheduler.reasons import Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.week_in_use import Cell, in_use_for, is_to_change
from scheduler.training.week_places import Choice, Pick, Place
from scheduler.training.week_qualities import quality_of
from scheduler.training.week_ranking import best_of
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import BOTH_ARMS, MovementInUse


def choose(place: Place, *, shelf: Shelf, taken: Sequence[Pick]) -> Choice:
    """Choose for a place from its own cell, else the other arm, else the other chain.

    The other arm comes before the other chain, since a week needs both chains while the stage's
    share of straight-arm work is only ever helped by a straight arm (CH).
    """
    for cell in _cells_in_order(place):
        choice = choose_in_cell(place, cell=cell, shelf=shelf, taken=taken)
        if choice.pick is not None:
            return _with_cell_reason(choice, place=place, cell=cell)
    return Choice(pick=None, reasons=(_nothing(place, shelf=shelf),))


def choose_in_cell(place: Place, *, cell: Cell, shelf: Shelf, taken: Sequence[Pick]) -> Choice:
    """Choose a movement of one cell: the one in use where it may stay, else the best other."""
    offered = [
        movement
        for movement in shelf.in_cell(place.direction, *cell)
        if (movement.tempo is Tempo.DYNAMIC) is place.wants_dynamic
    ]
    fitting = [
        movement
        for movement in offered
        if shelf.obstacle(movement, direction=place.direction, on=place.on) is None
    ]
    if not fitting:
        return Choice(pick=None)
    pinned = [movement for movement in fitting if movement.key in shelf.request.pinned]
    if pinned:
        best = best_of(pinned, place=place, shelf=shelf, taken=taken)
        return Choice(pick=_pick(best, place=place, shelf=shelf, taken=taken))
    in_use = in_use_for(place, cell=cell, shelf=shelf, is_dynamic=place.wants_dynamic)
    if in_use is None:
        return _fresh(fitting, place=place, shelf=shelf, taken=taken)
    return _from_use(in_use, fitting=fitting, place=place, shelf=shelf, taken=taken)


def _cells_in_order(place: Place) -> tuple[Cell, ...]:
    other_chain = Chain.CLOSED if place.chain is Chain.OPEN else Chain.OPEN
    other_arm = Arm.STRAIGHT if place.arm is Arm.BENT else Arm.BENT
    return (
        (place.chain, place.arm),
        (place.chain, other_arm),
        (other_chain, place.arm),
        (other_chain, other_arm),
    )


def _from_use(
    in_use: MovementInUse,
    *,
    fitting: Sequence[Movement],
    place: Place,
    shelf: Shelf,
    taken: Sequence[Pick],
) -> Choice:
    """Keep the movement in use, step down its ladder, or change it, as its weeks allow."""
    current = shelf.movement(in_use.movement_key)
    if current is None:
        return _fresh(fitting, place=place, shelf=shelf, taken=taken)
    if current not in fitting:
        return _instead_of(current, fitting=fitting, place=place, shelf=shelf, taken=taken)
    ladder = shelf.ladder_of(current)
    others = [movement for movement in fitting if movement.key not in ladder]
    if others and is_to_change(in_use, others=others, shelf=shelf):
        return _fresh(others, place=place, shelf=shelf, taken=taken)
    if shelf.is_eased(current, direction=place.direction):
        return _eased(current, fitting=fitting, place=place, shelf=shelf, taken=taken)
    return Choice(pick=_pick(current, place=place, shelf=shelf, taken=taken))


def _instead_of(
    current: Movement,
    *,
    fitting: Sequence[Movement],
    place: Place,
    shelf: Shelf,
    taken: Sequence[Pick],
) -> Choice:
    """Replace a movement that may not be done: the easier neighbour first, else another one.

    A harder neighbour comes only where the cell has nothing else.
    """
    obstacle = shelf.obstacle(current, direction=place.direction, on=place.on)
    code = WeekReason.NOTHING_PERMITTED if obstacle is None else obstacle
    below = [m for m in shelf.easier_than(current, direction=place.direction) if m in fitting]
    if below:
        swap = _swap(WeekReason.RESTED_TO_NEIGHBOUR, current, below[0], place=place, of=code)
        return Choice(pick=_pick(below[0], place=place, shelf=shelf, taken=taken), reasons=(swap,))
    ladder = shelf.ladder_of(current)
    others = [movement for movement in fitting if movement.key not in ladder]
    best = best_of(others or fitting, place=place, shelf=shelf, taken=taken)
    swap = _swap(WeekReason.OTHER_MOVEMENT, current, best, place=place, of=code)
    return Choice(pick=_pick(best, place=place, shelf=shelf, taken=taken), reasons=(swap,))


def _eased(
    current: Movement,
    *,
    fitting: Sequence[Movement],
    place: Place,
    shelf: Shelf,
    taken: Sequence[Pick],
) -> Choice:
    """Step down the ladder for a region that is eased; without a step the dose gives way (CP)."""
    for below in shelf.easier_than(current, direction=place.direction):
        if below in fitting:
            swap = _swap(WeekReason.EASED_TO_NEIGHBOUR, current, below, place=place)
            pick = _pick(below, place=place, shelf=shelf, taken=taken)
            return Choice(pick=pick, reasons=(swap,))
    stays = _swap(WeekReason.EASED_STAYS, current, current, place=place)
    pick = _pick(current, place=place, shelf=shelf, taken=taken)
    return Choice(pick=pick, reasons=(stays,))


def _fresh(
    fitting: Sequence[Movement], *, place: Place, shelf: Shelf, taken: Sequence[Pick]
) -> Choice:
    best = best_of(fitting, place=place, shelf=shelf, taken=taken)
    return Choice(pick=_pick(best, place=place, shelf=shelf, taken=taken))


def _pick(movement: Movement, *, place: Place, shelf: Shelf, taken: Sequence[Pick]) -> Pick:
    return Pick(
        place=place,
        movement=movement,
        arms=shelf.arms(movement, direction=place.direction),
        quality=quality_of(movement, place=place, shelf=shelf, taken=taken),
    )


def _with_cell_reason(choice: Choice, *, place: Place, cell: Cell) -> Choice:
    """Say that one arm rests, or that the place was filled from another cell than it wanted."""
    found: list[Reason] = []
    pick = choice.pick
    if pick is not None and pick.arms != BOTH_ARMS:
        found.append(_about(WeekReason.ONE_ARM_ONLY, place, movement=pick.movement.key))
    if pick is not None and cell[0] is not place.chain:
        found.append(_about(WeekReason.OTHER_CHAIN, place, movement=pick.movement.key))
    elif pick is not None and cell[1] is not place.arm:
        found.append(_about(WeekReason.OTHER_ARM, place, movement=pick.movement.key))
    return Choice(pick=pick, reasons=(*choice.reasons, *found))


def _nothing(place: Place, *, shelf: Shelf) -> Reason:
    """Say why nothing fills a place: what is rested, what is not owned, or what is permitted."""
    obstacles = {
        shelf.obstacle(movement, direction=place.direction, on=place.on)
        for chain, arm in _cells_in_order(place)
        for movement in shelf.in_cell(place.direction, chain, arm)
    }
    for code in (
        WeekReason.NOTHING_RESTED,
        WeekReason.NOTHING_OWNED,
        WeekReason.HANG_AFTER_HARD_PULLING,
        WeekReason.BANNED,
        WeekReason.INVERTED,
        WeekReason.NOT_YET,
    ):
        if code in obstacles:
            return _about(code, place)
    return _about(WeekReason.NOTHING_PERMITTED, place)


def _about(code: WeekReason, place: Place, **figures: str) -> Reason:
    return reason(code, CH, on=place.on.isoformat(), direction=place.direction.value, **figures)


def _swap(
    code: WeekReason,
    current: Movement,
    to: Movement,
    *,
    place: Place,
    of: WeekReason | None = None,
) -> Reason:
    figures = {"because": of.value} if of is not None else {}
    return reason(
        code,
        CP,
        on=place.on.isoformat(),
        direction=place.direction.value,
        movement=current.key,
        to=to.key,
        **figures,
    )
