"""What can honestly be reached by the event, from where an athlete really is."""

from datetime import timedelta

from scheduler.training.season_outlook import honest_outlook, replanned
from scheduler.training.season_values import SeasonEvent, SeasonRequest
from scheduler.training.seasons import plan_season
from scheduler.training.values import StageState
from tests.training.athletes import MONDAY, RULEBOOK, codes

EVENT = SeasonEvent(on=MONDAY + timedelta(weeks=38, days=5), is_main=True)


def nine_months(**changes):
    fields = {
        "today": MONDAY,
        "state": StageState(stage=1, entered_on=MONDAY),
        "training_age_months": 2.0,
        "events": (EVENT,),
    }
    return plan_season(SeasonRequest(**(fields | changes)), rulebook=RULEBOOK).value


def outlook_after(weeks, *, stage, weeks_in, season=None):
    today = MONDAY + timedelta(weeks=weeks)
    state = StageState(stage=stage, entered_on=today - timedelta(weeks=weeks_in))
    return honest_outlook(season or nine_months(), today=today, state=state, rulebook=RULEBOOK)


def test_who_is_on_time_keeps_what_was_planned():
    # DERIVED: stage 2 after 11 weeks, as the nine months have it
    found = outlook_after(11, stage=2, weeks_in=0)
    assert (found.value.stage_planned, found.value.stage_honest) == (5, 5)
    assert codes(found)[0] == "season.outlook_as_planned"


def test_who_is_behind_sees_the_stage_that_can_be_reached():
    # CHOSEN least weeks; DERIVED: after 22 of 39 weeks still in stage 1: 39 - 22 - 2 = 15 left,
    # 1 + 8 + 4 = 13 fit, and 4 more do not
    found = outlook_after(22, stage=1, weeks_in=22)
    assert (found.value.stage_planned, found.value.stage_honest) == (5, 3)
    assert found.value.is_behind
    assert codes(found) == ["season.outlook_behind", "season.outlook_next_stage"]
    # the earliest day of stage 2: one week in the plan, and its share of what is left over
    assert found.value.next_stage_on >= MONDAY + timedelta(weeks=23)


def test_who_is_far_behind_holds_the_stage():
    # DERIVED: 39 - 30 - 2 = 7 weeks left, 1 + 8 = 9 needed
    found = outlook_after(30, stage=1, weeks_in=30)
    assert (found.value.stage_honest, found.value.next_stage_on) == (1, None)


def test_who_is_ahead_sees_it():
    season = nine_months(events=(SeasonEvent(on=MONDAY + timedelta(weeks=20), is_main=True),))
    found = outlook_after(10, stage=3, weeks_in=0, season=season)
    assert found.value.stage_honest > found.value.stage_planned
    assert codes(found)[0] == "season.outlook_ahead"


def test_planned_again_half_way_the_two_thirds_are_still_of_the_whole():
    # COMMON PRACTICE two thirds; DERIVED 26 weeks of 39, 11 of them behind: 15 to go
    today = MONDAY + timedelta(weeks=11)
    state = StageState(stage=2, entered_on=today)
    again = replanned(nine_months(), today=today, state=state, rulebook=RULEBOOK)
    assert sum(week.stage == 2 for week in again.weeks) == 15
    assert [block.stage for block in again.blocks[:4]] == [2, 3, 4, 5]


def test_without_an_event_the_outlook_says_so():
    season = nine_months(events=())
    found = outlook_after(2, stage=1, weeks_in=2, season=season)
    assert codes(found)[0] == "season.outlook_no_event"
    assert found.value.event is None
