"""The command ``holdwell catalogue``: for whoever adds a text or translates one."""

import json
from pathlib import Path
from typing import Annotated

import typer
from babel.messages.catalog import Catalog

from bot.wording.catalogue.spoken import (
    SOURCE_LANGUAGE,
    SPOKEN,
    SUBJECTS,
    file_name,
    read_catalogue,
)
from bot.wording.catalogue.upkeep import HERE, entries_of, faults, merge, updated, write


def add_to(app: typer.Typer) -> None:
    """Add the command."""
    app.command()(catalogue)


def catalogue(
    merged: Annotated[
        list[Path] | None,
        typer.Argument(help='JSON files to take in: {"English text": "its translation", …}'),
    ] = None,
    *,
    language: Annotated[str, typer.Option(help="which language the files are in")] = "es",
    safety: Annotated[
        bool, typer.Option("--safety", help="mark the texts of these files as safety texts")
    ] = False,
    into: Annotated[Path, typer.Option(help="the folder to write the catalogues into")] = HERE,
) -> None:
    """Bring the catalogues in line with the code, take translations in, and list what is missing.

    Exit code 1 while anything is missing, empty, doubtful or filled with other names.
    """
    if language == SOURCE_LANGUAGE or language not in SPOKEN:
        raise typer.BadParameter(f"is none of {', '.join(SPOKEN[1:])}", param_hint="--language")
    spoken = _read(merged or [])
    left, found = set(spoken), []
    for subject in SUBJECTS:
        entries = entries_of(subject)
        whole = updated(_as_it_stands(language, subject), entries)
        left -= merge(whole, spoken, are_safety_texts=safety)
        write(whole, into / file_name(language, subject))
        found += [f"{subject}: {fault}" for fault in sorted(faults(whole, entries))]
    for text in sorted(left):
        typer.echo(f"no text of the bot, left out: {text!r}")
    for line in found:
        typer.echo(line)
    raise typer.Exit(code=1 if found else 0)


def _read(files: list[Path]) -> dict[str, str]:
    found: dict[str, str] = {}
    for file in files:
        try:
            held = json.loads(file.read_text("utf-8"))
        except (OSError, ValueError) as fault:
            raise typer.BadParameter(f"{file} cannot be read: {fault}") from fault
        if not isinstance(held, dict) or not all(isinstance(one, str) for one in held.values()):
            raise typer.BadParameter(f"{file} is not one JSON object of texts and translations")
        found |= held
    return found


def _as_it_stands(language: str, subject: str) -> Catalog:
    if (HERE / file_name(language, subject)).exists():
        return read_catalogue(language, subject)
    return Catalog(locale=language)
