"""Whether a session still takes answers; an old button answers politely and changes nothing."""

from datetime import timedelta

from bot.acts.checklist import local_today
from bot.turn import Turn
from bot.wording import plain
from storage.queries import training
from storage.records.people import Person
from storage.records.training import SessionRecord, SessionState

ANSWERS_TAKEN = timedelta(days=7)  # [d] ch: an older day is for the coach to mend


def still_open_session(turn: Turn, person: Person, session_id: int) -> SessionRecord | None:
    """Return the person's session while it takes answers; else say that it is closed."""
    session = training.session(turn.tx, session_id)
    if session.athlete_id == person.id and session.is_open:
        return session
    turn.say(person, plain.session_closed(turn.tongue(person)))
    return None


def answerable_session(turn: Turn, person: Person, session_id: int) -> SessionRecord | None:
    """Return a session that is open, or closed so lately that its numbers may be mended."""
    session = training.session(turn.tx, session_id)
    is_closed_lately = (
        session.state in {SessionState.TRAINED, SessionState.MISSED}
        and session.on >= local_today(turn, person) - ANSWERS_TAKEN
    )
    if session.athlete_id == person.id and (session.is_open or is_closed_lately):
        return session
    turn.say(person, plain.session_closed(turn.tongue(person)))
    return None
