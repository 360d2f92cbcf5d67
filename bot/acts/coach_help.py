"""Help and menu for coaches and owners, from the tables of the desks."""

from collections.abc import Sequence

from bot.turn import Turn
from bot.wording import coach_help
from storage.records.people import Person


def show(turn: Turn, person: Person, commands: Sequence[tuple[str, str]]) -> None:
    """Send the list of commands and set it as the menu of the chat."""
    tongue = turn.tongue(person)
    say = coach_help.help_text if person.is_coach else coach_help.owner_help
    turn.say(person, say(tongue, commands))
    turn.set_menu(person, commands)
