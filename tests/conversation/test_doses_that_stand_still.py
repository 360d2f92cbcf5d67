"""The coach is told of a dose that has stood still for two months, and why it does."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from scheduler.catalogue.values import Direction, Measure, Role
from scheduler.pain.values import Side
from scheduler.training.values import Dose, Quality, SetDone
from storage.queries import training
from storage.records.training import SessionState
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage, local


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def _trained(stage: Stage, on: date, *, target: int) -> None:
    """One trained session with one main movement, written as the record has it."""
    dose = Dose(
        movement_key="bar_hang",
        quality=Quality.MUSCULAR_ENDURANCE,
        measure=Measure.HOLD_S,
        sets=3,
        target=target,
        floor=1,
        rest_s=60,
        reserve_asked=15,
    )
    with stage.turn() as turn:
        monday = on - timedelta(days=on.weekday())
        week = training.week(turn.tx, stage.person.id, monday) or training.add_week(
            turn.tx, athlete_id=stage.person.id, monday=monday, stage=1, is_lighter=False,
            next_letter="A", relaxations=(), reasons=(), at=turn.now,
        )  # fmt: skip
        at = local(on, 9)
        session = training.add_session(
            turn.tx, athlete_id=stage.person.id, week_id=week.id, on=on, letter="A",
            state=SessionState.TRAINED, sent_at=at, trained_at=at, closed_at=at, minutes=30,
        )  # fmt: skip
        item = training.add_item(
            turn.tx, session_id=session, position=1, pair=1, direction=Direction.VERTICAL_PULL,
            role=Role.MAIN, movement_key="bar_hang", quality=dose.quality, planned_sets=3,
            arms=(Side.LEFT, Side.RIGHT),
        )  # fmt: skip
        training.snapshot_dose(turn.tx, item, dose=dose, reasons=(), arms=(Side.LEFT, Side.RIGHT))
        sets = [(number, SetDone(value=float(target)), True) for number in (1, 2, 3)]
        training.add_sets(turn.tx, item, sets, chat_id=1, message_id=None, at=at)


def _weeks(stage: Stage, count: int, *, target: int = 30) -> None:
    for back in range(count, 0, -1):
        _trained(stage, MONDAY - timedelta(weeks=back, days=-1), target=target)


def test_who_names_what_has_stood_still_and_for_how_long(stage: Stage):
    _weeks(stage, 10)
    stage.write("/who ines", chat_id=COACH_CHAT)
    shown = "\n".join(stage.texts(COACH_CHAT))
    assert "The same dose for two months or more" in shown
    # DERIVED: the first was on Tuesday 23 December 2025, 69 days before Monday 2 March: 9 weeks
    assert "Bar hang 3 × 30 s, 9 weeks since Tue 23 Dec" in shown


def test_nothing_is_said_where_the_dose_moved(stage: Stage):
    _weeks(stage, 5)
    _weeks(stage, 4, target=35)
    stage.write("/who ines", chat_id=COACH_CHAT)
    assert "The same dose" not in "\n".join(stage.texts(COACH_CHAT))


def test_the_digest_has_a_line_for_it_when_it_is_news_and_not_a_week_later(stage: Stage):
    _weeks(stage, 9)
    stage.go_to(MONDAY + timedelta(days=12), 20)
    digests = [
        row.payload["text"]
        for row in stage.rows(COACH_CHAT)
        if row.kind == "digest" and "text" in row.payload
    ]
    # DERIVED: 60 days behind Tuesday 30 December is 28 February, the first day of the digest of
    # 7 March; its last day is 66 days behind: 9 weeks
    assert "Ines · Bar hang 3 × 30 s, 9 weeks since" in digests[0]
    assert len(digests) == 2
    assert "Bar hang 3 × 30 s" not in digests[1]


def test_the_plan_says_of_the_item_that_it_stands_still_and_what_it_takes(stage: Stage):
    _weeks(stage, 10)
    stage.go_to(MONDAY, 5)
    stage.write("/plan ines", chat_id=COACH_CHAT)
    days = [label for label in stage.screen(COACH_CHAT)[-1].buttons if "Mar" in label]
    for day in days:
        stage.write("/plan ines", chat_id=COACH_CHAT)
        stage.tap(day, chat_id=COACH_CHAT)
        text = stage.last(COACH_CHAT)
        if "Bar hang\n" in text:
            number = text.split(". Bar hang")[0].splitlines()[-1].strip()
            stage.tap(number, chat_id=COACH_CHAT)
            assert "The same dose for 9 weeks, 10 times." in stage.last(COACH_CHAT)
            return
    raise AssertionError("no bar hang in the week")
