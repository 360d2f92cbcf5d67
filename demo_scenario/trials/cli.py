"""The trials' command."""

import asyncio
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

if TYPE_CHECKING:
    from demo_scenario.trials.crash import CrashReport


def add_to(app: typer.Typer) -> None:
    """Add the command; what it needs is imported when it runs."""
    app.command(name="crash-trial")(crash_trial)


def crash_trial(
    kills: Annotated[int, typer.Option(min=1, help="how often the process is killed")] = 40,
    seed: Annotated[int, typer.Option(help="the seed of every chance")] = 1,
    athletes: Annotated[int, typer.Option(min=1, help="how many athletes train")] = 20,
) -> None:
    """Kill the house at random instants while replies flow, and check that nothing broke."""
    from demo_scenario.trials.crash import CrashPlan, Trial  # noqa: PLC0415  heavy, and only here

    with tempfile.TemporaryDirectory(prefix="holdwell-trial-") as folder:
        plan = CrashPlan(kills=kills, athletes=athletes, seed=seed)
        report = asyncio.run(Trial(plan, Path(folder), typer.echo).run())
    _print(report)
    if not report.is_kept:
        raise typer.Exit(1)


def _print(report: "CrashReport") -> None:
    from rich.console import Console  # noqa: PLC0415  only here
    from rich.table import Table  # noqa: PLC0415  only here

    table = Table("what must hold", "looked at", "breaches", title="Crash trial")
    for check in report.checks:
        table.add_row(check.what, str(check.looked_at), str(len(check.breaches)))
    console = Console()
    console.print(table)
    console.print(
        f"{report.kills} kills in {report.real_s:.0f} s, {report.kills_in_hand} of them with"
        f" something in hand; {report.doubtful} sends marked doubtful"
    )
    for check in report.checks:
        for breach in check.breaches[:10]:
            console.print(f"breach: {check.what}: {breach}", markup=False)
