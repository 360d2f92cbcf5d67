"""Which session the results belong to: the most recent one unless a day or an item says other."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.reading.desk import Desk
from bot.reading.known import KnownSession, ReadingContext
from bot.reading.results import Found, read_results
from bot.reading.tokens import Token
from bot.reading.values import Asked, QuestionCode, Reading, Recorded
from bot.reading.words import Mark


def in_first(
    tokens: Sequence[Token], sessions: Sequence[KnownSession], context: ReadingContext
) -> tuple[Found, KnownSession]:
    """Return what the first session makes of it; a later one only for items named from it."""
    named = frozenset[str]().union(*(t.refs for t in tokens if t.mark is Mark.ITEM))
    for session in sessions:
        own = frozenset(item.ref for item in session.items)
        if not named or named & own:
            mine = [_narrowed(token, own) for token in tokens]
            asked = context.asked_ref if context.asked_ref in own else None
            desk = Desk(session, asked, context.unit == "lb")
            return read_results(mine, desk), session
    return None, sessions[0]


def _narrowed(token: Token, refs: frozenset[str]) -> Token:
    """Let a name mean the items of one session; of another it is a word that spoils the row."""
    if token.mark is not Mark.ITEM:
        return token
    kept = token.refs & refs
    if not kept:
        return Token(Mark.JUNK, token.text)
    return Token(Mark.ITEM, token.text, n=token.n, refs=kept, is_mended=token.is_mended)


def which_day(
    tokens: Sequence[Token],
    sessions: Sequence[KnownSession],
    context: ReadingContext,
    beside: Mapping[str, Any],
) -> Reading | None:
    """Ask which day is meant when no session was sent on the one that was named."""
    found = [in_first(tokens, [session], context)[0] for session in sessions]
    options = tuple(f for f in found if isinstance(f, Recorded))[:4]
    if not options:
        return None
    return Asked(**beside, question=QuestionCode.WHICH_DAY, options=options)
