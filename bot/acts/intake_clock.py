"""A time of day as people say it: "6:30", "half past six", "a las 7 de la tarde"."""

import re
from dataclasses import dataclass
from datetime import time

from bot.acts.intake_answers import Answer, Heard, Several, Unclear, Why
from bot.acts.intake_loosely import ABOUT, with_digits

EVENING = (time(15, 0), time(23, 30))  # [wall time] ch: when an evening may begin
HOUR_MIN = 60  # [min] the clock
HALF_DAY_H = 12  # [h] the clock

PARTS_OF_DAY = {
    "am": r"a\.?m\.?",
    "pm": r"p\.?m\.?",
    "dawn": r"(?:de|por|d) la madrugada|madrugada",
    "morning": r"in the morning|every morning|mornings?|(?:de|por|d|x) la manana|manana",
    "noon": r"in the afternoon|afternoon|in the evening|evenings?|(?:de|por|d|x) la tarde|tarde",
    "night": r"at night|tonight|night|(?:de|por|d|x) la noche|noche",
}
FILLERS = re.compile(
    r"\b(?:at|a las|a la|las|la|a eso de|hacia|como a|send it|send|mandala|o'?clock|en punto|hs"
    r"|hrs|hours?|horas?|every day|each day|cada dia|todos los dias|is fine|is good|works|va bien"
    r"|esta bien|me va bien|mejor)\b"
)
NOON = {"noon": (12, 0), "midday": (12, 0), "12 noon": (12, 0), "mediodia": (12, 0),
        "al mediodia": (12, 0), "el mediodia": (12, 0), "midnight": (0, 0),
        "medianoche": (0, 0)}  # fmt: skip
WRITTEN = re.compile(r"(?P<hour>\d{1,2})\s*[:.h]\s*(?P<minute>\d{2})h?")
ONLY_HOUR = re.compile(r"(?P<hour>\d{1,2})(?P<mark>h)?")
FOUR = re.compile(r"(?P<hour>\d{2})(?P<minute>\d{2})h?")
SPOKEN = re.compile(r"(?P<hour>\d{1,2}) (?P<minute>[0-5]\d)")
QUARTERS = {"half": 30, "media": 30, "quarter": 15, "cuarto": 15}  # [min]
PAST = re.compile(
    r"(?:a )?(?P<by>half|quarter|\d{1,2})(?: minutes?)? (?P<way>past|after|to|before|till?)"
    r" (?P<hour>\d{1,2})"
)
SPANISH = re.compile(
    r"(?P<hour>\d{1,2}) (?P<way>y|menos) (?P<by>media|cuarto|\d{1,2})(?: minutos?)?"
)


@dataclass(frozen=True)
class _Said:
    """An hour and a minute; ``is_of_24`` where the writing leaves no half of the day open."""

    hour: int
    minute: int
    is_of_24: bool


def clock(text: str) -> Answer:
    """Read a time of day as "HH:MM"; without a half of the day it is one of 24 hours."""
    found = _candidates(text)
    return Heard(found[0]) if found else Unclear(Why.HOUR)


def session_clock(text: str) -> Answer:
    """Read a time of day; "7" or "half past six" may be either half of the day, so ask."""
    found = _candidates(text)
    if not found:
        return Unclear(Why.HOUR)
    return Heard(found[0]) if len(found) == 1 else Several(tuple(found))


def evening(text: str) -> Answer:
    """Read the hour at which a person's evening begins; a bare 8 is in the evening."""
    first, last = EVENING
    found = [one for one in _candidates(text) if first <= time.fromisoformat(one) <= last]
    return Heard(found[0]) if len(found) == 1 else Unclear(Why.EVENING)


def _candidates(text: str) -> list[str]:
    """Return what a text may mean as "HH:MM", the earlier first; none where it is no time."""
    said = " ".join(ABOUT.sub(" ", with_digits(text)).split())
    if said in NOON:
        return ["{:02}:{:02}".format(*NOON[said])]
    part, core = _without_part(said)
    core = " ".join(FILLERS.sub(" ", core).split()).strip(" .,")
    found = _said(core)
    if found is None or found.hour > 24 or found.minute >= HOUR_MIN:
        return []
    return [f"{hour:02}:{found.minute:02}" for hour in _hours(found, part)]


def _without_part(said: str) -> tuple[str, str]:
    """Return which part of the day is named, empty for none and "?" for two; and the rest."""
    named = {
        name: re.compile(rf"(?:(?<=\d)|\b)(?:{words})(?![a-z])")
        for name, words in PARTS_OF_DAY.items()
    }
    found = [name for name, words in named.items() if words.search(said)]
    for name in found:
        said = named[name].sub(" ", said)
    return ("?" if len(found) > 1 else "".join(found)), said


def _said(core: str) -> _Said | None:
    if found := WRITTEN.fullmatch(core):
        return _Said(int(found["hour"]), int(found["minute"]), is_of_24=True)
    if found := ONLY_HOUR.fullmatch(core):
        is_of_24 = found["mark"] is not None or found["hour"].startswith("0")
        return _Said(int(found["hour"]), 0, is_of_24=is_of_24)
    if found := FOUR.fullmatch(core):
        return _Said(int(found["hour"]), int(found["minute"]), is_of_24=True)
    if found := SPOKEN.fullmatch(core):
        return _Said(int(found["hour"]), int(found["minute"]), is_of_24=False)
    if found := PAST.fullmatch(core) or SPANISH.fullmatch(core):
        return _moved(found)
    return None


def _moved(found: re.Match[str]) -> _Said | None:
    """Read "quarter to seven", "7 menos cuarto": an hour, and minutes before or behind it."""
    hour, by = int(found["hour"]), QUARTERS.get(found["by"]) or int(found["by"])
    is_before = found["way"] in {"to", "before", "til", "till", "menos"}
    if by >= HOUR_MIN or not 1 <= hour <= HALF_DAY_H or (is_before and found["by"] == "half"):
        return None
    at = hour * HOUR_MIN + (-by if is_before else by)
    return _Said(at // HOUR_MIN or HALF_DAY_H, at % HOUR_MIN, is_of_24=False)


def _hours(said: _Said, part: str) -> list[int]:
    """Return which hours of 24 are meant."""
    hour = said.hour
    is_half = 1 <= hour <= HALF_DAY_H
    late = hour % HALF_DAY_H + HALF_DAY_H
    match part:
        case "am":
            return [hour % HALF_DAY_H] if is_half else []
        case "pm":
            return [late] if is_half else []
        case "morning":
            return [hour] if hour < HALF_DAY_H else []
        case "dawn":
            return [hour] if hour <= 6 else []
        case "noon":
            return [late] if is_half else [hour] if HALF_DAY_H < hour < 24 else []
        case "night":
            return _at_night(hour)
        case "":
            if hour in {0, 24}:
                return [0]
            is_open = hour < HALF_DAY_H and not said.is_of_24
            return [hour, late] if is_open else [hour]
    return []


def _at_night(hour: int) -> list[int]:
    """Twelve at night is midnight; from six to eleven it is evening; the small hours are asked."""
    if hour == HALF_DAY_H:
        return [0]
    if 6 <= hour < HALF_DAY_H:
        return [hour + HALF_DAY_H]
    return [hour] if HALF_DAY_H < hour < 24 else []
