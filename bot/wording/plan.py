"""What is next, this week, and why."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, time

from bot.wording import dates
from bot.wording.dates import weekday
from bot.wording.labels import label
from bot.wording.tongue import Template, Tongue


@dataclass(frozen=True)
class DayFacts:
    """One session of the week in short."""

    on: date
    letter: str
    state: str
    movements: tuple[str, ...]


TESTS = "T"
"""The letter that a session has when it has turned into the tests; no person reads it."""
STATES: Mapping[str, Template] = {
    "planned": "to come",
    "sent": "open",
    "trained": "trained",
    "missed": "missed",
    "called_off": "called off",
}


def next_session(tongue: Tongue, on: date | None, at: time) -> str:
    """Say when the next session comes."""
    if on is None:
        return tongue.say("Nothing is planned right now. Your coach sees that.")
    return tongue.say(
        "Nothing is open. The next session comes on {weekday} at {at}. "
        "To train earlier, write <i>session now</i>: up to two days ahead I send it at once.",
        weekday=weekday(tongue, on),
        at=f"{at:%H:%M}",
    )


def now_label(tongue: Tongue) -> str:
    """Label the button that sends the next session at once."""
    return label(tongue, "Session now")


def next_week(tongue: Tongue, on: date, at: time) -> str:
    """The week has no more sessions, and the next is not drawn yet."""
    return tongue.say(
        "Nothing more this week. The next sessions begin on {day} at {at}.",
        day=dates.day(tongue, on),
        at=f"{at:%H:%M}",
    )


def on_a_break(tongue: Tongue, until: date) -> str:
    """Say how long the break lasts and how to end it."""
    return tongue.say(
        "You are on a break until {day}. /pause off ends it sooner.", day=dates.day(tongue, until)
    )


def not_started(tongue: Tongue, *, coach: str) -> str:
    """Nothing is planned before the first questions are over and the coach has looked."""
    return tongue.say(
        "No session yet. First come your answers to the questions, "
        "and {coach} may want to look at them.",
        coach=coach,
    )


def week(tongue: Tongue, days: Sequence[DayFacts]) -> str:
    """List this week's sessions."""
    if not days:
        return tongue.say("Nothing is planned this week.")
    return "\n\n".join(_day(tongue, day) for day in days)


def _day(tongue: Tongue, day: DayFacts) -> str:
    name, state = weekday(tongue, day.on).capitalize(), tongue.say(STATES[day.state])
    head = (
        tongue.say("<b>{weekday}, tests</b> · {state}", weekday=name, state=state)
        if day.letter == TESTS
        else tongue.say(
            "<b>{weekday}, day {letter}</b> · {state}",
            weekday=name,
            letter=day.letter,
            state=state,
        )
    )
    return "\n".join([head, *(tongue.say("· {name}", name=name) for name in day.movements)])
