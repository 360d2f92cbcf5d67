"""What a coach changed in a plan, in one line an entry: for the coach, the record, the athlete."""

from collections.abc import Mapping, Sequence
from typing import Any

from pydantic import TypeAdapter, ValidationError

from bot.wording import dates, doses
from bot.wording.movement_names import movement_name, name_within
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Measure, Movement
from scheduler.training.coach_plan import (
    Ban,
    DayMove,
    DoseSet,
    ItemChange,
    Pin,
    PlanEntry,
    StandingSwap,
)
from scheduler.training.values import Rung

STORED: TypeAdapter[PlanEntry] = TypeAdapter(PlanEntry)


def entry(tongue: Tongue, one: PlanEntry) -> str:
    """Write one entry for the coach."""
    match one:
        case Pin():
            return _pin(tongue, one)
        case Ban():
            name = movement_name(tongue, one.movement_key)
            return tongue.say("{movement}: banned", movement=name)
        case ItemChange():
            return tongue.say(
                "{day}: {to} instead of {was}",
                day=dates.day(tongue, one.on),
                to=movement_name(tongue, one.movement_key),
                was=name_within(tongue, one.was),
            )
        case StandingSwap():
            return tongue.say(
                "every time: {to} instead of {was}",
                to=movement_name(tongue, one.movement_key),
                was=name_within(tongue, one.was),
            )
        case DayMove():
            return tongue.say(
                "{day} moved to {to}", day=dates.day(tongue, one.on), to=dates.day(tongue, one.to)
            )
        case DoseSet():
            return tongue.say(
                "{movement}: next time {dose}",
                movement=movement_name(tongue, one.movement_key),
                dose=Marked(dose(tongue, one)),
            )


def _pin(tongue: Tongue, one: Pin) -> str:
    name = movement_name(tongue, one.movement_key)
    if one.is_override:
        return tongue.say("{movement}: pinned, beyond the stage", movement=name)
    return tongue.say("{movement}: pinned", movement=name)


def dose(tongue: Tongue, one: DoseSet) -> str:
    """Write a dose that was set: ``4 × 30 s, 12 kg``."""
    movement = default_library().movements.get(one.movement_key)
    measure = movement.measure if movement is not None else Measure.REPS
    amount = doses.amount(tongue, measure, one.target)
    said = tongue.say("{sets} × {amount}", sets=one.sets, amount=amount)
    load = resistance(tongue, one.rung, movement)
    return f"{said}, {load}" if load else said


def resistance(tongue: Tongue, rung: Rung, _movement: Movement | None) -> str:
    """Write a load or band alone; empty where the body is all there is."""
    if rung.band is not None:
        return tongue.say("{band} band", band=rung.band)
    return "" if rung.load_kg is None else tongue.say("{kg} kg", kg=rung.load_kg)


def to_athlete(tongue: Tongue, one: PlanEntry, *, coach: str) -> str:
    """Tell the athlete what an entry changes."""
    match one:
        case Pin():
            return tongue.say(
                "{coach} wants {movement} in your coming weeks, wherever it fits.",
                coach=coach,
                movement=name_within(tongue, one.movement_key),
            )
        case Ban():
            return tongue.say(
                "{coach} takes {movement} out of your coming weeks.",
                coach=coach,
                movement=name_within(tongue, one.movement_key),
            )
        case ItemChange():
            return tongue.say(
                "{coach} changed {day}: {to} instead of {was}.",
                coach=coach,
                day=dates.day(tongue, one.on),
                to=name_within(tongue, one.movement_key),
                was=name_within(tongue, one.was),
            )
        case StandingSwap():
            return tongue.say(
                "{coach} changed your coming weeks: {to} instead of {was}.",
                coach=coach,
                to=name_within(tongue, one.movement_key),
                was=name_within(tongue, one.was),
            )
        case DayMove():
            return tongue.say(
                "{coach} moved your session of {day} to {to}.",
                coach=coach,
                day=dates.day(tongue, one.on),
                to=dates.day(tongue, one.to),
            )
        case DoseSet():
            return tongue.say(
                "{coach} set your next dose of {movement}: {dose}.",
                coach=coach,
                movement=name_within(tongue, one.movement_key),
                dose=Marked(dose(tongue, one)),
            )


def gone_to_athlete(tongue: Tongue, one: PlanEntry, *, coach: str) -> str:
    """Tell the athlete that an entry stands no more."""
    match one:
        case Pin():
            return tongue.say(
                "{coach} no longer asks for {movement} every week.",
                coach=coach,
                movement=name_within(tongue, one.movement_key),
            )
        case Ban():
            return tongue.say(
                "{coach} lets {movement} come again in your coming weeks.",
                coach=coach,
                movement=name_within(tongue, one.movement_key),
            )
        case ItemChange():
            return tongue.say(
                "{coach} took a change back: {day} has {was} again.",
                coach=coach,
                day=dates.day(tongue, one.on),
                was=name_within(tongue, one.was),
            )
        case StandingSwap():
            return tongue.say(
                "{coach} took a change back: {was} comes again in your weeks.",
                coach=coach,
                was=name_within(tongue, one.was),
            )
        case DayMove():
            return tongue.say(
                "{coach} moved your session of {day} back to {to}.",
                coach=coach,
                day=dates.day(tongue, one.to),
                to=dates.day(tongue, one.on),
            )
        case DoseSet():
            return tongue.say(
                "{coach} took the dose of {movement} back: your answers decide it again.",
                coach=coach,
                movement=name_within(tongue, one.movement_key),
            )


def said_to_athlete(
    tongue: Tongue, *, coach: str, gone: Sequence[PlanEntry], new: Sequence[PlanEntry]
) -> list[str]:
    """Tell the athlete of a change; what is replaced by its like is not told as gone."""
    kinds = {type(one) for one in new}
    lines = [to_athlete(tongue, one, coach=coach) for one in new]
    lines += [gone_to_athlete(tongue, one, coach=coach) for one in gone if type(one) not in kinds]
    return lines


def recorded(tongue: Tongue, before: Mapping[str, Any], after: Mapping[str, Any]) -> str:
    """Write a recorded change for the audit: what came, and what went."""
    parts = [entry(tongue, one) for one in _read(after)]
    parts += [
        tongue.say("no longer {what}", what=Marked(entry(tongue, one))) for one in _read(before)
    ]
    return "; ".join(parts)


def _read(stored: Mapping[str, Any]) -> list[PlanEntry]:
    try:
        return [STORED.validate_python(one) for one in stored.get("entries", ())]
    except ValidationError:
        return []
