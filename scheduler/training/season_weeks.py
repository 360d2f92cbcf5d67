"""Each week of a season in full: its share of the sets, its limits, and why."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from scheduler.reasons import Reason, reason
from scheduler.training.gaps import Absence, after_gap
from scheduler.training.rulebook import Rulebook
from scheduler.training.season_calendar import CalendarWeek
from scheduler.training.season_legs import first_week_back
from scheduler.training.season_reasons import SeasonReason
from scheduler.training.season_values import SeasonWeek, SeasonWeekKind
from scheduler.training.volume import LighterSignals, WeekKind, lighter_week

COUNTED_AS = {
    SeasonWeekKind.ORDINARY: WeekKind.ORDINARY,
    SeasonWeekKind.BAND_ONLY: WeekKind.ORDINARY,
    SeasonWeekKind.BREAK: WeekKind.MISSED,
    SeasonWeekKind.RETURNING: WeekKind.RETURNING,
}
"""What a week of a season counts as on the way to the next lighter one: else a lighter one."""


@dataclass(frozen=True)
class Share:
    """What a week leaves of the ordinary sets [fraction, 0-1], and why."""

    sets_share: float
    why: Reason


def finish_weeks(
    calendar: Sequence[CalendarWeek],
    *,
    stages: Sequence[int],
    past: Sequence[WeekKind],
    rulebook: Rulebook,
) -> tuple[SeasonWeek, ...]:
    """Give every week its kind, share and limits; lighter weeks come by count.

    A lighter week that would stand right before another easier one gives way to it (CH), unless
    it is overdue already because a later stage counts fewer weeks.
    """
    counted = list(past)
    weeks: list[SeasonWeek] = []
    for number, (week, stage) in enumerate(zip(calendar, stages, strict=True)):
        ahead = calendar[number + 1 : number + 1 + _gives_way(rulebook)]
        shares = [
            *_by_count(week, stage=stage, past=counted, ahead=ahead, rulebook=rulebook),
            *_by_dates(week, stage=stage, rulebook=rulebook),
        ]
        weeks.append(_finished(week, stage=stage, shares=shares, rulebook=rulebook))
        counted.append(COUNTED_AS.get(weeks[-1].kind, WeekKind.LIGHTER))
    return tuple(weeks)


def _gives_way(rulebook: Rulebook) -> int:
    return rulebook.season.lighter_gives_way_weeks.whole


def _by_count(
    week: CalendarWeek,
    *,
    stage: int,
    past: Sequence[WeekKind],
    ahead: Sequence[CalendarWeek],
    rulebook: Rulebook,
) -> list[Share]:
    """Make an open week lighter when its count is full."""
    if week.kind not in {SeasonWeekKind.ORDINARY, SeasonWeekKind.BAND_ONLY}:
        return []
    due = lighter_week(past=past, stage=stage, signals=LighterSignals(), rulebook=rulebook)
    if not due.value:
        return []
    every = rulebook.stage(stage).lighter_every
    easier = {SeasonWeekKind.ORDINARY, SeasonWeekKind.BAND_ONLY}
    is_overdue = _week_of_count(due.reasons[0]) > every.whole
    if not is_overdue and any(one.kind not in easier for one in ahead):
        source = rulebook.season.lighter_gives_way_weeks.source
        return [Share(1.0, reason(SeasonReason.LIGHTER_GIVES_WAY, source, every=every.whole))]
    why = reason(SeasonReason.LIGHTER_BY_COUNT, every.source, every=every.whole)
    return [Share(1 - rulebook.lighter.cut.value, why)]


def _week_of_count(due: Reason) -> float:
    """Return which week since the last easier one this is [weeks], as the count had it."""
    since = due.figures["weeks_since"]
    return float(since) + 1


def _by_dates(week: CalendarWeek, *, stage: int, rulebook: Rulebook) -> list[Share]:
    """Return every share that the dates ask for, the one of the week's kind first."""
    shares: list[Share] = []
    if week.kind is SeasonWeekKind.TAPER:
        shares.append(_taper(week, rulebook=rulebook))
    if week.kind is SeasonWeekKind.EASY_AFTER and week.leg is not None:
        rules = rulebook.season.after
        on = week.leg.event.on.isoformat()
        why = reason(SeasonReason.EASY_AFTER, rules.sets_share.source, on=on)
        shares.append(Share(rules.sets_share.value, why))
    if week.is_in_season:
        sessions = rulebook.season.in_season.sessions
        why = reason(
            SeasonReason.IN_SEASON,
            sessions.source,
            sessions=_sessions(week, rulebook=rulebook),
            session_min=rulebook.season.in_season.session_min.whole,
        )
        shares.append(Share(1.0, why))
    if week.back_from is not None:
        shares.append(_returning(week, stage=stage, rulebook=rulebook))
    if week.other_event is not None and not week.is_in_season:
        cut = rulebook.lighter.cut
        on = week.other_event.on.isoformat()
        why = reason(SeasonReason.LIGHTER_FOR_EVENT, cut.source, on=on)
        shares.append(Share(1 - cut.value, why))
    return shares


def _taper(week: CalendarWeek, *, rulebook: Rulebook) -> Share:
    """Keep the load and the days, take away sets: -40 %, then -60 % (CH; bosquet2007: 41-60 %)."""
    rules = rulebook.season.taper
    is_last = week.leg is not None and week.monday == week.leg.taper[-1]
    share = rules.last_week_share if is_last else rules.week_before_share
    on = week.leg.event.on.isoformat() if week.leg is not None else ""
    code = SeasonReason.TAPER_LAST if is_last else SeasonReason.TAPER
    return Share(share.value, reason(code, share.source, on=on, share=share.value))


def _returning(week: CalendarWeek, *, stage: int, rulebook: Rulebook) -> Share:
    """Come back from an announced break by the rules of missed days, as after healthy travel."""
    span = week.back_from
    days = span.days if span is not None else 0
    weeks_back = (week.monday - _week_back(week)).days // 7
    found = after_gap(
        days_untrained=days,
        weeks_back=weeks_back,
        absence=Absence.TRAVEL,
        stage=stage,
        rulebook=rulebook,
    ).value
    source = rulebook.gaps.short_from_days.source
    share = found.share_of_sets
    return Share(share, reason(SeasonReason.RETURNING, source, days=days, share=share))


def _week_back(week: CalendarWeek) -> date:
    return first_week_back(week.back_from) if week.back_from is not None else week.monday


def _sessions(week: CalendarWeek, *, rulebook: Rulebook) -> int:
    """Return one session in a week with a lesser event, two in the others (CP).

    A taper keeps its days and sheds sets (bosquet2007).
    """
    sessions = rulebook.season.in_season.sessions
    has_event = bool(week.free_for_event) and week.kind is not SeasonWeekKind.TAPER
    return int(sessions.least if has_event else sessions.most or sessions.least)


def _finished(
    week: CalendarWeek, *, stage: int, shares: Sequence[Share], rulebook: Rulebook
) -> SeasonWeek:
    """Put a week together; of several shares the smallest holds."""
    if week.kind is SeasonWeekKind.BREAK:
        days = week.broken_by.days if week.broken_by is not None else 7
        why = reason(SeasonReason.BREAK, rulebook.gaps.no_step_from_days.source, days=days)
        return SeasonWeek(
            monday=week.monday,
            stage=stage,
            kind=week.kind,
            days_off=week.days_off,
            reasons=(why,),
        )
    share = min((one.sets_share for one in shares), default=1.0)
    is_lighter = any(one.why.code == SeasonReason.LIGHTER_BY_COUNT for one in shares)
    in_season = rulebook.season.in_season
    return SeasonWeek(
        monday=week.monday,
        stage=stage,
        kind=SeasonWeekKind.LIGHTER if is_lighter else week.kind,
        sets_share=share,
        days_most=_sessions(week, rulebook=rulebook) if week.is_in_season else None,
        session_min_most=in_season.session_min.whole if week.is_in_season else None,
        equipment=week.equipment,
        days_off=week.days_off,
        reasons=_reasons(week, shares, rulebook=rulebook),
    )


def _reasons(
    week: CalendarWeek, shares: Sequence[Share], *, rulebook: Rulebook
) -> tuple[Reason, ...]:
    found = [one.why for one in shares]
    if week.equipment is not None:
        names = " ".join(sorted(one.value for one in week.equipment))
        source = rulebook.season.base_share.source
        found.append(reason(SeasonReason.BAND_ONLY, source, equipment=names))
    if not found:
        source = rulebook.season.base_share.source
        found.append(reason(SeasonReason.ORDINARY_WEEK, source))
    if week.free_for_event:
        free = rulebook.season.taper.free_days_before
        days = len(week.free_for_event)
        found.append(reason(SeasonReason.FREE_DAYS, free.source, days=days))
    return tuple(found)
