"""From stored items to what the wording and the reader want to know of them."""

from collections.abc import Sequence
from datetime import timedelta

from bot.reading.known import Estimate, KnownItem, KnownSession
from bot.turn import Turn
from bot.wording.session import ItemFacts
from scheduler.pain.values import Side
from scheduler.training.values import Exposure
from storage.queries import history
from storage.records.training import ItemRecord, SessionRecord

SPREAD_LOG_UNKNOWN = 0.35  # [log units] ch: one exposure says little; about a third up or down
REMEMBERED = timedelta(weeks=8)  # [weeks] ch: what was done lately says what is plausible
SETS_REMEMBERED = 4  # [exposures] ch: what was done lately says what is plausible today


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


def known_session(turn: Turn, session: SessionRecord) -> KnownSession:
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
        items=tuple(_known_item(turn, session, item, done) for item in items),
    )


def _known_item(
    turn: Turn, session: SessionRecord, item: ItemRecord, done: Sequence[Exposure]
) -> KnownItem:
    facts = item_facts(turn, session, item)
    movement, dose = facts.movement, facts.dose
    return KnownItem(
        ref=str(item.id),
        number=facts.number,
        names=(movement.name, *movement.aliases),
        measure=movement.measure,
        sets=dose.sets,
        target=dose.target,
        load_kg=dose.rung.load_kg,
        band=dose.rung.band,
        sides=movement.sides,
        arms=facts.arms,
        is_main=item.pair is not None,
        is_reported=item.is_reported,
        estimate=_estimate([one for one in done if one.dose.movement_key == item.movement_key]),
    )


def _estimate(done: Sequence[Exposure]) -> Estimate | None:
    """Guess the best single set from what was done lately, for judging what is plausible."""
    values = [
        first.value + (exposure.reserve.left if exposure.reserve else 0.0)
        for exposure in done[-SETS_REMEMBERED:]
        for first in exposure.sets[:1]
        if first.rung is None or first.rung == exposure.dose.rung
    ]
    if not values:
        return None
    return Estimate(likely=max(values), spread_log=SPREAD_LOG_UNKNOWN)
