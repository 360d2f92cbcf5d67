"""Alerts: what a coach must hear of, and what became of them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from bot.wording import dates
from bot.wording.coach_pain import PlaceFacts, level_word, place_line
from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.reasons import say_reason
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.values import Level, Urgency
from scheduler.reasons import Reason

WORDS_UNITS = 2500  # [UTF-16 units] botapi: 4096 in all; the rest of the alert must fit beside it

LINES_MOST = 8  # [lines] ch: more is read in the record, one tap away

HEADS: Mapping[Urgency, Template] = {
    Urgency.NOW: "Now",
    Urgency.TODAY: "Today",
    Urgency.SOON: "Soon",
    Urgency.CONVENIENT: "When convenient",
}
TOLD: Mapping[Level, Template] = {
    Level.EMERGENCY: "told to stop and call the emergency number",
    Level.CLINICIAN: "told to stop and see a doctor or physiotherapist",
    Level.REST: "told what is left out until you have looked",
    Level.EASE: "told what is cut or swapped, and why",
    Level.WATCH: "told that it is noted",
    Level.NONE: "told nothing extra",
}
TOLD_TODAY: Template = "told to stop and to have it seen by a doctor today"


class Doubt(StrEnum):
    """What became of the question that the athlete was asked."""

    OPEN = "open"
    DENIED = "denied"


@dataclass(frozen=True)
class AlertFacts:
    """What an alert says; ``words`` are the athlete's own, empty where they are private."""

    name: str
    level: Level
    urgency: Urgency
    raised_at: datetime
    words: str = ""
    reasons: tuple[Reason, ...] = ()
    places: tuple[PlaceFacts, ...] = ()
    left_out: str = ""
    times_told: int = 0
    is_private: bool = False
    is_site_unsaid: bool = False
    is_side_unsaid: bool = False
    doubt: Doubt | None = None


def alert_text(tongue: Tongue, facts: AlertFacts) -> str:
    """Write an alert: words, scores, what is left out, what the athlete was told."""
    if facts.is_private:
        return _needs_a_person(tongue, facts)
    return "\n".join([*_head(tongue, facts), *_body(tongue, facts), *_foot(tongue, facts)])


def _needs_a_person(tongue: Tongue, facts: AlertFacts) -> str:
    return "\n".join(
        [
            tongue.say("<b>A message from {name} needs a person now.</b>", name=facts.name),
            tongue.say(
                "Call or go to them, or see that somebody does. "
                "{name} was given the emergency number and asked not to stay alone.",
                name=facts.name,
            ),
            *_repeat(tongue, facts),
        ]
    )


def _head(tongue: Tongue, facts: AlertFacts) -> list[str]:
    first = tongue.say(
        "<b>{urgency} · {name}</b> · {level}",
        urgency=tongue.say(HEADS[facts.urgency]),
        name=facts.name,
        level=level_word(tongue, facts.level),
    )
    return [first, *_repeat(tongue, facts)]


def _repeat(tongue: Tongue, facts: AlertFacts) -> list[str]:
    if not facts.times_told:
        return []
    return [
        tongue.say(
            "Open since {when}, told {times} before.",
            when=dates.moment(tongue, facts.raised_at),
            times=tongue.count(facts.times_told, "once", "{n} times"),
        )
    ]


def _body(tongue: Tongue, facts: AlertFacts) -> list[str]:
    lines = []
    if facts.words:
        lines.append(tongue.say("<i>“{words}”</i>", words=shortened(facts.words, WORDS_UNITS)))
    lines += [place_line(tongue, one) for one in facts.places]
    if facts.is_site_unsaid:
        lines.append(
            tongue.say("Which place exactly was not said yet: the careful reading counts.")
        )
    if facts.is_side_unsaid:
        lines.append(tongue.say("Which side was not said yet: both are spared until it is."))
    shown = {one.flag for one in facts.places if one.flag is not None}
    scores = {one.score for one in facts.places}
    reasons = [
        one
        for one in facts.reasons
        if one.figures.get("flag") not in shown
        and not (one.code == PainReason.SCORE_BAND and one.figures.get("score") in scores)
    ]
    lines += dict.fromkeys(say_reason(tongue, one) for one in reasons)
    return list(dict.fromkeys(lines))[:LINES_MOST]


def _foot(tongue: Tongue, facts: AlertFacts) -> list[str]:
    lines = []
    if facts.left_out:
        lines.append(tongue.say("Left out: {what}", what=Marked(facts.left_out)))
    if facts.doubt is not None:
        return [*lines, _asked(tongue, facts, facts.doubt)]
    is_today = facts.level is Level.CLINICIAN and facts.urgency is Urgency.TODAY
    told = tongue.say(TOLD_TODAY if is_today else TOLD[facts.level])
    return [*lines, tongue.say("{name} was {told}.", name=facts.name, told=told)]


def _asked(tongue: Tongue, facts: AlertFacts, doubt: Doubt) -> str:
    """Say that a doubt was asked about, and what was answered."""
    if doubt is Doubt.DENIED:
        return tongue.say(
            "{name} was told to stop and asked whether it is so, and has answered no. "
            "If the words worry you, ask {name}.",
            name=facts.name,
        )
    if facts.level is Level.EMERGENCY:
        return tongue.say(
            "{name} was told to stop, to call the emergency number if it is so, and asked. "
            "There is no answer yet.",
            name=facts.name,
        )
    return tongue.say(
        "{name} was told to stop for now and asked whether it is so. There is no answer yet.",
        name=facts.name,
    )


def answered_no(tongue: Tongue, *, name: str) -> str:
    """The athlete answered a doubt away after the coach had been told of it."""
    return tongue.say(
        "<b>{name}</b> has answered the question behind the alert: no, it is not so. "
        "Nothing is left out for it any more. If the words worry you, ask {name}. "
        "The alert is repeated until you tap Seen.",
        name=name,
    )


def seen_label(tongue: Tongue) -> str:
    """Label the button that answers the alert."""
    return label(tongue, "Seen")


def write_label(tongue: Tongue) -> str:
    """Label the button that writes to the athlete."""
    return label(tongue, "Write")


def open_label(tongue: Tongue) -> str:
    """Label the button that opens the record."""
    return label(tongue, "Open")


def clear_label(tongue: Tongue) -> str:
    """Label the button that clears."""
    return label(tongue, "Clear")


def seen(tongue: Tongue, *, name: str, still: Sequence[PlaceFacts]) -> str:
    """The alert is answered; the level stays."""
    head = tongue.say("Seen: the alert about {name} is not repeated.", name=name)
    if not still:
        return head
    places = Marked("; ".join(place_line(tongue, one) for one in still))
    stays = tongue.say(
        "Until you clear it, this stays: {places}.\n<code>/clear {name} …</code> with the reason.",
        places=places,
        name=name,
    )
    return f"{head}\n{stays}"


def answered_before(tongue: Tongue, *, name: str) -> str:
    """Somebody answered the alert earlier."""
    return tongue.say("The alert about {name} was answered before.", name=name)
