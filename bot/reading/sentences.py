"""The sentences of a reply: questions and plans are put aside, strange words make figures doubtful."""

from collections.abc import Sequence

from bot.reading.tokens import Token
from bot.reading.words import FIGURES, Mark

ENDS = frozenset({Mark.LINE, Mark.STOP_SIGN, Mark.QUESTION})
TELLING = FIGURES | {
    *(Mark.PLANNED, Mark.DONE, Mark.SKIPPED, Mark.STOPPED, Mark.ITEM, Mark.EVERYTHING),
    *(Mark.CANT, Mark.SAME, Mark.RISKY, Mark.ONLY),
}
"""Marks of a sentence that says something about what was done, or casts doubt on it."""
PLAN_WORDS = 3  # [tokens] ch: a shorter clause with "next" belongs to the figures before it


def sentences(tokens: Sequence[Token], ends: frozenset[Mark] = ENDS) -> list[list[Token]]:
    """Return the sentences in order; the sign that ends one belongs to it."""
    found: list[list[Token]] = [[]]
    for token in tokens:
        found[-1].append(token)
        if token.mark in ends:
            found.append([])
    return [sentence for sentence in found if sentence]


def without_questions(tokens: Sequence[Token]) -> tuple[list[Token], bool, bool]:
    """Leave out the sentences that end in a question mark; also tell whether any did.

    One with figures and no word such as "should" ("45 40 38 ok?") stays, to be confirmed: then
    the last value is true.
    """
    kept: list[Token] = []
    found, is_doubtful = False, False
    for sentence in sentences(tokens):
        if sentence[-1].mark is not Mark.QUESTION:
            kept += sentence
            continue
        marks = {token.mark for token in sentence}
        found = True
        if marks & FIGURES and Mark.RISKY not in marks:
            is_doubtful = True
            kept += sentence[:-1]
    return kept, found, is_doubtful


def without_plans(tokens: Sequence[Token]) -> list[Token]:
    """Leave out what is told of another time behind the figures: "45 40 38. Will try 50 soon"."""
    kept: list[Token] = []
    has_figures = False
    for sentence in sentences(tokens, ENDS | {Mark.COMMA}):
        marks = {token.mark for token in sentence}
        is_plan = Mark.LATER in marks and not marks & TELLING
        is_own = not kept or kept[-1].mark in ENDS or len(sentence) > PLAN_WORDS
        if not (is_plan and has_figures and is_own):
            kept += sentence
        has_figures = has_figures or bool(marks & FIGURES)
    return kept


def has_strange_words(tokens: Sequence[Token]) -> bool:
    """Tell whether an unknown word stands before or among the figures of a sentence.

    It may say whose figures they are, or that they are none: "neighbour 45 40 38". Behind the
    figures it is a remark. A lone figure is doubtful beside any unknown word.
    """
    figures = sum(token.mark in FIGURES for token in tokens)
    for sentence in sentences(tokens):
        last = max((i for i, t in enumerate(sentence) if t.mark in FIGURES), default=-1)
        if any(_is_strange(sentence, at) for at in range(last + 1)):
            return True
    return figures == 1 and any(token.mark is Mark.WORD for token in tokens)


def _is_strange(sentence: Sequence[Token], at: int) -> bool:
    """Tell whether a word is unknown and no part of a name that its item's number decides."""
    if sentence[at].mark is not Mark.WORD:
        return False
    before = sentence[at - 1] if at > 0 else None
    return not (before is not None and before.mark is Mark.ITEM and before.n)
