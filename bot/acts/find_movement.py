"""Which movement of the library a coach's words name, and what is written behind the name."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from difflib import get_close_matches

from bot.acts.find_athlete import folded
from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Movement

NAME_WORDS_MOST = 6  # [words] ch: no name of the library is longer
NEAR_CUTOFF = 0.75  # [ratio] ch: one slip in a word, not another word


@dataclass(frozen=True)
class MovementsNamed:
    """What the first words may name, none, one or several, and the words behind them."""

    found: tuple[Movement, ...]
    asked: str
    rest: str


def movements_named(text: str, *, library: Library, among: Iterable[str] = ()) -> MovementsNamed:
    """Take the longest run of first words that names a movement in full or by whole words.

    Of several matches those ``among`` the given keys go first: what is in the plan is meant.
    """
    words = list(re.finditer(r"\S+", text))
    keys = frozenset(among)
    for taken in range(min(NAME_WORDS_MOST, len(words)), 0, -1):
        asked = text[words[0].start() : words[taken - 1].end()].strip(" ,.:;—-")
        found = _matches(asked, library)
        if found:
            rest = text[words[taken - 1].end() :].lstrip(" ,.:;—-")
            return MovementsNamed(found=_preferred(found, keys), asked=asked, rest=rest.strip())
    asked = words[0].group() if words else ""
    return MovementsNamed(found=(), asked=asked, rest=text)


def _preferred(found: Sequence[Movement], keys: frozenset[str]) -> tuple[Movement, ...]:
    here = tuple(movement for movement in found if movement.key in keys)
    return here or tuple(found)


def _matches(asked: str, library: Library) -> tuple[Movement, ...]:
    wanted = _words(asked)
    movements = tuple(library.movements.values())
    exact = tuple(one for one in movements if any(wanted == name for name in _names(one)))
    if exact or not wanted:
        return exact
    part = tuple(one for one in movements if any(_holds(name, wanted) for name in _names(one)))
    return part or _near(wanted, movements)


def _near(wanted: list[str], movements: Sequence[Movement]) -> tuple[Movement, ...]:
    """Match a whole name with a slip of the thumb in it; single words are too short for that."""
    if len(wanted) < 2:
        return ()
    names = {" ".join(name): one for one in movements for name in _names(one)}
    close = get_close_matches(" ".join(wanted), list(names), n=1, cutoff=NEAR_CUTOFF)
    is_as_long = bool(close) and len(close[0].split()) == len(wanted)
    return (names[close[0]],) if is_as_long else ()


def _names(movement: Movement) -> list[list[str]]:
    return [_words(one) for one in (movement.name, movement.key, *movement.aliases)]


def _words(text: str) -> list[str]:
    plain = re.sub(r"[^\w]+|_", " ", folded(text))
    return [_singular(word) for word in plain.split()]


def _singular(word: str) -> str:
    is_plural = len(word) > 3 and word.endswith("s") and not word.endswith("ss")
    return word[:-1] if is_plural else word


def _holds(name: Sequence[str], wanted: Sequence[str]) -> bool:
    """Tell whether the wanted words stand in the name, one behind the other."""
    count = len(wanted)
    return any(list(name[at : at + count]) == list(wanted) for at in range(len(name)))
