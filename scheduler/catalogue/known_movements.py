"""Movements by key: those in force can be gone through, those of before can still be looked up."""

from collections.abc import Iterable, Iterator, Mapping

from scheduler.catalogue.values import Movement


class KnownMovements(Mapping[str, Movement]):
    """A mapping that holds what is in force, and knows what was.

    Whoever goes through it sees what may be planned. Whoever asks by key also finds a movement
    that was removed since: sessions of the past, and today's, still name it.
    """

    def __init__(self, in_force: Mapping[str, Movement], known: Iterable[Movement]) -> None:
        """Keep both; of two that were known by one key the later one counts."""
        self._in_force = dict(in_force)
        self._known = {movement.key: movement for movement in known} | self._in_force

    def is_in_force(self, key: str) -> bool:
        """Tell whether a key may be planned."""
        return key in self._in_force

    def __getitem__(self, key: str) -> Movement:
        """Return a movement, removed ones included."""
        return self._known[key]

    def __contains__(self, key: object) -> bool:
        """Tell whether a key can be looked up."""
        return key in self._known

    def __iter__(self) -> Iterator[str]:
        """Go through what is in force."""
        return iter(self._in_force)

    def __len__(self) -> int:
        """Count what is in force."""
        return len(self._in_force)
