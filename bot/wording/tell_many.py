"""One text to a whole group or to everybody: asked with the count, then who got it."""

from collections.abc import Sequence

from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue

EXAMPLE_ALL: Template = "/tell all No training hall on Friday."
QUOTE_UNITS = 600  # [UTF-16 units] ch: it is read once more before it goes to many
NAMES_UNITS = 1200  # [UTF-16 units] ch: a team of sixty by first and last name


def ask(
    tongue: Tongue, *, group: str, text: str, names: Sequence[str], unreached: Sequence[str]
) -> str:
    """Show what would go to how many, and to whom it cannot go."""
    count = tongue.count(len(names), "1 athlete", "{n} athletes")
    head = (
        tongue.say("To {group}, {count}:", group=group, count=count)
        if group
        else tongue.say("To everybody, {count}:", count=count)
    )
    lines = [
        head,
        tongue.say("“{words}”", words=shortened(text, QUOTE_UNITS)),
        tongue.say("<i>{names}</i>", names=shortened(", ".join(names), NAMES_UNITS)),
    ]
    if unreached:
        lines.append(_unreached(tongue, unreached))
    return "\n".join(lines)


def send_label(tongue: Tongue, count: int) -> str:
    """Label the button that sends it."""
    if count == 1:
        return label(tongue, "Send to 1")
    return label(tongue, "Send to {n}", n=count)


def not_now_label(tongue: Tongue) -> str:
    """Label the button that sends nothing."""
    return label(tongue, "Not now")


def not_sent(tongue: Tongue) -> str:
    """Nothing goes out."""
    return tongue.say("All right, nothing is sent.")


def sent(tongue: Tongue, *, text: str, count: int, unreached: Sequence[str]) -> str:
    """Confirm to how many it went, and name who could not be reached."""
    to = tongue.count(count, "Sent to 1 athlete", "Sent to {n} athletes")
    head = tongue.say("{to}: “{words}”", to=Marked(to), words=shortened(text, 80))
    return "\n".join([head, _unreached(tongue, unreached)]) if unreached else head


def _unreached(tongue: Tongue, names: Sequence[str]) -> str:
    return tongue.say(
        "Cannot be reached: {names}. The link was not opened, or the chat is blocked.",
        names=shortened(", ".join(names), NAMES_UNITS),
    )


def nobody(tongue: Tongue) -> str:
    """Nobody of those can be reached."""
    return tongue.say("Nobody of them can be reached now, so there is nothing to send.")


def sent_before(tongue: Tongue) -> str:
    """The button was tapped a second time."""
    return tongue.say("That went out before. Nothing was sent twice.")


def text_missing(tongue: Tongue) -> str:
    """The command came without its text."""
    return tongue.say(
        "The text is missing. Send it like this:\n<code>{example}</code>",
        example=tongue.translated(EXAMPLE_ALL),
    )
