"""What the two years add to the command line."""

import asyncio
import logging
import sys
import tempfile
from datetime import datetime
from pathlib import Path
from typing import Annotated

import typer
from rich.console import Console
from rich.progress import BarColumn, Progress, TextColumn, TimeElapsedColumn

from demo_scenario.two_years.diary import START
from demo_scenario.two_years.file import file_of
from demo_scenario.two_years.life import Lives, live

WEEKS_A_YEAR = 52  # [weeks] definition
DATABASE_NAME = "file.sqlite3"

console = Console(stderr=True)


def add_to(app: typer.Typer) -> None:
    """Add the command to the program's own."""
    app.command()(file)


def file(
    years: Annotated[int, typer.Option(min=1, max=2, help="how many years to live")] = 2,
    weeks: Annotated[
        int | None, typer.Option(min=1, max=104, help="so many weeks in place of years")
    ] = None,
    seed: Annotated[int, typer.Option(help="the same seed lives the same years")] = 5,
    out: Annotated[Path | None, typer.Option(help="a file to write, else shown here")] = None,
) -> None:
    """Print the whole file of an invented athlete: each session, each decision and why."""
    _quiet_logs()
    with tempfile.TemporaryDirectory() as folder:
        text, faults = write_file(
            weeks=weeks or WEEKS_A_YEAR * years, seed=seed, folder=Path(folder)
        )
    if out is None:
        sys.stdout.write(text)
    else:
        out.write_text(text, encoding="utf-8")
    for fault in faults:
        print(f"holdwell file: {fault}", file=sys.stderr)
    if faults:
        raise typer.Exit(1)


def write_file(*, weeks: int, seed: int, folder: Path) -> tuple[str, tuple[str, ...]]:
    """Live so many weeks with a database in ``folder``; return the file and what went wrong."""
    lives = _live(weeks=weeks, seed=seed, database_file=folder / DATABASE_NAME)
    try:
        with lives.exchange.database.transaction() as tx:
            return file_of(tx, lives.person().id), lives.faults
    finally:
        lives.exchange.close()


def _live(*, weeks: int, seed: int, database_file: Path) -> Lives:
    columns = (
        TextColumn("{task.description}"),
        BarColumn(),
        TextColumn("{task.fields[today]}"),
        TimeElapsedColumn(),
    )
    with Progress(*columns, console=console, transient=True) as progress:
        task = progress.add_task("Living", total=7 * weeks, today="")

        def on_progress(now: datetime) -> None:
            progress.update(task, completed=(now.date() - START).days, today=f"{now:%a %d %b %Y}")

        return asyncio.run(
            live(weeks=weeks, seed=seed, database_file=database_file, on_progress=on_progress)
        )


def _quiet_logs() -> None:
    logging.basicConfig(level=logging.ERROR, format="%(levelname)s %(message)s")
    logging.getLogger("alembic").setLevel(logging.ERROR)
