"""A week of a season can be drawn: shares, days off, few days, short sessions, a band only."""

from datetime import timedelta

import pytest

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Equipment
from scheduler.training.season_drawing import drawn_as
from scheduler.training.season_values import SeasonWeek, SeasonWeekKind
from scheduler.training.week_check import check_week
from scheduler.training.week_values import WeekRequest
from scheduler.training.weeks import draw_week
from tests.training.athletes import MONDAY, RULEBOOK

LIBRARY = default_library()
Kind = SeasonWeekKind
ALL = frozenset(Equipment)


def usual(**changes):
    fields = {
        "stage": 3,
        "week_start": MONDAY,
        "weekdays": (1, 3, 5),
        "session_min": 50,
        "equipment": ALL,
        "plan_week": 9,
        "stage_week": 5,
    }
    return WeekRequest(**(fields | changes))


def season_week(kind, **changes):
    return SeasonWeek(monday=MONDAY, stage=3, kind=kind, **changes)


def asked(week, usual_request):
    request = drawn_as(week, usual=usual_request).value
    assert request is not None
    return request


def sets_of(request):
    week = draw_week(request, library=LIBRARY, rulebook=RULEBOOK)
    breaches = check_week(week, request=request, library=LIBRARY, rulebook=RULEBOOK)
    assert [one for one in breaches if not one.invariant.may_give_way] == []
    return sum(slot.sets for slot in week.slots if slot.is_main)


def test_an_ordinary_week_is_drawn_as_ever():
    assert asked(season_week(Kind.ORDINARY), usual()) == usual()


@pytest.mark.parametrize("share", [0.6, 0.4])
def test_a_taper_is_drawn_with_its_share_of_the_sets_at_most_a_set_a_place_more(share):
    # CHOSEN: -40 and -60 %; each place keeps one set at least
    full = sets_of(usual())
    tapered = asked(season_week(Kind.TAPER, sets_share=share), usual())
    places = len(
        [s for s in draw_week(tapered, library=LIBRARY, rulebook=RULEBOOK).slots if s.is_main]
    )
    assert places <= sets_of(tapered) <= max(places, share * full)


def test_the_smaller_share_holds():
    week = season_week(Kind.LIGHTER, sets_share=0.6)
    assert asked(week, usual(sets_share=0.5)).sets_share == 0.5
    assert asked(week, usual(sets_share=0.85)).sets_share == 0.6


def test_in_season_two_short_sessions_lie_far_apart():
    week = season_week(Kind.IN_SEASON, days_most=2, session_min_most=30)
    request = asked(week, usual())
    assert (request.weekdays, request.days_a_week, request.session_min) == ((1, 5), 2, 30)
    drawn = draw_week(request, library=LIBRARY, rulebook=RULEBOOK)
    assert len(drawn.sessions) == 2
    assert all(session.minutes <= 30 for session in drawn.sessions)


def test_days_off_are_not_drawn():
    off = frozenset({MONDAY + timedelta(days=4)})
    request = asked(season_week(Kind.TAPER, sets_share=0.4, days_off=off), usual())
    assert request.weekdays == (1, 3)


def test_days_that_the_week_would_choose_itself_respect_days_off_too():
    off = frozenset({MONDAY})
    free_choice = usual(weekdays=(), days_a_week=3)
    request = asked(season_week(Kind.ORDINARY, days_off=off), free_choice)
    assert 1 not in request.weekdays
    assert request.weekdays


def test_away_from_home_only_the_band_that_is_owned_is_used():
    week = season_week(Kind.BAND_ONLY, equipment=frozenset({Equipment.BAND}))
    request = asked(week, usual())
    assert request.equipment == {Equipment.BAND}
    drawn = draw_week(request, library=LIBRARY, rulebook=RULEBOOK)
    assert drawn.slots
    assert all(
        LIBRARY.movements[slot.movement_key].fits(frozenset({Equipment.BAND}))
        for slot in drawn.slots
    )
    bare = usual(equipment=frozenset({Equipment.DUMBBELLS}))
    assert asked(week, bare).equipment == frozenset()


def test_the_stage_held_is_drawn_and_not_the_one_proposed():
    ahead = SeasonWeek(monday=MONDAY, stage=5, kind=Kind.ORDINARY)
    assert asked(ahead, usual(stage=2)).stage == 2


def test_a_break_and_a_week_without_a_day_draw_nothing():
    assert drawn_as(season_week(Kind.BREAK), usual=usual()).value is None
    off = frozenset(MONDAY + timedelta(days=n) for n in range(7))
    assert drawn_as(season_week(Kind.TAPER, days_off=off), usual=usual()).value is None


def test_another_week_is_refused():
    with pytest.raises(ValueError, match="same week"):
        drawn_as(season_week(Kind.ORDINARY), usual=usual(week_start=MONDAY + timedelta(weeks=1)))
