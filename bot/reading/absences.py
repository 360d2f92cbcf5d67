"""Read "can't today" and its reason."""

from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any

from bot.reading.days import find_day
from bot.reading.known import Expects, ReadingContext
from bot.reading.sentences import begins_like_a_question
from bot.reading.tokens import Token
from bot.reading.values import CantReason, CantToday
from bot.reading.words import FIGURES, Mark

REASONS = {
    Mark.ILL: CantReason.ILL,
    Mark.TRAVELLING: CantReason.TRAVELLING,
    Mark.NO_TIME: CantReason.NO_TIME,
    Mark.NO_EQUIPMENT: CantReason.NO_EQUIPMENT,
}
"""The reason that is named first in this order counts where several are."""
SHORT = 8  # [words] ch: a reason alone, in so few words, is an absence; in more it may be talk
TOMORROW = frozenset({"tomorrow", "manana"})
TILL = frozenset({"till", "until", "hasta", "back", "before"})
WEAK_REASONS = frozenset(
    {"busy", "hectic", "away", "travel", "flight", "holiday", "vacation", "viaje", "vuelo", "hotel"}
)
"""Words that are a reason only beside "today" or "sorry": a gym is busy too."""
NOT_TODAY = frozenset({"not today", "hoy no"})
TODAY = frozenset({"today", "hoy", "tonight"})


def read_absence(
    tokens: Sequence[Token],
    context: ReadingContext,
    beside: Mapping[str, Any],
    *,
    may_have_figures: bool = False,
) -> CantToday | None:
    """Read "can't today" with its reason.

    A message with figures is no absence, unless they were found to be no results
    (``may_have_figures``): "stuck at work till 9, not happening today".

    "My kid is sick" is a reason to stay away but not the athlete's own illness.
    """
    marks = {token.mark for token in tokens}
    reasons = [reason for mark, reason in REASONS.items() if mark in marks]
    has_figures = bool(marks & FIGURES)
    if (has_figures and not may_have_figures) or not (Mark.CANT in marks or reasons):
        return None
    figures = sum(token.mark in FIGURES for token in tokens)
    if has_figures and (Mark.CANT not in marks or Mark.JUNK in marks or figures > 1):
        return None
    if marks & {Mark.DONE, Mark.PLANNED, Mark.ITEM, Mark.EVERYTHING, Mark.ACTIVITY}:
        return None
    if Mark.SKIPPED in marks and context.asked_ref is not None:
        return None
    is_wondering = Mark.ABOUT in marks or begins_like_a_question(tokens)
    if _denies_pain(tokens, context) or is_wondering:
        return None
    if Mark.CANT not in marks and not _is_plainly_away(tokens):
        return None
    hurts = [CantReason.HURTS] if any(pain.score != 0 for pain in beside["pains"]) else []
    if Mark.RISKY in marks:
        reasons = [reason for reason in reasons if reason is not CantReason.ILL]
    named = [*hurts, *reasons, None]
    return CantToday(**beside, day=_day(tokens, context), reason=named[0])


def _denies_pain(tokens: Sequence[Token], context: ReadingContext) -> bool:
    """Tell whether "not today" answers the question whether anything hurts."""
    is_asked = context.question is not None and context.question.expects is Expects.PAIN
    cants = {token.text for token in tokens if token.mark is Mark.CANT}
    return is_asked and bool(cants) and cants <= NOT_TODAY


def _is_plainly_away(tokens: Sequence[Token]) -> bool:
    """Tell whether a reason without "can't" is the whole message."""
    words = [t for t in tokens if t.mark not in {Mark.COMMA, Mark.STOP_SIGN, Mark.LINE}]
    reasons = {token.text for token in words if token.mark in REASONS}
    is_told = {word for token in words for word in token.text.split()} & TODAY
    if reasons <= WEAK_REASONS and not is_told and Mark.SORRY not in {t.mark for t in words}:
        return False
    marks = {token.mark for token in words if token.text not in TILL}
    strange = sum(token.mark is Mark.WORD for token in words)
    return len(words) <= SHORT and strange <= 1 and not marks & {Mark.LATER, Mark.RISKY, Mark.FINE}


def _day(tokens: Sequence[Token], context: ReadingContext) -> Any:
    words = {word for token in tokens for word in token.text.split()}
    if not words & TODAY:
        if words & TOMORROW:
            return context.local_date + timedelta(days=1)
        day, _ = find_day(tokens, context.local_date, is_ahead=True)
        if day is not None and not words & TILL:
            return day
    return context.local_date
