"""What is written down of one athlete under one rule, and how it is read from the reports."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

from demo_scenario.comparison.athletes import Goal
from demo_scenario.comparison.rules import Trained
from scheduler.training.endurance_time import time_at_other_load_s
from scheduler.training.exposure_reading import is_at_target, is_missed
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Exposure, Rung

WEEK_DAYS = 7  # [days] by definition


@dataclass(frozen=True, slots=True)
class Declared:
    """A standard that was declared: on which day, and whether the hidden level was below."""

    on: date
    is_below: bool


@dataclass(slots=True)
class Course:
    """How one athlete fared under one rule.

    ``gain`` [log units an exposure] is the body's own; ``weeks`` [weeks] to all standards, None
    where time was up; ``sessions`` that still trained for one, of them ``missed`` (a set below
    its floor) and ``short`` (a set below its target) [sessions]; ``tries`` [exposures] of a
    standard because it was likely, of them ``shown``; ``jump`` [share] is the largest rise of a
    target within a week, at the standard's load.
    """

    gain: float
    weeks: float | None = None
    sessions: int = 0
    missed: int = 0
    short: int = 0
    tries: int = 0
    shown: int = 0
    jump: float = 0.0
    declared: dict[str, Declared] = field(default_factory=dict)

    def count_session(
        self, exposures: Sequence[tuple[Goal, Exposure]], *, rulebook: Rulebook
    ) -> None:
        """Count a session in which something was still trained for, and what was missed in it."""
        if not exposures:
            return
        self.sessions += 1
        self.missed += any(
            is_missed(one, movement=goal.movement, rulebook=rulebook) for goal, one in exposures
        )
        self.short += any(not is_at_target(one, movement=goal.movement) for goal, one in exposures)

    def count_exposure(self, log: Sequence[Trained], *, goal: Goal) -> None:
        """Count the latest exposure of a movement: a try, and how far its target rose."""
        last = log[-1]
        self.tries += last.is_try
        self.shown += last.is_try and is_at_target(last.exposure, movement=goal.movement)
        self.jump = max(self.jump, rise_in_a_week([one.exposure for one in log], goal=goal))


def rise_in_a_week(exposures: Sequence[Exposure], *, goal: Goal) -> float:
    """Return the rise of the latest target over the least of the seven days before [share]."""
    latest = exposures[-1]
    now_s = demand_s(latest, goal=goal)
    lately = (one for one in reversed(exposures[:-1]) if (latest.on - one.on).days <= WEEK_DAYS)
    return max((now_s / demand_s(one, goal=goal) - 1 for one in lately), default=0.0)


def demand_s(exposure: Exposure, *, goal: Goal) -> float:
    """Return a target as seconds at the standard's load [s] (freylaw2010), to compare loads."""
    return time_at_other_load_s(
        endurance_s=exposure.dose.target,
        load_kg=load_ratio(exposure.dose.rung, goal=goal),
        other_load_kg=1.0,
        joint=goal.asked.joint,
    )


def load_ratio(rung: Rung, *, goal: Goal) -> float:
    """Return what is held, as a share of the standard's load [1]."""
    added_kg = rung.load_kg or 0.0
    if goal.rung.load_kg is None:
        return (goal.reference_kg + added_kg) / goal.reference_kg
    return added_kg / goal.reference_kg
