"""The stage of every week: one way after another, each planned from where the last one ends."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from scheduler.reasons import Reason, reason
from scheduler.training.rulebook import Rulebook
from scheduler.training.season_calendar import CalendarWeek
from scheduler.training.season_legs import Leg, first_week_back, long_breaks
from scheduler.training.season_reasons import SeasonReason
from scheduler.training.season_stages import (
    StagePlan,
    StageStart,
    base_weeks,
    share_weeks,
)
from scheduler.training.season_values import SeasonRequest, SeasonWeekKind, monday_of


@dataclass(frozen=True)
class StagesOfWeeks:
    """The stage of each week, in order, and why."""

    stages: tuple[int, ...]
    reasons: tuple[Reason, ...]


def stages_of(
    calendar: Sequence[CalendarWeek],
    *,
    request: SeasonRequest,
    legs: tuple[Leg, ...],
    rulebook: Rulebook,
) -> StagesOfWeeks:
    """Give every week its stage; weeks that do not build keep the one before them.

    A way ends with the easy weeks after a main event, or with a break so long that screen and
    tests come again: after that no more than stage 2 is planned, with its least weeks in full.
    """
    start = StageStart(
        stage=request.state.stage,
        weeks_in=(calendar[0].monday - request.state.entered_on).days // 7,
        is_re_earned=request.state.is_re_earned,
    )
    stages: list[int] = []
    reasons: list[Reason] = []
    for way in _ways(calendar, request=request, legs=legs, rulebook=rulebook):
        if way.is_after_long_break:
            start = _after_long_break(start, rulebook=rulebook)
            reasons.append(_screen_again(start, rulebook=rulebook))
        mine, why = _stages_of_way(way, start=start, request=request, rulebook=rulebook)
        stages += mine
        reasons += why
        start = _carried_on(start, way, mine)
    return StagesOfWeeks(stages=tuple(stages), reasons=tuple(reasons))


@dataclass(frozen=True)
class _Way:
    """Weeks that are planned together; ``began`` is the Monday from which its time counts."""

    began: date
    weeks: tuple[CalendarWeek, ...]
    is_after_long_break: bool
    is_open_ended: bool

    @property
    def behind(self) -> int:
        """The weeks of this way that are already behind us [weeks]."""
        return max(0, (self.weeks[0].monday - self.began).days // 7)


def _ways(
    calendar: Sequence[CalendarWeek],
    *,
    request: SeasonRequest,
    legs: tuple[Leg, ...],
    rulebook: Rulebook,
) -> list[_Way]:
    """Cut the weeks where a leg ends and where a long break ends."""
    after_breaks = {first_week_back(one) for one in long_breaks(request, rulebook=rulebook)}
    began = monday_of(request.began_on or request.today)
    cuts = sorted({began, *(leg.until for leg in legs), *after_breaks})
    first, last = calendar[0].monday, calendar[-1].monday
    ways: list[_Way] = []
    for number, cut in enumerate(cuts):
        until = cuts[number + 1] if number + 1 < len(cuts) else None
        mine = tuple(
            week for week in calendar if week.monday >= cut and (not until or week.monday < until)
        )
        if not mine:
            continue
        ways.append(
            _Way(
                began=cut,
                weeks=mine,
                is_after_long_break=cut in after_breaks and first <= cut <= last,
                is_open_ended=mine[-1].leg is None and until is None,
            )
        )
    return ways


def _stages_of_way(
    way: _Way, *, start: StageStart, request: SeasonRequest, rulebook: Rulebook
) -> tuple[list[int], list[Reason]]:
    building = [week for week in way.weeks if week.kind.builds]
    horizon = rulebook.season.open_weeks.whole
    counted = len(building[:horizon]) if way.is_open_ended else len(building)
    base = _base_left(way, counted, start=start, request=request, rulebook=rulebook)
    plan = share_weeks(start, weeks=counted, base_weeks_left=base, rulebook=rulebook)
    why = _base_reasons(way, plan, start=start, request=request, rulebook=rulebook)
    by_building = plan.stages()
    by_building += [plan.blocks[-1][0]] * (len(building) - counted)
    stages: list[int] = []
    for week in way.weeks:
        before = stages[-1] if stages else start.stage
        stages.append(by_building.pop(0) if week.kind.builds else before)
    return stages, [*why, *plan.reasons]


def _base_left(
    way: _Way, building: int, *, start: StageStart, request: SeasonRequest, rulebook: Rulebook
) -> int | None:
    """Return the weeks that the base still gets [weeks]; None for who is past it or needs none.

    The share is of the whole way, weeks behind us and the taper included; breaks and the season
    of the sport itself count neither way.
    """
    rules = rulebook.season
    if not needs_base(request, rulebook=rulebook) or start.stage > rules.base_last_stage.value:
        return None
    taper = sum(week.kind is SeasonWeekKind.TAPER for week in way.weeks)
    in_all = rules.open_weeks.whole if way.is_open_ended else way.behind + building + taper
    return max(0, base_weeks(weeks_in_all=in_all, rulebook=rulebook) - way.behind)


def _base_reasons(
    way: _Way, plan: StagePlan, *, start: StageStart, request: SeasonRequest, rulebook: Rulebook
) -> list[Reason]:
    """Say how many weeks the base really gets, those behind us included."""
    rules = rulebook.season
    if not needs_base(request, rulebook=rulebook):
        return []
    if start.stage > rules.base_last_stage.value:
        return [reason(SeasonReason.BASE_IS_BEHIND, rules.base_share.source, stage=start.stage)]
    base = sum(weeks for stage, weeks in plan.blocks if stage <= rules.base_last_stage.value)
    figures = {"weeks": way.behind + base, "share": rules.base_share.value}
    return [reason(SeasonReason.BASE_SHARE, rules.base_share.source, **figures)]


def needs_base(request: SeasonRequest, *, rulebook: Rulebook) -> bool:
    """Tell whether about two thirds of the time lie in stages 1 and 2 (CP).

    So it is for newcomers, for returners, and for strong athletes in the off-season.
    """
    rules = rulebook.start
    return (
        request.training_age_months < rules.newcomer_under_months.value
        or request.days_untrained_before >= rules.returner_from_days.value
        or request.is_off_season
    )


def _after_long_break(start: StageStart, *, rulebook: Rulebook) -> StageStart:
    most = rulebook.gaps.again_stage_most.whole
    return StageStart(stage=min(start.stage, most), weeks_in=0)


def _screen_again(start: StageStart, *, rulebook: Rulebook) -> Reason:
    source = rulebook.gaps.again_from_days.source
    return reason(SeasonReason.SCREEN_AGAIN, source, stage=start.stage)


def _carried_on(start: StageStart, way: _Way, stages: Sequence[int]) -> StageStart:
    """Return where the next way begins: the last stage, with the weeks built in it."""
    last = stages[-1]
    built = sum(
        week.kind.builds and stage == last for week, stage in zip(way.weeks, stages, strict=True)
    )
    is_same = last == start.stage
    return StageStart(
        stage=last,
        weeks_in=built + (start.weeks_in if is_same else 0),
        is_re_earned=start.is_re_earned and is_same,
    )
