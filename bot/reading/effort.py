"""Find how hard it was and what was left, so that neither is taken for a result."""

from collections.abc import Sequence

from bot.reading.clauses import GAP
from bot.reading.known import Reserve
from bot.reading.tokens import Token
from bot.reading.words import Mark

HIGHEST_EFFORT = 10  # [of 10] published: foster2001, a 0 to 10 effort question in our own words
MOST_LEFT = 120  # [s or repetitions] CH: beyond this it is no reserve
RESERVE_UNITS = frozenset({None, Mark.SECONDS, Mark.REPS})
PASSED = frozenset({Mark.FILLER, Mark.AT, Mark.ABOUT})


def find_effort(tokens: Sequence[Token]) -> tuple[float | None, list[Token]]:
    """Return the effort that is called so ("rpe 7", "effort was 7/10"), and the other tokens.

    Several different efforts are those of items, not of the session: none of them is returned.
    """
    rest = list(tokens)
    efforts = set()
    for at, token in enumerate(tokens):
        where = _figure_beside(tokens, at) if token.mark is Mark.EFFORT else None
        if where is not None:
            efforts.add(tokens[where].choices[-1][0])
            rest[at] = rest[where] = GAP
    return efforts.pop() if len(efforts) == 1 else None, rest


def find_lone_rating(tokens: Sequence[Token]) -> tuple[float | None, list[Token]]:
    """Return the effort of a single "7/10" that nothing else has claimed."""
    ratings = [i for i, token in enumerate(tokens) if token.mark is Mark.RATING]
    rest = list(tokens)
    if len(ratings) != 1 or not _is_effort(tokens[ratings[0]]):
        return None, rest
    rest[ratings[0]] = GAP
    return tokens[ratings[0]].value, rest


def _is_effort(token: Token) -> bool:
    is_one = token.is_bare or (token.mark is Mark.RATING and len(token.choices[0]) == 1)
    return is_one and 0 <= token.choices[-1][0] <= HIGHEST_EFFORT


def _figure_beside(tokens: Sequence[Token], at: int) -> int | None:
    """Return where the figure stands: behind the word, else just before it."""
    i = at + 1
    while i < len(tokens) and tokens[i].mark in PASSED:
        i += 1
    if i < len(tokens) and (_is_effort(tokens[i]) or _is_comma_effort(tokens[i])):
        return i
    if at > 0 and _is_effort(tokens[at - 1]) and not (at > 1 and tokens[at - 2].is_bare):
        return at - 1
    return None


def _is_comma_effort(token: Token) -> bool:
    """Tell whether "7,5" stands where one figure is expected."""
    return (
        token.mark is Mark.NUMBER
        and len(token.choices) == 2
        and (token.choices[-1][0] <= HIGHEST_EFFORT and len(token.choices[-1]) == 1)
    )


def find_reserve(tokens: Sequence[Token]) -> list[tuple[int, Reserve, list[int]]]:
    """Return (where, reserve, tokens used) for each "2 left in the tank" or "nothing left"."""
    found = []
    for at, token in enumerate(tokens):
        if token.mark is Mark.NOTHING_LEFT:
            found.append((at, Reserve(left=0), [at]))
        elif token.mark is Mark.LEFT_OVER or _is_left_at_the_end(tokens, at):
            used = _reserve_figure(tokens, at)
            if used:
                value = tokens[used[0]].value
                is_at_least = any(tokens[i].mark is Mark.PLUS for i in used)
                found.append((at, Reserve(left=value, is_at_least=is_at_least), [*used, at]))
    return found


def _is_left_at_the_end(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether "left" means what remains ("had 2 left"): no right arm in the message."""
    return (
        tokens[at].mark is Mark.LEFT_WORD
        and not any(t.mark in {Mark.RIGHT, Mark.LEFT} for t in tokens)
        and at >= 2
        and tokens[at - 2].text in {"had", "with", "about"}
    )


def _reserve_figure(tokens: Sequence[Token], at: int) -> list[int]:
    """Return the tokens of the figure just before, or just behind, the words."""
    before = [at - 1] if at > 0 else []
    if before and tokens[before[0]].mark is Mark.PLUS and at > 1:
        before = [at - 2, at - 1]
    if before and tokens[before[0]].text in {"more", "mas"} and at > 1:
        before = [at - 2, at - 1]
    behind = [at + 1] if at + 1 < len(tokens) else []
    ways = [used for used in (before, behind) if used and _is_reserve(tokens[used[0]])]
    if len(ways) == 2:
        alone = [before] * (not _is_bare(tokens, before[0] - 1))
        alone += [behind] * (not _is_bare(tokens, behind[0] + 1))
        ways = alone if len(alone) == 1 else []
    return ways[0] if ways else []


def _is_bare(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether a row of figures goes on at ``at``."""
    return 0 <= at < len(tokens) and tokens[at].is_bare


def _is_reserve(token: Token) -> bool:
    return (
        token.mark is Mark.NUMBER
        and token.unit in RESERVE_UNITS
        and len(token.choices[0]) == 1
        and 0 <= token.value <= MOST_LEFT
    )
