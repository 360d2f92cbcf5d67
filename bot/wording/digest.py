"""The weekly digest: what needs the coach in at most 25 lines, the rest after it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.wording import clips, dates
from bot.wording.coach_pain import level_word
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.values import Level

LINES_MOST = 25  # [lines] ch: the first message fits a coffee
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
    messages: tuple[tuple[str, str], ...] = ()
    clips: tuple[tuple[str, int], ...] = ()
    quiet: tuple[tuple[str, timedelta], ...] = ()
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


def first_message(tongue: Tongue, facts: DigestFacts) -> tuple[str, tuple[str, ...]]:
    """Write the first message, at most 25 lines, and return the lines that found no room.

    Decisions, alerts and unanswered messages come first, so what is cut off is the least urgent.
    """
    closing = [_doses(tongue, facts), _rest(tongue, facts)]
    room = LINES_MOST - 1 - len(closing)
    lines = _sections(tongue, facts)
    if len(lines) <= room:
        return "\n".join([_head(tongue, facts), *lines, *closing]), ()
    kept, over = lines[: room - 1], lines[room - 1 :]
    more = tongue.say("More in the next message.")
    return "\n".join([_head(tongue, facts), *kept, more, *closing]), tuple(over)


def _head(tongue: Tongue, facts: DigestFacts) -> str:
    return tongue.say(
        "<b>{first} to {last}</b> · {kept} of {sent} sessions",
        first=dates.day(tongue, facts.first),
        last=dates.day(tongue, facts.last),
        kept=facts.kept,
        sent=facts.sent,
    )


def _sections(tongue: Tongue, facts: DigestFacts) -> list[str]:
    return [
        *_section(tongue, "To decide", [_pair(tongue, *one) for one in facts.decisions]),
        *_section(tongue, "Alerts", [_alert(tongue, *one) for one in facts.alerts]),
        *_section(tongue, "Not answered", [_message(tongue, *one) for one in facts.messages]),
        *_section(tongue, "Clips to answer: /clips", clips.waiting_line(tongue, facts.clips)),
        *_section(tongue, "Silent", [_quiet(tongue, *one) for one in facts.quiet]),
        *_section(
            tongue, "Push : pull out of balance", [_ratio(tongue, *one) for one in facts.unbalanced]
        ),
        *_section(tongue, "Stages", [_pair(tongue, *one) for one in facts.stages]),
        *_section(tongue, "The same dose for two months or more", facts.still),
        *_section(tongue, "Real changes in four weeks", facts.changes),
        *_section(tongue, "Bests", _bests(tongue, facts)),
    ]


def _bests(tongue: Tongue, facts: DigestFacts) -> list[str]:
    more = [tongue.say("and {n} more", n=facts.bests_more)] if facts.bests_more else []
    return [*facts.bests, *more]


def _section(tongue: Tongue, title: Template, lines: Sequence[str]) -> list[str]:
    if not lines:
        return []
    return [tongue.say("<b>{title}</b>", title=tongue.say(title)), *lines]


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


def _quiet(tongue: Tongue, name: str, for_how_long: timedelta) -> str:
    return tongue.say("{name}: for {age}", name=name, age=dates.age(tongue, for_how_long))


def _ratio(tongue: Tongue, name: str, push: int, pull: int) -> str:
    return tongue.say("{name}: {push} : {pull} sets", name=name, push=push, pull=pull)


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
    names = shortened(", ".join(facts.rest), 400)
    return tongue.say("As planned ({n}): {names}", n=len(facts.rest), names=names)


def best(tongue: Tongue, *, name: str, line: str) -> str:
    """Write one best with its athlete in front; ``line`` is marked up already."""
    return tongue.say("{name} · {line}", name=name, line=Marked(line))
