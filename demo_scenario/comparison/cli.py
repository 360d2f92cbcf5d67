"""The comparison's command."""

from pathlib import Path
from typing import Annotated

import typer
from rich.console import Console


def add_to(app: typer.Typer) -> None:
    """Add the command; what it needs is imported when it runs."""
    app.command(name="compare")(compare)


def compare(
    athletes: Annotated[
        int, typer.Option(min=3, help="how many under each set of assumptions")
    ] = 400,
    seed: Annotated[int, typer.Option(help="the same seed draws the same athletes")] = 7,
    out: Annotated[Path | None, typer.Option(help="a file for the page, in Markdown")] = None,
) -> None:
    """Compare our dosing with simpler progressions on made-up bodies; 400 take five minutes."""
    from demo_scenario.comparison.report import page  # noqa: PLC0415  only here
    from demo_scenario.comparison.runs import HORIZON_WEEKS  # noqa: PLC0415  only here
    from demo_scenario.comparison.runs import compare as run_all  # noqa: PLC0415  only here

    with Console(stderr=True).status("Simulating") as status:
        rows = run_all(athletes=athletes, seed=seed, on_progress=status.update)
    text = page(rows, athletes=athletes, seed=seed, weeks=HORIZON_WEEKS)
    typer.echo(text, nl=False)
    if out is not None:
        out.write_text(text, encoding="utf-8")
