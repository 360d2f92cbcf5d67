"""The help of an athlete, and the open question of the intake once more."""

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from bot.acts.emergency_number import number_for
from bot.acts.intake_resume import resume
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import help as words
from storage.queries import people
from storage.records.people import Person

NOTHING_ELSE: Mapping[str, str] = MappingProxyType({})


def athlete(
    turn: Turn,
    person: Person,
    _rest: str,
    _event: Wrote,
    *,
    commands: Sequence[tuple[str, str]] = (),
    also: Mapping[str, str] = NOTHING_ELSE,
) -> Outcome:
    """Say what I understand, what this is not, and how to reach help; set the menu anew.

    ``also`` names a command in Spanish, for who reads Spanish.
    """
    me = people.athlete(turn.tx, person.id)
    if me is None:
        return Outcome.COMMAND
    coach = people.person(turn.tx, me.coach_id)
    text = words.athlete(
        turn.tongue(person),
        coach=coach.name,
        number=number_for(turn, person, coach),
        commands=commands,
        also=also if person.language == "es" else {},
    )
    turn.say(person, text)
    if commands:
        turn.set_menu(person, commands)
    resume(turn, person, me)
    return Outcome.COMMAND
