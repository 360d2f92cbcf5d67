"""Whom to call in an emergency: the confirmed number where one is known, else in words."""

from bot.wording.tongue import Tongue


def call(tongue: Tongue, number: str | None) -> str:
    """Name the number that the coach confirmed for where somebody lives, or say it in words."""
    return number or tongue.say("your local emergency number")


def call_before_the_zone(tongue: Tongue, number: str | None) -> str:
    """Name the number where it is not known yet that somebody lives where it holds."""
    if number is None:
        return call(tongue, number)
    return tongue.say("{number}, or the local number where it does not hold", number=number)
