"""Whether a session still takes answers; an old button answers politely and changes nothing."""

from bot.turn import Turn
from bot.wording import plain
from storage.queries import training
from storage.records.people import Person
from storage.records.training import SessionRecord


def still_open_session(turn: Turn, person: Person, session_id: int) -> SessionRecord | None:
    """Return the person's session while it takes answers; else say that it is closed."""
    session = training.session(turn.tx, session_id)
    if session.athlete_id == person.id and session.is_open:
        return session
    turn.say(person, plain.session_closed(turn.tongue(person)))
    return None
