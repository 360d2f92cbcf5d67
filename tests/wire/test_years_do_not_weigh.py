"""An answer and a round ask the database no more with three years of history than with one.

Counted, not timed: statements, and the steps of SQLite's own machine, which grow with every row
that is looked at, whether it is returned or not.
"""

import asyncio
from collections import defaultdict

import pytest
from sqlalchemy import event

from demo_scenario.benchmarks.years import MEASURES, Lived, lived

DAYS, WARM_UP = 16, 7  # CHOSEN: a week until what is kept is kept, then one that is counted
STEPS_A_CALL = 10  # CHOSEN: how finely SQLite's steps are counted
MOST_MORE = 1.1  # CHOSEN: as the goal for the time, at five years for one


class Counted:
    """What each kind of work asked of the database, in order."""

    def __init__(self, one: Lived) -> None:
        self.statements: dict[str, list[int]] = defaultdict(list)
        self.steps: dict[str, list[int]] = defaultdict(list)
        self._lived = one
        self._now = [0, 0]
        self._noted = [0, 0]
        engine = one.house.database.engine
        event.listen(engine, "before_cursor_execute", self._count_statement)
        raw = engine.raw_connection()
        assert raw.driver_connection is not None
        raw.driver_connection.set_progress_handler(self._count_steps, STEPS_A_CALL)
        raw.close()
        work = one.house._work

        async def counted():
            before = list(self._now)
            took_ms = await work()
            self._noted = [now - then for now, then in zip(self._now, before, strict=True)]
            return took_ms

        one.house._work = counted  # type: ignore[method-assign]  # a counter in between
        one.note = self._note  # type: ignore[method-assign]  # counts in place of times

    def live(self) -> None:
        async def days():
            for number in range(DAYS):
                await self._lived.live_day(number)
                if number == WARM_UP - 1:
                    self.statements.clear()
                    self.steps.clear()

        asyncio.run(days())
        self._lived.house.database.close()

    def _note(self, what, _took_ms):
        self.statements[what].append(self._noted[0])
        self.steps[what].append(self._noted[1])

    def _count_statement(self, *_):
        self._now[0] += 1

    def _count_steps(self):
        self._now[1] += 1


@pytest.fixture(scope="module")
def statements_by_years(tmp_path_factory):
    found = []
    for years in (1, 3):
        one = Counted(lived(tmp_path_factory.mktemp(f"years{years}"), years))
        one.live()
        found.append(one)
    return found


@pytest.mark.parametrize("what", MEASURES)
def test_no_more_statements_are_asked_with_three_years_than_with_one(statements_by_years, what):
    one, three = statements_by_years
    # Where the year ends in a table that only grows is found by halving it: a few more looks.
    assert sum(three.statements[what]) <= MOST_MORE * sum(one.statements[what])
    assert min(one.statements[what]) > 0


@pytest.mark.parametrize("what", MEASURES)
def test_no_more_rows_are_looked_at_with_three_years_than_with_one(statements_by_years, what):
    one, three = statements_by_years
    assert sum(three.steps[what]) <= MOST_MORE * sum(one.steps[what])
    assert sum(one.steps[what]) > 0
