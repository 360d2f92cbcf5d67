"""Which part of a message speaks of which item."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from bot.reading.tokens import Token
from bot.reading.words import FIGURES, Mark

SAYING = frozenset(
    {
        Mark.NUMBER,
        Mark.COUNT,
        Mark.RATING,
        Mark.BODYWEIGHT,
        Mark.PLANNED,
        Mark.DONE,
        Mark.SKIPPED,
        Mark.SAME,
        Mark.JUNK,
    }
)
"""Marks that say something about an item."""


JOINING = frozenset(
    {
        *(Mark.COMMA, Mark.AND, Mark.FILLER, Mark.OR, Mark.SLASH, Mark.PLUS, Mark.DASH, Mark.LINE),
        *(Mark.ALL, Mark.EACH_SIDE, Mark.STOP_SIGN, Mark.BUT),
    }
)
"""Marks that join names and say nothing about them."""
SKIPPING = frozenset({Mark.SKIPPED, Mark.NOT, Mark.CANT, Mark.NO_TIME, Mark.NO_EQUIPMENT})


@dataclass
class Segment:
    """A stretch of tokens about the items in ``refs``; about none by name when empty.

    ``is_strange`` when an unknown word stands right before the name ("bench press");
    ``number_decided`` when the name behind the item's number had a slip that named another;
    ``is_rest`` when it is about all other items ("the rest").
    """

    refs: frozenset[str] = frozenset()
    tokens: list[Token] = field(default_factory=list)
    is_mended: bool = False
    is_strange: bool = False
    number_decided: bool = False
    is_rest: bool = False

    @property
    def says_something(self) -> bool:
        """True when there is a figure or a word such as "done" in it."""
        return any(token.mark in SAYING for token in self.tokens)

    @property
    def is_bare(self) -> bool:
        """True when nothing but signs and joining words stands behind the name."""
        return all(token.mark in JOINING for token in self.tokens)

    @property
    def is_shared(self) -> bool:
        """True when what is said behind this name may also be about the names before it."""
        stood_in_front = any(
            token.n == IN_FRONT and token.mark is Mark.SKIPPED for token in self.tokens
        )
        return not (self.has_figures or self.is_rest or stood_in_front)

    @property
    def has_figures(self) -> bool:
        """True when a figure is said about it."""
        return any(token.mark in FIGURES for token in self.tokens)


def segments(tokens: Sequence[Token]) -> tuple[Segment, list[Segment]]:
    """Return what stands before any name, and a segment for each name.

    Names stand in front of their figures, or, when the message begins with figures and ends
    with a name, behind them.
    """
    before, named = _cut(_counts_behind(_skips_behind(_left_out(tokens))))
    if before.says_something and named and not named[-1].says_something:
        stretches = [before, *named[:-1]]
        if all(stretch.says_something for stretch in stretches):
            shifted = [
                replace(name, tokens=stretch.tokens)
                for name, stretch in zip(named, stretches, strict=True)
            ]
            shifted[-1].tokens += named[-1].tokens
            return Segment(), shifted
    return before, named


def _cut(tokens: Sequence[Token]) -> tuple[Segment, list[Segment]]:
    before, named = Segment(), list[Segment]()
    is_numbered = False  # the last name was an item's number
    for token in tokens:
        here = named[-1] if named else before
        if token.mark is Mark.REST:
            named.append(Segment(is_rest=True))
            is_numbered = False
        elif token.mark is not Mark.ITEM:
            here.tokens.append(token)
        elif named and not here.says_something and here.refs & token.refs and not here.tokens:
            here.refs &= token.refs
        elif is_numbered and not token.n and _is_bare_name(here):
            _take_by_number(here, token)
        else:
            is_strange = bool(here.tokens) and here.tokens[-1].mark is Mark.WORD
            named.append(Segment(token.refs, [], token.is_mended, is_strange))
            is_numbered = bool(token.n)
    return before, named


def _is_bare_name(here: Segment) -> bool:
    """Tell whether nothing but words stands behind an item's number so far."""
    return all(token.mark in {Mark.WORD, Mark.FILLER} for token in here.tokens)


def _take_by_number(here: Segment, token: Token) -> None:
    """Let the number decide over a name with a slip; a clean name of another item is asked."""
    has_slip = token.is_mended or any(one.mark is Mark.WORD for one in here.tokens)
    if here.refs & token.refs:
        here.refs &= token.refs
    elif has_slip:
        here.number_decided = True
    else:
        here.refs |= token.refs


def _left_out(tokens: Sequence[Token]) -> list[Token]:
    """Turn "left the hangs out" into "skipped the hangs"."""
    turned = list(tokens)
    for at, token in enumerate(tokens):
        marks = [one.mark for one in tokens[at : at + 5]]
        if token.mark is not Mark.LEFT_WORD or Mark.ITEM not in marks[:3]:
            continue
        out = at + marks.index(Mark.ITEM) + 1
        if out < len(tokens) and tokens[out].text == "out":
            turned[at] = Token(Mark.SKIPPED, "left out")
            turned[out] = Token(Mark.FILLER, "out")
    return turned


def _counts_behind(tokens: Sequence[Token]) -> list[Token]:
    """Turn "two sets of plank" into "plank two sets of"."""
    turned = list(tokens)
    for at in range(len(turned) - 1):
        after = at + 1
        while after < len(turned) and turned[after].mark is Mark.FILLER:
            after += 1
        is_count = turned[at].mark is Mark.COUNT and after > at + 1
        if is_count and after < len(turned) and turned[after].mark is Mark.ITEM:
            turned[at : after + 1] = [turned[after], turned[at], *turned[at + 1 : after]]
    return turned


def _skips_behind(tokens: Sequence[Token]) -> list[Token]:
    """Turn "skipped the carry and the row" and "no carry" into "carry skipped, row skipped"."""
    turned: list[Token] = []
    at = 0
    while at < len(tokens):
        names = _names_behind(tokens, at) if _is_skipping(tokens, at) else []
        if not names:
            turned.append(tokens[at])
            at += 1
            continue
        for name in names:
            skipped = Token(Mark.SKIPPED, tokens[at].text, n=IN_FRONT)
            turned += [tokens[name], skipped, Token(Mark.COMMA, "")]
        at = names[-1] + 1
    return turned


def _is_skipping(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether a word takes back what it stands before; "not" alone does not."""
    token = tokens[at]
    return token.mark in SKIPPING and token.text not in {"not", "nor"}


def _names_behind(tokens: Sequence[Token], at: int) -> list[int]:
    """Return where the names stand that a skipping word covers, up to one with figures."""
    names: list[int] = []
    between = {Mark.FILLER} | ({Mark.COMMA, Mark.AND, Mark.OR, Mark.SLASH})
    i = at + 1
    while i < len(tokens):
        if tokens[i].mark in NAMES:
            if _says(tokens, i + 1):
                break
            names.append(i)
        elif tokens[i].mark not in (between if names else {Mark.FILLER}):
            break
        i += 1
    return names


IN_FRONT = -1
"""Marks a word that stood in front of its name: it says nothing about the names before it."""
NAMES = frozenset({Mark.ITEM, Mark.REST})


def _says(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether something of its own is said right behind a name."""
    marks = {Mark.NUMBER, Mark.COUNT, Mark.PLANNED, Mark.DONE, Mark.SKIPPED}
    while at < len(tokens) and tokens[at].mark is Mark.FILLER:
        at += 1
    return at < len(tokens) and tokens[at].mark in marks
