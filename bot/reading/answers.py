"""Read the answer to the one open question: "4", "none", "4+", "yes"."""

from collections.abc import Sequence
from typing import Any

from bot.reading.effort import HIGHEST_EFFORT, MOST_LEFT
from bot.reading.known import Expects, KnownItem, OpenQuestion, Reserve
from bot.reading.scores import counted
from bot.reading.tokens import Token
from bot.reading.values import Asked, PainMention, QuestionCode, Told
from bot.reading.words import Mark
from scheduler.catalogue.values import Measure

SIGNS = frozenset({Mark.COMMA, Mark.STOP_SIGN, Mark.LINE})
PASSED = SIGNS | {
    *(Mark.FILLER, Mark.AT, Mark.ABOUT, Mark.CHAT, Mark.FINE, Mark.SORE, Mark.BUT),
}
BETWEEN = frozenset({Mark.DASH, Mark.OR, Mark.AND})
NOTHING = frozenset({Mark.NONE, Mark.NOTHING_LEFT})
BESIDE_RESERVE = frozenset(
    {Mark.EVERYTHING, Mark.MORE, Mark.LEFT_WORD, Mark.LEFT_OVER, Mark.COULD, Mark.REPS}
)
MOST_LEFT_REPS = 15  # [repetitions] ch: a larger figure is no reserve of repetitions
YES_LETTERS = frozenset({"y", "s"})
NO_LETTERS = frozenset({"n"})

Answer = dict[str, Any]
"""What the answer adds to a reading, by its field."""


def read_answer(
    tokens: Sequence[Token], question: OpenQuestion, item: KnownItem | None = None
) -> Answer | Asked:
    """Return the answer; empty when the tokens are no answer to this question.

    ``item`` is the one that the question is about. Two figures ("6 or 7") are asked about.
    """
    if _is_led_by_a_stranger(tokens):
        return {}
    tokens = _without_of_ten(tokens)
    spoken = [token for token in tokens if token.mark not in PASSED | {Mark.WORD}]
    match question.expects:
        case Expects.YES_OR_NO:
            return _yes_or_no(tokens)
        case Expects.RESERVE:
            return _reserve(spoken, item)
        case Expects.EFFORT:
            return _effort(spoken)
        case Expects.PAIN:
            return _pain(tokens, spoken, question)


def _without_of_ten(tokens: Sequence[Token]) -> list[Token]:
    """Leave out the "de 10" of "7 de 10"."""
    kept = list(tokens)
    for at in range(len(tokens) - 2):
        of, ten = tokens[at + 1], tokens[at + 2]
        is_ten = ten.is_bare and ten.value == HIGHEST_EFFORT
        if tokens[at].is_bare and of.text in {"de", "of", "von", "sur"} and is_ten:
            del kept[at + 1 : at + 3]
            break
    return kept


def _is_led_by_a_stranger(tokens: Sequence[Token]) -> bool:
    """Tell whether unknown words stand before the figure: "call me at 7"."""
    figures = [i for i, token in enumerate(tokens) if token.mark in {Mark.NUMBER, Mark.RATING}]
    return bool(figures) and any(t.mark is Mark.WORD for t in tokens[: figures[0]])


def _yes_or_no(tokens: Sequence[Token]) -> Answer:
    spoken = [t for t in tokens if t.mark not in SIGNS | {Mark.FILLER, Mark.CHAT, Mark.FINE}]
    letters = [t.text for t in tokens if t.mark not in SIGNS]
    marks = {token.mark for token in spoken}
    if marks == {Mark.YES} or (len(letters) == 1 and letters[0] in YES_LETTERS):
        return {"is_yes": True}
    if marks == {Mark.NOT} or (len(letters) == 1 and letters[0] in NO_LETTERS):
        return {"is_yes": False}
    return {}


def _reserve(spoken: Sequence[Token], item: KnownItem | None) -> Answer | Asked:
    marks = {token.mark for token in spoken}
    if marks and marks <= NOTHING | {Mark.LEFT_WORD, Mark.LEFT_OVER, Mark.MORE, Mark.EVERYTHING}:
        return {"reserve": Reserve(left=0)} if marks & NOTHING else {}
    if marks == {Mark.NOT}:
        nothing = Told(reserve=Reserve(left=0))
        return Asked(question=QuestionCode.IS_THIS_MEANT, options=(nothing,))
    values = _only_figures(spoken, BESIDE_RESERVE | {Mark.PLUS, Mark.AT_LEAST})
    if any(token.unit not in {None, Mark.SECONDS, Mark.REPS} for token in spoken):
        return {}
    most = MOST_LEFT_REPS if item and item.measure is Measure.REPS else MOST_LEFT
    if not 1 <= len(values) <= 2 or not all(0 <= value <= most for value in values):
        return {}
    is_open = any(t.mark is Mark.AT_LEAST or t.mark is Mark.PLUS for t in spoken)
    is_open = is_open or any(t.text in {"or more", "o mas"} for t in spoken)
    told = [Told(reserve=Reserve(left=value, is_at_least=is_open)) for value in values]
    if len(told) == 1:
        return {"reserve": told[0].reserve}
    return Asked(question=QuestionCode.SEVERAL_READINGS, options=tuple(told))


def _effort(spoken: Sequence[Token]) -> Answer | Asked:
    if any(token.mark is Mark.NUMBER and token.unit is not None for token in spoken):
        return {}
    values = _only_figures(spoken, frozenset({Mark.EFFORT}))
    if not 1 <= len(values) <= 2 or not all(0 <= value <= HIGHEST_EFFORT for value in values):
        return {}
    if len(values) == 1:
        return {"effort": values[0]}
    told = tuple(Told(effort=value) for value in values)
    return Asked(question=QuestionCode.SEVERAL_READINGS, options=told)


def _only_figures(spoken: Sequence[Token], beside: frozenset[Mark]) -> list[float]:
    """Return the one figure, or the two of a range; none where anything else is said."""
    figures = [t for t in spoken if t.mark in {Mark.NUMBER, Mark.RATING}]
    rest = [t.mark for t in spoken if t not in figures and t.mark not in beside]
    if any(mark not in BETWEEN for mark in rest) or len(rest) > len(figures):
        return []
    values = [value for token in figures for value in token.choices[-1]]
    is_range = len(figures) == 2 and any(mark in BETWEEN for mark in rest)
    is_rated_range = len(figures) == 1 and len(values) == 2
    return values if len(values) == 1 or is_range or is_rated_range else []


A_LITTLE = frozenset({"a bit", "a little", "bit", "little", "some", "un poco", "algo", "poco"})
BESIDE_SCORE = BETWEEN | {Mark.PAIN, Mark.MORE, Mark.ABOUT, Mark.YES}


def _pain(tokens: Sequence[Token], spoken: Sequence[Token], question: OpenQuestion) -> Answer:
    """Read a score, "no", or "a bit"; of two scores the highest counts and is asked again."""
    sites = (question.site,) if question.site else ()
    if _is_a_little(tokens) and not sites:
        return {"pains": (PainMention(must_ask=True),)}
    if _is_denied(tokens, is_known=bool(sites)):
        return {"pains": (PainMention(sites=sites, side=question.side, score=0),)}
    figures = [token for token in spoken if token.mark in {Mark.NUMBER, Mark.RATING}]
    values = [value for token in figures for value in token.choices[-1]]
    rest = {token.mark for token in spoken} - {Mark.NUMBER, Mark.RATING}
    beside = BESIDE_SCORE | ({Mark.NONE, Mark.NOT} if values == [0] else set())
    if any(token.unit is not None for token in figures) or not rest <= beside:
        return {}
    between = {token.mark for token in tokens} & (BETWEEN | {Mark.ABOUT})
    is_range = len(values) == 2 and (between or len(figures) == 1)
    if len(values) != 1 and not is_range:
        return {}
    score, must_ask = counted(values)
    mention = PainMention(sites=sites, side=question.side, score=score, must_ask=must_ask)
    return {"pains": (mention,)}


def _is_a_little(tokens: Sequence[Token]) -> bool:
    """Tell whether nothing but "yes", "a bit" or "yes, a little" is said."""
    marks = {token.mark for token in tokens} - SIGNS
    is_yes = marks <= {Mark.YES, Mark.FILLER, Mark.CHAT} and Mark.YES in marks
    is_little = bool(A_LITTLE & {token.text for token in tokens})
    beside = {Mark.FILLER, Mark.YES, Mark.ABOUT, Mark.CHAT, Mark.WORD, Mark.PAIN}
    return is_yes or (is_little and marks <= beside)


def _is_denied(tokens: Sequence[Token], *, is_known: bool) -> bool:
    """Tell whether "no", "none" or, to "does anything hurt?", "all good" is said; never "not"."""
    said = {
        Mark.NOT if token.text in {"not today", "hoy no", "n"} else token.mark
        for token in tokens
        if token.mark not in SIGNS | {Mark.FILLER, Mark.CHAT}
    }
    if any(token.text == "not" for token in tokens) or not said:
        return False
    denying = said & {Mark.NONE, Mark.NOT}
    return said <= {Mark.NONE, Mark.NOT, Mark.FINE} and bool(denying or not is_known)
