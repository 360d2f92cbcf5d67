"""Nothing hurt: the answer of 0 to a session's question, tapped or written."""

from bot.acts import pain_consequences, pain_picture, pain_report, record_results
from bot.acts.pain_ask import Arguments
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import pain as words
from bot.wording import plain
from storage.queries import people, training
from storage.records.people import Person
from storage.records.training import SessionRecord


def nothing(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """The button "nothing hurt": an answer of 0 for what was loaded and has been hurting."""
    session = training.session(turn.tx, arguments["session"])
    if session.athlete_id != person.id or not session.is_open:
        turn.say(person, plain.session_closed(turn.tongue(person)))
        return Outcome.STALE_TAP
    _note_nothing(turn, person, session)
    note = words.nothing_hurt(turn.tongue(person))
    record_results.go_on(turn, person, session.id, notes=[note], edit_message_id=event.message_id)
    return Outcome.ANSWERED


def close_question_of(turn: Turn, person: Person, session_id: int) -> None:
    """Go on with a session whose question about pain was answered in words."""
    session = training.session(turn.tx, session_id)
    if session.is_open:
        _note_nothing(turn, person, session)
        note = words.nothing_hurt(turn.tongue(person))
        record_results.go_on(turn, person, session_id, notes=[note])


def _note_nothing(turn: Turn, person: Person, session: SessionRecord) -> None:
    athlete = people.athlete(turn.tx, person.id)
    if athlete is not None:
        before = pain_picture.picture_of(turn, athlete)
        pain_report.add_nothing(turn, athlete, session)
        pain_consequences.follow(turn, person, athlete, before, words_said="")
    training.change_session(turn.tx, session.id, is_pain_answered=True)


TAPS = {"pain.none": nothing}
