"""What stands against a coach's change of the plan, said before it is accepted."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts import capacity, draw_week
from bot.acts.checklist import local_today
from bot.acts.dose_today import dose_for, facts_for
from bot.acts.draw_week import Drafted
from bot.acts.pain_picture import picture_of
from bot.acts.plan_weeks import ComingDay, coming_days, item_of_slot, slot_of
from bot.acts.week_gathered import GatheredWeek, gathered_week
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.catalogue.values import Movement, Role
from scheduler.reasons import Reason, reason
from scheduler.sources import CP
from scheduler.training.coach_changes import AGAINST_STAGE, fits_place, obstacle_to
from scheduler.training.coach_doses import against, impossible
from scheduler.training.coach_plan import (
    CoachPlan,
    DayMove,
    DoseSet,
    ItemChange,
    Pin,
    PlanChange,
    PlanEntry,
    StandingSwap,
)
from scheduler.training.values import Quality
from scheduler.training.week_check import check_week
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import Breach, DayLetter, Slot, WeekRequest
from storage.records.people import Athlete, Person
from storage.records.training import SessionState

SAID_AS = {
    WeekReason.NOTHING_RESTED: WeekReason.RESTED_LOADED,
    WeekReason.NOTHING_OWNED: WeekReason.NOT_OWNED,
    WeekReason.NOTHING_PERMITTED: WeekReason.STAGE_FORBIDS,
}
"""The sentence about one movement for what stands against a whole place."""
WEEKS = 2  # [weeks] ch: this one and the next are judged, as they are shown


@dataclass(frozen=True)
class Against:
    """What was found: ``never`` cannot be overridden; ``change`` knows what overrides the stage."""

    change: PlanChange
    never: Reason | None
    reasons: tuple[Reason, ...]


class _Weeks:
    """The weeks as they stand, each drawn once for all that is looked at in them."""

    def __init__(self, turn: Turn, person: Person, athlete: Athlete) -> None:
        self._about = (turn, person, athlete)
        self._gathered: dict[date, GatheredWeek] = {}

    def on(self, monday: date) -> GatheredWeek:
        """Return what the week is drawn from."""
        if monday not in self._gathered:
            self._gathered[monday] = gathered_week(*self._about, monday=monday)
        return self._gathered[monday]


def found_against(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    change: PlanChange,
    *,
    is_whole: bool = True,
) -> Against:
    """Look at a change as it would be now: every entry by itself, then the weeks with it.

    Not ``is_whole``: only what can never be, as long as nobody reads the rest.
    """
    weeks = _Weeks(turn, person, athlete)
    reasons: list[Reason] = []
    added: list[PlanEntry] = []
    for entry in change.add:
        one = _look(turn, person, athlete, entry, weeks)
        if one.never is not None:
            return Against(change=change, never=one.never, reasons=())
        added.append(one.entry)
        reasons += one.reasons
    sure = PlanChange(remove=change.remove, add=tuple(added))
    if is_whole:
        reasons += _broken(turn, person, athlete, sure, weeks)
    return Against(change=sure, never=None, reasons=tuple(reasons))


def with_change(athlete: Athlete, change: PlanChange) -> Athlete:
    """Return the athlete as the change would leave them."""
    plan = change.done_to(athlete.profile.coach_plan)
    profile = athlete.profile.model_copy(update={"coach_plan": plan})
    return athlete.model_copy(update={"profile": profile})


@dataclass(frozen=True)
class _Looked:
    entry: PlanEntry
    never: Reason | None = None
    reasons: tuple[Reason, ...] = ()


def _look(turn: Turn, person: Person, athlete: Athlete, entry: PlanEntry, weeks: _Weeks) -> _Looked:
    match entry:
        case Pin() | ItemChange() | StandingSwap():
            return _look_at_movement(turn, person, athlete, entry, weeks)
        case DoseSet():
            return _look_at_dose(turn, person, athlete, entry)
        case DayMove():
            return _look_at_day(turn, person, athlete, entry)
    return _Looked(entry)


def _look_at_day(turn: Turn, person: Person, athlete: Athlete, entry: DayMove) -> _Looked:
    """A day moves only to one that is ahead and free, and only while nothing of it is sent."""
    days = {day.on: day for day in coming_days(turn, person, athlete)}
    moved = days.get(athlete.profile.coach_plan.day_after_moves(entry.on))
    is_open = moved is not None and moved.state is SessionState.PLANNED
    if is_open and entry.to > local_today(turn, person) and entry.to not in days:
        return _Looked(entry)
    why = reason(WeekReason.DAY_NOT_FREE, CP, on=entry.to.isoformat())
    return _Looked(entry, never=why)


def _look_at_movement(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    entry: Pin | ItemChange | StandingSwap,
    weeks: _Weeks,
) -> _Looked:
    movement = turn.house.library.movements[entry.movement_key]
    slot, request = _place_for(turn, person, athlete, entry, movement, weeks)
    if request is None:
        return _Looked(entry)
    library, rulebook = turn.house.library, turn.house.rulebook
    if not isinstance(entry, Pin) and not fits_place(movement, slot=slot, library=library):
        return _Looked(entry, never=_about(WeekReason.NOT_OF_THE_DIRECTION, movement, slot))
    code = obstacle_to(movement, slot=slot, request=request, library=library, rulebook=rulebook)
    if code is None:
        return _Looked(entry)
    if code not in AGAINST_STAGE:
        return _Looked(entry, never=_about(code, movement, slot, stage=athlete.stage))
    still = obstacle_to(
        movement, slot=slot, request=request, library=library, rulebook=rulebook, is_override=True
    )
    why = _about(code, movement, slot, stage=request.stage_for(slot.direction, movement.direction))
    if still is not None:
        return _Looked(entry, never=why)
    return _Looked(entry.model_copy(update={"is_override": True}), reasons=(why,))


def _place_for(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    entry: Pin | ItemChange | StandingSwap,
    movement: Movement,
    weeks: _Weeks,
) -> tuple[Slot, WeekRequest | None]:
    """Return the place that an entry is about, and what its week is drawn from."""
    today = local_today(turn, person)
    on = entry.on if isinstance(entry, ItemChange) else today
    request = weeks.on(monday_of(on)).request
    if isinstance(entry, ItemChange):
        found = _slot_on(coming_days(turn, person, athlete), entry)
        if found is not None:
            return found, request
    was = entry.movement_key if isinstance(entry, Pin) else entry.was
    known = turn.house.library.movements[was]
    direction = movement.direction if isinstance(entry, Pin) else known.direction
    slot = Slot(
        on=on,
        letter=DayLetter.A,
        position=1,
        pair=1 if known.role is Role.MAIN else None,
        direction=direction,
        movement_key=was,
        quality=Quality.MUSCULAR_ENDURANCE,
        sets=1,
    )
    return slot, request


def _slot_on(days: Sequence[ComingDay], entry: ItemChange) -> Slot | None:
    for day in days:
        for item in day.items:
            if (day.on, item.pair, item.direction) == (entry.on, entry.pair, entry.direction):
                return slot_of(day, item)
    return None


def _about(code: WeekReason, movement: Movement, slot: Slot, *, stage: int | None = None) -> Reason:
    figures = {"movement": movement.key, "direction": slot.direction.value}
    if stage is None:
        return reason(SAID_AS.get(code, code), CP, **figures)
    return reason(SAID_AS.get(code, code), CP, stage=stage, **figures)


def _look_at_dose(turn: Turn, person: Person, athlete: Athlete, entry: DoseSet) -> _Looked:
    movement = turn.house.library.movements[entry.movement_key]
    on = max(entry.from_on, local_today(turn, person))
    planned = [
        (day.on, item)
        for day in coming_days(turn, person, athlete)
        for item in day.items
        if item.movement_key == movement.key and day.on >= on and not item.is_reported
    ]
    day, item = planned[0] if planned else (on, item_of_slot(turn, _slot_for(movement, on)))
    facts = facts_for(turn, person, athlete, item, on=day, before=None)
    never = _rested(turn, athlete, movement) or impossible(entry, facts=facts)
    if never is not None:
        return _Looked(entry, never=never)
    plain = _without_dose(athlete, movement.key)
    decided = dose_for(turn, person, plain, item, on=day, is_projection=True).value
    done = capacity.seen(turn, person.id, movement, before=None).own
    found = against(entry, decided=decided, done=done, facts=facts, rulebook=turn.house.rulebook)
    return _Looked(entry, reasons=found)


def _rested(turn: Turn, athlete: Athlete, movement: Movement) -> Reason | None:
    if picture_of(turn, athlete).rested.arms_allowed(movement):
        return None
    return reason(WeekReason.RESTED_LOADED, CP, movement=movement.key)


def _slot_for(movement: Movement, on: date) -> Slot:
    return Slot(
        on=on,
        letter=DayLetter.A,
        position=1,
        pair=1 if movement.role is Role.MAIN else None,
        direction=movement.direction,
        movement_key=movement.key,
        quality=Quality.MUSCULAR_ENDURANCE,
        sets=3,
    )


def _without_dose(athlete: Athlete, key: str) -> Athlete:
    plan = athlete.profile.coach_plan
    kept = tuple(
        one for one in plan.entries if not (isinstance(one, DoseSet) and one.movement_key == key)
    )
    profile = athlete.profile.model_copy(update={"coach_plan": CoachPlan(entries=kept)})
    return athlete.model_copy(update={"profile": profile})


def _broken(
    turn: Turn, person: Person, athlete: Athlete, change: PlanChange, weeks: _Weeks
) -> Iterator[Reason]:
    """Yield what the weeks break with the change and did not break without it.

    What a week is drawn from is gathered once: of it only the coach's plan differs. Without a
    breach with the change there is nothing to compare, so the week as it stands is not drawn.
    """
    if all(isinstance(one, DoseSet) for one in (*change.add, *change.remove)):
        return
    today = local_today(turn, person)
    changed = with_change(athlete, change)
    for back in range(WEEKS):
        monday = monday_of(today) + timedelta(weeks=back)
        as_it_is = weeks.on(monday)
        after = draw_week.drafted(turn, person, changed, monday=monday, like=as_it_is)
        if not (broken := _breaches(turn, changed, after)):
            continue
        before = draw_week.drafted(turn, person, athlete, monday=monday, like=as_it_is)
        known = {_alike(one) for one in _breaches(turn, athlete, before)}
        yield from (one.why for one in broken if _alike(one) not in known)


def _breaches(turn: Turn, athlete: Athlete, week: Drafted) -> tuple[Breach, ...]:
    if week.request is None or not week.fresh:
        return ()
    told = {
        one.movement_key
        for one in athlete.profile.coach_plan.entries
        if isinstance(one, ItemChange | StandingSwap) and one.is_override
    }
    request = week.request.model_copy(
        update={"allowed_by_coach": week.request.allowed_by_coach | told}
    )
    return check_week(
        week.draft, request=request, library=turn.house.library, rulebook=turn.house.rulebook
    )


def _alike(one: Breach) -> tuple[object, ...]:
    """Return what two breaches share that are the same one with other figures."""
    named = {key: value for key, value in one.why.figures.items() if isinstance(value, str)}
    return (one.invariant, one.why.code, tuple(sorted(named.items())))
