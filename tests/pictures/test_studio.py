"""The process that draws: light, replaced when it dies, and never in the way of the house."""

import asyncio
import multiprocessing
import os
import signal
import subprocess
import sys

import pytest

from bot.pictures.studio import NotDrawnError, Studio
from tests.pictures.examples import ALL

FACTS = ALL["balance_week"].model_dump(mode="json")
HEAVY = ("telegram", "sqlalchemy", "matplotlib", "sqlmodel", "alembic")


@pytest.mark.parametrize(
    ("module", "not_loaded"),
    [
        ("bot.command", HEAVY),  # what a worker of the real bot loads again
        ("bot.pictures.studio", HEAVY),
        ("demo_scenario.benchmarks.digest_bot", HEAVY),
        ("bot.app", ("matplotlib",)),  # the house itself never draws
    ],
)
def test_nobody_loads_what_they_do_not_need(module: str, not_loaded: tuple[str, ...]):
    code = f"import sys, {module}; print(*sorted(set(sys.modules) & {set(not_loaded)!r}))"
    said = subprocess.run(  # noqa: S603  our own interpreter and our own words
        [sys.executable, "-c", code], check=True, capture_output=True, text=True
    )
    assert said.stdout.strip() == ""


def test_a_worker_that_dies_costs_one_picture_and_the_next_has_another():
    async def scene() -> None:
        studio = Studio()
        await studio.draw(FACTS)
        (worker,) = multiprocessing.active_children()
        assert worker.pid is not None
        os.kill(worker.pid, signal.SIGKILL)
        with pytest.raises(NotDrawnError):
            await studio.draw(FACTS)
        assert (await studio.draw(FACTS)).startswith(b"\x89PNG")
        studio.close()

    asyncio.run(scene())


def test_what_is_no_picture_is_refused_and_the_worker_stays():
    async def scene() -> None:
        studio = Studio()
        with pytest.raises(NotDrawnError):
            await studio.draw({"kind": "portrait"})
        assert studio.is_open
        assert (await studio.draw(FACTS)).startswith(b"\x89PNG")
        studio.close()

    asyncio.run(scene())


def test_a_worker_ends_with_its_house_even_when_that_is_killed():
    code = (
        "import asyncio, multiprocessing, os, signal\n"
        "from bot.pictures.studio import Studio\n"
        "from tests.pictures.test_studio import FACTS\n"
        "async def scene():\n"
        "    await Studio().draw(FACTS)\n"
        "    print(multiprocessing.active_children()[0].pid, flush=True)\n"
        "    os.kill(os.getpid(), signal.SIGKILL)\n"
        "if __name__ == '__main__':\n"
        "    asyncio.run(scene())\n"
    )
    said = subprocess.run(  # noqa: S603  our own interpreter and our own words
        [sys.executable, "-c", code], check=False, capture_output=True, text=True, timeout=120
    )
    assert said.returncode == -signal.SIGKILL
    assert _is_gone(int(said.stdout))


def _is_gone(pid: int) -> bool:
    """Wait for a process to end; a dead one that nobody has waited for yet is gone too."""

    async def look() -> bool:
        for _ in range(2400):  # CHOSEN: two minutes; beyond it something hangs
            try:
                with open(f"/proc/{pid}/stat", encoding="ascii") as file:  # noqa: ASYNC230, PTH123
                    if file.read().rsplit(")", 1)[1].split()[0] == "Z":
                        return True
            except FileNotFoundError:
                return True
            await asyncio.sleep(0.05)
        return False

    return asyncio.run(look())
