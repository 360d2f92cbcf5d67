"""Movements by their names: the library's own, else the key's words."""

from scheduler.catalogue.library import default_library


def movement_name(key: str) -> str:
    """Return the name of a movement as the library has it, else its key in words."""
    movement = default_library().movements.get(key)
    return movement.name if movement is not None else key.replace("_", " ")


def name_within(key: str) -> str:
    """Return the name as it stands within a sentence: small, but for a letter that is a shape."""
    name = movement_name(key)
    is_word = name[1:2].islower()
    return name[:1].lower() + name[1:] if is_word else name
