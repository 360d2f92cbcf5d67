"""Finding an athlete by a part of the name: nobody, or more than one."""

from collections.abc import Sequence

from bot.wording.labels import label
from bot.wording.tongue import Marked, Tongue


def nobody(tongue: Tongue, *, asked: str, near: Sequence[str]) -> str:
    """No athlete of this coach has such a name."""
    head = tongue.say("No athlete of yours is called “{asked}”.", asked=asked)
    if not near:
        return "\n".join([head, tongue.say("/roster shows everybody.")])
    names = Marked(", ".join(tongue.say("<b>{name}</b>", name=name) for name in near))
    return "\n".join([head, tongue.say("Close to it: {names}.", names=names)])


def which(tongue: Tongue, *, asked: str, count: int) -> str:
    """Several athletes match."""
    return tongue.say("{count} athletes match “{asked}”. Which one?", count=count, asked=asked)


def name_missing(tongue: Tongue, *, example: str) -> str:
    """The command came without a name."""
    return tongue.say(
        "Whom is it about? Send it like this:\n<code>{example}</code>",
        example=tongue.translated(example),
    )


def choice(tongue: Tongue, *, name: str, stage: int) -> str:
    """Label the button of one athlete among several."""
    return label(tongue, "{name} · stage {stage}", name=name, stage=stage)


def not_yours(tongue: Tongue) -> str:
    """A button about somebody who is no longer this coach's athlete."""
    return tongue.say("This athlete is not yours any more, so nothing was changed.")
