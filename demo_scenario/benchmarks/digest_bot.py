"""The house as a process of its own that says at its end how much memory it and its worker took.

Run as ``python -m demo_scenario.benchmarks.digest_bot house PLAN``. Nothing heavy is loaded here:
the process that draws loads this module too, as it loads ``bot.command`` in the real bot.
"""

import sys
from pathlib import Path


def most_resident_kib(pid: int | str) -> int:
    """Return the most memory that a process had resident so far [KiB]; Linux tells it."""
    lines = Path(f"/proc/{pid}/status").read_text(encoding="ascii").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmHWM:"))


def used() -> dict[str, list[float]]:
    """Return memory [KiB] and processor time [s] of this process and of its workers."""
    import multiprocessing  # noqa: PLC0415  only at the end
    import os  # noqa: PLC0415  only at the end

    pids = [os.getpid(), *(one.pid for one in multiprocessing.active_children() if one.pid)]
    ticks_per_s = os.sysconf("SC_CLK_TCK")
    fields = [Path(f"/proc/{pid}/stat").read_text(encoding="ascii").split() for pid in pids]
    return {
        "kib": [float(most_resident_kib(pid)) for pid in pids],
        "processor_s": [(int(one[13]) + int(one[14])) / ticks_per_s for one in fields],
    }


def main() -> None:
    """Be the house."""
    import asyncio  # noqa: PLC0415  see the module

    from demo_scenario.benchmarks.bots import BotPlan, run_house  # noqa: PLC0415  see the module
    from scheduler.calendar.zones import use_packaged_zones  # noqa: PLC0415  see the module

    use_packaged_zones()
    asyncio.run(run_house(BotPlan.model_validate_json(sys.argv[2]), used))


if __name__ == "__main__":
    main()
