"""A coach's file is kept as it was read until the coach decides: no button carries it.

All figures CHOSEN, unless said otherwise.
"""

from pathlib import Path

import pytest
from sqlmodel import select

from bot.outcomes import Outcome
from bot.rounds import house_round
from scheduler.catalogue.demand_lint import implied_demands
from scheduler.catalogue.library import packaged_texts
from scheduler.catalogue.values import Demand
from storage.queries import due
from storage.tables.media import FileDraftRow
from storage.tables.wire import ButtonRow
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage
from tests.conversation.own_files import ADDED, FILE, less_demanding, send, versions

OF_THE_WRIST = {Demand.WRIST_EXTENSION, Demand.IMPACT, Demand.GRIP}
"""COMMON PRACTICE (left_out.yaml): what a painful wrist leaves out."""


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    stage.go_to(MONDAY, 6)
    return stage


def test_a_button_and_a_question_carry_no_file_and_outlive_a_restart(stage: Stage) -> None:
    send(stage, ADDED, "/movements a gentler shrug")
    with stage.database.transaction() as tx:
        held = [str(row.arguments) for row in tx.exec(select(ButtonRow)).all()]
    assert not any("low_wall_shrug" in one for one in held)
    stage.restart()
    assert stage.tap("Put in force", chat_id=COACH_CHAT) is Outcome.COMMAND
    assert versions(stage)[0].content == ADDED
    with stage.database.transaction() as tx:
        assert tx.exec(select(FileDraftRow)).all() == []  # what is in force is kept once
    send(stage, packaged_texts()[FILE], "/movements")
    stage.restart()
    stage.write("back to what it was", chat_id=COACH_CHAT)
    assert versions(stage)[0].words == "back to what it was"


def test_the_button_of_a_file_that_is_kept_no_more_says_to_send_it_again(stage: Stage) -> None:
    send(stage, ADDED, "/movements a gentler shrug")
    stage.later(days=6)
    forget(stage)
    _, token = stage.button("Put in force", chat_id=COACH_CHAT)
    stage.later(days=2)  # DERIVED: a day past the 7 that a file is kept
    forget(stage)
    assert stage.tap_token(token, None, chat_id=COACH_CHAT) is Outcome.STALE_TAP
    assert stage.last(COACH_CHAT) == "I no longer have that file. Send it again."
    assert versions(stage) == ()


def forget(stage: Stage) -> None:
    with stage.turn() as turn:
        due.clear_mark(turn.tx, house_round.FORGOT)
        house_round.forget(turn)


def test_who_was_hurt_since_the_file_was_shown_keeps_it_from_being_put_in_force(
    stage: Stage,
) -> None:
    movement = next(
        one
        for one in stage.house.library.movements.values()
        if not (one.easier or one.harder)
        and one.demands & OF_THE_WRIST
        and not implied_demands(one) & OF_THE_WRIST
    )
    file, fewer = less_demanding(movement)
    assert send(stage, fewer, "/movements try", name=file) is Outcome.ASKED
    stage.write("left wrist 7/10")
    assert stage.tap("Put in force", chat_id=COACH_CHAT) is Outcome.NOT_UNDERSTOOD
    assert f"{movement.name} is left out or eased for Ines" in stage.last(COACH_CHAT)
    assert versions(stage, file) == ()
