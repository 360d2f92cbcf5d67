"""The lists of signs: level, urgency, source.

PUBLISHED: the signs themselves, in the sources named beside each (their results read, details
secondary where scheduler/sources.py says so). CHOSEN: the sorting into levels and urgencies; a
clinician must check it before use.
"""

import pytest

from scheduler.pain.red_flags import RED_FLAGS, RedFlag, Stops
from scheduler.pain.values import Level, Urgency
from scheduler.sources import SOURCES

NOW, TODAY, SOON, CONVENIENT = Urgency.NOW, Urgency.TODAY, Urgency.SOON, Urgency.CONVENIENT
EMERGENCY = {  # PUBLISHED sign, CHOSEN level
    RedFlag.CHEST_INSIDE: "nhis2019",
    RedFlag.EFFORT_DISCOMFORT: "nhis2019",
    RedFlag.BREATHLESS_AT_REST: "nhis2019",
    RedFlag.COLLAPSE: "ahaacc2015",
    RedFlag.NECK_INJURY: "mccartney2018",
    RedFlag.NECK_WITH_LIMB_SIGNS: "mccartney2018",
    RedFlag.JOINT_OUT_OF_PLACE: "murphy2023",
    RedFlag.HARD_SWOLLEN_LIMB: "boast2016",
    RedFlag.BLADDER_OR_BOWEL: "mccartney2018",
}
CLINICIAN_TODAY = {  # PUBLISHED sign, CHOSEN level and urgency
    RedFlag.SUSPECTED_DISLOCATION: "murphy2023",
    RedFlag.POP_WITH_LOSS: "murphy2023",
    RedFlag.ARM_SWOLLEN_DISCOLOURED: "alla2010",
    RedFlag.OUT_OF_PROPORTION_AFTER_WORK: "rawson2017",
    RedFlag.FEVER_OR_HOT_JOINT: "murphy2023",
    RedFlag.NUMB_OR_WEAK: "mccartney2018",
    RedFlag.PALPITATIONS: "ahaacc2015",
    RedFlag.CANNOT_LIFT_ARM: "rees2021",
}
LATER = {  # CHOSEN
    RedFlag.NIGHT_OR_REST_PAIN: SOON,
    RedFlag.UNEXPLAINED_ILLNESS: SOON,
    RedFlag.CANCER_NIGHT_PAIN: SOON,
    RedFlag.REST_NOT_FALLING: CONVENIENT,
    RedFlag.KEEPS_COMING_BACK: CONVENIENT,
    RedFlag.TINGLING_PASSED: CONVENIENT,
}


@pytest.mark.parametrize(("flag", "source"), EMERGENCY.items())
def test_an_emergency_stops_everything_now(flag, source):
    rule = RED_FLAGS[flag]
    assert (rule.level, rule.urgency, rule.stops) == (Level.EMERGENCY, NOW, Stops.EVERYTHING)
    assert rule.source == source


@pytest.mark.parametrize(("flag", "source"), CLINICIAN_TODAY.items())
def test_a_clinician_today_stops_the_upper_body(flag, source):
    rule = RED_FLAGS[flag]
    assert (rule.level, rule.urgency, rule.stops) == (Level.CLINICIAN, TODAY, Stops.UPPER_BODY)
    assert rule.source == source


@pytest.mark.parametrize(("flag", "urgency"), LATER.items())
def test_what_may_wait_is_told_in_its_time(flag, urgency):
    assert (RED_FLAGS[flag].level, RED_FLAGS[flag].urgency) == (Level.CLINICIAN, urgency)


def test_every_source_resolves():
    assert {rule.source for rule in RED_FLAGS.values()} <= set(SOURCES)
