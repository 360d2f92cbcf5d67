"""The roster: who needs the coach first, a short line each."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import IntEnum

from bot.wording import clips, dates
from bot.wording.coach_pain import level_word
from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.values import Level

NEW_FOR = timedelta(days=28)  # [d] ch: as far back as sessions are counted
QUOTE_UNITS = 60  # [UTF-16 units] ch: enough to know what it is about


class Need(IntEnum):
    """Why somebody is on the roster, the most pressing first."""

    ALERT = 0
    DECISION = 1
    MESSAGE = 2
    SILENT = 3
    OUT_OF_REACH = 4
    NOT_TRAINING = 5
    NOTHING = 6


HEADS: Mapping[Need, Template] = {
    Need.ALERT: "Alerts, not answered",
    Need.DECISION: "To decide",
    Need.MESSAGE: "Messages, not answered",
    Need.SILENT: "Silent",
    Need.OUT_OF_REACH: "Cannot be reached",
    Need.NOT_TRAINING: "Not training yet, or paused",
    Need.NOTHING: "Nothing needed",
}
STATES: Mapping[str, Template] = {
    "invited": "has not opened the link yet",
    "intake": "is answering the first questions",
    "waits_for_coach": "waits for you to look at the answers",
    "paused": "paused",
    "training": "in training",
    "left": "has left",
}


@dataclass(frozen=True)
class RosterFacts:
    """What one line of the roster is made of.

    ``started_on`` is the day of joining, ``next_on`` that of the next planned session.
    """

    athlete_id: int
    name: str
    stage: int
    state: str
    kept: int
    sent: int
    alerts: int = 0
    level: Level = Level.NONE
    alert_age: timedelta | None = None
    decisions: int = 0
    messages: int = 0
    oldest_message: str = ""
    clips: int = 0
    silent: timedelta | None = None
    is_blocked: bool = False
    waits_for_coach: bool = False
    group: str = ""
    paused_until: date | None = None
    started_on: date | None = None
    next_on: date | None = None

    @property
    def need(self) -> Need:
        """The most pressing thing; the others are still named in the line."""
        checks = (
            (Need.ALERT, self.alerts > 0),
            (Need.DECISION, self.decisions > 0 or self.waits_for_coach),
            (Need.MESSAGE, self.messages + self.clips > 0),
            (Need.SILENT, self.silent is not None),
            (Need.OUT_OF_REACH, self.is_blocked),
            (Need.NOT_TRAINING, self.state != "training"),
        )
        return next((need for need, holds in checks if holds), Need.NOTHING)


def heading(tongue: Tongue, need: Need, count: int) -> str:
    """Write the head of a group."""
    return tongue.say("<b>{head}</b> · {count}", head=tongue.say(HEADS[need]), count=count)


def line(tongue: Tongue, facts: RosterFacts) -> str:
    """Write one athlete in one line: what is needed, else how it goes."""
    parts = [part for part in _parts(tongue, facts) if part]
    return tongue.say("{name} · {what}", name=facts.name, what=Marked(" · ".join(parts)))


def _parts(tongue: Tongue, facts: RosterFacts) -> list[str]:
    found = [
        _alert(tongue, facts),
        tongue.count(facts.decisions, "1 decision", "{n} decisions") if facts.decisions else "",
        _message(tongue, facts),
        clips.count(tongue, facts.clips) if facts.clips else "",
        _silence(tongue, facts),
        tongue.say("chat blocked or closed") if facts.is_blocked else "",
    ]
    if facts.state != "training":
        found.append(standing(tongue, facts))
    if not any(found):
        found.append(tongue.say("stage {stage}", stage=facts.stage))
        found.append(
            sessions_kept(tongue, kept=facts.kept, sent=facts.sent)
            if facts.sent
            else standing(tongue, facts)
        )
    return found


def standing(tongue: Tongue, facts: RosterFacts) -> str:
    """Say what somebody does instead of training: a break, a start, a session to come."""
    if facts.state == "paused" and facts.paused_until is not None:
        return tongue.say("on a break until {day}", day=dates.day(tongue, facts.paused_until))
    if facts.state != "training":
        return tongue.say(STATES[facts.state])
    if facts.next_on is None:
        return tongue.say("no session planned")
    day = dates.day(tongue, facts.next_on)
    is_new = not facts.sent and (
        facts.started_on is None or facts.next_on - facts.started_on <= NEW_FOR
    )
    if is_new:
        return tongue.say("starts {day}", day=day)
    return tongue.say("next session {day}", day=day)


def _alert(tongue: Tongue, facts: RosterFacts) -> str:
    if not facts.alerts or facts.alert_age is None:
        return ""
    return tongue.say(
        "<b>{level}</b>, {age} ago",
        level=level_word(tongue, facts.level),
        age=dates.age(tongue, facts.alert_age),
    )


def _message(tongue: Tongue, facts: RosterFacts) -> str:
    if not facts.messages:
        return ""
    quote = tongue.say("“{words}”", words=shortened(facts.oldest_message, QUOTE_UNITS))
    more = facts.messages - 1
    return quote + (tongue.say(" and {n} more", n=more) if more else "")


def _silence(tongue: Tongue, facts: RosterFacts) -> str:
    if facts.silent is None:
        return ""
    return tongue.say("silent for {age}", age=dates.age(tongue, facts.silent))


def sessions_kept(tongue: Tongue, *, kept: int, sent: int) -> str:
    """Write how many of the sessions of four weeks were trained."""
    return tongue.say("{kept} of {sent} sessions", kept=kept, sent=sent)


def nobody_yet(tongue: Tongue) -> str:
    """A coach without athletes."""
    return tongue.say(
        "You have no athletes yet. Invite one like this:\n<code>/invite Robin Field</code>"
    )


def summary(tongue: Tongue, facts: Sequence[RosterFacts]) -> str:
    """Write the first line: how many there are and how many need something."""
    waiting = sum(one.need <= Need.SILENT for one in facts)
    athletes = tongue.count(len(facts), "1 athlete", "{n} athletes")
    if not waiting:
        return tongue.say("{athletes}. Nobody is waiting for you.", athletes=athletes)
    return tongue.count(
        waiting,
        "{athletes}, {n} waiting for you.",
        "{athletes}, {n} waiting for you.",
        athletes=athletes,
    )


def open_label(tongue: Tongue, name: str) -> str:
    """Label the button that opens one athlete."""
    return label(tongue, "{name}", name=name)
