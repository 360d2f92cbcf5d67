"""What the answers of the intake mean: begin, wait for the coach, hold a direction back.

PUBLISHED riebe2015 (c): known disease, signs or symptoms and activity are asked before exercise.
Which answer waits, and what an injury holds back, is CHOSEN, the careful way.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Direction
from scheduler.pain.values import Side, Site
from scheduler.training.baseline_intake import intake_decision
from scheduler.training.baseline_values import (
    EarlierInjury,
    IntakeAnswers,
    IntakeState,
    ScreenTopic,
)
from tests.training.athletes import RULEBOOK, codes

LIBRARY = default_library()
ALL = frozenset(Direction)


def decided(*topics, **changes):
    answers = IntakeAnswers(topics=frozenset(topics), **changes)
    return intake_decision(answers, library=LIBRARY, rulebook=RULEBOOK)


def test_no_yes_begins_with_nothing_held_back():
    found = decided()
    assert found.value.state is IntakeState.BEGINS
    assert (found.value.held, found.value.may_hang, found.value.may_invert) == (set(), True, True)
    assert codes(found) == ["baseline.begins"]


@pytest.mark.parametrize("topic", sorted(set(ScreenTopic) - {ScreenTopic.PRESSURE_OR_EYES}))
def test_a_yes_waits_for_the_coach(topic):
    assert decided(topic).value.state is IntakeState.WAITS_FOR_COACH


@pytest.mark.parametrize("topic", [ScreenTopic.PRESSURE_OR_EYES, ScreenTopic.PREGNANT])
def test_blood_pressure_eyes_and_pregnancy_mean_nothing_upside_down(topic):
    # COMMON PRACTICE
    assert not decided(topic).value.may_invert


def test_blood_pressure_or_eyes_alone_begin():
    # CHOSEN
    assert decided(ScreenTopic.PRESSURE_OR_EYES).value.state is IntakeState.BEGINS


@pytest.mark.parametrize(
    ("injury", "counts"),
    [
        # CHOSEN: out of joint or operated on ever, hurt within 12 months, not known counts
        (EarlierInjury(site=Site.SHOULDER_FRONT, is_out_or_operated=True, months_ago=240), True),
        (EarlierInjury(site=Site.SHOULDER_FRONT, months_ago=12), True),
        (EarlierInjury(site=Site.SHOULDER_FRONT, months_ago=13), False),
        (EarlierInjury(site=Site.SHOULDER_FRONT), True),
    ],
)
def test_an_injury_counts_ever_or_within_a_year(injury, counts):
    found = decided(injuries=(injury,)).value
    assert (found.state is IntakeState.WAITS_FOR_COACH) is counts
    assert (not found.may_hang) is counts
    assert bool(found.held) is counts


def test_an_injured_front_of_a_shoulder_holds_what_loads_it_and_leaves_rows():
    # COMMON PRACTICE, the table of what is left out: overhead, extension, end-range rotation
    injury = EarlierInjury(site=Site.SHOULDER_FRONT, side=Side.LEFT, months_ago=3)
    held = decided(injuries=(injury,)).value.held
    assert {Direction.VERTICAL_PUSH, Direction.VERTICAL_PULL, Direction.DOWNWARD_PUSH} <= held
    assert not held & {Direction.HORIZONTAL_PULL, Direction.UPWARD_PULL}


@pytest.mark.parametrize(
    "topic", [ScreenTopic.OUT_OR_OPERATED, ScreenTopic.RECENT_INJURY, ScreenTopic.HURTS_NOW]
)
def test_a_joint_that_is_not_known_holds_every_direction(topic):
    assert decided(topic).value.held == ALL
    assert decided(injuries=(EarlierInjury(),)).value.held == ALL


def test_the_coach_lifts_a_direction_and_hangs_each_by_itself():
    injury = (EarlierInjury(site=Site.SHOULDER_FRONT, is_out_or_operated=True),)
    looked = decided(injuries=injury, has_coach_looked=True)
    assert looked.value.state is IntakeState.BEGINS
    assert codes(looked)[0] == "baseline.coach_has_looked"
    assert Direction.VERTICAL_PULL in looked.value.held
    lifted = decided(
        injuries=injury, has_coach_looked=True, lifted=frozenset({Direction.VERTICAL_PULL})
    ).value
    assert Direction.VERTICAL_PULL not in lifted.held
    assert not lifted.may_hang
    assert decided(injuries=injury, are_hangs_lifted=True).value.may_hang


def test_under_eighteen_waits_until_guardian_and_coach_have_agreed():
    assert decided(is_adult=False).value.state is IntakeState.WAITS_FOR_COACH
    for one in ({"has_guardian_agreed": True}, {"has_coach_looked": True}):
        assert decided(is_adult=False, **one).value.state is IntakeState.WAITS_FOR_COACH
    both = decided(is_adult=False, has_guardian_agreed=True, has_coach_looked=True)
    assert both.value.state is IntakeState.BEGINS


def test_a_decision_never_names_a_condition():
    found = decided(ScreenTopic.KNOWN_ILLNESS, ScreenTopic.FAINT)
    assert dict(found.reasons[0].figures) == {"answers": 2}


@given(st.frozensets(st.sampled_from(ScreenTopic)), st.sampled_from(ScreenTopic))
def test_one_more_yes_never_allows_more(topics, more):
    before, after = decided(*topics).value, decided(*topics, more).value
    assert before.held <= after.held
    assert (before.may_hang, before.may_invert) >= (after.may_hang, after.may_invert)
    if before.state is IntakeState.WAITS_FOR_COACH:
        assert after.state is IntakeState.WAITS_FOR_COACH
