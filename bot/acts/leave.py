"""``/leave``: what goes and what stays is said, asked once, and waits only for an open alert."""

from collections.abc import Mapping
from typing import Any

from bot.acts import erase_person
from bot.acts.emergency_number import number_for
from bot.acts.pass_on import tell_coach
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import leaving as words
from storage.queries import leaving, people
from storage.records.people import Person

YES, STAY = "leave.yes", "leave.stay"


def command(turn: Turn, person: Person, _rest: str, _event: Wrote) -> Outcome:
    """``/leave`` of an athlete."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.NOT_UNDERSTOOD
    tongue, coach = turn.tongue(person), people.person(turn.tx, athlete.coach_id)
    stay = [Tap(words.stay_label(tongue), STAY)]
    if leaving.wish_of(turn.tx, person.id) is not None:
        turn.say(person, _waits(turn, person, coach), taps=[stay])
        return Outcome.ASKED
    text = words.what_goes(
        tongue,
        coach=coach.name,
        copies_kept=turn.house.copies_kept,
        has_open_alert=erase_person.has_open_alert(turn, person),
    )
    turn.say(person, text, taps=[[Tap(words.leave_label(tongue), YES)], stay])
    return Outcome.ASKED


def confirmed(turn: Turn, person: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """The athlete confirmed: erased at once, or as soon as the open alert is answered."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    if not erase_person.has_open_alert(turn, person):
        erase_person.erase(turn, person, athlete, asked_by=None)
        return Outcome.COMMAND
    tongue, coach = turn.tongue(person), people.person(turn.tx, athlete.coach_id)
    is_new = leaving.wish_of(turn.tx, person.id) is None
    leaving.wish_to_leave(turn.tx, person.id, at=turn.now)
    turn.answer_tap(person, event.message_id, _waits(turn, person, coach))
    turn.say(person, words.may_stay(tongue), taps=[[Tap(words.stay_label(tongue), STAY)]])
    if is_new:
        tell_coach(turn, coach, person, words.wish_to_coach(turn.tongue(coach), name=person.name))
    return Outcome.COMMAND


def stay(turn: Turn, person: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """The athlete stays; a coach who was told of the wish is told of this too."""
    athlete, tongue = people.athlete(turn.tx, person.id), turn.tongue(person)
    turn.answer_tap(person, event.message_id, words.stays(tongue))
    if leaving.stay_after_all(turn.tx, person.id) and athlete is not None:
        coach = people.person(turn.tx, athlete.coach_id)
        tell_coach(turn, coach, person, words.stays_to_coach(turn.tongue(coach), name=person.name))
    return Outcome.ANSWERED


def finish(turn: Turn, person_id: int) -> None:
    """Erase an athlete who waits to leave, once nothing is open about them."""
    person, athlete = people.person(turn.tx, person_id), people.athlete(turn.tx, person_id)
    if athlete is None:
        leaving.stay_after_all(turn.tx, person_id)
    elif not erase_person.has_open_alert(turn, person):
        erase_person.erase(turn, person, athlete, asked_by=None)


def _waits(turn: Turn, person: Person, coach: Person) -> str:
    number = number_for(turn, person, coach)
    return words.waits(turn.tongue(person), coach=coach.name, number=number)


TAPS = {YES: confirmed, STAY: stay}
