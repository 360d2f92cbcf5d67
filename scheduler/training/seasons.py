"""Plan a season backwards from its main events, and say what one week of it is."""

from datetime import date

from scheduler.reasons import Decision, Reason, reason
from scheduler.training.rulebook import Rulebook
from scheduler.training.season_calendar import calendar_week
from scheduler.training.season_legs import Leg, legs_of, mondays
from scheduler.training.season_reasons import SeasonReason
from scheduler.training.season_values import (
    A_WEEK,
    Season,
    SeasonRequest,
    SeasonWeek,
    SeasonWeekKind,
    monday_of,
)
from scheduler.training.season_ways import stages_of
from scheduler.training.season_weeks import finish_weeks


def plan_season(request: SeasonRequest, *, rulebook: Rulebook) -> Decision[Season]:
    """Plan the weeks from this one to the easy ones after the last main event (CP, CH).

    Backwards from each main event: one or two weeks of taper, then as many stages as fit with
    their least weeks in full; newcomers, returners and off-seasons spend about two thirds of the
    time in stages 1 and 2. Without a main event the weeks go on open-ended, with lighter ones by
    count. A season proposes dates: whoever is not ready stays, and it is planned again from
    there, never faster.
    """
    legs = legs_of(request, rulebook=rulebook)
    until = _until(request, legs, rulebook=rulebook)
    return _planned(request, legs=legs, until=until, rulebook=rulebook)


def week_kind_on(season: Season, monday: date, *, rulebook: Rulebook) -> Decision[SeasonWeek]:
    """Say what a week of a season is, so that it can be drawn.

    Parameters: ``monday``, any day of the week asked about. An open-ended season goes on as far
    as is asked; after the end of another the week is ordinary, at the stage that the coach
    confirms.

    Raises:
        ValueError: the week lies before the season; what is past is known from the record.

    """
    monday = monday_of(monday)
    if monday < season.weeks[0].monday:
        raise ValueError(f"expected a week of the season or after it, got {monday.isoformat()}")
    if monday > season.weeks[-1].monday and season.is_open_ended:
        season = _gone_on(season, monday, rulebook=rulebook)
    found = next((week for week in season.weeks if week.monday == monday), None)
    if found is not None:
        return Decision(value=found, reasons=found.reasons)
    why = reason(SeasonReason.STAGE_TO_CONFIRM, rulebook.season.after.weeks.source)
    week = SeasonWeek(
        monday=monday,
        stage=season.weeks[-1].stage,
        kind=SeasonWeekKind.ORDINARY,
        reasons=(why,),
    )
    return Decision(value=week, reasons=week.reasons)


def _until(request: SeasonRequest, legs: tuple[Leg, ...], *, rulebook: Rulebook) -> date:
    """Return the Monday after the last week of a season."""
    first = monday_of(request.today)
    if _is_open_ended(request):
        return first + rulebook.season.open_weeks.whole * A_WEEK
    return max(legs[-1].until, first + A_WEEK)


def _is_open_ended(request: SeasonRequest) -> bool:
    return not request.main_events


def _planned(
    request: SeasonRequest, *, legs: tuple[Leg, ...], until: date, rulebook: Rulebook
) -> Decision[Season]:
    calendar = tuple(
        calendar_week(monday, request=request, legs=legs, rulebook=rulebook)
        for monday in mondays(monday_of(request.today), until)
    )
    found = stages_of(calendar, request=request, legs=legs, rulebook=rulebook)
    weeks = finish_weeks(calendar, stages=found.stages, past=request.past, rulebook=rulebook)
    season = Season(request=request, weeks=weeks, is_open_ended=_is_open_ended(request))
    return Decision(value=season, reasons=(*_standing_reasons(season, rulebook), *found.reasons))


def _standing_reasons(season: Season, rulebook: Rulebook) -> tuple[Reason, ...]:
    """Say what holds for every season: the checklist decides, and what comes at its end."""
    rules = rulebook.season
    decides = reason(SeasonReason.CHECKLIST_DECIDES, rules.base_share.source)
    if season.is_open_ended:
        goes_on = reason(SeasonReason.OPEN_ENDED, rules.open_weeks.source, weeks=len(season.weeks))
        return (decides, goes_on)
    return (decides, reason(SeasonReason.STAGE_TO_CONFIRM, rules.after.weeks.source))


def _gone_on(season: Season, monday: date, *, rulebook: Rulebook) -> Season:
    """Return an open-ended season with more of its weeks, the planned ones unchanged."""
    legs = legs_of(season.request, rulebook=rulebook)
    until = monday + A_WEEK
    return _planned(season.request, legs=legs, until=until, rulebook=rulebook).value
