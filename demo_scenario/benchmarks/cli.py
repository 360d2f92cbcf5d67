"""The benchmarks' command."""

import asyncio
import tempfile
from pathlib import Path

import typer


def add_to(app: typer.Typer) -> None:
    """Add the command; what it needs is imported when it runs."""
    app.command(name="bench")(bench)


def bench() -> None:
    """Measure the house beside a bare echo bot on this machine; about a minute and a half."""
    from demo_scenario.benchmarks.report import print_lines  # noqa: PLC0415  heavy, and only here
    from demo_scenario.benchmarks.runs import all_lines  # noqa: PLC0415  heavy, and only here

    with tempfile.TemporaryDirectory(prefix="holdwell-bench-") as folder:
        lines = asyncio.run(all_lines(Path(folder), typer.echo))
    print_lines(lines)
