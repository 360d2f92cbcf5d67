"""Trained sessions of holds, written as they stand behind a training day."""

from collections.abc import Mapping
from datetime import date

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Role
from scheduler.pain.values import Side
from scheduler.training.values import Dose, Quality, ReserveAnswer, SetDone
from storage.queries import training
from storage.records.training import SessionState
from tests.conversation.coach_bench import Bench


def did(bench: Bench, athlete_id: int, on: date, *, seconds: Mapping[str, int]) -> None:
    """Write a trained session of holds: three sets each, 20 s asked, 5 s left."""
    with bench.turn() as turn:
        week = training.add_week(
            turn.tx,
            athlete_id=athlete_id,
            monday=on,
            stage=1,
            is_lighter=False,
            next_letter="A",
            relaxations=(),
            reasons=(),
            at=bench.now,
        )
        session_id = training.add_session(
            turn.tx,
            athlete_id=athlete_id,
            week_id=week.id,
            on=on,
            letter="A",
            state=SessionState.TRAINED,
            closed_at=bench.now,
        )
        for position, (key, value) in enumerate(seconds.items(), start=1):
            movement = default_library().movements[key]
            item_id = training.add_item(
                turn.tx,
                session_id=session_id,
                position=position,
                pair=1,
                direction=movement.direction,
                role=Role.MAIN,
                movement_key=key,
                quality=Quality.MUSCULAR_ENDURANCE,
                planned_sets=3,
                arms=(),
            )
            dose = Dose(
                movement_key=key,
                quality=Quality.MUSCULAR_ENDURANCE,
                measure=movement.measure,
                sets=3,
                target=20,
                floor=15,
                rest_s=60,
                reserve_asked=5,
            )
            training.snapshot_dose(turn.tx, item_id, dose=dose, reasons=(), arms=())
            training.change_item(turn.tx, item_id, reserve=ReserveAnswer(left=5))
            done = [(n, SetDone(side=Side.BOTH, value=value), False) for n in (1, 2, 3)]
            training.record_sets(turn.tx, item_id, done, chat_id=1, message_id=None, at=bench.now)
