"""Whether a message is in the chat's own language: by the catalogue, and by small words.

The catalogue's own texts are looked for piece by piece, in the other language; what somebody typed
is neither, since the walkers type words of no language.
"""

import re
from functools import cache

from bot.wording.catalogue.spoken import SUBJECTS, read_catalogue

PIECE = re.compile(r"\{[^{}]*\}|<[^<>]*>|\n")
WORDS_LEAST = 3  # [words] CHOSEN: shorter pieces are alike in many tongues
SMALL_WORDS = {
    "en": re.compile(
        r"\b(the|and|your|with|what|this|please|which|nothing|is|are|of|you|have|was|until|from|"
        r"there|week|today|left|right|sets?)\b",
        re.IGNORECASE,
    ),
    "es": re.compile(
        r"\b(el|los|las|que|para|una|del|tus?|está|día|semana|hoy|nada|izquierd[oa]|derech[oa]|"
        r"series?|sesión|dolor|muñeca)\b",
        re.IGNORECASE,
    ),
}
"""Words of one language that the other does not have."""
NAMED_IN_BOTH = re.compile(r"English|Español|/\w+|[\w./]+\.(yaml|csv|json|ics|pdf)|https?://\S+")


def foreign(text: str, *, language: str) -> str:
    """Return what stands in a text of the other language; empty where nothing does."""
    other = "es" if language == "en" else "en"
    plain = NAMED_IN_BOTH.sub(" ", text)
    for piece in pieces(other):
        if piece in plain:
            return piece
    found = SMALL_WORDS[other].search(plain)
    return found.group() if found else ""


@cache
def pieces(language: str) -> tuple[str, ...]:
    """Return the pieces of the catalogue's texts in a language that the other never says."""
    said: dict[str, set[str]] = {"en": set(), "es": set()}
    for subject in SUBJECTS:
        for message in read_catalogue("es", subject):
            ids = message.id if isinstance(message.id, tuple) else (message.id,)
            texts = message.string if isinstance(message.string, tuple) else (message.string,)
            for which, several in (("en", ids), ("es", texts)):
                said[which] |= {piece for one in several if one for piece in _pieces_of(str(one))}
    other = "es" if language == "en" else "en"
    return tuple(sorted(said[language] - said[other]))


def _pieces_of(text: str) -> set[str]:
    found = {one.strip() for one in PIECE.split(text)}
    return {one for one in found if len(one.split()) >= WORDS_LEAST}
