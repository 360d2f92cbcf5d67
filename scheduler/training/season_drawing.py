"""From a week of a season to what the drawing of a week asks."""

from collections.abc import Sequence
from datetime import date
from itertools import combinations, pairwise

from scheduler.reasons import Decision
from scheduler.training.season_values import SeasonWeek, SeasonWeekKind
from scheduler.training.week_days import training_dates
from scheduler.training.week_values import WeekRequest


def drawn_as(week: SeasonWeek, *, usual: WeekRequest) -> Decision[WeekRequest | None]:
    """Return the request that draws a week of a season; None when no day of it is trained.

    Parameters: ``usual``, the same week as it would be drawn without a season. Its stage holds:
    a season only proposes one. The smaller share of the sets, the fewer days and minutes, and
    only what is owned of the equipment at hand hold (CH). Few days lie as far apart as can be.

    Raises:
        ValueError: the two are not of the same week.

    """
    if usual.week_start != week.monday:
        raise ValueError("expected the request of the same week")
    dates = [on for on in training_dates(usual) if on not in week.days_off]
    if week.kind is SeasonWeekKind.BREAK or not dates:
        return Decision(value=None, reasons=week.reasons)
    kept = _far_apart(dates, most=week.days_most or len(dates))
    owned = usual.equipment if week.equipment is None else usual.equipment & week.equipment
    request = usual.model_copy(
        update={
            "weekdays": tuple(on.isoweekday() for on in kept),
            "days_a_week": len(kept),
            "sets_share": min(usual.sets_share, week.sets_share),
            "session_min": min(usual.session_min, week.session_min_most or usual.session_min),
            "equipment": owned,
        }
    )
    return Decision(value=request, reasons=week.reasons)


def _far_apart(dates: Sequence[date], *, most: int) -> tuple[date, ...]:
    """Return ``most`` [days] of the days, or all, with the widest least gap, the earliest first."""
    count = min(most, len(dates))
    choices = list(combinations(sorted(dates), count))
    return max(choices, key=lambda days: (_least_gap(days), -sum(on.toordinal() for on in days)))


def _least_gap(days: Sequence[date]) -> int:
    return min(((later - earlier).days for earlier, later in pairwise(days)), default=0)
