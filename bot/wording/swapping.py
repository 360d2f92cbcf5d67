"""Swapping a movement of today's session."""

from bot.wording import doses
from bot.wording.movement_names import how_to, name_of
from bot.wording.session import ItemFacts
from bot.wording.tongue import Marked, Tongue


def which(tongue: Tongue) -> str:
    """Ask which one."""
    return tongue.say("Which one shall I swap?")


def nothing_left(tongue: Tongue) -> str:
    """Everything has an answer."""
    return tongue.say("Every movement of this session has an answer already.")


def for_what(tongue: Tongue, name: str) -> str:
    """Offer what may stand in."""
    return tongue.say("Instead of {name}, for today:", name=name)


def no_other(tongue: Tongue, name: str) -> str:
    """Nothing may stand in."""
    return tongue.say(
        "I have nothing of the same kind for {name} with what you own. "
        "Leave it out today, and your coach sees it.",
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
