"""Judge the free days between hard efforts of a week."""

from collections import Counter
from collections.abc import Iterator
from itertools import pairwise

from scheduler.catalogue.values import Demand, Direction
from scheduler.training.values import Quality
from scheduler.training.week_judged import JudgedWeek, breach, figures_of
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import Breach, Invariant

NEEDS_A_FREE_DAY = frozenset(Quality) - {Quality.MUSCULAR_ENDURANCE, Quality.STRENGTH_ENDURANCE}
ONE_DIRECTION_APART = frozenset({Quality.MAXIMAL_STRENGTH, Quality.REPEATED_EFFORT})


def hard_pulls_apart(week: JudgedWeek) -> Iterator[Breach]:
    """4: hard pulls and hangs with free days between, hard days elsewhere included."""
    gap = week.rulebook.weeks.free_days_between_hard.whole
    hard = {
        slot.on
        for slot in week.main
        if not slot.direction.is_push and slot.quality in NEEDS_A_FREE_DAY
    }
    drawn = {
        slot.on
        for slot in week.judged
        if slot.is_main and not slot.direction.is_push and slot.quality in NEEDS_A_FREE_DAY
    }
    elsewhere = {day.on for day in week.request.hard_days if day.has_pull}
    for on in sorted(drawn):
        close = [day for day in (hard - {on}) | elsewhere if abs((day - on).days) <= gap]
        if close:
            yield breach(
                Invariant.SPACING,
                WeekReason.HARD_TOO_CLOSE,
                on=on.isoformat(),
                to=min(close).isoformat(),
                is_pull=True,
            )


def one_direction_apart(week: JudgedWeek) -> Iterator[Breach]:
    """4: maximal and repeated effort of one direction with free days between."""
    gap = week.rulebook.weeks.free_days_between_hard.whole
    for direction in Direction:
        days = {
            slot.on
            for slot in week.main
            if direction in {slot.direction, week.of(slot).direction}
            and slot.quality in ONE_DIRECTION_APART
        }
        elsewhere = {day.on for day in week.request.hard_days if direction in day.directions}
        close = [
            (a, b)
            for a, b in pairwise(sorted(days | elsewhere))
            if (b - a).days <= gap and (a in days or b in days)
        ]
        close += [(on, on) for on in days & elsewhere]
        for a, b in close:
            yield breach(
                Invariant.SPACING,
                WeekReason.HARD_TOO_CLOSE,
                on=a.isoformat(),
                to=b.isoformat(),
                direction=direction.value,
            )


def hangs_after_hard_pulling(week: JudgedWeek) -> Iterator[Breach]:
    """4: no hang on the day after hard pulling elsewhere."""
    pulled = {day.on for day in week.request.hard_days if day.has_pull}
    for slot in week.judged:
        is_hang = Demand.TRACTION in week.of(slot).demands
        if is_hang and any((slot.on - on).days == 1 for on in pulled):
            yield breach(Invariant.SPACING, WeekReason.HANG_AFTER_HARD_PULLING, **figures_of(slot))


def maximal_exposures(week: JudgedWeek) -> Iterator[Breach]:
    most = week.rulebook.stages.extras.maximal_exposures_a_week.whole
    exposures = Counter(
        direction
        for slot in week.main
        if slot.quality is Quality.MAXIMAL_STRENGTH
        for direction in {slot.direction, week.of(slot).direction}
    )
    for direction, count in exposures.items():
        if count > most:
            yield breach(
                Invariant.MAXIMAL_EXPOSURES,
                WeekReason.MAXIMAL_TOO_OFTEN,
                direction=direction.value,
                exposures=count,
            )
