"""Which movement each place of an athlete's week belongs to, from the sessions before it."""

from collections.abc import Iterable
from datetime import date, timedelta

from bot.turn import Turn
from scheduler.pain.picture import PainPicture
from scheduler.training.values import Neighbour
from scheduler.training.week_history import PlaceUsed, is_swapped, movements_in_use
from scheduler.training.week_values import MovementInUse
from storage.queries import training
from storage.records.training import ItemRecord, SessionRecord

REMEMBERED = timedelta(weeks=10)  # [weeks] ch: longer than any movement must stay


def in_use(
    turn: Turn, past: Iterable[SessionRecord], *, monday: date, picture: PainPicture
) -> tuple[MovementInUse, ...]:
    """Return what each place belongs to before a week, and what pain makes of it now."""
    used = [
        PlaceUsed(
            on=session.on,
            pair=item.pair,
            direction=item.direction,
            movement_key=item.movement_key,
            asked=item.dose.neighbour if item.dose else Neighbour.STAY,
        )
        for session in past
        for item in session.items
        if item.pair is not None and not item.is_left_out
    ]
    return movements_in_use(
        used,
        week_start=monday,
        library=turn.house.library,
        eased=picture.eased,
        no_step=picture.no_step,
    )


def is_stand_in(
    turn: Turn, athlete_id: int, item: ItemRecord, *, monday: date, picture: PainPicture
) -> bool:
    """Tell whether an item is already the easier one of what its place belongs to."""
    past = training.sessions_between(
        turn.tx, athlete_id, first=monday - REMEMBERED, last=monday - timedelta(days=1)
    )
    return is_swapped(
        item.movement_key,
        pair=item.pair,
        direction=item.direction,
        history=in_use(turn, past, monday=monday, picture=picture),
        library=turn.house.library,
    )
