"""A season in words: on the picture, and as its caption."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.pictures.values import SeasonKey, SeasonPicture, SeasonTile
from bot.wording.pictures import caption_of, is_drawable, named, plain, short_day, shown_name
from bot.wording.tongue import Template, Tongue
from scheduler.training.season_values import SeasonBlock, SeasonEvent, SeasonWeekKind

TILES_MOST = 40  # [weeks] ch: five rows of eight
DAYS_TO_SUNDAY = timedelta(days=6)
KEYS: Mapping[SeasonWeekKind, Template] = {
    SeasonWeekKind.ORDINARY: "training",
    SeasonWeekKind.LIGHTER: "lighter, fewer sets",
    SeasonWeekKind.BAND_ONLY: "away with a band",
    SeasonWeekKind.RETURNING: "back after a break",
    SeasonWeekKind.TAPER: "fewer sets before the event",
    SeasonWeekKind.IN_SEASON: "competing, short sessions",
    SeasonWeekKind.EASY_AFTER: "easy after the event",
    SeasonWeekKind.BREAK: "a break",
}


@dataclass(frozen=True)
class WeekFacts:
    """One week: when it begins, its stage, and what it is for."""

    monday: date
    stage: int
    kind: SeasonWeekKind


@dataclass(frozen=True)
class SeasonPictureFacts:
    """What a season's picture is made of: weeks behind and ahead, and the events to come."""

    name: str
    weeks: Sequence[WeekFacts]
    blocks: Sequence[SeasonBlock]
    events: Sequence[SeasonEvent]
    this_monday: date
    is_open_ended: bool


def picture(tongue: Tongue, facts: SeasonPictureFacts) -> SeasonPicture:
    """Write the picture."""
    weeks = facts.weeks[:TILES_MOST]
    kinds = {one.kind for one in weeks}
    last = weeks[-1].monday + DAYS_TO_SUNDAY
    events = [one for one in facts.events if weeks[0].monday <= one.on <= last]
    return SeasonPicture(
        title=plain(tongue.say("The season")),
        subtitle=named(
            facts.name,
            plain(
                tongue.say(
                    "{first} to {last}",
                    first=short_day(tongue, weeks[0].monday),
                    last=short_day(tongue, last),
                )
            ),
        ),
        now=plain(tongue.say("this week")),
        stage=plain(tongue.say("stage")),
        tiles=tuple(_tile(tongue, one, events, facts.this_monday) for one in weeks),
        keys=tuple(
            SeasonKey(week_kind=kind.value, words=plain(tongue.say(words)))
            for kind, words in KEYS.items()
            if kind in kinds
        ),
        main_event=_event(tongue, events, is_main=True),
        other_event=_event(tongue, events, is_main=False),
        foot=plain(tongue.say("Dates are a proposal: the checklist and the coach decide.")),
    )


def _tile(
    tongue: Tongue, week: WeekFacts, events: Sequence[SeasonEvent], this_monday: date
) -> SeasonTile:
    here = [one for one in events if week.monday <= one.on <= week.monday + DAYS_TO_SUNDAY]
    is_main = any(one.is_main for one in here)
    return SeasonTile(
        day=plain(short_day(tongue, week.monday)),
        stage=week.stage,
        week_kind=week.kind.value,
        is_now=week.monday == this_monday,
        event="main" if is_main else "other" if here else None,
    )


def _event(tongue: Tongue, events: Sequence[SeasonEvent], *, is_main: bool) -> str:
    found = sorted((one for one in events if one.is_main is is_main), key=lambda one: one.on)
    if not found:
        return ""
    days = ", ".join(_named(tongue, one) for one in found)
    if is_main:
        return plain(tongue.say("main event: {days}", days=days))
    return plain(tongue.say("other event: {days}", days=days))


def _named(tongue: Tongue, event: SeasonEvent) -> str:
    day = plain(short_day(tongue, event.on))
    name = shown_name(event.name, 0) if is_drawable(event.name) else ""
    return f"{day} {name}".strip()


def caption(tongue: Tongue, facts: SeasonPictureFacts) -> str:
    """Say what the picture shows to whoever cannot see it."""
    lines = [tongue.say("<b>{name}</b> · the season", name=facts.name)]
    lines += [_block(tongue, one) for one in facts.blocks]
    lines += [
        tongue.say(
            "Main event {day} {name}" if one.is_main else "Other event {day} {name}",
            day=short_day(tongue, one.on),
            name=one.name,
        ).rstrip()
        for one in facts.events
    ]
    if facts.is_open_ended:
        lines.append(tongue.say("and so on"))
    return caption_of(lines, more=tongue.say("and so on"))


def _block(tongue: Tongue, block: SeasonBlock) -> str:
    what = (
        tongue.say("stage {n}", n=block.stage)
        if block.kind is SeasonWeekKind.ORDINARY
        else tongue.say(KEYS[block.kind])
    )
    return tongue.say(
        "{first} to {last}: {what}",
        first=short_day(tongue, block.monday),
        last=short_day(tongue, block.monday + timedelta(days=7 * block.weeks - 1)),
        what=what,
    )
