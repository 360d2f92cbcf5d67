"""Numbers in an answer to a question about pain: every way of saying them, none of them lost."""

import re
from dataclasses import dataclass

from bot.reading.red_flag_text import shaped
from scheduler.pain.scores import counted

WORDS = {
    "zero": 0, "nothing": 0, "none": 0, "nil": 0, "cero": 0, "nada": 0,
    "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8,
    "nine": 9, "ten": 10,
    "uno": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7, "ocho": 8,
    "nueve": 9, "diez": 10,
}  # fmt: skip
NOTHING = frozenset({"nothing", "none", "nil", "nada"})
HALF = re.compile(r"(and a half|y medio|y media)")
NUMBER = re.compile(
    r"(?P<minus>(?<![\w)])-\s?)?(?P<digits>\d+(?:[.,]\d+)?)"
    r"(?P<scale>\s*(?:/|of|out of|de|sobre)\s*(?:10|ten|diez)\b)?"
    r"|\b(?P<word>"
    + "|".join(WORDS)
    + r")\b(?P<word_scale>\s*(?:/|of|out of|de|sobre)\s*(?:10|ten|diez)\b)?"
)
UNIT_BEHIND = re.compile(
    r"\s*(?:x(?![a-z])|kgs?\b|kilos?\b|lbs?\b|secs?\b|s\b|seconds?\b|min|reps?\b|sets?\b|series\b|"
    r"weeks?\b|days?\b|months?\b|years?\b|yrs?\b|hours?\b|times?\b|semanas?\b|d[ií]as?\b|meses\b|"
    r"a[nñ]os?\b|horas?\b|veces\b|am\b|pm\b|:|%)"
)
UNIT_BEFORE = re.compile(r"(?:set|sets|serie|rep|x|stage|rpe|week|day|item|no\.?|ejercicio)\s*$")
WORSE = re.compile(
    r"\b(worse|not (?:better|settled|gone|great)|still (?:there|bad|sore|hurts)|no better|peor|"
    r"no (?:mejor|se ha (?:ido|pasado|calmado))|sigue (?:igual|doliendo|ah[ií]))\b"
)


SCALED = re.compile(r"\s*-?\d+(?:[.,]\d+)?\s*(?:(?:/|-|–|to|or|a|o)\s*\d+)?\s*")
FIGURE_MOST = 20  # [of 10] ch: out of bounds is asked again; this far beyond it is no score


@dataclass(frozen=True)
class PainNumbers:
    """What counts of the numbers said [of 10], and whether it must be asked again."""

    score: int | None
    must_ask: bool
    count: int = 1


def pain_numbers(text: str, *, is_asked: bool = True) -> PainNumbers | None:
    """Return what counts of an answer, None where it holds no number on the scale or words for it.

    Every number without another unit counts, and of several the highest: painkillers, better
    moments and former days make no score lower (ch).
    """
    said = _said(text.lower().replace("’", "'"), is_asked=is_asked)
    if not said:
        return None
    score, must_ask = counted(said)
    return PainNumbers(score=score, must_ask=must_ask, count=len(said))


def says_worse(text: str) -> bool:
    """Tell whether an answer without a number says that it has not settled."""
    return WORSE.search(text.lower()) is not None


def _said(text: str, *, is_asked: bool) -> list[float]:
    found = []
    for match in NUMBER.finditer(text):
        has_scale = bool(match["scale"] or match["word_scale"])
        behind, before = text[match.end() :], text[: match.start()]
        if not has_scale and (UNIT_BEHIND.match(behind) or UNIT_BEFORE.search(before)):
            continue
        word = match["word"]
        if word and not (is_asked or has_scale or HALF.match(behind.lstrip())):
            continue  # "hurts on one side", "nothing dramatic"
        if word in NOTHING and any(one.isdigit() for one in text):
            continue  # "nothing, 0" and "nothing since the 4": the digits say it
        value = WORDS[word] if word else float(match["digits"].replace(",", "."))
        if HALF.match(behind.lstrip()):
            value += 0.5
        found.append(-value if match["minus"] else value)
    return found


def is_row_of_figures(text: str) -> bool:
    """Tell whether these are results: several figures and no word, or one beyond any scale."""
    figures = [int(one) for one in re.findall(r"\d+", text)]
    has_words = re.search(r"[^\W\d_]{2,}", text) is not None
    is_scaled = SCALED.fullmatch(text) is not None
    return (len(figures) > 1 and not has_words and not is_scaled) or any(
        one > FIGURE_MOST for one in figures
    )


def word_count(text: str) -> int:
    """Count the words of a text as the readers see it."""
    return sum(
        word.isalnum()
        for word in shaped(text, mending={}, written_out={}, stems=(), joined={}).words
    )
