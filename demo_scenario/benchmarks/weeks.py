"""How long it takes to plan one athlete's week, over stages, days and equipment."""

import statistics
import time
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from datetime import time as wall_time
from itertools import product
from pathlib import Path
from types import MappingProxyType

from sqlmodel import Session

from bot.acts import draw_week
from bot.turn import Turn
from demo_scenario.benchmarks.quiet_house import BOT_NAME
from demo_scenario.benchmarks.report import Line, percentile
from demo_scenario.trials.ready_team import DUMBBELLS_KG, MONDAY, house, make_team
from scheduler.catalogue.values import ALWAYS_AT_HAND, HAND_WEIGHTS, Equipment
from scheduler.training.values import AthleteProfile, Band, ReferenceValues
from scheduler.training.week_values import WeekRequest
from scheduler.training.weeks import draw_week as drawn_by_rule
from storage.database import Database
from storage.queries import people
from storage.records.people import Athlete, AthleteState, Person, Profile

MOST_MS = 20.0  # [ms] ch: a week
STAGES = range(1, 6)
DAYS: Mapping[int, tuple[int, ...]] = MappingProxyType(
    {2: (0, 3), 3: (0, 2, 4), 4: (0, 1, 3, 4), 5: (0, 1, 2, 3, 4)}
)
OWNED: Mapping[str, frozenset[Equipment]] = MappingProxyType(
    {
        "floor and wall": ALWAYS_AT_HAND,
        "a band": ALWAYS_AT_HAND | {Equipment.BAND},
        "dumbbells": ALWAYS_AT_HAND | {Equipment.DUMBBELLS},
        "bars": ALWAYS_AT_HAND | {Equipment.HIGH_BAR, Equipment.LOW_BAR, Equipment.BOX},
        "everything": frozenset(Equipment),
    }
)
BANDS = (Band(key="light", family="loop", rank=1), Band(key="strong", family="loop", rank=2))
MINUTES = 45
MONTHS = 36.0  # [months] ch: long enough that every stage is open
TIMES = 3  # [times] ch: each of the combinations


@dataclass(frozen=True)
class Combination:
    """Who a week is planned for."""

    stage: int
    weekdays: tuple[int, ...]
    equipment: frozenset[Equipment]

    def request(self) -> WeekRequest:
        """Return what the rule is asked."""
        return WeekRequest(
            stage=self.stage,
            week_start=MONDAY.date(),
            weekdays=tuple(day + 1 for day in self.weekdays),
            days_a_week=len(self.weekdays),
            session_min=MINUTES,
            equipment=self.equipment,
            plan_week=20,
            stage_week=10,
        )

    def profile(self) -> Profile:
        """Return the athlete's profile."""
        weights = self.equipment & (HAND_WEIGHTS | {Equipment.BARBELL})
        facts = AthleteProfile(
            reference=ReferenceValues.WOMEN,
            body_mass_kg=66.0,
            training_age_months=MONTHS,
            equipment=self.equipment,
            loads_kg=dict.fromkeys(weights, DUMBBELLS_KG),
            bands=BANDS if Equipment.BAND in self.equipment else (),
        )
        return Profile(facts=facts, weekdays=self.weekdays, minutes=MINUTES)


def combinations() -> Iterator[Combination]:
    """Yield every stage with every number of days and every equipment."""
    for stage, weekdays, equipment in product(STAGES, DAYS.values(), OWNED.values()):
        yield Combination(stage, weekdays, equipment)


def rule_ms() -> list[float]:
    """Time the rule alone, each combination as often, in turn [ms]."""
    inside = house(BOT_NAME)
    took = []
    for request in [one.request() for one in combinations()] * TIMES:
        began_s = time.perf_counter()
        drawn_by_rule(request, library=inside.library, rulebook=inside.rulebook)
        took.append((time.perf_counter() - began_s) * 1000)
    return took


def act_ms(folder: Path) -> list[float]:
    """Time the whole act: what is stored is gathered, the week drawn, and written down [ms]."""
    database = Database(f"sqlite:///{folder / 'weeks.sqlite3'}", is_throwaway=True)
    make_team(database, [wall_time(7, 0)], bot_name=BOT_NAME)
    inside = house(BOT_NAME)
    took = []
    with database.transaction() as tx:
        for number, one in enumerate([*combinations()] * TIMES):
            turn = Turn(tx=tx, now=MONDAY, house=inside)
            person, athlete = _join(tx, number, one)
            began_s = time.perf_counter()
            draw_week.draw(turn, person, athlete, monday=MONDAY.date())
            tx.flush()
            took.append((time.perf_counter() - began_s) * 1000)
    database.close()
    return took


def _join(tx: Session, number: int, one: Combination) -> tuple[Person, Athlete]:
    joined_at = datetime(2025, 9, 1, tzinfo=UTC)
    coach = people.coaches(tx)[0]
    person = people.add_person(tx, name=f"Planned {number}", now=joined_at)
    athlete = people.add_athlete(
        tx,
        person_id=person.id,
        coach_id=coach.id,
        profile=one.profile(),
        on=joined_at.date(),
        session_at=wall_time(7, 0),
        state=AthleteState.TRAINING,
        started_on=joined_at.date(),
        stage=one.stage,
    )
    return person, athlete


def week_lines(folder: Path) -> list[Line]:
    """Time both, and hold the medians to the goal."""
    rule, act = rule_ms(), act_ms(folder)
    count = len(STAGES) * len(DAYS) * len(OWNED)
    return [
        _median_line(f"a week by the rule, {count} combinations, median", rule),
        Line("  99 of 100", "", f"{percentile(rule, 99):.1f} ms"),
        _median_line("a week gathered, drawn and stored, median", act),
        Line("  99 of 100", "", f"{percentile(act, 99):.1f} ms"),
    ]


def _median_line(what: str, took_ms: list[float]) -> Line:
    median_ms = statistics.median(took_ms)
    return Line(what, f"{MOST_MS:.0f} ms", f"{median_ms:.1f} ms", median_ms <= MOST_MS)
