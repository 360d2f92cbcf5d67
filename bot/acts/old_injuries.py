"""Which joints the words about an old injury name; where none is clear, every one is meant."""

from datetime import date

from bot.reading.known import ReadingContext
from bot.reading.marking import tokenise
from bot.reading.pain import find_pain
from scheduler.pain.values import Side
from scheduler.training.baseline_values import INJURIES, EarlierInjury, ScreenTopic

ANY_DAY = date(2000, 1, 1)  # [date] the reader wants one; places do not depend on it


def injuries_of(words: str, *, screen: frozenset[str]) -> tuple[EarlierInjury, ...]:
    """Return the injuries that an answer of the intake names, the careful way.

    Words that fit several places of a joint mean all of them. How long ago is not read from the
    words: an injury that is told counts as recent until the coach gives the direction back.
    """
    topics = {ScreenTopic(one) for one in screen} & INJURIES
    if not topics:
        return ()
    is_out = ScreenTopic.OUT_OR_OPERATED in topics
    context = ReadingContext(local_date=ANY_DAY)
    mentions, _ = find_pain(tokenise(f"hurt {words}", context), context)
    return tuple(
        EarlierInjury(site=site, side=mention.side or Side.BOTH, is_out_or_operated=is_out)
        for mention in mentions
        for site in mention.sites
    )
