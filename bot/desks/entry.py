"""One entry of a desk's tables: what leads to which act, and who may."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording.tongue import Template
from storage.records.people import Person, Role

CommandAct = Callable[[Turn, Person, str, Wrote], Outcome]
TapAct = Callable[[Turn, Person, Mapping[str, Any], Tapped], Outcome]


@dataclass(frozen=True)
class Command:
    """A command: its name, what the menu says of it, and the act; text after it is handed on.

    ``also``: other names, the Spanish one first, without accents.
    """

    name: str
    about: Template
    act: CommandAct
    is_in_menu: bool = True
    also: tuple[str, ...] = ()


@dataclass(frozen=True)
class TapEntry:
    """A button's act, and the role that its person must still have when it is tapped.

    ``is_once``: what it does is done by the first tap; another tap, however late, is told so.
    """

    role: Role
    act: TapAct
    is_once: bool = False


def has_role(person: Person, role: Role, *, is_athlete: bool) -> bool:
    """Tell whether the person has the role now; a button outlives a role."""
    return {
        Role.OWNER: person.is_owner,
        Role.COACH: person.is_coach,
        Role.ATHLETE: is_athlete,
    }[role]
