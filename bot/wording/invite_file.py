"""A team invited by a file: what the file must look like, what is wrong in it, what comes of it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bot.wording import doses
from bot.wording.labels import label
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.catalogue.values import Measure

FAULTS_MOST = 20  # [lines] ch: who has more wrong has one thing wrong many times
EXAMPLE = "\n".join(
    (
        "name;stage;group;Push-up hold;Farmer carry",
        "Robin Field;1;Juniors;45;60 @ 12",
        "Alex Moor;2;;1:05;",
    )
)

WRONG: Mapping[str, Template] = {
    "not_text": "this is no table of text. Save it as CSV and send that",
    "spreadsheet": "this is a spreadsheet's own file. Save it as CSV and send that",
    "empty": "there is no line with an athlete. The first line names the columns",
    "too_many": "more than {most} lines. Send it in parts",
    "no_name_column": "no column is called “name”. The first line names the columns",
    "column_twice": "the column “{shown}” is there twice",
    "unknown_column": "I know no column “{shown}”. A column is name, stage, group or a movement",
    "band_column": "“{shown}” is done with a band, so a best of it cannot be given here",
    "quotes": 'the quotation marks do not end. Write "Robin" or Robin',
    "cells": "{shown} cells, expected at most {most}. Put quotation marks around a cell with the "
    "separator inside",
    "no_name": "the name is missing",
    "name_long": "the name is longer than {most} characters",
    "name_twice": "{shown} is in the file twice",
    "known": "{shown} is on your roster already. A new link: /invite {shown}",
    "stage": "stage “{shown}”, expected 1 to 5",
    "group": "the group is longer than {most} characters",
    "value": "{column} “{shown}”, expected a number such as 45, 1:05 or 60 @ 12",
    "bounds": "{column} “{shown}”, expected more than 0 and at most {most}",
    "load_missing": "{column} “{shown}” has no weight, expected for example 60 @ 12 (kg)",
    "load_not_taken": "{column} “{shown}” has a weight, but it is done without one",
}


@dataclass(frozen=True)
class FaultFacts:
    """One thing that is wrong in a file."""

    line: int
    wrong: str
    shown: str = ""
    column: str = ""
    near: tuple[str, ...] = ()
    most: float = 0.0


@dataclass(frozen=True)
class RowFacts:
    """One athlete to be invited; each best is a movement, how it counts, a value and a load."""

    name: str
    stage: int
    group: str
    bests: tuple[tuple[str, Measure, float, float | None], ...]


def how(tongue: Tongue) -> str:
    """Say what a file must look like."""
    return tongue.say(
        "For many at once send a CSV file: name, then if you like stage (1 to 5), group, and a "
        "column for each movement with the best single set, in seconds or repetitions, the weight "
        "behind an @.\n<pre>{example}</pre>",
        example=EXAMPLE,
    )


def preview(tongue: Tongue, rows: Sequence[RowFacts], faults: Sequence[FaultFacts]) -> list[str]:
    """Show what would be invited and what is wrong, line by line."""
    lines: list[str] = []
    if rows:
        lines.append(
            tongue.count(len(rows), "<b>1 athlete to invite</b>", "<b>{n} athletes to invite</b>")
        )
        lines += [_row(tongue, one) for one in rows]
    if faults:
        if rows:
            lines.append("")
        lines.append(tongue.say("<b>Not right, and left out</b>"))
        lines += [_fault(tongue, one) for one in faults[:FAULTS_MOST]]
        more = len(faults) - FAULTS_MOST
        if more > 0:
            lines.append(tongue.say("and {n} more", n=more))
    if not rows:
        lines += ["", how(tongue)]
    return lines


def _row(tongue: Tongue, facts: RowFacts) -> str:
    parts = [tongue.say("stage {stage}", stage=facts.stage)]
    if facts.group:
        parts.append(tongue.say("{group}", group=facts.group))
    parts += [
        tongue.say(
            "{name} {value}{load}",
            name=name,
            value=doses.amount(tongue, measure, round(value)),
            load=f" @ {tongue.load(load_kg)}" if load_kg else "",
        )
        for name, measure, value, load_kg in facts.bests
    ]
    return tongue.say("{name} · {what}", name=facts.name, what=Marked(" · ".join(parts)))


def _fault(tongue: Tongue, facts: FaultFacts) -> str:
    what = tongue.say(
        WRONG[facts.wrong], shown=facts.shown, column=facts.column, most=f"{facts.most:g}"
    )
    line = tongue.say("line {n}: {what}.", n=facts.line, what=Marked(what))
    if facts.near:
        line += tongue.say(" Near to it: {near}.", near=", ".join(facts.near))
    return line


def invite_label(tongue: Tongue, count: int) -> str:
    """Label the button that invites those who are right."""
    if count == 1:
        return label(tongue, "Invite 1")
    return label(tongue, "Invite {n}", n=count)


def leave_label(tongue: Tongue) -> str:
    """Label the button that invites nobody."""
    return label(tongue, "Not now")


def left(tongue: Tongue) -> str:
    """Nobody was invited."""
    return tongue.say("All right, nobody is invited.")


def links_head(tongue: Tongue, *, count: int, until: str) -> str:
    """Head the personal links."""
    return tongue.count(
        count,
        "<b>1 personal link</b>, works once, until {until}. Send it to nobody else.",
        "<b>{n} personal links</b>, each works once, until {until}. "
        "Send each to its own athlete and to nobody else.",
        until=until,
    )


def link(tongue: Tongue, *, name: str, url: str) -> str:
    """One personal link in one line."""
    return tongue.say("{name}: {url}", name=name, url=url)


def known_meanwhile(tongue: Tongue, names: Sequence[str]) -> str:
    """Some of them came onto the roster between the preview and the tap."""
    return tongue.say("On your roster already, not invited again: {names}.", names=", ".join(names))


def done_before(tongue: Tongue) -> str:
    """The button was tapped a second time."""
    return tongue.say("These were invited before. A new link for one: <code>/invite NAME</code>")


def wrong_type(tongue: Tongue, *, name: str) -> str:
    """A file of a kind that nothing here reads."""
    return tongue.say(
        "I cannot use the file “{name}”. I read a table of athletes to invite as CSV, with a name "
        "such as team.csv. To send a file to an athlete, reply with it to a message about them.",
        name=name,
    )


def too_big(tongue: Tongue, *, most_kb: int) -> str:
    """The file is larger than any team."""
    return tongue.say(
        "That file is too big. A table of athletes has at most {n} kB. Send it in parts.",
        n=most_kb,
    )


def not_there(tongue: Tongue) -> str:
    """The platform did not hand the file over."""
    return tongue.say("I could not get that file. Please send it once more.")
