"""Swapping a movement of today's session."""

from collections.abc import Mapping

from bot.wording import doses
from bot.wording.labels import label
from bot.wording.movement_names import how_to, name_of
from bot.wording.session import ItemFacts
from bot.wording.tongue import Marked, Template, Tongue


def which(tongue: Tongue) -> str:
    """Ask which one."""
    return tongue.say("Which one shall I swap?")


def nothing_left(tongue: Tongue) -> str:
    """Everything has an answer."""
    return tongue.say("Every movement of this session has an answer already.")


NO_EQUIPMENT, NOT_RIGHT, HURTS, PREFER = "no_equipment", "not_right", "hurts", "prefer"
REASONS: Mapping[str, Template] = {
    NO_EQUIPMENT: "No equipment for it",
    NOT_RIGHT: "Does not feel right",
    HURTS: "It hurts",
    PREFER: "I prefer another",
}
FOR_THE_COACH = frozenset({NO_EQUIPMENT, NOT_RIGHT})
"""What the coach hears at once; a mere wish stands in the record."""


def why(tongue: Tongue, name: str) -> str:
    """Ask for the reason of a swap."""
    return tongue.say("{name}: why another?", name=name)


def reason_label(tongue: Tongue, reason: str) -> str:
    """Write a reason short enough for a button."""
    return label(tongue, REASONS[reason])


def noted(tongue: Tongue, name: str, reason: str) -> str:
    """Turn the question into its answer."""
    return tongue.say("{name}: {reason}", name=name, reason=reason)


def swapped_to_coach(tongue: Tongue, *, name: str, was: str, now: str, why: str) -> str:
    """Tell the coach what an athlete swapped for today, and why."""
    return tongue.say(
        "<b>{name}</b> swapped {was} for {now} today. Reason: {why}.",
        name=name,
        was=was,
        now=now,
        why=tongue.say(REASONS[why]),
    )


def no_other_to_coach(tongue: Tongue, *, name: str, was: str, why: str) -> str:
    """Tell the coach that nothing of the same kind could stand in."""
    return tongue.say(
        "<b>{name}</b> found no other for {was} today. Reason: {why}.",
        name=name,
        was=was,
        why=tongue.say(REASONS[why]),
    )


def leave_out_label(tongue: Tongue) -> str:
    """Label the button that leaves an item out for today."""
    return label(tongue, "Leave it out today")


def for_what(tongue: Tongue, name: str) -> str:
    """Offer what may stand in."""
    return tongue.say("Instead of {name}, for today:", name=name)


def no_other(tongue: Tongue, name: str) -> str:
    """Nothing may stand in."""
    return tongue.say(
        "I have nothing of the same kind for {name} with what you own. "
        "Leaving it out today is fine.",
        name=name,
    )


def too_late(tongue: Tongue, name: str) -> str:
    """What was offered may not be done any more, or the movement has its answer."""
    return tongue.say("{name} does not fit any more, so nothing is swapped.", name=name)


def swapped(tongue: Tongue, item: ItemFacts) -> str:
    """Say what it is now, and how to do it."""
    return tongue.say(
        "{n}. is now <b>{name}</b>: {dose}, {wish}.\n{how}",
        n=item.number,
        name=name_of(tongue, item.movement),
        dose=Marked(doses.dose_line(tongue, item.dose, item.movement, arms=item.arms)),
        wish=doses.reserve_wish(tongue, item.dose),
        how=how_to(tongue, item.movement),
    )
