"""Answers that are lists: training days, what is owned, numbered topics."""

import re
from collections.abc import Iterable, Mapping
from difflib import get_close_matches

from bot.acts.intake_answers import (
    NONE_WORDS,
    Answer,
    Heard,
    Partly,
    Reader,
    Unclear,
    Why,
    tidy,
)
from bot.acts.intake_loosely import with_digits
from bot.reading.days import WEEKDAYS

WEEKDAYS_MOST = 5  # [days a week] ch: the least is one
WORKDAYS, WEEKEND = frozenset(range(5)), frozenset({5, 6})
DAY_SETS = {
    **dict.fromkeys(("weekdays", "week days", "workdays", "working days", "entre semana",
                     "entre week",
                     "dias laborables", "days laborables"), WORKDAYS),
    **dict.fromkeys(("weekend", "weekends", "fin de semana", "fines de semana", "finde", "findes",
                     "fin de week", "fines de week"), WEEKEND),
}  # fmt: skip
ENGLISH_LETTERS, SPANISH_LETTERS = (
    {"m": 0, "w": 2, "f": 4},
    {
        "l": 0,
        "m": 1,
        "x": 2,
        "j": 3,
        "v": 4,
        "s": 5,
        "d": 6,
    },
)
DAY_NEAR = 0.8  # [ratio] ch: "wensday", "thrusday"
DAY_LETTERS_LEAST = 5  # [letters] ch: shorter words are near too many
NAME_NEAR = 0.8  # [ratio] ch: "ketlebells", "mancuenras"
NAME_LETTERS_LEAST = 5  # [letters] ch
DAY_PASSED_OVER = frozenset(
    """and y on los las el la de i can could train usually normally mostly every each day days only
    solo just the in en por evening evenings morning mornings afternoon afternoons manana mananas
    tarde tardes noche noches after work puedo podria entreno suelo entrenar would are is good best
    for me work works fine please normalmente todos cada am pm""".split()  # noqa: SIM905 (a text)
)
WORD = re.compile(r"[a-z]+(?:'s)?")
RANGE = re.compile(
    r"(?:from |de )?([a-z]+)\s*(?:\bto\b|\bthrough\b|\bthru\b|\bhasta\b|\ba\b|-)\s*([a-z]+)"
)
DASH = re.compile(r"([a-z]+)\s*-\s*([a-z]+)")

NOT_OWNED = re.compile(
    r"\b(?:no|not|without|sin|ni|but|pero|except|excepto|menos|nor|want|buy|comprar|maybe|quizas?"
    r"|soon|pronto|used to|broken|rota|roto|don't|dont|tampoco)\b"
)
"""Words after which something may well not be there."""
LEADING = re.compile(
    r"^(?:an?|some|my|the|un|una|unas|unos|mis|mi|las|los|el|la|i have|i've got|ive got|i own|got"
    r"|there is|there are|hay|tengo|also|and|y|only|solo|tambien|just|old|small|big|sturdy|few|old"
    r"|pair of|par de|pairs of|set of|sets of|juego de|juegos de|couple of|de|of|with|con|\d+)\b\s*"
)
QUALIFYING = re.compile(
    r"\b(?:at home|at the gym|in the gym|en casa|en el gimnasio|en el gym|at work|door|doorway"
    r"|de puerta|de la puerta|adjustable|ajustables?|regulables?|olympic|flat|plano|incline|wooden"
    r"|resistance|elastic|rubber|gym|gymnastics?|long|loop|ones|one|different|de resistencia"
    r"|diferentes|up|from|de|to|a|hasta|each|cada una|cada uno|kgs?|kilos?|lbs?|pounds?|libras?"
    r"|in steps|weighing)\b|\d+(?:[.,]\d+)?\s*(?:kgs?|kilos?|lbs?|k)?\b|[-()+:]"
)
"""What says more of a thing without making it another: its place, make and weights."""


def weekdays(text: str) -> Answer:
    """Read training days, Monday = 0: "mon wed fri", "monday to friday", "L X V"."""
    said = tidy(text)
    if re.search(r"\d|\?", said):
        return Unclear(Why.WEEKDAYS)
    for name, days in DAY_SETS.items():
        if re.fullmatch(rf"(?:on |only |solo |los |the )*{name}(?: only)?", said):
            return _few(days)
    if said in {"every day", "all days", "daily", "everyday", "todos los dias", "cada dia",
                "todos los days", "cada day"}:  # fmt: skip
        return Unclear(Why.WEEKDAYS_MANY)
    letters = _of_letters(said)
    if letters is not None:
        return _few(letters) if letters else Unclear(Why.WEEKDAYS)
    return _of_names(said)


def _of_names(said: str) -> Answer:
    days: set[int] = set()
    if len(DASH.findall(said)) and len(re.findall("-", said)) > 1:
        said = said.replace("-", " ")  # mon-wed-fri: a list
    for first, last in RANGE.findall(said):
        start, end = _weekday(first), _weekday(last)
        if start is None or end is None:
            continue
        is_dash = DASH.search(said) is not None and (end - start) % 7 > 1
        if is_dash and (start, end) != (0, 4):
            return Unclear(Why.WEEKDAYS_DASH)
        days |= {(start + step) % 7 for step in range((end - start) % 7 + 1)}
        said = re.sub(rf"\b{first}\b.*?\b{last}\b", " ", said, count=1)
    for word in WORD.findall(said):
        day = _weekday(word)
        if day is not None:
            days.add(day)
        elif word not in DAY_PASSED_OVER and word not in {"to", "a", "from", "hasta"}:
            return Unclear(Why.WEEKDAYS)
    return _few(days) if days else Unclear(Why.WEEKDAYS)


def _few(days: Iterable[int]) -> Answer:
    found = sorted(days)
    return Heard(found) if len(found) <= WEEKDAYS_MOST else Unclear(Why.WEEKDAYS_MANY)


def _of_letters(said: str) -> set[int] | None:
    """Read days by their letters: "m w f", "L X V"; empty where both languages are possible."""
    letters = re.findall(r"[a-z]+", said.replace(" and ", " "))
    if letters in (["mwf"], ["lxv"], ["mj"], ["lmxjv"]):
        letters = list(letters[0])
    if not letters or any(len(one) > 1 for one in letters):
        return None
    seen = set(letters)
    is_spanish = seen <= SPANISH_LETTERS.keys() and seen & {"l", "x", "j", "v"}
    is_english = seen <= ENGLISH_LETTERS.keys() and seen & {"w", "f"}
    table = SPANISH_LETTERS if is_spanish else ENGLISH_LETTERS if is_english else {}
    return {table[one] for one in seen} if table else set()


def _weekday(word: str) -> int | None:
    """Return the weekday that a word is, begins, or is a slip of; None where it may be another."""
    if word in WEEKDAYS:
        return WEEKDAYS[word]
    meant = {day for name, day in WEEKDAYS.items() if len(word) > 1 and name.startswith(word)}
    if meant or len(word) < DAY_LETTERS_LEAST:
        return meant.pop() if len(meant) == 1 else None
    near = get_close_matches(word, WEEKDAYS, n=3, cutoff=DAY_NEAR)
    days = list(dict.fromkeys(WEEKDAYS[name] for name in near))
    return days[0] if len(days) == 1 else None


def named(
    options: Mapping[str, Iterable[str]], *, unknown: Why, open_words: Iterable[str] = ()
) -> Reader:
    """Return a reader of several answers, named one after another with commas or "and".

    Weights and places beside a name are passed over. What is not known, may be two things, or
    stands beside a "no" is never left out silently: then what was understood is shown for a look.
    """
    names = {name: value for value, known in options.items() for name in known}

    def read(text: str) -> Answer:
        said = tidy(text)
        if said in NONE_WORDS or said in NO_THINGS:
            return Heard([])
        parts = [part.strip() for part in PARTS.split(with_digits(text)) if part.strip()]
        found = [_named_by(tidy(part), names) for part in parts]
        known = [value for value in options if value in found]
        unsure = [part for part, one in zip(parts, found, strict=True) if one is None]
        is_open = any(word in part.split() for part in unsure for word in open_words)
        if not known and not is_open:
            return Unclear(unknown)
        return Partly(known, tuple(unsure)) if unsure else Heard(known)

    return read


NO_THINGS = frozenset(
    {"no equipment", "none of these", "none of them", "nothing at all", "nothing like that",
     "nada de esto", "no tengo nada", "no tengo nothing", "nothing de nothing", "sin nada"}
)  # fmt: skip
PARTS = re.compile(r",(?!\d)|;|\+|/|&|\n|\band\b|\by\b|\be\b|\bplus\b|\bmas\b|\balso\b|\btambien\b")


def _named_by(part: str, names: Mapping[str, str]) -> str | None:
    """Return the answer that a part names, "" where it only tells weights, None if unsure."""
    if NOT_OWNED.search(part):
        return None
    if part in names:
        return names[part]
    short, before = part, ""
    while short != before:
        before, short = short, LEADING.sub("", short)
        if short in names:
            return names[short]
    core = " ".join(QUALIFYING.sub(" ", short).split())
    for one in (core, core.removesuffix("s"), f"{core}s"):
        if one in names:
            return names[one]
    return "" if not re.search(r"[a-z]", core) and re.search(r"\d", part) else None


def topics(options: Iterable[str]) -> Reader:
    """Return a reader of numbered topics: "2 and 5", "number 3", "none"."""
    listed = list(options)

    def read(text: str) -> Answer:
        said = tidy(text)
        if said in NONE_WORDS or NO_TOPIC.fullmatch(said):
            return Heard([])
        digits = tidy(with_digits(text))
        if A_RANGE.search(digits):
            return Unclear(Why.TOPICS)  # "1-3" may be two topics or three
        parts = re.findall(r"[a-z]+|\d+", digits)
        numbers = [int(part) for part in parts if part.isdigit()]
        others = [part for part in parts if not part.isdigit() and part not in BESIDE_NUMBERS]
        if not numbers or others or not all(1 <= one <= len(listed) for one in numbers):
            return Unclear(Why.TOPICS)
        return Heard([listed[one - 1] for one in sorted(set(numbers))])

    return read


BESIDE_NUMBERS = frozenset(
    """and yes to y si number numbers nr num numero numeros el la los las only just solo point
    punto puntos es son it is""".split()  # noqa: SIM905 (a text)
)
A_RANGE = re.compile(r"\d\s*(?:-|\bto\b|\ba\b|\bhasta\b)\s*\d")
NO_TOPIC = re.compile(
    r"none (?:of (?:these|them|the above|those|that)|apply|applies)"
    r"|no to all|all no|no to everything"
    r"|(?:none|ninguno|ninguna) de (?:esos|esas|estas|estos|ellas|ellos|las anteriores)"
    r"|nope none|no none|no nothing|nothing of (?:that|these)|nothing de eso|no to all of them"
    r"|no a (?:todo|todas)"
)
