"""What was tested lately: for first doses, for the estimate of a capacity, for the checklist."""

from collections.abc import Sequence
from datetime import UTC, date, datetime, time, timedelta

from bot.turn import Turn
from scheduler.training.baseline_course import results_of
from scheduler.training.baseline_start import counted_sets
from scheduler.training.baseline_values import TestedSet
from scheduler.training.standards import BaselineSet
from scheduler.training.tested_sets import best_of_tests
from scheduler.training.values import Best
from storage.queries import first_tests

TESTED_WITHIN = timedelta(weeks=26)
"""[weeks] ch: as far back as the estimate remembers; an older test says little of today."""

ROUND_LONGEST = timedelta(weeks=26)  # [weeks] ch: a round that waits for a lighter week included


def tested_by(turn: Turn, athlete_id: int) -> tuple[TestedSet, ...]:
    """Return what an athlete was tested in lately, the earliest first; read once a turn."""
    found = turn.tested.get(athlete_id)
    if found is None:
        since = turn.now.date() - TESTED_WITHIN
        found = first_tests.tested_sets(turn.tx, athlete_id, since=since)
        turn.tested[athlete_id] = found
    return found


def tested_of(
    turn: Turn, athlete_id: int, keys: Sequence[str], *, before: date | None
) -> tuple[TestedSet, ...]:
    """Return the tests of some movements before a day."""
    return tuple(
        one
        for one in tested_by(turn, athlete_id)
        if one.movement_key in keys and (before is None or one.on < before)
    )


def best_tested(
    turn: Turn, athlete_id: int, movement_key: str, *, before: date | None
) -> Best | None:
    """Return the tested best that a movement's first dose begins from."""
    found = tested_of(turn, athlete_id, [movement_key], before=before)
    return best_of_tests(found, movement_key=movement_key)


def standards_tested(turn: Turn, athlete_id: int, *, since: date) -> tuple[BaselineSet, ...]:
    """Return the tests of an athlete as they count for standards, from a day on."""
    sets: list[BaselineSet] = []
    opened_from = datetime.combine(since, time(0), UTC) - ROUND_LONGEST
    for one in first_tests.rounds(turn.tx, athlete_id, since=opened_from):
        attempts = [record.attempt for record in first_tests.attempts_of(turn.tx, one.id)]
        counted, _ = counted_sets(one.plan, results_of(one.plan, attempts))
        sets += [counts for counts in counted if counts.on >= since]
    return tuple(sets)
