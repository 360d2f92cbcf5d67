"""The shapes and patterns that carry meaning, so that no colour has to."""

from dataclasses import dataclass

from bot.pictures.look import DEEP, INK, PALE, RUST, SOFT
from bot.pictures.values import UNKNOWN


@dataclass(frozen=True)
class Shape:
    """A marker, drawn filled or as an outline."""

    marker: str
    colour: str
    is_filled: bool = True


LEVELS = {
    UNKNOWN: Shape("$?$", INK),
    "none": Shape("_", SOFT),
    "watch": Shape("o", DEEP, is_filled=False),
    "ease": Shape("v", RUST, is_filled=False),
    "rest": Shape("s", RUST),
    "clinician": Shape("P", RUST),
    "emergency": Shape("X", INK),
}
"""By level: the graver, the fuller. Each is another marker; a question mark where none is known."""

DONE = Shape("o", DEEP)
DONE_OTHER_LOAD = Shape("D", DEEP, is_filled=False)
ASKED = Shape("_", RUST)
PAIN_OF_SESSION = Shape("s", RUST)
PAIN_OF_MORNING = Shape("^", INK, is_filled=False)
MAIN_EVENT = Shape("*", RUST)
OTHER_EVENT = Shape("d", RUST, is_filled=False)


@dataclass(frozen=True)
class Pattern:
    """How the strip of a week is filled; ``line`` is how it is framed."""

    fill: str
    hatch: str | None
    line: str = "-"


WEEKS = {
    "ordinary": Pattern(DEEP, None),
    "lighter": Pattern(PALE, "/"),
    "band_only": Pattern(PALE, "xx"),
    "returning": Pattern(PALE, "\\\\"),
    "taper": Pattern(PALE, "|||"),
    "in_season": Pattern(PALE, "--"),
    "easy_after": Pattern(PALE, ".."),
    "break": Pattern("none", None, ":"),
}
"""By what a week is for: an ordinary one is full, every other has a pattern of its own."""
