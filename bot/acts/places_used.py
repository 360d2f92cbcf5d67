"""Which movement each place of an athlete's week belongs to, from the sessions before it."""

from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from bot.acts.decided_doses import DOSE_DECISIONS
from bot.turn import Turn
from scheduler.pain.picture import PainPicture
from scheduler.training.coach_plan import CoachPlan
from scheduler.training.values import Neighbour
from scheduler.training.week_history import PlaceUsed, is_swapped, movements_in_use
from scheduler.training.week_values import MovementInUse
from storage.queries import care, training
from storage.records.training import ItemRecord, SessionRecord

DECISIONS_MOST = 60  # [decisions] ch: the last sessions of every place
NOTHING_CHANGED = CoachPlan()
REMEMBERED = timedelta(weeks=10)  # [weeks] ch: longer than any movement must stay


def in_use(
    turn: Turn,
    past: Iterable[SessionRecord],
    *,
    monday: date,
    picture: PainPicture,
    changed: CoachPlan = NOTHING_CHANGED,
) -> tuple[MovementInUse, ...]:
    """Return what each place belongs to before a week, and what pain makes of it now.

    What the coach put into one day only (``changed``) is not what the place belongs to.
    """
    past = tuple(past)
    decided = _decided(turn, past)
    used = [
        PlaceUsed(
            on=session.on,
            pair=item.pair,
            direction=item.direction,
            movement_key=successor.key,
            asked=decided.get((session.id, item.movement_key)) or _as_sent(item),
        )
        for session in past
        for item in session.items
        if item.pair is not None
        and not item.is_left_out
        and (successor := turn.house.library.successor_of(_own_key(session, item, changed)))
    ]
    return movements_in_use(
        used,
        week_start=monday,
        library=turn.house.library,
        eased=picture.eased,
        no_step=picture.no_step,
    )


def _own_key(session: SessionRecord, item: ItemRecord, changed: CoachPlan) -> str:
    once = changed.item_change(on=session.on, pair=item.pair, direction=item.direction)
    is_once = once is not None and once.movement_key == item.movement_key
    return once.was if once is not None and is_once else item.movement_key


def _as_sent(item: ItemRecord) -> Neighbour:
    return item.dose.neighbour if item.dose else Neighbour.STAY


def _decided(turn: Turn, past: Sequence[SessionRecord]) -> dict[tuple[int, str], Neighbour]:
    """Return what was decided for next time when each session closed, by session and movement."""
    if not past:
        return {}
    entries = care.audit_of(
        turn.tx,
        past[-1].athlete_id,
        most=DECISIONS_MOST,
        what=DOSE_DECISIONS,
    )
    found: dict[tuple[int, str], Neighbour] = {}
    for entry in reversed(entries):
        key = (int(entry.after.get("session", 0)), str(entry.before.get("movement", "")))
        found[key] = Neighbour(entry.after["dose"].get("neighbour", Neighbour.STAY))
    return found


def is_stand_in(
    turn: Turn,
    athlete_id: int,
    item: ItemRecord,
    *,
    monday: date,
    picture: PainPicture,
    changed: CoachPlan = NOTHING_CHANGED,
) -> bool:
    """Tell whether an item is already the easier one of what its place belongs to."""
    past = training.sessions_between(
        turn.tx, athlete_id, first=monday - REMEMBERED, last=monday - timedelta(days=1)
    )
    return is_swapped(
        item.movement_key,
        pair=item.pair,
        direction=item.direction,
        history=in_use(turn, past, monday=monday, picture=picture, changed=changed),
        library=turn.house.library,
    )
