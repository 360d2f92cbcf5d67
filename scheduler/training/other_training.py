"""Training that is not ours: what it loads, and on which days it was hard."""

import re
import unicodedata
from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from enum import StrEnum
from functools import cache
from importlib.resources import files

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Direction
from scheduler.located_yaml import read_located
from scheduler.training.labelled import SourceKey
from scheduler.training.rulebook import Rulebook
from scheduler.training.week_values import HardDay

STRICT = ConfigDict(frozen=True, extra="forbid")


class Load(StrEnum):
    """What other training asks of the arms."""

    PUSH = "push"
    PULL = "pull"
    OVERHEAD = "overhead"
    GRIP = "grip"

    @property
    def directions(self) -> frozenset[Direction]:
        """The directions that a hard day of it tires (CP)."""
        return DIRECTIONS[self]


PULLS = frozenset({Direction.VERTICAL_PULL, Direction.HORIZONTAL_PULL})
DIRECTIONS = {
    Load.PUSH: frozenset({Direction.HORIZONTAL_PUSH, Direction.DOWNWARD_PUSH}),
    Load.PULL: PULLS,
    Load.OVERHEAD: frozenset({Direction.VERTICAL_PUSH}),
    Load.GRIP: PULLS | {Direction.UPWARD_PULL},
}
"""Grip tires every pull, carries too (CP)."""
HARD_UNLESS_SAID = frozenset({Load.PULL, Load.GRIP})
"""What counts as hard while nobody said how hard it was: two hard pulling days in a row are what
elbows and fingers stand least (CP, careful)."""


class OtherTraining(BaseModel):
    """Other training as it was reported: ``effort`` [0-10] and ``minutes`` [min] where told."""

    model_config = STRICT

    on: date
    tags: frozenset[Load] = frozenset()
    effort: float | None = Field(default=None, ge=0, le=10)
    minutes: float | None = Field(default=None, gt=0)


class RegularTraining(BaseModel):
    """Other training that comes every week: ``weekday`` [ISO, Monday 1], ``name`` as told."""

    model_config = STRICT

    weekday: int = Field(ge=1, le=7)
    tags: frozenset[Load] = frozenset()
    is_hard: bool = False
    name: str = ""


def is_hard(training: OtherTraining, *, rulebook: Rulebook) -> bool:
    """Tell whether reported training counts as hard: by its effort, else when it pulls or grips.

    From ``other_training.hard_from_effort`` [0-10] on (CH). Training that loads no arm is never
    hard for them.
    """
    if training.effort is None:
        return bool(training.tags & HARD_UNLESS_SAID)
    return bool(training.tags) and training.effort >= rulebook.other_training.hard_from_effort.value


def hard_days(
    reported: Iterable[OtherTraining],
    regular: Sequence[RegularTraining],
    *,
    week_start: date,
    rulebook: Rulebook,
) -> tuple[HardDay, ...]:
    """Return the hard days elsewhere that one week keeps away from, in order.

    Parameters
    ----------
    reported: other training as told; what lies too far from the week to matter is passed over.
    regular: what comes every week; on a day with a report of the same kind the report holds.
    week_start: the Monday of the week; the days around it that ask for a free day between (the
        Sunday before, the Monday after) count too.

    """
    told = tuple(reported)
    near = rulebook.weeks.free_days_between_hard.whole
    loads: dict[date, frozenset[Load]] = {}
    for offset in range(-near, 7 + near):
        on = week_start + timedelta(days=offset)
        today = [one for one in told if one.on == on]
        known = frozenset[Load]().union(*(one.tags for one in today))
        hard = [one.tags for one in today if is_hard(one, rulebook=rulebook)]
        hard += [
            one.tags
            for one in regular
            if one.is_hard and one.weekday == on.isoweekday() and not one.tags & known
        ]
        loads[on] = frozenset[Load]().union(*hard)
    return tuple(
        HardDay(on=on, directions=frozenset[Direction]().union(*(tag.directions for tag in tags)))
        for on, tags in loads.items()
        if tags
    )


class ActivityRow(BaseModel):
    """Plain words for one kind of activity, and what it loads."""

    model_config = STRICT

    words: tuple[str, ...] = Field(min_length=1)
    loads: frozenset[Load]


class ActivityTable(BaseModel):
    """The whole table, with the source of all of it."""

    model_config = STRICT

    version: int = Field(ge=1)
    source: SourceKey
    activities: tuple[ActivityRow, ...]


def tags_of(activity_name: str) -> frozenset[Load]:
    """Return what an activity loads by the words for it; nothing for a word that is unknown.

    The longest words found count first, so that "water polo" is no "polo"; what they cover is
    read once. "Class: 30 pull-ups" pulls.
    """
    left = f" {_plain(activity_name)} "
    found: set[Load] = set()
    for words, loads in _words():
        if f" {words} " in left:
            found |= loads
            left = left.replace(f" {words} ", " | ")
    return frozenset(found)


def is_known(activity_name: str) -> bool:
    """Tell whether the table has a word of an activity; where not, the athlete may be asked."""
    text = f" {_plain(activity_name)} "
    return any(f" {words} " in text for words, _ in _words())


def _plain(text: str) -> str:
    """Return small letters without accents and signs, words apart by one space."""
    bare = unicodedata.normalize("NFKD", text.casefold()).encode("ascii", "ignore").decode()
    return " ".join(re.findall(r"[a-z]+", bare))


@cache
def _words() -> tuple[tuple[str, frozenset[Load]], ...]:
    text = (files("scheduler.training") / "other_training.yaml").read_text("utf-8")
    table = read_located(text, ActivityTable, file_name="other_training.yaml")
    pairs = [(words, row.loads) for row in table.activities for words in row.words]
    return tuple(sorted(pairs, key=lambda pair: (-len(pair[0]), pair[0])))
