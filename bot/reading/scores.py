"""Find the score of a pain: one figure, a range, "4/10", "3 de 10"; never a row of results."""

from collections.abc import Sequence
from math import ceil

from bot.reading.clauses import PASSED_OVER, Clause
from bot.reading.tokens import Token
from bot.reading.words import Mark

HIGHEST_SCORE = 10  # [of 10] published: eleven-point numeric scale, whole numbers 0 to 10
BETWEEN_SCORES = frozenset({Mark.DASH, Mark.OR, Mark.AND, Mark.NOT, Mark.SLASH})


def counted(scores: Sequence[float]) -> tuple[int | None, bool]:
    """Return the score that counts at once, and whether the number must be asked (again)."""
    inside = [score for score in scores if 0 <= score <= HIGHEST_SCORE]
    is_clear = len(scores) == 1 and len(inside) == 1 and inside[0].is_integer()
    return (ceil(max(inside)) if inside else None), not is_clear


def is_score(token: Token) -> bool:
    """Tell whether a token may be a score: "4/10", or a bare figure of ten at most."""
    return token.mark is Mark.RATING or (token.is_bare and token.value <= HIGHEST_SCORE)


def scores_after(clause: Clause, at: int, end: int) -> tuple[float, ...]:
    """Return the figures behind the place: one, or a range; none where a row of figures begins."""
    tokens = clause.tokens
    i = at + 1
    while i < end and tokens[i].mark in PASSED_OVER:
        i += 1
    if i >= end or not is_score(tokens[i]):
        return ()
    used, scores = [i], [*tokens[i].choices[0]]
    while (
        i + 2 < end
        and tokens[i + 1].mark in BETWEEN_SCORES
        and is_score(tokens[i + 2])
        and not _is_figure(tokens, i + 3)
    ):
        i += 2
        used += [i - 1, i]
        scores += tokens[i].choices[0]
    if _is_of_ten(tokens, i + 1):
        used += [i + 1, i + 2]
    elif tokens[used[0]].mark is not Mark.RATING and _is_figure(tokens, i + 1):
        return ()
    clause.taken.update(used)
    return tuple(scores)


def _is_of_ten(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether "de 10" follows a score."""
    return (
        at + 1 < len(tokens)
        and tokens[at].text in {"de", "of"}
        and tokens[at + 1].is_bare
        and tokens[at + 1].value == HIGHEST_SCORE
    )


def followed_by_figure(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether a row of figures goes on at ``at``: then none of them is a score."""
    return _is_figure(tokens, at)


def _is_figure(tokens: Sequence[Token], at: int) -> bool:
    return at < len(tokens) and tokens[at].mark in {Mark.NUMBER, Mark.TIMES, Mark.COUNT}


def scores_before(clause: Clause, at: int, *, is_asked: bool = False) -> tuple[float, ...]:
    """Return the figure of "4/10 in my wrist", "a 4 in my wrist" or "5-6 left wrist"."""
    tokens = clause.tokens
    i = at - 1
    words = 0
    while i >= 0 and i not in clause.taken and tokens[i].mark in PASSED_OVER:
        words += tokens[i].mark in {Mark.FILLER, Mark.PAIN}
        i -= 1
    if i < 0 or i in clause.taken or not is_score(tokens[i]):
        return ()
    first = i
    if i >= 2 and tokens[i - 1].mark in {Mark.DASH, Mark.OR} and is_score(tokens[i - 2]):
        first, words = i - 2, words + 1
    named = first - 1
    while named > 0 and tokens[named].mark is Mark.FILLER:
        named -= 1
    is_named = named >= 0 and tokens[named].mark is Mark.PAIN
    is_lone = (bool(words) or is_asked) and not _has_figures(tokens[:first])
    if tokens[i].mark is not Mark.RATING and not is_lone and not is_named:
        return ()
    used = list(range(first, i + 1))
    clause.taken.update(used)
    return tuple(value for j in used for value in (tokens[j].choices or ((),))[0])


def _has_figures(tokens: Sequence[Token]) -> bool:
    return any(token.mark in {Mark.NUMBER, Mark.TIMES, Mark.COUNT} for token in tokens)


def rating_anywhere(clause: Clause) -> tuple[float, ...]:
    ratings = [i for i in clause.find(Mark.RATING) if i not in clause.taken]
    if len(ratings) != 1:
        return ()
    clause.taken.update(ratings)
    return clause.tokens[ratings[0]].choices[0]
