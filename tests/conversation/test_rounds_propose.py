"""A complete checklist becomes one proposal to the coach, who decides."""

from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

from sqlmodel import Session

from bot.acts.checklist import checklist_of
from scheduler.catalogue.values import Measure, Role, Sides
from scheduler.pain.values import Side
from scheduler.training.gates import Condition
from scheduler.training.values import NO_RESISTANCE, Dose, Quality, Rung, SetDone
from storage.queries import training
from storage.records.training import SessionState
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage

TUESDAY = MONDAY + timedelta(days=1)
# CHOSEN: the standards to leave stage 1, women's column, at 60 kg of body mass;
# DERIVED: 20 % of 60 kg is 12 kg a hand, 10 % is 6 kg.
STANDARDS = (
    ("push_up_hold", Measure.HOLD_S, 45, NO_RESISTANCE),
    ("bar_hang", Measure.HOLD_S, 30, NO_RESISTANCE),
    ("farmer_carry", Measure.CARRY_S, 60, Rung(load_kg=12)),
    ("one_arm_overhead_hold", Measure.HOLD_S, 30, Rung(load_kg=6)),
)


def show_standards(stage: Stage, *, days_ago: tuple[int, ...]) -> None:
    """Write trained sessions in which every standard was done as it is written.

    Two days show a standard; the comparison of the arms is a mean of three sessions (CHOSEN).
    """
    with stage.turn() as turn:
        week = training.add_week(
            turn.tx,
            athlete_id=stage.person.id,
            monday=MONDAY - timedelta(days=7),
            stage=1,
            is_lighter=False,
            next_letter="A",
            relaxations=(),
            reasons=(),
            at=stage.now,
        )
        for days in days_ago:
            on = MONDAY - timedelta(days=days)
            session_id = training.add_session(
                turn.tx,
                athlete_id=stage.person.id,
                week_id=week.id,
                on=on,
                letter="A",
                state=SessionState.TRAINED,
                closed_at=stage.now,
            )
            for position, standard in enumerate(STANDARDS, start=1):
                _show(stage, turn.tx, session_id, position, *standard)


def _show(
    stage: Stage,
    tx: Session,
    session_id: int,
    position: int,
    key: str,
    measure: Measure,
    target: int,
    rung: Rung,
) -> None:
    movement = stage.house.library.movements[key]
    arms = (Side.LEFT, Side.RIGHT)
    item_id = training.add_item(
        tx,
        session_id=session_id,
        position=position,
        pair=1,
        direction=movement.direction,
        role=Role.MAIN,
        movement_key=key,
        quality=Quality.MUSCULAR_ENDURANCE,
        planned_sets=3,
        arms=arms,
    )
    dose = Dose(
        movement_key=key,
        quality=Quality.MUSCULAR_ENDURANCE,
        measure=measure,
        sets=3,
        target=target,
        floor=target,
        rung=rung,
        rest_s=60,
        reserve_asked=0,
    )
    training.snapshot_dose(tx, item_id, dose=dose, reasons=(), arms=arms)
    done = [
        (number, SetDone(side=side, value=target), False)
        for number in (1, 2, 3)
        for side in (arms if movement.sides is Sides.EACH else (Side.BOTH,))
    ]
    training.record_sets(tx, item_id, done, chat_id=1, message_id=None, at=stage.now)


def proposals(stage: Stage) -> list[str]:
    return [text for text in stage.texts(COACH_CHAT) if "has the whole checklist" in text]


def test_a_complete_checklist_is_proposed_once(tmp_path: Path) -> None:
    stage = Stage(tmp_path)
    show_standards(stage, days_ago=(6, 4, 2))
    stage.go_to(date(2026, 3, 4), 4)
    assert len(proposals(stage)) == 1
    assert "Ines" in proposals(stage)[0]
    assert stage.athlete.stage == 1


def test_a_standard_shown_on_one_day_only_is_not_enough(tmp_path: Path) -> None:
    stage = Stage(tmp_path)
    show_standards(stage, days_ago=(6,))
    stage.go_to(date(2026, 3, 4), 4)
    assert proposals(stage) == []


def miss_sessions(stage: Stage, *, days_ago: tuple[int, ...]) -> None:
    with stage.turn() as turn:
        week = training.add_week(
            turn.tx,
            athlete_id=stage.person.id,
            monday=MONDAY - timedelta(days=21),
            stage=1,
            is_lighter=False,
            next_letter="A",
            relaxations=(),
            reasons=(),
            at=stage.now,
        )
        for days in days_ago:
            training.add_session(
                turn.tx,
                athlete_id=stage.person.id,
                week_id=week.id,
                on=MONDAY - timedelta(days=days),
                letter="A",
                state=SessionState.MISSED,
            )


def open_conditions(stage: Stage, *, adherence_weeks: int) -> set[Condition]:
    """Return what the checklist still asks under a rulebook with this span."""
    rulebook = stage.house.rulebook
    weeks = rulebook.gates.adherence_weeks.model_copy(update={"value": adherence_weeks})
    gates = rulebook.gates.model_copy(update={"adherence_weeks": weeks})
    house = replace(stage.house, rulebook=rulebook.model_copy(update={"gates": gates}))
    with stage.turn() as turn:
        asked = checklist_of(replace(turn, house=house), stage.person, stage.athlete)
    return {one.condition for one in asked.open_items}


def test_the_rulebook_says_how_far_back_sessions_must_have_been_kept(tmp_path: Path) -> None:
    stage = Stage(tmp_path)
    show_standards(stage, days_ago=(6, 4, 2))
    miss_sessions(stage, days_ago=(19, 20, 21))
    # DERIVED: 3 of 3 sessions kept in one week; 3 of 6 in four, fewer than three quarters.
    assert Condition.ADHERENCE not in open_conditions(stage, adherence_weeks=1)
    assert Condition.ADHERENCE in open_conditions(stage, adherence_weeks=4)


def test_the_coachs_tap_moves_the_athlete_and_tells_them(tmp_path: Path) -> None:
    stage = Stage(tmp_path)
    show_standards(stage, days_ago=(6, 4, 2))
    stage.go_to(MONDAY, 7, 30)
    stage.tap("Move up", chat_id=COACH_CHAT)
    assert stage.athlete.stage == 2
    assert "2" in stage.last()


def test_a_proposal_that_was_declined_is_not_repeated(tmp_path: Path) -> None:
    stage = Stage(tmp_path)
    show_standards(stage, days_ago=(6, 4, 2))
    stage.go_to(MONDAY, 7, 30)
    stage.tap("Not yet", chat_id=COACH_CHAT)
    stage.go_to(TUESDAY, 12)
    assert len(proposals(stage)) == 1
    assert stage.athlete.stage == 1
