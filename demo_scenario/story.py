"""What happens in the first four weeks besides training: who writes what, and when.

Days count from the Monday on which the demo begins; hours are the writer's own wall time.
"""

from dataclasses import dataclass
from datetime import time
from enum import StrEnum

from demo_scenario.team import Part


class Happening(StrEnum):
    """What kind of thing is sent."""

    TEXT = "text"
    STICKER = "sticker"
    CLIP = "clip"
    VOICE = "voice"


@dataclass(frozen=True, slots=True)
class Sends:
    """An athlete sends something of their own accord."""

    part: Part
    day: int
    at: time
    text: str
    what: Happening = Happening.TEXT


@dataclass(frozen=True, slots=True)
class Hurts:
    """What an athlete answers when asked about pain after one of their sessions (from 1)."""

    part: Part
    session: int
    site: str
    side: str
    score: int
    next_morning: int


@dataclass(frozen=True, slots=True)
class CoachSends:
    """The coach gives a command."""

    day: int
    at: time
    text: str


RED_FLAG_WORDS = (
    "my right hand went numb during rows and it's still weak and tingling now, 2 hours later"
)

SENDS = (
    Sends(Part.STEADY, 2, time(19, 10), "", Happening.CLIP),
    Sends(Part.STEADY, 8, time(12, 40), "Swam 40 min, effort 4"),
    Sends(Part.OVER_EAGER, 1, time(20, 15), "Can I move up to the next stage? This is too easy"),
    Sends(Part.OVER_EAGER, 3, time(20, 5), "", Happening.STICKER),
    Sends(Part.OVER_EAGER, 9, time(21, 0), "Ready for dips yet? I could do them yesterday"),
    Sends(Part.OVER_EAGER, 15, time(18, 30), "class: 30 pull-ups"),
    Sends(Part.TRAVELLER, 11, time(21, 30), "Flying to New York tomorrow, what about my sessions?"),
    Sends(Part.TRAVELLER, 24, time(20, 0), "Back home!"),
    Sends(Part.ONE_WRIST, 20, time(9, 30), "Is it ok to do the push-up holds on my fists?"),
    Sends(Part.BACK_FROM_LAYOFF, 4, time(17, 0), "", Happening.VOICE),
    Sends(Part.RED_FLAG, 9, time(19, 40), RED_FLAG_WORDS),
    Sends(Part.RED_FLAG, 14, time(18, 0), "Saw the doctor today, she says I can train again"),
    Sends(Part.NEWCOMER, 12, time(20, 0), "my legs ache from hiking, shoulders fine"),
)

HURTS = (
    Hurts(Part.ONE_WRIST, 2, "Wrist", "Right", 2, 1),
    Hurts(Part.ONE_WRIST, 4, "Wrist", "Right", 3, 2),
    Hurts(Part.ONE_WRIST, 6, "Wrist", "Right", 4, 3),
    Hurts(Part.ONE_WRIST, 9, "Wrist", "Right", 2, 1),
    Hurts(Part.ONE_WRIST, 11, "Wrist", "Right", 1, 0),
    Hurts(Part.BACK_FROM_LAYOFF, 3, "Elbow, inside", "Left", 1, 0),
)

REFUSED_REASON = "he asks every week"
OVERRIDE_REASON = "she showed me all four in person at the camp, on clip"

COACH_SENDS = (
    CoachSends(0, time(8, 30), "/roster"),
    CoachSends(1, time(9, 0), "/invite Juno"),
    CoachSends(6, time(18, 0), "/tests Oda"),
    CoachSends(7, time(12, 30), "/who Edda"),
    CoachSends(8, time(13, 0), f"/stage Noor 2 {OVERRIDE_REASON}"),
    CoachSends(10, time(12, 15), f"/stage Bram 2 {REFUSED_REASON}"),
    CoachSends(14, time(20, 30), "/clear Sol nerve check done, strength even, no tingling since"),
    CoachSends(16, time(12, 30), "/who Sol"),
    CoachSends(17, time(18, 0), "/clear Edda two quiet days, holds on fists without pain"),
    CoachSends(21, time(12, 30), "/audit Edda"),
)

ANSWERS = (
    ("is this ok?", "Good clip. Elbows stay straight, ribs down. Keep that."),
    ("move up", "Not yet. The checklist decides, and you will see it move."),
    ("dips", "No dips in this stage. Straight arms first."),
    ("New York", "Take one band along. Your sessions come at New York hours."),
    ("Back home", "Welcome back. The hours are yours again."),
    ("fists", "Yes, as long as it stays at 2 or below. Tell me if it rises."),
    ("doctor", "Good. Tell me what she said about gripping, then I will bring it back."),
    ("hiking", "Then keep it easy today and write your numbers."),
    ("voice", "Heard you. The slow weeks are on purpose."),
    ("sticker", "Noted. Numbers say more, though."),
)
TO_AN_ALERT = "I have seen it. I will call you in a minute."
TO_ANYTHING = "Thank you, noted."


def answer_to(heard: str, *, is_alert: bool) -> str:
    """Return what the coach writes back; without a text to answer it was an alert."""
    if not heard:
        return TO_AN_ALERT if is_alert else TO_ANYTHING
    return next((answer for words, answer in ANSWERS if words in heard), TO_ANYTHING)
