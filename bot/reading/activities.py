"""Find other training told in a line: "swam 40 min, effort 6"."""

from collections.abc import Sequence

from bot.reading.clauses import GAP
from bot.reading.effort import find_effort, find_lone_rating
from bot.reading.tokens import Token
from bot.reading.values import Activity
from bot.reading.words import Mark

LONGEST_MINUTES = 24 * 60  # [min] a day
LONGEST_METRES = 300_000  # [m] CH


def find_activities(tokens: Sequence[Token]) -> tuple[tuple[Activity, ...], list[Token]]:
    """Return the activities, and the tokens without the lines that tell of them."""
    found: list[Activity] = []
    rest: list[Token] = []
    at = 0
    while at < len(tokens):
        end = _end_of_line(tokens, at)
        if tokens[at].mark is Mark.ACTIVITY:
            found.append(_activity(tokens[at], tokens[at + 1 : end]))
            rest.append(GAP)
            at = end
        else:
            rest.append(tokens[at])
            at += 1
    return tuple(found), rest


def _end_of_line(tokens: Sequence[Token], at: int) -> int:
    """Return where the telling ends: at the line, or at an item of today with figures behind it."""
    is_class = tokens[at].text in {"class", "clase"}
    for i in range(at + 1, len(tokens)):
        if tokens[i].mark is Mark.LINE:
            return i
        is_item = tokens[i].mark is Mark.ITEM and not is_class
        if is_item and i + 1 < len(tokens) and tokens[i + 1].mark is Mark.NUMBER:
            return i
    return len(tokens)


def _activity(name: Token, tokens: Sequence[Token]) -> Activity:
    effort, rest = find_effort(tokens)
    if effort is None:
        effort, rest = find_lone_rating(rest)
    figures = [token for token in rest if token.mark in {Mark.NUMBER, Mark.COUNT}]
    seconds = [f.value for f in figures if f.unit is Mark.SECONDS]
    metres = [f.value for f in figures if f.unit is Mark.METRES]
    metres += [1000 * f.value for f in figures if f.unit is Mark.KG and f.text.endswith("k")]
    counts = [v for f in figures if f.unit in {None, Mark.REPS} and f.choices for v in f.choices[0]]
    minutes = sum(seconds) / 60
    return Activity(
        name=name.text,
        minutes=minutes if 0 < minutes <= LONGEST_MINUTES else None,
        distance_m=sum(metres) if 0 < sum(metres) <= LONGEST_METRES else None,
        effort=effort,
        counts=tuple(counts),
    )
