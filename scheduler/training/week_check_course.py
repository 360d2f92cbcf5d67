"""Judge a week as one of many: movements that stay, directions that come round."""

from collections import Counter
from collections.abc import Iterator

from scheduler.catalogue.values import Direction, Tempo
from scheduler.training.week_judged import JudgedWeek, breach, figures_of
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import ladder_of
from scheduler.training.week_values import Breach, Invariant, MovementInUse, Slot


def movements_stay(week: JudgedWeek) -> Iterator[Breach]:
    """6: movements stay their weeks in their place; a step along the ladder is no change.

    What the coach pinned is the coach's own, and what a standard still asks for stays.
    """
    for slot in week.judged:
        if not slot.is_main or slot.movement_key in week.request.pinned:
            continue
        current = _in_use_in_place_of(slot, week)
        if current is None:
            continue
        stay = week.rulebook.weeks.stay
        least = stay.first_pair_least.value if slot.pair == 1 else stay.second_pair.least
        is_kept = slot.pair == 1 or slot.movement_key in week.request.wanted
        most = None if is_kept else stay.second_pair.most
        ladder = ladder_of(week.movements[current.movement_key], week.movements)
        if slot.movement_key not in ladder and current.weeks < least:
            yield _stay_breach(WeekReason.CHANGED_EARLY, slot, weeks=current.weeks)
        if slot.movement_key in ladder and most is not None and current.weeks >= most:
            yield _stay_breach(WeekReason.STAYED_TOO_LONG, slot, weeks=current.weeks)


def _in_use_in_place_of(slot: Slot, week: JudgedWeek) -> MovementInUse | None:
    movement = week.of(slot)
    place = (slot.pair, slot.direction, movement.chain, movement.arm)
    is_dynamic = movement.tempo is Tempo.DYNAMIC
    entries = sorted(
        (
            entry
            for entry in week.request.history
            if (entry.pair, entry.direction, entry.chain, entry.arm) == place
            and entry.movement_key in week.movements
            and (week.movements[entry.movement_key].tempo is Tempo.DYNAMIC) is is_dynamic
        ),
        key=lambda entry: (entry.last_used_on, entry.movement_key),
    )
    return entries[-1] if entries else None


def _stay_breach(code: WeekReason, slot: Slot, *, weeks: int) -> Breach:
    return breach(Invariant.STAY, code, weeks=weeks, **figures_of(slot))


def directions_come_round(week: JudgedWeek) -> Iterator[Breach]:
    """7: each direction as often as its days come round."""
    request, rules = week.request, week.rulebook.weeks
    days = len(request.weekdays) or request.days_a_week
    due: Counter[Direction] = Counter(dict.fromkeys(Direction, rules.exposures_a_week.whole))
    if days < len(rules.days):
        letters = [day.letter for day in rules.days]
        start = letters.index(request.next_letter)
        due = Counter(
            direction
            for turn in range(days)
            for row in rules.day(letters[(start + turn) % len(letters)]).pairs
            for direction in (row.push, row.push.partner)
        )
    trained = Counter(slot.direction for slot in week.main)
    for direction, wanted in due.items():
        if trained[direction] < wanted:
            yield breach(
                Invariant.FREQUENCY,
                WeekReason.TOO_FEW_EXPOSURES,
                direction=direction.value,
                exposures=trained[direction],
                exposures_due=wanted,
            )
