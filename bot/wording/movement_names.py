"""Movements by their names in the reader's language: the library's own, else the key's words."""

from bot.wording.catalogue.spoken import ALSO_CALLED
from bot.wording.tongue import Tongue
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Movement


def name_of(tongue: Tongue, movement: Movement) -> str:
    """Name a movement; one that the catalogue does not have keeps the name of its library."""
    return tongue.translated(movement.name)


def how_to(tongue: Tongue, movement: Movement) -> str:
    """Explain a movement; the text of a changed library is said as it is written there."""
    return tongue.translated(movement.how_to)


def common_fault(tongue: Tongue, movement: Movement) -> str:
    """Say what is often seen in a movement."""
    return tongue.translated(movement.common_fault)


def names_to_read(tongue: Tongue, movement: Movement) -> tuple[str, ...]:
    """Return every name that an athlete may write, the one that was sent first."""
    others = tongue.translations.pgettext(ALSO_CALLED, movement.name)
    own = [one.strip() for one in others.split(",")] if others != movement.name else []
    found = (name_of(tongue, movement), *own, movement.name, *movement.aliases)
    return tuple(dict.fromkeys(found))


def movement_name(tongue: Tongue, key: str) -> str:
    """Return the name of a movement as the library has it, else its key in words."""
    movement = default_library().movements.get(key)
    return name_of(tongue, movement) if movement is not None else key.replace("_", " ")


def name_within(tongue: Tongue, key: str) -> str:
    """Return the name as it stands within a sentence: small, but for a letter that is a shape."""
    name = movement_name(tongue, key)
    is_word = name[1:2].islower()
    return name[:1].lower() + name[1:] if is_word else name
