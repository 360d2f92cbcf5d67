"""A coach's own numbers: checked, shown by their place, confirmed, in force.

All figures CHOSEN.
"""

from pathlib import Path

import pytest

from bot.outcomes import Outcome
from scheduler.training.rulebook import packaged_text
from storage.records.media import FileKind
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage
from tests.conversation.own_files import rulebook_of, send, versions


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage(tmp_path)
    stage.go_to(MONDAY, 6)
    return stage


def test_a_changed_number_is_shown_by_its_place_and_in_force_after_the_tap(stage: Stage) -> None:
    text = packaged_text().replace(
        "least_weeks: {value: 6, unit: weeks, source: ch}",
        "least_weeks: {value: 7, unit: weeks, source: ch}",
        1,
    )
    assert send(stage, text, "/standards slower start", name="rulebook.yaml") is Outcome.ASKED
    assert "stages.rows.1.least_weeks.value: 6.0 → 7.0" in stage.last(COACH_CHAT)
    stage.tap("Put in force", chat_id=COACH_CHAT)
    least = rulebook_of(stage).stage(1).least_weeks
    assert least is not None
    assert least.whole == 7
    assert stage.house.rulebook.stage(1).least_weeks != least


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("source: ch}", "source: hearsay}", "expected a key of the bibliography"),
        ("value: 6, unit: weeks", "value: six, unit: weeks", "line"),
        ("movements: [farmer_carry]", "movements: [farmer_walk]", "found farmer_walk"),
        ("least: 4, most: 6", "least: 9, most: 6", "not above most"),
    ],
    ids=["no such source", "no number", "no such movement", "bounds crossed"],
)
def test_wrong_numbers_are_refused_and_change_nothing(
    stage: Stage, old: str, new: str, said: str
) -> None:
    text = packaged_text().replace(old, new, 1)
    assert text != packaged_text()
    assert send(stage, text, "/standards x", name="rulebook.yaml") is Outcome.NOT_UNDERSTOOD
    assert said in stage.last(COACH_CHAT)
    assert versions(stage, "rulebook.yaml", FileKind.STANDARDS) == ()
