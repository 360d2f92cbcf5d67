"""The table of messages: each read as a careful coach would read it."""

from collections import Counter
from collections.abc import Sequence
from time import perf_counter

import pytest

from bot.reading.reply import read
from bot.reading.values import Asked, NotUnderstood
from tests.reading.messages import MESSAGES
from tests.reading.messages_met_later import MESSAGES_MET_LATER
from tests.reading.shorthand import shorthand
from tests.reading.team import ITEMS, PLACES, WEDNESDAY


def _read(place: str, text: str) -> str:
    return shorthand(read(text, PLACES[place]), ITEMS, today=WEDNESDAY)


@pytest.mark.parametrize(("place", "text", "expected"), MESSAGES + MESSAGES_MET_LATER)
def test_a_message_is_read_as_a_careful_coach_would(place, text, expected):
    assert _read(place, text) == expected


def tally(messages: Sequence[tuple[str, str, str]]) -> Counter[str]:
    """Count messages read right, asked about without need, and silently read wrong."""
    counts: Counter[str] = Counter()
    for place, text, expected in messages:
        if _read(place, text) == expected:
            counts["right"] += 1
        elif isinstance(read(text, PLACES[place]), Asked | NotUnderstood):
            counts["asked"] += 1
        else:
            counts["silently wrong"] += 1
    return counts


def milliseconds(messages: tuple[tuple[str, str, str], ...]) -> list[float]:
    """Return the time of each reply, sorted [ms]."""
    times = []
    for place, text, _ in messages * 10:
        start = perf_counter()
        read(text, PLACES[place])
        times.append(1000 * (perf_counter() - start))
    return sorted(times)


def report() -> str:
    """Return the figures of both tables, and the median and 99th percentile of the time."""
    times = milliseconds(MESSAGES + MESSAGES_MET_LATER)
    return (
        f"{dict(tally(MESSAGES))} of {len(MESSAGES)}, "
        f"later {dict(tally(MESSAGES_MET_LATER))} of {len(MESSAGES_MET_LATER)}; "
        f"median {times[len(times) // 2]:.2f} ms, p99 {times[len(times) * 99 // 100]:.2f} ms"
    )


if __name__ == "__main__":
    print(report())  # noqa: T201
