"""Which item a run of words names: in full, by a part, or with a slip of the thumb."""

import itertools
from collections.abc import Mapping, Sequence

from bot.reading.known import KnownItem
from bot.reading.script import plain
from bot.reading.vocabulary import words_with_meaning

LONGEST_NAME = 5  # [words] CH
SHORTEST_START = 3  # [letters] CH: a shorter beginning may be a word of its own
SHORTEST_SLIP = 4  # [letters] CH: shorter words have too many neighbours
TWO_SLIPS_FROM = 8  # [letters] CH
NAMING = frozenset(
    {"hang", "row", "press", "carry", "reach", "band", "pull", "push", "wall", "remo"}
)
"""Words of names that stay parts of a name, whatever else they mean."""
BETWEEN = frozenset(
    {
        *("a", "al", "con", "de", "del", "el", "en", "entre", "hacia", "la", "las", "lo", "los"),
        *("para", "por", "se", "sin", "sobre", "su", "tras", "un", "una", "y"),
    }
)
"""Small Spanish words that stand in many names and name nothing."""
NOT_A_PART = (
    words_with_meaning()
    | BETWEEN
    | {"brazo", "mano", "manos", "brazos", "arriba", "abajo", "aguante"}
    | {"hold", "held", "holds", "up", "down", "hand", "handed", "armed", "arm", "blade"}
) - NAMING
"""Words that name no item by themselves: they mean something else in a reply."""


def stem(word: str) -> str:
    """Return the word without a plural ending."""
    word = word.removesuffix("'s").replace("'", "")
    if word.endswith("ies") and len(word) > 4:
        return word[:-3] + "y"
    if word.endswith("es") and word[-3:-2] in {"s", "h", "x"} and len(word) > 4:
        return word[:-2]
    return word[:-1] if word.endswith("s") and not word.endswith("ss") and len(word) > 2 else word


class NameIndex:
    """Every part of every name, and which items it may stand for."""

    def __init__(self, items: Sequence[KnownItem]) -> None:
        """Index the names of ``items``; a full name or alias goes before a part."""
        self._full: dict[str, set[str]] = {}
        self._part: dict[str, set[str]] = {}
        self._words: dict[str, set[str]] = {}
        self._pairs: list[tuple[str, tuple[str, str]]] = []
        for item in items:
            for name in item.names:
                self._add(name, item.ref)

    def _add(self, name: str, ref: str) -> None:
        words = [stem(word) for word in name_words(name)]
        self._full.setdefault("".join(words), set()).add(ref)
        self._words.setdefault(ref, set()).update(words)
        self._pairs += [(ref, pair) for pair in itertools.pairwise(words)]
        for start in range(len(words)):
            for end in range(start + 1, len(words) + 1):
                if not all(_means_something_else(word) for word in words[start:end]):
                    self._part.setdefault("".join(words[start:end]), set()).add(ref)

    def at(self, words: Sequence[str]) -> tuple[frozenset[str], int, bool] | None:
        """Return (items, words used, whether a slip was mended) of the name that comes first."""
        for used in range(min(LONGEST_NAME, len(words)), 0, -1):
            key = "".join(stem(word) for word in words[:used])
            refs = self._full.get(key) or self._part.get(key)
            if refs:
                return frozenset(refs), used, False
        shortened = self._shortened(words)
        return (shortened, 2, True) if shortened else self._slip(words)

    def goes_on(self, refs: frozenset[str], word: str) -> bool:
        """Tell whether a word is one of the words of every item's name: "wrist" behind "curl"."""
        return bool(refs) and all(stem(word) in self._words.get(ref, ()) for ref in refs)

    def _shortened(self, words: Sequence[str]) -> frozenset[str]:
        """Return the items that two words in a row shorten: "inv row" for "inverted row"."""
        if len(words) < 2 or len(words[0]) < SHORTEST_START or _means_something_else(words[0]):
            return frozenset()
        first, second = words[0], stem(words[1])
        return frozenset(
            ref
            for ref, pair in self._pairs
            if pair[0].startswith(first) and pair[1] == second and pair[0] != first
        )

    def _slip(self, words: Sequence[str]) -> tuple[frozenset[str], int, bool] | None:
        for used in (2, 1):
            head = words[:used]
            if len(head) < used or any(_means_something_else(word) for word in head):
                continue
            for typed in ("".join(stem(word) for word in head), "".join(head)):
                refs = self._near(typed)
                if refs:
                    return refs, used, True
        return None

    def _near(self, typed: str) -> frozenset[str]:
        """Return the items with a name, or part of one, within one or two slips of ``typed``."""
        if len(typed) < SHORTEST_SLIP:
            return frozenset()
        allowed = 2 if len(typed) >= TWO_SLIPS_FROM else 1
        tables: tuple[Mapping[str, set[str]], ...] = (self._full, self._part)
        for table in tables:
            near = [
                refs
                for key, refs in table.items()
                if len(key) >= SHORTEST_SLIP
                and key[0] == typed[0]
                and slips(typed, key, at_most=allowed) <= allowed
            ]
            if near:
                return frozenset[str]().union(*near)
        return frozenset()


def _means_something_else(word: str) -> bool:
    return word in NOT_A_PART or stem(word) in NOT_A_PART


def name_words(name: str) -> list[str]:
    """Return the words of a name as the reader sees them."""
    return [word for word in plain(name).replace("-", " ").split() if word]


def slips(typed: str, meant: str, *, at_most: int) -> int:
    """Count letters left out, added, changed or swapped with a neighbour, up to ``at_most`` + 1."""
    if abs(len(typed) - len(meant)) > at_most:
        return at_most + 1
    before: list[int] = []
    above = list(range(len(meant) + 1))
    for i, letter in enumerate(typed, start=1):
        row = [i]
        for j, other in enumerate(meant, start=1):
            cost = min(above[j] + 1, row[j - 1] + 1, above[j - 1] + (letter != other))
            if i > 1 and j > 1 and letter == meant[j - 2] and typed[i - 2] == other:
                cost = min(cost, before[j - 2] + 1)
            row.append(cost)
        if min(row) > at_most:
            return at_most + 1
        before, above = above, row
    return above[-1]
