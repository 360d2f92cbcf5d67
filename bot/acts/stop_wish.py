"""A wish to stop, without a word of what: asked by taps, and the coach reads it."""

from collections.abc import Mapping
from typing import Any

from bot.acts import cant_today, leave, pain_picture, pass_on
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.stop_wishes import is_stop_wish
from bot.turn import Tap, TapRows, Turn
from bot.wording import stopping as words
from storage.queries import people, training
from storage.records.people import Athlete, Person


def hear(turn: Turn, person: Person, athlete: Athlete, event: Wrote) -> Outcome | None:
    """Ask what is to stop; None for any other text, and while a sign stands that comes first."""
    if event.is_edit or not is_stop_wish(event.text):
        return None
    if pain_picture.picture_of(turn, athlete).flags:
        return None
    pass_on.words(turn, person, event, is_quiet=True)
    coach = people.person(turn.tx, athlete.coach_id)
    text = words.what_to_stop(turn.tongue(person), coach=coach.name)
    turn.say(person, text, taps=_taps(turn, person))
    return Outcome.ASKED


def command(turn: Turn, person: Person, _rest: str, _event: Wrote) -> Outcome:
    """``/stop``: the same question."""
    turn.say(person, words.what_to_stop(turn.tongue(person)), taps=_taps(turn, person))
    return Outcome.ASKED


def take_break(turn: Turn, person: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """A break: how long is asked next."""
    return cant_today.pause(turn, person, "", _as_command(event))


def go(turn: Turn, person: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Leave: what goes and what stays is said first."""
    return leave.command(turn, person, "", _as_command(event))


def _as_command(event: Tapped) -> Wrote:
    message_id = event.message_id or 0
    return Wrote(chat_id=event.chat_id, at=event.at, message_id=message_id, text="")


def _taps(turn: Turn, person: Person) -> TapRows:
    tongue = turn.tongue(person)
    sessions = training.open_sessions(turn.tx, person.id)[:1]
    return [
        *([Tap(words.session_label(tongue), "cant", {"session": one.id})] for one in sessions),
        [Tap(words.hurts_label(tongue), "pain.where", {"session": None})],
        [Tap(words.break_label(tongue), "stop.break")],
        [Tap(words.leave_label(tongue), "stop.leave")],
    ]


TAPS = {"stop.break": take_break, "stop.leave": go}
