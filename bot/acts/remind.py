"""One kind reminder in the evening, and the coach's word after three silent days."""

from bot.acts.pass_on import tell_coach
from bot.acts.send_session import reminder_taps
from bot.turn import Turn
from bot.wording import reminding, tests_found
from storage.queries import people, training
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind


def remind(turn: Turn, person: Person, session_id: int) -> None:
    """Remind once, unless it was answered meanwhile."""
    session = training.session(turn.tx, session_id)
    is_test = session.is_test_day
    sent = [item for item in session.items if item.dose is not None]
    is_answered = session.has_results if is_test else any(item.is_reported for item in sent)
    if session.is_open and not is_answered:
        tongue = turn.tongue(person)
        turn.say(
            person,
            tests_found.reminder(tongue) if is_test else reminding.evening(tongue),
            kind=MessageKind.REMINDER,
            taps=reminder_taps(turn.tongue(person), session),
            subject=f"session:{session_id}",
        )


def tell_silence(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Tell the coach that an athlete has been silent."""
    if athlete.is_practice:
        return
    coach = people.person(turn.tx, athlete.coach_id)
    tell_coach(turn, coach, person, reminding.silent(turn.tongue(coach), person.name))
