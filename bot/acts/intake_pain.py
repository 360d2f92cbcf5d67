"""Pain that is told while the first questions, or the coach's look at them, still go on."""

import re

from bot.acts import hear_pain
from bot.acts.reading_context import at_hand, read_at_hand
from bot.events import Wrote
from bot.reading.red_flags import RedFlagReading
from bot.reading.values import PainMention
from bot.turn import Turn
from storage.records.people import Person

HURTS = re.compile(
    r"\b(?:hurt|hurts|hurting|pains?|painful|sore|soreness|aches?|aching|achy"
    r"|duelen?|dol[ií]an?|doli[oó]|doliendo|dolor|dolores|doloridos?|doloridas?"
    r"|molestias?|molestan?)\b"
)
"""Words that say that something hurts; a place of the body alone says nothing here."""
SCORED = re.compile(r"\b\d{1,2}\s*(?:/|of|out of|sobre|de)\s*10\b")


def told(
    turn: Turn, person: Person, event: Wrote, flags: RedFlagReading
) -> tuple[PainMention, ...]:
    """Return what a message reports as hurting; a goal or an old injury names places, too.

    A place counts only beside a word for pain, a number of ten, or what the red-flag reader heard.
    """
    said = event.text.lower()
    if not (HURTS.search(said) or SCORED.search(said) or flags.pain is not None):
        return ()
    reading = read_at_hand(turn, person, event.text, at_hand(turn, person, event, None), None)
    return tuple(one for one in hear_pain.meant(reading, flags, event.text) if one.score != 0)
