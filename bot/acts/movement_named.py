"""Which movements a part of a name may mean."""

from collections.abc import Iterable

from bot.acts.find_athlete import folded
from scheduler.catalogue.values import Movement

CHOICES_MOST = 10  # [buttons] ch: who needs more writes more of the name


def movements_called(said: str, movements: Iterable[Movement]) -> tuple[Movement, ...]:
    """Return the movement of that name, else those whose name or alias holds every word said."""
    wanted = folded(said)
    listed = sorted(movements, key=lambda one: one.name)
    exact = tuple(one for one in listed if wanted in map(folded, (one.name, *one.aliases)))
    if exact:
        return exact
    words = wanted.split()
    found = (
        one
        for one in listed
        if words and any(_holds(folded(name), words) for name in (one.name, *one.aliases))
    )
    return tuple(found)[:CHOICES_MOST]


def _holds(name: str, words: list[str]) -> bool:
    return all(word in name for word in words)
