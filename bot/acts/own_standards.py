"""The standards of an athlete's stage in their own figures, and what the coach decided of them."""

from datetime import UTC, date, datetime, time, timedelta

from bot.acts.injuries import held_directions
from bot.acts.tested import standards_tested
from bot.turn import Turn
from scheduler.training.own_standards import asked_of
from scheduler.training.standards import Requirement, standing
from storage.queries import care, history
from storage.records.people import Athlete

DECIDED = "standard.decided"
SHOWN_WITHIN = timedelta(weeks=52)
"""[weeks] ch: what was shown before this stage and longer ago is shown again."""


def own_standard(turn: Turn, athlete: Athlete, movement_key: str) -> Requirement | None:
    """Return what a standard of the stage asks of a movement; None where no figures do."""
    rulebook = turn.house.rulebook
    for row in rulebook.standards.get(athlete.stage, ()):
        if movement_key not in row.movements:
            continue
        return asked_of(
            row,
            profile=athlete.profile.facts,
            movements=turn.house.library.movements,
            held=held_directions(turn, athlete),
            rulebook=rulebook,
        ).value
    return None


def is_shown(turn: Turn, athlete: Athlete, asked: Requirement) -> bool:
    """Tell whether a standard needs no showing any more: shown, or decided by the coach."""
    if decided_by_coach(turn, athlete).get(asked.key):
        return True
    since = counts_from(athlete, today=turn.now.date())
    exposures = history.exposures(turn.tx, athlete.person_id, asked.movements, since=since)
    tests = standards_tested(turn, athlete.person_id, since=since)
    return standing(asked, exposures=exposures, tests=tests, rulebook=turn.house.rulebook).is_shown


def counts_from(athlete: Athlete, *, today: date) -> date:
    """Return the day from which what was done shows a standard: the whole stage, or a year."""
    return min(athlete.stage_since, today - SHOWN_WITHIN)


def decided_by_coach(turn: Turn, athlete: Athlete) -> dict[str, bool]:
    """Return the standards that the coach decided on a clip in this stage, the latest word."""
    day_before = athlete.stage_since - timedelta(days=1)
    since = datetime.combine(day_before, time(0), UTC)
    entries = care.audit_of(turn.tx, athlete.person_id, what=(DECIDED,), since=since)
    return {
        str(entry.after["key"]): bool(entry.after["is_met"])
        for entry in reversed(entries)
        if entry.after.get("of_stage") == athlete.stage
    }
