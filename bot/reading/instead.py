"""Two figures of which one replaces the other: "38 not 48", "48 should be 38", "not 48 but 38"."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.tokens import Token
from bot.reading.words import Mark

CHANGING = frozenset({"change", "cambia", "cambiar", "correct", "swap", "replace"})
BEING = frozenset({"was", "were", "is", "fue", "fueron"})
INSTEAD = frozenset({"instead", "en vez de", "en lugar de", "rather"})
MOST_WORDS = 6  # [words] ch: in a longer message two figures are no swap
PASSED = frozenset(
    {
        *(Mark.FILLER, Mark.COMMA, Mark.STOP_SIGN, Mark.LINE, Mark.CHAT, Mark.ORDINAL, Mark.ITEM),
        *(Mark.YES, Mark.SET, Mark.AT, Mark.FINE),
    }
)


@dataclass(frozen=True)
class Swap:
    """Pairs of (new, old), the likelier first; ``is_plain`` when the words alone say so."""

    ways: tuple[tuple[float, float], ...]
    unit: Mark | None = None
    is_plain: bool = True


def swap_of(tokens: Sequence[Token]) -> Swap | None:
    """Return the swap that two figures say, None where they say none."""
    figures = [token for token in tokens if token.mark is Mark.NUMBER]
    if len(figures) != 2 or any(len(token.choices[-1]) != 1 for token in figures):
        return None
    if sum(token.mark is Mark.WORD for token in tokens) > MOST_WORDS:
        return None
    first, second = (token.choices[-1][0] for token in figures)
    unit = figures[0].unit or figures[1].unit
    kinds = _without_edges([kind for token in tokens if (kind := _kind(token))])
    match kinds:
        case ["n", "not", "n"] | ["n", "but", "not", "n"] | ["n", "instead", "n"]:
            return Swap(((first, second),), unit)
        case ["not", "n", "n"] | ["not", "n", ("but" | "meant" | "sorry"), "n"]:
            return Swap(((second, first),), unit)
        case ["n", "meant", "n"] | ["n", "sorry", "meant", "n"] | ["n", "meant", "not", "n"]:
            new_last = kinds[2] == "n" or kinds[1] == "sorry"
            return Swap(((second, first) if new_last else (first, second),), unit)
        case ["change", "n", "to", "n"]:
            return Swap(((second, first),), unit)
        case ["n", "being", "n"]:
            return Swap(((second, first),), unit, is_plain=False)
        case ["n", "sorry", "n"]:
            return Swap(((second, first), (first, second)), unit, is_plain=False)
    return None


def _without_edges(kinds: list[str]) -> list[str]:
    """Leave out a sorry in front and behind: it frames the swap."""
    kinds = [
        kind
        for at, kind in enumerate(kinds)
        if not (kind in {"meant", "being"} and at > 0 and kinds[at - 1] == "not")
    ]
    while kinds and kinds[0] in {"sorry", "meant", "but", "being"}:
        kinds = kinds[1:]
    while kinds and kinds[-1] in {"sorry", "meant", "being"}:
        kinds = kinds[:-1]
    return kinds


def _kind(token: Token) -> str:
    """Return what a token is to a swap, nothing where it does not count."""
    if token.mark is Mark.NUMBER:
        return "n"
    if token.text in INSTEAD:
        return "instead"
    if token.text in CHANGING:
        return "change"
    if token.mark is Mark.TIMES and token.text == "por":
        return "to"
    if token.text in BEING:
        return "being"
    kinds = {
        Mark.NOT: "not",
        Mark.MEANT: "meant",
        Mark.SORRY: "sorry",
        Mark.BUT: "but",
        Mark.OR: "to",
        Mark.WORD: "",
    }
    if token.mark in kinds:
        return kinds[token.mark]
    return "" if token.mark in PASSED else token.mark.name
