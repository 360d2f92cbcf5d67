"""The table of messages: each read as a careful coach would read it."""

from collections import Counter

import pytest

from bot.reading.reply import read
from bot.reading.values import Asked, NotUnderstood
from tests.reading.messages import MESSAGES
from tests.reading.shorthand import shorthand
from tests.reading.team import ITEMS, PLACES, WEDNESDAY


def _read(place: str, text: str) -> str:
    return shorthand(read(text, PLACES[place]), ITEMS, today=WEDNESDAY)


@pytest.mark.parametrize(("place", "text", "expected"), MESSAGES)
def test_a_message_is_read_as_a_careful_coach_would(place, text, expected):
    assert _read(place, text) == expected


def tally() -> Counter[str]:
    """Count messages read right, asked about without need, and silently read wrong."""
    counts: Counter[str] = Counter()
    for place, text, expected in MESSAGES:
        if _read(place, text) == expected:
            counts["right"] += 1
        elif isinstance(read(text, PLACES[place]), Asked | NotUnderstood):
            counts["asked"] += 1
        else:
            counts["silently wrong"] += 1
    return counts


if __name__ == "__main__":
    print(dict(tally()), "of", len(MESSAGES))  # noqa: T201
