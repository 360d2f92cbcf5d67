"""A token: a piece of a reply with its meaning."""

from dataclasses import dataclass

from bot.reading.lexemes import Choices
from bot.reading.words import Mark
from scheduler.pain.values import Site


@dataclass(frozen=True, slots=True)
class Token:
    """What a piece of the text means.

    ``choices`` are the numbers a figure may stand for, ``unit`` what was written behind it,
    ``n`` which set, how many sets, or which item number; ``refs`` the items a name may mean.
    """

    mark: Mark
    text: str
    choices: Choices = ()
    unit: Mark | None = None
    n: int = 0
    refs: frozenset[str] = frozenset()
    sites: tuple[Site, ...] = ()
    is_glued: bool = False
    is_mended: bool = False

    @property
    def value(self) -> float:
        """The likelier number of a figure; the first of a list."""
        return self.choices[0][0]

    @property
    def is_bare(self) -> bool:
        """True for one plain number without a unit."""
        return self.mark is Mark.NUMBER and self.unit is None and len(self.choices[0]) == 1
