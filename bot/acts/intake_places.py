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
from scheduler.pain.emergency_numbers import country_of_zone

NOT_PLACES = ("Etc", "SystemV", "US", "posix", "right")  # tzdata: links and offsets, not cities
CHOICES_MOST = 6  # [buttons] ch: more is not read on a phone
LETTERS_LEAST = 4  # [letters] ch: fewer begin too many names
NEAR_CUTOFF = 0.75  # [ratio] ch: "Barlin" is near "Berlin"
NEAR_MOST = 4  # [cities] ch: buttons that one thumb reads
CITY_CUTOFF = 0.85  # [ratio] ch: nearer, so that no goal is taken for a city
CITY_WORDS_MOST = 3  # [words] ch: "new york city"
COUNTRY_LETTERS = 2  # [letters] iso3166: the two-letter codes
NICKNAMES = {"barna": "barcelona", "bcn": "barcelona", "nyc": "new york",
             "new york city": "new york",
             "la": "los angeles", "cdmx": "mexico city", "df": "mexico city", "sf": "san francisco",
             "baires": "buenos aires", "donosti": "san sebastian"}  # fmt: skip
LIVING = re.compile(
    r"^(?:(?:i live|living|live|i'?m|i am|im|vivo|estoy|it is|it's|es|soy|near|close to"
    r"|just outside|outside|around|cerca de|al lado de|in|from|by|en|de|la ciudad de|the city of"
    r"|city of)\b ?)+"
)
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
    """Read a zone by its name or by a city; what is only near a city's name is asked about."""
    exact = next(
        (name for name in sorted(zone_names()) if name.lower() == text.strip().lower()), ""
    )
    if exact:
        return Heard(exact)
    said = _folded(LIVING.sub("", bare(text)))
    said = NICKNAMES.get(said, said)
    found = _of_city(said)
    if found:
        named = dict.fromkeys(found, said)
        return Heard(found[0]) if len(found) == 1 else _offered(found, named=named)
    city, country = _city_and_country(said)
    if not city:
        return _offered(list(_zones_of_country(country))) if country else _near(said)
    there = [one for one in _of_city(city) if country_of_zone(one) == country]
    if there:
        return Heard(there[0]) if len(there) == 1 else _offered(there)
    return _near(city, country=country)


def is_city(text: str) -> bool:
    """Tell whether a text is a city's name and nothing else, a slip of the thumb apart."""
    said = _folded(bare(text))
    if not said or len(said.split()) > CITY_WORDS_MOST or re.search(r"\d", said):
        return False
    return said in NICKNAMES or bool(
        get_close_matches(said, list(_zones_by_city()), n=1, cutoff=CITY_CUTOFF)
    )


def _of_city(said: str) -> list[str]:
    return _without_older_names(list(_zones_by_city().get(said, ())))


def _near(said: str, *, country: str = "") -> Answer:
    """Offer the cities that a name begins or is near to."""
    places = _zones_by_city()
    begun = [city for city in places if len(said) >= LETTERS_LEAST and city.startswith(said)]
    close = get_close_matches(said, list(places), n=NEAR_MOST, cutoff=NEAR_CUTOFF)
    named = {zone: city for city in (*begun, *close)[::-1] for zone in places[city]}
    zones = [zone for city in (*begun, *close) for zone in places[city]]
    zones = [one for one in _without_older_names(zones) if country in {"", country_of_zone(one)}]
    return _offered(zones, named=named)


def _offered(zones: list[str], *, named: Mapping[str, str] | None = None) -> Answer:
    """Ask which; each shown under the city that was near to what was said."""
    few = list(dict.fromkeys(zones))[:CHOICES_MOST]
    if not few:
        return Unclear(Why.PLACE)
    shown = _city_names()
    return Several(tuple(few), tuple(shown[named[one]] if named else "" for one in few))


def _city_and_country(said: str) -> tuple[str, str]:
    """Split "valencia venezuela"; a country alone has no city, and what is no country is none."""
    words = said.replace(",", " ").split()
    for at in range(len(words)):
        country = _countries().get(" ".join(words[at:]))
        if country is not None:
            return " ".join(words[:at]), country
    return "", ""


@cache
def _countries() -> Mapping[str, str]:
    """Return the countries by their names in English and Spanish (Unicode locale data, babel)."""
    return {
        _folded(str(name)): code
        for language in ("en", "es")
        for code, name in Locale(language).territories.items()
        if len(code) == COUNTRY_LETTERS
    } | {"usa": "US", "uk": "GB", "england": "GB", "scotland": "GB", "wales": "GB", "eeuu": "US"}


@cache
def _zones_of_country(country: str) -> tuple[str, ...]:
    """Return the zones of a country that has few enough to choose among."""
    zones = [one for one in sorted(zone_names()) if _is_place(one)]
    found = _without_older_names([one for one in zones if country_of_zone(one) == country])
    return tuple(found) if len(found) <= CHOICES_MOST else ()


@cache
def _city_names() -> Mapping[str, str]:
    """Return how each city is written, by its plain name."""
    first_last = reversed(_named_cities())  # so that the zones' own names stand
    return {_city(name): name.rsplit("/", 1)[-1].replace("_", " ") for name, _ in first_last}


@cache
def _named_cities() -> tuple[tuple[str, str], ...]:
    """Return cities with their zones: zones' own names, big cities, in Spanish too.

    The Spanish names of the zones' cities are those of the Unicode locale data (babel).
    """
    named = [(name, name) for name in sorted(zone_names()) if _is_place(name)]
    spanish = Locale("es").time_zones
    named += [(str(names["city"]), str(zone)) for zone, names in spanish.items() if "city" in names]
    named += [(city.name, city.zone) for city in default_cities()]
    return tuple((city, zone) for city, zone in named if zone in zone_names())


@cache
def _zones_by_city() -> Mapping[str, tuple[str, ...]]:
    """Return the zones that a city's name may mean."""
    found: dict[str, tuple[str, ...]] = {}
    for city, zone in _named_cities():
        key = _city(city)
        found[key] = tuple(dict.fromkeys((*found.get(key, ()), zone)))
    return found


NO_GOAL = NONE_WORDS | {
    "no date", "no event", "no goal", "not yet", "not really", "no not really", "no idea",
    "don't know", "dont know", "i don't know", "i dont know", "dunno", "nothing special",
    "no nothing", "nothing yet", "no not yet", "nope nothing", "not sure", "ni idea", "no se",
    "no lo se", "nothing en especial", "no nothing en especial", "de momento no", "no de momento",
    "por ahora no", "no por ahora",
}  # fmt: skip
WITHOUT_A_DATE = re.compile(
    r"[\s,;.:(-]*\b(?:no|without a) (?:date|event)\b[).\s]*$", re.IGNORECASE
)
"""What ends a goal and only says that it has no date."""


def event_of(text: str, *, today: date) -> Answer:
    """Read a goal with or without a date; a date that cannot be read is asked for again."""
    said = tidy(text)
    if " ".join(re.sub(r"[,.;]", " ", said).split()) in NO_GOAL:
        return Heard({"on": None, "goal": ""})
    goal = WITHOUT_A_DATE.sub("", " ".join(text.split()))[:GOAL_MOST]
    found = next(
        (one for way in (ISO, DOTTED, DAY_FIRST, MONTH_FIRST) if (one := way.search(said))), None
    )
    if found is None:
        if is_city(text):
            return Unclear(Why.EVENT_CITY)
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
