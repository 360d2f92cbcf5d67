"""What an answer of the intake says: read as people type it, or unclear with what to send."""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from bot.reading.script import plain
from bot.reading.spanish_answers import in_english


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
    WEEKDAYS_DASH = "weekdays_dash"
    MINUTES = "minutes"
    EQUIPMENT = "equipment"
    WEIGHTS = "weights"
    WEIGHTS_RANGE = "weights_range"
    WEIGHTS_COMMA = "weights_comma"
    WEIGHTS_UNIT = "weights_unit"
    BANDS = "bands"
    ELSEWHERE = "elsewhere"
    EVENT_DATE = "event_date"
    EVENT_PAST = "event_past"
    EVENT_FAR = "event_far"
    EVENT_CITY = "event_city"
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
    """More than one thing may be meant: asked with a button for each, under its name if it has."""

    values: tuple[str, ...]
    names: tuple[str, ...] = ()


@dataclass(frozen=True)
class Partly:
    """Some of a list is understood, and some is not: shown to be looked at, never stored alone."""

    value: list[Any]
    unsure: tuple[str, ...]


Answer = Heard | Unclear | Several | Partly
Reader = Callable[[str], Answer]

NONE_WORDS = frozenset(
    {"no", "none", "nothing", "never", "nope", "nah", "0", "zero", "-"}
    | {"nada", "ninguno", "ninguna", "nunca", "cero"}
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
        said = " ".join(re.sub(r"[,;:()]", " ", tidy(text)).split())
        for value, names in options.items():
            if said in names:
                return Heard(value)
        return Unclear(Why.CHOICE)

    return read


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
