"""How many sets a direction gets in a week, and when a week is lighter."""

from collections.abc import Sequence
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Measure
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.gaps import sets_after_share
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


def weekly_sets(
    *,
    wanted: int,
    stage: int,
    week_of_training: int,
    last_ordinary: int | None,
    is_after_misses: bool = False,
    rulebook: Rulebook,
) -> Decision[int]:
    """Decide the sets of one direction in a week [sets].

    Parameters: ``wanted`` [sets] by the plan; ``stage`` [1-5]; ``week_of_training`` [1 or more];
    ``last_ordinary`` [sets of this direction in the last week that was not lighter, missed or
    returning], None where there was none; ``is_after_misses``: half the items of two weeks were
    missed. The upper bound of the stage always holds; the lower is left to the plan, which has
    its reasons to go below, and is only named here. Growth is bounded from week 3 (CP).
    """
    bounds = rulebook.stage(stage).sets_a_direction
    rules = rulebook.volume
    sets, why = wanted, []
    if is_after_misses:
        sets = sets_after_share(sets=sets, share=1 - rules.missed_cut.value)
        why.append(reason(VolumeReason.CUT_AFTER_MISSES, rules.missed_cut.source, sets=sets))
    if sets > int(bounds.most or sets):
        sets = int(bounds.most or sets)
        why.append(reason(VolumeReason.UPPER_BOUND, bounds.source, wanted=wanted, most=sets))
    if last_ordinary is not None and week_of_training >= rules.growth_from_week.value:
        most = last_ordinary + rules.growth_sets.whole
        if sets > most:
            sets = most
            why.append(
                reason(
                    VolumeReason.LIMITED_GROWTH,
                    rules.growth_sets.source,
                    wanted=wanted,
                    last_ordinary=last_ordinary,
                    most=most,
                )
            )
    return Decision(value=sets, reasons=(*why, _against_lower(sets, stage, rulebook)))


def _against_lower(sets: int, stage: int, rulebook: Rulebook) -> Reason:
    bounds = rulebook.stage(stage).sets_a_direction
    code = VolumeReason.LOWER_BOUND if sets < bounds.least else VolumeReason.WITHIN_BOUNDS
    return reason(code, bounds.source, sets=sets, least=bounds.least)


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


def lighter_sets(*, sets: int, rulebook: Rulebook) -> Decision[int]:
    """Return the sets [sets] that a lighter week leaves of ``sets``: 40 % fewer, at least one."""
    cut = rulebook.lighter.cut
    left = sets_after_share(sets=sets, share=1 - cut.value)
    why = reason(VolumeReason.LIGHTER_CUT, cut.source, was=sets, sets=left)
    return Decision(value=left, reasons=(why,))


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
