"""Find other training told in a line: "swam 40 min, effort 6", "30 min easy bike", "a 5k run"."""

from collections.abc import Sequence

from bot.reading.clauses import GAP
from bot.reading.effort import find_effort, find_lone_rating
from bot.reading.tokens import Token
from bot.reading.values import Activity
from bot.reading.words import FIGURES, Mark

LONGEST_MINUTES = 24 * 60  # [min] a day
LONGEST_METRES = 300_000  # [m] CH
ENDS = frozenset({Mark.LINE, Mark.STOP_SIGN})
NOT_DONE = frozenset({Mark.NOT, Mark.CANT, Mark.LATER, Mark.RISKY, Mark.SKIPPED, Mark.NOW})
"""Marks in front of an activity that was not done, or not by the athlete."""
GENERAL = frozenset({"class", "clase", "practice", "played", "jugue", "hice"})
"""Activities that name nothing: a name behind them says more."""


def find_activities(tokens: Sequence[Token]) -> tuple[tuple[Activity, ...], list[Token]]:
    """Return the activities, and the tokens without the sentences that tell of them."""
    found: list[Activity] = []
    rest: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        is_told = token.mark is Mark.ACTIVITY and not _is_part_of_a_name(tokens, at)
        if is_told and not _is_not_done(tokens, at):
            start, end = _start(rest), _end(tokens, at)
            told = [*rest[start:], *tokens[at + 1 : end]]
            activity = _activity(_name(tokens[at:end]), told)
            if _is_talk(activity, told):
                rest += tokens[at:end]
                at = end
                continue
            found.append(activity)
            rest[start:] = [GAP]
            at = end
        else:
            rest.append(token)
            at += 1
    return tuple(found), rest


def _is_talk(activity: Activity, told: Sequence[Token]) -> bool:
    """Tell whether no amount is told and other words are: "ran for the bus", "class was full"."""
    amounts = (activity.minutes, activity.distance_m, activity.effort)
    has_amount = bool(activity.counts) or any(amount is not None for amount in amounts)
    return not has_amount and any(token.mark is Mark.WORD for token in told)


def _is_part_of_a_name(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether the word goes on a name: "farmer walk"."""
    return at > 0 and tokens[at - 1].mark is Mark.ITEM and not tokens[at - 1].n


def _is_not_done(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether the words before it, in its sentence, say that it was not done."""
    for token in reversed(tokens[:at]):
        if token.mark in ENDS:
            break
        if token.mark in NOT_DONE:
            return True
    behind = [token.mark for token in tokens[at + 1 : at + 3]]
    return bool(behind) and behind[0] is Mark.LATER


def _start(rest: Sequence[Token]) -> int:
    """Return where the telling begins: at a figure of time or distance just before the word."""
    start = at = len(rest)
    while at > 0:
        token = rest[at - 1]
        is_amount = token.mark is Mark.NUMBER and (
            token.unit in {Mark.SECONDS, Mark.METRES} or _is_thousands(token)
        )
        is_count = token.is_bare and at == len(rest)
        if token.mark in {Mark.FILLER, Mark.CHAT, Mark.AT, Mark.ABOUT, Mark.FINE}:
            at -= 1
        elif is_amount or is_count:
            at -= 1
            start = at
        else:
            break
    return start


def _end(tokens: Sequence[Token], at: int) -> int:
    """Return where the telling ends: at the sentence, or at an item of today with its figures."""
    is_class = tokens[at].text in GENERAL
    for i in range(at + 1, len(tokens)):
        if tokens[i].mark is Mark.LINE or (tokens[i].mark is Mark.STOP_SIGN and i > at + 1):
            return i
        if _is_row(tokens, i):
            return i
        is_item = tokens[i].mark is Mark.ITEM and not is_class
        if is_item and i + 1 < len(tokens) and tokens[i + 1].mark in FIGURES | {Mark.PLANNED}:
            return i
    return len(tokens)


def _is_row(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether a row of plain figures begins: results, not part of the telling."""
    row = [token for token in tokens[at : at + 4] if token.mark is not Mark.COMMA]
    is_list = tokens[at].mark is Mark.NUMBER and len(tokens[at].choices[0]) > 1
    return is_list or (len(row) > 1 and tokens[at].is_bare and row[1].is_bare)


def _name(tokens: Sequence[Token]) -> str:
    """Return what was done; of "played football" the second word."""
    if tokens[0].text in GENERAL:
        for token in tokens[1:3]:
            if token.mark is Mark.ACTIVITY:
                return token.text
    return tokens[0].text


def _is_thousands(token: Token) -> bool:
    """Tell whether "5k" may be kilometres."""
    return token.unit is Mark.KG and token.text.endswith("k")


def _activity(name: str, tokens: Sequence[Token]) -> Activity:
    effort, rest = find_effort(tokens)
    if effort is None:
        effort, rest = find_lone_rating(rest)
    figures = [token for token in rest if token.mark in {Mark.NUMBER, Mark.COUNT}]
    seconds = [f.value for f in figures if f.unit is Mark.SECONDS]
    metres = [f.value for f in figures if f.unit is Mark.METRES]
    metres += [1000 * f.value for f in figures if _is_thousands(f)]
    counts = [v for f in figures if f.unit in {None, Mark.REPS} and f.choices for v in f.choices[0]]
    minutes = sum(seconds) / 60
    return Activity(
        name=name,
        minutes=minutes if 0 < minutes <= LONGEST_MINUTES else None,
        distance_m=sum(metres) if 0 < sum(metres) <= LONGEST_METRES else None,
        effort=effort,
        counts=tuple(counts),
    )
