"""One athlete on one screen."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.wording import coach_week, dates
from bot.wording.coach_audit import EntryFacts, short_entry
from bot.wording.coach_pain import PlaceFacts, place, place_line
from bot.wording.coach_roster import STATES, sessions_kept
from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.values import Side, Site

QUOTE_UNITS = 300  # [UTF-16 units] ch: the whole message is a few lines above in the chat


@dataclass(frozen=True)
class ClearedFacts:
    """What somebody cleared: the day in the reader's zone, and the place in words."""

    on: date
    place: str
    who: str


@dataclass(frozen=True)
class ReturnFacts:
    """How a cleared place comes back; ``site`` None means all of the upper body."""

    site: Site | None
    side: Side
    share_of_sets: float
    is_one_step_back: bool
    sessions_left: int


@dataclass(frozen=True)
class AthleteFacts:
    """Everything the screen shows; texts that are lines already are marked up."""

    name: str
    stage: int
    weeks: int
    is_re_earned: bool
    state: str
    is_blocked: bool
    kept: int
    sent: int
    standing: str
    checklist_head: str
    checklist: tuple[str, ...]
    week: coach_week.WeekFigures
    limits: tuple[str, ...]
    still: tuple[str, ...]
    load: str
    held: str
    places: tuple[PlaceFacts, ...]
    left_out: str
    cleared: tuple[ClearedFacts, ...]
    returns: tuple[ReturnFacts, ...]
    changes: tuple[EntryFacts, ...]
    decisions: tuple[str, ...]
    waiting: tuple[str, ...]
    remarks: tuple[str, ...] = ()


def screen(tongue: Tongue, facts: AthleteFacts) -> list[str]:
    """Write the screen as lines, what to decide first."""
    return [
        *_head(tongue, facts),
        *_section(tongue, "To decide", facts.decisions),
        *_waiting(tongue, facts.waiting),
        "",
        facts.checklist_head,
        *facts.checklist,
        *_section(tongue, "This week, sets", coach_week.lines(tongue, facts.week)),
        *([facts.load] if facts.load else []),
        *_section(tongue, "Can do now, in the last set", facts.limits),
        *_section(tongue, "The same dose for two months or more", facts.still),
        *_section(tongue, "Remarks beside results", facts.remarks),
        *_section(tongue, "Pain", _pain(tongue, facts)),
        *_section(tongue, "Changed last", [short_entry(tongue, one) for one in facts.changes]),
    ]


def _head(tongue: Tongue, facts: AthleteFacts) -> list[str]:
    first = tongue.say(
        "<b>{name}</b> · stage {stage}, {weeks}",
        name=facts.name,
        stage=facts.stage,
        weeks=tongue.count(facts.weeks, "1 whole week in it", "{n} whole weeks in it"),
    )
    if facts.is_re_earned:
        first += tongue.say(" (held before)")
    second = facts.standing
    if facts.sent:
        second = tongue.say(
            "{state} · {sessions} in 4 weeks",
            state=tongue.say(STATES["training"]) if facts.state == "training" else facts.standing,
            sessions=sessions_kept(tongue, kept=facts.kept, sent=facts.sent),
        )
    lines = [first, second, *([facts.held] if facts.held else [])]
    if facts.is_blocked:
        lines.append(tongue.say("The chat is blocked or closed: nothing arrives."))
    return lines


def _section(tongue: Tongue, title: Template, lines: Sequence[str]) -> list[str]:
    if not lines:
        return []
    return ["", tongue.say("<b>{title}</b>", title=tongue.say(title)), *lines]


def _waiting(tongue: Tongue, messages: Sequence[str]) -> list[str]:
    quotes = [
        tongue.say("“{words}”", words=shortened(words, QUOTE_UNITS)) for words in messages[-3:]
    ]
    return _section(tongue, "Messages, not answered", quotes)


def _pain(tongue: Tongue, facts: AthleteFacts) -> list[str]:
    lines = [place_line(tongue, one) for one in facts.places]
    if facts.left_out:
        lines.append(tongue.say("Left out: {what}", what=Marked(facts.left_out)))
    lines += [_cleared(tongue, one) for one in facts.cleared]
    lines += [_return(tongue, one) for one in facts.returns]
    return lines or [tongue.say("Nothing reported.")]


def _cleared(tongue: Tongue, facts: ClearedFacts) -> str:
    return tongue.say(
        "Cleared {day} by {who}: {place}",
        day=dates.day(tongue, facts.on),
        who=facts.who,
        place=facts.place,
    )


def _return(tongue: Tongue, facts: ReturnFacts) -> str:
    where = (
        place(tongue, facts.site, facts.side)
        if facts.site is not None
        else tongue.say("all upper-body training")
    )
    step = tongue.say(", one step easier") if facts.is_one_step_back else ""
    return tongue.count(
        facts.sessions_left,
        "Coming back: {where}, {n} more session at {pct} % of the sets{step}",
        "Coming back: {where}, {n} more sessions at {pct} % of the sets{step}",
        where=Marked(where),
        pct=round(100 * facts.share_of_sets),
        step=step,
    )


def write_label(tongue: Tongue) -> str:
    """Label the button that writes to the athlete."""
    return label(tongue, "Write")


def audit_label(tongue: Tongue) -> str:
    """Label the button that shows the decisions."""
    return label(tongue, "Decisions")


def clear_label(tongue: Tongue) -> str:
    """Label the button that clears what is left out."""
    return label(tongue, "Clear")


def seen_label(tongue: Tongue) -> str:
    """Label the button that answers the open alert."""
    return label(tongue, "Alert seen")


def decision_line(tongue: Tongue, title: str) -> str:
    """Name a proposal that waits."""
    return tongue.say("{title}", title=title)


def open_alert_line(tongue: Tongue) -> str:
    """An alert is open."""
    return tongue.say("An alert is open.")


def look_at_answers_line(tongue: Tongue) -> str:
    """The first answers wait for the coach."""
    return tongue.say("Look at the first answers before training begins.")
