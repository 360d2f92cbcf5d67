"""The house for its owner: who coaches whom, what nobody has seen, what could not be sent."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from bot.wording import dates
from bot.wording.coach_pain import level_word
from bot.wording.moving import goes_along
from bot.wording.tongue import Marked, Tongue
from scheduler.pain.values import Level


@dataclass(frozen=True)
class CoachFacts:
    """One coach: the athletes by name, who stands in, whether the coach can be reached."""

    name: str
    athletes: tuple[str, ...]
    stand_in: str = ""
    is_reachable: bool = True
    alerts: int = 0
    decisions: int = 0
    messages: int = 0


@dataclass(frozen=True)
class UnseenFacts:
    """An alert that nobody has answered."""

    athlete: str
    coach: str
    level: Level
    age: timedelta


@dataclass(frozen=True)
class HouseFacts:
    """Everything the owner sees."""

    coaches: tuple[CoachFacts, ...]
    unseen: tuple[UnseenFacts, ...]
    set_aside: int
    waiting: int
    refused: int
    blocked: int
    dropped: int


def lines(tongue: Tongue, facts: HouseFacts) -> list[str]:
    """Write the house as lines."""
    return [
        *_unseen(tongue, facts.unseen),
        tongue.say("<b>Coaches</b>"),
        *(_coach(tongue, one) for one in facts.coaches),
        *([] if facts.coaches else [tongue.say("None yet.")]),
        "",
        tongue.say("<b>Messages</b>"),
        tongue.say("set aside, not handled: {n}", n=facts.set_aside),
        tongue.say("waiting to be sent: {n}", n=facts.waiting),
        tongue.say("refused by the platform: {n}", n=facts.refused),
        tongue.say("chat blocked or closed: {n}", n=facts.blocked),
        tongue.say("no longer of use, not sent: {n}", n=facts.dropped),
    ]


def _unseen(tongue: Tongue, alerts: Sequence[UnseenFacts]) -> list[str]:
    if not alerts:
        return [tongue.say("No alert waits for an answer."), ""]
    head = tongue.say("<b>Alerts, not answered</b> · {n}", n=len(alerts))
    return [head, *(_alert(tongue, one) for one in alerts), ""]


def _alert(tongue: Tongue, facts: UnseenFacts) -> str:
    return tongue.say(
        "{athlete}, coach {coach}: {level}, {age} ago",
        athlete=facts.athlete,
        coach=facts.coach,
        level=level_word(tongue, facts.level),
        age=dates.age(tongue, facts.age),
    )


def _coach(tongue: Tongue, facts: CoachFacts) -> str:
    names = ", ".join(facts.athletes)
    line = tongue.say(
        "<b>{name}</b> ({n}){athletes}",
        name=facts.name,
        n=len(facts.athletes),
        athletes=Marked(tongue.say(": {names}", names=names)) if names else "",
    )
    if facts.stand_in:
        line += tongue.say(" · stand-in {name}", name=facts.stand_in)
    if not facts.is_reachable:
        line += tongue.say(" · <b>has no open chat</b>")
    waiting = goes_along(
        tongue, alerts=facts.alerts, decisions=facts.decisions, messages=facts.messages
    )
    return f"{line}\n{tongue.say('to do: {what}', what=Marked(waiting))}" if waiting else line
