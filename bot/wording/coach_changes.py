"""A coach's change on its way: why, what stands against it, done, taken back."""

from collections.abc import Mapping, Sequence

from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.plan_entries import entry
from bot.wording.reasons import say_reason
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.reasons import Reason
from scheduler.training.coach_plan import PlanEntry

REASON_UNITS = 500  # [UTF-16 units] ch: a reason is a few sentences
AGAINST_MOST = 8  # [lines] ch: more is no longer read before a tap

WHYS: Mapping[str, Template] = {
    "goal": "Fits the goal better",
    "technique": "Technique first",
    "equipment": "Equipment or room",
    "time": "Time",
    "variety": "A change is due",
    "safe": "To be on the safe side",
    "hurts": "It hurts when trained",
    "seen": "A clinician asked for it",
    "ill": "Ill",
    "travelling": "Travelling",
    "holiday": "Holiday",
    "load": "Enough load elsewhere",
    "back": "Back again",
}


def ask_why(tongue: Tongue, *, what: str) -> str:
    """Ask for the reason, which is kept with every decision."""
    return tongue.say("{what}.\nWhy? Tap, or write it in a few words.", what=Marked(what))


def ask_in_words(tongue: Tongue, *, what: str) -> str:
    """Ask for a reason that no button gives."""
    return tongue.say(
        "{what}.\nWhy? Write it in a few words: your next text is kept with it.",
        what=Marked(what),
    )


def why_label(tongue: Tongue, key: str) -> str:
    """Label the button of a usual reason."""
    return label(tongue, WHYS[key])


def lines_of(tongue: Tongue, entries: Sequence[PlanEntry]) -> str:
    """Write entries in one line."""
    return "; ".join(entry(tongue, one) for one in entries)


def removed(tongue: Tongue, entries: Sequence[PlanEntry]) -> str:
    """Write that entries stand no more."""
    return tongue.say("No longer: {what}", what=Marked(lines_of(tongue, entries)))


def against(tongue: Tongue, *, name: str, what: str, reasons: Sequence[Reason]) -> str:
    """Say what a change breaks, before it is accepted."""
    said = list(dict.fromkeys(say_reason(tongue, one) for one in reasons))[:AGAINST_MOST]
    lines = [tongue.say("· {line}", line=Marked(line)) for line in said]
    head = tongue.say("<b>{name}</b>: {what}.", name=name, what=Marked(what))
    told = tongue.say("Against the rules of the week or the stage:")
    return "\n".join([head, told, *lines, tongue.say("Do it all the same?")])


def anyway_label(tongue: Tongue) -> str:
    """Label the button that overrides the rules."""
    return label(tongue, "Yes, all the same")


def leave_label(tongue: Tongue) -> str:
    """Label the button that changes nothing."""
    return label(tongue, "No, leave it")


def left_alone(tongue: Tongue, *, name: str) -> str:
    """Nothing was changed."""
    return tongue.say("The plan of {name} stays as it was.", name=name)


def stands_already(tongue: Tongue, *, name: str) -> str:
    """The plan says this already, so nobody is told anything."""
    return tongue.say("<b>{name}</b>: the plan says that already. Nothing changed.", name=name)


def refused(tongue: Tongue, *, name: str, what: str, reason: Reason) -> str:
    """The change cannot be made at all."""
    return tongue.say(
        "<b>{name}</b>: {what}. That cannot be done.\n{why}\n{hint}",
        name=name,
        what=Marked(what),
        why=Marked(say_reason(tongue, reason)),
        hint=Marked(_hint(tongue, reason)),
    )


HINTS: Mapping[str, Template] = {
    "week.rested_loaded": "What is rested for pain comes back by /clear only.",
    "week.banned": "A ban of yours ends in /plan; an old injury is given back by /giveback.",
    "week.stage_forbids": "What an old injury or a clearing holds is given back by /giveback.",
    "week.not_owned": "/plan shows what fits instead.",
    "week.inverted": "/plan shows what fits instead.",
    "": "Send another one, or look at /plan.",
    "dose.coach_not_owned": "Doses use the weights and bands that are at hand.",
}


def _hint(tongue: Tongue, reason: Reason) -> str:
    return tongue.say(HINTS.get(reason.code, HINTS[""]))


def done(tongue: Tongue, *, name: str, what: str, why: str, is_told: bool) -> str:
    """The change was made."""
    told = (
        tongue.say("The coming sessions are planned anew, and {name} has been told.", name=name)
        if is_told
        else tongue.say("The coming sessions are planned anew. {name} has no open chat.", name=name)
    )
    return tongue.say(
        "<b>{name}</b>: {what}.\nWhy: {why}\n{told}",
        name=name,
        what=Marked(what),
        why=shortened(why, REASON_UNITS),
        told=Marked(told),
    )


def today_too(tongue: Tongue, line: str) -> str:
    """Say that the session that is out has changed as well."""
    return tongue.say("In today's session: {line}", line=Marked(line))


def take_back_label(tongue: Tongue) -> str:
    """Label the button that takes a change back."""
    return label(tongue, "Take back")


def every_time_label(tongue: Tongue) -> str:
    """Label the button that makes a swap stand."""
    return label(tongue, "Every time from now on")


def taken_back(tongue: Tongue, *, name: str, what: str) -> str:
    """The change was taken back."""
    return tongue.say("Taken back for {name}: {what}.", name=name, what=Marked(what))


def too_late(tongue: Tongue, *, name: str, what: str) -> str:
    """The change cannot be taken back any more."""
    return tongue.say(
        "{what} cannot be taken back for {name} any more: "
        "the day is over, it has been done, or it was changed since. /plan shows how it stands.",
        what=Marked(what),
        name=name,
    )


def changed_since(tongue: Tongue, *, name: str) -> str:
    """What the button was about is no longer so."""
    return tongue.say(
        "The plan of {name} has changed since, so nothing was done. /plan shows how it stands.",
        name=name,
    )
