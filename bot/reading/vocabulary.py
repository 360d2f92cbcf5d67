"""Which phrase means what to an athlete of a language: their own words first, then English ones."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from types import ModuleType

from bot.reading import words_de, words_en, words_es, words_fr, words_pt
from bot.reading.body_words import SITES, SITES_DE, SITES_FR, SITES_PT, WEAK_SITES
from bot.reading.words import Mark
from scheduler.pain.values import Site

READ_IN_FULL = frozenset({"en", "es"})
"""Languages that are read in full; of another only figures and what is unmistakable beside them."""
SHARED = frozenset(
    {
        *(Mark.TIMES, Mark.SETS, Mark.EFFORT, Mark.PLANNED, Mark.SKIPPED, Mark.UNDO),
        *(Mark.SECONDS, Mark.MINUTES, Mark.KG, Mark.LB, Mark.METRES, Mark.REPS, Mark.BODYWEIGHT),
        *(Mark.LEFT, Mark.RIGHT, Mark.EACH_SIDE, Mark.PAIN, Mark.NO_PAIN, Mark.KILOMETRES),
    }
)
"""English marks that are understood beside any other language."""
OTHER_MEANINGS: Mapping[str, frozenset[str]] = {
    "es": words_es.NOT_ENGLISH,
    "pt": frozenset({"a", "as", "no", "do", "me", "sting", "both", "l r"}),
    "de": frozenset({"both", "k", "tender", "stings"}),
    "fr": frozenset({"pain", "pains", "a", "sting", "both", "tender"}),
}
FOREIGN: Mapping[str, tuple[ModuleType, Mapping[str, tuple[Site, ...]]]] = {
    "pt": (words_pt, SITES_PT),
    "de": (words_de, SITES_DE),
    "fr": (words_fr, SITES_FR),
}
SLIP_FROM = 6  # [letters] ch: a letter left out of a shorter word makes another word too often
SWAP_FROM = 5  # [letters] ch
SLIPS_MENDED = frozenset({Mark.SITE, Mark.PLANNED, Mark.STOPPED, Mark.SKIPPED, Mark.PAIN})
NO_SLIPS = frozenset({"stings", "tender", "nothing", "planed", "striped", "stooped", "twinge"})


@dataclass(frozen=True, slots=True)
class Meaning:
    """What a phrase is: its mark, which set it names, which places."""

    mark: Mark
    n: int = 0
    sites: tuple[Site, ...] = ()


@dataclass(frozen=True)
class Vocabulary:
    """Every phrase of a language, as words, with its meaning; and one-letter slips of some."""

    phrases: Mapping[tuple[str, ...], Meaning]
    slips: Mapping[str, str]
    longest: int

    def mended(self, word: str) -> str:
        """Return the word that was meant by one letter left out, added or swapped, else itself."""
        if word in self.slips:
            return self.slips[word]
        if self.slips and len(word) >= SLIP_FROM + 1 and len(word) <= 2 * SLIP_FROM + 2:
            for near in _shortened(word):
                if (near,) in self.phrases and self.phrases[near,].mark in SLIPS_MENDED:
                    return near
        return word


@cache
def vocabulary(language: str) -> Vocabulary:
    """Return the words of a language."""
    phrases: dict[tuple[str, ...], Meaning] = {}
    for words, meaning in _entries(language):
        for spelling in _spellings(words):
            phrases.setdefault(tuple(spelling.split()), meaning)
    is_full = language in READ_IN_FULL
    slips = {
        slip: words[0]
        for words, meaning in phrases.items()
        if is_full and len(words) == 1 and meaning.mark in SLIPS_MENDED
        for slip in _slips(words[0])
        if (slip,) not in phrases and slip not in NO_SLIPS
    }
    return Vocabulary(phrases, slips, max(len(words) for words in phrases))


def words_with_meaning() -> frozenset[str]:
    """Return every word of the phrases of the languages that are read in full, but for chat."""
    return frozenset(
        word
        for language in READ_IN_FULL
        for words, meaning in vocabulary(language).phrases.items()
        if meaning.mark is not Mark.CHAT
        for word in words
    )


def foreign_words(language: str) -> frozenset[str]:
    """Return every word of a language's own phrases and places."""
    foreign, places = FOREIGN[language]
    phrases = [
        *(words for words, _ in _phrases(foreign.PHRASES)),
        *foreign.ORDINALS,
        *places,
    ]
    return frozenset(word for phrase in phrases for word in phrase.split())


def _entries(language: str) -> Iterable[tuple[str, Meaning]]:
    own, other = (words_es, words_en) if language == "es" else (words_en, words_es)
    if language in READ_IN_FULL:
        yield from _ordinals(own.ORDINALS)
        yield from _ordinals(other.ORDINALS)
        yield from _places(SITES, Mark.SITE)
        yield from _places(WEAK_SITES, Mark.WEAK_SITE)
        yield from _phrases({Mark.CHAT: words_en.COMPARED})
        yield from _phrases(own.PHRASES)
        yield from _without(_phrases(other.PHRASES), OTHER_MEANINGS.get(language, frozenset()))
        return
    foreign, places = FOREIGN[language]
    yield from _ordinals(foreign.ORDINALS)
    yield from _places(places, Mark.SITE)
    yield from _places(SITES, Mark.SITE)
    yield from _phrases(foreign.PHRASES)
    english = {mark: words for mark, words in words_en.PHRASES.items() if mark in SHARED}
    yield from _without(_phrases(english), OTHER_MEANINGS[language])


def _ordinals(ordinals: Mapping[str, int]) -> Iterable[tuple[str, Meaning]]:
    return ((words, Meaning(Mark.ORDINAL, n=n)) for words, n in ordinals.items())


def _places(places: Mapping[str, tuple[Site, ...]], mark: Mark) -> Iterable[tuple[str, Meaning]]:
    return ((words, Meaning(mark, sites=sites)) for words, sites in places.items())


def _phrases(phrases: Mapping[Mark, str]) -> Iterable[tuple[str, Meaning]]:
    return (
        (words, Meaning(mark)) for mark, several in phrases.items() for words in several.split("|")
    )


def _without(
    entries: Iterable[tuple[str, Meaning]], left_out: frozenset[str]
) -> Iterable[tuple[str, Meaning]]:
    return ((words, meaning) for words, meaning in entries if words not in left_out)


def _spellings(words: str) -> Sequence[str]:
    """Return a phrase without its apostrophes, and with a space for each."""
    return (words,) if "'" not in words else (words.replace("'", ""), words.replace("'", " "))


def _slips(word: str) -> Iterable[str]:
    if len(word) >= SLIP_FROM:
        yield from _shortened(word)
    if len(word) >= SWAP_FROM:
        for at in range(1, len(word) - 1):
            if word[at] != word[at + 1]:
                yield word[:at] + word[at + 1] + word[at] + word[at + 2 :]


def _shortened(word: str) -> Iterable[str]:
    return (word[:at] + word[at + 1 :] for at in range(1, len(word)))
