"""Figures that the intake asks for: body weight, spans of time, minutes, weights."""

import re
from dataclasses import dataclass

from bot.acts.intake_answers import (
    NONE_WORDS,
    Answer,
    Heard,
    Unclear,
    Why,
    bare,
    number_of,
    tidy,
)
from bot.acts.intake_loosely import loosely, with_digits

KG_PER_LB = 0.45359237  # [kg/lb] the international pound, exact by agreement of 1959
LB_PER_STONE = 14  # [lb/stone] the trade weight, exact
MASS_KG = (30.0, 250.0)  # [kg] ch: outside it is a slip of the thumb
MASS_BARE_KG_MOST = 130.0  # [kg] ch: a bare number above is as likely in pounds, so ask
DAYS_IN = {"day": 1.0, "week": 7.0, "month": 30.4, "year": 365.25}  # [days] the calendar, mean
YEARS_MOST = 60.0  # [years] ch
WITHIN_A_WEEK = 6  # [days] ch: the careful end, as on the button
MINUTES = (15, 180)  # [min] ch: the shortest and longest session that is planned
WEIGHT_KG = (0.5, 300.0)  # [kg] ch: a small plate to a loaded bar
WEIGHTS_MOST = 24  # [weights] ch: a whole rack

NUMBER = re.compile(r"\d{1,3}(?:[.,]\d{1,2})?")
AMOUNT = r"\d{1,4}(?:[.,]\d{1,2})?"
KG, LB = r"k|kgs?|kgr?s?|kilos?|kilograms?|kilogramos?|quilos?", r"lbs?|pounds?|libras?"
WEIGHS = re.compile(
    r"^(?:(?P<self>i'?m|i am)|i weigh|i weight|weigh|(?:my )?(?:body ?)?weight(?: is)?|bw|yo peso"
    r"|mi peso es|peso|estoy en|estoy|ando en|ando por|rondo los|rondo|its|it's|it is)\b[ :=]*"
)
MASS = re.compile(
    rf"(?P<amount>{AMOUNT})(?P<half> and a half)?\s*(?P<unit>{KG}|{LB})?\.?(?P<behind> and a half)?"
)
STONE = re.compile(
    rf"(?P<stone>{AMOUNT})\s*(?:st|stones?)\.?(?:\s*(?:and )?(?P<lb>\d{{1,2}})\s*(?:{LB})?\.?)?"
)
UNIT_WORDS = {
    "day": "d|days?", "week": "w|wks?|weeks?", "month": "mos?|mths?|months?",
    "year": "y|yrs?|years?",
}  # fmt: skip
UNIT = "|".join(UNIT_WORDS.values())
PART = re.compile(
    rf"(?P<low>{AMOUNT})(?:\s*(?:-|to|or|a|o)\s*(?P<high>{AMOUNT}))?\s*(?P<unit>{UNIT})\b"
)
SPAN_WORDS = re.compile(
    r"\b(?:ago|hace|desde hace|desde|for|it'?s been|it was|it is|i'?ve been|been|training|trained"
    r"|i have|i|llevo|entrenando|entreno|entrene|la ultima vez|fue|ya|already|the last time"
    r"|last time|was|over|more than|regularly|seguidos?|de entrenamiento|of training"
    r"|between|entre)\b"
)
LESS = re.compile(r"^(?:less than|under|menos de|not even|no llega a|within|not quite)\b")
BEGINNER = re.compile(
    r"(?:i )?(?:just|only just|i've just) start(?:ed|ing)|(?:complete |total )?beginner|"
    r"never (?:trained|did|have)|i (?:have )?never (?:trained|did)|(?:i'm |i am )?new(?: to this)?|"
    r"acabo de empezar|empiezo ahora|(?:soy )?principiante|(?:soy )?(?:nuevo|nueva)|"
    r"(?:no he entrenado nunca|nunca he entrenado)|never he entrenado|not at all|nothing at all"
)
LAST_DAYS = {
    "today": 0, "this morning": 0, "esta manana": 0, "0": 0, "no break": 0,
    "yesterday": 1, "day before yesterday": 2, "the day before yesterday": 2,
    "anteayer": 2, "antes de ayer": 2, "antier": 2, "antes de yesterday": 2,
    "this week": WITHIN_A_WEEK, "esta semana": WITHIN_A_WEEK, "esta week": WITHIN_A_WEEK,
}  # fmt: skip
LENGTH_WORDS = re.compile(
    r"\b(?:max|maximum|at most|at least|minimum|minimo|maximo|como mucho|como maximo|al menos"
    r"|up to|hasta|tops|no more than|i have|i've got|tengo|dispongo de|each time|each|per session"
    r"|a session|per day|a day|cada dia|cada vez|por sesion|al dia|between|entre|para entrenar"
    r"|to train|of time|the most)\b"
)
LENGTH = re.compile(
    rf"(?:(?P<hours>{AMOUNT})\s*(?:hours?|hrs?|h))?(?:\s*(?:and )?(?P<minutes>\d{{1,3}})"
    r"\s*(?:minutes?|mins?|min|m|')?)?"
)
STEPS = re.compile(
    rf"(?:from |de )?(?P<first>{AMOUNT}) (?:to|a|hasta) (?P<last>{AMOUNT}) "
    rf"(?:in steps of|in|every|by|de|cada) (?P<step>{AMOUNT})(?: en (?P=step)|s)?"
)
RANGE = re.compile(rf"{AMOUNT}\s*(?:-|\bto\b|\ba\b|\bhasta\b|\bup to\b)\s*{AMOUNT}")
OWN_WORDS = re.compile(
    r"\b(?:each|and|y|i have|i've got|ive got|tengo|mine are|they are|there are|hay|cada una"
    r"|cada uno|dumbbells?|kettlebells?|db|kb|mancuernas?|pesas rusas|las|los|de)\b|&|\+"
)


def mass_kg(text: str) -> Answer:
    """Read a body weight [kg]; a bare number that may be pounds, or an age, is asked about."""
    said = loosely(text)
    begun = WEIGHS.match(said)
    said = said[begun.end() :] if begun else said
    if stone := STONE.fullmatch(said):
        lb = number_of(stone["stone"]) * LB_PER_STONE + float(stone["lb"] or 0)
        return _in_range(lb * KG_PER_LB)
    found = MASS.fullmatch(said)
    if found is None or (found["half"] and found["behind"]):
        return Unclear(Why.MASS)
    amount = number_of(found["amount"]) + (0.5 if found["half"] or found["behind"] else 0)
    unit = found["unit"] or ""
    is_age = begun is not None and begun["self"] is not None
    if not unit and (is_age or MASS_BARE_KG_MOST < amount <= MASS_KG[1] / KG_PER_LB):
        return Unclear(Why.MASS_UNIT)
    return _in_range(amount * KG_PER_LB if unit[:1] in {"l", "p"} else amount)


def _in_range(kg: float) -> Answer:
    return Heard(round(kg, 1)) if MASS_KG[0] <= kg <= MASS_KG[1] else Unclear(Why.MASS)


@dataclass(frozen=True)
class Span:
    """A span of time [days], from its least to its most; ``is_below`` where it is only a bound."""

    least: float
    most: float
    is_below: bool = False


def days_of_span(text: str) -> Answer:
    """Read how long ago [days]: "2 years", "3 weeks ago", "yesterday"; of a range its far end."""
    said = loosely(text)
    if said in LAST_DAYS:
        return Heard(LAST_DAYS[said])
    if tidy(text) == "none":
        return Heard(0)
    found = _span(said)
    return found if isinstance(found, Unclear) else Heard(round(found.most))


def months_of_span(text: str) -> Answer:
    """Read how long somebody trained [months]; "never" is none, of a range its near end counts."""
    said = loosely(text)
    if tidy(text) in NONE_WORDS | {"none yet", "not yet", "aun no", "todavia no"}:
        return Heard(0.0)
    if said in NONE_WORDS | {"not yet", "none yet"} or BEGINNER.fullmatch(tidy(text)):
        return Heard(0.0)
    if said in LAST_DAYS:
        return Unclear(Why.SPAN)
    found = _span(said)
    if isinstance(found, Unclear):
        return found
    if found.is_below:
        return Unclear(Why.SPAN)
    return Heard(round(round(found.least) / DAYS_IN["month"], 1))


def _span(said: str) -> Span | Unclear:
    """Read one or more amounts with their units; nothing else may stand beside them."""
    is_below = LESS.match(said) is not None
    said = _halves(" ".join(SPAN_WORDS.sub(" ", LESS.sub("", said)).split()))
    parts = list(PART.finditer(said))
    rest = re.sub(r"\band\b|,", " ", PART.sub(" ", said)).strip()
    if not parts:
        return Unclear(Why.SPAN_UNIT if re.fullmatch(AMOUNT, said) else Why.SPAN)
    has_range = any(part["high"] for part in parts)
    if rest or (has_range and len(parts) > 1):
        return Unclear(Why.SPAN)
    days = [DAYS_IN[_unit(part["unit"])] for part in parts]
    least = sum(number_of(part["low"]) * one for part, one in zip(parts, days, strict=True))
    most = sum(
        number_of(part["high"] or part["low"]) * one for part, one in zip(parts, days, strict=True)
    )
    if most > YEARS_MOST * DAYS_IN["year"]:
        return Unclear(Why.SPAN_LONG)
    if least > most or len({part["unit"][0] for part in parts}) < len(parts):
        return Unclear(Why.SPAN)
    return Span(least=least, most=most, is_below=is_below)


def _halves(said: str) -> str:
    """Write halves and articles in figures: "a year and a half" is 1.5 year."""
    said = re.sub(r"\b(?:a |un )?(?:couple|par)(?: of| de)?\b", "2", said)
    said = re.sub(r"\b(\d+) and a half\b", r"\1.5", said)
    said = re.sub(rf"\b(?:half|medio) (?:an? )?(?=(?:{UNIT})\b)", "0.5 ", said)
    said = re.sub(rf"\b(?:an?|un|una) (?=(?:{UNIT})\b)", "1 ", said)
    return re.sub(
        rf"(?:\b(\d+) )?\b({UNIT}) and a half\b",
        lambda found: f"{found[1] or 1}.5 {found[2]}",
        said,
    )


def _unit(word: str) -> str:
    return next(unit for unit, words in UNIT_WORDS.items() if re.fullmatch(words, word))


def minutes(text: str) -> Answer:
    """Read the length of a session [min]; of a range its short end counts."""
    said = " ".join(LENGTH_WORDS.sub(" ", loosely(text)).split())
    said = re.sub(r"^(?:3 quarters of an hour|3 cuartos de hour|tres cuartos de hour)$", "45", said)
    said = re.sub(r"^(?:a )?quarter of an hour$|^(?:un )?cuarto de hour$", "15", said)
    said = re.sub(r"\bhalf (?:an )?hour\b", "30 minutes", said)
    said = re.sub(r"\b(?:an?|una) hour\b|^hour\b", "1 hour", said)
    said = re.sub(r"\b(\d+)(?: hours?)? and a half(?: hours?)?\b", r"\1.5 hours", said)
    if said == "1 hour and 30 minutes":
        return Heard(90)
    said = re.sub(r"^(\d)[:](\d\d) ?h(?:ours?)?$", r"\1 h \2", said)
    ends = re.fullmatch(r"(\d{2,3})\s*(?:'|m|min|mins|minutes)?\s*(?:-|to|or|and|a|o)\s*(\d{2,3})"
                        r"\s*(?:'|m|min|mins|minutes)?", said)  # fmt: skip
    if ends:
        said = ends[1] if int(ends[1]) < int(ends[2]) else "?"
    found = LENGTH.fullmatch(said)
    if found is None or not said:
        return Unclear(Why.MINUTES)
    length = round(number_of(found["hours"] or "0") * 60) + int(found["minutes"] or 0)
    return Heard(length) if MINUTES[0] <= length <= MINUTES[1] else Unclear(Why.MINUTES)


def weights_kg(text: str) -> Answer:
    """Read a list of weights [kg]: "4 6 8 10", "2,5 5 7,5 kg", "10 15 20 lb", "4 to 12 in 2s"."""
    said = tidy(text)
    if said in NONE_WORDS:
        return Heard([])
    if not re.search(r"\d", said):
        said = with_digits(text)  # beside figures a word may be a count: "one 12 kg"
    is_lb, is_kg = bool(re.search(r"lb|pound|libra", said)), bool(re.search(r"kg|kilo", said))
    if is_lb and is_kg:
        return Unclear(Why.WEIGHTS_UNIT)
    plainly = re.sub(rf"(?<=\d)\s*(?:{KG}|{LB})\b", " ", said)
    if stepped := STEPS.fullmatch(" ".join(plainly.split())):
        return _in_steps(stepped, is_lb=is_lb)
    if RANGE.search(plainly):
        return Unclear(Why.WEIGHTS_RANGE)
    parts = _weight_parts(OWN_WORDS.sub(" ", plainly))
    if parts is None:
        return Unclear(Why.WEIGHTS_COMMA)
    if not parts or len(parts) > WEIGHTS_MOST or not all(map(NUMBER.fullmatch, parts)):
        return Unclear(Why.WEIGHTS)
    return _weights([number_of(part) for part in parts], is_lb=is_lb)


def _in_steps(found: re.Match[str], *, is_lb: bool) -> Answer:
    first, last, step = (number_of(found[name]) for name in ("first", "last", "step"))
    count = (last - first) / step if step else 0.0
    if not 0 < count < WEIGHTS_MOST or not count.is_integer():
        return Unclear(Why.WEIGHTS_RANGE)
    return _weights([first + step * n for n in range(int(count) + 1)], is_lb=is_lb)


def _weights(said: list[float], *, is_lb: bool) -> Answer:
    kg = sorted({round(one * (KG_PER_LB if is_lb else 1), 2) for one in said})
    in_range = all(WEIGHT_KG[0] <= one <= WEIGHT_KG[1] for one in kg)
    return Heard(kg) if in_range else Unclear(Why.WEIGHTS)


def _weight_parts(text: str) -> list[str] | None:
    """Split a list; None where a comma may be a decimal one or may divide two weights."""
    parts = [part for part in re.split(r",\s+|;|/|\s", text) if part]
    if len(parts) > 1 or "," not in text:
        return parts
    inner = text.strip(" ,").split(",")
    return None if len(inner) == 2 else inner


def is_bare_figure(text: str) -> bool:
    """Tell whether an answer holds a figure, in digits or words, and no unit of weight."""
    said = with_digits(text)
    has_unit = re.search(rf"(?<![a-z])(?:{KG}|{LB}|st|stones?)\b", said)
    return bool(re.search(r"\d", said)) and has_unit is None


def is_word_of_a_figure(text: str) -> bool:
    """Tell whether a figure is said in words only."""
    return not re.search(r"\d", bare(text)) and bool(re.search(r"\d", with_digits(text)))
