"""What goes from the coach to an athlete without being text."""

from bot.wording.tongue import Tongue


def from_coach(tongue: Tongue, *, coach: str, what: str) -> str:
    """Announce what follows, with the coach's name."""
    return tongue.say("<b>{coach}</b> sends you {what}:", coach=coach, what=what)


def sent(tongue: Tongue, *, name: str, what: str, answered: int) -> str:
    """Confirm that it went to the athlete."""
    head = tongue.say("To {name}: {what}.", name=name, what=what)
    if not answered:
        return head
    more = tongue.count(
        answered, "1 waiting message is answered with it.", "{n} waiting messages are answered."
    )
    return f"{head}\n{more}"


def not_reached(tongue: Tongue, *, name: str) -> str:
    """There is no open chat."""
    return tongue.say(
        "{name} cannot be reached: the link was not opened, or the chat is blocked. "
        "Nothing was sent.",
        name=name,
    )


def no_addressee(tongue: Tongue) -> str:
    """Something that is not text, and nobody it is for."""
    return tongue.say(
        "Whom is this for? Send it as a reply to a message about the athlete, such as the one "
        "that /who shows."
    )
