"""Read "can't today" and its reason."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.reading.days import find_day
from bot.reading.known import ReadingContext
from bot.reading.tokens import Token
from bot.reading.values import CantReason, CantToday
from bot.reading.words import FIGURES, Mark

REASONS = {
    Mark.ILL: CantReason.ILL,
    Mark.TRAVELLING: CantReason.TRAVELLING,
    Mark.NO_TIME: CantReason.NO_TIME,
    Mark.NO_EQUIPMENT: CantReason.NO_EQUIPMENT,
}


def read_absence(
    tokens: Sequence[Token], context: ReadingContext, beside: Mapping[str, Any]
) -> CantToday | None:
    """Read "can't today" with its reason; a message with figures is no absence.

    "My kid is sick" is a reason to stay away but not the athlete's own illness.
    """
    marks = {token.mark for token in tokens}
    reasons = [reason for mark, reason in REASONS.items() if mark in marks]
    if marks & FIGURES or not (Mark.CANT in marks or reasons):
        return None
    if marks & {Mark.DONE, Mark.PLANNED, Mark.SKIPPED, Mark.ITEM}:
        return None
    hurts = [CantReason.HURTS] if any(pain.score != 0 for pain in beside["pains"]) else []
    if Mark.RISKY in marks:
        reasons = [reason for reason in reasons if reason is not CantReason.ILL]
    day, _ = find_day(tokens, context.local_date, is_ahead=True)
    named = [*hurts, *reasons, None]
    return CantToday(**beside, day=day or context.local_date, reason=named[0])
