"""The sentences of a reply: questions and plans put aside, strange words that cast doubt."""

from collections.abc import Sequence

from bot.reading.tokens import Token
from bot.reading.words import FIGURES, Mark

ENDS = frozenset({Mark.LINE, Mark.STOP_SIGN, Mark.QUESTION})
TELLING = FIGURES | {
    *(Mark.PLANNED, Mark.DONE, Mark.SKIPPED, Mark.STOPPED, Mark.ITEM, Mark.EVERYTHING),
    *(Mark.CANT, Mark.SAME, Mark.RISKY, Mark.ONLY),
}
"""Marks of a sentence that says something about what was done, or casts doubt on it."""
ASKING = frozenset(
    {
        *("is", "are", "does", "can", "could", "should", "what", "how", "why", "when", "where"),
        *("which", "who", "cuanto", "cuantos", "como", "cuando", "donde", "puedo", "debo"),
    }
)
PLANNING = frozenset({"see you", "will", "iwill", "i will", "hopefully", "looking forward"})
CHEERS = frozenset(
    {"pb", "pr", "personal best", "record", "my best", "best", "goal", "target", "marca", "meta"}
)
"""Words that doubt figures behind them ("my record is 45") and cheer those before them."""
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
        if Mark.NOW in marks and not marks & FIGURES:
            kept += sentence[:-1]
            continue
        found = True
        told = _told_before_the_question(sentence)
        if told:
            kept += told
        elif marks & FIGURES and Mark.RISKY not in marks:
            is_doubtful = True
            kept += sentence[:-1]
    return kept, found, is_doubtful


def _told_before_the_question(sentence: Sequence[Token]) -> list[Token]:
    """Return the figures of "45 40 38, should I go on?": all stand before a sign and the asking."""
    figures = [i for i, token in enumerate(sentence) if token.mark in FIGURES]
    if not figures:
        return []
    behind = sentence[figures[-1] + 1 :]
    is_parted = bool(behind) and behind[0].mark in {Mark.COMMA, Mark.DASH}
    is_asking = len(behind) > 1 and _first_word(behind[1]) in ASKING
    return list(sentence[: figures[-1] + 1]) if is_parted and is_asking else []


def without_plans(tokens: Sequence[Token]) -> list[Token]:
    """Leave out what is told of another time behind the figures: "45 40 38. Will try 50 soon"."""
    kept: list[Token] = []
    has_figures = False
    for sentence in sentences(tokens, ENDS | {Mark.COMMA}):
        marks = {token.mark for token in sentence}
        is_plan = Mark.LATER in marks and not marks & (TELLING - {Mark.ITEM})
        is_own = not kept or kept[-1].mark in ENDS or len(sentence) > PLAN_WORDS
        is_own = is_own or sentence[0].text in PLANNING
        if not (is_plan and has_figures and is_own):
            kept += sentence
        has_figures = has_figures or bool(marks & FIGURES)
    return kept


def without_cheers(tokens: Sequence[Token]) -> list[Token]:
    """Turn "45 40 38 new record" into figures and a remark."""
    last = max((i for i, token in enumerate(tokens) if token.mark in FIGURES), default=-1)
    return [
        Token(Mark.CHAT, token.text)
        if i > last >= 0 and token.mark is Mark.RISKY and token.text in CHEERS
        else token
        for i, token in enumerate(tokens)
    ]


def without_idle_buts(tokens: Sequence[Token]) -> list[Token]:
    """Leave out a "but" behind which nothing about the sets is said: "done but tired"."""
    kept = list(tokens)
    for at, token in enumerate(tokens):
        if token.mark is not Mark.BUT:
            continue
        behind = sentences(tokens[at + 1 :], frozenset({Mark.LINE, Mark.STOP_SIGN}))
        marks = {one.mark for one in behind[0]} if behind else set()
        if marks <= REMARKS:
            kept[at] = Token(Mark.COMMA, token.text)
    return kept


REMARKS = frozenset(
    {
        *(Mark.COMMA, Mark.STOP_SIGN, Mark.LINE, Mark.FILLER, Mark.CHAT, Mark.FINE, Mark.SORE),
        *(Mark.WORD, Mark.ABOUT, Mark.PART, Mark.AND),
    }
)


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


ELSEWHERE = frozenset(
    {
        *(Mark.WORD, Mark.CANT, Mark.ACTIVITY, Mark.NO_TIME, Mark.TRAVELLING, Mark.NO_EQUIPMENT),
        *(Mark.ILL, Mark.SITE),
    }
)
"""Marks beside which "done" may be about something else."""


def is_about_something_else(tokens: Sequence[Token]) -> bool:
    """Tell whether "done" or "skipped" stands with unknown words and without a name of today.

    "Done with my shift" and "skipped breakfast" say nothing about the session.
    """
    if any(token.mark in {Mark.ITEM, Mark.PLANNED} for token in tokens):
        return False
    for sentence in sentences(tokens, ENDS | {Mark.BECAUSE, Mark.COMMA, Mark.DASH}):
        marks = {token.mark for token in sentence}
        if marks & {Mark.DONE, Mark.SKIPPED} and marks & ELSEWHERE:
            return True
    return False


def begins_like_a_question(tokens: Sequence[Token]) -> bool:
    """Tell whether the first word is one that begins a question, whatever sign ends it."""
    first = next((token for token in tokens if token.mark is not Mark.LINE), None)
    if first is None or first.mark in {Mark.PLANNED, Mark.ABOUT, Mark.CANT}:
        return False
    return _first_word(first) in ASKING


def _first_word(token: Token) -> str:
    return token.text.split(" ", maxsplit=1)[0]


def _is_strange(sentence: Sequence[Token], at: int) -> bool:
    """Tell whether a word is unknown and no part of a name that its item's number decides."""
    if sentence[at].mark is not Mark.WORD:
        return False
    before = sentence[at - 1] if at > 0 else None
    return not (before is not None and before.mark is Mark.ITEM and before.n)
