"""How many sets a direction gets in a week, and when a week is lighter."""

from collections.abc import Sequence
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Measure
from scheduler.reasons import Decision, reason
from scheduler.training.rulebook import Rulebook
from scheduler.training.training_reasons import VolumeReason
from scheduler.training.values import Exposure


class WeekKind(StrEnum):
    """What a past week was, for counting growth and lighter weeks."""

    ORDINARY = "ordinary"
    LIGHTER = "lighter"
    MISSED = "missed"
    RETURNING = "returning"


class LighterSignals(BaseModel):
    """The three signs of tiredness: less left at the same dose, misses, poor sleep or mood.

    ``misses`` [items missed this week].
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    is_reserve_falling: bool = False
    misses: int = 0
    is_sleep_or_mood_poor: bool = False


def is_after_missed_weeks(missed_shares: Sequence[float], *, rulebook: Rulebook) -> bool:
    """Tell whether half the items were missed in each of the last two weeks.

    Parameters: ``missed_shares`` [fraction of the week's items missed, 0-1], oldest week first.
    """
    rules = rulebook.volume
    latest = missed_shares[-rules.missed_weeks.whole :]
    return len(latest) == rules.missed_weeks.whole and all(
        share >= rules.missed_share.value for share in latest
    )


def share_after_missed_weeks(
    missed_shares: Sequence[float], *, rulebook: Rulebook
) -> Decision[float]:
    """Decide what share of the sets [fraction] is kept after weeks with half the items missed (CH).

    Parameters: ``missed_shares`` [fraction of the week's items missed, 0-1], oldest week first.
    """
    if not is_after_missed_weeks(missed_shares, rulebook=rulebook):
        return Decision(value=1.0, reasons=())
    cut = rulebook.volume.missed_cut
    why = reason(VolumeReason.CUT_AFTER_MISSES, cut.source)
    return Decision(value=1 - cut.value, reasons=(why,))


def lighter_week(
    *, past: Sequence[WeekKind], stage: int, signals: LighterSignals, rulebook: Rulebook
) -> Decision[bool]:
    """Decide whether the coming week is lighter.

    Parameters: ``past`` weeks, oldest first; ``stage`` [1-5]; ``signals`` of the last week. Every
    6th week in stages 1-2, 5th in 3, 4th in 4-5, counted from the last lighter, missed or
    returning one; or when two of the three signals agree (CP).
    """
    every = rulebook.stage(stage).lighter_every
    since = _weeks_since_lighter(past)
    figures = {"weeks_since": since, "every": every.whole}
    if since + 1 >= every.value:
        return Decision(
            value=True, reasons=(reason(VolumeReason.LIGHTER_BY_COUNT, every.source, **figures),)
        )
    rules = rulebook.lighter
    agreeing = sum(
        (
            signals.is_reserve_falling,
            signals.misses >= rules.misses.value,
            signals.is_sleep_or_mood_poor,
        )
    )
    is_due = agreeing >= rules.signals_needed.value
    if is_due and since > 0:
        why = reason(
            VolumeReason.LIGHTER_BY_SIGNALS,
            rules.signals_needed.source,
            signals=agreeing,
            misses=signals.misses,
            is_reserve_falling=signals.is_reserve_falling,
            is_sleep_or_mood_poor=signals.is_sleep_or_mood_poor,
        )
        return Decision(value=True, reasons=(why,))
    code = VolumeReason.MISSED_WEEK_COUNTS if is_due else VolumeReason.NOT_LIGHTER
    return Decision(value=False, reasons=(reason(code, every.source, **figures),))


def _weeks_since_lighter(past: Sequence[WeekKind]) -> int:
    """Count the ordinary weeks since the last one that was easier anyway [weeks]."""
    count = 0
    for week in reversed(past):
        if week is not WeekKind.ORDINARY:
            break
        count += 1
    return count


def is_reserve_falling(history: Sequence[Exposure], *, rulebook: Rulebook) -> bool:
    """Tell whether less was left than the time before at the same dose, by 2 (holds: 10 s).

    A top answer says "at least", so a fall from it is at least the difference; a rise to it is
    none.
    """
    if len(history) < 2 or history[-1].dose.core != history[-2].dose.core:
        return False
    before, now = history[-2].reserve, history[-1].reserve
    if before is None or now is None or now.is_at_least:
        return False
    rules = rulebook.lighter
    is_reps = history[-1].dose.measure is Measure.REPS
    fall = rules.reserve_fall_reps if is_reps else rules.reserve_fall_hold_s
    return before.left - now.left >= fall.value
