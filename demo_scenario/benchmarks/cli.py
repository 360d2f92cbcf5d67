"""The benchmarks' commands."""

import asyncio
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import typer

bench = typer.Typer(help="Measure on this machine; a missed goal is said, and is no failure.")


def add_to(app: typer.Typer) -> None:
    """Add the commands; what they need is imported when they run."""
    app.add_typer(bench, name="bench")


@bench.callback(invoke_without_command=True)
def rate(context: typer.Context) -> None:
    """Measure the house beside a bare echo bot on this machine; about a minute and a half."""
    if context.invoked_subcommand is not None:
        return
    from demo_scenario.benchmarks.report import print_lines  # noqa: PLC0415  heavy, and only here
    from demo_scenario.benchmarks.runs import all_lines  # noqa: PLC0415  heavy, and only here

    with _folder() as folder:
        lines = asyncio.run(all_lines(folder, typer.echo))
    print_lines(lines)


@bench.command()
def week() -> None:
    """Plan one athlete's week, over stages, days and equipment; some seconds."""
    from demo_scenario.benchmarks.report import print_lines  # noqa: PLC0415  heavy, and only here
    from demo_scenario.benchmarks.weeks import week_lines  # noqa: PLC0415  heavy, and only here

    with _folder() as folder:
        lines = week_lines(folder)
    print_lines(lines)


@bench.command()
def memory() -> None:
    """Compare the memory of the bot with 1,000 athletes and with 10,000; some minutes."""
    from demo_scenario.benchmarks.memory import memory_lines  # noqa: PLC0415  heavy, and only here
    from demo_scenario.benchmarks.report import print_lines  # noqa: PLC0415  heavy, and only here

    with _folder() as folder:
        lines = asyncio.run(memory_lines(folder, typer.echo))
    print_lines(lines)


@bench.command()
def years() -> None:
    """Compare answers and rounds with one year of history and with five; half a minute."""
    from demo_scenario.benchmarks.report import print_lines  # noqa: PLC0415  heavy, and only here
    from demo_scenario.benchmarks.years import years_lines  # noqa: PLC0415  heavy, and only here

    with _folder() as folder:
        lines = asyncio.run(years_lines(folder, typer.echo))
    print_lines(lines)


@bench.command()
def digest() -> None:
    """Send sixty athletes' digest with its pictures while they write; some three minutes."""
    from demo_scenario.benchmarks.digest import digest_lines  # noqa: PLC0415  heavy, and only here
    from demo_scenario.benchmarks.report import print_lines  # noqa: PLC0415  heavy, and only here

    with _folder() as folder:
        lines = asyncio.run(digest_lines(folder, typer.echo))
    print_lines(lines)


@contextmanager
def _folder() -> Iterator[Path]:
    """Make a folder for the databases of a run."""
    with tempfile.TemporaryDirectory(prefix="holdwell-bench-") as name:
        yield Path(name)
