"""Long texts in pieces that the platform takes, never cut inside a line."""

from collections.abc import Callable, Sequence
from typing import TypeVar

PAGE_UNITS = 4096  # [UTF-16 units] botapi: sendMessage, text after entities are read
PAGE_LINES = 60  # [lines] ch: more is not read on a phone, and 100 buttons are the most allowed

LineT = TypeVar("LineT")


def utf16_units(text: str) -> int:
    """Count a text as the platform does [UTF-16 units]."""
    return len(text.encode("utf-16-le")) // 2


def shortened(text: str, most: int) -> str:
    """Cut a text to ``most`` [UTF-16 units], at a word where one ends near, with an ellipsis."""
    flat = " ".join(text.split())
    if utf16_units(flat) <= most:
        return flat
    kept = flat.encode("utf-16-le")[: 2 * (most - 1)].decode("utf-16-le", errors="ignore")
    at = kept.rfind(" ")
    if flat[len(kept)] != " " and at > len(kept) // 2:
        kept = kept[:at]
    return f"{kept.rstrip(' ,;:')}…"


def paged(
    lines: Sequence[LineT],
    *,
    text_of: Callable[[LineT], str],
    units_most: int = PAGE_UNITS,
    lines_most: int = PAGE_LINES,
) -> tuple[tuple[LineT, ...], ...]:
    """Group lines into pages that hold at most so many UTF-16 units and lines each."""
    pages: list[list[LineT]] = [[]]
    units = 0
    for line in lines:
        cost = utf16_units(text_of(line)) + 1
        if pages[-1] and (units + cost > units_most or len(pages[-1]) >= lines_most):
            pages.append([])
            units = 0
        pages[-1].append(line)
        units += cost
    return tuple(tuple(page) for page in pages if page)


def pages_of(lines: Sequence[str], *, lines_most: int = PAGE_LINES) -> tuple[str, ...]:
    """Join lines into as few messages as the platform's limit allows."""
    return tuple("\n".join(page) for page in paged(lines, text_of=str, lines_most=lines_most))


def pieces_of(text: str, *, most: int) -> tuple[str, ...]:
    """Cut a person's own text into pieces of at most ``most`` [UTF-16 units], at spaces.

    Nothing but the space at a cut is lost; a word longer than a piece is cut inside.
    """
    pieces: list[str] = []
    rest = text.strip()
    while utf16_units(rest) > most:
        head = rest.encode("utf-16-le")[: 2 * most].decode("utf-16-le", errors="ignore")
        cut = max(head.rfind("\n"), head.rfind(" "))
        head = head[:cut] if cut > 0 else head
        pieces.append(head.rstrip())
        rest = rest[len(head) :].strip()
    return (*pieces, rest)
