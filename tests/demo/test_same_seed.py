"""A play is a function of its seed: chance and time are arguments, all the way down."""

from pathlib import Path

from demo_scenario.invariants import check
from demo_scenario.summary import Summary, summary_of
from tests.demo.conftest import play_weeks


def test_same_seed_twice_gives_the_same_week_to_the_letter(tmp_path: Path) -> None:
    first, again = (_summary_of_a_week(tmp_path / name, seed=11) for name in ("one", "two"))
    assert first == again


def _summary_of_a_week(folder: Path, *, seed: int) -> Summary:
    folder.mkdir()
    stage = play_weeks(1, folder, seed=seed)
    return summary_of(stage, seed=seed, weeks=1, broken=check(stage))
