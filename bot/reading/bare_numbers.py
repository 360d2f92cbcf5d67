"""Lines that begin with an item's number and nothing behind it: "1 20 17", a line an item.

Such a number looks like a result. So it is tried only where the message fits nothing as it
stands, or where it would be asked about anyway.
"""

import re
from collections.abc import Callable

from bot.reading.known import ReadingContext
from bot.reading.values import Asked, NotUnderstood, QuestionCode, Reading, Recorded

BARE = re.compile(r"\s*(\d{1,2})[ \t]+(?=[^\W_])")
NUMBERED = re.compile(r"\s*(\d{1,2})\s*(?:[).:\-]|$)")
NO_FIGURE_BEHIND = re.compile(r"\s*\d{1,2}[ \t]+\D+")
"""One line with nothing but words behind the number: "2 no la hice"."""
LINES_SURE = 2  # [lines] ch: one alone may be a result after all, so it is asked
OPTIONS_MOST = 4  # [options] ch: as many as a question shows

Read = Callable[[str, ReadingContext], Reading]


def by_bare_numbers(text: str, context: ReadingContext, reading: Reading, read: Read) -> Reading:
    """Return the reading with leading numbers taken for item numbers, where that helps."""
    if not isinstance(reading, NotUnderstood | Asked) or context.session is None:
        return reading
    numbered, bare = _numbered(text, {item.number for item in context.session.items})
    is_sure = len(bare) >= LINES_SURE
    if not bare:
        return reading
    may_be = is_sure or NO_FIGURE_BEHIND.fullmatch(text) or _is_load(reading, bare[0])
    if isinstance(reading, Asked) and not may_be:
        return reading
    other = read(numbered, context)
    if not isinstance(other, Recorded | Asked) or other.pains != reading.pains:
        return reading
    if isinstance(reading, NotUnderstood) and (is_sure or isinstance(other, Asked)):
        return other
    options = list(other.options if isinstance(other, Asked) else (_results_only(other),))
    kept = reading.options if isinstance(reading, Asked) else ()
    options += [one for one in kept if one not in options]
    return Asked(
        **_beside(other),
        question=QuestionCode.IS_THIS_MEANT,
        options=tuple(options[:OPTIONS_MOST]),
    )


def _is_load(reading: NotUnderstood | Asked, number: int) -> bool:
    """Tell whether the number in front was taken for a load: "5 right 15 12 left 15 15"."""
    return isinstance(reading, Asked) and any(
        one.load_kg == number
        for option in reading.options
        if isinstance(option, Recorded)
        for item in option.items
        for one in item.sets
    )


def _numbered(text: str, numbers: set[int]) -> tuple[str, list[int]]:
    """Return the text with a bracket behind each bare item number, and those numbers.

    Item numbers only rise from line to line; what does not is a result, and nothing is changed.
    """
    lines: list[str] = []
    bare: list[int] = []
    last = 0
    for line in text.splitlines():
        found = BARE.match(line)
        shown = found or NUMBERED.match(line)
        if shown is None:
            lines.append(line)
            continue
        number = int(shown[1])
        if number not in numbers or number <= last:
            return text, []
        last = number
        bare += [number] if found else []
        lines.append(f"{number}) {line[found.end() :]}" if found else line)
    return "\n".join(lines), bare


def _results_only(recorded: Recorded) -> Recorded:
    return recorded.model_copy(update={"pains": (), "activities": (), "unread": ""})


def _beside(other: Recorded | Asked) -> dict[str, object]:
    return {
        name: getattr(other, name)
        for name in ("pains", "activities", "effort", "unread", "asks_coach")
    }
