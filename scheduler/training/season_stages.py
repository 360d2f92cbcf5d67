"""How the weeks of one way are shared between stages: as far as the least weeks fit, no rush."""

from collections.abc import Sequence
from dataclasses import dataclass

from scheduler.reasons import Reason, reason
from scheduler.training.rulebook import Rulebook
from scheduler.training.season_reasons import SeasonReason


@dataclass(frozen=True)
class StageStart:
    """Where a way begins: the stage, the weeks already in it, whether it was reached before.

    ``weeks_in`` [whole weeks at the way's first Monday] is -1 when the stage began later in that
    week, so that its broken first week is not counted as a whole one.
    """

    stage: int
    weeks_in: int
    is_re_earned: bool = False


@dataclass(frozen=True)
class StagePlan:
    """Stages with their weeks, in order, and why no more of them."""

    blocks: tuple[tuple[int, int], ...]
    reasons: tuple[Reason, ...]

    def stages(self) -> list[int]:
        """Return the stage of each building week, in order."""
        return [stage for stage, weeks in self.blocks for _ in range(weeks)]


def base_weeks(*, weeks_in_all: int, rulebook: Rulebook) -> int:
    """Return the weeks that stages 1 and 2 get of a whole way [weeks]: about two thirds (CP)."""
    return round(rulebook.season.base_share.value * weeks_in_all)


def share_weeks(
    start: StageStart, *, weeks: int, base_weeks_left: int | None, rulebook: Rulebook
) -> StagePlan:
    """Share building weeks between the present stage and those that can be finished after it.

    Parameters: ``weeks`` [building weeks to go, 0 or more]; ``base_weeks_left`` [weeks that
    stages 1 and 2 still get], None for athletes who need no base first. A stage is planned only
    with its least weeks in full, so whoever is behind is planned fewer stages, never shorter
    ones; what is left over is shared in proportion to the least weeks (CH).
    """
    stages = [start.stage]
    while _fits([*stages, stages[-1] + 1], start, weeks, base_weeks_left, rulebook=rulebook):
        stages.append(stages[-1] + 1)
    shared = _shared(stages, start, weeks, base_weeks_left, rulebook=rulebook)
    blocks = tuple(zip(stages, shared, strict=True))
    found = _why(blocks, start, weeks, base_weeks_left, rulebook=rulebook)
    return StagePlan(blocks=blocks, reasons=found)


def least_weeks(stage: int, *, start: StageStart, rulebook: Rulebook) -> int:
    """Return the least weeks that a stage still needs [weeks].

    The present one needs what is left of its least weeks, and one at least, since its checklist
    is still open (CH); the last stage has no checklist and gets a few weeks or none (CH).
    """
    rules = rulebook.season
    row = rulebook.stage(stage).least_weeks
    if stage > start.stage:
        return row.whole if row else rules.last_stage_least_weeks.whole
    present = rules.present_stage_least_weeks.whole
    if row is None or start.is_re_earned:
        return present
    return max(present, row.whole - start.weeks_in)


def _fits(
    stages: Sequence[int],
    start: StageStart,
    weeks: int,
    base_weeks_left: int | None,
    *,
    rulebook: Rulebook,
) -> bool:
    if stages[-1] > len(rulebook.stages.rows):
        return False
    return _needed(stages, start, base_weeks_left, rulebook=rulebook) <= weeks


def _needed(
    stages: Sequence[int], start: StageStart, base_weeks_left: int | None, *, rulebook: Rulebook
) -> int:
    """Return the weeks that stages need together [weeks]; before others the base has its share."""
    base, later = _parted(stages, start, base_weeks_left, rulebook=rulebook)
    base_needed = sum(least_weeks(stage, start=start, rulebook=rulebook) for stage in base)
    later_needed = sum(least_weeks(stage, start=start, rulebook=rulebook) for stage in later)
    given = max(base_needed, base_weeks_left or 0) if base and later else base_needed
    return given + later_needed


def _parted(
    stages: Sequence[int], start: StageStart, base_weeks_left: int | None, *, rulebook: Rulebook
) -> tuple[list[int], list[int]]:
    """Part the stages into the base and what comes after; without a base wanted all are one."""
    last = rulebook.season.base_last_stage.whole
    if base_weeks_left is None or start.stage > last:
        return [], list(stages)
    return [stage for stage in stages if stage <= last], [s for s in stages if s > last]


def _shared(
    stages: Sequence[int],
    start: StageStart,
    weeks: int,
    base_weeks_left: int | None,
    *,
    rulebook: Rulebook,
) -> list[int]:
    base, later = _parted(stages, start, base_weeks_left, rulebook=rulebook)
    leasts = {stage: least_weeks(stage, start=start, rulebook=rulebook) for stage in stages}
    if not base or not later:
        return in_proportion(weeks, [leasts[stage] for stage in stages])
    given = max(sum(leasts[stage] for stage in base), base_weeks_left or 0)
    return [
        *in_proportion(given, [leasts[stage] for stage in base]),
        *in_proportion(weeks - given, [leasts[stage] for stage in later]),
    ]


def in_proportion(weeks: int, leasts: Sequence[int]) -> list[int]:
    """Share ``weeks`` [weeks] so that each gets its least, and the rest goes by largest remainder.

    One alone gets all, also when that is less than its least.
    """
    if len(leasts) == 1:
        return [weeks]
    over = weeks - sum(leasts)
    exact = [over * least / sum(leasts) for least in leasts]
    given = [least + int(more) for least, more in zip(leasts, exact, strict=True)]
    by_remainder = sorted(range(len(leasts)), key=lambda n: (int(exact[n]) - exact[n], n))
    for number in by_remainder[: weeks - sum(given)]:
        given[number] += 1
    return given


def _why(
    blocks: Sequence[tuple[int, int]],
    start: StageStart,
    weeks: int,
    base_weeks_left: int | None,
    *,
    rulebook: Rulebook,
) -> tuple[Reason, ...]:
    """Say of each stage how its weeks stand to its least, and of the next what it lacks."""
    source = rulebook.season.last_stage_least_weeks.source
    if weeks == 0:
        return (reason(SeasonReason.TOO_SHORT_TO_MOVE_UP, source, stage=start.stage),)
    found = [
        reason(
            SeasonReason.STAGE_FITS,
            source,
            stage=stage,
            weeks=given,
            needed_weeks=least_weeks(stage, start=start, rulebook=rulebook),
        )
        for stage, given in blocks
    ]
    following = blocks[-1][0] + 1
    if following <= len(rulebook.stages.rows):
        stages = range(start.stage, following + 1)
        needed = _needed(stages, start, base_weeks_left, rulebook=rulebook)
        figures = {"stage": following, "needed_weeks": needed, "weeks": weeks}
        found.append(reason(SeasonReason.STAGE_DOES_NOT_FIT, source, **figures))
    return tuple(found)
