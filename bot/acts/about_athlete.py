"""The two ways into a coach's act about one athlete: its command, and a button that goes on."""

from collections.abc import Callable, Mapping
from functools import wraps
from typing import Any, NamedTuple

from bot.acts import find_athlete
from bot.acts.find_athlete import Named
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from storage.records.people import Person

Arguments = Mapping[str, Any]
AthleteAct = Callable[[Turn, Person, Named], Outcome]
TapAct = Callable[[Turn, Person, Arguments, Tapped], Outcome]
TapAboutAthlete = Callable[[Turn, Person, Named, Arguments, Tapped], Outcome]


class Entries(NamedTuple):
    """What a desk's tables hold of one act."""

    command: Callable[[Turn, Person, str, Wrote], Outcome]
    picked: TapAct


def entries(do: AthleteAct, *, act: str, example: str, has_rest: bool = True) -> Entries:
    """Return the command of an act about one athlete, and the tap ``act`` that goes on with it.

    Nobody or several of that name are answered here, before the act; ``example`` says what to
    send, ``has_rest`` that words after the name belong to the command.
    """

    def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
        found = find_athlete.named(turn, coach, text, act=act, example=example, has_rest=has_rest)
        return found if isinstance(found, Outcome) else do(turn, coach, found)

    def picked(turn: Turn, coach: Person, arguments: Arguments, _event: Tapped) -> Outcome:
        found = find_athlete.tapped(turn, coach, arguments)
        return found if isinstance(found, Outcome) else do(turn, coach, found)

    return Entries(command=command, picked=picked)


def about_tapped(do: TapAboutAthlete) -> TapAct:
    """Find whom a button is about before the act; a coach who lost the athlete is told so."""

    @wraps(do)
    def act(turn: Turn, coach: Person, arguments: Arguments, event: Tapped) -> Outcome:
        found = find_athlete.tapped(turn, coach, arguments)
        return found if isinstance(found, Outcome) else do(turn, coach, found, arguments, event)

    return act
