"""Old injuries given back, standards decided on a clip, upkeep: on record, with a reason."""

from pathlib import Path

import pytest

from bot.acts.checklist import checklist_of
from bot.acts.injuries import held_directions
from bot.acts.old_injuries import injuries_of
from bot.outcomes import Outcome
from scheduler.catalogue.values import Arm, Direction
from scheduler.pain.values import Side, Site
from scheduler.training.gates import Condition
from storage.queries import people
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def _to_coach(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


def _hurt_long_ago(stage: Stage, words: str, *, at_stage: int = 3) -> None:
    screen = ("out_or_operated",)
    profile = stage.athlete.profile.model_copy(
        update={
            "screen_yes": screen,
            "earlier_injury": words,
            "injuries": injuries_of(words, screen=frozenset(screen)),
        }
    )
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, profile=profile, stage=at_stage)


def _held(stage: Stage) -> frozenset[Direction]:
    with stage.turn() as turn:
        return held_directions(turn, stage.athlete)


def test_the_joint_that_is_named_holds_its_own_directions(stage: Stage):
    _hurt_long_ago(stage, "operated on my left wrist in 2021")
    (injury,) = stage.athlete.profile.injuries
    assert (injury.site, injury.side, injury.is_out_or_operated) == (Site.WRIST, Side.LEFT, True)
    assert _held(stage)


def test_words_that_name_no_joint_hold_every_direction(stage: Stage):
    _hurt_long_ago(stage, "told in person")
    assert _held(stage) == frozenset(Direction)


def test_a_held_direction_keeps_to_straight_arms_at_a_higher_stage(stage: Stage):
    _hurt_long_ago(stage, "left shoulder, dislocated", at_stage=3)
    held = _held(stage)
    stage.go_to(MONDAY, 7)
    session = stage.session_on(MONDAY)
    mine = [
        stage.movement(item)
        for item in session.items
        if item.pair is not None and item.direction in held
    ]
    assert mine
    assert all(movement.arm is Arm.STRAIGHT for movement in mine)


def test_the_coach_gives_a_direction_back_with_a_reason(stage: Stage):
    _hurt_long_ago(stage, "left shoulder, dislocated")
    assert _to_coach(stage, "/giveback ines") is Outcome.ASKED
    assert "Why? Write it in a few words" in stage.last(COACH_CHAT)
    assert _to_coach(stage, "seen by her physio, full range") is Outcome.ASKED
    stage.tap("Overhead pushing", chat_id=COACH_CHAT)
    assert Direction.VERTICAL_PUSH not in _held(stage)
    (entry,) = stage.audit("injury.given_back")
    assert entry.words == "seen by her physio, full range"
    assert "overhead pushing goes on" in stage.last()
    stage.tap("All of it", chat_id=COACH_CHAT)
    assert _held(stage) == frozenset()
    assert stage.tap("All of it", chat_id=COACH_CHAT) is Outcome.STALE_TAP


def test_nothing_held_is_said_plainly(stage: Stage):
    assert _to_coach(stage, "/giveback ines looks fine") is Outcome.COMMAND
    assert "Nothing of Ines is held back" in stage.last(COACH_CHAT)


def test_a_standard_decided_on_a_clip_counts_and_can_be_taken_back(stage: Stage):
    assert _to_coach(stage, "/shown ines") is Outcome.ASKED
    _to_coach(stage, "clip of Tuesday, even and quiet")
    stage.tap("Hang: shown", chat_id=COACH_CHAT)
    assert _standards_met(stage) == 1
    _to_coach(stage, "/shown ines looked again, elbows bend")
    stage.tap("Hang: not shown after all", chat_id=COACH_CHAT)
    assert _standards_met(stage) == 0
    assert [row.words for row in stage.audit("standard.decided")] == [
        "clip of Tuesday, even and quiet",
        "looked again, elbows bend",
    ]


def test_a_standard_of_another_stage_is_not_decided_by_an_old_button(stage: Stage):
    _to_coach(stage, "/shown ines clip of Tuesday")
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, stage=2)
    assert stage.tap("Hang: shown", chat_id=COACH_CHAT) is Outcome.STALE_TAP
    assert not stage.audit("standard.decided")


def _standards_met(stage: Stage) -> int:
    with stage.turn() as turn:
        found = checklist_of(turn, stage.person, stage.athlete)
    return sum(one.is_met for one in found.items if one.condition is Condition.STANDARD)


def test_upkeep_adds_easy_bent_arm_sets_and_says_so(stage: Stage):
    assert _to_coach(stage, "/upkeep ines on") is Outcome.NOT_UNDERSTOOD
    assert _to_coach(stage, "/upkeep ines on dips at the club twice a week") is Outcome.COMMAND
    assert "two easy bent-arm sets" in stage.last(COACH_CHAT)
    assert "bent-arm work go on" in stage.last()
    stage.go_to(MONDAY, 7)
    extra = [
        item
        for item in stage.session_on(MONDAY).items
        if item.pair is None
        and stage.movement(item).arm is Arm.BENT
        and stage.movement(item).role.value == "main"
    ]
    assert extra
    # CHOSEN: 4 or more repetitions in reserve (20 s for holds).
    assert all(item.dose is not None and item.dose.reserve_asked >= 4 for item in extra)
    assert _to_coach(stage, "/upkeep ines on again") is Outcome.NOT_UNDERSTOOD
    assert _to_coach(stage, "/upkeep ines off season is over") is Outcome.COMMAND
    assert not stage.athlete.profile.has_upkeep
