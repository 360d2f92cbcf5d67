"""Who stands in for a coach."""

from collections.abc import Sequence

from bot.wording.tongue import Template, Tongue

EXAMPLE: Template = "/standin COACH NAME"


def how(tongue: Tongue, coaches: Sequence[str]) -> str:
    """Say what the command does and who there is."""
    return tongue.say(
        "<code>{example}</code>: NAME is told of COACH's alerts that nobody has answered, and may "
        "see and clear COACH's athletes. <code>/standin COACH nobody</code> ends it. "
        "Coaches: {names}.",
        example=tongue.translated(EXAMPLE),
        names=", ".join(coaches),
    )


def not_clear(tongue: Tongue, coaches: Sequence[str]) -> str:
    """Neither or several pairs of names fit."""
    return tongue.say(
        "I need two coaches by name, like <code>{example}</code>. Coaches: {names}. "
        "Nothing is changed.",
        example=tongue.translated(EXAMPLE),
        names=", ".join(coaches),
    )


def not_oneself(tongue: Tongue, coach: str) -> str:
    """Nobody stands in for themselves."""
    return tongue.say("{coach} cannot stand in for {coach}. Nothing is changed.", coach=coach)


def named(tongue: Tongue, coach: str, other: str) -> str:
    """Play back what holds now."""
    if not other:
        return tongue.say("Nobody stands in for {coach} now.", coach=coach)
    return tongue.say("{other} stands in for {coach} now. Both are told.", other=other, coach=coach)


def told_coach(tongue: Tongue, other: str) -> str:
    """Tell the coach."""
    if not other:
        return tongue.say("Nobody stands in for you now.")
    return tongue.say(
        "{other} stands in for you now: told of alerts that you have not answered, "
        "and able to see and clear your athletes.",
        other=other,
    )


def told_stand_in(tongue: Tongue, coach: str) -> str:
    """Tell whoever stands in."""
    return tongue.say(
        "You stand in for {coach} now: you are told of alerts that {coach} has not answered. "
        "“Seen” under an alert says that you take it.",
        coach=coach,
    )
