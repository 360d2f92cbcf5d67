"""How many taps and messages a day costs: printed figures, and about seven taps on a good day."""

import sys
from collections import Counter
from dataclasses import dataclass
from pathlib import Path

import pytest

from storage.records.training import SessionState
from tests.conversation.athlete_stage import ATHLETE_CHAT, MONDAY, Stage

ABOUT_SEVEN = 8  # CHOSEN: "about 7 taps" of a good day


@dataclass
class Counted:
    """What an athlete did, and what the bot wrote meanwhile."""

    stage: Stage
    taps: int = 0
    texts: int = 0

    def tap(self, *labels: str) -> None:
        for label in labels:
            self.stage.tap(label)
            self.taps += 1

    def write(self, text: str) -> None:
        self.stage.write(text)
        self.texts += 1

    def told(self, name: str, since: int) -> str:
        kinds = Counter(row.operation for row in self.stage.rows(ATHLETE_CHAT)[since:])
        return (
            f"{name}: {self.taps} taps, {self.texts} texts; the bot sends {kinds['send']} messages "
            f"and turns {kinds['edit']}"
        )


@pytest.fixture
def day(tmp_path: Path) -> Counted:
    stage = Stage.with_first_session(tmp_path)
    return Counted(stage)


def show(capsys: pytest.CaptureFixture[str], line: str) -> None:
    with capsys.disabled():
        sys.stdout.write(f"\n{line}\n")


def test_a_good_day_by_taps(day: Counted, capsys: pytest.CaptureFixture[str]) -> None:
    day.tap("All as planned", "15", "15", "3", "3", "6", "Nothing hurt")
    show(capsys, day.told("a good day by taps", since=0))
    assert day.stage.session_on(MONDAY).closed_at is not None
    assert day.taps <= ABOUT_SEVEN


def test_a_good_day_in_words(day: Counted, capsys: pytest.CaptureFixture[str]) -> None:
    day.write("1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15")
    day.tap("15", "15", "3", "3", "6", "Nothing hurt")
    show(capsys, day.told("a good day in words", since=0))
    assert day.stage.session_on(MONDAY).closed_at is not None


def test_a_day_without_time(day: Counted, capsys: pytest.CaptureFixture[str]) -> None:
    day.tap("Can't today", "No time")
    show(capsys, day.told("a day without time", since=0))
    assert day.stage.session_on(MONDAY).state is SessionState.CALLED_OFF


def test_a_bad_day_with_a_swap_and_pain(day: Counted, capsys: pytest.CaptureFixture[str]) -> None:
    day.tap("Swap one", "Bar hang", "Does not feel right", "Hang, feet helping")
    day.write("1) 20 20 12\n2) 15 15")
    day.tap("Something hurts", "Wrist", "Left", "3", "None of these")
    while "Nothing hurt" not in day.stage.screen()[-1].buttons and day.taps < 30:
        labels = list(day.stage.screen()[-1].buttons)
        if not labels:
            break
        day.tap(labels[0])
    show(capsys, day.told("a bad day with a swap and pain", since=0))
    assert day.stage.picture().level.name == "EASE"
