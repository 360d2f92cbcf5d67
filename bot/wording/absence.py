"""Days off and breaks."""

from collections.abc import Mapping
from datetime import date

from bot.reading.values import CantReason
from bot.wording import dates
from bot.wording.dates import weekday
from bot.wording.labels import label
from bot.wording.tongue import Template, Tongue

LABELS: Mapping[CantReason, Template] = {
    CantReason.ILL: "Ill",
    CantReason.TRAVELLING: "Travelling",
    CantReason.NO_TIME: "No time",
    CantReason.NO_EQUIPMENT: "No equipment",
    CantReason.HURTS: "Something hurts",
}


BREAKS: Mapping[str, Template] = {
    "well": "Well, without training",
    "trained": "Well, trained a bit",
    "ill": "I was ill",
}


def why_not(tongue: Tongue) -> str:
    """Ask for the reason."""
    return tongue.say("No problem. What is it today?")


def reason_label(tongue: Tongue, reason: CantReason) -> str:
    """Write a reason short enough for a button."""
    return tongue.say(LABELS[reason])


def called_off(tongue: Tongue, reason: CantReason | None, *, next_on: date | None) -> str:
    """Say that the session is off, and what comes next."""
    lines = [tongue.say("Called off. Nothing piles up.")]
    if reason is CantReason.ILL:
        lines.append(
            tongue.say(
                "With fever, no training until you have been clear of it for two days. "
                "If it gets worse or worries you, see a doctor."
            )
        )
    if reason is CantReason.TRAVELLING:
        lines.append(tongue.say("For a longer trip, a break stops the messages."))
    if next_on is not None:
        lines.append(tongue.say("Next session: {weekday}.", weekday=weekday(tongue, next_on)))
    return "\n".join(lines)


def stays_missed(tongue: Tongue) -> str:
    """The day that was meant is over, and its session is missed already."""
    return tongue.say(
        "Noted: that session was missed. It is not added to the others, and the next one comes "
        "as planned."
    )


def nothing_planned(tongue: Tongue) -> str:
    """There was nothing to call off."""
    return tongue.say("Nothing is planned for that day, so nothing needs to be called off.")


def how_to_pause(tongue: Tongue) -> str:
    """Say what to send for a break."""
    return tongue.say(
        "Tap how long, or write it: <code>/pause 10 days</code>, <code>/pause 2 weeks</code> or "
        "<code>/pause until 12 March</code>. The longest is 26 weeks."
    )


def paused(tongue: Tongue, until: date) -> str:
    """Confirm a break."""
    return tongue.say(
        "A break until {day}. That day training goes on. No sessions, no reminders until then. "
        "I still read what you write, and pass on what hurts. /pause off ends it sooner.",
        day=dates.day(tongue, until),
    )


def no_break_now(tongue: Tongue) -> str:
    """Somebody who is not training yet, or waits for the coach, has nothing to pause."""
    return tongue.say("No sessions come at the moment, so there is nothing to pause.")


def noted(tongue: Tongue) -> str:
    """The button of a length was tapped."""
    return tongue.say("Noted.")


def weeks_label(tongue: Tongue, days: int) -> str:
    """Label the button of a break of some weeks."""
    return tongue.count(days // 7, "{n} week off", "{n} weeks off")


def end_label(tongue: Tongue) -> str:
    """Label the button that ends a break."""
    return label(tongue, "End the break")


def not_paused(tongue: Tongue) -> str:
    """There is no break to end."""
    return tongue.say("You have no break running. /pause 1 week would begin one.")


def pause_over(tongue: Tongue) -> str:
    """The break is over."""
    return tongue.say(
        "Welcome back. The first sessions are gentler where the break was long. How was it?"
    )


def break_label(tongue: Tongue, how: str) -> str:
    """Label one answer to how a break was."""
    return tongue.say(BREAKS[how])


def break_noted(tongue: Tongue, how: str) -> str:
    """Say what the answer means for the return."""
    if how == "ill":
        return tongue.say(
            "Noted: you were ill. It begins gently. With fever, no training until you have been "
            "clear of it for two days."
        )
    return tongue.say("Noted: {how}.", how=tongue.say(BREAKS[how]).lower())
