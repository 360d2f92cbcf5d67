"""A chat that cannot be reached is a state, and the coach learns of it once."""

from bot.acts import tell_alerts
from bot.acts.find_athlete import subject_of
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import plain
from storage import outbox
from storage.queries import care, people
from storage.records.people import Person
from storage.records.wire import MessageKind


def blocked(turn: Turn, chat_id: int) -> Outcome:
    """The platform says that this chat cannot be reached."""
    person = people.person_in_chat(turn.tx, chat_id)
    if person is None or person.is_blocked:
        return Outcome.STATE
    people.change_person(turn.tx, person.id, is_blocked=True)
    outbox.mark_blocked(turn.tx, chat_id, at=turn.now)
    _note(turn, person, "chat.blocked")
    _tell_coach(turn, person, blocked=True)
    if person.is_coach:
        tell_alerts.coach_lost(turn, people.person(turn.tx, person.id))
    return Outcome.STATE


def unblocked(turn: Turn, chat_id: int) -> Outcome:
    """The person opened the chat again."""
    person = people.person_in_chat(turn.tx, chat_id)
    if person is None or not person.is_blocked:
        return Outcome.STATE
    people.change_person(turn.tx, person.id, is_blocked=False)
    _note(turn, person, "chat.back")
    turn.say(person, plain.welcome_back(turn.tongue(person)))
    _tell_coach(turn, person, blocked=False)
    return Outcome.STATE


def moved(turn: Turn, old_chat_id: int, new_chat_id: int) -> Outcome:
    """The platform gave the chat a new id."""
    person = people.person_in_chat(turn.tx, old_chat_id)
    if person is not None:
        people.change_person(turn.tx, person.id, chat_id=new_chat_id)
    outbox.move_chat(turn.tx, old_chat_id=old_chat_id, new_chat_id=new_chat_id)
    return Outcome.STATE


def _note(turn: Turn, person: Person, what: str) -> None:
    care.write_audit(turn.tx, at=turn.now, what=what, athlete_id=person.id)


def _tell_coach(turn: Turn, person: Person, *, blocked: bool) -> None:
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return
    coach = people.person(turn.tx, athlete.coach_id)
    say = plain.blocked_to_coach if blocked else plain.back_to_coach
    turn.say(
        coach,
        say(turn.tongue(coach), name=person.name),
        kind=MessageKind.ALERT,
        subject=subject_of(person),
    )
