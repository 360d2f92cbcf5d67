"""A dose that has stood still for long: the coach is told, since no rule will move it by itself."""

from collections.abc import Sequence
from datetime import date, timedelta

from scheduler.reasons import Decision, reason
from scheduler.sources import CH
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Exposure

STILL_DAYS = 60  # [days] ch: two months
STILL_TIMES = 6  # [exposures] ch: fewer in two months is training too seldom, not standing still
AGAIN_DAYS = 28  # [days] ch: told every week, nobody reads it any more
IN_USE_DAYS = 21  # [days] ch: what was not done for three weeks is not in use


def stood_still(done: Sequence[Exposure], *, on: date) -> Decision[date | None]:
    """Decide since when the dose of a movement has stood still, if for two months or more (CH).

    Parameters: ``done``: what was done with one movement, the earliest first, as far back as is
    looked; tries are no doses. Standing still is the same target at the same resistance for the
    same quality, however many sets. Returns the first day of it [date], None where the dose
    moved, was done too seldom, or is not in use. With no earlier dose in sight the first day is
    the earliest that was looked at.
    """
    doses = [one for one in done if not one.dose.is_try]
    if not doses or (on - doses[-1].on).days > IN_USE_DAYS:
        return Decision(value=None, reasons=())
    still: list[Exposure] = []
    for one in reversed(doses):
        if _same(one) != _same(doses[-1]):
            break
        still.append(one)
    since = still[-1].on
    days = (on - since).days
    if days < STILL_DAYS or len(still) < STILL_TIMES:
        return Decision(value=None, reasons=())
    why = reason(
        DoseReason.STOOD_STILL,
        CH,
        since=since.isoformat(),
        days=days,
        weeks=days // 7,
        times=len(still),
        movement=doses[-1].dose.movement_key,
    )
    return Decision(value=since, reasons=(why,))


def is_told_between(*, since: date, first: date, last: date) -> bool:
    """Tell whether a dose that stands still since then is told in a digest of these days (CH).

    Parameters: ``since``: the first day of it [date]; ``first``, ``last``: the digest's days
    [date]. It is told when two months are over, and every four weeks from there on.
    """
    months_over = since + timedelta(days=STILL_DAYS)
    late_days = max(0, (first - months_over).days)
    return months_over + timedelta(days=-(-late_days // AGAIN_DAYS) * AGAIN_DAYS) <= last


def _same(one: Exposure) -> tuple[object, ...]:
    dose = one.dose
    return (dose.quality, dose.target, dose.rung, dose.rest_for_work)
