"""Two years of an invented athlete: lived through the bot's own acts, read from what is stored."""

from pathlib import Path

import pytest

from demo_scenario.two_years.cli import write_file
from scheduler.calendar.zones import use_packaged_zones

SEED = 5  # CHOSEN: the command's own default
WEEKS = 6  # CHOSEN: the intake, the first weeks and a lighter one


@pytest.fixture(scope="module")
def six_weeks(tmp_path_factory: pytest.TempPathFactory) -> str:
    return _file(tmp_path_factory.mktemp("six_weeks"))


def _file(folder: Path, *, seed: int = SEED, weeks: int = WEEKS) -> str:
    use_packaged_zones()
    text, faults = write_file(weeks=weeks, seed=seed, folder=folder)
    assert faults == ()
    return text


def test_the_same_seed_writes_the_same_file_byte_for_byte(six_weeks: str, tmp_path: Path) -> None:
    assert _file(tmp_path) == six_weeks


def test_another_seed_is_another_life(six_weeks: str, tmp_path: Path) -> None:
    assert _file(tmp_path, seed=6, weeks=2) not in six_weeks


def test_every_week_is_there_with_its_sets_and_its_sessions(six_weeks: str) -> None:
    weeks = six_weeks.split("\n=== Week ")[1:]
    assert len(weeks) == WEEKS
    for week in weeks:
        assert "push:pull" in week
        assert week.count("· day ") == 3  # DERIVED: three weekdays in the diary's profile


def test_every_sent_item_has_a_dose_what_was_done_and_a_reason(six_weeks: str) -> None:
    lines = six_weeks.split("\n")
    items = [place for place, line in enumerate(lines) if line.startswith(("    P", "    x "))]
    assert items
    for place in items:
        if not lines[place].endswith("never sent"):
            assert " → " in lines[place + 1]
            assert "because" in lines[place + 2]


def test_no_sentence_of_the_file_is_made_up_from_a_code(six_weeks: str) -> None:
    assert "By a rule:" not in six_weeks


def test_the_coachs_acts_stand_in_the_file_with_their_words(six_weeks: str) -> None:
    assert "Ottavia: Season changed. “other 6 June 2026 spring test day”" in six_weeks
