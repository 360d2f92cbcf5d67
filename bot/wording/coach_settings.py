"""What a coach decides of one athlete beside the stage: old injuries, standards, upkeep."""

from collections.abc import Mapping, Sequence

from bot.wording.labels import label
from bot.wording.reason_figures import word
from bot.wording.tongue import Template, Tongue

EXAMPLE_OF_GIVING_BACK: Template = "/giveback robin seen by the physio, full range, no pain"
SHOWN_EXAMPLE: Template = "/shown robin clip of Tuesday, even and quiet"
UPKEEP_EXAMPLE: Template = "/upkeep robin on trains dips at the club"
OTHER_WORDS: Mapping[str, Template] = {"hangs": "still hangs", "all": "all of it"}


def _what(tongue: Tongue, key: str) -> str:
    return tongue.say(OTHER_WORDS[key]) if key in OTHER_WORDS else word(tongue, key)


def to_give_back(tongue: Tongue, *, name: str) -> str:
    """What is to be given back, before the reason is asked for."""
    return tongue.say("{name}: what an old injury holds back", name=name)


def to_decide(tongue: Tongue, *, name: str) -> str:
    """What is to be decided, before the reason is asked for."""
    return tongue.say("{name}: a standard, shown or not", name=name)


def nothing_held(tongue: Tongue, *, name: str) -> str:
    """Nothing is held back after an old injury."""
    return tongue.say("Nothing of {name} is held back after an old injury.", name=name)


def held(tongue: Tongue, keys: Sequence[str]) -> str:
    """Say what keeps to the first stage's work after an old injury."""
    return tongue.say(
        "Held at the work of stage 1 after an old injury: {what}. /giveback gives it back.",
        what=", ".join(_what(tongue, key) for key in keys),
    )


def which_to_lift(tongue: Tongue, *, name: str) -> str:
    """Ask what to give back."""
    return tongue.say(
        "What may {name} train again at the stage held? "
        "Where a clinician has said what is safe, keep to that.",
        name=name,
    )


def lift_label(tongue: Tongue, key: str) -> str:
    """Label the button of one direction."""
    return label(tongue, "{what}", what=_what(tongue, key).capitalize())


def lifted(tongue: Tongue, *, name: str, what: str) -> str:
    """Confirm what was given back."""
    return tongue.say(
        "Given back to {name}: {what}. The coming weeks are planned anew.",
        name=name,
        what=_what(tongue, what),
    )


def lifted_to_athlete(tongue: Tongue, *, coach: str, what: str) -> str:
    """Tell the athlete."""
    return tongue.say(
        "{coach} has looked: {what} goes on as at your stage. "
        "It comes back in steps. Say at once if anything hurts.",
        coach=coach,
        what=_what(tongue, what),
    )


def no_standards(tongue: Tongue, *, stage: int) -> str:
    """The last stage has no standards to leave it by."""
    return tongue.say("Stage {stage} is the last: it has no standards to decide.", stage=stage)


def which_standard(tongue: Tongue, *, name: str) -> str:
    """Ask which standard is decided."""
    return tongue.say("Which standard of {name} do you decide?", name=name)


def standard_label(tongue: Tongue, key: str, *, is_met: bool) -> str:
    """Label the button of one standard."""
    name = word(tongue, key).capitalize()
    if is_met:
        return label(tongue, "{name}: shown", name=name)
    return label(tongue, "{name}: not shown after all", name=name)


def standard_decided(tongue: Tongue, *, name: str, key: str, is_met: bool) -> str:
    """Confirm the coach's word on a standard."""
    if is_met:
        return tongue.say("{key} of {name} counts as shown.", key=word(tongue, key), name=name)
    return tongue.say("{key} of {name} has to be shown.", key=word(tongue, key), name=name)


def stage_is_another(tongue: Tongue, *, name: str) -> str:
    """The stage changed since the button was shown."""
    return tongue.say("{name} is in another stage by now, so nothing was changed.", name=name)


def upkeep_usage(tongue: Tongue) -> str:
    """Say how to switch upkeep."""
    return tongue.say(
        "Write on or off, and a reason. For example:\n<code>{example}</code>\n"
        "Upkeep keeps two easy bent-arm sets a direction a week, "
        "for athletes who do such work elsewhere already.",
        example=tongue.translated(UPKEEP_EXAMPLE),
    )


def upkeep_same(tongue: Tongue, *, name: str, is_on: bool) -> str:
    """It is so already."""
    state = tongue.say("on") if is_on else tongue.say("off")
    return tongue.say("Upkeep of {name} is {state} already.", name=name, state=state)


def upkeep_set(tongue: Tongue, *, name: str, is_on: bool) -> str:
    """Confirm the switch."""
    if is_on:
        return tongue.say(
            "Upkeep of {name} is on: two easy bent-arm sets a direction a week, "
            "four or more in reserve.",
            name=name,
        )
    return tongue.say("Upkeep of {name} is off.", name=name)


def upkeep_to_athlete(tongue: Tongue, *, coach: str, is_on: bool) -> str:
    """Tell the athlete."""
    if is_on:
        return tongue.say(
            "{coach} lets your bent-arm work go on a little: two easy sets a direction a week.",
            coach=coach,
        )
    return tongue.say("{coach} has taken the extra bent-arm sets out again.", coach=coach)
