"""A coach rests a place, or the whole training for a while: asked, told, taken back."""

from datetime import date

from bot.wording import dates
from bot.wording.coach_pain import SITES, place
from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.values import Side, Site

REST_EXAMPLE: Template = "/rest robin left wrist sore after the fall, until I have seen it"
PAUSE_EXAMPLE: Template = "/pause robin 2 weeks exams and no sleep"
REASON_UNITS = 500  # [UTF-16 units] ch: a reason is a few sentences


def which_place(tongue: Tongue, *, name: str) -> str:
    """Ask where."""
    return tongue.say(
        "Which place of {name} is to be rested? What loads it is left out until /clear.", name=name
    )


def which_of(tongue: Tongue, *, name: str) -> str:
    """Ask which of the places that the word may mean."""
    return tongue.say("Which one of {name}?", name=name)


def which_side(tongue: Tongue, *, site: Site) -> str:
    """Ask which side."""
    return tongue.say("Which side? {place}", place=_bare(tongue, site))


def place_label(tongue: Tongue, site: Site) -> str:
    """Label the button of a place, without its side."""
    return label(tongue, "{place}", place=_bare(tongue, site))


def _bare(tongue: Tongue, site: Site) -> str:
    return tongue.say(SITES[site]).capitalize()


def side_label(tongue: Tongue, side: Side) -> str:
    """Label the button of a side."""
    match side:
        case Side.LEFT:
            return label(tongue, "Left")
        case Side.RIGHT:
            return label(tongue, "Right")
        case _:
            return label(tongue, "Both")


def rest_what(tongue: Tongue, *, site: Site, side: Side) -> str:
    """Write what is asked for, before it is done."""
    return tongue.say("Rest: {place}", place=place(tongue, site, side))


def elsewhere(tongue: Tongue, *, name: str) -> str:
    """A place outside the list: nothing says what spares it, so everything would wait."""
    return tongue.say(
        "That place is not on the list, so nothing says what spares it: "
        "all training of {name} would wait until /clear. Do it all the same?",
        name=name,
    )


def place_unknown(tongue: Tongue) -> str:
    """The words name no place."""
    return tongue.say(
        "I do not know that place. Tap one, or send for example:\n<code>{example}</code>",
        example=tongue.translated(REST_EXAMPLE),
    )


def rested_already(tongue: Tongue, *, name: str, site: Site, side: Side) -> str:
    """It is rested, or graver, already."""
    return tongue.say(
        "{name}: {place} is left out already, so nothing was changed. /clear {name} ends it.",
        name=name,
        place=place(tongue, site, side),
    )


def rested(
    tongue: Tongue, *, name: str, site: Site, side: Side, why: str, left_out: str, is_told: bool
) -> str:
    """The place is rested."""
    told = (
        tongue.say("The coming sessions are planned anew, and {name} has been told.", name=name)
        if is_told
        else tongue.say("The coming sessions are planned anew. {name} has no open chat.", name=name)
    )
    return tongue.say(
        "<b>{name}</b>: {place} is rested until /clear.\nLeft out: {left_out}.\nWhy: {why}\n{told}",
        name=name,
        place=place(tongue, site, side),
        left_out=Marked(left_out),
        why=shortened(why, REASON_UNITS),
        told=Marked(told),
    )


def rested_to_athlete(tongue: Tongue, *, coach: str, site: Site, side: Side) -> str:
    """Tell the athlete what is left out, who brings it back, and where else to turn."""
    return tongue.say(
        "{coach} rests one place of yours: {place}. What loads it is left out. "
        "The rest goes on. Only {coach} can bring it back. "
        "If it gets worse or worries you, see a doctor or physiotherapist.",
        coach=coach,
        place=place(tongue, site, side),
    )


def rest_taken_back(tongue: Tongue, *, name: str, site: Site, side: Side) -> str:
    """The resting was taken back."""
    return tongue.say(
        "Taken back: {place} of {name} may be trained again, at first with fewer sets. "
        "A session that is out stays as it is.",
        place=place(tongue, site, side),
        name=name,
    )


def rest_taken_back_to_athlete(tongue: Tongue, *, coach: str, site: Site, side: Side) -> str:
    """Tell the athlete that a place is not rested any more."""
    return tongue.say(
        "{coach} took that back: {place} comes back into your sessions. "
        "It starts with fewer sets. Say at once if anything hurts.",
        coach=coach,
        place=place(tongue, site, side),
    )


def rest_stays(tongue: Tongue, *, name: str) -> str:
    """Something was said about pain since, so only a clearing ends it."""
    return tongue.say(
        "Something was said about pain since, or it is cleared already. "
        "/clear {name} with a reason is the way now.",
        name=name,
    )


def how_long(tongue: Tongue, *, name: str) -> str:
    """Ask how long a break is to last."""
    return tongue.say(
        "How long a break for {name}? Tap, or send for example:\n<code>{example}</code>",
        name=name,
        example=tongue.translated(PAUSE_EXAMPLE),
    )


def weeks_label(tongue: Tongue, weeks: int) -> str:
    """Label the button of a length."""
    if weeks == 1:
        return label(tongue, "1 week")
    return label(tongue, "{n} weeks", n=weeks)


def end_label(tongue: Tongue) -> str:
    """Label the button that ends a break."""
    return label(tongue, "End the break")


def pause_what(tongue: Tongue, *, until: date) -> str:
    """Write what is asked for, before it is done."""
    return tongue.say("A break until {day}", day=dates.day(tongue, until))


def end_what(tongue: Tongue) -> str:
    """Write what is asked for, before it is done."""
    return tongue.say("End of the break")


def on_a_break(tongue: Tongue, *, name: str, until: date | None) -> str:
    """The athlete is on a break already."""
    if until is None:
        return tongue.say("{name} is on a break. It may be made another length:", name=name)
    return tongue.say(
        "{name} is on a break until {day}. It may be ended, or made another length:",
        name=name,
        day=dates.day(tongue, until),
    )


def not_training(tongue: Tongue, *, name: str) -> str:
    """Nobody to pause."""
    return tongue.say("{name} does not train now, so there is nothing to pause.", name=name)


def not_on_a_break(tongue: Tongue, *, name: str) -> str:
    """There is no break to end."""
    return tongue.say(
        "{name} is not on a break. To begin one, send for example:\n<code>{example}</code>",
        name=name,
        example=tongue.translated(PAUSE_EXAMPLE),
    )


def paused(tongue: Tongue, *, name: str, until: date, why: str, is_told: bool) -> str:
    """The break begins."""
    told = (
        tongue.say("{name} has been told.", name=name)
        if is_told
        else tongue.say("{name} has no open chat.", name=name)
    )
    return tongue.say(
        "<b>{name}</b>: a break until {day}. Nothing is sent, and it counts neither way.\n"
        "Why: {why}\n{told}",
        name=name,
        day=dates.day(tongue, until),
        why=shortened(why, REASON_UNITS),
        told=Marked(told),
    )


def paused_to_athlete(tongue: Tongue, *, coach: str, until: date) -> str:
    """Tell the athlete of the break."""
    return tongue.say(
        "{coach} gives you a break until {day}. No sessions until then, and nothing counts as "
        "missed. You can write here at any time.",
        coach=coach,
        day=dates.day(tongue, until),
    )


def pause_ended(tongue: Tongue, *, name: str) -> str:
    """The break ends."""
    return tongue.say(
        "<b>{name}</b>: the break is over, and the week is planned. {name} is asked how it was.",
        name=name,
    )


def pause_ended_to_athlete(tongue: Tongue, *, coach: str) -> str:
    """Tell the athlete that training goes on."""
    return tongue.say("{coach} ends your break: training goes on.", coach=coach)


def pause_changed_since(tongue: Tongue, *, name: str) -> str:
    """The break is another by now."""
    return tongue.say(
        "The break of {name} is over or another by now, so nothing was changed.", name=name
    )
