"""A coach answers with a voice note, a picture, a clip or a file: it is copied as it is."""

from bot.acts import coach_question, find_athlete
from bot.acts.coach_dues import CoachDue
from bot.acts.find_athlete import subject_of
from bot.events import SentMedia
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import relayed
from bot.wording import told_media as words
from storage.queries import care, due
from storage.records.people import Person

WROTE = "coach.wrote"


def send(turn: Turn, coach: Person, athlete_id: int, event: SentMedia) -> Outcome:
    """Copy it to the athlete with the coach's name above, answer what waited, and confirm."""
    coach_question.close(turn, coach)
    found = find_athlete.tapped(turn, coach, {"athlete": athlete_id})
    if isinstance(found, Outcome):
        return found
    person, tongue = found.person, turn.tongue(coach)
    if person.chat_id is None or person.is_blocked:
        turn.say(coach, words.not_reached(tongue, name=person.name))
        return Outcome.COMMAND
    is_first = _is_first_of_album(turn, coach, event)
    theirs = turn.tongue(person)
    if is_first:
        kind = relayed.kind_of(theirs, event.media.value)
        turn.say(person, words.from_coach(theirs, coach=coach.name, what=kind))
    turn.relay(
        person,
        from_chat_id=event.chat_id,
        message_id=event.message_id,
        subject=subject_of(person),
    )
    if not is_first:
        return Outcome.PASSED_ON
    answered = care.mark_answered(turn.tx, person.id, at=turn.now)
    care.write_audit(turn.tx, at=turn.now, what=WROTE, athlete_id=person.id, actor_id=coach.id)
    kind = relayed.kind_of(tongue, event.media.value)
    said = words.sent(tongue, name=person.name, what=kind, answered=answered)
    turn.say(coach, said, subject=subject_of(person))
    return Outcome.PASSED_ON


def no_addressee(turn: Turn, coach: Person) -> Outcome:
    """Nobody knows whom it is for."""
    turn.say(coach, words.no_addressee(turn.tongue(coach)))
    return Outcome.NOT_UNDERSTOOD


def _is_first_of_album(turn: Turn, coach: Person, event: SentMedia) -> bool:
    """Announce and confirm an album once: its parts arrive as messages of their own."""
    if event.album_id is None:
        return True
    return due.take(
        turn.tx,
        person_id=coach.id,
        kind=CoachDue.ALBUM_SHOWN,
        subject=event.album_id,
        due_at=turn.now,
        now=turn.now,
    )
