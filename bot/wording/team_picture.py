"""A team's week in words: on the picture, and as its caption."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.pictures.team_layout import room_for
from bot.pictures.values import UNKNOWN, TeamCount, TeamPicture, TeamRow, TeamShort
from bot.wording import dates
from bot.wording.coach_pain import level_word
from bot.wording.coach_roster import STATES, Need, RosterFacts
from bot.wording.pictures import caption_of, plain, short_day, shown_name
from bot.wording.tongue import Tongue
from scheduler.pain.values import Level


@dataclass(frozen=True)
class TeamMember:
    """One athlete's week: sessions trained and sent, how careful pain makes us, who waits.

    ``level`` None: it could not be worked out, so that somebody has to look.
    """

    kept: int
    sent: int
    level: Level | None
    roster: RosterFacts

    @property
    def needs_a_look(self) -> bool:
        """True where somebody waits for the coach, or pain has changed the training."""
        is_eased = self.level is None or self.level >= Level.EASE
        return is_eased or self.roster.need <= Need.OUT_OF_REACH

    @property
    def rank(self) -> Level:
        """How far up pain puts them; what is not known, as far as where something is rested."""
        return Level.REST if self.level is None else self.level


def in_order(members: Sequence[TeamMember]) -> list[TeamMember]:
    """Put who needs a look first: the gravest pain, then what waits longest; then by name."""
    return sorted(
        members,
        key=lambda one: (
            not one.needs_a_look,
            -one.rank if one.rank >= Level.REST else 0,
            one.roster.need,
            -one.rank,
            one.roster.name.casefold(),
        ),
    )


def picture(
    tongue: Tongue, members: Sequence[TeamMember], *, first: date, last: date
) -> TeamPicture:
    """Write the picture; who finds no room on it is counted."""
    ordered = in_order(members)
    looks = [one for one in ordered if one.needs_a_look]
    rest = [one for one in ordered if not one.needs_a_look]
    room = room_for(looks=len(looks), rest=len(rest))
    more = len(looks) - room.looks
    more_rest = len(rest) - room.rest
    return TeamPicture(
        title=plain(
            tongue.say(
                "The team, {first} to {last}",
                first=short_day(tongue, first),
                last=short_day(tongue, last),
            )
        ),
        counts=_counts(tongue, members, looks=len(looks)),
        look_head=plain(tongue.say("Need a look")),
        looks=tuple(_row(tongue, one, number) for number, one in enumerate(looks[: room.looks], 1)),
        looks_more=plain(tongue.say("and {n} more", n=more)) if more else "",
        rest_head=plain(tongue.say("The others: sessions, stage")),
        rest=tuple(
            _short(one, number) for number, one in enumerate(rest[: room.rest], len(looks) + 1)
        ),
        rest_more=plain(tongue.say("and {n} more", n=more_rest)) if more_rest else "",
    )


def caption(tongue: Tongue, members: Sequence[TeamMember], *, first: date, last: date) -> str:
    """Say what the picture shows to whoever cannot see it."""
    ordered = in_order(members)
    looks = [one for one in ordered if one.needs_a_look]
    rest = sum(one.sent > 0 for one in ordered) - sum(one.sent > 0 for one in looks)
    without = len(ordered) - len(looks) - rest
    head = tongue.say(
        "<b>The team, {first} to {last}</b>: {kept} of {sent} sessions.",
        first=short_day(tongue, first),
        last=short_day(tongue, last),
        kept=sum(one.kept for one in members),
        sent=sum(one.sent for one in members),
    )
    planned = tongue.say("As planned: {n}.", n=rest)
    if without:
        planned += " " + tongue.say("No session: {n}.", n=without)
    lines = [_line(tongue, one, number) for number, one in enumerate(looks, 1)]
    heading = [tongue.say("Need a look: {n}.", n=len(looks))]
    numbered = [
        tongue.say("{number} is {name}.", number=drawn, name=one.roster.name)
        for number, one in enumerate(ordered[len(looks) :], len(looks) + 1)
        if (drawn := shown_name(one.roster.name, number)).startswith("#")
    ]
    return caption_of([head, planned, *heading, *lines, *numbered], more="…")


def _counts(tongue: Tongue, members: Sequence[TeamMember], *, looks: int) -> tuple[TeamCount, ...]:
    kept, sent = sum(one.kept for one in members), sum(one.sent for one in members)
    hurting = sum(one.level is not None and one.level > Level.NONE for one in members)
    return (
        TeamCount(number=str(len(members)), words=plain(tongue.say("athletes"))),
        TeamCount(number=f"{kept}/{sent}", words=plain(tongue.say("sessions"))),
        TeamCount(number=str(looks), words=plain(tongue.say("need a look"))),
        TeamCount(number=str(hurting), words=plain(tongue.say("with pain"))),
    )


def _row(tongue: Tongue, one: TeamMember, number: int) -> TeamRow:
    return TeamRow(
        name=shown_name(one.roster.name, number),
        sessions=_sessions(one),
        stage=plain(tongue.say("st. {n}", n=one.roster.stage)),
        level=UNKNOWN if one.level is None else one.level.name.lower(),
        level_word=plain(_level(tongue, one.level)),
        waits=plain(waits(tongue, one.roster)),
    )


def _short(one: TeamMember, number: int) -> TeamShort:
    return TeamShort(
        name=shown_name(one.roster.name, number),
        sessions=_sessions(one),
        stage=str(one.roster.stage),
    )


def _sessions(one: TeamMember) -> str:
    return f"{one.kept}/{one.sent}" if one.sent else "–"


def _level(tongue: Tongue, level: Level | None) -> str:
    if level is None:
        return tongue.say("not worked out")
    return tongue.say("no open pain") if level is Level.NONE else level_word(tongue, level)


def _line(tongue: Tongue, one: TeamMember, number: int) -> str:
    drawn = shown_name(one.roster.name, number)
    name = one.roster.name if not drawn.startswith("#") else f"{drawn} {one.roster.name}"
    parts = [
        tongue.say("{kept} of {sent}", kept=one.kept, sent=one.sent),
        tongue.say("stage {n}", n=one.roster.stage),
        _level(tongue, one.level),
        waits(tongue, one.roster),
    ]
    return tongue.say("{name}: ", name=name) + ", ".join(part for part in parts if part)


def waits(tongue: Tongue, roster: RosterFacts) -> str:
    """Say what waits for the coach, the most pressing alone; empty where nothing does."""
    match roster.need:
        case Need.ALERT:
            return tongue.say("alert open")
        case Need.DECISION if roster.waits_for_coach and not roster.decisions:
            return tongue.say("first answers")
        case Need.DECISION:
            return tongue.count(roster.decisions, "1 decision", "{n} decisions")
        case Need.MESSAGE:
            return tongue.count(roster.messages, "1 message", "{n} messages")
        case Need.SILENT if roster.silent is not None:
            return tongue.say("silent {age}", age=dates.age(tongue, roster.silent))
        case Need.OUT_OF_REACH:
            return tongue.say("chat closed")
        case Need.NOT_TRAINING:
            return tongue.say(STATES[roster.state])
        case _:
            return ""
