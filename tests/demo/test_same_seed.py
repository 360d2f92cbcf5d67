"""A play is a function of its seed: chance and time are arguments, all the way down."""

from datetime import datetime
from pathlib import Path

from demo_scenario.play import Stage
from tests.demo.conftest import SEED, play_weeks

Said = tuple[datetime, str, str]


def test_same_seed_tells_the_same_week_to_the_letter(fortnight: Stage, tmp_path: Path) -> None:
    week = play_weeks(1, tmp_path, seed=SEED)
    ends_at = week.team.ends_at(weeks=1)
    told, again = (said_before(stage, ends_at) for stage in (fortnight, week))
    assert sum(len(chat) for chat in again.values()) > 100  # CHOSEN: a week of eight athletes
    assert again == told


def said_before(stage: Stage, until: datetime) -> dict[str, list[Said]]:
    """Return everybody's chat until then: when, by whom, and what it said at first."""
    return {
        one.name: [
            (shown.sent_at, shown.sender_name, (shown.history or (shown,))[0].text)
            for shown in one.sees()
            if shown.sent_at < until
        ]
        for one in stage.players
    }
