"""Bring a message into the shape that the red-flag reader looks at, and keep where it came from.

Lower case, no accents, no apostrophes, words and signs apart by one space, slips of the finger
mended towards the words that matter. Every step is linear in the length of the message.
"""

import re
import unicodedata
from bisect import bisect_right
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

LONGEST_TEXT = 4096  # [characters] botapi: one message
LEAST_MENDED = 5  # [letters] ch: shorter words have too many neighbours
APOSTROPHES = "'’‘`´ʼ′＇"
SENTENCE_SIGNS = ".!?;…\n\r。！？¡¿"
COMMA_SIGNS = ",:()[]–—/،、"
LAUGHS = "😂🤣😅💀😆😹☠😜😝😁😄"
TOKEN = re.compile(
    r"\d+[.,]\d+(?!\d|[.,]\d)|[^\W_]+|[" + re.escape(SENTENCE_SIGNS + COMMA_SIGNS + LAUGHS) + "]"
)


@dataclass(frozen=True)
class Text:
    """A message as words and signs.

    ``shape`` is the words joined by single spaces: ``.`` ends a sentence, ``?`` a question,
    ``,`` a part, ``haha`` stands for a laugh.
    ``starts`` are the places of the words in ``shape``, ``spans`` those in the message.
    """

    words: tuple[str, ...]
    shape: str
    starts: tuple[int, ...]
    spans: tuple[tuple[int, int], ...]

    def word_at(self, place: int) -> int:
        """Return which word stands at a place of the shape."""
        return max(bisect_right(self.starts, place) - 1, 0)


def shaped(
    message: str,
    *,
    mending: Mapping[str, str],
    written_out: Mapping[str, str],
    stems: tuple[str, ...] = (),
    joined: Mapping[tuple[str, str], str] = MappingProxyType({}),
) -> Text:
    """Return the message in the reader's shape.

    Args:
        message: any text; what goes beyond the longest message is not looked at.
        mending: how slips are mended: a word with one letter left out, to the word meant.
        written_out: whole words to be written another way, before anything else.
        stems: beginnings whose words are no slips.
        joined: pairs of words that are read as one.

    """
    plain, places = _plain(message[:LONGEST_TEXT])
    words: list[str] = []
    spans: list[tuple[int, int]] = []
    for found in TOKEN.finditer(plain):
        start, end = places[found.start()], places[found.end() - 1] + 1
        for word in _meant(found.group(), mending, written_out, stems).split(" "):
            if words and (words[-1], word) in joined:
                words[-1], spans[-1] = joined[words[-1], word], (spans[-1][0], end)
                continue
            words.append(word)
            spans.append((start, end))
    starts, place = [], 0
    for word in words:
        starts.append(place)
        place += len(word) + 1
    return Text(tuple(words), " ".join(words), tuple(starts), tuple(spans))


def plain_letters(message: str) -> str:
    """Return the message in lower case without accents and apostrophes, its signs kept."""
    return _plain(message[:LONGEST_TEXT])[0]


def _plain(message: str) -> tuple[str, list[int]]:
    """Return lower-case letters without accents and apostrophes, each with its place."""
    letters: list[str] = []
    places: list[int] = []
    for place, letter in enumerate(message):
        if len(letters) >= LONGEST_TEXT:
            break  # some signs are written out as many letters
        if letter in APOSTROPHES:
            continue
        if letter in LAUGHS or letter in SENTENCE_SIGNS or letter in COMMA_SIGNS:
            letters.append(letter)
            places.append(place)
            continue
        for part in unicodedata.normalize("NFKD", letter).casefold():
            kind = unicodedata.category(part)
            if kind in {"Mn", "Cf"}:
                continue
            letters.append(part)
            places.append(place)
    return "".join(letters), places


def _meant(
    word: str, mending: Mapping[str, str], written_out: Mapping[str, str], stems: tuple[str, ...]
) -> str:
    if word[0].isdigit() and not word.isalnum():
        return re.split("[.,]", word)[0]
    if word in LAUGHS:
        return "haha"
    if word in "?？":
        return "?"
    if word in SENTENCE_SIGNS:
        return "."
    if word in COMMA_SIGNS:
        return ","
    if word in written_out:
        return written_out[word]
    return word if word.startswith(stems) else mended(word, mending)


def mended(word: str, mending: Mapping[str, str]) -> str:
    """Return the word that one slip away was meant, else the word itself."""
    if mending.get(word) in {word, ""}:
        return word
    squeezed = re.sub(r"(.)\1{2,}", r"\1", word) if len(word) <= 40 else word
    if squeezed != word and mending.get(squeezed) == squeezed:
        return squeezed
    if not LEAST_MENDED <= len(word) <= 20 or not word.isalpha():
        return word
    return mending.get(word) or next(
        (mending[near] for near in _shortened(word) if len(mending.get(near, "")) >= LEAST_MENDED),
        word,
    )


def slips_of(vocabulary: frozenset[str], *, protected: frozenset[str]) -> dict[str, str]:
    """Return every word, and every word with one letter left out, to the word meant.

    ``protected`` are ordinary words that look like a slip and are none: they map to nothing.
    A slip keeps the first letter.
    """
    slips: dict[str, str] = {}
    for word in sorted(vocabulary, key=len):
        if len(word) >= LEAST_MENDED:
            for near in _shortened(word):
                slips.setdefault(near, word)
    slips.update({word: word for word in vocabulary})
    slips.update(dict.fromkeys(protected, ""))
    return slips


def _shortened(word: str) -> list[str]:
    """Return the word with each letter but the first left out."""
    return [word[:place] + word[place + 1 :] for place in range(1, len(word))]
