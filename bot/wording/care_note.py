"""What pain changes in a session, in a line or two: what, because of which report, what decides."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from bot.wording import dates
from bot.wording.coach_pain import SITES, place
from bot.wording.tongue import Template, Tongue
from scheduler.pain.values import Side, Site

A_WEEK = timedelta(days=7)  # [days] ch: further back the day's name may be another week's


class Missing(StrEnum):
    """What a report of pain still lacks."""

    PLACE = "place"
    SIDE = "side"
    NUMBER = "number"


@dataclass(frozen=True)
class ReportFacts:
    """A report: where, how much [0-10], on which day; and what of it was not said."""

    site: Site
    side: Side
    score: int | None
    on: date | None
    today: date
    is_side_said: bool = True
    is_place_said: bool = True


STILL_OPEN: Mapping[Missing, Template] = {
    Missing.PLACE: "Where it hurts is still open. Your answer decides what is spared.",
    Missing.SIDE: "Still open: {place}, which side? Until you say, both are spared.",
    Missing.NUMBER: "Still open: {place}, how much? Your answer decides what is spared.",
}
OPEN_LABELS: Mapping[Missing, Template] = {
    Missing.PLACE: "Say where it hurts",
    Missing.SIDE: "Say which side",
    Missing.NUMBER: "Say how much it hurts",
}


def reports(tongue: Tongue, facts: Sequence[ReportFacts]) -> list[str]:
    """Write reports one by one: ``left wrist 5 of 10 (Monday)``."""
    return [_report(tongue, one) for one in facts]


def _report(tongue: Tongue, facts: ReportFacts) -> str:
    where = place(tongue, facts.site, facts.side)
    if not facts.is_place_said:
        where = tongue.say("something that hurts")
    elif not facts.is_side_said:
        where = tongue.say(SITES[facts.site])
    if facts.score is not None:
        where = tongue.say("{place} {score} of 10", place=where, score=facts.score)
    if facts.on is None:
        return where
    is_near = facts.today - facts.on < A_WEEK
    day = dates.weekday(tongue, facts.on) if is_near else dates.day(tongue, facts.on)
    return tongue.say("{report} ({day})", report=where, day=day)


def eased(tongue: Tongue, numbers: Sequence[int], *, why: Sequence[str]) -> str:
    """Say which items are shorter or easier today, and because of which reports."""
    return tongue.say(
        "Shorter or easier today: {numbers}. That spares what you reported: {places}.",
        numbers=", ".join(str(number) for number in numbers),
        places=", ".join(why),
    )


def comes_back(tongue: Tongue) -> str:
    """What a person cleared comes back with fewer sets."""
    return tongue.say(
        "What was left out comes back in small steps, so there are fewer sets today. "
        "If it hurts again, stop that movement and say so."
    )


def still_open(tongue: Tongue, missing: Missing, *, site: Site) -> str:
    """Say which answer is open, and that it decides."""
    return tongue.say(STILL_OPEN[missing], place=tongue.say(SITES[site]))


def sessions_wait(tongue: Tongue) -> str:
    """Nothing can be sent before the place is known."""
    return tongue.say("Your sessions wait until I know where it hurts.")


def open_label(tongue: Tongue, missing: Missing) -> str:
    """Label the button that opens the question."""
    return tongue.say(OPEN_LABELS[missing])
