"""Inviting an athlete: the personal link and how to hand it on."""

from datetime import date

from bot.wording import dates
from bot.wording.labels import label
from bot.wording.tongue import Template, Tongue

EXAMPLE: Template = "/invite Robin Field"


def usage(tongue: Tongue) -> str:
    """The command came without a name, or with too long a one."""
    return tongue.say(
        "Send the name that you want to see on your roster:\n<code>{example}</code>",
        example=tongue.translated(EXAMPLE),
    )


def link(tongue: Tongue, *, name: str, url: str, until: date) -> str:
    """Hand out the personal link."""
    return tongue.say(
        "The personal link of <b>{name}</b>:\n{url}\n"
        "It works once, until {until}. Send it to nobody else.",
        name=name,
        url=url,
        until=dates.day(tongue, until),
    )


def same_name(tongue: Tongue, *, name: str) -> str:
    """There is an athlete of that name: a new phone, or somebody else?"""
    return tongue.say(
        "You have an athlete called {name}. A new link for the same person keeps the history.",
        name=name,
    )


def same_label(tongue: Tongue) -> str:
    """Label the button for the same person."""
    return label(tongue, "Same person, new link")


def other_label(tongue: Tongue) -> str:
    """Label the button for somebody else."""
    return label(tongue, "Somebody else")
