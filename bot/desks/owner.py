"""The owner's desk: how the house stands."""

from bot.acts import coach_help, erase_athlete, join, move_athlete, set_stand_in, show_house
from bot.desks.entry import Command, TapEntry
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from storage.records.people import Person, Role


def _help(turn: Turn, person: Person, _text: str, _event: Wrote) -> Outcome:
    from bot.desks import front  # noqa: PLC0415  it knows all menus, and imports this desk

    menu = front.menu_of(turn, person)
    own = [one for one in menu if one[0] in COMMANDS and one[0] != "help"]
    coach_help.show(turn, person, [*own, *(one for one in menu if one not in own)])
    return Outcome.COMMAND


COMMANDS: dict[str, Command] = {
    entry.name: entry
    for entry in (
        Command("house", "who coaches whom, and what could not be sent", show_house.command),
        Command("move", "an athlete to another coach", move_athlete.command),
        Command("standin", "who stands in for a coach", set_stand_in.command),
        Command("erase", "erase an athlete who asked for it in writing", erase_athlete.command),
        Command("help", "what you can send", _help),
        Command("start", "where things stand", join.start, is_in_menu=False),
    )
}

TAPS: dict[str, TapEntry] = {
    name: TapEntry(Role.OWNER, act, is_once=name == move_athlete.MOVE)
    for name, act in {**move_athlete.TAPS, **erase_athlete.OWNER_TAPS}.items()
}
