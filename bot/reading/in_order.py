"""Plain lines without a name, one for each open item in the order of the session."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf, log

from bot.reading.desk import Desk
from bot.reading.fit import Fit
from bot.reading.known import KnownItem
from bot.reading.segments import Segment
from bot.reading.tokens import Token
from bot.reading.values import Assumption, AssumptionCode
from bot.reading.words import Mark

SILENT = frozenset({Mark.FILLER, Mark.COMMA})


@dataclass(frozen=True)
class InOrder:
    """A fit for each line; ``is_sure`` when the order alone decides whose line it is."""

    fits: tuple[Fit, ...] = ()
    is_sure: bool = False


def lines_in_order(tokens: Sequence[Token], desk: Desk) -> InOrder:
    """Return a line each for the open items that it fits, in the order of the session.

    It is sure when there are as many lines as open items, none begins with a strange word, and
    each is nearer to the plan of its own item than to any that is measured in another unit.
    """
    lines = _lines(tokens)
    rest = iter(desk.open_items)
    found = [
        next(((item, o) for item in rest if (o := desk.fit(item, line)).is_sure), None)
        for line in lines
    ]
    own = [pair for pair in found if pair is not None]
    if len(own) < len(lines) or len(own) < 2:
        return InOrder()
    items = [item for item, _ in own]
    is_sure = len(own) == len(desk.open_items) and all(
        _is_its_own(line, item, desk) for line, item in zip(lines, items, strict=True)
    )
    taken = Assumption(
        code=AssumptionCode.LINE_BY_LINE,
        figures={"items": " ".join(str(item.number) for item in items)},
    )
    fits = [outcome.options[0] for _, outcome in own]
    first = Fit(fits[0].result, (taken, *fits[0].assumptions))
    return InOrder((first, *fits[1:]), is_sure)


def _lines(tokens: Sequence[Token]) -> list[list[Token]]:
    lines: list[list[Token]] = [[]]
    for token in tokens:
        if token.mark is Mark.LINE:
            lines.append([])
        else:
            lines[-1].append(token)
    return [line for line in lines if Segment(tokens=line).says_something]


def _is_its_own(line: Sequence[Token], item: KnownItem, desk: Desk) -> bool:
    """Tell whether no item that is measured in another unit is as near to the line."""
    spoken = [token.mark for token in line if token.mark not in SILENT]
    if spoken[:1] == [Mark.WORD]:
        return False
    others = [one for one in desk.open_items if one.measure is not item.measure]
    own = _away(line, item, desk)
    return all(own < _away(line, other, desk) for other in others)


def _away(line: Sequence[Token], item: KnownItem, desk: Desk) -> float:
    """Return how far a line is from the plan of an item [log units]; endless where it cannot be."""
    outcome = desk.fit(item, line)
    if not outcome.is_sure:
        return inf
    values = [done.value for done in outcome.options[0].result.sets]
    mean = sum(values) / len(values) if values else 0.0
    return abs(log(mean / item.target)) if mean > 0 else inf
