"""What an answer of the intake says: read as people type it, or unclear with what to send."""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import time
from enum import StrEnum
from typing import Any

from bot.reading.days import WEEKDAYS
from bot.reading.script import plain
from bot.reading.spanish_answers import in_english

KG_PER_LB = 0.45359237  # [kg/lb] the international pound, exact by agreement of 1959
MASS_KG = (30.0, 250.0)  # [kg] ch: outside it is a slip of the thumb
MASS_BARE_KG_MOST = 130.0  # [kg] ch: a bare number above is as likely in pounds, so ask
DAYS_IN = {"day": 1.0, "week": 7.0, "month": 30.4, "year": 365.25}  # [days] the calendar, mean
YEARS_MOST = 60.0  # [years] ch
MINUTES = (15, 180)  # [min] ch: the shortest and longest session that is planned
WEEKDAYS_MOST = 5  # [days a week] ch: the least is one
WEIGHT_KG = (0.5, 300.0)  # [kg] ch: a small plate to a loaded bar
EVENING = (time(15, 0), time(23, 30))  # [wall time] ch: when an evening may begin
WEIGHTS_MOST = 24  # [weights] ch: a whole rack


class Why(StrEnum):
    """Why an answer cannot be taken; each has its own sentence that says what to send."""

    CHOICE = "choice"
    MASS = "mass"
    MASS_UNIT = "mass_unit"
    SPAN = "span"
    SPAN_UNIT = "span_unit"
    SPAN_LONG = "span_long"
    WEEKDAYS = "weekdays"
    WEEKDAYS_MANY = "weekdays_many"
    MINUTES = "minutes"
    EQUIPMENT = "equipment"
    WEIGHTS = "weights"
    WEIGHTS_COMMA = "weights_comma"
    WEIGHTS_UNIT = "weights_unit"
    BANDS = "bands"
    ELSEWHERE = "elsewhere"
    EVENT_DATE = "event_date"
    EVENT_PAST = "event_past"
    EVENT_FAR = "event_far"
    PLACE = "place"
    HOUR = "hour"
    EVENING = "evening"
    TOPICS = "topics"
    CONTACT = "contact"
    WORDS = "words"
    NONE_CHOSEN = "none_chosen"
    REVIEW = "review"


@dataclass(frozen=True)
class Heard:
    """The answer, as plain data that a dialog can keep."""

    value: Any


@dataclass(frozen=True)
class Unclear:
    """No answer; the step stays and the reply says what to send instead."""

    why: Why


@dataclass(frozen=True)
class Several:
    """More than one thing may be meant: asked with a button for each."""

    values: tuple[str, ...]


Answer = Heard | Unclear | Several
Reader = Callable[[str], Answer]

NONE_WORDS = frozenset(
    {"no", "none", "nothing", "never", "nope", "0", "zero", "-"}
    | {"nada", "ninguno", "ninguna", "nunca", "cero"}
)
AMOUNT = r"(?P<amount>\d{1,4}(?:[.,]\d{1,2})?)"
MASS = re.compile(rf"(?:about )?{AMOUNT}\s*(?P<unit>kgs?|kilos?|lbs?|pounds?|libras?)?\.?")
SPAN = re.compile(
    rf"(?:about |over |more than |hace |unos |unas )?"
    rf"(?:{AMOUNT}|(?P<one>an?|one|una?)|(?P<half>half an? ?|medio ))\s*"
    r"(?P<unit>day|week|wk|month|year|yr|dia|semana|mes(?=es|\b)|ano)?(?:s|es)?(?: ago)?"
)
UNITS_OF_SPAN = {"wk": "week", "yr": "year", "dia": "day", "semana": "week", "mes": "month",
                 "ano": "year"}  # fmt: skip
LENGTH = re.compile(
    rf"(?:about )?(?:{AMOUNT}\s*(?P<unit>minutes?|minutos?|mins?|m|hours?|horas?|hrs?|h)?"
    r"|(?P<hour>an hour|una hora))"
)
CLOCK = re.compile(
    r"(?:at |a las? )?(?P<hour>\d{1,2})(?:[:.h](?P<minute>\d{2}))?\s*(?P<half>[ap]\.?m\.?)?"
)


def bare(text: str) -> str:
    """Return a message in plain lower-case letters and digits on one line."""
    return " ".join(plain(text).split()).strip(" .!")


def tidy(text: str) -> str:
    """Return a message in plain lower-case letters and digits, Spanish answers in English."""
    return in_english(bare(text))


def number_of(text: str) -> float:
    """Return a number written with a decimal point or comma."""
    return float(text.replace(",", "."))


def choice(options: Mapping[Any, Iterable[str]]) -> Reader:
    """Return a reader of one answer among a few, each with the words people use for it."""

    def read(text: str) -> Answer:
        said = tidy(text)
        for value, names in options.items():
            if said in names:
                return Heard(value)
        return Unclear(Why.CHOICE)

    return read


def mass_kg(text: str) -> Answer:
    """Read a body weight [kg]; a bare number that may be pounds is asked about."""
    found = MASS.fullmatch(tidy(text))
    if found is None:
        return Unclear(Why.MASS)
    amount, unit = number_of(found["amount"]), found["unit"] or ""
    if not unit and MASS_BARE_KG_MOST < amount <= MASS_KG[1] / KG_PER_LB:
        return Unclear(Why.MASS_UNIT)
    kg = amount * KG_PER_LB if unit[:1] in {"l", "p"} else amount
    return Heard(round(kg, 1)) if MASS_KG[0] <= kg <= MASS_KG[1] else Unclear(Why.MASS)


def days_of_span(text: str) -> Answer:
    """Read a span of time [days]: "2 years", "3 weeks ago", "yesterday", "none"."""
    said = tidy(text)
    if said in {"0", "zero", "none", "no break", "today", "hoy"}:
        return Heard(0)
    if said in {"yesterday", "ayer"}:
        return Heard(1)
    found = SPAN.fullmatch(said)
    if found is None:
        return Unclear(Why.SPAN)
    if not found["unit"]:
        return Unclear(Why.SPAN_UNIT)
    amount = 0.5 if found["half"] else 1.0 if found["one"] else number_of(found["amount"])
    days = round(amount * DAYS_IN[UNITS_OF_SPAN.get(found["unit"], found["unit"])])
    return Heard(days) if days <= YEARS_MOST * DAYS_IN["year"] else Unclear(Why.SPAN_LONG)


def months_of_span(text: str) -> Answer:
    """Read a span of time [months]; "never" is none."""
    if tidy(text) in NONE_WORDS | {"none yet", "not yet", "aun no", "todavia no"}:
        return Heard(0.0)
    found = days_of_span(text)
    if not isinstance(found, Heard):
        return found
    return Heard(round(found.value / DAYS_IN["month"], 1))


def weekdays(text: str) -> Answer:
    """Read training days, Monday = 0: "mon wed fri", "monday to friday"."""
    days: set[int] = set()
    for first, last in re.findall(r"([a-z]+)(?:\s*(?:-|\bto\b|\ba\b)\s*([a-z]+))?", tidy(text)):
        if first in {"and", "y", "on", "los", "el", "de"}:
            continue
        start, end = _weekday(first), _weekday(last or first)
        if start is None or end is None:
            return Unclear(Why.WEEKDAYS)
        days |= {(start + step) % 7 for step in range((end - start) % 7 + 1)}
    if not days or re.search(r"\d", text):
        return Unclear(Why.WEEKDAYS)
    return Heard(sorted(days)) if len(days) <= WEEKDAYS_MOST else Unclear(Why.WEEKDAYS_MANY)


def _weekday(word: str) -> int | None:
    """Return the weekday that a word begins, if it begins one only."""
    if word in WEEKDAYS:
        return WEEKDAYS[word]
    meant = {day for name, day in WEEKDAYS.items() if len(word) > 1 and name.startswith(word)}
    return meant.pop() if len(meant) == 1 else None


def minutes(text: str) -> Answer:
    """Read the length of a session [min]."""
    found = LENGTH.fullmatch(tidy(text))
    if found is None:
        return Unclear(Why.MINUTES)
    if found["hour"]:
        return Heard(60)
    is_hours = (found["unit"] or "").startswith("h")
    length = round(number_of(found["amount"]) * (60 if is_hours else 1))
    return Heard(length) if MINUTES[0] <= length <= MINUTES[1] else Unclear(Why.MINUTES)


def clock(text: str) -> Answer:
    """Read a time of day as "HH:MM"; a bare number is the hour of a day of 24."""
    said = tidy(text)
    if said in {"noon", "midday", "mediodia"}:
        return Heard("12:00")
    found = CLOCK.fullmatch(said)
    if found is None:
        return Unclear(Why.HOUR)
    hour, minute = int(found["hour"]), int(found["minute"] or 0)
    if found["half"]:
        if not 1 <= hour <= 12:
            return Unclear(Why.HOUR)
        hour = hour % 12 + (12 if found["half"].startswith("p") else 0)
    return Heard(f"{hour:02}:{minute:02}") if hour < 24 and minute < 60 else Unclear(Why.HOUR)


def evening(text: str) -> Answer:
    """Read the hour at which a person's evening begins; a bare 8 is eight in the evening."""
    said = tidy(text)
    found = clock(f"{said} pm" if re.fullmatch(r"[3-9]|1[01]", said) else text)
    if not isinstance(found, Heard):
        return Unclear(Why.EVENING)
    first, last = EVENING
    return found if first <= time.fromisoformat(found.value) <= last else Unclear(Why.EVENING)


def named(options: Mapping[str, Iterable[str]], *, unknown: Why) -> Reader:
    """Return a reader of several answers, named one after another with commas or "and"."""

    def read(text: str) -> Answer:
        said = tidy(text)
        if said in NONE_WORDS or said in {
            "no equipment",
            "none of these",
            "none of them",
            "nada de esto",
        }:
            return Heard([])
        parts = [part.strip() for part in re.split(r",|;|\+|/|\band\b|\by\b", said) if part.strip()]
        found = [_named_by(part, options) for part in parts]
        if not parts or None in found:
            return Unclear(unknown)
        return Heard([value for value in options if value in found])

    return read


def _named_by(part: str, options: Mapping[str, Iterable[str]]) -> str | None:
    part = re.sub(r"^(?:an?|some|my|the|two|una?|unas|unos|mis|las|los) ", "", part)
    for value, names in options.items():
        if part in names or part.removesuffix("s") in names:
            return value
    return None


def weights_kg(text: str) -> Answer:
    """Read a list of weights [kg]: "4 6 8 10", "2,5 5 7,5 kg", "10 15 20 lb"."""
    said = tidy(text)
    if said in NONE_WORDS:
        return Heard([])
    is_lb, is_kg = bool(re.search(r"lb|pound|libra", said)), bool(re.search(r"kg|kilo", said))
    if is_lb and is_kg:
        return Unclear(Why.WEIGHTS_UNIT)
    bare = re.sub(
        r"(?<=\d)\s*(?:kgs?|kilos?|lbs?|pounds?|libras?)\b|\beach\b|\band\b|\by\b", " ", said
    )
    parts = _weight_parts(bare)
    if parts is None:
        return Unclear(Why.WEIGHTS_COMMA)
    if not parts or len(parts) > WEIGHTS_MOST or not all(map(NUMBER.fullmatch, parts)):
        return Unclear(Why.WEIGHTS)
    kg = sorted({round(number_of(part) * (KG_PER_LB if is_lb else 1), 2) for part in parts})
    in_range = all(WEIGHT_KG[0] <= one <= WEIGHT_KG[1] for one in kg)
    return Heard(kg) if in_range else Unclear(Why.WEIGHTS)


NUMBER = re.compile(r"\d{1,3}(?:[.,]\d{1,2})?")


def _weight_parts(text: str) -> list[str] | None:
    """Split a list; None where a comma may be a decimal one or may divide two weights."""
    parts = [part for part in re.split(r",\s+|;|/|\s", text) if part]
    if len(parts) > 1 or "," not in text:
        return parts
    inner = text.strip(" ,").split(",")
    return None if len(inner) == 2 else inner


def words(*, least: int, most: int = 300) -> Reader:
    """Return a reader of free words."""

    def read(text: str) -> Answer:
        said = " ".join(text.split())
        return Heard(said[:most]) if len(said) >= least else Unclear(Why.WORDS)

    return read


def contact(text: str) -> Answer:
    """Read a name with a phone number or an e-mail address."""
    said = " ".join(text.split())
    digits = sum(one.isdigit() for one in said)
    letters = sum(one.isalpha() for one in said)
    if letters >= 3 and (digits >= 6 or re.search(r"\S@\S+\.\S", said)):
        return Heard(said[:200])
    return Unclear(Why.CONTACT)


def topics(options: Iterable[str]) -> Reader:
    """Return a reader of numbered topics: "2 and 5", "none"."""
    listed = list(options)

    def read(text: str) -> Answer:
        said = tidy(text)
        if said in NONE_WORDS or said in {"none of these", "none of them", "no to all"}:
            return Heard([])
        parts = re.findall(r"[a-z]+|\d+", said)
        numbers = [int(part) for part in parts if part.isdigit()]
        others = [
            part
            for part in parts
            if not part.isdigit() and part not in {"and", "yes", "to", "y", "si"}
        ]
        if not numbers or others or not all(1 <= one <= len(listed) for one in numbers):
            return Unclear(Why.TOPICS)
        return Heard([listed[one - 1] for one in sorted(set(numbers))])

    return read
