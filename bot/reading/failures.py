"""An item that could not be done, or failed in one of its sets, said without a figure."""

import re
from collections.abc import Mapping
from typing import Any

from bot.reading.known import ItemResult, KnownItem, ReadingContext, SetResult
from bot.reading.marking import known_items
from bot.reading.plain_letters import plain_letters
from bot.reading.values import Asked, QuestionCode, Recorded
from scheduler.pain.values import Side

COULD_NOT = re.compile(
    r"(?:i )?(?:could not|couldn t|couldnt|was not able to|wasn t able to)"
    r"(?: (?:do|manage))?(?: (?:it|this|that|this one|that one))?"
    r"|(?:no (?:pude|he podido|fui capaz|he sido capaz)|imposible)"
    r"(?: (?:hacerlo|hacerla|con (?:este|esta|esto)))?"
)
NAMED_SETS: Mapping[str, int] = {
    "first": 1,
    "1st": 1,
    "second": 2,
    "2nd": 2,
    "third": 3,
    "3rd": 3,
    "fourth": 4,
    "4th": 4,
    "primera": 1,
    "segunda": 2,
    "tercera": 3,
    "cuarta": 4,
    "quinta": 5,
    "fifth": 5,
    "5th": 5,
    "1a": 1,
    "2a": 2,
    "3a": 3,
    "4a": 4,
    "last": -1,
    "final": -1,
    "ultima": -1,
}
FAILED_IN = re.compile(
    r"(?:i )?(?:failed|fail|could not (?:do|finish)|couldn t (?:do|finish)|didn t finish|"
    r"did not finish|stopped|gave up)(?: (?:on|at|in|during))?(?: the| my)? "
    rf"(?P<en>{'|'.join(NAMED_SETS)})(?: (?:set|one))?"
    r"|(?:falle|he fallado|no pude(?: con)?|no termine|no acabe|pare|me pare|abandone)"
    rf"(?: en)?(?: la)? (?P<es>{'|'.join(NAMED_SETS)})(?: serie)?"
)


def read_failure(
    text: str, context: ReadingContext, beside: Mapping[str, Any]
) -> Recorded | Asked | None:
    """Read a message that is nothing but a failure of the item asked about; None for any other.

    "Couldn't" leaves the item undone. "Failed on the third" is asked: how far the third went is
    not said, so the sets before it are offered as planned, and figures can be written instead.
    """
    item = next((one for one in known_items(context) if one.ref == context.asked_ref), None)
    session = context.session
    if item is None or session is None or context.question is not None:
        return None
    said = " ".join(re.findall(r"[a-z0-9]+", plain_letters(text)))
    about: dict[str, Any] = {"session_ref": session.ref, "day": session.day}
    if COULD_NOT.fullmatch(said):
        return Recorded(**beside, **about, items=(ItemResult(ref=item.ref, is_skipped=True),))
    found = FAILED_IN.fullmatch(said)
    if found is None:
        return None
    result = _before(item, NAMED_SETS[found["en"] or found["es"]])
    if result is None:
        return None
    option = Recorded(**about, items=(result,))
    return Asked(**beside, question=QuestionCode.IS_THIS_MEANT, options=(option,))


def _before(item: KnownItem, failed: int) -> ItemResult | None:
    """Return the sets before the one that failed, as planned; None where there is no such set."""
    number = item.sets if failed < 0 else failed
    if number > item.sets:
        return None
    sets = tuple(
        SetResult(
            number=one,
            value=item.target,
            side=arm,
            load_kg=item.load_kg,
            band=item.band,
            is_as_planned=True,
        )
        for arm in item.arms_asked or (Side.BOTH,)
        for one in range(1, number)
    )
    return ItemResult(ref=item.ref, sets=sets, is_stopped=bool(sets), is_skipped=not sets)
