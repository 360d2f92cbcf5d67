"""What says that a week should be a lighter one: misses, a falling reserve, poor sleep or mood."""

from collections.abc import Sequence
from datetime import UTC, date, datetime, time, timedelta

from bot.turn import Turn
from scheduler.training.exposure_reading import is_missed
from scheduler.training.values import Exposure
from scheduler.training.volume import LighterSignals, is_reserve_falling
from storage.queries import care
from storage.records.training import SessionRecord

ASKED = "week.how_slept"
A_WEEK = timedelta(days=7)


def signals_of(
    turn: Turn, athlete_id: int, sessions: Sequence[SessionRecord], *, monday: date
) -> LighterSignals:
    """Read the signals of the week before ``monday``; ``sessions`` are by day, that week's too."""
    done = _done(turn, [one for one in sessions if one.on < monday])
    since = monday - A_WEEK
    lately = [run for run in done.values() if run[-1].on >= since]
    rulebook = turn.house.rulebook
    library = turn.house.library.movements
    misses = sum(
        is_missed(one, movement=library[one.dose.movement_key], rulebook=rulebook)
        for run in lately
        for one in run
        if one.on >= since and not one.dose.is_try
    )
    return LighterSignals(
        misses=misses,
        is_reserve_falling=any(is_reserve_falling(run, rulebook=rulebook) for run in lately),
        is_sleep_or_mood_poor=_is_poor(turn, athlete_id, since=since, monday=monday),
    )


def _done(turn: Turn, sessions: Sequence[SessionRecord]) -> dict[str, list[Exposure]]:
    """Return what was done of each main movement, the earliest first."""
    found: dict[str, list[Exposure]] = {}
    for session in sessions:
        for item in session.items:
            exposure = item.exposure(session.on) if item.pair is not None else None
            if exposure is not None and item.movement_key in turn.house.library.movements:
                found.setdefault(item.movement_key, []).append(exposure)
    return found


def _is_poor(turn: Turn, athlete_id: int, *, since: date, monday: date) -> bool:
    first = datetime.combine(since, time(0), UTC)
    entries = care.audit_of(turn.tx, athlete_id, most=1, what=(ASKED,), since=first)
    return any(
        bool(entry.after.get("is_poor")) and since <= entry.at.date() < monday for entry in entries
    )
