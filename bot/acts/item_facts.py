"""From stored items to what the wording and the reader want to know of them."""

from collections.abc import Sequence
from datetime import timedelta

from bot.acts.own_estimate import estimate_for
from bot.reading.known import KnownItem, KnownSession
from bot.turn import Turn
from bot.wording.movement_names import names_to_read
from bot.wording.session import ItemFacts
from bot.wording.tongue import Tongue
from scheduler.pain.values import Side
from scheduler.training.values import Exposure
from storage.queries import history
from storage.records.training import ItemRecord, SessionRecord

REMEMBERED = timedelta(weeks=8)  # [weeks] ch: what was done lately says what is plausible


def sent_items(session: SessionRecord) -> tuple[ItemRecord, ...]:
    """Return the items that the athlete was sent and that were not left out since."""
    return tuple(item for item in session.items if item.dose is not None and not item.is_left_out)


def item_facts(turn: Turn, session: SessionRecord, item: ItemRecord) -> ItemFacts:
    """Return one sent item as the wording shows it; numbers count what was sent."""
    if item.dose is None:
        raise ValueError("the item has not been sent")
    numbers = {one.id: number for number, one in enumerate(numbered_items(session), start=1)}
    return ItemFacts(
        number=numbers[item.id],
        pair=item.pair,
        movement=turn.house.library.movements[item.movement_key],
        dose=item.dose,
        arms=item.arms or (Side.LEFT, Side.RIGHT),
    )


def numbered_items(session: SessionRecord) -> tuple[ItemRecord, ...]:
    """Return the items that carry a number in the message: what is left out later keeps its own."""
    return tuple(item for item in session.items if item.dose is not None)


def known_session(turn: Turn, tongue: Tongue, session: SessionRecord) -> KnownSession:
    """Return a session as the reader knows it: what is left out since may have been done before."""
    items = numbered_items(session)
    done = history.exposures(
        turn.tx,
        session.athlete_id,
        [item.movement_key for item in items],
        since=session.on - REMEMBERED,
        before=session.on,
    )
    return KnownSession(
        ref=str(session.id),
        day=session.on,
        items=tuple(_known_item(turn, tongue, session, item, done) for item in items),
    )


def _known_item(
    turn: Turn,
    tongue: Tongue,
    session: SessionRecord,
    item: ItemRecord,
    done: Sequence[Exposure],
) -> KnownItem:
    facts = item_facts(turn, session, item)
    movement, dose = facts.movement, facts.dose
    return KnownItem(
        ref=str(item.id),
        number=facts.number,
        names=names_to_read(tongue, movement),
        measure=movement.measure,
        sets=dose.sets,
        target=dose.target,
        load_kg=dose.rung.load_kg,
        band=dose.rung.band,
        sides=movement.sides,
        arms=facts.arms,
        is_main=item.pair is not None,
        is_reported=item.is_reported,
        estimate=estimate_for(turn, session.athlete_id, item, history=done),
    )
