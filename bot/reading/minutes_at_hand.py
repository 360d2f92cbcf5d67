"""How long somebody has today: "only got 20 min", which is no result of any hold."""

import re

from bot.reading.known import ReadingContext
from bot.reading.marking import known_items
from bot.reading.plausible import is_plausible
from bot.reading.script import plain

AT_HAND = re.compile(
    r"\b(?:tengo|dispongo de|puedo|me dejan|hay|con prisa|con prisas|have|has|ive|i've|got|gotta"
    r"|in a rush|in a hurry|short of time|short on time)\b[^\d\n]{0,24}"
    r"(\d{1,3})\s*(?:min|mins|minutos?|minutes?|minutillos?|m)\b"
)
S_PER_MIN = 60  # [s] a minute


def tells_minutes_at_hand(text: str, context: ReadingContext) -> bool:
    """Tell whether a message says how long there is, with no other figure and no item's result.

    What may well be a result ("got 1 min" of a hold of 50 s) is left to be read as one.
    """
    said = plain(text)
    found = AT_HAND.search(said)
    if found is None or len(re.findall(r"\d+", said)) != 1:
        return False
    held_s = float(found[1]) * S_PER_MIN
    return not any(is_plausible(held_s, one.load_kg, one) for one in known_items(context))
