"""What is told of a pain behind the clause that names it: its side, its score, that it hurts."""

from collections.abc import Sequence

from bot.reading.body_words import PARTS
from bot.reading.clauses import CLAUSE_ENDS, PASSED_OVER, SIDE_MARKS, Clause
from bot.reading.scores import HIGHEST_SCORE, counted, is_score
from bot.reading.tokens import Token
from bot.reading.values import PainMention
from bot.reading.words import FIGURES, Mark


def merged(first: PainMention, second: PainMention) -> PainMention:
    """Return one mention of a pain that was told in two parts."""
    has_score = first.score is not None
    return first.model_copy(
        update={
            "score": first.score if has_score else second.score,
            "must_ask": first.must_ask if has_score else second.must_ask,
            "side": first.side or second.side,
            "is_sharp": first.is_sharp or second.is_sharp,
        }
    )


def goes_on(clause: Clause, mentions: list[PainMention], *, is_asked: bool) -> bool:
    """Give a clause of nothing but a side or a score to the pain before it; tell whether it was.

    A bare figure counts only where pain was asked about; "4/10" and "4 de 10" always.
    """
    tokens = [token for token in clause.tokens if token.mark not in CLAUSE_ENDS]
    sides = [i for i in range(len(clause.tokens)) if clause.tokens[i].mark in SIDE_MARKS]
    score, used = _score(clause.tokens, is_asked=is_asked)
    others = [
        token
        for i, token in enumerate(clause.tokens)
        if i not in used and token.mark not in PASSED_OVER | CLAUSE_ENDS | {Mark.CHAT}
    ]
    last = mentions[-1]
    parts = {PARTS[token.text] for token in clause.tokens if token.mark is Mark.PART}
    if others or not tokens or not (sides or used or parts) or len(sides) > 1:
        return False
    narrowed = tuple(site for site in last.sites if site.value.split("_")[-1] in parts)
    mentions[-1] = last = last.model_copy(update={"sites": narrowed or last.sites})
    if used and last.score is not None:
        return False
    if sides and last.side is None:
        mentions[-1] = last = last.model_copy(
            update={"side": SIDE_MARKS[clause.tokens[sides[0]].mark]}
        )
        clause.taken.update(sides)
    if used:
        value, must_ask = counted(score)
        mentions[-1] = last.model_copy(update={"score": value, "must_ask": must_ask})
        clause.taken.update(used)
    return True


def _score(tokens: Sequence[Token], *, is_asked: bool) -> tuple[tuple[float, ...], list[int]]:
    figures = [i for i, token in enumerate(tokens) if token.mark in FIGURES]
    if not figures or not is_score(tokens[figures[0]]):
        return (), []
    first = figures[0]
    score = tokens[first].choices[0]
    if len(figures) == 1 and (is_asked or tokens[first].mark is Mark.RATING):
        return score, [first]
    is_of_ten = (
        len(figures) == 2
        and figures[1] == first + 2
        and tokens[first + 1].text in {"de", "of", "von", "sur"}
        and tokens[figures[1]].is_bare
        and tokens[figures[1]].value == HIGHEST_SCORE
    )
    return (score, [first, first + 1, first + 2]) if is_of_ten else ((), [])


def first_score(clause: Clause, mentions: list[PainMention]) -> bool:
    """Give "2/10" at the beginning of a clause to the pain before it: "neck, 2/10 and wrist 1"."""
    spoken = [i for i, t in enumerate(clause.tokens) if t.mark is not Mark.FILLER]
    if not spoken or spoken[0] in clause.taken or clause.tokens[spoken[0]].mark is not Mark.RATING:
        return False
    score, must_ask = counted(clause.tokens[spoken[0]].choices[0])
    mentions[-1] = mentions[-1].model_copy(update={"score": score, "must_ask": must_ask})
    clause.taken.add(spoken[0])
    return True


def last_score(parts: Sequence[Clause], mentions: list[PainMention]) -> None:
    """Give the one figure that is left in the message to the one pain that has none."""
    left = [
        (clause, i)
        for clause in parts
        for i, token in enumerate(clause.tokens)
        if token.mark in FIGURES and i not in clause.taken
    ]
    if len(left) != 1:
        return
    clause, at = left[0]
    if not is_score(clause.tokens[at]):
        return
    score, must_ask = counted(clause.tokens[at].choices[0])
    mentions[-1] = mentions[-1].model_copy(update={"score": score, "must_ask": must_ask})
    clause.taken.add(at)
