"""What goes from the coach to an athlete, and what the coach hears of it."""

from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.tongue import Template, Tongue

TELL_EXAMPLE: Template = "/tell Robin Nice even holds this week."
NOTE_EXAMPLE: Template = "/note Robin prefers mornings, new job"
QUOTE_UNITS = 80  # [UTF-16 units] ch: enough to recognise what was sent


def from_coach(tongue: Tongue, *, coach: str, text: str) -> str:
    """The coach's own words, with the coach's name."""
    return tongue.say("<b>{coach}</b>:\n{text}", coach=coach, text=text)


def sent(tongue: Tongue, *, name: str, text: str, answered: int) -> str:
    """Confirm that it went to the athlete."""
    head = tongue.say("To {name}: “{text}”", name=name, text=shortened(text, QUOTE_UNITS))
    if not answered:
        return head
    more = tongue.count(
        answered, "1 waiting message is answered with it.", "{n} waiting messages are answered."
    )
    return f"{head}\n{more}"


def not_joined(tongue: Tongue, *, name: str) -> str:
    """There is no chat to write to."""
    return tongue.say(
        "{name} has not opened the link yet, so nothing was sent. "
        "A new link: <code>/invite {name}</code>",
        name=name,
    )


def blocked(tongue: Tongue, *, name: str) -> str:
    """The chat is blocked."""
    return tongue.say(
        "{name} has blocked or closed the chat, so nothing was sent. Please ask another way.",
        name=name,
    )


def text_missing(tongue: Tongue, *, example: str) -> str:
    """The command came without its text."""
    return tongue.say(
        "The text is missing. Send it like this:\n<code>{example}</code>",
        example=tongue.translated(example),
    )


def write_now(tongue: Tongue, *, name: str) -> str:
    """Ask for the text that goes to the athlete."""
    return tongue.say("Write now: your next text goes to {name}.", name=name)


def never_mind_label(tongue: Tongue) -> str:
    """Label the button that ends the question."""
    return label(tongue, "Not now")


def never_mind(tongue: Tongue) -> str:
    """The question is closed."""
    return tongue.say("All right, nothing is sent.")


def still_for(tongue: Tongue, *, name: str, text: str) -> str:
    """A text came long after it was asked for: better to ask than to misdirect."""
    return tongue.say("Is this for {name}?\n“{text}”", name=name, text=shortened(text, QUOTE_UNITS))


def yes_send_label(tongue: Tongue, *, name: str) -> str:
    """Label the button that sends it."""
    return label(tongue, "Yes, to {name}", name=name)


def no_addressee(tongue: Tongue) -> str:
    """A text that is for nobody."""
    return tongue.say(
        "Whom is this for? Reply to a message about the athlete, or send it like this:\n"
        "<code>{example}</code>",
        example=tongue.translated(TELL_EXAMPLE),
    )


def edits_do_not_reach(tongue: Tongue) -> str:
    """A message was changed after it was sent."""
    return tongue.say("Changing a message here does not change what was sent. Send it once more.")


def forwarded(tongue: Tongue) -> str:
    """A forwarded text is not the coach's own word."""
    return tongue.say("I do not take forwarded messages. Please write it yourself.")


def note_kept(tongue: Tongue, *, name: str) -> str:
    """The note is kept."""
    return tongue.say("Noted about {name}. Only you see it, under /audit.", name=name)
