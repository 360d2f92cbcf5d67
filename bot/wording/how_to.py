"""How a movement is done: two sentences, the usual fault, and a coach's own media for it."""

from collections.abc import Sequence

from bot.wording import labels, movement_names
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.catalogue.values import Movement

EXAMPLE: Template = "/howto wall reach hold"


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


def no_longer_there(tongue: Tongue) -> str:
    """A button of a movement that the library no longer has."""
    return tongue.say("That movement is no longer in use. Ask your coach if you are unsure.")


# for the coach


def kept(tongue: Tongue, *, name: str, is_new: bool) -> str:
    """The coach's own medium is kept."""
    if is_new:
        return tongue.say("Your athletes see this now with the how-to of {name}.", name=name)
    return tongue.say(
        "Your athletes see this now with the how-to of {name}, in place of the one before.",
        name=name,
    )


def removed(tongue: Tongue, *, name: str) -> str:
    """It is taken away."""
    return tongue.say("Taken away. The how-to of {name} is text again.", name=name)


def nothing_kept_for(tongue: Tongue, *, name: str) -> str:
    """There is nothing to take away."""
    return tongue.say("There is no picture or clip of yours for {name}.", name=name)


def listed(tongue: Tongue, names: Sequence[str]) -> str:
    """Write for which movements the coach keeps a medium, and how to send one."""
    if not names:
        return tongue.say(
            "You keep no picture or clip of your own yet. {usage}", usage=Marked(usage(tongue))
        )
    lines = "\n".join(tongue.say("· {name}", name=name) for name in names)
    return tongue.say(
        "<b>Your own pictures and clips</b>\n{lines}\n{usage}",
        lines=Marked(lines),
        usage=Marked(usage(tongue)),
    )


def usage(tongue: Tongue) -> str:
    """How to send, see and take away one."""
    return tongue.say(
        "Send a picture or clip with <code>{example}</code> as its caption, or answer it with "
        "that line. The same line alone shows what your athletes see.",
        example=tongue.translated(EXAMPLE),
    )


def nothing_named(tongue: Tongue, *, asked: str) -> str:
    """No movement has such a name."""
    return tongue.say(
        "I know no movement “{asked}”. Send it like this:\n<code>{example}</code>",
        asked=asked,
        example=tongue.translated(EXAMPLE),
    )


def which_of(tongue: Tongue, *, asked: str) -> str:
    """Several movements have such a name."""
    return tongue.say("Which movement is “{asked}”?", asked=asked)


def remove_label(tongue: Tongue) -> str:
    """Label the button that takes the coach's medium away."""
    return labels.label(tongue, "Take it away")


def not_such_a_kind(tongue: Tongue) -> str:
    """A voice note, a file, a sticker."""
    return tongue.say(
        "For a how-to I can keep a picture or a clip, sent as such and not as a file."
    )


def forwarded(tongue: Tongue) -> str:
    """A forwarded picture or clip is not the coach's own word."""
    return tongue.say("I do not take forwarded messages. Please send the picture or clip yourself.")
