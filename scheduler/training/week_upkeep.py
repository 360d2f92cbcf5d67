"""Upkeep: a little bent-arm work for who trains it elsewhere, while the stage has none."""

from collections.abc import Iterator, Sequence

from scheduler.catalogue.values import Arm, Chain, Direction, Joint, Movement, Role, Sides, Tempo
from scheduler.reasons import Reason, reason
from scheduler.sources import CH
from scheduler.training.week_accessories import extra_pick
from scheduler.training.week_days import PUSH_ORDER, DayPlan
from scheduler.training.week_fit import minutes_of
from scheduler.training.week_places import Pick
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import Shelf

Partners = tuple[Pick, ...]


def place_upkeep(
    days: Sequence[DayPlan], *, week: Sequence[Pick], kept: Sequence[Pick], shelf: Shelf
) -> tuple[tuple[Pick, ...], tuple[Reason, ...]]:
    """Add the week's upkeep: one slot a direction, push and partner pull on the same day (CH).

    Each pair of partners goes to the day with the least upkeep, then the most minutes to spare;
    it takes only what the day's other work leaves free, and is dropped where that is too little.
    A half that nothing may fill leaves the other alone. What was sent this week counts.
    """
    trained = {pick.place.on for pick in week}
    days = [day for day in days if day.on in trained]
    if not shelf.has_upkeep or not days:
        return (), ()
    upkeep: list[Pick] = []
    reasons: list[Reason] = []
    done = {pick.place.direction for pick in kept if pick.is_upkeep}
    for push in PUSH_ORDER:
        if done & {push, push.partner}:
            continue
        found, has_room = _best_day(push, days=days, week=(*week, *upkeep), shelf=shelf)
        upkeep += found
        reasons += _reasons(push, found=found, has_room=has_room)
    return tuple(upkeep), tuple(reasons)


def _best_day(
    push: Direction, *, days: Sequence[DayPlan], week: Sequence[Pick], shelf: Shelf
) -> tuple[Partners, bool]:
    """Return the partners on their best day; and whether minutes are not what is lacking."""
    best: Partners = ()
    is_possible = False
    for day in _emptiest_first(days, week=week, shelf=shelf):
        today = [pick for pick in week if pick.place.on == day.on]
        halves = tuple(_halves(push, day=day, week=week, shelf=shelf))
        is_possible = is_possible or bool(halves)
        minutes = minutes_of((*today, *halves), shelf=shelf)
        if len(halves) > len(best) and minutes <= shelf.request.session_min:
            best = halves
    return best, bool(best) or not is_possible


def _emptiest_first(
    days: Sequence[DayPlan], *, week: Sequence[Pick], shelf: Shelf
) -> list[DayPlan]:
    """Order the days by their upkeep so far, then by their minutes."""
    picks = {day.on: tuple(pick for pick in week if pick.place.on == day.on) for day in days}
    return sorted(
        days,
        key=lambda day: (
            sum(pick.is_upkeep for pick in picks[day.on]),
            minutes_of(picks[day.on], shelf=shelf),
            day.on,
        ),
    )


def _halves(push: Direction, *, day: DayPlan, week: Sequence[Pick], shelf: Shelf) -> Iterator[Pick]:
    """Yield the push and its partner pull, where something may be done for them."""
    sets = shelf.rulebook.stages.extras.upkeep_sets_a_week.whole
    for direction in (push, push.partner):
        fitting = [
            pick
            for movement in _offered(direction, day=day, shelf=shelf)
            if not _strains_new_pullers(
                pick := extra_pick(movement, day=day, sets=sets, shelf=shelf),
                week=week,
                shelf=shelf,
            )
        ]
        if fitting:
            yield min(fitting, key=lambda pick: _order(pick, week=week, shelf=shelf))


def _offered(direction: Direction, *, day: DayPlan, shelf: Shelf) -> list[Movement]:
    """Return the bent-arm movements of a direction that upkeep may take on a day.

    Nothing in a direction that an old injury holds at stage 1, nothing that loads an eased
    region, no stand-in: a direction is kept up by its own work.
    """
    if direction in shelf.request.held_at_stage_one:
        return []
    return [
        movement
        for chain in (Chain.OPEN, Chain.CLOSED)
        for movement in shelf.in_cell(direction, chain, Arm.BENT)
        if movement.direction is direction
        and movement.role is Role.MAIN
        and movement.tempo is not Tempo.DYNAMIC
        and not movement.is_unstable
        and not shelf.is_eased(movement, direction=direction)
        and shelf.obstacle(movement, direction=direction, on=day.on, is_upkeep=True) is None
    ]


def _order(pick: Pick, *, week: Sequence[Pick], shelf: Shelf) -> tuple[bool | int, ...]:
    """Prefer what is pinned, then what spares the grip, is new today, saves time, is easy (CH)."""
    movement = pick.movement
    return (
        movement.key not in shelf.request.pinned,
        movement.limiting_joint is Joint.GRIP,
        sum(other.movement.key == movement.key for other in week),
        movement.sides is Sides.EACH,
        len(shelf.easier_than(movement, direction=movement.direction)),
    )


def _strains_new_pullers(pick: Pick, *, week: Sequence[Pick], shelf: Shelf) -> bool:
    """Tell whether a first careful day of pulling for repetitions would exceed its sets (CH)."""
    if not pick.pulls_for_reps:
        return False
    pulls = [other for other in (*week, pick) if other.pulls_for_reps and not other.is_accessory]
    days = sorted({other.place.on for other in pulls})[: shelf.request.pull_exposures_to_go]
    most = shelf.rulebook.guards.pull_sets_most.whole
    return any(sum(other.sets for other in pulls if other.place.on == on) > most for on in days)


def _reasons(push: Direction, *, found: Partners, has_room: bool) -> Iterator[Reason]:
    placed = {pick.place.direction: pick for pick in found}
    for direction in (push, push.partner):
        pick = placed.get(direction)
        if pick is not None:
            yield reason(
                WeekReason.UPKEEP_PLACED,
                CH,
                on=pick.place.on.isoformat(),
                direction=direction.value,
                movement=pick.movement.key,
                sets=pick.sets,
            )
        else:
            code = WeekReason.UPKEEP_NOTHING_FITS if has_room else WeekReason.UPKEEP_NO_ROOM
            yield reason(code, CH, direction=direction.value)
