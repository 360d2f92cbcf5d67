"""Corrections: "sorry, 38 not 48", "other arm", "undo", and the button to change a number."""

from collections.abc import Mapping
from typing import Any

from bot.acts import record_results
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.open_question import open_question
from bot.acts.session_card import reported_at
from bot.acts.still_open import answerable_session
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.reading.known import ItemResult
from bot.reading.values import Change, Correction, CorrectionKind
from bot.turn import Tap, Turn
from bot.wording import asking
from bot.wording import session as words
from bot.wording.movement_names import name_of
from scheduler.pain.values import Side
from storage.queries import care, training
from storage.records.people import Person
from storage.records.training import ItemRecord, SessionRecord, SetRecord

OTHER = {Side.LEFT: Side.RIGHT, Side.RIGHT: Side.LEFT, Side.BOTH: Side.BOTH}


def correct(
    turn: Turn,
    person: Person,
    correction: Correction,
    session: SessionRecord | None,
) -> Outcome:
    """Act on a correction in words; ``session`` is the one that was answered last."""
    if session is None:
        turn.say(person, asking.nothing_to_correct(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    return apply(turn, person, correction, session)


def apply(turn: Turn, person: Person, correction: Correction, session: SessionRecord) -> Outcome:
    """Change the last results; what was stays on record as replaced."""
    match correction.kind:
        case CorrectionKind.SETS:
            return _change_sets(turn, person, correction.changes, session)
        case CorrectionKind.ITEMS:
            return _change_items(turn, person, correction.items, session)
        case CorrectionKind.OTHER_ARM:
            return _other_arm(turn, person, session, correction.ref)
        case CorrectionKind.UNDO:
            return _undo(turn, person, session, correction.ref)


def which(turn: Turn, person: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The button to change a number: first, which item."""
    session = answerable_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    rows = [
        [
            Tap(
                name_of(turn.tongue(person), item_facts(turn, session, item).movement),
                "change.item",
                {"session": session.id, "item": item.id},
            )
        ]
        for item in sent_items(session)
        if item.is_reported
    ]
    turn.say(person, asking.which_to_change(turn.tongue(person)), taps=rows)
    return Outcome.ANSWERED


def item(turn: Turn, person: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Ask for one item's numbers again; what stands stays until they come."""
    session = answerable_session(turn, person, arguments["session"])
    if session is None or person.chat_id is None:
        return Outcome.STALE_TAP
    found = next((one for one in session.items if one.id == arguments["item"]), None)
    if found is None or found.dose is None:
        return Outcome.STALE_TAP
    open_question(turn, person, "item", {"session": session.id, "item": found.id})
    turn.say(person, words.item_question(turn.tongue(person), item_facts(turn, session, found)))
    return Outcome.ANSWERED


def _change_sets(
    turn: Turn, person: Person, changes: tuple[Change, ...], session: SessionRecord
) -> Outcome:
    lines: dict[str, list[str]] = {}
    for change in changes:
        found = next((one for one in session.items if str(one.id) == change.ref), None)
        record = _set_of(found, change) if found else None
        if found is None or record is None or person.chat_id is None:
            continue
        training.record_sets(
            turn.tx,
            found.id,
            [(record.number, record.done.model_copy(update={"value": change.new}), False)],
            chat_id=person.chat_id,
            message_id=record.message_id,
            at=turn.now,
        )
        name = name_of(turn.tongue(person), item_facts(turn, session, found).movement)
        lines.setdefault(name, []).append(
            asking.change_line(turn.tongue(person), change.number, change.old, change.new)
        )
    if not lines:
        turn.say(person, asking.nothing_to_correct(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    notes = [asking.corrected(turn.tongue(person), name, told) for name, told in lines.items()]
    return _corrected(turn, person, session, notes, what="result.changed")


def _change_items(
    turn: Turn, person: Person, results: tuple[ItemResult, ...], session: SessionRecord
) -> Outcome:
    """Put whole items in the place of what was recorded; what was stays on record as replaced."""
    notes = []
    for result in results:
        found = next((one for one in session.items if str(one.id) == result.ref), None)
        if found is None or not found.sets:
            continue
        record_results.store_item(turn, person, found, result, message_id=found.sets[0].message_id)
        facts = item_facts(turn, session, found)
        tongue = turn.tongue(person)
        values = [asking.done_line(tongue, one) for one in result.sets]
        notes.append(asking.corrected(tongue, name_of(tongue, facts.movement), values))
    if not notes:
        turn.say(person, asking.nothing_to_correct(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    return _corrected(turn, person, session, notes, what="result.changed")


def _set_of(item: ItemRecord, change: Change) -> SetRecord | None:
    return next(
        (one for one in item.sets if one.number == change.number and one.done.side is change.side),
        None,
    )


def _other_arm(turn: Turn, person: Person, session: SessionRecord, ref: str | None) -> Outcome:
    last = _last_reported(session, ref)
    if last is None or person.chat_id is None:
        turn.say(person, asking.nothing_to_correct(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    training.take_back_sets(turn.tx, last.id, at=turn.now)
    training.record_sets(
        turn.tx,
        last.id,
        [
            (
                one.number,
                one.done.model_copy(update={"side": OTHER[one.done.side]}),
                one.is_as_planned,
            )
            for one in last.sets
        ],
        chat_id=person.chat_id,
        message_id=last.sets[0].message_id,
        at=turn.now,
    )
    return _corrected(turn, person, session, [], what="result.other_arm")


def _undo(turn: Turn, person: Person, session: SessionRecord, ref: str | None) -> Outcome:
    """Take back all that the latest answer recorded, or the one item that was named."""
    last = _last_reported(session, ref)
    if last is None:
        turn.say(person, asking.nothing_to_correct(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    latest = [
        one for one in sent_items(session) if one.sets and reported_at(one) == reported_at(last)
    ]
    latest = latest if ref is None else [last]
    for one in latest:
        training.take_back_sets(turn.tx, one.id, at=turn.now)
        training.change_item(
            turn.tx, one.id, reserve=None, is_reserve_asked=False, is_skipped=False
        )
    training.change_session(turn.tx, session.id, closed_at=None)
    tongue = turn.tongue(person)
    names = [name_of(tongue, item_facts(turn, session, one).movement) for one in latest]
    note = asking.taken_back(tongue, names)
    return _corrected(turn, person, session, [note], what="result.taken_back")


def _last_reported(session: SessionRecord, ref: str | None) -> ItemRecord | None:
    reported = [one for one in sent_items(session) if one.sets and ref in {None, str(one.id)}]
    return max(reported, key=reported_at, default=None)


def _corrected(
    turn: Turn, person: Person, session: SessionRecord, notes: list[str], *, what: str
) -> Outcome:
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=what,
        athlete_id=person.id,
        actor_id=person.id,
        before={"session": session.id},
    )
    record_results.go_on(turn, person, session.id, notes=notes)
    return Outcome.CORRECTED


TAPS = {"change": which, "change.item": item}
