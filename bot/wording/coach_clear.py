"""Clearing what is left out: what the coach is asked, and what the athlete reads."""

from collections.abc import Sequence
from datetime import date

from bot.wording import dates
from bot.wording.coach_pain import PlaceFacts, place_line, where_of
from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.values import Level

EXAMPLE: Template = "/clear Robin two good weeks, no pain in daily use"
REASON_UNITS = 500  # [UTF-16 units] ch: a reason is a few sentences


def nothing_left_out(tongue: Tongue, *, name: str) -> str:
    """There is nothing that a person must clear."""
    return tongue.say("Nothing of {name} waits to be cleared.", name=name)


def ask_reason(tongue: Tongue, *, name: str, places: Sequence[PlaceFacts]) -> str:
    """Ask why, as the next text."""
    return "\n".join(
        [
            tongue.say("<b>Clear {name}</b>", name=name),
            *(place_line(tongue, one) for one in places),
            tongue.say("Write the reason: your next text is kept with it."),
        ]
    )


def ask_place(tongue: Tongue, *, name: str) -> str:
    """Several places are left out: ask which."""
    return tongue.say("<b>{name}</b>: what do you clear?", name=name)


def place_label(tongue: Tongue, facts: PlaceFacts) -> str:
    """Label the button of one place."""
    return label(tongue, "{place}", place=where_of(tongue, facts))


def all_label(tongue: Tongue) -> str:
    """Label the button of everything."""
    return label(tongue, "All of it")


def stop_label(tongue: Tongue) -> str:
    """Label the button that clears nothing."""
    return label(tongue, "No, leave it")


def ask_assessed(tongue: Tongue, *, name: str, places: Sequence[PlaceFacts], why: str) -> str:
    """Ask for the statement that only the athlete's own report allows."""
    return "\n".join(
        [
            tongue.say("<b>Clear {name}</b>", name=name),
            *(place_line(tongue, one) for one in places),
            tongue.say("Reason: {why}", why=shortened(why, REASON_UNITS)),
            tongue.say(
                "Does {name} report having been assessed by a licensed clinician for this?",
                name=name,
            ),
        ]
    )


def assessed_label(tongue: Tongue) -> str:
    """Label the statement."""
    return label(tongue, "Yes, assessed")


def not_assessed_label(tongue: Tongue) -> str:
    """Label its opposite."""
    return label(tongue, "No, not yet")


def ask_from_when(tongue: Tongue, *, name: str, after_fever: date | None) -> str:
    """Ask from when what was left out may be trained; ``after_fever`` is the first day open."""
    lines = [] if after_fever is None else [fever_waits(tongue, first=after_fever)]
    lines.append(
        tongue.say(
            "From when may {name} train it again, by what the clinician said? "
            "Tap, or write a day like <code>{example}</code>.",
            name=name,
            example="2026-12-01",
        )
    )
    return "\n".join(lines)


def fever_waits(tongue: Tongue, *, first: date) -> str:
    """A fever was told: name the first day that the wait leaves open."""
    return tongue.say(
        "A fever or a hot joint was told: nothing is trained until two days are clear of it, "
        "so from {day} at the earliest.",
        day=dates.day(tongue, first),
    )


def day_label(tongue: Tongue, day: date | None) -> str:
    """Label the button of the first day that may be chosen; None is today."""
    return (
        label(tongue, "Today")
        if day is None
        else label(tongue, "{day}", day=dates.day(tongue, day))
    )


def week_label(tongue: Tongue) -> str:
    """Label the button for a week from now."""
    return label(tongue, "In a week")


def bad_day(tongue: Tongue) -> str:
    """The day could not be read, or lies in the past."""
    return tongue.say(
        "I need a day from today on, written like <code>{example}</code>.", example="2026-12-01"
    )


def nothing_cleared(tongue: Tongue, *, name: str) -> str:
    """The coach stopped, or the statement could not be given."""
    return tongue.say("Nothing was cleared: what is left out for {name} stays left out.", name=name)


def changed_since(tongue: Tongue, *, name: str) -> str:
    """Something changed between the question and its answer."""
    return tongue.say(
        "Something about {name} has changed since, so nothing was cleared. "
        "Look once more: <code>/who {name}</code>",
        name=name,
    )


def cleared(
    tongue: Tongue,
    *,
    name: str,
    places: Sequence[PlaceFacts],
    from_day: date | None,
    why: str,
    still: Sequence[PlaceFacts],
    is_told: bool,
) -> str:
    """Confirm to the coach."""
    where = Marked(", ".join(where_of(tongue, one) for one in places))
    lines = [
        tongue.say("Cleared, <b>{name}</b>: {where}.", name=name, where=where),
        tongue.say("Why: {why}", why=shortened(why, REASON_UNITS)),
        from_when(tongue, from_day),
        tongue.say("It comes back in small steps; the coming sessions are planned anew."),
    ]
    if still:
        rest = Marked("; ".join(place_line(tongue, one) for one in still))
        lines.append(tongue.say("Still left out: {rest}.", rest=rest))
    if not is_told:
        lines.append(tongue.say("{name} has no open chat and was not told.", name=name))
    return "\n".join(lines)


def from_when(tongue: Tongue, from_day: date | None) -> str:
    """Write from when it may be trained."""
    if from_day is None:
        return tongue.say("From the next session on.")
    return tongue.say("From {day} on.", day=dates.day(tongue, from_day))


def to_athlete(
    tongue: Tongue, *, coach: str, places: Sequence[PlaceFacts], from_day: date | None
) -> str:
    """Tell the athlete what comes back, how, and what to do if the pain returns."""
    start = (
        tongue.say("From your next session on")
        if from_day is None
        else tongue.say("From {day} on", day=dates.day(tongue, from_day))
    )
    lines = [
        _looked_at(tongue, coach=coach, places=places),
        tongue.say("{start}, what was left out comes back in small steps.", start=start),
        tongue.say("The first sessions have fewer sets than before."),
        tongue.say(
            "If it hurts again, stop that movement and tell me where and how much. "
            "If it gets worse or worries you, see a doctor or physiotherapist."
        ),
    ]
    if any(one.level is Level.EMERGENCY for one in places):
        lines.append(tongue.say("If the signs come back, stop and call the emergency number."))
    return "\n".join(lines)


def _looked_at(tongue: Tongue, *, coach: str, places: Sequence[PlaceFacts]) -> str:
    """Name the places, but never a sign: those were the athlete's own words."""
    named = [one for one in places if one.flag is None]
    if not named or len(named) < len(places):
        return tongue.say("{coach} has looked at what you reported.", coach=coach)
    where = Marked(", ".join(where_of(tongue, one) for one in named))
    return tongue.say("{coach} has looked at what you reported: {where}.", coach=coach, where=where)
