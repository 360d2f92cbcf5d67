"""Early patterns that are proposed to the coach, never told to the athlete as a cause (cp)."""

from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.pain.answers import Answer
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.values import Region, Side, Site
from scheduler.reasons import Reason, reason
from scheduler.sources import CP

WITHIN = timedelta(days=14)  # [d] cp
WRIST_DIFFERENCE = 2  # [of 10] cp: one wrist and not the other
ELBOW_REPORTS = 2  # [reports] cp: an outer elbow that comes back
REPORTS_APART = timedelta(hours=12)  # [h] ch: said twice of one session is one report


class PatternKind(StrEnum):
    """Which pattern."""

    ONE_WRIST = "one_wrist"
    OUTER_ELBOW_AGAIN = "outer_elbow_again"


class EarlyPattern(BaseModel):
    """A pattern with the arm that shows it."""

    model_config = ConfigDict(frozen=True)

    kind: PatternKind
    arm: Side
    reasons: tuple[Reason, ...]


def early_patterns(
    answers: Mapping[Region, Sequence[Answer]], *, as_of_utc: datetime
) -> tuple[EarlyPattern, ...]:
    """Return the patterns of the last 14 days (cp)."""
    recent = {
        region: [a for a in said if as_of_utc - WITHIN <= a.at_utc <= as_of_utc]
        for region, said in answers.items()
    }
    found = [_one_wrist(recent, arm) for arm in sorted(Side.BOTH.arms)]
    found += [_outer_elbow(recent, arm) for arm in sorted(Side.BOTH.arms)]
    return tuple(pattern for pattern in found if pattern is not None)


def _one_wrist(recent: Mapping[Region, Sequence[Answer]], arm: Side) -> EarlyPattern | None:
    """One wrist at 2 or more above the other; an unnamed wrist is not thought to hurt."""
    other = Side.LEFT if arm is Side.RIGHT else Side.RIGHT
    here = _highest(recent, Region(site=Site.WRIST, arm=arm))
    there = _highest(recent, Region(site=Site.WRIST, arm=other))
    if here - there < WRIST_DIFFERENCE:
        return None
    why = reason(PainReason.ONE_WRIST, CP, side=arm.value, score=here, other=there)
    return EarlyPattern(kind=PatternKind.ONE_WRIST, arm=arm, reasons=(why,))


def _highest(recent: Mapping[Region, Sequence[Answer]], region: Region) -> int:
    return max((answer.score or 0 for answer in recent.get(region, ())), default=0)


def _outer_elbow(recent: Mapping[Region, Sequence[Answer]], arm: Side) -> EarlyPattern | None:
    reports: list[datetime] = []
    for answer in recent.get(Region(site=Site.ELBOW_OUTER, arm=arm), ()):
        is_report = answer.score != 0 and not answer.is_morning
        if is_report and (not reports or answer.at_utc - reports[-1] >= REPORTS_APART):
            reports.append(answer.at_utc)
    if len(reports) < ELBOW_REPORTS:
        return None
    why = reason(
        PainReason.OUTER_ELBOW_AGAIN, CP, side=arm.value, reports=len(reports), within_d=WITHIN.days
    )
    return EarlyPattern(kind=PatternKind.OUTER_ELBOW_AGAIN, arm=arm, reasons=(why,))
