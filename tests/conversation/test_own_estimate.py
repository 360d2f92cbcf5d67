"""The reader judges by the athlete's own capacity where it is known, at one question more."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta
from math import log
from pathlib import Path

import pytest
from sqlalchemy import event

from bot.acts.item_facts import known_session
from bot.acts.own_estimate import SPREAD_LOG_LEAST, SPREAD_LOG_UNKNOWN
from bot.reading.known import Estimate
from tests.conversation.athlete_stage import MONDAY, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def train(stage: Stage, days: int) -> None:
    """Train as planned with 10 s or 2 repetitions left, session by session."""
    for place in range(days):
        on = MONDAY + timedelta(days=7 * (place // 3) + 2 * (place % 3))
        stage.go_to(on, 8)
        stage.write("all as planned")
        while top := {"20+", "4+"} & set(stage.screen()[-1].buttons):
            stage.tap("10" if "20+" in top else "2")
        stage.tap("5")
        stage.tap("Nothing hurt")


@contextmanager
def counted(stage: Stage) -> Iterator[list[str]]:
    said: list[str] = []

    def note(_connection, _cursor, statement, *_rest) -> None:
        said.append(statement)

    event.listen(stage.database.engine, "before_cursor_execute", note)
    yield said
    event.remove(stage.database.engine, "before_cursor_execute", note)


def estimates(stage: Stage, on) -> dict[str, Estimate | None]:
    session = stage.session_on(on)
    with stage.turn() as turn:
        known = known_session(turn, turn.tongue(stage.person), session)
    keys = {str(item.id): item.movement_key for item in session.items}
    return {keys[item.ref]: item.estimate for item in known.items}


def test_with_one_look_it_is_the_best_of_late(stage: Stage):
    train(stage, 1)
    stage.go_to(MONDAY + timedelta(days=7), 8)
    found = [one for one in estimates(stage, MONDAY + timedelta(days=7)).values() if one]
    assert found
    assert {one.spread_log for one in found} <= {SPREAD_LOG_UNKNOWN, SPREAD_LOG_LEAST}


def test_with_more_looks_it_is_the_capacity_and_narrower(stage: Stage):
    train(stage, 9)
    on = MONDAY + timedelta(days=21)
    stage.go_to(on, 8)
    found = estimates(stage, on)
    narrow = {key: one for key, one in found.items() if one and one.spread_log < SPREAD_LOG_UNKNOWN}
    assert narrow
    doses = {item.movement_key: item.dose for item in stage.session_on(on).items}
    for key, one in narrow.items():
        dose = doses[key]
        assert dose is not None
        # nobody is judged below the plan: 10 s or 2 repetitions were left at about this target
        assert one.likely > dose.target
        assert log(one.likely / dose.target) < 2.0


def test_a_reply_costs_one_statement_more_whatever_the_session_holds(stage: Stage):
    train(stage, 9)
    stage.go_to(MONDAY + timedelta(days=21), 8)
    with counted(stage) as said:
        stage.write("1) 20")
    about_tests = [one for one in said if "FROM test_attempt" in one]
    about_athletes = [one for one in said if "FROM athlete" in one]
    assert len(about_tests) == 1
    assert len(about_athletes) == 1
