"""Results: a reading becomes sets, and the card goes on from there."""

from collections.abc import Sequence

from bot.acts import pain_picture
from bot.acts.close_session import close_if_done
from bot.acts.dose_today import returning
from bot.acts.item_facts import sent_items
from bot.acts.session_card import Step, show
from bot.reading.known import ItemResult, SetResult
from bot.reading.values import Assumption
from bot.turn import Turn
from bot.wording import session as words
from bot.wording.assumptions import say_assumptions
from scheduler.catalogue.values import Sides
from scheduler.pain.events import SessionTrained
from scheduler.pain.values import Side
from scheduler.training.gaps import NO_GAP
from scheduler.training.values import Dose, ReserveAnswer, Rung, SetDone
from storage import buttons
from storage.queries import people, training
from storage.records.people import Person
from storage.records.training import ItemRecord, SessionRecord, SessionState


def record(
    turn: Turn,
    person: Person,
    session_id: int,
    items: Sequence[ItemResult],
    *,
    assumptions: Sequence[Assumption] = (),
    effort: float | None = None,
    message_id: int | None,
    edit_message_id: int | None = None,
    is_quiet: bool = False,
    known: SessionRecord | None = None,
) -> Step:
    """Store what was done and show the card; every set that was said is stored, none is added.

    ``is_quiet`` where something graver was said beside it: then no card stands beside that.
    ``known`` is the session where it was read in this turn, and nothing of it changed since.
    """
    session = known or training.session(turn.tx, session_id)
    sent = {str(item.id): item for item in session.items}
    for result in items:
        store_item(turn, person, sent[result.ref], result, message_id=message_id)
    # Results reopen what was closed as missed or too early: its questions are asked again.
    facts: dict[str, object] = {"state": SessionState.TRAINED, "closed_at": None}
    if session.trained_at is None:
        facts["trained_at"] = turn.now
        _tell_pain_history(turn, session)
        _forget_absence(turn, person, session)
    if effort is not None:
        facts["effort"] = round(effort)
    training.change_session(turn.tx, session_id, **facts)
    if is_quiet:
        return Step.NOTHING
    return go_on(
        turn,
        person,
        session_id,
        notes=say_assumptions(turn.tongue(person), assumptions),
        edit_message_id=edit_message_id,
        has_news=True,
    )


def _tell_pain_history(turn: Turn, session: SessionRecord) -> None:
    """Let the pain fold know what was loaded today."""
    event = SessionTrained(
        key=pain_picture.new_key(turn, session.athlete_id),
        at_utc=turn.now,
        loaded=pain_picture.regions_loaded(turn, session),
    )
    pain_picture.record_event(turn, session.athlete_id, event, session_id=session.id)


def _forget_absence(turn: Turn, person: Person, session: SessionRecord) -> None:
    """Let the reason of an absence go once its return is over: the next one has its own."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None or athlete.absence_reason is None:
        return
    if returning(turn, athlete, on=session.on).value == NO_GAP:
        people.change_athlete(turn.tx, person.id, absence_reason=None)


def store_item(
    turn: Turn, person: Person, item: ItemRecord, result: ItemResult, *, message_id: int | None
) -> None:
    """Store one item's sets, its reserve, or that it was not done."""
    if item.dose is None or person.chat_id is None:
        return
    if result.sets:
        # What was done is true, also when it had been left out before the answer came.
        if item.is_left_out:
            training.change_item(turn.tx, item.id, is_left_out=False)
        if item.sets:
            training.take_back_sets(turn.tx, item.id, at=turn.now)
        training.add_sets(
            turn.tx,
            item.id,
            [(one.number, _set_done(one, item.dose), one.is_as_planned) for one in result.sets],
            chat_id=person.chat_id,
            message_id=message_id,
            at=turn.now,
        )
    if result.is_skipped:
        training.change_item(turn.tx, item.id, is_skipped=True)
    if result.reserve is not None:
        answer = ReserveAnswer(left=result.reserve.left, is_at_least=result.reserve.is_at_least)
        training.change_item(turn.tx, item.id, reserve=answer, is_reserve_asked=True)


def go_on(
    turn: Turn,
    person: Person,
    session_id: int,
    *,
    notes: Sequence[str] = (),
    edit_message_id: int | None = None,
    has_news: bool = False,
) -> Step:
    """Show the card with the next question, or close the session when nothing is open."""
    step = show(
        turn,
        person,
        session_id,
        notes=notes,
        edit_message_id=edit_message_id,
        has_news=has_news,
    )
    if step in {Step.NOTHING, Step.CLOSE} and person.chat_id is not None:
        buttons.close_question(turn.tx, person.chat_id)
    close_if_done(turn, person, session_id, step)
    return step


def as_planned(item: ItemRecord, *, sides: Sides) -> ItemResult:
    """Return the result of an item that was done exactly as written."""
    if item.dose is None:
        raise ValueError("the item has not been sent")
    arms = item.arms if sides is Sides.EACH else (Side.BOTH,)
    sets = tuple(
        SetResult(number=number, value=item.dose.target, side=arm, is_as_planned=True)
        for number in range(1, item.dose.sets + 1)
        for arm in arms
    )
    return ItemResult(ref=str(item.id), sets=sets)


def all_as_planned(turn: Turn, person: Person, session_id: int, *, edit: int | None) -> Step:
    """Record every item that has no answer yet as written; the card says what was recorded."""
    session = training.session(turn.tx, session_id)
    results = [
        as_planned(item, sides=turn.house.library.movements[item.movement_key].sides)
        for item in sent_items(session)
        if not item.is_reported
    ]
    if not sent_items(session):
        turn.say(person, words.all_left_out(turn.tongue(person)))
        return Step.NOTHING
    return record(turn, person, session_id, results, message_id=edit)


def _set_done(one: SetResult, dose: Dose) -> SetDone:
    rung = None
    if one.load_kg is not None and one.load_kg != dose.rung.load_kg:
        rung = Rung(load_kg=one.load_kg)
    elif one.band is not None and one.band != dose.rung.band:
        rung = Rung(band=one.band)
    return SetDone(side=one.side, value=one.value, rung=rung)
