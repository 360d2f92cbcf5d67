"""Slips of the thumb, and how people mend them: by a word, or by editing what they sent."""

from enum import StrEnum

from demo_scenario.team import Part
from demo_scenario.typing_habits import DoneItem

SLIP_BY = 3  # [s or reps] ch: a neighbouring number, so that it is believable as it stands


class Slip(StrEnum):
    """How a slip is mended."""

    SORRY = "sorry"
    EDIT = "edit"


SLIPS = {
    (Part.STEADY, 4): Slip.SORRY,
    (Part.OVER_EAGER, 3): Slip.EDIT,
    (Part.ONE_WRIST, 3): Slip.SORRY,
    (Part.RED_FLAG, 3): Slip.EDIT,
}


def slip_of(part: Part, session: int) -> Slip | None:
    """Return the slip of an athlete's session, counted from 1."""
    return SLIPS.get((part, session))


def slipped(slip: Slip, text: str, first: DoneItem) -> tuple[str, str | None]:
    """Return the text with one wrong number of the first item, and what mends it."""
    right = first.values[-1]
    wrong = max(1, right - SLIP_BY)
    head, line, rest = _split_first_line(text)
    at = line.rfind(str(right))
    if at < 0:
        return text, None
    mistaken = head + line[:at] + str(wrong) + line[at + len(str(right)) :] + rest
    mend = f"sorry, {right} not {wrong}" if slip is Slip.SORRY else text
    return mistaken, mend


def _split_first_line(text: str) -> tuple[str, str, str]:
    line, newline, rest = text.partition("\n")
    return "", line, newline + rest
