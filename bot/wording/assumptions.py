"""What the reader took for granted, said aloud so that it can be changed."""

from collections.abc import Mapping, Sequence

from bot.reading.values import Assumption, AssumptionCode
from bot.wording.tongue import Template, Tongue

SENTENCES: Mapping[AssumptionCode, Template] = {
    AssumptionCode.AS_PLANNED: "Taken as planned.",
    AssumptionCode.LEFT_SAID_FIRST: "Taken as left first, then right.",
    AssumptionCode.SAME_FOR_ALL_SETS: "Taken as the same for every set.",
    AssumptionCode.NAME_GUESSED: "Matched by a name that was close.",
    AssumptionCode.ONLY_ITEM_THAT_FITS: "Matched to the only one that your numbers fit.",
    AssumptionCode.ABOUT: "Taken as exact numbers, you wrote about.",
    AssumptionCode.STOPPED: "Noted that you stopped early.",
    AssumptionCode.LINE_BY_LINE: "Taken line by line, items {items}.",
    AssumptionCode.NUMBER_DECIDED: "Taken by the item's number.",
}


def say_assumptions(tongue: Tongue, assumptions: Sequence[Assumption]) -> list[str]:
    """Write each kind of assumption once; a load that was not mentioned is shown with the dose."""
    first = {one.code: one for one in reversed(assumptions) if one.code in SENTENCES}
    codes = dict.fromkeys(one.code for one in assumptions if one.code in SENTENCES)
    return [f"<i>{_sentence(tongue, first[code])}</i>" for code in codes]


def _sentence(tongue: Tongue, taken: Assumption) -> str:
    numbers = [int(number) for number in str(taken.figures.get("items", "")).split()]
    return tongue.say(SENTENCES[taken.code], items=item_numbers(tongue, numbers))


def item_numbers(tongue: Tongue, numbers: Sequence[int]) -> str:
    """Write the numbers of items: ``1 to 5`` where they run on, else ``1, 3, 4``."""
    if len(numbers) > 2 and list(numbers) == list(range(numbers[0], numbers[-1] + 1)):
        return tongue.say("{first} to {last}", first=numbers[0], last=numbers[-1])
    return ", ".join(str(number) for number in numbers)
