"""The help text of an athlete."""

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from bot.wording.emergency import call
from bot.wording.tongue import Template, Tongue

NOTHING_ELSE: Mapping[str, str] = MappingProxyType({})


def athlete(
    tongue: Tongue,
    *,
    coach: str,
    number: str | None,
    commands: Sequence[tuple[str, Template]] = (),
    also: Mapping[str, str] = NOTHING_ELSE,
) -> str:
    """What I understand, what this is not, and how to reach help."""
    return "\n\n".join(
        [
            _results(tongue, coach=coach),
            *([_commands(tongue, commands, also)] if commands else []),
            _limits(tongue, coach=coach),
            _emergency(tongue, number=number),
        ]
    )


def _results(tongue: Tongue, *, coach: str) -> str:
    return tongue.say(
        "<b>How to answer a session</b>\n"
        "Tap the buttons below it, or write what you did, in any order:\n"
        "<code>hang 45 40 38</code> · <code>press 3x8 @ 10</code> · <code>row L 10 R 9</code>\n"
        "I repeat what I understood. If a number is wrong, write <code>sorry, 38 not 48</code>, "
        "or change your message.\n"
        "Not today? Write <code>ill</code> or <code>no time today</code>. "
        "Other training? Write <code>swam 40 min, effort 6</code>.\n"
        "Does something hurt? Write where and how much: <code>left wrist 4/10</code>.\n"
        "Whatever else you write goes to {coach}.",
        coach=coach,
    )


def _commands(
    tongue: Tongue, commands: Sequence[tuple[str, Template]], also: Mapping[str, str]
) -> str:
    """List the commands of the menu, each with its other name where it has one."""
    return "\n".join(_command(tongue, name, about, also.get(name)) for name, about in commands)


def _command(tongue: Tongue, name: str, about: Template, also: str | None) -> str:
    what = tongue.say(about)
    if also is None:
        return tongue.say("/{name} {about}", name=name, about=what)
    return tongue.say("/{name} or /{also}: {about}", name=name, also=also, about=what)


def _limits(tongue: Tongue, *, coach: str) -> str:
    return tongue.say(
        "<b>What this is not</b>\n"
        "This is coaching support, not medical advice. It cannot examine you, and {coach} does "
        "not diagnose. Local rules and licensed professionals come first.\n"
        "The pain levels come from studies of leg tendons. For shoulders, elbows and wrists "
        "they are carried over with care. The warning signs are our own reading of published "
        "sources. A clinician must check both before use.",
        coach=coach,
    )


def _emergency(tongue: Tongue, *, number: str | None) -> str:
    return tongue.say(
        "<b>In an emergency</b>\nCall {call}. Nobody may be watching this chat.",
        call=call(tongue, number),
    )
