"""A session that is out already: what hurts is taken out, eased, and its room filled again."""

from collections.abc import Iterator

from bot.acts import pain_report
from bot.acts.dose_today import dose_for
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.pair_on_the_day import beside_pull
from bot.acts.places import held_in
from bot.turn import Turn
from bot.wording import coach_pain, doses
from bot.wording import pain as words
from bot.wording.movement_names import name_of
from scheduler.catalogue.values import Movement
from scheduler.pain.picture import PainPicture
from scheduler.pain.red_flags import Stops
from scheduler.pain.values import Side
from scheduler.reasons import Decision
from scheduler.training.permissions import PermissionFacts, permits
from scheduler.training.values import Dose
from storage.queries import care, people, training
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord, SessionRecord
from storage.records.wire import MessageKind

STAND_IN_SETS_MOST = 3  # [sets] ch: what stands in on the day is short


def correct(turn: Turn, person: Person, athlete: Athlete, picture: PainPicture) -> None:
    """Correct the open session in this transaction, and say what, why, and who brings it back."""
    for session in training.open_sessions(turn.tx, person.id)[:1]:
        taken: list[str] = []
        instead: list[str] = []
        eased: list[str] = []
        for item in sent_items(session):
            if item.is_reported or item.dose is None:
                continue
            movement = turn.house.library.movements[item.movement_key]
            arms = picture.rested.arms_allowed(movement) & frozenset(item.arms)
            if not arms:
                # What was done before is still told of by its number, so the item stays, left out.
                training.change_item(turn.tx, item.id, is_left_out=True)
                other = _fill(turn, person, athlete, session.id, item, picture)
                taken.append(name_of(turn.tongue(person), movement))
                instead += [other] if other else []
                continue
            line = _ease(turn, person, athlete, session, item, arms)
            eased += [line] if line else []
        eased += _pushes_beside(turn, person, session.id)
        _tell(turn, person, athlete, picture, taken, instead, eased)


def bring_back(turn: Turn, person: Person, athlete: Athlete, picture: PainPicture) -> None:
    """A doubt was answered away: what it alone took out of today's session stands again."""
    tongue = turn.tongue(person)
    for session in training.open_sessions(turn.tx, person.id)[:1]:
        back = []
        for item in session.items:
            movement = turn.house.library.movements[item.movement_key]
            arms = picture.rested.arms_allowed(movement) & frozenset(item.arms)
            if not item.is_left_out or item.dose is None or not arms:
                continue
            decision = dose_for(turn, person, athlete, item, on=session.on)
            training.snapshot_dose(
                turn.tx, item.id, dose=decision.value, reasons=decision.reasons, arms=arms
            )
            training.change_item(turn.tx, item.id, is_left_out=False)
            back.append(name_of(tongue, movement))
        if back:
            turn.say(person, words.back_in_today(tongue, back), kind=MessageKind.SAFETY)


def stand_ins(
    turn: Turn, athlete: Athlete, item: ItemRecord, *, picture: PainPicture, taken: set[str]
) -> Iterator[tuple[Movement, frozenset[Side]]]:
    """Yield what may stand in: down the ladder, then its cell, then the cells that remain."""
    library = turn.house.library
    movement = library.movements[item.movement_key]
    row = PermissionFacts(stage=athlete.stage)
    seen = set(taken) | {movement.key}
    for other in _in_order(turn, movement):
        if other.key in seen or other.role is not movement.role:
            continue
        seen.add(other.key)
        if other.measure is not movement.measure:
            continue
        arms = picture.rested.arms_allowed(other)
        fits = other.fits(athlete.profile.facts.equipment)
        if arms and fits and permits(other, facts=row, rulebook=turn.house.rulebook).value:
            yield other, arms


def _in_order(turn: Turn, movement: Movement) -> Iterator[Movement]:
    library = turn.house.library
    below = library.easier_of(movement)
    while below is not None:
        yield below
        below = library.easier_of(below)
    yield from library.cell(movement.direction, movement.chain, movement.arm)
    yield from (
        other
        for other in library.movements.values()
        if (other.chain, other.arm) == (movement.chain, movement.arm)
        and other.direction is not movement.direction
    )


def _fill(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    session_id: int,
    item: ItemRecord,
    picture: PainPicture,
) -> str | None:
    """Add the first that may be done instead of an item; None where nothing may."""
    session = training.session(turn.tx, session_id)
    taken = {one.movement_key for one in session.items}
    for other, arms in stand_ins(turn, athlete, item, picture=picture, taken=taken):
        item_id = training.add_item(
            turn.tx,
            session_id=session_id,
            position=max(one.position for one in session.items) + 1,
            pair=item.pair,
            direction=other.direction,
            role=other.role,
            movement_key=other.key,
            quality=item.quality,
            planned_sets=min(item.planned_sets, STAND_IN_SETS_MOST),
            arms=tuple(sorted(arms)),
        )
        filled = training.session(turn.tx, session_id)
        fresh = next(one for one in filled.items if one.id == item_id)
        decision = dose_for(turn, person, athlete, fresh, on=session.on)
        training.snapshot_dose(
            turn.tx, item_id, dose=decision.value, reasons=decision.reasons, arms=arms
        )
        care.write_audit(
            turn.tx,
            at=turn.now,
            what="session.refilled",
            athlete_id=person.id,
            reasons=decision.reasons,
            before={"movement": item.movement_key, "session": session_id},
            after={"movement": other.key},
        )
        filled = training.session(turn.tx, session_id)
        fresh = next(one for one in filled.items if one.id == item_id)
        return _line(turn, person, filled, fresh, other, decision, arms)
    return None


def _ease(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    session: SessionRecord,
    item: ItemRecord,
    arms: frozenset[Side],
) -> str | None:
    """Ease a dose that may stay; None where it stays as it is."""
    if item.dose is None:
        return None
    movement = turn.house.library.movements[item.movement_key]
    decision = dose_for(turn, person, athlete, item, on=session.on)
    is_easier = decision.value.sets < item.dose.sets or decision.value.target < item.dose.target
    if not is_easier and arms == frozenset(item.arms):
        return None
    training.snapshot_dose(
        turn.tx, item.id, dose=decision.value, reasons=decision.reasons, arms=arms
    )
    return _line(turn, person, session, item, movement, decision, arms)


def _pushes_beside(turn: Turn, person: Person, session_id: int) -> list[str]:
    """Cut each push that is still to come where the pull of its pair was eased just now."""
    session = training.session(turn.tx, session_id)
    items = sent_items(session)
    decided: dict[int, Decision[Dose]] = {
        item.id: Decision(value=item.dose, reasons=item.reasons)
        for item in items
        if item.dose is not None
    }
    lines = []
    for item in items:
        if item.is_reported or item.dose is None:
            continue
        decision = beside_pull(item, items, decided)
        if decision.value.sets == item.dose.sets:
            continue
        training.snapshot_dose(
            turn.tx, item.id, dose=decision.value, reasons=decision.reasons, arms=item.arms
        )
        movement, arms = turn.house.library.movements[item.movement_key], frozenset(item.arms)
        lines.append(_line(turn, person, session, item, movement, decision, arms))
    return lines


def _line(
    turn: Turn,
    person: Person,
    session: SessionRecord,
    item: ItemRecord,
    movement: Movement,
    decision: Decision[Dose],
    arms: frozenset[Side],
) -> str:
    number = item_facts(turn, session, item).number
    tongue = turn.tongue(person)
    line = doses.dose_line(tongue, decision.value, movement, arms=tuple(arms))
    return f"{number}. {name_of(tongue, movement)}: {line}"


def _tell(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    picture: PainPicture,
    taken: list[str],
    instead: list[str],
    eased: list[str],
) -> None:
    tongue = turn.tongue(person)
    coach = people.person(turn.tx, athlete.coach_id)
    said: list[str] = []
    is_stopped = picture.stops in {Stops.EVERYTHING, Stops.UPPER_BODY}
    if taken and picture.rested.everything and not is_stopped:
        is_place_unsaid, _ = pain_report.unsaid(turn, athlete)
        is_known = not is_place_unsaid
        said.append(words.today_waits(tongue, coach=coach.name, is_place_known=is_known))
    elif taken and not is_stopped:
        places = [one for one in held_in(picture) if one.flag is None]
        why = [coach_pain.where_of(tongue, one) for one in places]
        said.append(words.taken_out_of_today(tongue, taken, why=why, coach=coach.name))
    if instead:
        said.append(words.instead_today(tongue, instead))
    if eased:
        said.append(words.eased_today(tongue, eased))
    if said:
        turn.say(person, "\n\n".join(said), kind=MessageKind.SAFETY)
