"""The weekly digest: what needs the coach in at most 25 lines, the rest after it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.wording import clips, dates
from bot.wording.coach_pain import level_word
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Tongue
from scheduler.pain.values import Level

LINES_MOST = 25  # [lines] ch: the first message fits a coffee
REST_UNITS = 120  # [UTF-16 units] ch: one line is three on a phone; the picture names everybody
QUOTE_UNITS = 60  # [UTF-16 units] ch: enough to know what it is about


@dataclass(frozen=True)
class DigestFacts:
    """What the week came to. Each line names its athlete; ``rest`` needs nothing."""

    first: date
    last: date
    athletes: int
    kept: int
    sent: int
    decisions: tuple[tuple[str, str], ...] = ()
    alerts: tuple[tuple[str, Level, bool], ...] = ()
    denied: tuple[str, ...] = ()
    unknown: tuple[str, ...] = ()
    messages: tuple[tuple[str, str], ...] = ()
    clips: tuple[tuple[str, int], ...] = ()
    quiet: tuple[tuple[str, timedelta], ...] = ()
    left_out: tuple[tuple[str, Level], ...] = ()
    instead: tuple[tuple[str, str], ...] = ()
    bests: tuple[str, ...] = ()
    bests_more: int = 0
    changes: tuple[str, ...] = ()
    stages: tuple[tuple[str, str], ...] = ()
    still: tuple[str, ...] = ()
    up: int = 0
    kept_doses: int = 0
    down: int = 0
    unbalanced: tuple[tuple[str, int, int], ...] = ()
    rest: tuple[str, ...] = ()


@dataclass(frozen=True)
class _Section:
    """Lines under a title; ``share`` is how many come before the others get more [lines]."""

    title: str
    lines: Sequence[str]
    share: int

    def head(self, tongue: Tongue, *, shown: int | None = None) -> str:
        """Write the title, and of how many lines these are where some are left out."""
        title, total = Marked(self.title), len(self.lines)
        if shown is None or shown >= total:
            return tongue.say("<b>{title}</b>", title=title)
        return tongue.say("<b>{title}</b> · {n} of {total}", title=title, n=shown, total=total)


def first_message(tongue: Tongue, facts: DigestFacts) -> tuple[str, tuple[str, ...]]:
    """Write the first message, at most 25 lines, and return the lines that found no room.

    Every section gets its share, so that forty decisions do not push an alert out of sight; what
    is left of the room goes to the most pressing. A section that is cut says of how many it is.
    """
    closing = [_doses(tongue, facts), _rest(tongue, facts)]
    room = LINES_MOST - 1 - len(closing)
    sections = _sections(tongue, facts)
    if sum(1 + len(one.lines) for one in sections) <= room:
        lines = [line for one in sections for line in (one.head(tongue), *one.lines)]
        return "\n".join([_head(tongue, facts), *lines, *closing]), ()
    shares = _shares(sections, room - 1)
    kept, over = [], []
    for one, share in zip(sections, shares, strict=True):
        if share:
            kept += [one.head(tongue, shown=share), *one.lines[:share]]
        if share < len(one.lines):
            over += [one.head(tongue), *one.lines[share:]]
    more = tongue.say("More in the next message.")
    return "\n".join([_head(tongue, facts), *kept, more, *closing]), tuple(over)


def _shares(sections: Sequence[_Section], room: int) -> list[int]:
    """Return how many lines of each section are shown; a shown section costs its head too."""
    shares = [0] * len(sections)
    for most in (lambda one: one.share, lambda one: len(one.lines)):
        for place, one in enumerate(sections):
            head = 0 if shares[place] else 1
            wanted = min(len(one.lines), most(one)) - shares[place]
            given = max(0, min(wanted, room - head))
            if given:
                shares[place] += given
                room -= given + head
    return shares


def _head(tongue: Tongue, facts: DigestFacts) -> str:
    return tongue.say(
        "<b>{first} to {last}</b> · {kept} of {sent} sessions",
        first=dates.day(tongue, facts.first),
        last=dates.day(tongue, facts.last),
        kept=facts.kept,
        sent=facts.sent,
    )


def _sections(tongue: Tongue, facts: DigestFacts) -> list[_Section]:
    """Return what there is to say, the most pressing first, each with its title in words.

    An open alert goes before every decision; answered ones come behind them.
    """
    decide = _Section(tongue.say("To decide"), [_pair(tongue, *one) for one in facts.decisions], 5)
    told = [_alert(tongue, *one) for one in facts.alerts]
    denied = [
        tongue.say("{name}: asked about a sign, and answered no", name=name)
        for name in facts.denied
    ]
    alerts = _Section(tongue.say("Alerts"), [*told, *denied], 5)
    is_any_open = any(is_open for _, _, is_open in facts.alerts)
    found = [
        *((alerts, decide) if is_any_open else (decide, alerts)),
        _Section(tongue.say("Could not be worked out"), _unknown(tongue, facts.unknown), 2),
        _Section(
            tongue.say("Less or left out, for pain"),
            [_pair(tongue, name, level_word(tongue, level)) for name, level in facts.left_out],
            3,
        ),
        _Section(tongue.say("Not answered"), [_message(tongue, *one) for one in facts.messages], 3),
        _Section(tongue.say("Clips to answer: /clips"), clips.waiting_line(tongue, facts.clips), 2),
        _Section(tongue.say("Silent"), [_quiet(tongue, *one) for one in facts.quiet], 2),
        _Section(
            tongue.say("No session this time"), [_pair(tongue, *one) for one in facts.instead], 1
        ),
        _Section(tongue.say("Real changes in four weeks"), facts.changes, 2),
        _Section(
            tongue.say("Push and pull out of balance"),
            [_ratio(tongue, *one) for one in facts.unbalanced],
            1,
        ),
        _Section(tongue.say("Stages"), [_pair(tongue, *one) for one in facts.stages], 1),
        _Section(tongue.say("The same dose for two months or more"), facts.still, 1),
        _Section(tongue.say("Bests"), _bests(tongue, facts), 1),
    ]
    return [one for one in found if one.lines]


def _bests(tongue: Tongue, facts: DigestFacts) -> list[str]:
    more = [tongue.say("and {n} more", n=facts.bests_more)] if facts.bests_more else []
    return [*facts.bests, *more]


def _pair(tongue: Tongue, name: str, what: str) -> str:
    return tongue.say("{name}: {what}", name=name, what=what)


def _alert(tongue: Tongue, name: str, level: Level, is_open: bool) -> str:  # noqa: FBT001 (a row)
    state = tongue.say("<b>open</b>") if is_open else tongue.say("answered")
    return tongue.say(
        "{name}: {level}, {state}",
        name=name,
        level=level_word(tongue, level),
        state=Marked(state),
    )


def _message(tongue: Tongue, name: str, words: str) -> str:
    return tongue.say("{name}: “{words}”", name=name, words=shortened(words, QUOTE_UNITS))


def _unknown(tongue: Tongue, names: Sequence[str]) -> list[str]:
    return [
        tongue.say("{name}: the week's figures. Whoever runs me is told.", name=name)
        for name in names
    ]


def _quiet(tongue: Tongue, name: str, for_how_long: timedelta) -> str:
    return tongue.say("{name}: for {age}", name=name, age=dates.age(tongue, for_how_long))


def _ratio(tongue: Tongue, name: str, push: int, pull: int) -> str:
    return tongue.say(
        "{name}: {push} sets of push, {pull} of pull", name=name, push=push, pull=pull
    )


def _doses(tongue: Tongue, facts: DigestFacts) -> str:
    return tongue.say(
        "Doses: {up} up, {kept} kept, {down} down",
        up=facts.up,
        kept=facts.kept_doses,
        down=facts.down,
    )


def _rest(tongue: Tongue, facts: DigestFacts) -> str:
    if not facts.rest:
        return tongue.say("Nobody else.") if facts.athletes else tongue.say("No athletes yet.")
    names = shortened(", ".join(facts.rest), REST_UNITS)
    return tongue.say("As planned ({n}): {names}", n=len(facts.rest), names=names)


def best(tongue: Tongue, *, name: str, line: str) -> str:
    """Write one best with its athlete in front; ``line`` is marked up already."""
    return tongue.say("{name} · {line}", name=name, line=Marked(line))
