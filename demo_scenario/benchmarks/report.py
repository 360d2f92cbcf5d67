"""A benchmark's lines: what was aimed at, what was reached."""

from collections.abc import Sequence
from dataclasses import dataclass

from rich.console import Console
from rich.table import Table


@dataclass(frozen=True)
class Line:
    """One measure; ``is_met`` is None where nothing was aimed at."""

    what: str
    target: str
    reached: str
    is_met: bool | None = None


def percentile(values: Sequence[float], percent: float) -> float:
    """Return the value below which ``percent`` [0-100] of the values lie, by nearest rank."""
    ordered = sorted(values)
    if not ordered:
        return float("nan")
    return ordered[min(len(ordered) - 1, int(len(ordered) * percent / 100))]


def print_lines(lines: Sequence[Line]) -> None:
    """Print a table; a missed target is said, and is no failure: machines differ."""
    table = Table("measure", "target", "reached", "", title="Benchmarks")
    words = {True: "met", False: "missed", None: ""}
    for line in lines:
        table.add_row(line.what, line.target, line.reached, words[line.is_met])
    Console().print(table)
