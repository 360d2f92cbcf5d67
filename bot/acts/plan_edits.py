"""Changes out of the view of the coming weeks: another movement in a place, another day."""

from datetime import date, timedelta

from bot.acts.about_athlete import Arguments, about_tapped
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named
from bot.acts.plan_change import GO_ON, begin, replacing, request_of
from bot.acts.plan_weeks import ComingDay, coming_days, slot_of
from bot.acts.show_coming import DAY, MOVE, OTHER, about_item, item_in, put
from bot.acts.week_gathered import gathered_week
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_plan as words
from bot.wording.movement_names import name_of
from scheduler.calendar.wall_time import monday_of
from scheduler.catalogue.values import Movement
from scheduler.training.coach_changes import fits_place, obstacle_to
from scheduler.training.coach_plan import DayMove, ItemChange, PlanChange, PlanEntry
from storage.records.people import Person
from storage.records.training import ItemRecord, SessionState

PUT = "plan.put"
CHOICES_A_PAGE = 6  # [buttons] ch: more is a list, not a choice


def stand_ins(turn: Turn, named: Named, day: ComingDay, item: ItemRecord) -> tuple[Movement, ...]:
    """Return what may take a place as the stage and everything else stand: nearest kind first."""
    week = gathered_week(turn, named.person, named.athlete, monday=monday_of(day.on))
    request = week.request
    if request is None:
        return ()
    library, slot = turn.house.library, slot_of(day, item)
    now = library.movements[item.movement_key]
    taken = {one.movement_key for one in day.items}
    found = [
        other
        for other in library.movements.values()
        if other.key not in taken
        and fits_place(other, slot=slot, library=library)
        and obstacle_to(
            other, slot=slot, request=request, library=library, rulebook=turn.house.rulebook
        )
        is None
    ]
    return tuple(sorted(found, key=lambda other: (*_unlike(other, now), other.name)))


def _unlike(other: Movement, now: Movement) -> tuple[bool, bool, bool]:
    return (
        other.key not in {now.easier, now.harder},
        other.chain is not now.chain,
        other.arm is not now.arm,
    )


@about_tapped
def other(turn: Turn, coach: Person, named: Named, arguments: Arguments, event: Tapped) -> Outcome:
    """Offer what fits the place."""
    found = item_in(turn, coach, named, arguments)
    if isinstance(found, Outcome):
        return found
    day, item = found
    tongue, about = turn.tongue(coach), about_item(named, day, item)
    name = name_of(tongue, turn.house.library.movements[item.movement_key])
    choices = stand_ins(turn, named, day, item)
    first = int(arguments["page"]) * CHOICES_A_PAGE
    rows = [
        [Tap(words.name_label(tongue, name_of(tongue, one)), PUT, {**about, "to": one.key})]
        for one in choices[first : first + CHOICES_A_PAGE]
    ]
    last = [Tap(words.step_label(tongue, "to_day"), DAY, about)]
    if len(choices) > first + CHOICES_A_PAGE:
        more = {**about, "page": int(arguments["page"]) + 1}
        last.insert(0, Tap(words.step_label(tongue, "more"), OTHER, more))
    text = (
        words.which_instead(tongue, name=named.person.name, movement=name)
        if choices
        else words.nothing_fits(tongue, movement=name)
    )
    return put(turn, coach, named, text, taps=[*rows, last], message_id=event.message_id)


@about_tapped
def chosen(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """Another movement was chosen for a place."""
    found = item_in(turn, coach, named, arguments)
    if isinstance(found, Outcome):
        return found
    change = item_change(named, *found, to=str(arguments["to"]))
    return begin(turn, coach, named, change, why=str(arguments.get("why", "")))


def item_change(named: Named, day: ComingDay, item: ItemRecord, *, to: str) -> PlanChange:
    """Return the change that puts a movement into a place; what was drawn there is remembered."""
    plan = named.athlete.profile.coach_plan
    before = plan.item_change(on=day.on, pair=item.pair, direction=item.direction)
    is_changed = before is not None and before.movement_key == item.movement_key
    was = before.was if before is not None and is_changed else item.movement_key
    if before is not None and to == was:
        return PlanChange(remove=(before,))
    entry = ItemChange(
        on=day.on, pair=item.pair, direction=item.direction, was=was, movement_key=to
    )
    return replacing(named.athlete, [entry])


@about_tapped
def move(turn: Turn, coach: Person, named: Named, arguments: Arguments, event: Tapped) -> Outcome:
    """Offer the free days of the week."""
    on, tongue = date.fromisoformat(str(arguments["on"])), turn.tongue(coach)
    free = free_days(turn, named, on)
    rows = [[Tap(words.day_label(tongue, to), GO_ON, _move_request(named, on, to))] for to in free]
    back = Tap(
        words.step_label(tongue, "to_day"),
        DAY,
        {"athlete": named.person.id, "on": on.isoformat()},
    )
    text = words.which_day(tongue, on=on) if free else words.no_free_day(tongue, on=on)
    return put(turn, coach, named, text, taps=[*rows, [back]], message_id=event.message_id)


def free_days(turn: Turn, named: Named, on: date) -> tuple[date, ...]:
    """Return the days of the same week that a planned day may move to: ahead, and free."""
    days = {day.on: day for day in coming_days(turn, named.person, named.athlete)}
    today, monday = local_today(turn, named.person), monday_of(on)
    if on not in days or days[on].state is not SessionState.PLANNED:
        return ()
    week = [monday + timedelta(days=ahead) for ahead in range(7)]
    return tuple(to for to in week if to > today and to not in days)


def _move_request(named: Named, on: date, to: date) -> dict[str, object]:
    return {**request_of(named, day_change(named, on, to)), "why": ""}


def day_change(named: Named, on: date, to: date) -> PlanChange:
    """Return the change that moves a day: what was put into it moves along."""
    plan = named.athlete.profile.coach_plan
    earlier = next((one for one in plan.moves if one.to == on), None)
    usual = earlier.on if earlier is not None else on
    along = [one for one in plan.entries if isinstance(one, ItemChange) and one.on == on]
    gone: list[PlanEntry] = [*along, *([earlier] if earlier is not None else [])]
    new: list[PlanEntry] = [one.model_copy(update={"on": to}) for one in along]
    new += [DayMove(on=usual, to=to)] if usual != to else []
    return PlanChange(remove=tuple(gone), add=tuple(new))


TAPS = {OTHER: other, PUT: chosen, MOVE: move}
