"""Which place of the body and which side a coach's first words name, and what stands behind."""

import re
import unicodedata
from dataclasses import dataclass

from bot.reading.body_words import PARTS, SITES, WEAK_SITES
from scheduler.pain.values import MIDLINE, Side, Site

SIDES = {
    "left": Side.LEFT,
    "l": Side.LEFT,
    "right": Side.RIGHT,
    "r": Side.RIGHT,
    "both": Side.BOTH,
    "izquierda": Side.LEFT,
    "izquierdo": Side.LEFT,
    "derecha": Side.RIGHT,
    "derecho": Side.RIGHT,
    "ambos": Side.BOTH,
    "ambas": Side.BOTH,
}
BESIDE = frozenset({"of", "the", "her", "his", "their", "side", "sides", "de", "la", "el", "del"})
"""Words that may stand around a place without meaning anything of their own."""
ARM_WORDS = frozenset({"side", "sides"})
PLACE_WORDS_MOST = 4  # [words] ch: as long as the longest name of a place
PLACES = {**WEAK_SITES, **SITES}


@dataclass(frozen=True)
class PlaceNamed:
    """The sites that the words may mean, none where they name no place; the side if said."""

    sites: tuple[Site, ...]
    side: Side | None
    rest: str


def place_named(text: str) -> PlaceNamed:
    """Read ``left wrist``, ``elbow outer right``, ``wrist both`` at the beginning of a text."""
    words = list(re.finditer(r"\S+", text))
    plain = [_plain(word.group()) for word in words]
    at, side, part = 0, None, None
    sites: tuple[Site, ...] = ()
    while at < len(plain):
        word = plain[at]
        run = 0 if sites else _place_at(plain, at)
        if run:
            sites = PLACES[" ".join(plain[at : at + run])]
            at += run
        elif word in SIDES and side is None:
            side, at = SIDES[word], at + 1
        elif word in PARTS and part is None and _narrows(plain, at, sites):
            part, at = PARTS[word], at + 1
        elif _says_nothing(plain, at, sites):
            at += 1
        else:
            break
    rest = text[words[at - 1].end() :] if at else text
    narrowed = tuple(site for site in sites if site.value.split("_")[-1] == part)
    return PlaceNamed(sites=narrowed or sites, side=_side(sites, side), rest=rest.strip(" ,.:;—-"))


def _says_nothing(plain: list[str], at: int, sites: tuple[Site, ...]) -> bool:
    """Tell whether a word only joins a side to a place, or "side" stands behind its side."""
    if plain[at] in ARM_WORDS and at > 0 and plain[at - 1] in SIDES:
        return True
    return plain[at] in BESIDE and _goes_on(plain, at + 1, sites)


def _side(sites: tuple[Site, ...], side: Side | None) -> Side | None:
    is_middle = bool(sites) and all(site in MIDLINE for site in sites)
    return Side.BOTH if is_middle else side


def _place_at(plain: list[str], at: int) -> int:
    """Return how many words from here name a place [words]; 0 where none do."""
    longest = min(PLACE_WORDS_MOST, len(plain) - at)
    return next((n for n in range(longest, 0, -1) if " ".join(plain[at : at + n]) in PLACES), 0)


def _narrows(plain: list[str], at: int, sites: tuple[Site, ...]) -> bool:
    """Tell whether "outer" and the like belong to a place: one said, or one that follows."""
    if sites:
        return any(site.value.split("_")[-1] == PARTS[plain[at]] for site in sites)
    return _goes_on(plain, at + 1, sites)


def _goes_on(plain: list[str], at: int, sites: tuple[Site, ...]) -> bool:
    """Tell whether a place, side or part is still to come before any other word."""
    while at < len(plain):
        if plain[at] in SIDES or (not sites and _place_at(plain, at)):
            return True
        if plain[at] not in BESIDE and plain[at] not in PARTS:
            return False
        at += 1
    return False


def _plain(word: str) -> str:
    bare = unicodedata.normalize("NFKD", word.casefold().strip(",.:;()"))
    return "".join(letter for letter in bare if not unicodedata.combining(letter))
