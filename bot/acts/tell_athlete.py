"""The coach's words to an athlete: by command, by button, or by replying to a message."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any

from bot.acts import coach_question, find_athlete
from bot.acts.about_athlete import about_tapped, entries
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_messages
from bot.wording.pages import pieces_of
from storage.queries import care
from storage.records.people import Person
from storage.records.wire import MessageKind

WRITE = "coach.write"
WROTE = "coach.wrote"
PIECE_UNITS = 3800  # [UTF-16 units] botapi: 4096 with the coach's name above


def tell(turn: Turn, person: Person, text: str, *, kind: MessageKind = MessageKind.NOTICE) -> bool:
    """Write to an athlete, if they can be reached; tell whether they can."""
    if person.chat_id is None or person.is_blocked:
        return False
    turn.say(person, text, kind=kind)
    return True


def send(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Send the coach's words, answer what waited, and confirm."""
    coach_question.close(turn, coach)
    tongue, person = turn.tongue(coach), named.person
    if not named.rest:
        turn.say(coach, coach_messages.text_missing(tongue, example=coach_messages.TELL_EXAMPLE))
        return Outcome.NOT_UNDERSTOOD
    if not all(tell(turn, person, words) for words in _words(turn, coach, named)):
        say = coach_messages.blocked if person.is_blocked else coach_messages.not_joined
        turn.say(coach, say(tongue, name=person.name))
        return Outcome.COMMAND
    answered = care.mark_answered(turn.tx, person.id, at=turn.now)
    care.write_audit(turn.tx, at=turn.now, what=WROTE, athlete_id=person.id, actor_id=coach.id)
    turn.say(
        coach,
        coach_messages.sent(tongue, name=person.name, text=named.rest, answered=answered),
        subject=subject_of(person),
    )
    return Outcome.PASSED_ON


def _words(turn: Turn, coach: Person, named: Named) -> list[str]:
    """Write the coach's words, in pieces where one message is too short for them."""
    tongue = turn.tongue(named.person)
    return [
        coach_messages.from_coach(tongue, coach=coach.name, text=piece)
        for piece in pieces_of(named.rest, most=PIECE_UNITS)
    ]


@about_tapped
def ask_text(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The coach wants to write: the next text goes to that athlete."""
    tongue, person = turn.tongue(coach), found.person
    coach_question.ask(turn, coach, WRITE, {"athlete": person.id})
    turn.say(
        coach,
        coach_messages.write_now(tongue, name=person.name),
        taps=[[Tap(coach_messages.never_mind_label(tongue), "coach.never_mind")]],
        subject=subject_of(person),
    )
    return Outcome.ASKED


def hear_text(
    turn: Turn, coach: Person, about: Mapping[str, Any], text: str, *, waited: timedelta
) -> Outcome:
    """The text that was asked for came; long after, ask whether it is still meant so."""
    coach_question.close(turn, coach)
    found = find_athlete.tapped(turn, coach, {**about, "rest": text})
    if isinstance(found, Outcome):
        return found
    if waited <= coach_question.FRESH:
        return send(turn, coach, found)
    tongue, person = turn.tongue(coach), found.person
    turn.say(
        coach,
        coach_messages.still_for(tongue, name=person.name, text=text),
        taps=_confirm_taps(turn, coach, person, text),
        subject=subject_of(person),
    )
    return Outcome.ASKED


def never_mind(turn: Turn, coach: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Close the question."""
    coach_question.close(turn, coach)
    text = coach_messages.never_mind(turn.tongue(coach))
    turn.answer_tap(coach, event.message_id, text)
    return Outcome.COMMAND


def _confirm_taps(turn: Turn, coach: Person, person: Person, text: str) -> TapRows:
    tongue = turn.tongue(coach)
    return [
        [
            Tap(
                coach_messages.yes_send_label(tongue, name=person.name),
                "coach.tell",
                {"athlete": person.id, "rest": text},
            ),
            Tap(coach_messages.never_mind_label(tongue), "coach.never_mind"),
        ]
    ]


# ``/tell NAME text``.
command, picked = entries(send, act="coach.tell", example=coach_messages.TELL_EXAMPLE)
