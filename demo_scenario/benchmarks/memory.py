"""Whether athletes weigh: what a process of the bot takes with 1,000 of them and with 10,000.

Run as ``python -m demo_scenario.benchmarks.memory DATABASE``: the house over that database does
some rounds and answers, and says how much memory it took at most [KiB].
"""

import asyncio
import sys
from asyncio.subprocess import PIPE
from collections.abc import Callable, Sequence
from datetime import time, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import insert, select
from sqlmodel import Session

from demo_scenario.benchmarks.quiet_house import BOT_NAME, QuietHouse
from demo_scenario.benchmarks.report import Line
from demo_scenario.benchmarks.willing_athlete import WillingAthlete
from demo_scenario.trials.ready_team import FIRST_ATHLETE_CHAT, MONDAY, make_team
from scheduler.calendar.zones import use_packaged_zones
from storage.database import Database
from storage.tables import metadata

FEW, MANY = 1_000, 10_000  # [athletes]
MOST_RATIO = 1.05  # [1] ch: many for few
ACTIVE = 60  # [athletes] ch: who train this morning, the same in both
OF_A_COACH = 60  # [athletes] ch
MORNING, EVENING = time(7, 0), time(18, 0)
SEND_AT = MONDAY + timedelta(hours=7)
ROUNDS = 2  # [rounds] ch: before and after the answers
LINES_EACH = 3  # [results] ch
CHUNK = 500  # [athletes] ch: written at once
FIRST_COACH_CHAT = 1_000_000  # ch: far from the athletes'


def write_crowd(database: Database, count: int) -> None:
    """Make a house with so many athletes, all of whom train today, a few of them this morning."""
    make_team(database, [MORNING] * ACTIVE, bot_name=BOT_NAME)
    with database.transaction() as tx:
        model = _Model(tx)
        for start in range(ACTIVE, count, CHUNK):
            model.write(range(start, min(start + CHUNK, count)))


class _Model:
    """The first athlete and their week as rows, to be written again for others."""

    def __init__(self, tx: Session) -> None:
        self._tx = tx
        self._athlete = self._rows("athlete")[0]
        own = self._athlete["person_id"]
        self._person = next(row for row in self._rows("person") if row["id"] == own)
        self._week = next(row for row in self._rows("week") if row["athlete_id"] == own)
        self._sessions = [row for row in self._rows("session") if row["athlete_id"] == own]
        ids = {row["id"] for row in self._sessions}
        self._items = [row for row in self._rows("item") if row["session_id"] in ids]
        self._next: dict[str, int] = {
            name: max(row["id"] for row in self._rows(name)) + 1
            for name in ("person", "week", "session", "item")
        }

    def _rows(self, name: str) -> list[dict[str, Any]]:
        found = self._tx.connection().execute(select(metadata.tables[name]))
        return [dict(row._mapping) for row in found]  # noqa: SLF001  the row's own public view

    def _take(self, name: str) -> int:
        self._next[name] += 1
        return self._next[name] - 1

    def write(self, numbers: Sequence[int]) -> None:
        """Write athletes, and a coach of their own for each team of them."""
        rows: dict[str, list[dict[str, Any]]] = {
            name: [] for name in ("person", "athlete", "week", "session", "item")
        }
        for number in numbers:
            self._add(rows, number)
        for name, found in rows.items():
            self._tx.connection().execute(insert(metadata.tables[name]), found)

    def _add(self, rows: dict[str, list[dict[str, Any]]], number: int) -> None:
        if number % OF_A_COACH == 0 or not rows["athlete"]:
            self._coach = self._take("person")
            facts = {"name": f"Coach {number}", "is_coach": True}
            facts |= {"id": self._coach, "chat_id": FIRST_COACH_CHAT + number}
            rows["person"].append({**self._person, **facts})
        own = self._take("person")
        facts = {"id": own, "chat_id": FIRST_ATHLETE_CHAT + number, "name": f"Athlete {number + 1}"}
        rows["person"].append({**self._person, **facts})
        facts = {"person_id": own, "coach_id": self._coach, "session_at": EVENING}
        rows["athlete"].append({**self._athlete, **facts})
        week = self._take("week")
        rows["week"].append({**self._week, "id": week, "athlete_id": own})
        new_ids = {row["id"]: self._take("session") for row in self._sessions}
        rows["session"] += [
            {**row, "id": new_ids[row["id"]], "athlete_id": own, "week_id": week}
            for row in self._sessions
        ]
        rows["item"] += [
            {**row, "id": self._take("item"), "session_id": new_ids[row["session_id"]]}
            for row in self._items
        ]


async def work(url: str) -> None:
    """Do rounds and answer, as the bot does in a morning."""
    house = QuietHouse(Database(url, is_throwaway=True))
    for minute in range(ROUNDS):
        await house.go_to(SEND_AT + timedelta(minutes=minute))
        await house.strike()
    house.sent()
    for number in range(ACTIVE):
        await WillingAthlete(house, number).type_some(LINES_EACH)
    await house.go_to(SEND_AT + timedelta(minutes=ROUNDS))
    await house.strike()


def most_resident_kib() -> int:
    """Return the most memory that this process had resident so far [KiB]; Linux tells it."""
    lines = Path("/proc/self/status").read_text(encoding="ascii").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmHWM:"))


async def memory_kib(folder: Path, count: int) -> int:
    """Measure a fresh process over a database with so many athletes."""
    url = f"sqlite:///{folder / f'crowd-{count}.sqlite3'}"
    database = Database(url, is_throwaway=True)
    write_crowd(database, count)
    database.close()
    process = await asyncio.create_subprocess_exec(
        sys.executable, "-m", "demo_scenario.benchmarks.memory", url, stdout=PIPE
    )
    said, _ = await process.communicate()
    if process.returncode:
        raise RuntimeError(f"the process with {count} athletes ended with {process.returncode}")
    return int(said)


async def memory_lines(
    folder: Path, say: Callable[[str], None], *, few: int = FEW, many: int = MANY
) -> list[Line]:
    """Measure both and compare."""
    taken = []
    for count in (few, many):
        say(f"{count} athletes …")
        taken.append(await memory_kib(folder, count))
    ratio = taken[1] / taken[0]
    mib = [kib / 1024 for kib in taken]
    return [
        Line(
            f"memory of the bot at most, {few} → {many} athletes",
            f"{MOST_RATIO} ×",
            f"{ratio:.3f} × ({mib[0]:.1f} → {mib[1]:.1f} MiB)",
            ratio <= MOST_RATIO,
        )
    ]


def main() -> None:
    """Be the process that is measured."""
    use_packaged_zones()
    asyncio.run(work(sys.argv[1]))
    print(most_resident_kib())


if __name__ == "__main__":
    main()
