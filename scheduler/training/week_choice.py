"""Choose the movement for one place of the week."""

from collections.abc import Sequence

from scheduler.catalogue.values import Arm, Chain, Joint, Loading, Measure, Movement, Tempo
from scheduler.reasons import Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.permissions import Slot as PlaceInStage
from scheduler.training.permissions import quality_for
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Quality
from scheduler.training.week_places import HARD, SPACED, Choice, Pick, Place
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import BOTH_ARMS, MovementInUse, Relaxation, Relaxed

Cell = tuple[Chain, Arm]


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
        if _suits(movement, place=place, shelf=shelf)
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
        best = _best(pinned, place=place, shelf=shelf, taken=taken)
        return Choice(pick=_pick(best, place=place, shelf=shelf, taken=taken))
    in_use = in_use_for(place, cell=cell, shelf=shelf)
    if in_use is None:
        return _fresh(fitting, place=place, shelf=shelf, taken=taken)
    return _from_use(in_use, fitting=fitting, place=place, shelf=shelf, taken=taken)


def in_use_for(place: Place, *, cell: Cell, shelf: Shelf) -> MovementInUse | None:
    """Return the movement last used in this kind of place, or None when there is none yet."""
    entries = [
        entry
        for entry in shelf.request.history
        if (entry.pair, entry.direction, entry.chain, entry.arm)
        == (place.pair, place.direction, *cell)
        and (movement := shelf.movement(entry.movement_key)) is not None
        and (movement.tempo is Tempo.DYNAMIC) is place.wants_dynamic
    ]
    return max(entries, key=lambda entry: (entry.last_used_on, entry.movement_key), default=None)


def _cells_in_order(place: Place) -> tuple[Cell, ...]:
    other_chain = Chain.CLOSED if place.chain is Chain.OPEN else Chain.OPEN
    other_arm = Arm.STRAIGHT if place.arm is Arm.BENT else Arm.BENT
    return (
        (place.chain, place.arm),
        (place.chain, other_arm),
        (other_chain, place.arm),
        (other_chain, other_arm),
    )


def _suits(movement: Movement, *, place: Place, shelf: Shelf) -> bool:
    """Tell whether a movement has the tempo of the place, and no bent arm where held back."""
    if (movement.tempo is Tempo.DYNAMIC) is not place.wants_dynamic:
        return False
    held = shelf.request.stage_for(place.direction, movement.direction) < shelf.request.stage
    return not (held and movement.arm is Arm.BENT)


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
        return _instead_of(
            current, in_use=in_use, fitting=fitting, place=place, shelf=shelf, taken=taken
        )
    ladder = shelf.ladder_of(current)
    others = [movement for movement in fitting if movement.key not in ladder]
    if others and _is_to_change(in_use, others=others, shelf=shelf):
        return _fresh(others, place=place, shelf=shelf, taken=taken)
    relaxations = _stayed_too_long(in_use, rulebook=shelf.rulebook)
    if shelf.is_eased(current, direction=place.direction) and not in_use.is_swapped:
        return _eased(current, fitting=fitting, place=place, shelf=shelf, taken=taken)
    pick = _pick(current, place=place, shelf=shelf, taken=taken)
    return Choice(pick=pick, relaxations=relaxations)


def _is_to_change(in_use: MovementInUse, *, others: Sequence[Movement], shelf: Shelf) -> bool:
    """Tell whether a movement's weeks are over, or may be and another one is still wanted."""
    stay = shelf.rulebook.weeks.stay
    wanted = shelf.request.wanted
    if in_use.pair == 1:
        is_over = in_use.weeks >= stay.first_pair_most.whole and in_use.movement_key not in wanted
        may_end = in_use.weeks >= stay.first_pair_least.whole
    else:
        is_over = stay.second_pair.most is not None and in_use.weeks >= stay.second_pair.most
        may_end = in_use.weeks >= stay.second_pair.least
    other_is_wanted = in_use.movement_key not in wanted and any(o.key in wanted for o in others)
    return is_over or (may_end and other_is_wanted)


def _stayed_too_long(in_use: MovementInUse, *, rulebook: Rulebook) -> tuple[Relaxation, ...]:
    most = rulebook.weeks.stay.second_pair.most
    if in_use.pair == 1 or most is None or in_use.weeks < most:
        return ()
    why = reason(
        WeekReason.NO_OTHER_MOVEMENT,
        rulebook.weeks.stay.second_pair.source,
        movement=in_use.movement_key,
        direction=in_use.direction.value,
        weeks=in_use.weeks,
        weeks_most=most,
    )
    return (Relaxation(what=Relaxed.STAY, why=why),)


def _instead_of(
    current: Movement,
    *,
    in_use: MovementInUse,
    fitting: Sequence[Movement],
    place: Place,
    shelf: Shelf,
    taken: Sequence[Pick],
) -> Choice:
    """Replace a movement that may not be done: the easier neighbour first, else another one."""
    obstacle = shelf.obstacle(current, direction=place.direction, on=place.on)
    code = WeekReason.NOTHING_PERMITTED if obstacle is None else obstacle
    for below in shelf.easier_than(current, direction=place.direction):
        if below in fitting:
            found = _swap(WeekReason.RESTED_TO_NEIGHBOUR, current, below, place=place, of=code)
            pick = _pick(below, place=place, shelf=shelf, taken=taken)
            return Choice(
                pick=pick, reasons=(found,), relaxations=_stayed_too_long_in(in_use, shelf)
            )
    best = _best(fitting, place=place, shelf=shelf, taken=taken)
    swap = _swap(WeekReason.OTHER_MOVEMENT, current, best, place=place, of=code)
    pick = _pick(best, place=place, shelf=shelf, taken=taken)
    if best.key in shelf.ladder_of(current):
        return Choice(pick=pick, reasons=(swap,), relaxations=_stayed_too_long_in(in_use, shelf))
    return Choice(
        pick=pick,
        reasons=(swap,),
        relaxations=_changed_early(in_use, to=best, why=code, rulebook=shelf.rulebook),
    )


def _stayed_too_long_in(in_use: MovementInUse, shelf: Shelf) -> tuple[Relaxation, ...]:
    return _stayed_too_long(in_use, rulebook=shelf.rulebook)


def _changed_early(
    in_use: MovementInUse, *, to: Movement, why: WeekReason, rulebook: Rulebook
) -> tuple[Relaxation, ...]:
    stay = rulebook.weeks.stay
    least = stay.first_pair_least.value if in_use.pair == 1 else stay.second_pair.least
    if in_use.weeks >= least:
        return ()
    found = reason(
        WeekReason.CHANGED_EARLY,
        stay.first_pair_least.source,
        movement=in_use.movement_key,
        to=to.key,
        direction=in_use.direction.value,
        weeks=in_use.weeks,
        weeks_least=least,
        because=why.value,
    )
    return (Relaxation(what=Relaxed.STAY, why=found),)


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
    best = _best(fitting, place=place, shelf=shelf, taken=taken)
    return Choice(pick=_pick(best, place=place, shelf=shelf, taken=taken))


def _best(
    fitting: Sequence[Movement], *, place: Place, shelf: Shelf, taken: Sequence[Pick]
) -> Movement:
    """Return the movement that an attentive coach would take first (CP).

    Not what an eased region bears; what a standard or an event asks for; not a second movement
    that the grip ends on a beginner's day; not what the week has already; what belongs to this
    stage rather than an earlier one; what was not trained lately; the lowest rung.
    """
    request = shelf.request
    week = [pick.movement.key for pick in taken]
    last_used = {
        entry.movement_key: entry.last_used_on.toordinal()
        for entry in sorted(request.history, key=lambda entry: entry.last_used_on)
    }
    is_grip_spent = request.stage <= shelf.rulebook.weeks.grip_spared_to_stage.value and any(
        pick.place.on == place.on and pick.movement.limiting_joint is Joint.GRIP for pick in taken
    )

    def order(numbered: tuple[int, Movement]) -> tuple[float, ...]:
        number, movement = numbered
        return (
            shelf.is_eased(movement, direction=place.direction),
            is_grip_spent and movement.limiting_joint is Joint.GRIP,
            movement.key not in request.wanted,
            week.count(movement.key),
            -movement.least_stage,
            last_used.get(movement.key, 0),
            len(shelf.easier_than(movement, direction=place.direction)),
            number,
        )

    return min(enumerate(fitting), key=order)[1]


def _pick(movement: Movement, *, place: Place, shelf: Shelf, taken: Sequence[Pick]) -> Pick:
    return Pick(
        place=place,
        movement=movement,
        arms=shelf.arms(movement, direction=place.direction),
        quality=quality_of(movement, place=place, shelf=shelf, taken=taken),
    )


def quality_of(movement: Movement, *, place: Place, shelf: Shelf, taken: Sequence[Pick]) -> Quality:
    """Return what a movement trains in its place.

    In the stage where general strength begins, a movement whose load cannot be stepped (a
    push-up, a row under a bar) is trained for strength endurance: it gets harder by repetitions
    first (CH). Pulls without a free day to the next hard pulling, and a direction without one
    to its next maximal or repeated effort, take the hardest quality below.
    """
    request, rulebook = shelf.request, shelf.rulebook
    stage = request.stage_for(place.direction, movement.direction)
    gains_by_reps = (
        stage == rulebook.quality(Quality.GENERAL_STRENGTH).from_stage.whole
        and movement.loading is Loading.NONE
        and movement.measure is Measure.REPS
    )
    own = {place.direction, movement.direction}
    same = [pick for pick in taken if pick.directions & own]
    is_maximal_taken = any(pick.quality is Quality.MAXIMAL_STRENGTH for pick in same)
    in_stage = PlaceInStage(
        stage=stage,
        weeks_in_stage=request.stage_week - 1,
        is_first_pair=place.pair == 1 and not place.is_light and not gains_by_reps,
        is_maximal_taken=is_maximal_taken or _has_hard_neighbour(place, same, shelf=shelf),
    )
    quality = quality_for(movement, slot=in_stage, rulebook=rulebook).value
    if quality in HARD and not place.may_be_hard:
        return hardest_easy_quality(stage=stage, rulebook=rulebook)
    return quality


def hardest_easy_quality(*, stage: int, rulebook: Rulebook) -> Quality:
    """Return the hardest quality that a stage permits and that needs no free day around it."""
    permitted = rulebook.stage(stage).qualities
    if Quality.STRENGTH_ENDURANCE in permitted:
        return Quality.STRENGTH_ENDURANCE
    return Quality.MUSCULAR_ENDURANCE


def _has_hard_neighbour(place: Place, same: Sequence[Pick], *, shelf: Shelf) -> bool:
    gap = shelf.rulebook.weeks.free_days_between_hard.whole
    days = [pick.place.on for pick in same if pick.quality in SPACED]
    days += [hard.on for hard in shelf.request.hard_days if place.direction in hard.directions]
    return any(abs((place.on - day).days) <= gap for day in days)


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
    return Choice(pick=pick, reasons=(*choice.reasons, *found), relaxations=choice.relaxations)


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
