"""The figures of the comparison: quantiles with censoring, shares, jumps."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median

from demo_scenario.comparison.courses import Course

STRATA = ("slow", "middle", "fast")  # thirds of the bodies' own gain
MIDDLE = 0.5  # [share] by definition: the median
TAIL = 0.9  # [share] by definition: the 90th percentile


@dataclass(frozen=True, slots=True)
class Figures:
    """What one rule did with a group.

    ``median_weeks`` and ``tail_weeks`` [weeks] to all standards, None where that share was not
    through when time was up; ``unfinished`` [athletes]; ``missed_share`` and ``short_share`` of
    the sessions; ``tries``, of them ``shown_share``; ``jump_median``, ``jump_most`` [share];
    ``below_share`` of the declared standards, in all and by stratum, None where none was.
    """

    athletes: int
    median_weeks: float | None
    tail_weeks: float | None
    unfinished: int
    missed_share: float
    short_share: float
    tries: int
    shown_share: float | None
    jump_median: float
    jump_most: float
    below_share: float | None
    below_by_stratum: dict[str, float | None]


def figures_of(courses: Sequence[Course]) -> Figures:
    """Work out the figures of a group of courses."""
    weeks = [one.weeks for one in courses]
    sessions = sum(one.sessions for one in courses)
    tries = sum(one.tries for one in courses)
    jumps = [one.jump for one in courses]
    return Figures(
        athletes=len(courses),
        median_weeks=censored_quantile(weeks, share=MIDDLE),
        tail_weeks=censored_quantile(weeks, share=TAIL),
        unfinished=weeks.count(None),
        missed_share=sum(one.missed for one in courses) / sessions,
        short_share=sum(one.short for one in courses) / sessions,
        tries=tries,
        shown_share=sum(one.shown for one in courses) / tries if tries else None,
        jump_median=median(jumps),
        jump_most=max(jumps),
        below_share=below_share(courses),
        below_by_stratum={name: below_share(group) for name, group in by_stratum(courses).items()},
    )


def censored_quantile(weeks: Sequence[float | None], *, share: float) -> float | None:
    """Return the least time by which ``share`` [0-1] were through [weeks]; None if they never were.

    Everybody who is not through was watched for the same time, so that the unfinished simply
    come last; no time is made up for them.
    """
    through = sorted(one for one in weeks if one is not None)
    rank = math.ceil(round(share * len(weeks), 9))
    return through[rank - 1] if 0 < rank <= len(through) else None


def below_share(courses: Sequence[Course]) -> float | None:
    """Return the share of declared standards that the hidden level was below; None if none was."""
    declared = [one for course in courses for one in course.declared.values()]
    return sum(one.is_below for one in declared) / len(declared) if declared else None


def by_stratum(courses: Sequence[Course]) -> dict[str, list[Course]]:
    """Split into thirds by the bodies' own gain, the slowest first."""
    ordered = sorted(courses, key=lambda one: one.gain)
    cuts = [round(len(ordered) * third / len(STRATA)) for third in range(len(STRATA) + 1)]
    return {
        name: ordered[begin:end]
        for name, begin, end in zip(STRATA, cuts[:-1], cuts[1:], strict=True)
    }
