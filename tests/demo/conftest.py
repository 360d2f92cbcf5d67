"""One play is long, so the tests of a whole play look at the same one."""

import asyncio
from pathlib import Path

import pytest

from demo_scenario.play import Stage, play
from demo_scenario.team import default_team
from scheduler.calendar.zones import use_packaged_zones

SEED = 7  # CHOSEN: the demo's own default


def play_weeks(weeks: int, folder: Path, *, seed: int = SEED) -> Stage:
    """Play some weeks into a folder."""
    use_packaged_zones()
    return asyncio.run(
        play(team=default_team(), seed=seed, weeks=weeks, database_file=folder / "demo.sqlite3")
    )


@pytest.fixture(scope="session")
def fortnight(tmp_path_factory: pytest.TempPathFactory) -> Stage:
    """Two weeks, played once."""
    return play_weeks(2, tmp_path_factory.mktemp("fortnight"))
