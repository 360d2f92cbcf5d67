"""What the reader took for granted, said aloud so that it can be changed."""

from collections.abc import Sequence

from bot.reading.values import Assumption, AssumptionCode
from bot.wording.tongue import Tongue

SENTENCES = {
    AssumptionCode.AS_PLANNED: "Taken as planned.",
    AssumptionCode.LEFT_SAID_FIRST: "Taken as left first, then right.",
    AssumptionCode.SAME_FOR_ALL_SETS: "Taken as the same for every set.",
    AssumptionCode.NAME_GUESSED: "Matched by a name that was close.",
    AssumptionCode.ONLY_ITEM_THAT_FITS: "Matched to the only one that your numbers fit.",
    AssumptionCode.ABOUT: "Taken as exact numbers, you wrote about.",
    AssumptionCode.STOPPED: "Noted that you stopped early.",
}


def say_assumptions(tongue: Tongue, assumptions: Sequence[Assumption]) -> list[str]:
    """Write each kind of assumption once; a load that was not mentioned is shown with the dose."""
    codes = dict.fromkeys(assumption.code for assumption in assumptions)
    return [f"<i>{tongue.say(SENTENCES[code])}</i>" for code in codes if code in SENTENCES]
