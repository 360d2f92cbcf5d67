"""How a movement is done: two sentences, and the fault that is often seen."""

from bot.wording import labels, movement_names
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Movement


def label(tongue: Tongue) -> str:
    """Label the button on a session."""
    return labels.label(tongue, "How to")


def which(tongue: Tongue) -> str:
    """Ask which movement is to be explained."""
    return tongue.say("How to do which one?")


def how_to(tongue: Tongue, movement: Movement) -> str:
    """Explain one movement."""
    return tongue.say(
        "<b>{name}</b>\n{how}\nOften seen: {fault}",
        name=movement_names.name_of(tongue, movement),
        how=movement_names.how_to(tongue, movement),
        fault=movement_names.common_fault(tongue, movement),
    )


def name_label(tongue: Tongue, movement: Movement) -> str:
    """Label the button of one movement."""
    return labels.label(tongue, "{name}", name=movement_names.name_of(tongue, movement))


def unknown(tongue: Tongue) -> str:
    """No movement has that name."""
    return tongue.say(
        "I know no movement of that name. Tap one, or send a part of its name, like "
        "<code>/how hang</code>."
    )


def nothing_yet(tongue: Tongue) -> str:
    """Nothing was sent so far."""
    return tongue.say("No session has come yet. Send a name, like <code>/how bar hang</code>.")
