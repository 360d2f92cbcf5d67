"""Help and menu for coaches and owners, from the tables of the desks."""

from collections.abc import Sequence

from bot.acts.emergency_number import number_for
from bot.turn import Turn
from bot.wording import coach_help
from bot.wording.tongue import Template
from storage.records.people import Person


def show(turn: Turn, person: Person, commands: Sequence[tuple[str, Template]]) -> None:
    """Send the list of commands and set it as the menu of the chat."""
    tongue = turn.tongue(person)
    text = (
        coach_help.help_text(tongue, commands, number=number_for(turn, person, person))
        if person.is_coach
        else coach_help.owner_help(tongue, commands)
    )
    turn.say(person, text)
    turn.set_menu(person, commands)
