"""A message that holds names of movements and figures, and nothing that could be a sign.

Names hold words of the body and of its positions ("one-arm lying reach", "shoulder-blade
squeeze"): by their likeness to other lines they may read like a sign. Nothing else is judged here.
"""

import re
from collections.abc import Iterable

from bot.reading.plain_letters import plain_letters

BESIDE = re.compile(
    # english: asking how it is done, saying that it was or was not done, and figures
    r"how|do|does|to|should|can|i|you|we|is|are|what|s|a|an|the|my|this|show|tell|explain|me|again|"
    r"exactly|please|done|and|swap|skip|skipped|skipping|x|reps?|sets?|kg|lbs?|secs?|seconds|min|"
    r"as|planned|last|one|each|side|rest|of|"
    # spanish, without accents
    r"como|se|hace|hacen|hago|hacer|haria|es|son|que|significa|el|la|los|las|una?|del?|explica|"
    r"explicame|por|favor|sin|hech[oa]s?|y|cambiar?|saltar|saltad[oa]|con|series?|repeticiones|"
    r"seg|segundos|estaba|previsto|ultim[oa]|cada|lado|resto|"
    # figures
    r"[\dx]+(?:kg|lbs?|s)?"
)
"""Words that say nothing of how anybody is, alone or together."""


def names_pattern(names: Iterable[str]) -> re.Pattern[str]:
    """Return what finds any of these names in plain words, the longest first."""
    plain = sorted({found for name in names if (found := _plain(name))}, key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, plain))})\b")


def is_movements_only(text: str, names: re.Pattern[str]) -> bool:
    """Tell whether a text holds a name, and beside names nothing but figures and plain words."""
    left, found = names.subn(" ", _plain(text))
    return found > 0 and all(BESIDE.fullmatch(word) for word in left.split())


def _plain(text: str) -> str:
    return " ".join(re.findall(r"[a-z0-9]+", plain_letters(text)))
