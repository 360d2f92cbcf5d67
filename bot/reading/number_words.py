"""Numbers as dictation writes them, in English and Spanish."""

from collections.abc import Mapping, Sequence

ENGLISH: Mapping[str, int] = (
    {
        word: value
        for value, word in enumerate(
            [
                "zero",
                "one",
                "two",
                "three",
                "four",
                "five",
                "six",
                "seven",
                "eight",
                "nine",
                "ten",
                "eleven",
                "twelve",
                "thirteen",
                "fourteen",
                "fifteen",
                "sixteen",
                "seventeen",
                "eighteen",
                "nineteen",
            ]
        )
    }
    | {
        word: 10 * tens
        for tens, word in enumerate(
            ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], start=2
        )
    }
    | {"fourty": 40}
)
SPANISH: Mapping[str, int] = (
    {
        word: value
        for value, word in enumerate(
            [
                "cero",
                "uno",
                "dos",
                "tres",
                "cuatro",
                "cinco",
                "seis",
                "siete",
                "ocho",
                "nueve",
                "diez",
                "once",
                "doce",
                "trece",
                "catorce",
                "quince",
                "dieciseis",
                "diecisiete",
                "dieciocho",
                "diecinueve",
                "veinte",
                "veintiuno",
                "veintidos",
                "veintitres",
                "veinticuatro",
                "veinticinco",
                "veintiseis",
                "veintisiete",
                "veintiocho",
                "veintinueve",
            ]
        )
    }
    | {
        word: 10 * tens
        for tens, word in enumerate(
            ["treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa"],
            start=3,
        )
    }
    | {"una": 1, "un": 1, "cien": 100}
)
ONLY_IN_SPANISH = frozenset({"once", "un", "una", "uno"})
"""Words that mean something else to an English speaker."""


def number_at(words: Sequence[str], language: str) -> tuple[int, int] | None:
    """Return (value, words used) of the number that ``words`` begin with, or None."""
    head = words[0]
    if head in ENGLISH:
        return _english(words)
    if head in SPANISH and (language == "es" or head not in ONLY_IN_SPANISH):
        return _spanish(words)
    if head == "hundred":
        return _hundred(words, used=1)
    return None


def _english(words: Sequence[str]) -> tuple[int, int]:
    value = ENGLISH[words[0]]
    after = words[1] if len(words) > 1 else ""
    if value >= 20 and 1 <= ENGLISH.get(after, 0) <= 9:
        return value + ENGLISH[after], 2
    if value == 1 and after == "hundred":
        return _hundred(words, used=2)
    return value, 1


def _hundred(words: Sequence[str], *, used: int) -> tuple[int, int]:
    """Read what follows "hundred": "and" and a number, or a number."""
    rest = used + 1 if len(words) > used and words[used] == "and" else used
    if len(words) > rest and words[rest] in ENGLISH:
        value, more = _english(words[rest:])
        return 100 + value, rest + more
    return 100, used


def _spanish(words: Sequence[str]) -> tuple[int, int]:
    value = SPANISH[words[0]]
    if 30 <= value <= 90 and len(words) > 2 and words[1] == "y":
        unit = SPANISH.get(words[2], 0)
        if 1 <= unit <= 9:
            return value + unit, 3
    return value, 1
