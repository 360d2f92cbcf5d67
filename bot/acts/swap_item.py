"""Swapping a movement of today's session for its easier neighbour or another of its kind."""

from collections.abc import Mapping
from typing import Any

from bot.acts import pain_ask, pain_picture, pass_on
from bot.acts.dose_today import dose_for
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.still_open import still_open_session
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import swapping as words
from bot.wording.movement_names import name_of
from scheduler.catalogue.values import Movement
from scheduler.training.permissions import PermissionFacts, permits
from storage.queries import care, people, training
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord

CHOICES_MOST = 4  # [buttons] ch: a choice for one thumb
Arguments = Mapping[str, Any]


def which(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """Ask which movement is to be swapped."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    tongue = turn.tongue(person)
    rows = [
        [
            Tap(
                name_of(tongue, item_facts(turn, session, item).movement),
                "swap.item",
                {"session": session.id, "item": item.id},
            )
        ]
        for item in sent_items(session)
        if not item.is_reported
    ]
    turn.say(person, words.which(tongue) if rows else words.nothing_left(tongue), taps=rows)
    return Outcome.ANSWERED


def item(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """Ask why: what hurts is a matter of its own, and no swap."""
    session = still_open_session(turn, person, arguments["session"])
    if session is None:
        return Outcome.STALE_TAP
    found = next(one for one in session.items if one.id == arguments["item"])
    tongue = turn.tongue(person)
    about = {"session": session.id, "item": found.id}
    name = name_of(tongue, turn.house.library.movements[found.movement_key])
    taps = [
        [Tap(words.reason_label(tongue, why), "swap.why", {**about, "why": why})]
        for why in words.REASONS
    ]
    turn.say(person, words.why(tongue, name), taps=taps)
    return Outcome.ANSWERED


def why(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """Offer what may stand in for one movement, by the reason."""
    session = still_open_session(turn, person, arguments["session"])
    athlete = people.athlete(turn.tx, person.id)
    if session is None or athlete is None:
        return Outcome.STALE_TAP
    found = next(one for one in session.items if one.id == arguments["item"])
    reason = str(arguments["why"])
    tongue = turn.tongue(person)
    name = name_of(tongue, turn.house.library.movements[found.movement_key])
    if event.message_id is not None:
        noted = words.reason_label(tongue, reason)
        turn.change(person, event.message_id, words.noted(tongue, name, noted))
    if reason == words.HURTS:
        pain_ask.ask_where(turn, person, session_id=session.id)
        return Outcome.SAFETY
    taken = {one.movement_key for one in session.items}
    choices = _choices(turn, athlete, found, taken=taken, why=reason)
    rows = [
        [
            Tap(
                name_of(tongue, movement),
                "swap.to",
                {"session": session.id, "item": found.id, "to": movement.key, "why": reason},
            )
        ]
        for movement in choices
    ]
    if not rows:
        skip = {"session": session.id, "item": found.id}
        rows = [[Tap(words.leave_out_label(tongue), "item.skip", skip)]]
        _tell_coach(turn, person, athlete, found, None, why=reason)
        turn.say(person, words.no_other(tongue, name), taps=rows)
        return Outcome.ANSWERED
    text = words.for_what(tongue, name)
    turn.say(person, text, taps=rows)
    return Outcome.ANSWERED


def to(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """Swap, with a dose of its own; the coach sees it in the record."""
    session = still_open_session(turn, person, arguments["session"])
    athlete = people.athlete(turn.tx, person.id)
    if session is None or athlete is None:
        return Outcome.STALE_TAP
    old = next(one for one in session.items if one.id == arguments["item"])
    movement = turn.house.library.movements[arguments["to"]]
    arms = pain_picture.picture_of(turn, athlete).rested.arms_allowed(movement)
    tongue = turn.tongue(person)
    if old.is_reported or not arms:
        turn.say(person, words.too_late(tongue, name_of(tongue, movement)))
        return Outcome.STALE_TAP
    swapped = old.model_copy(update={"movement_key": movement.key})
    decision = dose_for(turn, person, athlete, swapped, on=session.on)
    training.snapshot_dose(
        turn.tx, old.id, dose=decision.value, reasons=decision.reasons, arms=arms
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="movement.swapped",
        athlete_id=person.id,
        actor_id=person.id,
        before={"movement": old.movement_key, "session": session.id},
        after={"movement": movement.key, "why": str(arguments.get("why", ""))},
    )
    _tell_coach(turn, person, athlete, old, movement, why=str(arguments.get("why", "")))
    fresh = training.session(turn.tx, session.id)
    now = next(one for one in fresh.items if one.id == old.id)
    text = words.swapped(tongue, item_facts(turn, fresh, now))
    turn.answer_tap(person, event.message_id, text)
    return Outcome.ANSWERED


def _tell_coach(
    turn: Turn, person: Person, athlete: Athlete, old: ItemRecord, now: Movement | None, *, why: str
) -> None:
    """Tell the coach of a swap with a cause; a mere wish is in the record."""
    coach = people.person(turn.tx, athlete.coach_id)
    if why not in words.FOR_THE_COACH or coach.id == person.id:
        return
    tongue = turn.tongue(coach)
    was = name_of(tongue, turn.house.library.movements[old.movement_key])
    if now is None:
        text = words.no_other_to_coach(tongue, name=person.name, was=was, why=why)
    else:
        text = words.swapped_to_coach(
            tongue, name=person.name, was=was, now=name_of(tongue, now), why=why
        )
    pass_on.tell_coach(turn, coach, person, text)


def _choices(
    turn: Turn, athlete: Athlete, item: ItemRecord, *, taken: set[str], why: str = ""
) -> list[Movement]:
    """Return what may stand in: the easier neighbour first, then others of the same kind."""
    library = turn.house.library
    movement = library.movements[item.movement_key]
    left_out = pain_picture.picture_of(turn, athlete).rested
    row = PermissionFacts(stage=athlete.stage)
    owned = athlete.profile.facts.equipment
    if why == words.NO_EQUIPMENT:
        owned = owned - frozenset().union(*movement.equipment)
    found = [
        other
        for other in library.cell(movement.direction, movement.chain, movement.arm)
        if other.key not in taken
        and other.fits(owned)
        and left_out.arms_allowed(other)
        and permits(other, facts=row, rulebook=turn.house.rulebook).value
    ]
    found.sort(key=lambda other: (other.key != movement.easier, other.name))
    return found[:CHOICES_MOST]


TAPS = {"swap": which, "swap.item": item, "swap.why": why, "swap.to": to}
