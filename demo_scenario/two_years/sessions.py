"""One session as text: each item with its dose, what was done, and why, and what comes next."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.wording import doses
from bot.wording.changes import direction_of
from demo_scenario.two_years.plain_text import TONGUE, all_why, plain
from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Movement
from scheduler.pain.values import Side
from scheduler.training.values import Dose
from storage.records.care import AuditEntry
from storage.records.first_tests import AttemptRecord
from storage.records.training import ItemRecord, SessionRecord

BOTH_ARMS = (Side.LEFT, Side.RIGHT)


def session_lines(
    session: SessionRecord,
    *,
    next_doses: Mapping[str, AuditEntry],
    library: Library,
    tested: Sequence[AttemptRecord] = (),
) -> list[str]:
    """Write a session. ``next_doses`` are the decisions at its end, by movement.

    A day of tests is its attempts: what was planned in its place was never sent.
    """
    lines = [_head(session)]
    if session.is_test_day:
        return [*lines, *(_attempt(one, library.movements[one.movement_key]) for one in tested)]
    for item in session.items:
        movement = library.movements[item.movement_key]
        lines += _item(item, movement)
        decided = next_doses.get(item.movement_key)
        if decided is not None and item.sets:
            lines += _next(decided, movement, item.arms)
    return lines


def _head(session: SessionRecord) -> str:
    parts = [f"{session.on:%a %d %b %Y}", f"day {session.letter}", session.state.value]
    if session.called_off_because:
        parts.append(session.called_off_because)
    if session.minutes:
        parts.append(f"{session.minutes} min")
    if session.effort is not None:
        parts.append(f"effort {session.effort}")
    if session.trained_at is not None:
        parts.append("pain answered" if session.is_pain_answered else "pain not answered")
    return f"  {' · '.join(parts)}"


def _attempt(one: AttemptRecord, movement: Movement) -> str:
    load = f" at {one.rung.load_kg:g} kg" if one.rung.load_kg else ""
    done = plain(doses.amount(TONGUE, one.measure, one.value)) if one.value is not None else "–"
    left = plain(doses.reserve_given(TONGUE, one.measure, one.reserve)) if one.reserve else "–"
    return f"    test {movement.name}{load}, {one.side.value}: {one.ended.value} {done}; {left}"


def _item(item: ItemRecord, movement: Movement) -> list[str]:
    place = f"P{item.pair}" if item.pair is not None else "x "
    kind = f"{movement.chain.value} {movement.arm.value} {movement.direction.value}"
    head = f"    {place} {movement.name} ({kind}, {item.quality.value})"
    if item.dose is None:
        end = "left out" if item.is_left_out else f"planned {item.planned_sets} sets, never sent"
        return [f"{head}: {end}"]
    asked = f"{_dose(item.dose, movement, item.arms)}, {_rest(item.dose)}"
    done = _done(item, item.dose)
    return [f"{head}", f"         {asked} → {done}", *_why(item)]


def _why(item: ItemRecord) -> list[str]:
    return all_why(item.reasons, indent="           ", lead="because")


def _dose(dose: Dose, movement: Movement, arms: Sequence[Side]) -> str:
    return plain(doses.dose_line(TONGUE, dose, movement, arms=tuple(arms) or BOTH_ARMS))


def _rest(dose: Dose) -> str:
    wish = "TRY" if dose.is_try else f"keep {TONGUE.number(dose.reserve_asked)}"
    return f"{plain(doses.rest(TONGUE, dose.rest_s))}, {wish}, floor {dose.floor}"


def _done(item: ItemRecord, dose: Dose) -> str:
    if item.is_left_out:
        return "left out"
    if item.is_skipped:
        return "skipped"
    if not item.sets:
        return "nothing reported"
    done = tuple(record.done for record in item.sets)
    text = plain(doses.results(TONGUE, dose, done))
    if item.reserve is not None:
        return f"{text}; {plain(doses.reserve_given(TONGUE, dose.measure, item.reserve))}"
    return f"{text}; reserve not answered" if item.pair is not None else text


def _next(entry: AuditEntry, movement: Movement, arms: Sequence[Side]) -> list[str]:
    before, after = _stored(entry.before), _stored(entry.after)
    head = f"           next {direction_of(before, after)}: {_dose(after, movement, arms)}"
    tail = " TRY" if after.is_try else ""
    return [f"{head}{tail}", *all_why(entry.reasons, indent="             ", lead="why")]


def _stored(facts: Mapping[str, Any]) -> Dose:
    return Dose.model_validate(facts["dose"])
