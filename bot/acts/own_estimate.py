"""What an athlete may well do in one set, from what was done lately: to judge what is plausible."""

from collections.abc import Sequence

from bot.reading.known import Estimate
from bot.turn import Turn
from scheduler.training.values import Exposure
from storage.records.training import ItemRecord

SPREAD_LOG_UNKNOWN = 0.35  # [log units] ch: one exposure says little; about a third up or down
SETS_REMEMBERED = 4  # [exposures] ch: what was done lately says what is plausible today


def estimate_for(
    _turn: Turn, _athlete_id: int, item: ItemRecord, *, history: Sequence[Exposure]
) -> Estimate | None:
    """Return the athlete's own best single set of an item, None where nothing was done lately.

    The one place where the reader's estimate comes from. ``history`` are the exposures of the
    session's movements, the oldest first.
    """
    alike = [one for one in history if one.dose.movement_key == item.movement_key]
    values = [
        done.value + (exposure.reserve.left if exposure.reserve else 0.0)
        for exposure in alike[-SETS_REMEMBERED:]
        for done in exposure.sets[:1]
        if done.rung is None or done.rung == exposure.dose.rung
    ]
    if not values:
        return None
    return Estimate(likely=max(values), spread_log=SPREAD_LOG_UNKNOWN)
