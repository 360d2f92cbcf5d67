"""How athletes type what they did: each habit is one way to write the same sets."""

import random
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from demo_scenario.eye import SeenItem, Unit
from demo_scenario.team import Habit

LOW = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
UNITS = (*LOW.split(), "fifteen", "sixteen", "seventeen", "eighteen", "nineteen")
TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
FIRST_TENS = 20  # [1] definition: from here on a number word has two parts
FIRST_HUNDRED = 100  # [1] definition


@dataclass(frozen=True, slots=True)
class DoneItem:
    """What was done of one displayed item: a value a set, arm by arm where each has its own."""

    seen: SeenItem
    both: tuple[int, ...] = ()
    left: tuple[int, ...] = ()
    right: tuple[int, ...] = ()

    @property
    def values(self) -> tuple[int, ...]:
        """Every value, the left arm's first."""
        return (*self.both, *self.left, *self.right)

    @property
    def is_as_written(self) -> bool:
        """True when every set reached what was asked, and none went beyond."""
        return set(self.values) == {self.seen.target}


def in_words(number: int) -> str:
    """Write a number as it is dictated."""
    if number < FIRST_TENS:
        return UNITS[number]
    if number >= FIRST_HUNDRED:
        return str(number)
    tens, units = divmod(number, 10)
    return TENS[tens] + (f" {UNITS[units]}" if units else "")


def messages(habit: Habit, done: Sequence[DoneItem], chance: random.Random) -> list[str]:
    """Return what is sent for a session, message by message."""
    if habit is Habit.ITEM_BY_ITEM:
        return [f"{_short(one)} {_spaced(one)}" for one in done]
    if habit is Habit.WORDS:
        return [f"{one.seen.number}) {_worded(one)}" for one in done]
    write = LINES[habit]
    return ["\n".join(write(one, chance) for one in done)]


def _numbered(one: DoneItem, _: random.Random) -> str:
    return f"{one.seen.number}) {_spaced(one)}"


def _numbered_commas(one: DoneItem, _: random.Random) -> str:
    if one.both:
        return f"{one.seen.number}. " + ", ".join(map(str, one.both))
    return f"{one.seen.number}) {_spaced(one)}"


def _plain(one: DoneItem, _: random.Random) -> str:
    return _spaced(one)


def _slashes(one: DoneItem, _: random.Random) -> str:
    if one.both:
        return f"{one.seen.number}) " + "/".join(map(str, one.both))
    return f"{one.seen.number}) {_spaced(one)}"


def _times(one: DoneItem, _: random.Random) -> str:
    if one.both and len(set(one.both)) == 1 and len(one.both) > 1:
        return f"{one.seen.number}) {len(one.both)}x{one.both[0]}"
    return f"{one.seen.number}) {_spaced(one)}"


def _named_times(one: DoneItem, chance: random.Random) -> str:
    if one.both and len(set(one.both)) == 1 and len(one.both) > 1:
        return f"{one.seen.name.lower()} {len(one.both)} x {one.both[0]}"
    return _numbered(one, chance)


def _typos(one: DoneItem, chance: random.Random) -> str:
    name = list(one.seen.name.lower())
    place = chance.randrange(1, len(name) - 1)
    name[place], name[place - 1] = name[place - 1], name[place]
    return f"{one.seen.number}) {''.join(name)} {_spaced(one)}"


def _decimal_commas(one: DoneItem, chance: random.Random) -> str:
    if one.both and one.seen.load_kg and one.seen.unit is Unit.REPS:
        load = f"{one.seen.load_kg:.1f}".replace(".", ",")
        return f"{one.seen.number}) {_spaced(one)} @ {load} kg"
    return _numbered(one, chance)


LINES: dict[Habit, Callable[[DoneItem, random.Random], str]] = {
    Habit.NUMBERED: _numbered,
    Habit.NUMBERED_COMMAS: _numbered_commas,
    Habit.PLAIN_LINES: _plain,
    Habit.SLASHES: _slashes,
    Habit.TIMES: _times,
    Habit.NAMED_TIMES: _named_times,
    Habit.TYPOS: _typos,
    Habit.DECIMAL_COMMAS: _decimal_commas,
    Habit.ALL_AS_PLANNED: _numbered,
    Habit.STEP_BY_STEP: _numbered,
}


def one_item(one: DoneItem) -> str:
    """Answer the question about a single item."""
    return _spaced(one)


def _spaced(one: DoneItem) -> str:
    if one.both:
        return " ".join(map(str, one.both))
    sides = (("L", one.left), ("R", one.right))
    return " ".join(f"{arm} {' '.join(map(str, values))}" for arm, values in sides if values)


def _worded(one: DoneItem) -> str:
    if one.both:
        return ", ".join(in_words(value) for value in one.both)
    return _spaced(one)


def _short(one: DoneItem) -> str:
    """Name the item as people do: its last two words, without what stands behind a comma."""
    return " ".join(one.seen.name.lower().split("(")[0].split(",")[0].split()[-2:])
