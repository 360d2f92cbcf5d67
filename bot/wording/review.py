"""The review after a month and then every twelve weeks: facts only, as the coach may send them."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.wording import dates
from bot.wording.labels import label
from bot.wording.tongue import Tongue


@dataclass(frozen=True)
class ReviewFacts:
    """What a review says; lines are written already, ``met`` of ``asked`` are the checklist's."""

    first: date
    last: date
    trained: int
    sent: int
    stage: int
    met: int
    asked: int
    changes: tuple[str, ...] = ()
    bests: tuple[str, ...] = ()
    sore_days: int = 0
    worst_pain: int = 0
    left_out: str = ""


def text(tongue: Tongue, facts: ReviewFacts) -> str:
    """Write the review to the athlete: what was done, what changed, where things stand."""
    lines = [
        tongue.say(
            "Your training from {first} to {last}:",
            first=dates.day(tongue, facts.first),
            last=dates.day(tongue, facts.last),
        ),
        tongue.say("{done} of {sent} sessions trained.", done=facts.trained, sent=facts.sent),
    ]
    lines += facts.changes
    lines += facts.bests
    if facts.asked:
        lines.append(
            tongue.say(
                "Stage {stage}. Of the checklist to move up {met} of {asked} are met.",
                stage=facts.stage,
                met=facts.met,
                asked=facts.asked,
            )
        )
    else:
        lines.append(tongue.say("Stage {stage}.", stage=facts.stage))
    if facts.sore_days:
        lines.append(
            tongue.count(
                facts.sore_days,
                "Pain was reported on 1 day, at most {most} of 10.",
                "Pain was reported on {n} days, at most {most} of 10.",
                most=facts.worst_pain,
            )
        )
    if facts.left_out:
        lines.append(tongue.say("Left out now: {what}.", what=facts.left_out))
    return "\n".join(lines)


def title(tongue: Tongue, *, number: int) -> str:
    """Name a drafted review in a few words."""
    if number == 1:
        return tongue.say("Review of the first 30 days")
    return tongue.say("Review of the last 12 weeks")


def draft(tongue: Tongue, *, name: str, title: str, text: str) -> str:
    """Show the coach what would be sent."""
    return tongue.say(
        "<b>{name}</b> · {title}. A draft; nothing is sent yet:\n\n{text}",
        name=name,
        title=title,
        text=text,
    )


def several(tongue: Tongue, names: Sequence[str]) -> str:
    """Several drafts wait; each is a button away."""
    return tongue.say(
        "{n} reviews are drafted: {names}. They wait on /roster too.",
        n=len(names),
        names=", ".join(names),
    )


def show_label(tongue: Tongue, *, name: str) -> str:
    """Label the button that shows one draft."""
    return label(tongue, "Review: {name}", name=name)


def send_label(tongue: Tongue) -> str:
    """Label the button that sends the draft."""
    return label(tongue, "Send as it is")


def change_label(tongue: Tongue) -> str:
    """Label the button that replaces the words."""
    return label(tongue, "Change the words")


def leave_label(tongue: Tongue) -> str:
    """Label the button that sends nothing."""
    return label(tongue, "Leave it")


def write_instead(tongue: Tongue, *, name: str) -> str:
    """Ask for the coach's own words."""
    return tongue.say(
        "Write the review of {name} now. Your next text goes to them in place of the draft.",
        name=name,
    )


def sent(tongue: Tongue, *, name: str) -> str:
    """It went to the athlete."""
    return tongue.say("The review went to {name}.", name=name)


def left(tongue: Tongue, *, name: str) -> str:
    """Nothing was sent."""
    return tongue.say("No review for {name} this time.", name=name)


def not_reached(tongue: Tongue, *, name: str) -> str:
    """There is no open chat; the draft stays."""
    return tongue.say("{name} cannot be reached now. The draft stays on /roster.", name=name)


def look_first(tongue: Tongue, *, name: str) -> str:
    """Something came up after the draft was written."""
    return tongue.say(
        "Since this was drafted something of {name} waits for you: an alert, or work that is left "
        "out. Send the review all the same?",
        name=name,
    )


def anyway_label(tongue: Tongue) -> str:
    """Label the button that sends it in spite of that."""
    return label(tongue, "Send all the same")
