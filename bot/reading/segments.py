"""Which part of a message speaks of which item."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from bot.reading.tokens import Token
from bot.reading.words import Mark

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


SKIPPING = frozenset({Mark.SKIPPED, Mark.NOT, Mark.CANT, Mark.NO_TIME, Mark.NO_EQUIPMENT})


@dataclass
class Segment:
    """A stretch of tokens about the items in ``refs``; about none by name when empty.

    ``is_strange`` when an unknown word stands right before the name ("bench press");
    ``number_decided`` when the name behind the item's number had a slip that named another.
    """

    refs: frozenset[str] = frozenset()
    tokens: list[Token] = field(default_factory=list)
    is_mended: bool = False
    is_strange: bool = False
    number_decided: bool = False

    @property
    def says_something(self) -> bool:
        """True when there is a figure or a word such as "done" in it."""
        return any(token.mark in SAYING for token in self.tokens)


def segments(tokens: Sequence[Token]) -> tuple[Segment, list[Segment]]:
    """Return what stands before any name, and a segment for each name.

    Names stand in front of their figures, or, when the message begins with figures and ends
    with a name, behind them.
    """
    before, named = _cut(_skips_behind(tokens))
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
        if token.mark is not Mark.ITEM:
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


def _skips_behind(tokens: Sequence[Token]) -> list[Token]:
    """Turn "skipped the carry" and "no carry" into "carry skipped"."""
    turned = list(tokens)
    for at, token in enumerate(tokens):
        if token.mark not in SKIPPING:
            continue
        after = at + 1
        while after < len(tokens) and tokens[after].mark is Mark.FILLER:
            after += 1
        if (
            after < len(tokens)
            and tokens[after].mark is Mark.ITEM
            and not _figure(tokens, after + 1)
        ):
            turned[at : after + 1] = [
                *[Token(Mark.COMMA, "")] * (after - at),
                tokens[after],
            ]
            turned[at] = tokens[after]
            turned[after] = Token(Mark.SKIPPED, token.text)
    return turned


def _figure(tokens: Sequence[Token], at: int) -> bool:
    return at < len(tokens) and tokens[at].mark in {Mark.NUMBER, Mark.COUNT}
