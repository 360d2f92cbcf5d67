"""A coach's own hours: when alerts may wake, and when the weekly digest comes."""

from collections.abc import Mapping
from datetime import datetime, time

from babel.dates import get_day_names

from bot.wording import dates
from bot.wording.labels import label
from bot.wording.tongue import Template, Tongue


def card(
    tongue: Tongue,
    *,
    zone: str,
    waking_from: time,
    waking_until: time,
    weekday: int,
    at: time,
    next_digest: datetime,
) -> str:
    """Show the hours as they are, what they mean, and how to change them."""
    up = (
        tongue.say("Up: at any hour")
        if waking_from == waking_until
        else tongue.say("Up: {start} to {end}", start=clock(waking_from), end=clock(waking_until))
    )
    return "\n".join(
        [
            tongue.say("<b>Your hours</b> · {zone}", zone=zone),
            up,
            tongue.say(
                "Digest: {weekday} {at}, next {moment}",
                weekday=_day(tongue, weekday),
                at=clock(at),
                moment=dates.moment(tongue, next_digest),
            ),
            tongue.say(
                "Alerts that can wait come in these hours. Those that cannot wait come day and "
                "night."
            ),
            tongue.say(
                "Tap, or send <code>/hours 7:00-22:00</code> or <code>/hours sunday 18:00</code>."
            ),
        ]
    )


def _day(tongue: Tongue, weekday: int) -> str:
    """Write a day of the week within a sentence, counted from Monday = 0."""
    return str(get_day_names("wide", locale=tongue.locale)[weekday])


def clock(at: time) -> str:
    """Write a time of day."""
    return f"{at:%H:%M}"


def not_understood(tongue: Tongue) -> str:
    """The text is no span of hours and no day with an hour."""
    return tongue.say(
        "I need two times for when you are up, or a day and a time for the digest:\n"
        "<code>/hours 7:00-22:00</code>\n<code>/hours sunday 18:00</code>"
    )


def too_short(tongue: Tongue, *, least_h: int) -> str:
    """So few hours would hold alerts back too long."""
    return tongue.say(
        "Please leave at least {n} hours, so that an alert does not wait too long. For example:\n"
        "<code>/hours 7:00-22:00</code>",
        n=least_h,
    )


def day_label(tongue: Tongue) -> str:
    """Label the button for the digest's day."""
    return label(tongue, "Digest day")


def hour_label(tongue: Tongue) -> str:
    """Label the button for the digest's hour."""
    return label(tongue, "Digest hour")


def from_label(tongue: Tongue) -> str:
    """Label the button for the beginning of the waking hours."""
    return label(tongue, "Up from")


def until_label(tongue: Tongue) -> str:
    """Label the button for the end of the waking hours."""
    return label(tongue, "Up until")


def weekday_label(tongue: Tongue, weekday: int) -> str:
    """Label the button of one day."""
    return label(tongue, "{day}", day=_day(tongue, weekday).capitalize())


def back_label(tongue: Tongue) -> str:
    """Label the button that goes back to the card."""
    return label(tongue, "Back")


QUESTIONS: Mapping[str, Template] = {
    "digest_weekday": "On which day shall the digest come?",
    "digest_at": "At what time shall the digest come?",
    "waking_from": "From what time on are you up?",
    "waking_until": "Until what time are you up?",
}


def question(tongue: Tongue, field: str) -> str:
    """Ask for one of the hours."""
    return tongue.say(QUESTIONS[field])
