"""A figure without a word of its own: an effort, the score of a pain told before, or a set."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from bot.reading.clauses import GAP
from bot.reading.effort import find_lone_rating
from bot.reading.scores import counted, is_score
from bot.reading.tokens import Token
from bot.reading.values import Asked, PainMention, QuestionCode, Reading, Recorded, Told
from bot.reading.words import FIGURES, Mark


@dataclass(frozen=True)
class Claim:
    """What a lone figure may say instead of a result; ``adds`` are fields of a reading."""

    question: QuestionCode
    adds: Mapping[str, Any]
    rest: Sequence[Token]
    is_only_figure: bool


def lone_claim(tokens: Sequence[Token], beside: Mapping[str, Any]) -> Claim | None:
    """Return what the one "7/10", or the one figure after a pain without a score, may say."""
    figures = [i for i, token in enumerate(tokens) if token.mark in FIGURES]
    pains: tuple[PainMention, ...] = beside["pains"]
    if any(pain.score is None for pain in pains):
        return _as_score(tokens, figures, pains)
    effort, rest = (None, tokens) if beside["effort"] is not None else find_lone_rating(tokens)
    if effort is None or (len(figures) == 1 and _is_of_something(tokens[: figures[0]])):
        return None
    return Claim(QuestionCode.EFFORT_OR_RESULT, {"effort": effort}, rest, len(figures) == 1)


def _as_score(
    tokens: Sequence[Token], figures: Sequence[int], pains: tuple[PainMention, ...]
) -> Claim | None:
    ratings = [i for i in figures if tokens[i].mark is Mark.RATING]
    lone = ratings if len(ratings) == 1 else figures
    if len(lone) > 1 and _stands_apart(tokens, lone[-1]):
        lone = lone[-1:]
    if len(lone) != 1 or not is_score(tokens[lone[0]]):
        return None
    score, _ = counted(tokens[lone[0]].choices[0])
    adds = {"pains": tuple(_scored(pain, score) for pain in pains)}
    rest = [GAP if i == lone[0] else token for i, token in enumerate(tokens)]
    return Claim(QuestionCode.PAIN_OR_RESULT, adds, rest, len(figures) == 1)


def _is_of_something(before: Sequence[Token]) -> bool:
    """Tell whether a word says what is rated, and it is not the session: "mood 7/10"."""
    return any(
        token.mark in {Mark.WORD, Mark.RISKY, Mark.ITEM} or token.text in RATED_ELSEWHERE
        for token in before
    )


RATED_ELSEWHERE = frozenset(
    {"mood", "energy", "form", "technique", "focus", "sueno", "animo", "tecnica", "ganas"}
)
"""What else people rate of ten."""


def _stands_apart(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether the last figure is a clause of its own: "..., my chest hurts, 3"."""
    behind = {token.mark for token in tokens[at + 1 :]}
    passed = {Mark.COMMA, Mark.STOP_SIGN, Mark.ABOUT, Mark.FILLER, Mark.CHAT}
    before = [token for token in tokens[:at] if token.mark not in {Mark.ABOUT, Mark.FILLER}]
    return bool(before) and before[-1].mark is Mark.COMMA and behind <= passed


def _scored(pain: PainMention, score: int | None) -> PainMention:
    """Count the figure at once, and have it asked again."""
    if pain.score is not None:
        return pain
    return pain.model_copy(update={"score": score, "must_ask": True})


def decided(
    as_sets: Reading | None, otherwise: Reading | None, claim: Claim, beside: Mapping[str, Any]
) -> Reading | None:
    """Take the one way that fits; ask when the figure may be a set and may be something else."""
    if not isinstance(as_sets, Recorded):
        return otherwise
    asked = {**beside, "pains": claim.adds.get("pains", beside["pains"])}
    plain = as_sets.model_copy(update={"pains": (), "effort": None})
    if isinstance(otherwise, Recorded):
        options = (otherwise.model_copy(update={"pains": ()}), plain)
        return Asked(**asked, question=claim.question, options=options)
    if claim.is_only_figure:
        told = Told(effort=claim.adds.get("effort"))
        return Asked(**asked, question=claim.question, options=(plain, told))
    return as_sets
