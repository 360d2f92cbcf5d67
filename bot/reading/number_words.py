"""Numbers as dictation writes them, in five languages."""

from collections.abc import Mapping, Sequence

from bot.reading import words_de, words_fr, words_pt

_EN_SMALL_WORDS = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen "
    "fourteen fifteen sixteen seventeen eighteen nineteen"
)
_EN_SMALL = _EN_SMALL_WORDS.split()
_EN_TENS_WORDS = "twenty thirty forty fifty sixty seventy eighty ninety"
_EN_TENS = _EN_TENS_WORDS.split()
_EN_ODD = {
    "fourty": 40,
    "fourteeen": 14,
    "fivty": 50,
    "thirthy": 30,
    "ninty": 90,
    "eigth": 8,
    "eigt": 8,
    "eigh": 8,
    "sevn": 7,
    "fiften": 15,
    "tweny": 20,
    "twelv": 12,
    "dozen": 12,
}
ENGLISH: Mapping[str, int] = (
    {word: value for value, word in enumerate(_EN_SMALL)}
    | {word: 10 * tens for tens, word in enumerate(_EN_TENS, start=2)}
    | {
        f"{ten}{one}": 10 * tens + ones
        for tens, ten in enumerate(_EN_TENS, start=2)
        for ones, one in enumerate(_EN_SMALL)
        if 1 <= ones <= 9
    }
    | _EN_ODD
)
PLURALS: Mapping[str, int] = {
    word: value
    for value, words in {
        3: "threes",
        4: "fours",
        5: "fives",
        6: "sixes",
        7: "sevens",
        8: "eights",
        9: "nines",
        10: "tens",
        11: "elevens",
        12: "twelves",
        15: "fifteens",
    }.items()
    for word in words.split()
}
"""A value in several sets: "two eights and a seven"."""
_ES_SMALL_WORDS = (
    "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece "
    "catorce quince dieciseis diecisiete dieciocho diecinueve veinte veintiuno "
    "veintidos veintitres veinticuatro veinticinco veintiseis veintisiete veintiocho "
    "veintinueve"
)
_ES_SMALL = _ES_SMALL_WORDS.split()
_ES_TENS_WORDS = "treinta cuarenta cincuenta sesenta setenta ochenta noventa"
_ES_TENS = _ES_TENS_WORDS.split()
SPANISH: Mapping[str, int] = (
    {word: value for value, word in enumerate(_ES_SMALL)}
    | {word: 10 * tens for tens, word in enumerate(_ES_TENS, start=3)}
    | {
        f"{ten}{joint}{one}": 10 * tens + ones
        for tens, ten in enumerate(_ES_TENS, start=3)
        for ones, one in enumerate(_ES_SMALL)
        if 1 <= ones <= 9
        for joint in ("i", "y")
    }
    | {"una": 1, "un": 1, "cien": 100, "ciento": 100, "docena": 12, "sinco": 5, "dies": 10}
)
ONLY_IN_SPANISH = frozenset({"once", "un", "una", "uno", "dies", "docena"})
"""Words that mean something else to an English speaker."""
ONE = frozenset({"one", "un", "una", "uno", "um", "uma", "ein", "eine", "une"})
"""Words for one that are articles or pronouns at most places."""


def number_at(words: Sequence[str], language: str) -> tuple[int, int] | None:
    """Return (value, words used) of the number that ``words`` begin with, or None."""
    head = words[0]
    foreign = FOREIGN.get(language)
    if foreign is not None and head in foreign[0]:
        return _foreign(words, *foreign)
    if head in ENGLISH:
        return _english(words)
    is_spanish = head in SPANISH and (language == "es" or head not in ONLY_IN_SPANISH)
    if is_spanish and language not in FOREIGN:
        return _spanish(words)
    if head == "hundred":
        return _hundred(words, used=1)
    return None


def _english(words: Sequence[str]) -> tuple[int, int]:
    value = ENGLISH[words[0]]
    after = words[1] if len(words) > 1 else ""
    if 20 <= value <= 90 and value % 10 == 0 and 1 <= ENGLISH.get(after, 0) <= 9:
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
    if words[0] == "ciento" and len(words) > 1 and words[1] in SPANISH:
        rest, used = _spanish(words[1:])
        return 100 + rest, used + 1
    return _joined(words, value, SPANISH, "y") if 30 <= value <= 90 else (value, 1)


def _joined(
    words: Sequence[str], tens: int, numbers: Mapping[str, int], joint: str
) -> tuple[int, int]:
    """Read "cuarenta y cinco": tens, the word between, ones."""
    if tens % 10 == 0 and len(words) > 2 and words[1] == joint:
        ones = numbers.get(words[2], 0)
        if 1 <= ones <= 9:
            return tens + ones, 3
    return tens, 1


def _foreign(words: Sequence[str], numbers: Mapping[str, int], joint: str) -> tuple[int, int]:
    value = numbers[words[0]]
    if numbers is words_fr.NUMBERS:
        return _french(words)
    if numbers is words_de.NUMBERS:
        return _german(words, value)
    return _joined(words, value, numbers, joint) if 20 <= value <= 90 else (value, 1)


def _german(words: Sequence[str], value: int) -> tuple[int, int]:
    """Read "fünf und vierzig" in three words; in one it is in the table."""
    if 1 <= value <= 9 and len(words) > 2 and words[1] == "und":
        tens = words_de.NUMBERS.get(words[2], 0)
        if 20 <= tens <= 90 and tens % 10 == 0:
            return tens + value, 3
    return value, 1


def _french(words: Sequence[str]) -> tuple[int, int]:
    """Read "quarante-cinq", "vingt et un", "soixante-dix", "quatre-vingt-dix-huit"."""
    numbers, used = words_fr.NUMBERS, 1
    value = numbers[words[0]]
    if value == 4 and len(words) > 1 and words[1] in {"vingt", "vingts"}:
        value, used = 80, 2
    if value < 20 and value != 10:
        return value, used
    rest = list(words[used:])
    skip = 1 if rest[:1] == ["et"] and rest[1:2] in (["un"], ["une"], ["onze"]) else 0
    more = numbers.get(rest[skip], 0) if len(rest) > skip else 0
    if value == 10:
        return (10 + more, used + 1) if 7 <= more <= 9 and not skip else (value, used)
    most = 19 if value in {60, 80} else 9
    if not 1 <= more <= most or value >= 100:
        return value, used
    used += skip + 1
    tail = numbers.get(words[used], 0) if len(words) > used else 0
    if more == 10 and 7 <= tail <= 9:
        return value + 10 + tail, used + 1
    return value + more, used


FOREIGN: Mapping[str, tuple[Mapping[str, int], str]] = {
    "pt": (words_pt.NUMBERS, words_pt.JOINT),
    "de": (words_de.NUMBERS, words_de.JOINT),
    "fr": (words_fr.NUMBERS, words_fr.JOINT),
}
