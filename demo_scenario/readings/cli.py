"""The command that reads a file of messages."""

from pathlib import Path
from typing import Annotated

import typer


def add_to(app: typer.Typer) -> None:
    """Add the command; what it needs is imported when it runs."""
    app.command(name="read")(read_messages)


def read_messages(
    file: Annotated[
        Path,
        typer.Argument(
            help="one JSON object a line: contexts, and messages with the reading that is expected"
        ),
    ],
    *,
    timing: Annotated[
        bool, typer.Option("--timing", help="also time the reader: each message ten times")
    ] = False,
    quiet: Annotated[
        bool, typer.Option("--quiet", help="only what was not read right, and the totals")
    ] = False,
) -> None:
    """Read your own messages, and see what the reader makes of each.

    A context is a line {"context": NAME, "is": {"language", "units", "decimal_mark", "today",
    "session", "others", "asked_item", "question", "recorded", "before"}}. A message is a line
    {"in": NAME, "say": TEXT, "expect": {"outcome", "results", "effort", "reserve", "pain", "day",
    "reason", "yes", "may_be"}}. DEVELOPERS.md describes every field. The exit code is 1 when
    something was read silently wrong.
    """
    from demo_scenario.readings.files import load  # noqa: PLC0415  only here
    from demo_scenario.readings.report import line_of, timed, totals, why  # noqa: PLC0415  only here
    from demo_scenario.readings.verdicts import Verdict, check  # noqa: PLC0415  only here

    cases = load(file)
    checked = check(cases)
    for one in checked:
        if not quiet or one.verdict is not Verdict.RIGHT:
            typer.echo(line_of(one))
        if one.verdict is not Verdict.RIGHT:
            typer.echo(why(one))
    typer.echo(totals(checked))
    if timing:
        typer.echo(timed(cases))
    if any(one.verdict is Verdict.WRONG for one in checked):
        raise typer.Exit(1)
