"""Courtesies: an "ok", a "thanks", a thumb. They ask nothing of anybody.

A yes or no is none: it may answer what the coach asked.
"""

import re
import unicodedata

WORDS = frozenset(
    (
        *("ok", "okay", "k", "kk", "cool", "great", "nice", "perfect", "lol", "haha", "bye"),
        *("thanks", "thank", "thx", "ty", "ta", "cheers", "gracias", "vale"),
        *("you", "u", "so", "much", "very", "a", "lot"),
    )
)
LONGEST = 6  # [words] ch: more than a few words may hold something after all


def is_courtesy(text: str) -> bool:
    """Tell whether a message holds nothing but courtesies and signs; "?" always asks something."""
    if "?" in text:
        return False
    words = re.findall(r"[^\W\d_]+", text.casefold())
    if any(unicodedata.category(letter) == "Nd" for letter in text):
        return False
    return len(words) <= LONGEST and all(word in WORDS for word in words)
