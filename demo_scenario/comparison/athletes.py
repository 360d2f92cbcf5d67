"""The simulated athletes: figures, loads, bodies, and the days on which they train."""

import random
from dataclasses import dataclass
from datetime import date, timedelta

from demo_scenario.comparison.assumptions import Assumptions
from demo_scenario.comparison.bodies import Traits, draw_traits
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import ALWAYS_AT_HAND, Equipment, Movement
from scheduler.training.capacity_reading import resistance_kg
from scheduler.training.endurance_time import CURVES
from scheduler.training.equivalents import equivalent
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import Requirement, requirements
from scheduler.training.values import AthleteProfile, ReferenceValues, Rung

BEGINS = date(2026, 1, 5)  # a Monday
STAGE = 1  # [stage] ch: whose leave standards are trained for
TRAINING_WEEKDAYS = (0, 2, 4)  # [days after Monday] cp: three days a week by default
SESSIONS = (
    ("push_up_hold", "bar_hang"),
    ("one_arm_overhead_hold", "farmer_carry"),
)  # in turn; the two that grip lie on different days
BREAK_EVERY_WEEKS = 12  # [weeks] ch
KITS_KG = (
    tuple(float(kg) for kg in range(2, 33, 2)),
    (2.5, 5.0, 7.5, 10.0, 12.5, 15.0, 17.5, 20.0, 22.5, 25.0),
    (4.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 24.0),
)  # [kg] ch: dumbbells, dumbbells, kettlebells
BODY_MASS_KG = {ReferenceValues.MEN: (78.0, 10.0), ReferenceValues.WOMEN: (65.0, 9.0)}
# [kg] ch: mean and standard deviation


@dataclass(frozen=True, slots=True)
class Goal:
    """One standard as this athlete shows it, and the load that the body is measured at.

    ``reference_kg`` [kg] is the standard's load, or the body's share on the hands.
    """

    asked: Requirement
    movement: Movement
    rung: Rung
    reference_kg: float


@dataclass(frozen=True, slots=True)
class Athlete:
    """One simulated athlete: what the rules know, and what they do not (``traits``, ``luck``)."""

    number: int
    profile: AthleteProfile
    goals: dict[str, Goal]
    traits: Traits
    luck: str
    days: tuple[tuple[date, tuple[str, ...]], ...]


def draw_athlete(
    *, number: int, seed: int, weeks: int, assumptions: Assumptions, rulebook: Rulebook
) -> Athlete:
    """Draw an athlete, the same for the same seed."""
    luck = f"{seed}/{assumptions.name}/{number}"
    chance = random.Random(luck)
    profile = _draw_profile(chance)
    asked = requirements(stage=STAGE, profile=profile, rulebook=rulebook)
    goals = {one.movements[0]: _goal(one, profile=profile) for one in asked}
    traits = draw_traits(
        chance,
        targets_s={key: float(goal.asked.target) for key, goal in goals.items()},
        published={key: CURVES[goal.asked.joint].power for key, goal in goals.items()},
        assumptions=assumptions,
    )
    days = _draw_days(chance, weeks=weeks, assumptions=assumptions)
    return Athlete(number=number, profile=profile, goals=goals, traits=traits, luck=luck, days=days)


def _draw_profile(chance: random.Random) -> AthleteProfile:
    reference = chance.choice((ReferenceValues.MEN, ReferenceValues.WOMEN))
    mean_kg, sd_kg = BODY_MASS_KG[reference]
    return AthleteProfile(
        reference=reference,
        body_mass_kg=round(min(max(chance.gauss(mean_kg, sd_kg), 45.0), 110.0), 1),
        training_age_months=3,
        equipment=frozenset({Equipment.DUMBBELLS, Equipment.HIGH_BAR}) | ALWAYS_AT_HAND,
        loads_kg={Equipment.DUMBBELLS: chance.choice(KITS_KG)},
    )


def _goal(asked: Requirement, *, profile: AthleteProfile) -> Goal:
    """Take the standard at the nearest owned load, by its published equivalent there."""
    movement = default_library().movements[asked.movements[0]]
    if asked.load_kg is None:
        rung = Rung()
        body_kg = resistance_kg(rung, movement=movement, body_mass_kg=profile.body_mass_kg)
        return Goal(asked=asked, movement=movement, rung=rung, reference_kg=body_kg or 1.0)
    wanted_kg = asked.load_kg
    owned = profile.loads_kg[Equipment.DUMBBELLS]
    load_kg = min(owned, key=lambda one: abs(one - wanted_kg))
    there = equivalent(asked, other_load_kg=load_kg).value
    if there is None:
        raise ValueError(f"expected {asked.key} to have an equivalent at {load_kg} kg")
    return Goal(asked=there, movement=movement, rung=Rung(load_kg=load_kg), reference_kg=load_kg)


def _draw_days(
    chance: random.Random, *, weeks: int, assumptions: Assumptions
) -> tuple[tuple[date, tuple[str, ...]], ...]:
    """Draw the days trained: sessions in turn, a missed one is done the next time."""
    breaks = [
        BEGINS + timedelta(weeks=start + chance.randrange(3, BREAK_EVERY_WEEKS - 3))
        for start in range(0, weeks, BREAK_EVERY_WEEKS)
    ]
    days = [
        day
        for week in range(weeks)
        for weekday in TRAINING_WEEKDAYS
        if not _is_away(
            day := BEGINS + timedelta(weeks=week, days=weekday),
            breaks=breaks,
            days=assumptions.break_days,
        )
        and chance.random() >= assumptions.missed_share
    ]
    return tuple((day, SESSIONS[number % len(SESSIONS)]) for number, day in enumerate(days))


def _is_away(day: date, *, breaks: list[date], days: int) -> bool:
    return any(0 <= (day - begins).days < days for begins in breaks)
