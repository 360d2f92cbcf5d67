"""Counting the sets of one week: planned and done, by direction, kind and arm."""

from collections.abc import Iterable, Sequence
from typing import TypeVar

from bot.turn import Turn
from bot.wording.coach_week import SetCount, WeekFigures
from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Movement, Role
from storage.records.training import ItemRecord, SessionRecord, SessionState

NOT_COUNTED = {SessionState.MISSED, SessionState.CALLED_OFF}

KindT = TypeVar("KindT")


def figures_of(turn: Turn, sessions: Iterable[SessionRecord]) -> WeekFigures:
    """Count the main sets of sessions; a missed or called-off one plans nothing any more."""
    counted = [
        (item, movement, _count(session, item))
        for session in sessions
        for item in session.items
        if item.role is Role.MAIN and (movement := _movement(turn.house.library, item))
    ]
    return WeekFigures(
        directions=_by([(item.direction, count) for item, _, count in counted]),
        chains=_by([(movement.chain, count) for _, movement, count in counted]),
        arms=_by([(movement.arm, count) for _, movement, count in counted]),
    )


def _movement(library: Library, item: ItemRecord) -> Movement | None:
    return library.movements.get(item.movement_key)


def _count(session: SessionRecord, item: ItemRecord) -> SetCount:
    """Count a set of both arms, or of one and the other, once."""
    done = len({record.number for record in item.sets})
    if item.is_left_out or session.state in NOT_COUNTED:
        return SetCount(done=done, planned=done)
    return SetCount(done=done, planned=item.dose.sets if item.dose else item.planned_sets)


def _by(counts: Sequence[tuple[KindT, SetCount]]) -> dict[KindT, SetCount]:
    found: dict[KindT, SetCount] = {}
    for kind, count in counts:
        found[kind] = found.get(kind, SetCount()) + count
    return found
