"""One movement for another, and a dose set by hand: what the coach is asked and told."""

from collections.abc import Mapping, Sequence

from bot.wording.labels import label
from bot.wording.movement_names import movement_name, name_within
from bot.wording.tongue import Template, Tongue
from scheduler.catalogue.values import Measure

SWAP_EXAMPLE: Template = "/swap robin push-up hold for support hold wrists like it better"
DOSE_EXAMPLE: Template = "/dose robin push-up hold 4x30 long and even last week"
LOADED_EXAMPLE: Template = "/dose robin farmer carry 4x30 @ 12 grip is ready"
UNITS: Mapping[Measure, Template] = {
    Measure.HOLD_S: "s",
    Measure.CARRY_S: "s",
    Measure.CARRY_M: "m",
    Measure.REPS: "reps",
}


def which_out(tongue: Tongue, *, name: str) -> str:
    """Ask which movement is to go."""
    return tongue.say("Which movement of {name} is to go?", name=name)


def which_dose(tongue: Tongue, *, name: str) -> str:
    """Ask whose dose is to be set."""
    return tongue.say("Which movement of {name} gets another dose?", name=name)


def nothing_coming(tongue: Tongue, *, name: str) -> str:
    """Nothing is planned that could be changed."""
    return tongue.say(
        "{name} has no session in the coming two weeks, so there is nothing to change. "
        "/plan shows how it stands.",
        name=name,
    )


def not_known(tongue: Tongue, *, asked: str, example: str) -> str:
    """No movement of the library has such a name."""
    return tongue.say(
        "No movement is called “{asked}”. Tap one, or send for example:\n<code>{example}</code>",
        asked=asked,
        example=tongue.translated(example),
    )


def same_movement(tongue: Tongue, *, key: str) -> str:
    """The two names mean one movement."""
    return tongue.say(
        "Both names mean {movement}, so nothing changes.", movement=movement_name(tongue, key)
    )


def not_coming(tongue: Tongue, *, name: str, key: str) -> str:
    """The movement is not in the coming weeks."""
    return tongue.say(
        "{movement} is not in the coming two weeks of {name}. What comes:",
        movement=movement_name(tongue, key),
        name=name,
    )


def which_of(tongue: Tongue, *, asked: str) -> str:
    """Several movements match."""
    return tongue.say("Several movements match “{asked}”. Which one?", asked=asked)


def which_in(tongue: Tongue, *, key: str) -> str:
    """Ask what comes instead."""
    return tongue.say("What instead of {movement}?", movement=name_within(tongue, key))


def swap_usage(tongue: Tongue) -> str:
    """Say how to swap."""
    return tongue.say(
        "Send the movement, “for”, and the one to come instead. For example:\n"
        "<code>{example}</code>",
        example=tongue.translated(SWAP_EXAMPLE),
    )


def which_amount(tongue: Tongue, *, key: str, now: str) -> str:
    """Ask for the dose."""
    return tongue.say(
        "{movement}: {now} as the rules have it. Tap another dose, or write it:\n"
        "<code>{example}</code>",
        movement=movement_name(tongue, key),
        now=now,
        example=tongue.translated(LOADED_EXAMPLE),
    )


def dose_usage(tongue: Tongue, *, measure: Measure) -> str:
    """Say how to write a dose of this movement."""
    return tongue.say(
        "Write sets × {unit}, and a load behind @ where there is one. For example:\n"
        "<code>{example}</code>\n<code>{loaded}</code>",
        unit=tongue.say(UNITS[measure]),
        example=tongue.translated(DOSE_EXAMPLE),
        loaded=tongue.translated(LOADED_EXAMPLE),
    )


def not_in_that_unit(tongue: Tongue, *, key: str, measure: Measure) -> str:
    """The dose was written in a unit that the movement is not counted in."""
    return tongue.say(
        "{movement} is counted in {unit}. Send it so, for example:\n<code>{example}</code>",
        movement=movement_name(tongue, key),
        unit=tongue.say(UNITS[measure]),
        example=tongue.translated(DOSE_EXAMPLE),
    )


def owned_loads(tongue: Tongue, *, key: str, loads: Sequence[str]) -> str:
    """Say which loads and bands are at hand."""
    if not loads:
        return tongue.say(
            "{movement} takes no load here: leave out what stands behind @.",
            movement=movement_name(tongue, key),
        )
    return tongue.say(
        "That load is not at hand for {movement}. At hand: {loads}. Nothing was changed.",
        movement=name_within(tongue, key),
        loads=", ".join(loads),
    )


def movement_label(tongue: Tongue, key: str) -> str:
    """Label the button of a movement."""
    return label(tongue, "{name}", name=movement_name(tongue, key))


def text_label(tongue: Tongue, text: str) -> str:
    """Label the button of a dose."""
    return label(tongue, "{dose}", dose=text)
