"""When two ways of writing a movement's name are the same name."""

import re
import unicodedata

_APART = re.compile(r"[^\w]+|_")


def folded(text: str) -> str:
    """Return what is left of a name when spelling habits are taken away.

    Case, accents, hyphens, spaces, apostrophes and a plural ``s`` do not count, so "Push-ups",
    "pushup" and "PUSH UP" are one name. A plural in the middle of words written as one stays, as
    nobody can tell it from a word that begins with s. Empty when the text has no letter or figure.
    """
    # Taken apart before and after: a decorated capital is no capital until it is taken apart.
    plain = unicodedata.normalize("NFKD", text.replace("’", "'")).casefold()
    bare = "".join(
        letter
        for letter in unicodedata.normalize("NFKD", plain)
        if not unicodedata.combining(letter)
    ).replace("'", "")
    return "".join(word.removesuffix("s") for word in _APART.split(bare))
