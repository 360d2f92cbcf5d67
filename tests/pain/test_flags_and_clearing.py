"""Flags until answered, clearing by a person, corrections, return. All CHOSEN unless said."""

import pytest

from scheduler.catalogue.values import Direction
from scheduler.pain.clearing import returning
from scheduler.pain.events import PAIN_EVENT, Certainty
from scheduler.pain.levels import clearing_decision
from scheduler.pain.open_flags import alert_wait
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.picture import AskKind
from scheduler.pain.red_flags import LEARNT, RED_FLAGS, RedFlag, Stops
from scheduler.pain.tap_list import TAP_LINES, TapLine, flag_of_line
from scheduler.pain.values import LeftOut, Level, Region, Side, Site, Urgency
from scheduler.sources import SOURCES
from tests.pain.histories import (
    WRIST,
    answered,
    at,
    cleared,
    corrected,
    flag,
    level,
    morning,
    picture,
    report,
    session,
)

ASKED, CONFIRMED, DENIED = Certainty.ASKED, Certainty.CONFIRMED, Certainty.DENIED
WORDS_ONLY = {RedFlag.PREGNANCY_BLEEDING, RedFlag.OVERDOSE, RedFlag.SELF_HARM}
BY_THE_FOLD = {RedFlag.REST_NOT_FALLING, RedFlag.KEEPS_COMING_BACK}
NECK_ONLY = {RedFlag.NECK_INJURY}


@pytest.mark.parametrize("red_flag", list(RedFlag))
def test_every_flag_is_clinician_or_above_with_a_source(red_flag):
    rule = RED_FLAGS[red_flag]
    assert rule.level >= Level.CLINICIAN
    assert rule.source in SOURCES
    assert (rule.urgency is Urgency.NOW) == (rule.level is Level.EMERGENCY)


def test_the_tap_list_has_six_lines_and_every_sign_that_can_be_tapped_once():
    assert len(TAP_LINES) == len(TapLine) == 6
    tapped = [f for flags in TAP_LINES.values() for f in flags]
    assert len(tapped) == len(set(tapped))
    assert set(tapped) == set(RedFlag) - WORDS_ONLY - BY_THE_FOLD - LEARNT
    assert flag_of_line(TapLine.SHAPE_OR_POP) is RedFlag.JOINT_OUT_OF_PLACE


def test_a_doubt_counts_until_it_is_answered():
    raised = flag(0, RedFlag.CHEST_INSIDE, ASKED)
    seen = picture(raised, day=3)
    assert seen.level is Level.EMERGENCY
    assert seen.rested.everything
    assert AskKind.FLAG in {ask.kind for ask in seen.asks}
    assert picture(raised, answered(0, DENIED)).level is Level.NONE
    assert picture(raised, answered(0, CONFIRMED)).level is Level.EMERGENCY


def test_a_sign_said_outright_is_not_answered_away():
    raised = flag(0, RedFlag.NUMB_OR_WEAK, CONFIRMED)
    assert picture(raised, answered(0, DENIED)).level is Level.CLINICIAN
    confirmed = (flag(0, RedFlag.NUMB_OR_WEAK, ASKED), answered(0, CONFIRMED))
    assert picture(*confirmed, answered(1, DENIED, flag_day=0)).level is Level.CLINICIAN


def test_only_the_coachs_alert_of_an_unanswered_chest_waits_ten_minutes():
    assert alert_wait(RedFlag.CHEST_INSIDE, ASKED).total_seconds() == 600
    assert alert_wait(RedFlag.CHEST_INSIDE, CONFIRMED).total_seconds() == 0
    assert alert_wait(RedFlag.COLLAPSE, ASKED).total_seconds() == 0


def test_today_stops_the_upper_body_and_soon_its_region():
    today = picture(flag(0, RedFlag.NUMB_OR_WEAK, CONFIRMED, site=Site.WRIST))
    assert {d for d, _ in today.rested.directions} == set(Direction)
    assert not today.rested.everything
    soon = picture(flag(0, RedFlag.NIGHT_OR_REST_PAIN, CONFIRMED, site=Site.WRIST, side=Side.LEFT))
    assert soon.rested.demands
    assert not soon.rested.directions
    placeless = picture(flag(0, RedFlag.NIGHT_OR_REST_PAIN, CONFIRMED))
    assert placeless.stops is Stops.UPPER_BODY


def test_a_passing_tingle_takes_out_its_item_and_the_second_one_counts_as_lasting():
    first = flag(0, RedFlag.TINGLING_PASSED, CONFIRMED, movement="bar_hang")
    assert picture(first).rested == LeftOut(movements=frozenset({"bar_hang"}))
    second = picture(first, flag(9, RedFlag.TINGLING_PASSED, CONFIRMED, movement="bar_hang"))
    assert second.urgency is Urgency.TODAY


def test_rest_is_cleared_by_a_reason_and_returns_at_seventy_percent():
    events = (session(0), report(0, 7), cleared(3))
    seen = picture(*events)
    assert seen.level is Level.NONE
    (one,) = seen.returns
    assert (one.share_of_sets, one.sessions_left, one.is_one_step_back) == (0.7, 2, False)


@pytest.mark.parametrize(
    ("level_", "planned", "sets"),
    [
        (Level.REST, 4, 2),  # DERIVED: 0.7 x 4 = 2.8, rounded down
        (Level.REST, 10, 7),  # DERIVED: 0.7 x 10 = 7
        (Level.REST, 1, 1),  # at least one
        (Level.EMERGENCY, 3, 1),  # DERIVED: 0.5 x 3 = 1.5
        (Level.CLINICIAN, 4, 2),  # DERIVED: 0.5 x 4
    ],
)
def test_the_sets_of_a_return(level_, planned, sets):
    assert returning(WRIST, level_, at(0)).sets(planned) == sets


def test_a_return_ends_after_two_sessions_that_load_it():
    events = (session(0), report(0, 7), cleared(3))
    shoulder = Region(site=Site.SHOULDER_FRONT, arm=Side.LEFT)
    other = session(4, shoulder)
    assert picture(*events, other).returns[0].sessions_left == 2
    assert picture(*events, other, session(5)).returns[0].sessions_left == 1
    assert picture(*events, other, session(5), session(6)).returns == ()


def test_clinician_is_not_cleared_without_the_statement_and_a_date():
    events = (flag(0, RedFlag.CANNOT_LIFT_ARM, CONFIRMED),)
    bare = cleared(2, site=None)
    assert clearing_decision(events, bare).reasons[0].code == PainReason.NEEDS_ASSESSMENT
    assert picture(*events, bare).level is Level.CLINICIAN
    undated = cleared(2, site=None, assessed=True)
    assert clearing_decision(events, undated).reasons[0].code == PainReason.NEEDS_TRAINS_FROM
    full = cleared(2, site=None, assessed=True, trains_from=at(5))
    assert clearing_decision(events, full).value
    assert picture(*events, full).level is Level.CLINICIAN  # until the date named
    after = picture(*events, full, day=5)
    assert after.level is Level.NONE
    assert (after.returns[0].share_of_sets, after.returns[0].is_one_step_back) == (0.5, True)


def test_clearing_one_region_leaves_flags_without_a_place():
    events = (report(0, 7), flag(0, RedFlag.COLLAPSE, CONFIRMED), cleared(1))
    assert picture(*events).level is Level.EMERGENCY


def test_there_must_be_something_to_clear():
    decision = clearing_decision((report(0, 2),), cleared(1))
    assert decision.reasons[0].code == PainReason.NOTHING_TO_CLEAR


def test_a_correction_refolds_what_no_person_must_clear():
    assert level(report(0, 4), corrected(0, "r0.1", report(0, 1))) is Level.WATCH
    assert level(report(0, 4), corrected(0, "r0.1", None)) is Level.NONE
    assert level(report(0, 1), corrected(0, "r0.1", report(0, 8))) is Level.REST


def test_a_downward_correction_never_lowers_what_a_person_must_clear():
    events = (report(0, 8), corrected(0, "r0.1", report(0, 1)))
    assert level(*events) is Level.REST
    assert level(*events, corrected(1, "r0.1", report(0, 0))) is Level.REST
    assert level(*events, cleared(2)) < Level.REST


def test_an_upward_correction_after_a_clearing_rests_again():
    assert level(report(0, 6), cleared(1), corrected(2, "r0.1", report(0, 9))) < Level.REST
    assert level(report(0, 4), report(1, 6), cleared(2), corrected(3, "r0.1", report(0, 9))) is (
        Level.REST
    )


def test_elsewhere_waits_for_the_coach():
    seen = picture(report(0, 7, site=Site.ELSEWHERE))
    assert seen.waits_for_coach
    assert seen.rested.everything


def test_the_list_is_due_after_a_new_site_three_or_a_rise_and_not_after_more_of_the_same():
    def is_due(*events):
        return AskKind.TAP_LIST in {ask.kind for ask in picture(*events).asks}

    known = (report(0, 1), flag(0, RedFlag.NUMB_OR_WEAK, DENIED))
    assert is_due(report(0, 1))
    assert not is_due(*known)
    assert not is_due(*known, report(2, 1))
    assert is_due(*known, report(2, 3))
    assert not is_due(report(0, 0))


def test_one_wrist_and_an_outer_elbow_that_comes_back_are_proposed():
    assert [p.kind.value for p in picture(report(0, 2)).patterns] == ["one_wrist"]
    assert picture(report(0, 1)).patterns == ()
    both = report(0, 3, side=Side.RIGHT, hour=2)
    assert picture(report(0, 3), both).patterns == ()
    elbow = [report(d, 1, site=Site.ELBOW_OUTER) for d in (0, 9)]
    assert [p.kind.value for p in picture(*elbow).patterns] == ["outer_elbow_again"]
    assert picture(elbow[0], report(15, 1, site=Site.ELBOW_OUTER)).patterns == ()


def test_events_are_read_back_as_they_were_stored():
    for event in (session(0), report(0, 3), morning(0, 1), cleared(2), corrected(1, "r0.1", None)):
        assert PAIN_EVENT.validate_python(event.model_dump(mode="json")) == event
