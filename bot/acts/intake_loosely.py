"""How people really write a figure: number words, halves, "about", "I think" around it."""

import re

from bot.acts.intake_answers import bare
from bot.reading.number_words import number_at
from bot.reading.spanish_answers import in_english

ABOUT = re.compile(
    r"\b(?:about|around|approx|approximately|aprox|aproximadamente|roughly|circa|more or less"
    r"|mas o menos|o asi|o por ahi|creo q|como|alrededor de|cerca de|casi|nearly|almost"
    r"|unos|unas|sobre|or so|i think|i guess"
    r"|creo que|creo|probably|probablemente|currently|actualmente|ahora mismo|ahora|right now|now"
    r"|please|por favor|pues|bueno|well|hm+|uh+|eh|ok|so|just|solo|only)\b|~"
)
"""Words that leave a figure what it is."""
ONCE = re.compile(r"\bonce(?= (?:kilos?|kgs?|dias|semanas|meses|anos|de la|y)\b)")
SINCE = re.compile(
    r"\b(?:que|q|desde que) (?:no entreno|no hago|no toco|entreno)"
    r"(?: nada| una barra| el tren superior)?$"
)
"""What only says again what the question asked: "hace 2 semanas que no entreno"."""
HALF_BEHIND = re.compile(r"\b(?:y|con) medi[oa]\b")
HYPHEN = re.compile(r"(?<=[a-z])-(?=[a-z])")
POINT = re.compile(r"(?<=\d) (?:point|punto|coma|comma) (?=\d)")
APOSTROPHE = re.compile(r"(?<=\d)'(?=\d)")


def loosely(text: str) -> str:
    """Return an answer in plain English words and digits, without what only hedges."""
    said = HALF_BEHIND.sub("and a half", SINCE.sub("", with_digits(text)))
    said = APOSTROPHE.sub(".", POINT.sub(".", said))
    return " ".join(ABOUT.sub(" ", in_english(" ".join(ABOUT.sub(" ", said).split()))).split())


def with_digits(text: str) -> str:
    """Return a message tidied, with its number words in digits: "fifty-eight" is 58."""
    words = ONCE.sub("11", HYPHEN.sub(" ", bare(text))).split()
    found: list[str] = []
    at = 0
    while at < len(words):
        word = words[at].rstrip(",")
        number = number_at([word, *words[at + 1 :]], "en")
        if number is None:
            found.append(words[at])
            at += 1
            continue
        value, used = number
        comma = "," if words[at + used - 1].endswith(",") else ""
        found.append(f"{value}{comma}")
        at += used
    return re.sub(r"\ba (?=1\d\d\b)", "", " ".join(found))
