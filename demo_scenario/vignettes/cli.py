"""The command that runs vignettes."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

if TYPE_CHECKING:
    from demo_scenario.vignettes.playing import Played


def add_to(app: typer.Typer) -> None:
    """Add the command; what it needs is imported when it runs."""
    app.command(name="vignettes")(vignettes)


def vignettes(
    file: Annotated[Path, typer.Argument(help="one JSON object a line; see DEVELOPERS.md")],
    *,
    all_texts: Annotated[bool, typer.Option("--texts", help="print what was sent, too")] = False,
) -> None:
    """Say each vignette to the true acts; print level, urgency, question and texts, and totals."""
    from demo_scenario.vignettes.playing import play  # noqa: PLC0415  only here
    from demo_scenario.vignettes.totals import totals_of  # noqa: PLC0415  only here
    from demo_scenario.vignettes.values import read_vignettes  # noqa: PLC0415  only here

    played = [play(one) for one in read_vignettes(file)]
    for one in played:
        _show(one, with_texts=all_texts)
    for language in sorted({one.vignette.language for one in played}):
        alike = [one for one in played if one.vignette.language == language]
        typer.echo("\n".join(totals_of(alike).lines(f"language {language}: {len(alike)}")))
    whole = totals_of(played)
    typer.echo("\n".join(whole.lines(f"all: {len(played)}")))
    if whole.below:
        raise typer.Exit(1)


def _show(one: "Played", *, with_texts: bool) -> None:
    expect = one.vignette.expect
    sign = "below" if one.is_below else ("ok" if one.level == expect.level else "other")
    urgency = one.urgency.value if one.urgency else "-"
    typer.echo(
        f"{one.vignette.id} {expect.kind.value} {sign}: {one.level.name.lower()}"
        f" (expected {expect.level.name.lower()}), told {urgency}"
        f" (expected {expect.urgency.value if expect.urgency else '-'}),"
        f" {'asks' if one.asks else 'asks nothing'} {','.join(one.flags)}"
    )
    if with_texts or sign != "ok":
        typer.echo(f"    says: {one.vignette.say}")
    if with_texts:
        for text in one.texts:
            typer.echo("    sent: " + text.replace("\n", " / "))
