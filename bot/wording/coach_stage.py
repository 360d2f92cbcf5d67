"""Changing a stage: what the coach is asked and told, and what the athlete reads."""

from collections.abc import Mapping, Sequence

from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue

EXAMPLE: Template = "/stage Robin 2 holds long and even on both sides"
REASON_UNITS = 500  # [UTF-16 units] ch: a reason is a few sentences

ABOUT: Mapping[int, Template] = {
    1: "holds, hangs and carries with straight arms, for endurance",
    2: "longer and loaded holds with straight arms",
    3: "bent-arm work begins beside the straight-arm holds",
    4: "quicker repetitions and rounds come in",
    5: "heavy work, at most once a week in a direction",
}


def usage(tongue: Tongue) -> str:
    """The command was incomplete."""
    return tongue.say(
        "Send the name, the stage from 1 to 5, and why. For example:\n<code>{example}</code>",
        example=tongue.translated(EXAMPLE),
    )


def out_of_range(tongue: Tongue, stage: int) -> str:
    """There is no such stage."""
    return tongue.say(
        "There is no stage {stage}; stages go from 1 to 5. For example:\n<code>{example}</code>",
        stage=stage,
        example=tongue.translated(EXAMPLE),
    )


def same(tongue: Tongue, *, name: str, stage: int) -> str:
    """The athlete is in that stage already."""
    return tongue.say(
        "{name} is in stage {stage} already, so nothing was changed. "
        "For another stage, send for example:\n<code>{example}</code>",
        name=name,
        stage=stage,
        example=tongue.translated(EXAMPLE),
    )


def to_change(tongue: Tongue, *, name: str, old: int, new: int) -> str:
    """What is to be changed, before its reason is asked for."""
    return tongue.say("{name}: stage {old} → {new}", name=name, old=old, new=new)


def ask_once_more(
    tongue: Tongue, *, name: str, old: int, new: int, open_lines: Sequence[str]
) -> str:
    """Moving up against an open checklist: show what is not met, and ask."""
    head = tongue.say(
        "<b>{name}</b>, stage {old} → {new}: the checklist is not complete.",
        name=name,
        old=old,
        new=new,
    )
    lines = [head, *open_lines]
    if new - old > 1:
        lines.append(tongue.say("This also skips the stages between."))
    lines.append(tongue.say("Move up all the same?"))
    return "\n".join(lines)


def move_anyway_label(tongue: Tongue, stage: int) -> str:
    """Label the button that overrides the checklist."""
    return label(tongue, "Yes, stage {stage}", stage=stage)


def leave_label(tongue: Tongue) -> str:
    """Label the button that changes nothing."""
    return label(tongue, "No, leave it")


def left_alone(tongue: Tongue, *, name: str, stage: int) -> str:
    """Nothing was changed."""
    return tongue.say("{name} stays in stage {stage}.", name=name, stage=stage)


def changed(tongue: Tongue, *, name: str, old: int, new: int, why: str, is_told: bool) -> str:
    """The stage was changed."""
    told = (
        tongue.say("The coming sessions are planned anew, and {name} has been told.", name=name)
        if is_told
        else tongue.say("The coming sessions are planned anew. {name} has no open chat.", name=name)
    )
    return tongue.say(
        "<b>{name}</b>: stage {old} → {new}.\nWhy: {why}\n{told}",
        name=name,
        old=old,
        new=new,
        why=shortened(why, REASON_UNITS),
        told=Marked(told),
    )


def take_back_label(tongue: Tongue) -> str:
    """Label the button that takes a change back."""
    return label(tongue, "Take back")


def taken_back(tongue: Tongue, *, name: str, stage: int) -> str:
    """The change was taken back."""
    return tongue.say("Taken back: {name} is in stage {stage} as before.", name=name, stage=stage)


def changed_since(tongue: Tongue, *, name: str, stage: int) -> str:
    """It cannot be taken back any more, as something changed since."""
    return tongue.say(
        "{name} is in stage {stage} now, changed since. To change it, send for example:\n"
        "<code>{example}</code>",
        name=name,
        stage=stage,
        example=tongue.translated(EXAMPLE),
    )


def to_athlete(tongue: Tongue, *, coach: str, old: int, new: int) -> str:
    """Tell the athlete, in plain words."""
    head = tongue.say(
        "{coach} moved you from stage {old} to stage {new}: {about}.",
        coach=coach,
        old=old,
        new=new,
        about=tongue.say(ABOUT[new]),
    )
    tail = (
        tongue.say("It starts easy. Your next sessions are planned for it.")
        if new > old
        else tongue.say("Nothing is lost: your next sessions are planned for it.")
    )
    return f"{head}\n{tail}"


def taken_back_to_athlete(tongue: Tongue, *, coach: str, stage: int) -> str:
    """Tell the athlete that the stage is as it was."""
    return tongue.say(
        "{coach} took the last change back: you are in stage {stage} as before.",
        coach=coach,
        stage=stage,
    )
