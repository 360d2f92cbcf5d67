"""Which movement of the library a coach means, by its name, an alias or a part of the name."""

from bot.turn import Turn
from scheduler.catalogue.names import folded
from scheduler.catalogue.values import Movement

CHOICES_MOST = 8  # [buttons] ch: who needs more has to write more of the name


def movements_named(turn: Turn, text: str) -> tuple[Movement, ...]:
    """Return what a text names: exactly, else every movement with all its words in the name."""
    library = turn.house.library
    exact = library.named(text)
    if exact:
        return exact
    words = [word for word in map(folded, text.split()) if word]
    if not words:
        return ()
    return tuple(
        movement
        for movement in library.movements.values()
        if all(word in folded(movement.name) for word in words)
    )[:CHOICES_MOST]
