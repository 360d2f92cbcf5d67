"""A session that is out follows a coach's change at once, but for what is reported already."""

from bot.acts import pain_picture
from bot.acts.checklist import local_today
from bot.acts.dose_today import dose_for
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.plan_weeks import slot_of, stored_day
from bot.acts.week_gathered import gathered_week
from bot.turn import Turn
from bot.wording import doses
from bot.wording.movement_names import name_of
from scheduler.calendar.wall_time import monday_of
from scheduler.training.coach_changes import slot_with
from scheduler.training.coach_plan import DoseSet, ItemChange, PlanChange
from scheduler.training.values import Quality
from storage.queries import training
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord, SessionRecord


def follow(turn: Turn, person: Person, athlete: Athlete, change: PlanChange) -> list[str]:
    """Change what is out and open, and return its new lines in the athlete's words."""
    today = local_today(turn, person)
    lines = []
    for session in training.open_sessions(turn.tx, person.id)[:1]:
        if session.on != today:
            continue
        for item in sent_items(session):
            key = _key_for(item, session, change)
            if item.is_reported or key is None:
                continue
            line = _put(turn, person, athlete, session, item, key)
            lines += [line] if line else []
    return lines


def _key_for(item: ItemRecord, session: SessionRecord, change: PlanChange) -> str | None:
    """Return which movement the item is to be; None where the change is not about it."""
    for entry in (*change.add, *change.remove):
        if isinstance(entry, DoseSet) and entry.movement_key == item.movement_key:
            return item.movement_key
    for entry in change.add:
        if isinstance(entry, ItemChange) and _is_place(entry, item, session):
            return entry.movement_key
    for entry in change.remove:
        is_there = isinstance(entry, ItemChange) and entry.movement_key == item.movement_key
        if isinstance(entry, ItemChange) and is_there and _is_place(entry, item, session):
            return entry.was
    return None


def _is_place(entry: ItemChange, item: ItemRecord, session: SessionRecord) -> bool:
    place = (session.on, item.pair, item.direction)
    return (entry.on, entry.pair, entry.direction) == place


def _put(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    session: SessionRecord,
    item: ItemRecord,
    key: str,
) -> str | None:
    """Fix another movement or dose; None where what is left out stands against it."""
    movement = turn.house.library.movements[key]
    allowed = pain_picture.picture_of(turn, athlete).rested.arms_allowed(movement)
    if not allowed:
        return None
    quality = _quality_of(turn, person, athlete, session, item, key)
    fresh = item.model_copy(
        update={"movement_key": key, "quality": quality, "arms": tuple(sorted(allowed))}
    )
    decision = dose_for(turn, person, athlete, fresh, on=session.on)
    training.change_item(turn.tx, item.id, quality=quality)
    training.snapshot_dose(
        turn.tx, item.id, dose=decision.value, reasons=decision.reasons, arms=allowed
    )
    number = item_facts(turn, session, item).number
    tongue = turn.tongue(person)
    said = doses.dose_line(tongue, decision.value, movement, arms=tuple(sorted(allowed)))
    name = name_of(tongue, movement)
    return tongue.say("{n}. {name}: {dose}", n=number, name=name, dose=said)


def _quality_of(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    session: SessionRecord,
    item: ItemRecord,
    key: str,
) -> Quality:
    request = gathered_week(turn, person, athlete, monday=monday_of(session.on)).request
    if key == item.movement_key or request is None:
        return item.quality
    return slot_with(
        turn.house.library.movements[key],
        slot=slot_of(stored_day(session), item),
        request=request,
        library=turn.house.library,
        rulebook=turn.house.rulebook,
    ).quality
