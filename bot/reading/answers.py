"""Read the answer to the one open question: "4", "none", "4+", "yes"."""

from collections.abc import Sequence
from typing import Any

from bot.reading.effort import HIGHEST_EFFORT, MOST_LEFT
from bot.reading.known import Expects, OpenQuestion, Reserve
from bot.reading.scores import counted
from bot.reading.tokens import Token
from bot.reading.values import PainMention
from bot.reading.words import Mark

PASSED = frozenset(
    {Mark.FILLER, Mark.COMMA, Mark.STOP_SIGN, Mark.LINE, Mark.AT, Mark.ABOUT, Mark.WORD}
)
BETWEEN = frozenset({Mark.DASH, Mark.OR, Mark.AND})
NOTHING = frozenset({Mark.NONE, Mark.NOT})

Answer = dict[str, Any]
"""What the answer adds to a reading, by its field."""


def read_answer(tokens: Sequence[Token], question: OpenQuestion) -> Answer:
    """Return the answer; empty when the tokens are no answer to this question."""
    spoken = [token for token in tokens if token.mark not in PASSED]
    is_nothing = len(spoken) == 1 and spoken[0].mark in NOTHING
    figures = [token for token in spoken if token.is_bare or token.mark is Mark.RATING]
    rest = [token for token in spoken if token not in figures]
    match question.expects:
        case Expects.YES_OR_NO:
            return _yes_or_no(spoken)
        case Expects.RESERVE:
            return _reserve(spoken, is_nothing=is_nothing)
        case Expects.EFFORT:
            return _effort(figures, rest)
        case Expects.PAIN:
            return _pain(figures, rest, question, is_nothing=is_nothing)


def _yes_or_no(spoken: Sequence[Token]) -> Answer:
    marks = {token.mark for token in spoken}
    if marks in ({Mark.YES}, {Mark.NOT}):
        return {"is_yes": marks == {Mark.YES}}
    return {}


def _reserve(spoken: Sequence[Token], *, is_nothing: bool) -> Answer:
    if is_nothing:
        return {"reserve": Reserve(left=0)}
    is_figure = bool(spoken) and spoken[0].mark is Mark.NUMBER and len(spoken[0].choices[0]) == 1
    marks = [token.mark for token in spoken[1:]]
    if not is_figure or marks not in ([], [Mark.PLUS]) or not 0 <= spoken[0].value <= MOST_LEFT:
        return {}
    if spoken[0].unit not in {None, Mark.SECONDS, Mark.REPS}:
        return {}
    return {"reserve": Reserve(left=spoken[0].value, is_at_least=bool(marks))}


def _effort(figures: Sequence[Token], rest: Sequence[Token]) -> Answer:
    is_one = len(figures) == 1 and not rest and len(figures[0].choices[0]) == 1
    if is_one and 0 <= figures[0].value <= HIGHEST_EFFORT:
        return {"effort": figures[0].value}
    return {}


def _pain(
    figures: Sequence[Token], rest: Sequence[Token], question: OpenQuestion, *, is_nothing: bool
) -> Answer:
    sites = (question.site,) if question.site else ()
    if is_nothing:
        return {"pains": (PainMention(sites=sites, side=question.side, score=0),)}
    if not 1 <= len(figures) <= 2 or any(token.mark not in BETWEEN for token in rest):
        return {}
    if len(figures) == 2 and not rest:
        return {}
    score, must_ask = counted([value for token in figures for value in token.choices[0]])
    mention = PainMention(sites=sites, side=question.side, score=score, must_ask=must_ask)
    return {"pains": (mention,)}
