"""What a change of the plan would break is drawn from one look at each week, and is the same."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date, timedelta
from pathlib import Path

import pytest
from sqlalchemy import event

from bot.acts import plan_warnings
from bot.acts.plan_warnings import with_change
from bot.acts.plan_weeks import coming_days
from bot.acts.week_gathered import gathered_week, replanned
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.training.coach_plan import Ban, DayMove, ItemChange, Pin, PlanChange, StandingSwap
from storage.queries import people
from storage.records.people import Athlete, Person
from tests.conversation.athlete_stage import Stage

THURSDAY = date(2026, 3, 5)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    stage.go_to(THURSDAY, 8)
    return stage


@contextmanager
def looked_at(stage: Stage) -> Iterator[tuple[Turn, Person, Athlete]]:
    with stage.turn() as turn:
        athlete = people.athlete(turn.tx, stage.person.id)
        assert athlete is not None
        yield turn, people.person(turn.tx, stage.person.id), athlete


def changes(turn: Turn, person: Person, athlete: Athlete) -> list[PlanChange]:
    day = next(one for one in coming_days(turn, person, athlete) if one.is_open)
    item, library = day.items[0], turn.house.library.movements
    other = next(
        one.key
        for one in library.values()
        if one.direction == item.direction and one.key != item.movement_key
    )
    once = ItemChange(
        on=day.on, pair=item.pair, direction=item.direction, was=item.movement_key,
        movement_key=other,
    )  # fmt: skip
    return [
        PlanChange(add=(entry,))
        for entry in (
            Pin(movement_key=item.movement_key),
            Ban(movement_key=item.movement_key),
            StandingSwap(was=item.movement_key, movement_key=other),
            once,
            DayMove(on=day.on, to=day.on + timedelta(days=1)),
        )
    ]


@pytest.mark.parametrize("which", range(5))
def test_a_week_replanned_is_the_week_gathered_anew(stage: Stage, which: int):
    with looked_at(stage) as (turn, person, athlete):
        changed = with_change(athlete, changes(turn, person, athlete)[which])
        for weeks in range(2):
            monday = monday_of(THURSDAY) + timedelta(weeks=weeks)
            as_it_is = gathered_week(turn, person, athlete, monday=monday)
            anew = gathered_week(turn, person, changed, monday=monday)
            assert replanned(turn, person, changed, as_it_is) == anew
            assert replanned(turn, person, athlete, as_it_is) == as_it_is


def test_what_stands_against_a_change_asks_each_week_of_the_database_once(stage: Stage):
    asked: list[str] = []
    with looked_at(stage) as (turn, person, athlete):
        pin, *_ = changes(turn, person, athlete)

        def count(_c: object, _k: object, statement: str, *_rest: object) -> None:
            asked.append(statement)

        event.listen(stage.database.engine, "before_cursor_execute", count)
        gathered_week(turn, person, athlete, monday=monday_of(THURSDAY))
        one_week, asked[:] = len(asked), []
        plan_warnings.found_against(turn, person, athlete, pin)
        event.remove(stage.database.engine, "before_cursor_execute", count)
    # DERIVED: two weeks; of each the coach's plan alone is looked at again, from few statements
    assert len(asked) <= 3 * one_week
