"""Taps on the session and its card: as planned, step by step, reserve, effort, how-to."""

from collections.abc import Mapping
from typing import Any

from bot.acts import how_to as show_how_to
from bot.acts import record_results
from bot.acts.item_facts import sent_items
from bot.acts.still_open import answerable_session, still_open_session
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from scheduler.training.values import ReserveAnswer
from storage.queries import training
from storage.records.people import Person
from storage.records.training import ItemRecord, SessionRecord

Arguments = Mapping[str, Any]


def as_planned(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """All that has no answer yet was done as written."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    record_results.all_as_planned(turn, person, session.id, edit=event.message_id)
    return Outcome.RECORDED


def step_by_step(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """Ask for one item after another."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    training.change_session(turn.tx, session.id, is_step_by_step=True)
    record_results.go_on(turn, person, session.id)
    return Outcome.ANSWERED


def item_as_planned(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """One item was done as written."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    item = _unanswered_item(session, arguments["item"])
    if item is None:
        record_results.go_on(turn, person, session.id, edit_message_id=event.message_id)
        return Outcome.ANSWERED
    sides = turn.house.library.movements[item.movement_key].sides
    record_results.record(
        turn,
        person,
        session.id,
        [record_results.as_planned(item, sides=sides)],
        message_id=event.message_id,
        edit_message_id=event.message_id,
    )
    return Outcome.RECORDED


def skip_item(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """One item was left undone."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    item = _unanswered_item(session, arguments["item"])
    if item is None:
        record_results.go_on(turn, person, session.id, edit_message_id=event.message_id)
        return Outcome.ANSWERED
    training.change_item(turn.tx, item.id, is_skipped=True)
    record_results.go_on(turn, person, session.id, edit_message_id=event.message_id)
    return Outcome.RECORDED


def _unanswered_item(session: SessionRecord, item_id: int) -> ItemRecord | None:
    """Return the item if nothing was said about it yet: an older button changes no answer."""
    found = next((one for one in sent_items(session) if one.id == item_id), None)
    return None if found is None or found.is_reported else found


def how_to(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """Explain the movement of an item, as it is now."""
    item, session_id = training.item(turn.tx, arguments["item"])
    if training.session(turn.tx, session_id).athlete_id != person.id:
        return Outcome.STALE_TAP
    return show_how_to.show(turn, person, item.movement_key)


def reserve(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """How much was left after the last set; a second tap corrects the first."""
    session = answerable_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    if arguments["item"] not in {one.id for one in session.items}:
        return Outcome.STALE_TAP
    answer = ReserveAnswer(left=arguments["left"], is_at_least=arguments["top"])
    training.change_item(turn.tx, arguments["item"], reserve=answer, is_reserve_asked=True)
    record_results.go_on(turn, person, session.id, edit_message_id=event.message_id)
    return Outcome.ANSWERED


def reserve_unknown(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """What was left is not known: the question is answered, and the dose stays as it is."""
    session = answerable_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    if arguments["item"] not in {one.id for one in session.items}:
        return Outcome.STALE_TAP
    training.change_item(turn.tx, arguments["item"], is_reserve_asked=True)
    record_results.go_on(turn, person, session.id, edit_message_id=event.message_id)
    return Outcome.ANSWERED


def effort(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """How hard the whole session was."""
    session = answerable_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    training.change_session(turn.tx, session.id, effort=arguments["effort"])
    record_results.go_on(turn, person, session.id, edit_message_id=event.message_id)
    return Outcome.ANSWERED


TAPS = {
    "as_planned": as_planned,
    "steps": step_by_step,
    "item.as_planned": item_as_planned,
    "item.skip": skip_item,
    "item.how_to": how_to,
    "reserve": reserve,
    "reserve.unknown": reserve_unknown,
    "effort": effort,
}
