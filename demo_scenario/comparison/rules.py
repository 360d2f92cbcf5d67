"""The progressions that are compared. Each sees what a coach would: reports, never the body.

All begin at the same first dose and own the same loads; only how they go on differs.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Protocol

from demo_scenario.comparison.athletes import Goal
from scheduler.training.capacity_reading import SECONDS_AS_ONE_REP
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.dose_making import Asked, asked_before, make_dose
from scheduler.training.doses import next_dose
from scheduler.training.exposure_reading import is_at_target
from scheduler.training.gaps import NO_GAP
from scheduler.training.loads import next_rung
from scheduler.training.rulebook import Rulebook
from scheduler.training.two_for_two import REPS_OVER_GOAL, is_load_raised
from scheduler.training.values import Dose, Exposure

FIXED_STEP_S = 5  # [s] ch: after each success
SHORT_REP_S = 3.0  # [s] cp: one repetition's time under load


@dataclass(frozen=True, slots=True)
class Ask:
    """What a rule asks for: a dose, and how far the last set may go [s].

    ``is_try``: the standard itself, asked for once because it is likely.
    """

    dose: Dose
    last_set_s: int
    is_try: bool = False


@dataclass(frozen=True, slots=True)
class Trained:
    """What was reported of one ask."""

    exposure: Exposure
    is_try: bool = False


class Progression(Protocol):
    """A rule that goes from reports to the next dose."""

    @property
    def name(self) -> str:
        """What the table calls it."""
        ...

    def ask(self, log: Sequence[Trained], *, facts: DoseFacts, goal: Goal, on: date) -> Ask:
        """Decide what the next exposure asks for; ``log`` is this movement's, oldest first."""
        ...


def plain(dose: Dose) -> Ask:
    """Ask for a dose as it is written."""
    return Ask(dose=dose, last_set_s=dose.target)


@dataclass(frozen=True, slots=True)
class FixedSteps:
    """Five seconds more after each success, and the same again after anything else."""

    rulebook: Rulebook
    name: str = "fixed steps"

    def ask(self, log: Sequence[Trained], *, facts: DoseFacts, goal: Goal, on: date) -> Ask:
        """Step after every exposure that was done as asked."""
        del on
        if not log:
            return plain(next_dose((), facts=facts, rulebook=self.rulebook).value)
        last = log[-1].exposure
        asked = asked_before(last)
        if is_at_target(last, movement=facts.movement):
            asked = _longer_then_heavier(asked, facts=facts, goal=goal, rulebook=self.rulebook)
        return plain(_made(asked, facts=facts, rulebook=self.rulebook))


@dataclass(frozen=True, slots=True)
class TwoForTwo:
    """The published rule, counted in repetitions' worth of seconds (essentials2016).

    The last set may go two repetitions over the goal; where it did at two exposures in a row, the
    load is raised to the next owned one, and where the load is the standard's already, the goal.
    The published raise of 2-10 % of the load is 4-20 % of the time (freylaw2010): 5 s here.
    """

    rulebook: Rulebook
    rep_s: float = SECONDS_AS_ONE_REP
    raise_s: int = FIXED_STEP_S
    name: str = "two for two"

    def ask(self, log: Sequence[Trained], *, facts: DoseFacts, goal: Goal, on: date) -> Ask:
        """Raise load or goal when the rule says so, from what was done at the present ones."""
        del on
        if not log:
            return self._with_room(next_dose((), facts=facts, rulebook=self.rulebook).value)
        asked = asked_before(log[-1].exposure)
        if self._is_raised(log):
            asked = _heavier_then_longer(
                asked, by_s=self.raise_s, facts=facts, goal=goal, rulebook=self.rulebook
            )
        return self._with_room(_made(asked, facts=facts, rulebook=self.rulebook))

    def _is_raised(self, log: Sequence[Trained]) -> bool:
        now = asked_before(log[-1].exposure)
        lately = [one.exposure for one in log if asked_before(one.exposure) == now]
        return is_load_raised(
            [(one.sets[-1].value - now.target) / self.rep_s for one in lately], goal_reps=0
        )

    def _with_room(self, dose: Dose) -> Ask:
        return Ask(dose=dose, last_set_s=dose.target + round(REPS_OVER_GOAL * self.rep_s))


@dataclass(frozen=True, slots=True)
class NoSteps:
    """Never asks for more than the first dose: what the others are measured from."""

    rulebook: Rulebook
    name: str = "no steps"

    def ask(self, log: Sequence[Trained], *, facts: DoseFacts, goal: Goal, on: date) -> Ask:
        """Ask for the same again."""
        del goal, on
        if not log:
            return plain(next_dose((), facts=facts, rulebook=self.rulebook).value)
        asked = asked_before(log[-1].exposure)
        return plain(_made(asked, facts=facts, rulebook=self.rulebook))


def _made(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook) -> Dose:
    """Make the dose with the slot's sets; the simpler rules know of no cuts after gaps."""
    plainly = facts.model_copy(update={"returning": NO_GAP})
    return make_dose(asked, facts=plainly, rulebook=rulebook, reasons=()).value


def _longer_then_heavier(
    asked: Asked, *, facts: DoseFacts, goal: Goal, rulebook: Rulebook
) -> Asked:
    """Step the time to the standard's, then to the next load with as short a time as at first."""
    longer = asked.model_copy(update={"target": asked.target + FIXED_STEP_S})
    if asked.target < goal.asked.target or not _is_lighter(asked, goal):
        return longer
    return (
        _heavier(asked, facts=facts, rulebook=rulebook, to_s=_bottom_s(facts, rulebook)) or longer
    )


def _heavier_then_longer(
    asked: Asked, *, by_s: int, facts: DoseFacts, goal: Goal, rulebook: Rulebook
) -> Asked:
    """Step the load at the same time until it is the standard's, then the time."""
    longer = asked.model_copy(update={"target": asked.target + by_s})
    if not _is_lighter(asked, goal):
        return longer
    return _heavier(asked, facts=facts, rulebook=rulebook, to_s=asked.target) or longer


def _heavier(asked: Asked, *, facts: DoseFacts, rulebook: Rulebook, to_s: int) -> Asked | None:
    following = next_rung(
        asked.rung, movement=facts.movement, profile=facts.profile, steps=rulebook.steps
    )
    if following is None:
        return None
    return asked.model_copy(update={"rung": following.rung, "target": to_s})


def _is_lighter(asked: Asked, goal: Goal) -> bool:
    return (asked.rung.load_kg or 0.0) < (goal.rung.load_kg or 0.0)


def _bottom_s(facts: DoseFacts, rulebook: Rulebook) -> int:
    span = rulebook.quality(facts.quality).hold_s
    if span is None:
        raise ValueError("expected holds")
    return int(span.least)
