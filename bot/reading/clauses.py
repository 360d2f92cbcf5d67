"""A stretch of a reply between two signs, and what was taken out of it."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from bot.reading.tokens import Token
from bot.reading.words import Mark
from scheduler.pain.values import Side

CLAUSE_ENDS = frozenset({Mark.LINE, Mark.COMMA, Mark.STOP_SIGN, Mark.QUESTION, Mark.BUT})
SIDE_MARKS = {
    Mark.LEFT: Side.LEFT,
    Mark.LEFT_WORD: Side.LEFT,
    Mark.RIGHT: Side.RIGHT,
    Mark.EACH_SIDE: Side.BOTH,
}
WORDS_OF_PAIN = frozenset({Mark.PAIN, Mark.SHARP, Mark.SORE, Mark.NO_PAIN})
PASSED_OVER = (
    WORDS_OF_PAIN
    | frozenset(SIDE_MARKS)
    | {
        Mark.FILLER,
        Mark.AT,
        Mark.ABOUT,
        Mark.PART,
        Mark.NOT,
        Mark.SAME,
    }
)
GAP = Token(Mark.COMMA, "")
"""Stands where something was taken out, so that its neighbours do not run together."""


@dataclass
class Clause:
    """A stretch of tokens between two signs, and what was taken from it."""

    tokens: list[Token]
    taken: set[int] = field(default_factory=set)

    def has(self, *marks: Mark) -> bool:
        """Tell whether any of the marks occurs."""
        return any(token.mark in marks for token in self.tokens)

    def find(self, mark: Mark) -> list[int]:
        """Return where the mark occurs."""
        return [i for i, token in enumerate(self.tokens) if token.mark is mark]

    def rest(self) -> list[Token]:
        """Return the tokens with a gap where something was taken."""
        return [GAP if i in self.taken else token for i, token in enumerate(self.tokens)]


def clauses(tokens: Sequence[Token]) -> Iterator[Clause]:
    """Yield the clauses; the sign that ends one belongs to it."""
    start = 0
    for i, token in enumerate(tokens):
        if token.mark in CLAUSE_ENDS:
            yield Clause(list(tokens[start : i + 1]))
            start = i + 1
    if start < len(tokens):
        yield Clause(list(tokens[start:]))
