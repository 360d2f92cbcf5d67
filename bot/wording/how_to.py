"""How a movement is done, with its usual fault; and a coach's own media for it."""

from collections.abc import Sequence

from bot.wording.labels import label
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.values import Movement

EXAMPLE = "/howto wall reach hold"


def how_to(tongue: Tongue, movement: Movement) -> str:
    """Write how it is done, in two sentences, and its usual fault."""
    return tongue.say(
        "<b>{name}</b>\n{how}\n<i>Usual fault: {fault}</i>",
        name=tongue.say(movement.name),
        how=tongue.say(movement.how_to),
        fault=tongue.say(movement.common_fault),
    )


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
        example=EXAMPLE,
    )


def nothing_named(tongue: Tongue, *, asked: str) -> str:
    """No movement has such a name."""
    return tongue.say(
        "I know no movement “{asked}”. Send it like this:\n<code>{example}</code>",
        asked=asked,
        example=EXAMPLE,
    )


def which(tongue: Tongue, *, asked: str) -> str:
    """Several movements have such a name."""
    return tongue.say("Which movement is “{asked}”?", asked=asked)


def movement_label(tongue: Tongue, name: str) -> str:
    """Label the button of one movement."""
    return label(tongue, "{name}", name=name)


def remove_label(tongue: Tongue) -> str:
    """Label the button that takes the coach's medium away."""
    return label(tongue, "Take it away")


def not_such_a_kind(tongue: Tongue) -> str:
    """A voice note, a file, a sticker."""
    return tongue.say(
        "For a how-to I can keep a picture or a clip, sent as such and not as a file."
    )


def forwarded(tongue: Tongue) -> str:
    """A forwarded picture or clip is not the coach's own word."""
    return tongue.say("I do not take forwarded messages. Please send the picture or clip yourself.")
