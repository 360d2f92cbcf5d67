"""What the demo adds to the command line."""

import asyncio
import logging
import sys
from datetime import datetime
from pathlib import Path
from typing import Annotated

import typer
from rich.console import Console
from rich.progress import BarColumn, Progress, TextColumn, TimeElapsedColumn

from demo_scenario.chat_pages import write_pages
from demo_scenario.invariants import Broken, check
from demo_scenario.play import Stage, play
from demo_scenario.showing import show_days, show_table, show_used
from demo_scenario.summary import Summary, summary_of
from demo_scenario.team import default_team
from demo_scenario.used import unused

DATABASE_NAME = "holdwell.sqlite3"
SUMMARY_NAME = "summary.json"
CHATS_NAME = "chats"
WHOLE_SEASON_WEEKS = 40  # [weeks] ch: in so many every feature is used by somebody

console = Console()


def add_to(app: typer.Typer) -> None:
    """Add the demo's commands to the program's own."""
    app.command()(demo)


def demo(
    weeks: Annotated[int, typer.Option(min=1, max=60, help="how many weeks to play")] = 4,
    seed: Annotated[int, typer.Option(help="the same seed plays the same weeks")] = 7,
    out: Annotated[Path, typer.Option(help="folder for chats, database and summary")] = Path(
        "demo_output"
    ),
) -> None:
    """Play some weeks of a made-up team against the real bot; nothing leaves this machine."""
    _quiet_logs()
    database_file = fresh_database(out)
    stage = _play_with_progress(weeks=weeks, seed=seed, database_file=database_file)
    broken = check(stage)
    summary = summary_of(stage, seed=seed, weeks=weeks, broken=broken)
    write_pages(stage, out / CHATS_NAME)
    write_summary(summary, out)
    show_days(stage, console)
    show_table(summary, console)
    show_used(summary, console)
    console.print(f"Chats: {out / CHATS_NAME / 'index.html'}   Database: {database_file}")
    end_with(broken, missing=unused(summary.used) if weeks >= WHOLE_SEASON_WEEKS else ())


def end_with(broken: tuple[Broken, ...], *, missing: tuple[str, ...] = ()) -> None:
    """Name every breach, and every feature that nobody used; leave with exit code 1 if any."""
    lines = [*map(str, broken), *(f"nobody used: {name}" for name in missing)]
    for line in lines:
        print(f"holdwell demo: {line}", file=sys.stderr)
    if lines:
        raise typer.Exit(1)


def fresh_database(folder: Path) -> Path:
    """Return the place of a database that is not there yet."""
    folder.mkdir(parents=True, exist_ok=True)
    file = folder / DATABASE_NAME
    for name in (file.name, f"{file.name}-wal", f"{file.name}-shm"):
        (folder / name).unlink(missing_ok=True)
    return file


def write_summary(summary: Summary, folder: Path) -> None:
    """Write the figures for a machine."""
    (folder / SUMMARY_NAME).write_text(summary.model_dump_json(indent=2) + "\n", encoding="utf-8")


def _play_with_progress(*, weeks: int, seed: int, database_file: Path) -> Stage:
    team = default_team()
    begins_at = team.begins_at()
    total_s = (team.ends_at(weeks=weeks) - begins_at).total_seconds()
    columns = (
        TextColumn("{task.description}"),
        BarColumn(),
        TextColumn("{task.fields[today]}"),
        TimeElapsedColumn(),
    )
    with Progress(*columns, console=console, transient=True) as progress:
        task = progress.add_task("Playing", total=total_s, today="")

        def on_progress(now: datetime) -> None:
            done_s = (now - begins_at).total_seconds()
            progress.update(task, completed=done_s, today=f"{now:%a %d %b}")

        return asyncio.run(
            play(
                team=team,
                seed=seed,
                weeks=weeks,
                database_file=database_file,
                on_progress=on_progress,
            )
        )


def _quiet_logs() -> None:
    """Show faults alone; the HTTP client's own lines would hold the token."""
    logging.basicConfig(level=logging.ERROR, format="%(levelname)s %(message)s")
    for noisy in ("httpx", "httpcore", "alembic", "telegram"):
        logging.getLogger(noisy).setLevel(logging.ERROR)
