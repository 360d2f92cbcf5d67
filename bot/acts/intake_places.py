"""Where an athlete lives and what they train for: a city to its zone, a date among words."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from difflib import get_close_matches
from functools import cache

from babel import Locale

from bot.acts.intake_answers import NONE_WORDS, Answer, Heard, Several, Unclear, Why, bare, tidy
from bot.reading.days import MONTHS
from scheduler.calendar.places import default_cities
from scheduler.calendar.zones import zone_names

NOT_PLACES = ("Etc", "SystemV", "US", "posix", "right")  # tzdata: links and offsets, not cities
CHOICES_MOST = 6  # [buttons] ch: more is not read on a phone
LETTERS_LEAST = 4  # [letters] ch: fewer begin too many names
NEAR_CUTOFF = 0.75  # [ratio] ch: "Barlin" is near "Berlin"
EVENT_MOST = timedelta(days=730)  # [days] ch: further ahead no season is planned
GOAL_MOST = 200  # [characters] ch

MONTH = "|".join(sorted(MONTHS, key=len, reverse=True))
ISO = re.compile(r"\b(?P<year>\d{4})-(?P<month>\d{1,2})-(?P<day>\d{1,2})\b")
DOTTED = re.compile(r"\b(?P<day>\d{1,2})\.\s?(?P<month>\d{1,2})\.\s?(?P<year>\d{4})\b")
DAY_FIRST = re.compile(
    rf"\b(?P<day>\d{{1,2}})(?:st|nd|rd|th)?\.? (?:of |de )?(?P<month>{MONTH})\b\.?,?"
    r"(?: (?:de )?(?P<year>\d{4}))?"
)
MONTH_FIRST = re.compile(
    rf"\b(?P<month>{MONTH})\.? (?P<day>\d{{1,2}})(?:st|nd|rd|th)?\b,?(?: (?P<year>\d{{4}}))?"
)
LOOKS_LIKE_A_DATE = re.compile(rf"\d{{1,4}}[/.-]\d{{1,2}}|\b\d{{4}}\b|\b(?:{MONTH})\b")


def zone_of(text: str) -> Answer:
    """Read a zone by its name or by a city that it is named after."""
    said = _folded(text)
    exact = next(
        (name for name in sorted(zone_names()) if name.lower() == text.strip().lower()), ""
    )
    if exact:
        return Heard(exact)
    places = _zones_by_city()
    found = list(places.get(said, ()))
    if not found and len(said) >= LETTERS_LEAST:
        found = [zone for city, zones in places.items() if city.startswith(said) for zone in zones]
    found = _without_older_names(found)
    if len(found) == 1:
        return Heard(found[0])
    if not found:
        close = get_close_matches(said, list(places), n=3, cutoff=NEAR_CUTOFF)
        found = [zone for city in close for zone in places[city]]
    found = list(dict.fromkeys(found))
    return Several(tuple(found[:CHOICES_MOST])) if found else Unclear(Why.PLACE)


@cache
def _zones_by_city() -> Mapping[str, tuple[str, ...]]:
    """Return the zones that a city's name may mean: zones' own names, big cities, in Spanish too.

    The Spanish names of the zones' cities are those of the Unicode locale data (babel).
    """
    named = [(name, name) for name in sorted(zone_names()) if _is_place(name)]
    spanish = Locale("es").time_zones
    named += [(str(names["city"]), str(zone)) for zone, names in spanish.items() if "city" in names]
    named += [(city.name, city.zone) for city in default_cities()]
    found: dict[str, tuple[str, ...]] = {}
    for city, zone in named:
        if zone in zone_names():
            key = _city(city)
            found[key] = tuple(dict.fromkeys((*found.get(key, ()), zone)))
    return found


WITHOUT_A_DATE = re.compile(
    r"[\s,;.:(-]*\b(?:no|without a) (?:date|event)\b[).\s]*$", re.IGNORECASE
)
"""What ends a goal and only says that it has no date."""


def event_of(text: str, *, today: date) -> Answer:
    """Read a goal with or without a date; a date that cannot be read is asked for again."""
    said = tidy(text)
    if said in NONE_WORDS | {"no date", "no event", "no goal"}:
        return Heard({"on": None, "goal": ""})
    goal = WITHOUT_A_DATE.sub("", " ".join(text.split()))[:GOAL_MOST]
    found = next(
        (one for way in (ISO, DOTTED, DAY_FIRST, MONTH_FIRST) if (one := way.search(said))), None
    )
    if found is None:
        is_date_like = LOOKS_LIKE_A_DATE.search(said) and re.search(r"\d", said)
        return Unclear(Why.EVENT_DATE) if is_date_like else Heard({"on": None, "goal": goal})
    on = _date(found, today)
    if on is None:
        return Unclear(Why.EVENT_DATE)
    if on <= today:
        return Unclear(Why.EVENT_PAST)
    if on - today > EVENT_MOST:
        return Unclear(Why.EVENT_FAR)
    return Heard({"on": on.isoformat(), "goal": goal})


@dataclass(frozen=True)
class DatesFound:
    """The dates in a text, in their order, and the text without them."""

    dates: tuple[date, ...]
    rest: str


def dates_in(text: str, *, today: date) -> DatesFound:
    """Find every date in a text; one without a year is the next such day."""
    said = " ".join(text.split())
    found: list[tuple[int, date]] = []
    for way in (ISO, DOTTED, DAY_FIRST, MONTH_FIRST):
        while (match := way.search(said.lower())) is not None:
            on = _date(match, today)
            if on is None:
                return DatesFound(dates=(), rest=said)
            found.append((match.start(), on))
            blank = " " * (match.end() - match.start())
            said = said[: match.start()] + blank + said[match.end() :]
    ordered = tuple(on for _, on in sorted(found))
    return DatesFound(dates=ordered, rest=" ".join(said.split()))


def _date(found: re.Match[str], today: date) -> date | None:
    """Return the date that is named; without a year the next such day."""
    parts = found.groupdict()
    month = int(parts["month"]) if parts["month"].isdigit() else MONTHS[parts["month"]]
    year = int(parts["year"]) if parts["year"] else today.year
    try:
        on = date(year, month, int(parts["day"]))
        return on if parts["year"] or on > today else on.replace(year=year + 1)
    except ValueError:
        return None


def _without_older_names(names: list[str]) -> list[str]:
    """Of a city with a longer and a shorter name on one continent, keep the longer."""
    kept: dict[tuple[str, str], str] = {}
    for name in names:
        key = (name.split("/", 1)[0], _city(name))
        kept[key] = max(kept.get(key, ""), name, key=lambda one: one.count("/"))
    return list(kept.values())


def _is_place(name: str) -> bool:
    return "/" in name and not name.startswith(NOT_PLACES)


def _city(name: str) -> str:
    return _folded(name.rsplit("/", 1)[-1])


def _folded(text: str) -> str:
    return bare(text.replace("_", " ").replace("-", " "))
