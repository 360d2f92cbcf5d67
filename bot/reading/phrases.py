"""Cut what was said about one item into phrases, and note the words that govern all of them."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from bot.reading.dose import Phrases, Step, chained, single, slashed
from bot.reading.effort import HIGHEST_EFFORT
from bot.reading.known import KnownItem
from bot.reading.plausible import is_planned_load, is_plausible_load
from bot.reading.tokens import Token
from bot.reading.words import Mark
from scheduler.pain.values import Side

FIGURES = frozenset({Mark.NUMBER, Mark.BODYWEIGHT, Mark.COUNT})
OF = frozenset({"of", "de"})
SIDES = {Mark.LEFT: Side.LEFT, Mark.LEFT_WORD: Side.LEFT, Mark.RIGHT: Side.RIGHT}
STRAY_UNITS = frozenset({Mark.MINUTES, Mark.HOURS, Mark.KG, Mark.LB, Mark.KILOMETRES})
HANDS = {"left hand": Side.LEFT, "right hand": Side.RIGHT}
WISHES = frozenset(
    {
        "should be",
        "should have been",
        "shouldve been",
        "ought to be",
        "was meant to be",
        "deberia ser",
    }
)
"""Words that correct what was said before; in front of new figures they tell what was wanted."""
GOVERNING = frozenset(
    {
        Mark.ALL,
        Mark.EACH,
        Mark.EACH_SIDE,
        Mark.STOPPED,
        Mark.ONLY,
        Mark.PLANNED,
        Mark.DONE,
        Mark.EVERYTHING,
        Mark.SKIPPED,
        Mark.ABOUT,
        Mark.RISKY,
        Mark.LATER,
        Mark.CANT,
        Mark.HALF,
        Mark.NOT,
        Mark.SAME,
        Mark.JUNK,
        Mark.SORRY,
        Mark.MEANT,
        Mark.BUT,
    }
)


@dataclass
class Said:
    """All that was said about one item: the phrases, the governing words, a count of sets."""

    item: KnownItem
    ways: list[tuple[Step, ...]] = field(default_factory=list)
    words: set[Mark] = field(default_factory=set)
    count: int | None = None
    band: str | None = None
    figures: int = 0
    has_told_load: bool = False
    last: tuple[int, Token] | None = None


def said_about(item: KnownItem, tokens: Sequence[Token], *, pound: bool) -> Said:
    """Read the tokens of one item; every figure lands in a phrase or makes the words JUNK."""
    said = Said(item)
    phrases = Phrases(item, pound)
    spoken = [t for t in tokens if t.mark is not Mark.FILLER or t.text in OF]
    at = 0
    while at < len(spoken):
        at += _phrase(spoken, at, said, phrases)
    return said


def _phrase(tokens: Sequence[Token], at: int, said: Said, phrases: Phrases) -> int:
    """Add the phrase that begins at ``at``; return how many tokens it takes."""
    token = tokens[at]
    if token.text == "instead" and (used := _plan_behind(tokens, at, said.item)):
        return used
    if token.mark in GOVERNING:
        return _governing(tokens, at, said)
    used = _told_load(tokens, at, said, phrases)
    if not used and token.mark is Mark.TIMES and _is_count_behind(tokens, at, said):
        used = _trailing_times(tokens, at, said, phrases)
    if used:
        return used
    if _is_count_of(tokens, at, said.item):
        figures = [Token(Mark.COUNT, token.text, n=int(token.value)), tokens[at + 2]]
        said.figures += 2
        _add(chained(figures, phrases), said)
        return 3
    if token.mark in FIGURES:
        return _figures(tokens, at, said, phrases)
    if token.mark is Mark.RATING:
        figures = [Token(Mark.NUMBER, "", ((value,),)) for value in (*token.choices[0], 10.0)]
        said.ways.append(slashed(figures, phrases))
        said.figures += len(figures)
    elif token.mark in {Mark.PLUS, Mark.TIMES} and not _is_figure(tokens, at + 1):
        said.words.add(Mark.RISKY)
    elif token.mark is Mark.ORDINAL and _is_remark(tokens, at + 1):
        return 1  # "set 3 was hard": no figure is told of it
    else:
        _word(token, said)
    return 1


def _is_of_one_set(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether a load may belong to the last of several figures alone.

    So in "8 8 then 7 at 14" and "8 8 8@14", but not in "8 8 7 @ 14" and "8@14 8@14".
    """
    before = [token.mark for token in tokens[max(0, at - 3) : at]]
    is_row = before[-3:] in (
        [Mark.NUMBER, Mark.NUMBER, Mark.NUMBER],
        [Mark.NUMBER, Mark.AND, Mark.NUMBER],
    )
    is_joined = tokens[at].is_glued and before[-2:] == [Mark.NUMBER, Mark.NUMBER]
    return (is_row and before[-2] is Mark.AND and tokens[at - 2].text != "y") or is_joined


def _is_remark(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether a word that is no figure's follows."""
    return at < len(tokens) and tokens[at].mark in {Mark.CHAT, Mark.WORD, Mark.FINE, Mark.SORE}


def _told_load(tokens: Sequence[Token], at: int, said: Said, phrases: Phrases) -> int:
    """Read "@ 20", and note "+10 kg" and "bw+10" as loads that were told; 0 for anything else."""
    token = tokens[at]
    if token.mark is Mark.AT and _is_figure(tokens, at + 1) and _is_behind(tokens, at, said):
        return _load(tokens, at, said, phrases)
    is_added = token.mark is Mark.PLUS and at + 1 < len(tokens)
    if is_added and tokens[at + 1].unit is Mark.KG:
        said.has_told_load = True
        return 1
    said.has_told_load = said.has_told_load or (token.mark is Mark.BODYWEIGHT and token.value > 0)
    return 0


def _is_behind(tokens: Sequence[Token], at: int, said: Said) -> bool:
    """Tell whether a load is told: behind figures, behind "as planned but", or with its unit."""
    figure = tokens[at + 1]
    is_weight = figure.unit is Mark.KG or figure.text.endswith("s")
    return bool(said.figures) or Mark.PLANNED in said.words or is_weight


def _is_count_behind(tokens: Sequence[Token], at: int, said: Said) -> bool:
    """Tell whether "x3" stands behind the one figure that was said: "8 each arm x3"."""
    count = tokens[at + 1] if at + 1 < len(tokens) else None
    return (
        count is not None
        and said.figures == 1
        and count.is_bare
        and count.value == said.item.sets
        and said.last is not None
        and not _is_figure(tokens, at + 2)
    )


def _trailing_times(tokens: Sequence[Token], at: int, said: Said, phrases: Phrases) -> int:
    count = Token(Mark.COUNT, tokens[at + 1].text, n=int(tokens[at + 1].value))
    if said.last is not None:
        where, figure = said.last
        ways = tuple(way for way in chained([figure, count], phrases) if way.sets)
        said.ways[where] = ways or said.ways[where]
    said.figures += 1
    return 2


def _plan_behind(tokens: Sequence[Token], at: int, item: KnownItem) -> int:
    """Return how many tokens "instead of 15" takes where 15 is the plan; 0 where it is not."""
    i = at + 1
    while i < len(tokens) and tokens[i].text in OF:
        i += 1
    is_plan = i < len(tokens) and tokens[i].is_bare and tokens[i].value == item.target
    return i - at + 1 if is_plan else 0


def _is_count_of(tokens: Sequence[Token], at: int, item: KnownItem) -> bool:
    """Tell whether "one of 6" or "two of 8" stands there: a count of sets, not two figures."""
    return (
        tokens[at].is_bare
        and tokens[at].value.is_integer()
        and 1 <= tokens[at].value <= item.sets
        and at + 2 < len(tokens)
        and tokens[at + 1].text in OF
        and tokens[at + 2].mark is Mark.NUMBER
    )


def _word(token: Token, said: Said) -> None:
    """Note which arm, which set, which band; a unit without a figure makes all doubtful."""
    side = SIDES.get(token.mark) or HANDS.get(token.text)
    if side:
        said.ways.append((Step(side=side),))
    elif token.mark is Mark.ORDINAL:
        said.ways.append((Step(n=token.n),))
    elif token.mark is Mark.BAND and token.text not in {"band", "banda", "goma"}:
        said.band = token.text
    elif token.mark in STRAY_UNITS:
        said.words.add(Mark.RISKY)


def _governing(tokens: Sequence[Token], at: int, said: Said) -> int:
    """Note a governing word, with the count of sets that may follow it."""
    token = tokens[at]
    said.words.add(token.mark)
    if token.text in WISHES:
        said.words.add(Mark.RISKY)
    if token.mark is Mark.SAME:
        said.ways.append((Step(repeats=True),))
    behind = tokens[at + 1].mark if at + 1 < len(tokens) else None
    if token.mark is Mark.STOPPED and behind is Mark.AT:
        said.words.add(Mark.RISKY)
    if not _is_figure(tokens, at + 1) or not tokens[at + 1].is_bare:
        return 1
    figure = tokens[at + 1].value
    is_count = figure.is_integer() and figure <= said.item.sets
    after = at + 3 if at + 2 < len(tokens) and tokens[at + 2].mark is Mark.AT else at + 2
    is_all_of_them = token.mark is Mark.ALL and is_count and _is_figure(tokens, after)
    is_at_the_end = after == at + 2 and not _figures_behind(tokens, at + 2)
    if token.mark is Mark.ALL and figure == said.item.sets and said.figures and is_at_the_end:
        return 2
    is_told = token.mark is Mark.ONLY and is_count and _figures_behind(tokens, at + 2) == figure
    if token.mark is Mark.STOPPED and (token.text.endswith("after") and not is_count):
        said.words.add(Mark.RISKY)  # "stopped after 38": in which set?
    if is_all_of_them or is_told or (token.text.endswith("after") and is_count):
        said.count = int(figure)
        return 2
    return 1


def _figures_behind(tokens: Sequence[Token], at: int) -> int:
    """Count the figures from ``at`` on, those of a load left out."""
    return sum(t.mark in FIGURES and t.unit is not Mark.KG for t in tokens[at:])


def _is_figure(tokens: Sequence[Token], at: int) -> bool:
    return at < len(tokens) and tokens[at].mark in FIGURES


def _load(tokens: Sequence[Token], at: int, said: Said, phrases: Phrases) -> int:
    """Read "@ 20" or "with 20 kg" behind figures; "@ 7" may also be an effort."""
    token = tokens[at + 1]
    if token.unit is Mark.SECONDS and token.text.endswith("s") and len(token.choices) == 1:
        plain = replace(token, unit=None)  # "with the 24s": a pair of weights
        token = plain if is_plausible_load(phrases.kg(plain, token.value), said.item) else token
    if token.unit is Mark.KG:
        said.has_told_load = True
    if token.mark is Mark.COUNT or token.unit not in {None, Mark.KG}:
        said.words.add(Mark.RISKY)
        return 1
    said.figures += not said.figures
    load = phrases.kg(token, token.choices[-1][0])
    way = Step(load_kg=load, is_sure=not _is_of_one_set(tokens, at))
    if token.unit is None and load <= HIGHEST_EFFORT and not is_planned_load(load, said.item):
        said.ways.append((replace(way, is_sure=False), Step(is_sure=False)))
    else:
        said.ways.append((way,))
    return 2


def _figures(tokens: Sequence[Token], at: int, said: Said, phrases: Phrases) -> int:
    """Read figures joined by crosses or slashes, a count of sets, or one figure alone."""
    token = tokens[at]
    joint = Mark.SLASH if _joined(tokens, at, Mark.SLASH) else Mark.TIMES
    figures, used = [token], 1
    while _joined(tokens, at + used - 1, joint):
        figures.append(tokens[at + used + 1])
        used += 2
    is_first = not said.figures
    if token.mark is Mark.COUNT and used == 1:
        return _count(tokens, at, said, phrases)
    said.figures += len(figures)
    if used == 1:
        ways = single(token, phrases, is_first=is_first)
        is_plain = len(token.choices) == 1 and len(token.choices[0]) == 1
        if token.mark is Mark.NUMBER and token.unit is not Mark.KG and is_plain:
            said.last = (len(said.ways), token)
    else:
        ways = (slashed if joint is Mark.SLASH else chained)(figures, phrases)
    _add(ways, said)
    return used


def _add(ways: tuple[Step, ...], said: Said) -> None:
    if ways:
        said.ways.append(ways)
    else:
        said.words.add(Mark.JUNK)


def _joined(tokens: Sequence[Token], at: int, joint: Mark) -> bool:
    return (
        at + 2 < len(tokens)
        and tokens[at + 1].mark is joint
        and tokens[at + 2].mark in FIGURES
        and not (joint is Mark.SLASH and tokens[at + 2].mark is Mark.COUNT)
    )


def _count(tokens: Sequence[Token], at: int, said: Said, phrases: Phrases) -> int:
    """Read "3 sets of 8" as a row of sets, and "3 sets" before or behind figures as a count."""
    after = at + 1
    is_of = after < len(tokens) and (tokens[after].text in OF or tokens[after].mark is Mark.AT)
    if is_of and _is_figure(tokens, after + 1):
        figures = [tokens[at], tokens[after + 1]]
        said.figures += 2
        _add(chained(figures, phrases), said)
        return 3
    if said.count is not None:
        said.words.add(Mark.JUNK)
    said.count = tokens[at].n
    return 1
