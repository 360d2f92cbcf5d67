"""Help for coaches and owners: what can be sent, and what the bot is not."""

from collections.abc import Sequence

from bot.wording.emergency import call
from bot.wording.tongue import Template, Tongue


def help_text(
    tongue: Tongue, commands: Sequence[tuple[str, Template]], *, number: str | None = None
) -> str:
    """List the commands with what each does, then what everybody must know."""
    return "\n".join(
        [
            tongue.say("<b>What you can send</b>"),
            *(
                tongue.say("/{name} · {about}", name=name, about=tongue.say(about))
                for name, about in commands
            ),
            "",
            tongue.say("Names by a part are enough. For example:"),
            *(
                tongue.say("<code>{example}</code>", example=tongue.translated(example))
                for example in EXAMPLES
            ),
            "",
            tongue.say("Reply to any message about an athlete, and your words go to them."),
            tongue.say(
                "This is coaching support, not medical advice. The bot screens and passes on; "
                "it never says what something is, and neither should you. "
                "Local rules and licensed professionals come first."
            ),
            tongue.say(
                "The signs it listens for are our careful reading and must be checked by a "
                "clinician before use. In an emergency call {call}.",
                call=call(tongue, number),
            ),
        ]
    )


def owner_help(tongue: Tongue, commands: Sequence[tuple[str, Template]]) -> str:
    """List an owner's commands."""
    return "\n".join(
        [
            tongue.say("<b>What you can send</b>"),
            *(
                tongue.say("/{name} · {about}", name=name, about=tongue.say(about))
                for name, about in commands
            ),
            tongue.say("Personal links for coaches are made on the machine that runs the bot."),
        ]
    )


EXAMPLES: tuple[Template, ...] = (
    "/who robin",
    "/stage robin 2 holds long and even",
    "/clear robin two good weeks, no pain in daily use",
    "/tell robin Nice even holds this week.",
)


def nothing_for_owner(tongue: Tongue) -> str:
    """A text from an owner who coaches nobody."""
    return tongue.say("I pass nothing on from here. /house shows how things stand.")
