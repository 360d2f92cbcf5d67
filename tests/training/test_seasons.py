"""A season: backwards from the event, two thirds of base, taper, easy weeks, breaks, in season."""

from datetime import date, timedelta

import pytest

from scheduler.training.season_values import (
    Season,
    SeasonEvent,
    SeasonRequest,
    SeasonWeekKind,
    Span,
    Travel,
    monday_of,
)
from scheduler.training.seasons import plan_season, week_kind_on
from scheduler.training.values import StageState
from scheduler.training.volume import WeekKind
from tests.training.athletes import MONDAY, RULEBOOK, codes

Kind = SeasonWeekKind
WEEKDAYS = frozenset({1, 3, 5})


def in_stage(stage: int, *, weeks: int = 0, **changes) -> StageState:
    return StageState(stage=stage, entered_on=MONDAY - timedelta(weeks=weeks), **changes)


def day(week: int, weekday: int = 6) -> date:
    """The weekday [ISO] of a week of the season, counted from 1."""
    return MONDAY + timedelta(weeks=week - 1, days=weekday - 1)


def main_event(week: int, weekday: int = 6) -> SeasonEvent:
    return SeasonEvent(on=day(week, weekday), is_main=True)


def other_event(week: int, weekday: int = 6) -> SeasonEvent:
    return SeasonEvent(on=day(week, weekday), is_main=False)


def span(first_week: int, last_week: int) -> Span:
    return Span(first=day(first_week, 1), last=day(last_week, 7))


def decided(stage: int = 1, **changes):
    fields = {
        "today": MONDAY,
        "state": in_stage(stage),
        "training_age_months": 24.0,
        "weekdays": WEEKDAYS,
    }
    return plan_season(SeasonRequest(**(fields | changes)), rulebook=RULEBOOK)


def planned(stage: int = 1, **changes) -> Season:
    season = decided(stage, **changes).value
    assert isinstance(season, Season)
    return season


def weeks_by_stage(season: Season) -> dict[int, int]:
    building = [week for week in season.weeks if week.kind.builds]
    return {
        stage: sum(week.stage == stage for week in building)
        for stage in sorted({week.stage for week in building})
    }


def in_week(season: Season, number: int):
    return season.weeks[number - 1]


NEWCOMER = {"training_age_months": 2.0}


def test_of_nine_months_a_newcomer_spends_six_in_the_first_two_stages():
    # COMMON PRACTICE: of nine months about six; DERIVED 39 weeks x 2/3 = 26 weeks = 6 months
    season = planned(1, **NEWCOMER, events=(main_event(39),))
    by_stage = weeks_by_stage(season)
    assert by_stage[1] + by_stage[2] == 26
    # CHOSEN: least weeks 6 and 8, 4 and 4; DERIVED 39 - 26 - 2 of taper = 11 = 4 + 4 + 3
    assert by_stage == {1: 11, 2: 15, 3: 4, 4: 4, 5: 3}


@pytest.mark.parametrize(
    "who",
    [NEWCOMER, {"days_untrained_before": 28}, {"is_off_season": True}],
    ids=["newcomer", "returner", "off-season"],
)
def test_newcomers_returners_and_off_seasons_alike_get_two_thirds_of_base(who):
    # COMMON PRACTICE; DERIVED 30 x 2/3 = 20
    by_stage = weeks_by_stage(planned(1, **who, events=(main_event(30),)))
    assert by_stage[1] + by_stage[2] == 20


def test_others_share_the_time_by_the_least_weeks():
    # CHOSEN; DERIVED 14 - 2 = 12 weeks over 5 (8 less 3 done) and 4: 3 left over, 2 and 1
    season = planned(2, state=in_stage(2, weeks=3), events=(main_event(14),))
    assert weeks_by_stage(season) == {2: 7, 3: 5}


def test_who_holds_a_later_stage_is_not_sent_back_for_the_base():
    found = decided(3, is_off_season=True, events=(main_event(30),))
    assert min(week.stage for week in found.value.weeks) == 3
    assert "season.base_is_behind" in codes(found)


def test_a_stage_that_cannot_be_finished_is_not_planned_and_says_what_it_lacks():
    # CHOSEN least weeks; DERIVED 14 - 2 of taper = 12 building weeks, 6 + 8 = 14 needed
    found = decided(1, **NEWCOMER, events=(main_event(14),))
    assert {week.stage for week in found.value.weeks} == {1}
    why = next(one for one in found.reasons if one.code == "season.stage_does_not_fit")
    assert dict(why.figures) == {"stage": 2, "needed_weeks": 14, "weeks": 12}


def test_two_weeks_more_and_the_second_stage_fits():
    # DERIVED from the test above: 16 - 2 = 14 = 6 + 8
    assert weeks_by_stage(planned(1, **NEWCOMER, events=(main_event(16),))) == {1: 6, 2: 8}


def test_a_stage_entered_in_the_middle_of_a_week_is_not_left_a_broken_week_early():
    # CHOSEN: six weeks at least in stage 1
    wednesday = MONDAY + timedelta(days=2)
    season = planned(
        1,
        today=wednesday,
        state=StageState(stage=1, entered_on=wednesday),
        events=(main_event(17),),
    )
    left_on = next(week.monday for week in season.weeks if week.stage == 2)
    assert left_on - wednesday >= timedelta(weeks=6)


def test_a_stage_reached_before_asks_no_weeks_again():
    # CHOSEN: waived when re-earned, one week in the plan; DERIVED 8 - 1 = 7 weeks over 1 and 4,
    # the 2 left over are 0.4 and 1.6, so 1 + 0 and 4 + 2
    again = planned(2, state=in_stage(2, is_re_earned=True), events=(main_event(8),))
    assert weeks_by_stage(again) == {2: 1, 3: 6}
    assert weeks_by_stage(planned(2, events=(main_event(8),))) == {2: 7}


@pytest.mark.parametrize(
    ("weeks", "shares"),
    # CHOSEN: the last week -60 %, the one before -40 %; two weeks from 12 on
    [(12, [0.6, 0.4]), (11, [0.4]), (1, [0.4])],
)
def test_the_taper_keeps_sixty_then_forty_percent_of_the_sets(weeks, shares):
    season = planned(3, events=(main_event(weeks),))
    taper = [week for week in season.weeks if week.kind is Kind.TAPER]
    assert [round(week.sets_share, 6) for week in taper] == shares
    assert day(weeks) in [taper[-1].monday + timedelta(days=days) for days in range(7)]
    assert not any(week.kind.may_step for week in taper)


def test_the_two_weeks_of_taper_lie_in_the_published_band():
    # PUBLISHED bosquet2007, abstract: 41-60 % less volume over two weeks, days and load kept
    season = planned(3, events=(main_event(20),))
    taper = [week for week in season.weeks if week.kind is Kind.TAPER]
    mean_cut = 1 - sum(week.sets_share for week in taper) / len(taper)
    assert len(taper) == 2
    assert 0.41 <= mean_cut <= 0.60
    assert all(week.days_most is None for week in taper)


@pytest.mark.parametrize(
    ("weekday", "is_own_week"),
    # CHOSEN: its own week counts from Thursday on
    [(1, False), (3, False), (4, True), (7, True)],
)
def test_the_taper_ends_with_the_last_week_that_lies_mostly_before_the_event(weekday, is_own_week):
    season = planned(3, events=(main_event(20, weekday),))
    last = [week for week in season.weeks if week.kind is Kind.TAPER][-1]
    assert last.monday == day(20 if is_own_week else 19, 1)
    after = week_kind_on(season, last.monday + timedelta(weeks=1), rulebook=RULEBOOK).value
    assert after.kind is Kind.EASY_AFTER


def test_the_day_before_an_event_and_the_rest_of_its_week_are_free():
    # COMMON PRACTICE: the event's day and the one before
    thursday = in_week(planned(3, events=(main_event(20, 4),)), 20)
    assert thursday.days_off == {day(20, weekday) for weekday in (3, 4, 5, 6, 7)}
    tuesday = in_week(planned(3, events=(main_event(20, 2),)), 20)
    assert tuesday.days_off == {day(20, weekday) for weekday in (1, 2)}


@pytest.mark.parametrize(("weeks", "easy"), [(12, 2), (11, 1)])
def test_after_the_event_one_or_two_easy_weeks_end_the_season(weeks, easy):
    # COMMON PRACTICE: one or two; CHOSEN: two from 12 weeks on
    season = planned(3, events=(main_event(weeks),))
    assert [week.kind for week in season.weeks[weeks:]] == [Kind.EASY_AFTER] * easy
    assert season.weeks[-1].sets_share == RULEBOOK.season.after.sets_share.value
    beyond = week_kind_on(season, day(weeks + easy + 1), rulebook=RULEBOOK)
    assert codes(beyond) == ["season.stage_to_confirm"]


def test_an_event_behind_us_still_has_its_easy_weeks():
    season = planned(
        3, today=day(13, 1), began_on=MONDAY, state=in_stage(3), events=(main_event(12),)
    )
    assert [week.kind for week in season.weeks[:3]] == [
        Kind.EASY_AFTER,
        Kind.EASY_AFTER,
        Kind.ORDINARY,
    ]
    assert season.is_open_ended


def test_other_events_get_a_lighter_week_and_two_free_days():
    # COMMON PRACTICE: sets -40 %
    season = planned(3, events=(main_event(20), other_event(9), other_event(13, 2)))
    assert (in_week(season, 9).kind, in_week(season, 9).sets_share) == (Kind.LIGHTER, 0.6)
    assert in_week(season, 9).days_off == {day(9, 5), day(9, 6)}
    # an event on a Tuesday makes the week before it the lighter one
    assert in_week(season, 12).kind is Kind.LIGHTER
    assert in_week(season, 13).days_off == {day(13, 1), day(13, 2)}


@pytest.mark.parametrize(
    ("stage", "every"),
    # COMMON PRACTICE: every 6th week in stages 1-2, 5th in 3, 4th in 4-5
    [(1, 6), (3, 5), (5, 4)],
)
def test_lighter_weeks_come_by_count(stage, every):
    season = planned(stage, events=(main_event(every + 2),))
    lighter = [n for n, week in enumerate(season.weeks, 1) if week.kind is Kind.LIGHTER]
    assert lighter == [every]


def test_the_weeks_behind_us_count_towards_the_next_lighter_one():
    past = (WeekKind.LIGHTER, *[WeekKind.ORDINARY] * 4)
    assert in_week(planned(1, past=past), 2).kind is Kind.LIGHTER


def test_a_lighter_week_gives_way_to_an_easier_one_right_after_it():
    # CHOSEN; DERIVED: stage 1, week 6 is due, week 7 has the event
    season = planned(1, events=(main_event(30), other_event(7)))
    assert in_week(season, 6).kind is Kind.ORDINARY
    assert in_week(season, 6).reasons[0].code == "season.lighter_gives_way"
    assert in_week(season, 7).kind is Kind.LIGHTER


def test_a_break_counts_neither_way_and_a_fortnight_returns_with_fewer_sets():
    # CHOSEN: 70 and 85 % of the sets after 14 healthy days; DERIVED 18 - 2 - 2 - 2 = 12 of 18
    season = planned(1, events=(main_event(18),), breaks=(span(4, 5),))
    assert [week.kind for week in season.weeks[3:5]] == [Kind.BREAK] * 2
    assert [week.sets_share for week in season.weeks[5:7]] == [0.7, 0.85]
    assert sum(weeks_by_stage(season).values()) == 12
    assert {week.stage for week in season.weeks} == {1}
    assert 2 in {week.stage for week in planned(1, events=(main_event(18),)).weeks}


def test_four_weeks_away_return_by_the_published_shares():
    # PUBLISHED caterisano2019 (c; details m): 50, 70, 80, 90 % of the usual
    season = planned(3, events=(main_event(30),), breaks=(span(4, 7),))
    returning = [week.sets_share for week in season.weeks if week.kind is Kind.RETURNING]
    assert returning == [0.5, 0.7, 0.8, 0.9]


def test_a_few_days_away_cost_only_those_days():
    season = planned(2, events=(main_event(20),), breaks=(Span(first=day(4, 3), last=day(4, 4)),))
    assert in_week(season, 4).kind is Kind.ORDINARY
    assert in_week(season, 4).days_off == {day(4, 3)}


def test_twelve_weeks_away_begin_again_at_stage_two_at_most():
    # CHOSEN: from 84 days on screen and baseline come again, stage 2 at most
    found = decided(4, events=(main_event(50),), breaks=(span(6, 17),))
    season = found.value
    assert "season.screen_again" in codes(found)
    assert in_week(season, 5).stage == 4
    assert in_week(season, 18).stage == 2
    back = [week for week in season.weeks[17:] if week.kind.builds and week.stage == 2]
    assert len(back) >= 8


def test_a_trip_with_a_band_is_a_week_built_for_it():
    trip = Travel(first=day(4, 1), last=day(4, 7))
    week = in_week(planned(2, events=(main_event(20),), travels=(trip,)), 4)
    assert week.kind is Kind.BAND_ONLY
    assert week.equipment == {"band"}
    assert week.kind.builds


def test_a_short_trip_costs_its_day_only():
    # CHOSEN: less than half of the training days
    trip = Travel(first=day(4, 5), last=day(4, 7))
    week = in_week(planned(2, events=(main_event(20),), travels=(trip,)), 4)
    assert (week.kind, week.equipment, week.days_off) == (Kind.ORDINARY, None, {day(4, 5)})


def test_a_lighter_week_away_is_both():
    trip = Travel(first=day(6, 1), last=day(6, 7))
    week = in_week(planned(1, events=(main_event(20),), travels=(trip,)), 6)
    assert (week.kind, week.sets_share, week.equipment) == (Kind.LIGHTER, 0.6, {"band"})


def test_in_season_one_or_two_short_sessions_hold_the_level():
    # COMMON PRACTICE: one or two sessions; CHOSEN: 30 min
    season = planned(
        4, state=in_stage(4, weeks=9), in_season=(span(1, 12),), events=(other_event(3),)
    )
    held = season.weeks[:12]
    assert {week.kind for week in held} == {Kind.IN_SEASON}
    assert {week.stage for week in held} == {4}
    assert [week.days_most for week in held[:4]] == [2, 2, 1, 2]
    assert {week.session_min_most for week in held} == {30}
    assert not any(week.kind.may_step for week in held)


def test_in_season_one_week_of_taper_is_enough_and_keeps_its_days():
    # CHOSEN
    season = planned(4, in_season=(span(1, 14),), events=(main_event(14),))
    taper = [week for week in season.weeks if week.kind is Kind.TAPER]
    assert [(week.sets_share, week.days_most) for week in taper] == [(0.4, 2)]


def test_two_main_events_each_have_their_taper_and_the_stage_goes_on_between():
    season = planned(2, events=(main_event(16), main_event(34)))
    last = {week.monday: week for week in season.weeks if week.sets_share == 0.4}
    assert sorted(last) == [day(16, 1), day(34, 1)]
    assert season.stage_by(day(34)) > season.stage_by(day(16))


def test_a_second_main_event_right_after_the_first_takes_the_easy_week():
    season = planned(3, events=(main_event(12), main_event(13)))
    assert [week.kind for week in season.weeks[10:15]] == [
        Kind.TAPER,
        Kind.TAPER,
        Kind.TAPER,
        Kind.EASY_AFTER,
    ]


def test_without_a_main_event_the_weeks_go_on_with_lighter_ones():
    found = decided(1)
    season = found.value
    assert season.is_open_ended
    assert "season.open_ended" in codes(found)
    assert {week.kind for week in season.weeks} == {Kind.ORDINARY, Kind.LIGHTER}
    far = [
        week_kind_on(season, season.weeks[-1].monday + timedelta(weeks=n), rulebook=RULEBOOK).value
        for n in range(1, 9)
    ]
    # COMMON PRACTICE: every 4th week in stage 5
    assert {week.stage for week in far} == {5}
    assert [week.kind for week in far].count(Kind.LIGHTER) == 2


def test_a_week_before_the_season_is_refused():
    with pytest.raises(ValueError, match="week of the season"):
        week_kind_on(planned(1), MONDAY - timedelta(days=1), rulebook=RULEBOOK)


def test_any_day_of_a_week_names_it():
    season = planned(1)
    found = week_kind_on(season, day(3, 5), rulebook=RULEBOOK).value
    assert found.monday == monday_of(day(3, 5)) == day(3, 1)


@pytest.mark.parametrize(
    "changes",
    [{"weekdays": frozenset()}, {"weekdays": frozenset({8})}, {"began_on": day(2)}],
)
def test_what_makes_no_season_is_refused(changes):
    with pytest.raises(ValueError, match="expected"):
        planned(1, **changes)


def test_days_in_the_wrong_order_are_refused():
    with pytest.raises(ValueError, match="not before the first"):
        Span(first=day(2), last=day(1))
