"""Which items a text names, wherever in it; nothing else of the text is read."""

from collections.abc import Sequence

from bot.reading.known import KnownItem
from bot.reading.names import LONGEST_NAME, NameIndex
from bot.reading.script import plain


def named_in(text: str, items: Sequence[KnownItem]) -> frozenset[str]:
    """Return the references of the items that a text names, the longest name at each place."""
    index = NameIndex(items)
    words = plain(text).replace(",", " ").replace(".", " ").split()
    found: frozenset[str] = frozenset()
    at = 0
    while at < len(words):
        hit = index.at(words[at : at + LONGEST_NAME])
        if hit is None:
            at += 1
            continue
        refs, used, _ = hit
        found |= refs
        at += used
    return found
