"""The command that learns the weights of the third net, and checks what they are worth."""

from collections import Counter
from collections.abc import Sequence
from pathlib import Path
from typing import Annotated

import typer

from bot.reading.red_flag_learnt import Group, Weights, write_weights
from bot.reading.red_flags import candidates_of
from demo_scenario.learning.fitting import fit
from demo_scenario.learning.lines import OWN_LINES, Line, WrongLineError, lines_in, lines_of
from scheduler.pain.red_flags import RED_FLAGS
from scheduler.pain.values import Level

WEIGHTS_FILE = Path(__file__).parents[2] / "bot" / "reading" / "learnt_signs.tsv"
LEAST_LEVEL = {
    Group.HARMLESS: Level.NONE,
    Group.CLINICIAN: Level.CLINICIAN,
    Group.EMERGENCY: Level.EMERGENCY,
    Group.CRISIS: Level.EMERGENCY,
}


def add_to(app: typer.Typer) -> None:
    """Add the command."""
    app.command(name="learn")(learn)


def learn(
    folder: Annotated[Path, typer.Argument(help="folder of .tsv: LABEL, LANGUAGE, message")] = (
        OWN_LINES
    ),
    *,
    check: Annotated[
        bool, typer.Option("--check", help="leave each file out in turn and read it; write nothing")
    ] = False,
    show: Annotated[bool, typer.Option("--show", help="with --check: print what was missed")] = (
        False
    ),
) -> None:
    """Learn the weights of the red-flag reader's third net from lines written for it."""
    try:
        if check:
            _check(folder, show=show)
        else:
            learnt = fit(lines_in(folder)).weights()
            WEIGHTS_FILE.write_text(write_weights(learnt), encoding="utf-8")
            typer.echo(f"{len(learnt.of_feature)} features written to {WEIGHTS_FILE.name}")
    except WrongLineError as error:
        typer.echo(str(error), err=True)
        raise typer.Exit(2) from error


def _check(folder: Path, *, show: bool) -> None:
    for file in sorted(folder.glob("*.tsv")):
        left_out = set(lines_of(file))
        rest = [line for line in lines_in(folder) if line not in left_out]
        found = read_lines(sorted(left_out, key=str), fit(rest).weights())
        typer.echo(f"{file.name}: " + ", ".join(f"{name} {n}" for name, n in found.counts.items()))
        for line in found.missed if show else ():
            typer.echo(f"  {line.label}\t{line.language}\t{line.text}")


class Found:
    """How lines were read."""

    def __init__(self) -> None:
        """Begin with nothing."""
        self.counts: Counter[str] = Counter()
        self.missed: list[Line] = []


def read_lines(lines: Sequence[Line], learnt: Weights) -> Found:
    """Read lines with given weights, and count what came below and above."""
    found = Found()
    for line in lines:
        candidates = candidates_of(line.text, learnt)
        level = max((RED_FLAGS[c.flag].level for c in candidates), default=Level.NONE)
        needed = LEAST_LEVEL[line.group]
        found.counts["signs" if needed else "harmless"] += 1
        if level < needed:
            found.counts["below"] += 1
            found.missed.append(line)
        elif needed is Level.NONE and candidates:
            is_stated = any(c.certainty.value == "stated" for c in candidates)
            found.counts["alarms" if is_stated else "asked"] += 1
            found.missed.append(line)
    return found
