"""The season in words: its blocks, its events, what a week is for, what can be reached."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from bot.wording import dates
from bot.wording.reasons import say_reason
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.reasons import Reason
from scheduler.training.season_values import (
    SeasonBlock,
    SeasonEvent,
    SeasonWeekKind,
    Span,
    Travel,
)

EXAMPLE: Template = "/season robin main 12 June spring meet"
YES = frozenset({"yes", "on", "y", "sí", "si"})
NO = frozenset({"no", "off", "n"})
BLOCKS_MOST = 14  # [lines] ch: a year of seasons fits one screen

KINDS: Mapping[SeasonWeekKind, Template] = {
    SeasonWeekKind.LIGHTER: "A lighter week: fewer sets on purpose.",
    SeasonWeekKind.TAPER: "Towards your event: fewer sets, the same loads.",
    SeasonWeekKind.IN_SEASON: "You are competing: short sessions that hold the level.",
    SeasonWeekKind.EASY_AFTER: "An easy week after your event.",
    SeasonWeekKind.BAND_ONLY: "A travel week with what you have there.",
    SeasonWeekKind.RETURNING: "Back after a break: fewer sets at first.",
}
BLOCK_WORDS: Mapping[SeasonWeekKind, Template] = {
    SeasonWeekKind.TAPER: "fewer sets before the event",
    SeasonWeekKind.IN_SEASON: "short sessions while competing",
    SeasonWeekKind.EASY_AFTER: "easy after the event",
    SeasonWeekKind.BREAK: "a break",
}


class Unclear(StrEnum):
    """Why a change of the season was not understood."""

    WHAT = "what"
    ONE_DATE = "one_date"
    TWO_DATES = "two_dates"
    PAST = "past"
    FAR = "far"
    YES_OR_NO = "yes_or_no"
    NOTHING_THERE = "nothing_there"


UNCLEAR: Mapping[Unclear, Template] = {
    Unclear.WHAT: "I do not know that change.",
    Unclear.ONE_DATE: "It needs one date, such as 12 June or 2027-06-12.",
    Unclear.TWO_DATES: "It needs a first and a last day, such as 3 May to 10 May.",
    Unclear.PAST: "That day is over already.",
    Unclear.FAR: "That is more than two years ahead.",
    Unclear.YES_OR_NO: "Write yes or no behind it.",
    Unclear.NOTHING_THERE: "There is nothing on that day to remove.",
}


@dataclass(frozen=True)
class SeasonFacts:
    """What one screen about a season says."""

    blocks: Sequence[SeasonBlock]
    events: Sequence[SeasonEvent]
    travels: Sequence[Travel]
    competing: Sequence[Span]
    outlook: Sequence[Reason]
    this_monday: date
    is_open_ended: bool


def week_note(tongue: Tongue, kind: SeasonWeekKind, *, is_lighter: bool) -> str:
    """Say what a week is for, where it is not an ordinary one."""
    if is_lighter:
        kind = SeasonWeekKind.LIGHTER
    return tongue.say(KINDS[kind]) if kind in KINDS else ""


def season(tongue: Tongue, facts: SeasonFacts) -> str:
    """Write the coming weeks in blocks, the events, and what can honestly be reached."""
    lines = [_block(tongue, block) for block in facts.blocks[:BLOCKS_MOST]]
    if facts.is_open_ended:
        lines.append(tongue.say("and so on"))
    lines += [_event(tongue, event) for event in facts.events]
    lines += [_span(tongue, "Away with a band", one) for one in facts.travels]
    lines += [_span(tongue, "Competing", one) for one in facts.competing]
    lines += ["", *(say_reason(tongue, one) for one in facts.outlook)]
    lines.append(tongue.say("Dates are a proposal: the checklist and the coach decide."))
    return "\n".join(lines)


def _block(tongue: Tongue, block: SeasonBlock) -> str:
    last = block.monday + timedelta(days=7 * block.weeks - 1)
    what = BLOCK_WORDS.get(block.kind)
    return tongue.say(
        "{first} to {last} · {what}",
        first=dates.day(tongue, block.monday),
        last=dates.day(tongue, last),
        what=tongue.say(what) if what else tongue.say("stage {n}", n=block.stage),
    )


def _event(tongue: Tongue, event: SeasonEvent) -> str:
    kind: Template = "<b>Main event</b> {on}{name}" if event.is_main else "Other event {on}{name}"
    name = tongue.say(" · {name}", name=event.name) if event.name else ""
    return tongue.say(kind, on=dates.day(tongue, event.on), name=Marked(name))


def _span(tongue: Tongue, what: Template, span: Span) -> str:
    return tongue.say(
        "{what} {first} to {last}",
        what=tongue.say(what),
        first=dates.day(tongue, span.first),
        last=dates.day(tongue, span.last),
    )


def head(tongue: Tongue, *, name: str) -> str:
    """Head a coach's screen."""
    return tongue.say("<b>{name}</b>, the season", name=name)


def how_to_change(tongue: Tongue) -> str:
    """Say what to write to change it."""
    return "\n".join(
        [
            tongue.say("To change it, behind the name:"),
            tongue.say("<code>main 12 June spring meet</code>"),
            tongue.say("<code>other 3 May club day</code>"),
            tongue.say("<code>travel 3 May to 10 May</code>"),
            tongue.say("<code>competing 1 May to 30 June</code>"),
            tongue.say("<code>off-season yes</code>"),
            tongue.say("<code>remove 12 June</code>"),
        ]
    )


def unclear(tongue: Tongue, why: Unclear) -> str:
    """Say why nothing was changed, and what to write."""
    return "\n".join([tongue.say(UNCLEAR[why]), how_to_change(tongue)])


def changed_to_athlete(tongue: Tongue, *, coach: str) -> str:
    """Tell the athlete that their season was changed."""
    return tongue.say(
        "{coach} changed your season; the coming weeks are planned anew. /season shows it.",
        coach=coach,
    )
