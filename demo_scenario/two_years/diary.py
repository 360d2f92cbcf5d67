"""The two years as a calendar: when somebody says something, is ill, hurts, or lacks a tool.

Everything here is invented. Days are dates, hours are the writer's own wall time.
"""

from dataclasses import dataclass
from datetime import date, time

from demo_scenario.team import AthleteEntry, CoachEntry, Habit, Part
from scheduler.catalogue.values import Equipment
from scheduler.training.values import ReferenceValues

START = date(2026, 1, 5)  # a Monday
ZONE = "Europe/Madrid"
COACH = CoachEntry(
    name="Ottavia",
    chat_id=5001,
    zone=ZONE,
    digest_weekday=0,
    digest_at=time(7, 0),
    waking_from=time(6, 30),
    waking_until=time(22, 0),
    looks_after_min=25,
    looks_at_alerts_after_min=6,
)
ATHLETE = AthleteEntry(
    name="Marit",
    part=Part.NEWCOMER,
    chat_id=5101,
    zone=ZONE,
    session_at=time(17, 0),
    weekdays=(0, 2, 4),
    minutes=50,
    reference=ReferenceValues.WOMEN,
    body_mass_kg=64,
    training_age_months=3,
    equipment=frozenset(
        {
            Equipment.BOX,
            Equipment.HIGH_BAR,
            Equipment.LOW_BAR,
            Equipment.PARALLEL_BARS,
            Equipment.DUMBBELLS,
            Equipment.BAND,
        }
    ),
    dumbbells_kg=(6, 8, 10, 12, 16, 20, 24),
    bands=True,
    stage=1,
    joins=True,
    ability=1.6,
    right_arm=1.04,
    recovers=1.0,
    keeps=0.94,
    habits=(Habit.NUMBERED, Habit.SLASHES, Habit.TIMES, Habit.ALL_AS_PLANNED),
    replies_after_min=70,
)
EVENT_IN_INTAKE = "10 October 2026 harbour games"


@dataclass(frozen=True, slots=True)
class Says:
    """Somebody writes something of their own accord."""

    on: date
    at: time
    text: str


@dataclass(frozen=True, slots=True)
class Ache:
    """What the first session from ``on`` brings: ``score`` and ``next_morning`` [0-10]."""

    on: date
    site: str
    side: str
    score: int
    next_morning: int


@dataclass(frozen=True, slots=True)
class Without:
    """A tool that is broken for some days, the last one included."""

    first: date
    last: date
    tool: Equipment
    words: str


COACH_SAYS = (
    Says(START, time(9, 0), "/invite Marit"),
    Says(date(2026, 1, 12), time(9, 0), "/season Marit other 6 June 2026 spring test day"),
    Says(date(2026, 4, 24), time(12, 0), "/clear Marit ten quiet days, leans on the palm freely"),
    Says(date(2026, 10, 12), time(9, 0), "/season Marit off-season yes"),
    Says(date(2026, 11, 2), time(9, 0), "/season Marit main 9 October 2027 harbour games"),
    Says(date(2026, 11, 2), time(9, 5), "/season Marit other 29 May 2027 club day"),
    Says(date(2027, 1, 4), time(9, 0), "/season Marit off-season no"),
    Says(date(2027, 3, 20), time(9, 0), "/season Marit travel 29 March 2027 to 25 April 2027"),
)
ATHLETE_SAYS = (
    Says(date(2026, 7, 18), time(10, 0), "/pause 2 weeks"),
    Says(date(2027, 8, 14), time(10, 0), "/pause 1 week"),
)
ACHES = (
    Ache(date(2026, 4, 6), "Wrist", "Right", 2, 1),
    Ache(date(2026, 4, 8), "Wrist", "Right", 3, 2),
    Ache(date(2026, 4, 10), "Wrist", "Right", 3, 2),
    Ache(date(2026, 4, 13), "Wrist", "Right", 3, 1),
    Ache(date(2027, 6, 14), "Elbow, inside", "Left", 1, 0),
)
ILL = ((date(2026, 3, 2), date(2026, 3, 10)), (date(2027, 11, 22), date(2027, 11, 26)))
WITHOUT = (
    Without(date(2027, 2, 1), date(2027, 2, 28), Equipment.HIGH_BAR, "the bar in the door broke"),
)
