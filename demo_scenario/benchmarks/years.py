"""Whether years weigh: the same answers and rounds with one year of history and with five."""

import statistics
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path
from random import Random

from demo_scenario.benchmarks.past_years import write_years
from demo_scenario.benchmarks.quiet_house import QuietHouse
from demo_scenario.benchmarks.report import Line
from demo_scenario.benchmarks.willing_athlete import WillingAthlete
from demo_scenario.trials.ready_team import MONDAY, WEEKDAYS
from storage.database import Database

SHORT, LONG = 1, 5  # [years]
MOST_RATIO = 1.1  # [1] ch: five years for one
WEEKS, WARM_UP = 16, 1  # [weeks] ch: of which the first is not counted
DIGEST_ON = 6  # [weekday] as the made coach wants it
PLANNED = timedelta(hours=3)
IDLE = timedelta(hours=4)
SENT = timedelta(hours=7)
TRAINED = timedelta(hours=18)
MEASURES = {
    "typed": "answer to a typed result",
    "reserve": "answer to a tap",
    "pain.none": "answer that closes the session",
    "session": "round that doses and sends a session",
    "week": "night's round that draws the week",
    "night": "night's round of another day",
    "digest": "round that sends the coach's digest",
    "idle": "round with nothing due",
}


@dataclass
class Lived:
    """A house with so many years behind it, and what each kind of work took there [ms]."""

    house: QuietHouse
    took_ms: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))

    def note(self, what: str, took_ms: float) -> None:
        """Keep one time."""
        self.took_ms[what].append(took_ms)

    async def live_day(self, number: int) -> None:
        """Live one day, ``number`` days from the first Monday on."""
        day = MONDAY + timedelta(days=number)
        await self.house.go_to(day + PLANNED)
        self.note("night" if day.weekday() else "week", await self.house.strike())
        await self.house.go_to(day + IDLE)
        self.note("idle", await self.house.strike())
        await self.house.go_to(day + SENT)
        is_trained = day.weekday() in WEEKDAYS
        is_told = day.weekday() == DIGEST_ON
        due = "session" if is_trained else "digest" if is_told else "idle"
        self.note(due, await self.house.strike())
        if not is_trained:
            return
        await self.house.go_to(day + TRAINED)
        await WillingAthlete(self.house).train(self.note, Random(number))


def lived(folder: Path, years: int) -> Lived:
    """Make a house with so many years behind it."""
    # Without waiting for the disk: that would be the same for both, and hide what is not.
    file = folder / f"years-{years}.sqlite3"
    database = Database(f"sqlite:///{file}", is_throwaway=True)
    write_years(database, years=years)
    return Lived(QuietHouse(database))


async def years_lines(
    folder: Path, say: Callable[[str], None], *, weeks: int = WEEKS
) -> list[Line]:
    """Live the same weeks in both houses, day by day in turn, and compare like with like.

    The ratio is the median of those of the pairs: the same work, done right after one another.
    """
    houses = []
    for years in (SHORT, LONG):
        say(f"{years} year(s) of history …")
        houses.append(lived(folder, years))
    say(f"{weeks} weeks …")
    for number in range(7 * weeks):
        for one in houses:
            await one.live_day(number)
            if number == 7 * WARM_UP - 1:
                one.took_ms.clear()
    for one in houses:
        one.house.database.close()
    return [_line(what, shown, *houses) for what, shown in MEASURES.items()]


def _line(what: str, shown: str, short: Lived, long: Lived) -> Line:
    pairs = list(zip(short.took_ms[what], long.took_ms[what], strict=True))
    before_ms, after_ms = (statistics.median(times) for times in zip(*pairs, strict=True))
    ratio = statistics.median(after / before for before, after in pairs)
    return Line(
        f"{shown}, {SHORT} → {LONG} years",
        f"{MOST_RATIO} ×",
        f"{ratio:.2f} × ({before_ms:.1f} → {after_ms:.1f} ms)",
        ratio <= MOST_RATIO,
    )
