"""Number the sets of one arm: in order, by their names ("last one"), or over the plan."""

from collections.abc import Sequence

from bot.reading.dose import RawSet
from bot.reading.phrases import Said
from bot.reading.values import QuestionCode
from bot.reading.words import Mark

Placed = dict[int, RawSet | None]
"""Set number to what was said about it; None where the plan stands."""


def placed_sets(raws: Sequence[RawSet], said: Said) -> tuple[Placed, QuestionCode | None, bool]:
    """Return the numbered sets of one arm, a question about their number, and whether cut short."""
    sets = said.item.sets
    is_over = Mark.BUT in said.words
    if Mark.PLANNED in said.words and not (len(raws) == sets and not any(r.n for r in raws)):
        return _exceptions(raws, sets, is_over=is_over)
    if any(raw.n for raw in raws):
        placed, problem, _ = _exceptions(raws, sets, is_over=is_over)
        missing = any(value is None for value in placed.values())
        return placed, problem or (QuestionCode.FEWER_NUMBERS if missing else None), False
    spoken = list(raws)
    wanted = said.count or sets
    if len(spoken) == 1 and (said.count or said.words & {Mark.ALL, Mark.EACH}):
        spoken *= wanted
    numbered: Placed = dict(enumerate(spoken, start=1))
    if said.count is not None and len(spoken) != said.count:
        few = len(spoken) < said.count
        return numbered, QuestionCode.FEWER_NUMBERS if few else QuestionCode.MORE_NUMBERS, False
    if len(spoken) > sets:
        return numbered, QuestionCode.MORE_NUMBERS, False
    if len(spoken) == sets:
        return numbered, None, False
    is_told = (
        Mark.STOPPED in said.words
        or (Mark.ONLY in said.words and said.count == len(spoken))
        or (
            Mark.ONLY in said.words
            and said.count is None
            and Mark.ALL not in said.words
            and _is_crossed(said, len(spoken))
        )
    )
    return numbered, None if is_told else QuestionCode.FEWER_NUMBERS, is_told


def _is_crossed(said: Said, sets: int) -> bool:
    """Tell whether the number of sets itself was said, as in "only 2x8"."""
    return len(said.ways) == 1 and sets > 1 and said.figures == 2


def _exceptions(
    raws: Sequence[RawSet], sets: int, *, is_over: bool
) -> tuple[Placed, QuestionCode | None, bool]:
    """Place named sets over the plan: "as planned but last one 22"; the unnamed fill the front.

    A whole unnamed row comes first and the named sets over it ("3x8 but last one 6"), asked
    about unless a word such as "but" says so (``is_over``). What has no place is left out,
    which the caller takes for a reading that fits nothing.
    """
    placed: Placed = dict.fromkeys(range(1, sets + 1))
    for raw in (raw for raw in raws if raw.n):
        number = raw.n if raw.n > 0 else sets + 1 + raw.n
        if placed.get(number, raw) is not None:
            return {}, QuestionCode.WHICH_SET, False
        placed[number] = raw
    unnamed = [raw for raw in raws if not raw.n]
    free = [number for number, raw in placed.items() if raw is None]
    if len(unnamed) == sets > len(free):
        row: Placed = dict(enumerate(unnamed, start=1))
        named = {number: raw for number, raw in placed.items() if raw is not None}
        return row | named, None if is_over else QuestionCode.WHICH_SET, False
    if len(unnamed) == len(free):
        return placed | dict(zip(free, unnamed, strict=True)), None, False
    if len(unnamed) > 1 or (unnamed and not free):
        return {}, QuestionCode.WHICH_SET, False
    if unnamed:
        return placed | {free[-1]: unnamed[0]}, QuestionCode.WHICH_SET, False
    return placed, None, False
