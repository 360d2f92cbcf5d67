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
        if where is not None and not _is_range(tokens, where):
            efforts.add(tokens[where].choices[-1][0])
            rest[at] = rest[where] = GAP
    return efforts.pop() if len(efforts) == 1 else None, rest


def _is_range(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether "or 8" or "-8" follows: then the effort is asked about."""
    marks = [token.mark for token in tokens[at + 1 : at + 3]]
    is_joined = len(marks) == 2 and marks[0] in {Mark.OR, Mark.DASH}
    return is_joined and marks[1] is Mark.NUMBER and _is_effort(tokens[at + 2])


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


def find_reserve(
    tokens: Sequence[Token], *, has_arms: bool = True
) -> list[tuple[int, Reserve, list[int]]]:
    """Return (where, reserve, tokens used) for each "2 left in the tank" or "nothing left".

    ``has_arms`` where "left" may be an arm: then "2 left" alone says nothing of what was left.
    """
    found = []
    for at, token in enumerate(tokens):
        if token.mark is Mark.NOTHING_LEFT:
            found.append((at, Reserve(left=0), [at]))
        elif token.mark is Mark.COULD:
            used = _could_figure(tokens, at)
            if used:
                found.append((at, _reserve_of(tokens, used), [*used, at]))
        elif token.mark is Mark.LEFT_OVER or _is_left_at_the_end(tokens, at, has_arms=has_arms):
            used = _reserve_figure(tokens, at)
            if used and not any(i in taken for _, _, taken in found for i in used):
                found.append((at, _reserve_of(tokens, used), [*used, at]))
    return found


def _reserve_of(tokens: Sequence[Token], used: Sequence[int]) -> Reserve:
    value = next(tokens[i].value for i in used if tokens[i].mark is Mark.NUMBER)
    marks = {tokens[i].mark for i in used}
    is_open = any(tokens[i].text in {"or more", "o mas"} for i in used)
    return Reserve(left=value, is_at_least=is_open or bool(marks & {Mark.PLUS, Mark.AT_LEAST}))


def _could_figure(tokens: Sequence[Token], at: int) -> list[int]:
    """Return the tokens of "could have done 2 more": a figure that more or the end follows."""
    i = at + 1
    while i < len(tokens) and tokens[i].mark in PASSED | {Mark.AT_LEAST}:
        i += 1
    if i >= len(tokens) or not _is_reserve(tokens[i]):
        return []
    behind = tokens[i + 1].mark if i + 1 < len(tokens) else None
    if behind is Mark.PLUS and i + 2 < len(tokens) and tokens[i + 2].mark is Mark.MORE:
        return list(range(at + 1, i + 3))
    if behind in {Mark.MORE, Mark.LEFT_OVER, Mark.LEFT_WORD}:
        return list(range(at + 1, i + 2))
    is_end = behind in {None, Mark.COMMA, Mark.STOP_SIGN, Mark.LINE}
    return list(range(at + 1, i + 1)) if is_end and tokens[at].text in SAYS_MORE else []


def _is_left_at_the_end(tokens: Sequence[Token], at: int, *, has_arms: bool) -> bool:
    """Tell whether "left" means what remains ("had 2 left"): no right arm in the message."""
    if tokens[at].mark is not Mark.LEFT_WORD or at < 1:
        return False
    if any(t.mark in {Mark.RIGHT, Mark.LEFT, Mark.EACH_SIDE} for t in tokens):
        return False
    if at >= 2 and tokens[at - 2].text in HAVING:
        return True
    is_end = at + 1 == len(tokens) or tokens[at + 1].mark in {Mark.COMMA, Mark.STOP_SIGN, Mark.LINE}
    return not has_arms and is_end


def _reserve_figure(tokens: Sequence[Token], at: int) -> list[int]:
    """Return the tokens of the figure just before, or just behind, the words."""
    before = [at - 1] if at > 0 else []
    if before and tokens[before[0]].mark in {Mark.PLUS, Mark.MORE} and at > 1:
        before = [at - 2, at - 1]
    first = at + 1
    while first < len(tokens) and tokens[first].text in BEHIND_WORDS:
        first += 1
    behind = [first] if first < len(tokens) else []
    if behind and first + 1 < len(tokens) and tokens[first + 1].mark is Mark.PLUS:
        behind = [first, first + 1]
    ways = [used for used in (before, behind) if used and _is_reserve(tokens[used[0]])]
    if len(ways) == 2:
        alone = [before] * (not _is_bare(tokens, before[0] - 1))
        alone += [behind] * (not _is_bare(tokens, behind[-1] + 1))
        ways = alone if len(alone) == 1 else []
    if ways and ways[0] == before and at > 1 and tokens[before[0] - 1].mark is Mark.AT_LEAST:
        return [before[0], before[0] - 1, *before[1:]]
    return ways[0] if ways else []


HAVING = frozenset({"had", "with", "about", "i had", "still", "have", "only", "maybe", "had about"})
BEHIND_WORDS = frozenset({"was", "is", "of", "about", "maybe", "de", "era", "="})
SAYS_MORE = frozenset(
    {
        *("could have done another", "couldve done another", "could have held another"),
        *("could have gone another", "me quedaban", "me quedaba", "quedaban", "me sobraban"),
        *("me sobraba", "sobraban", "me quedaron", "quedaba", "me faltaban para el fallo"),
    }
)
"""Words that tell what was left even where no "more" stands behind the figure."""


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
