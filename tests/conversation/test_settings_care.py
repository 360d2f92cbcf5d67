"""Health, age and old injuries told anew: more care at once, less only by the coach's word."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.acts.injuries import held_directions
from bot.outcomes import Outcome
from scheduler.catalogue.values import Direction
from scheduler.pain.values import Side, Site
from scheduler.training.baseline_values import EarlierInjury
from storage.queries import people
from storage.records.people import AthleteState
from storage.records.training import SessionState
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, PROFILE, Stage

TUESDAY, WEDNESDAY = date(2026, 3, 3), date(2026, 3, 4)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


def health(stage: Stage, *numbers: str) -> None:
    stage.write("/settings")
    for label in ("Health", *numbers, "Done"):
        stage.tap(label)


def with_profile(stage: Stage, **facts: object) -> None:
    with stage.turn() as turn:
        profile = PROFILE.model_copy(update=facts)
        people.change_athlete(turn.tx, stage.person.id, profile=profile)


def test_a_new_sign_holds_at_once_until_the_coach_has_looked(stage: Stage) -> None:
    before = stage.count()
    health(stage, "2")
    assert stage.athlete.state is AthleteState.WAITS_FOR_COACH
    assert stage.session_on(MONDAY).state is SessionState.CALLED_OFF
    assert stage.session_days_after(MONDAY) == []
    told = "".join(stage.since(before))
    assert "call 112 now" in told
    assert "No session comes until then" in told
    coach = stage.last(COACH_CHAT)
    assert "now answers these health questions with yes" in coach
    assert "licensed clinician" in coach


def test_after_the_look_it_goes_on_where_it_stood(stage: Stage) -> None:
    old = stage.athlete
    health(stage, "2")
    stage.go_to(TUESDAY, 9)
    stage.tap("I have looked: let them start", chat_id=COACH_CHAT)
    athlete = stage.athlete
    assert athlete.state is AthleteState.TRAINING
    assert (athlete.started_on, athlete.stage_since) == (old.started_on, old.stage_since)
    assert athlete.profile.screen_yes == ("effort_signs",)
    stage.go_to(WEDNESDAY, 7)
    assert stage.session_on(WEDNESDAY).state is SessionState.SENT


def test_a_break_that_runs_goes_on_after_the_look(stage: Stage) -> None:
    stage.write("/pause 2 weeks")
    health(stage, "2")
    stage.tap("I have looked: let them start", chat_id=COACH_CHAT)
    assert stage.athlete.state is AthleteState.PAUSED
    assert stage.athlete.paused_until == MONDAY + timedelta(days=14)


def test_what_keeps_from_hanging_upside_down_holds_nothing_else(stage: Stage) -> None:
    health(stage, "5")
    assert stage.athlete.state is AthleteState.TRAINING
    assert not stage.athlete.profile.may_invert
    assert "high blood pressure" in stage.last(COACH_CHAT)


def test_an_answer_taken_back_lifts_nothing_until_the_coach_says_so(stage: Stage) -> None:
    with_profile(stage, screen_yes=("pressure_or_eyes",), may_invert=False)
    health(stage, "✓ 5")
    assert stage.athlete.profile.screen_yes == ("pressure_or_eyes",)
    assert not stage.athlete.profile.may_invert
    assert "is asked about that" in "".join(stage.texts()[-2:])
    stage.tap("Take it over", chat_id=COACH_CHAT)
    assert topics(stage) == []
    assert may_invert(stage)
    assert stage.audit("settings.care_lifted")[-1].actor_id == stage.coach.id
    assert "has changed your health answers" in stage.last()


def test_the_coach_may_leave_it_as_it_is(stage: Stage) -> None:
    with_profile(stage, screen_yes=("faint",))
    health(stage, "✓ 3")
    assert "licensed clinician" in stage.last(COACH_CHAT)
    stage.tap("Leave it as it is", chat_id=COACH_CHAT)
    assert stage.athlete.profile.screen_yes == ("faint",)
    assert "leaves your health answers" in stage.last()


def test_an_old_button_of_the_coach_takes_off_only_what_it_was_about(stage: Stage) -> None:
    with_profile(stage, screen_yes=("pressure_or_eyes",), may_invert=False)
    health(stage, "✓ 5")
    card, token = stage.button("Take it over", chat_id=COACH_CHAT)
    health(stage, "3")
    stage.tap_token(token, card.message_id, chat_id=COACH_CHAT)
    assert stage.athlete.profile.screen_yes == ("faint",)
    assert stage.athlete.state is AthleteState.WAITS_FOR_COACH
    again = stage.tap_token(token, card.message_id, chat_id=COACH_CHAT)
    assert again is Outcome.STALE_TAP


def test_a_new_injury_is_asked_about_and_holds_its_directions(stage: Stage) -> None:
    health(stage, "7")
    assert "Which joint and side is that" in stage.last()
    stage.write("left wrist, a fall last month")
    profile = stage.athlete.profile
    assert profile.earlier_injury == "left wrist, a fall last month"
    assert EarlierInjury(site=Site.WRIST, side=Side.LEFT, is_out_or_operated=False) in (
        profile.injuries
    )
    assert "left wrist, a fall last month" in stage.last(COACH_CHAT)
    entry = stage.audit("settings.changed")[-1]
    assert "wrist" not in f"{entry.before} {entry.after}", "words stay where they can be erased"


def test_words_that_name_a_joint_never_narrow_what_an_unnamed_injury_holds(stage: Stage) -> None:
    with_profile(stage, screen_yes=("recent_injury",), earlier_injury="told in person")
    before = held(stage)
    assert before == frozenset(Direction)
    stage.write("/settings injury left wrist, a fall")
    assert held(stage) == before


def test_a_further_injury_takes_back_what_was_given_back(stage: Stage) -> None:
    wrist = EarlierInjury(site=Site.WRIST, side=Side.LEFT, is_out_or_operated=False)
    with_profile(
        stage,
        screen_yes=("recent_injury",),
        earlier_injury="left wrist",
        injuries=(wrist,),
        lifted=frozenset(Direction),
    )
    assert held(stage) == frozenset()
    stage.write("/settings injury right shoulder front, it slipped")
    assert held(stage)
    assert len(stage.athlete.profile.injuries) > 1


def test_somebody_who_says_to_be_under_eighteen_waits_for_a_guardian(stage: Stage) -> None:
    stage.write("/settings age")
    stage.tap("Under 18")
    assert stage.athlete.state is AthleteState.WAITS_FOR_COACH
    assert "parent or guardian" in stage.last()
    stage.write("Kim Example, 555 01 234")
    assert stage.athlete.profile.guardian == "Kim Example, 555 01 234"
    assert "Kim Example" in stage.last(COACH_CHAT)


def test_that_somebody_is_of_age_now_is_for_the_coach_to_take_over(stage: Stage) -> None:
    with_profile(stage, is_adult=False, guardian="Kim Example, 555 01 234")
    stage.write("/settings age")
    stage.tap("18 or older")
    assert not stage.athlete.profile.is_adult
    stage.tap("Take it over", chat_id=COACH_CHAT)
    assert stage.athlete.profile.is_adult


def held(stage: Stage) -> frozenset[Direction]:
    with stage.turn() as turn:
        return held_directions(turn, stage.athlete)


def topics(stage: Stage) -> list[str]:
    return list(stage.athlete.profile.screen_yes)


def may_invert(stage: Stage) -> bool:
    return stage.athlete.profile.may_invert
