"""The ways in which the figures said about one item can be read as sets."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from itertools import islice, product
from math import prod

from bot.reading.known import KnownItem
from bot.reading.plausible import is_planned_load, is_plausible, is_plausible_load
from bot.reading.tokens import Token
from bot.reading.units import MOST_SETS, UNITS, nearest_lb
from bot.reading.words import Mark
from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side

MOST_TIMES_THE_SETS = 2  # [-] CH: more figures than this are no row of sets
MOST_ROWS = 16  # [readings] CH: of one row of figures with commas in them
MOST_WAYS = 512  # [readings] CH: with more ways than this nothing is tried, so nothing recorded


@dataclass(frozen=True, slots=True)
class RawSet:
    """One set as it was said; ``n`` when a word named which one."""

    value: float
    unit: Mark | None = None
    side: Side | None = None
    load_kg: float | None = None
    n: int = 0


@dataclass(frozen=True, slots=True)
class Step:
    """What one phrase adds: sets, a load for what stands before or behind it, a side, a place."""

    sets: tuple[RawSet, ...] = ()
    load_kg: float | None = None
    side: Side | None = None
    n: int = 0
    repeats: bool = False
    is_sure: bool = True


@dataclass(frozen=True, slots=True)
class Draft:
    """One way to read all the phrases; not sure when a unit had to be guessed."""

    sets: tuple[RawSet, ...]
    is_sure: bool = True
    load_kg: float | None = None


@dataclass
class Phrases:
    """The phrases about one item: for each, every way to read it."""

    item: KnownItem
    pound: bool
    ways: list[tuple[Step, ...]] = field(default_factory=list)

    def kg(self, token: Token, value: float) -> float:
        """Return a load in kg: with its own unit, else in the athlete's.

        What the plan says in pounds is a rounded figure: the same figure said back is the plan.
        """
        factor = UNITS[Mark.LB][1] if self.pound and token.unit is None else 1.0
        load_kg, planned_kg = round(value * factor, 2), self.item.load_kg
        if self.pound and planned_kg is not None and nearest_lb(load_kg) == nearest_lb(planned_kg):
            return planned_kg
        return load_kg


def drafts(ways: Sequence[tuple[Step, ...]]) -> list[Draft]:
    """Return every way to read the phrases together; none when there are too many to try all."""
    if prod(len(way) for way in ways) > MOST_WAYS:
        return []
    return [_assembled(steps) for steps in product(*ways)]


def _assembled(steps: Sequence[Step]) -> Draft:
    steps = _places_in_front(_sides_in_front(steps))
    sets: list[RawSet] = []
    side, load, n, waiting = None, None, 0, 0
    is_torn = False  # "R: 31 / 29" read as a pair of arms
    for step in steps:
        if step.load_kg is not None:
            load = _loaded(sets, waiting, step.load_kg)
            waiting = len(sets)
        elif step.side is not None:
            side = step.side
        elif step.n:
            n = step.n
        elif step.repeats and sets:
            sets += _repeated(sets, side)
        is_torn = is_torn or (side is not None and any(s.side for s in step.sets))
        for said in step.sets:
            sets.append(
                replace(
                    said,
                    side=said.side or side,
                    load_kg=load if said.load_kg is None else said.load_kg,
                    n=n,
                )
            )
            n = n + 1 if n == -2 else 0
            if said.load_kg is not None:
                load = said.load_kg  # "22.5 x 8, 8, 8": it goes on until another is told
    lone = load if not sets else next((s.load_kg for s in steps if s.load_kg is not None), None)
    return Draft(tuple(sets), not is_torn and all(step.is_sure for step in steps), lone)


def _repeated(sets: Sequence[RawSet], side: Side | None) -> list[RawSet]:
    """Return the last set again; behind the name of the other arm the whole row of the first."""
    others = [s for s in sets if s.side not in {None, side}]
    if side is not None and others and not any(s.side is side for s in sets):
        return [replace(one, side=side) for one in others]
    return [replace(sets[-1], n=0)]


def _loaded(sets: list[RawSet], waiting: int, load_kg: float) -> float | None:
    """Give a load to the sets before it that have none; else keep it for those behind it."""
    before = [i for i in range(waiting, len(sets)) if sets[i].load_kg is None]
    for i in before:
        sets[i] = replace(sets[i], load_kg=load_kg)
    return None if before else load_kg


def _sides_in_front(steps: Sequence[Step]) -> list[Step]:
    """Turn "30 L 25 R" into "L 30 R 25"."""
    kinds = ["side" if s.side else "sets" if s.sets else "" for s in steps]
    spoken = [kind for kind in kinds if kind]
    if "side" not in spoken or spoken[0] != "sets" or spoken[-1] != "side":
        return list(steps)
    turned: list[Step] = []
    group: list[Step] = []
    for step in steps:
        if step.side:
            turned += [step, *group]
            group = []
        else:
            group.append(step)
    return turned + group


def _places_in_front(steps: Sequence[Step]) -> list[Step]:
    """Turn "45 on the first, 40 on the second" into "first 45, second 40".

    A place that stands behind as many sets as it counts names the last of them.
    """
    kinds = ["place" if s.n else "sets" if s.sets else "" for s in steps]
    spoken = [kind for kind in kinds if kind]
    pairs = len(spoken) // 2
    if spoken == ["sets", "place"] * pairs and pairs:
        return _swapped_pairs(steps)
    kept: list[Step] = []
    count = 0
    for step in steps:
        if step.n and step.n == count:
            continue
        kept.append(step)
        count += len(step.sets)
    return kept


def _swapped_pairs(steps: Sequence[Step]) -> list[Step]:
    turned: list[Step] = []
    group: list[Step] = []
    for step in steps:
        if step.n:
            turned += [step, *group]
            group = []
        else:
            group.append(step)
    return turned + group


def single(token: Token, phrases: Phrases, *, is_first: bool) -> tuple[Step, ...]:
    """Return the ways to read one figure that stands alone."""
    item = phrases.item
    if token.mark is Mark.BODYWEIGHT or token.unit is Mark.KG:
        return (Step(load_kg=phrases.kg(token, token.value)),)
    ways = [Step(sets=tuple(RawSet(v, token.unit) for v in values)) for values in token.choices]
    if len(token.choices) > 1 and item.measure is Measure.REPS:
        ways = ways[:1]
    is_alone = len(token.choices) == 1 and len(token.choices[0]) == 1
    counted = {Measure.CARRY_M, Measure.REPS}
    is_pair_of_weights = token.unit is Mark.SECONDS and item.measure in counted
    if is_alone and (is_pair_of_weights or (token.unit is None and is_first)):
        load = phrases.kg(token, token.value)
        is_planned = is_pair_of_weights and is_planned_load(load, item)
        if is_planned and token.text.endswith("s"):
            return (Step(load_kg=load),)
        if item.load_kg and is_plausible_load(load, item):
            ways.append(Step(load_kg=load, is_sure=False))
    return tuple(ways)


def slashed(figures: Sequence[Token], phrases: Phrases) -> tuple[Step, ...]:
    """Return the ways to read "45/40/38" and, for one-armed items, "30/25"."""
    rows = [
        [
            RawSet(v, token.unit)
            for token, values in zip(figures, chosen, strict=True)
            for v in values
        ]
        for chosen in islice(product(*(token.choices for token in figures)), MOST_ROWS)
    ]
    flat = rows[0]
    ways = [Step(sets=tuple(row)) for row in rows]
    if len(flat) == 2 and len(phrases.item.arms_asked) > 1:
        left, right = flat
        pair = (replace(left, side=Side.LEFT), replace(right, side=Side.RIGHT))
        ways.insert(0, Step(sets=pair))
    return tuple(ways)


def chained(figures: Sequence[Token], phrases: Phrases) -> tuple[Step, ...]:
    """Return the ways to read figures joined by a cross: "3x8", "45 x3", "20kg x 8", "3x8x20"."""
    if any(len(token.choices[0]) != 1 for token in figures if token.choices):
        return ()
    most = MOST_TIMES_THE_SETS * phrases.item.sets
    return tuple(way for way in _chain(figures, phrases) if len(way.sets) <= most)


def _chain(figures: Sequence[Token], phrases: Phrases) -> tuple[Step, ...]:
    if _is_load(figures[0]):
        return tuple(_behind_load(figures, phrases))
    if len(figures) == 2:
        return tuple(_two(figures[0], figures[1], phrases))
    return tuple(_three(figures, phrases)) if len(figures) == 3 else ()


def _is_load(token: Token) -> bool:
    return token.mark is Mark.BODYWEIGHT or token.unit is Mark.KG


def _number(token: Token) -> float:
    return float(token.n) if token.mark is Mark.COUNT else token.value


def _is_count(token: Token) -> bool:
    value = _number(token)
    return token.unit is None and value.is_integer() and 1 <= value <= MOST_SETS


def _times(count: Token, value: Token, load_kg: float | None = None) -> tuple[RawSet, ...]:
    return (RawSet(_number(value), value.unit, load_kg=load_kg),) * int(_number(count))


def _behind_load(figures: Sequence[Token], phrases: Phrases) -> Iterator[Step]:
    load = phrases.kg(figures[0], figures[0].value)
    rest = figures[1:]
    yield Step(sets=tuple(RawSet(_number(f), f.unit, load_kg=load) for f in rest))
    if len(rest) == 2:
        if _is_count(rest[1]):
            yield Step(sets=_times(rest[1], rest[0], load))
        if _is_count(rest[0]) and rest[0].value != rest[1].value:
            yield Step(sets=_times(rest[0], rest[1], load))


def _two(first: Token, second: Token, phrases: Phrases) -> Iterator[Step]:
    item = phrases.item
    if _is_load(second):
        load = phrases.kg(second, second.value)
        yield Step(sets=(RawSet(_number(first), first.unit, load_kg=load),))
        return
    if _is_count(first):
        yield Step(sets=_times(first, second))
    if _is_count(second) and _number(first) != _number(second):
        yield Step(sets=_times(second, first), is_sure=_is_value_first(first, second, item))
    if second.is_bare and (weight := _bare_load(second, phrases)) is not None:
        sets = (RawSet(_number(first), first.unit, load_kg=weight),)
        is_weight = item.measure is Measure.REPS and not _is_count(second)
        yield Step(sets=sets, is_sure=is_weight)
    if first.is_bare and (weight := _bare_load(first, phrases)) is not None:
        sets = (RawSet(_number(second), second.unit, load_kg=weight),)
        is_weight = item.measure is Measure.REPS and not _is_count(first)
        yield Step(sets=sets, is_sure=is_planned_load(weight, item) or is_weight)


def _bare_load(token: Token, phrases: Phrases) -> float | None:
    """Return the load that a figure without a unit may be, None where it can be none."""
    item, load = phrases.item, phrases.kg(token, token.value)
    is_near = is_planned_load(load, item) or is_plausible_load(load, item)
    return load if item.load_kg and is_near else None


def _is_value_first(first: Token, second: Token, item: KnownItem) -> bool:
    """Tell whether "45 x3" can only mean 45 in each of three sets."""
    if second.mark is Mark.COUNT or first.unit is not None:
        return True
    return not _is_count(first) or (
        second.value == item.sets
        and not is_plausible(second.value, None, item)
        and _number(first) > 2 * item.sets
    )


def _three(figures: Sequence[Token], phrases: Phrases) -> Iterator[Step]:
    first, second, third = figures
    load = phrases.kg(third, third.value)
    is_sure = _is_load(third) or is_planned_load(load, phrases.item)
    if not is_sure and not is_plausible_load(load, phrases.item):
        return
    if _is_count(first):
        yield Step(sets=_times(first, second, load), is_sure=is_sure)
    if _is_count(second) and first.value != second.value:
        is_value_first = _is_value_first(first, second, phrases.item)
        yield Step(sets=_times(second, first, load), is_sure=is_sure and is_value_first)
