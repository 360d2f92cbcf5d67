"""Which movement of the library somebody's words name, and what is written behind the name."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from difflib import SequenceMatcher, get_close_matches

from bot.acts.find_athlete import folded
from bot.wording.movement_names import names_to_read
from bot.wording.tongue import Tongue
from scheduler.catalogue.names import folded as as_one_name
from scheduler.catalogue.values import Movement

NAME_WORDS_MOST = 6  # [words] ch: no name of the library is longer
NEAR_CUTOFF = 0.75  # [ratio] ch: one slip in a word, not another word
WORD_CUTOFF = 0.7  # [ratio] ch: each word of it, so that none is another word
CHOICES_MOST = 10  # [buttons] ch: who needs more writes more of the name


@dataclass(frozen=True)
class MovementsNamed:
    """What the first words may name, none, one or several, and the words behind them."""

    found: tuple[Movement, ...]
    asked: str
    rest: str


@dataclass(frozen=True)
class _Known:
    """A movement with every name that it may be called, in words."""

    movement: Movement
    own: tuple[str, ...]
    others: tuple[str, ...]

    @property
    def names(self) -> list[list[str]]:
        return [_words(name) for name in (*self.own, *self.others)]


def movements_named(
    text: str, *, movements: Iterable[Movement], tongue: Tongue, among: Iterable[str] = ()
) -> MovementsNamed:
    """Take the longest run of first words that names a movement in full or by whole words.

    Of several matches those ``among`` the given keys go first: what is in the plan is meant.
    Names in the reader's own language (``tongue``) count as well as the library's.
    """
    words = list(re.finditer(r"\S+", text))
    keys, known = frozenset(among), _known(movements, tongue)
    for taken in range(min(NAME_WORDS_MOST, len(words)), 0, -1):
        asked = text[words[0].start() : words[taken - 1].end()].strip(" ,.:;—-")
        found = _matches(asked, known)
        if found:
            rest = text[words[taken - 1].end() :].lstrip(" ,.:;—-")
            return MovementsNamed(found=_preferred(found, keys), asked=asked, rest=rest.strip())
    asked = words[0].group() if words else ""
    return MovementsNamed(found=(), asked=asked, rest=text)


def movements_called(
    text: str, *, movements: Iterable[Movement], tongue: Tongue
) -> tuple[Movement, ...]:
    """Return what a whole text names; where nothing else may follow, parts of words do too."""
    known = _known(movements, tongue)
    found = _matches(text, known) or _in_parts(folded(text).split(), known)
    return tuple(found)[:CHOICES_MOST]


def movements_asked(
    text: str, *, movements: Sequence[Movement], tongues: Iterable[Tongue]
) -> tuple[Movement, ...]:
    """Return what a question's words name as a whole, in the first tongue that knows it.

    Nothing where words are left over, or where so many fit that none is meant.
    """
    for tongue in tongues:
        named = movements_named(text, movements=movements, tongue=tongue)
        if named.found and not named.rest and len(named.found) <= CHOICES_MOST:
            return named.found
    return ()


def _known(movements: Iterable[Movement], tongue: Tongue) -> list[_Known]:
    found = []
    for one in movements:
        first, *others = names_to_read(tongue, one)
        found.append(_Known(one, (first, one.name, one.key), tuple(others)))
    return found


def _preferred(found: Sequence[Movement], keys: frozenset[str]) -> tuple[Movement, ...]:
    here = tuple(movement for movement in found if movement.key in keys)
    return here or tuple(found)


def _matches(asked: str, known: Sequence[_Known]) -> tuple[Movement, ...]:
    wanted = _words(asked)
    if not wanted:
        return ()
    exact = _exact(asked, known)
    if exact:
        return exact
    part = tuple(one.movement for one in known if any(_holds(name, wanted) for name in one.names))
    return part or _near(wanted, known)


def _exact(asked: str, known: Sequence[_Known]) -> tuple[Movement, ...]:
    """Match a whole name, however it is spelled; a movement's own name goes before an alias."""
    wanted = as_one_name(asked)
    own = tuple(one.movement for one in known if wanted in map(as_one_name, one.own))
    if own or not wanted:
        return own
    return tuple(one.movement for one in known if wanted in map(as_one_name, one.others))


def _near(wanted: list[str], known: Sequence[_Known]) -> tuple[Movement, ...]:
    """Match a whole name with a slip of the thumb in it; single words are too short for that."""
    if len(wanted) < 2:
        return ()
    names = {" ".join(name): one.movement for one in known for name in one.names}
    close = get_close_matches(" ".join(wanted), list(names), n=1, cutoff=NEAR_CUTOFF)
    if not close or not _is_word_by_word(close[0].split(), wanted):
        return ()  # the words behind a name are no slips of a longer name
    return (names[close[0]],)


def _is_word_by_word(name: Sequence[str], wanted: Sequence[str]) -> bool:
    return len(name) == len(wanted) and all(
        SequenceMatcher(None, one, other).ratio() >= WORD_CUTOFF
        for one, other in zip(name, wanted, strict=True)
    )


def _in_parts(wanted: Sequence[str], known: Sequence[_Known]) -> tuple[Movement, ...]:
    """Match names that hold every word, in any order and as a part of another word."""
    return tuple(
        one.movement
        for one in known
        if wanted
        and any(
            all(word in folded(name) for word in wanted) for name in (*one.own[:2], *one.others)
        )
    )


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
