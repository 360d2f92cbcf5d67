"""What a coach changed in an athlete's plan: each change is an entry that stands until taken back.

The drawing of a week and the dose of a movement read the entries each time anew, so they survive
every planning anew, and none of them is ever stronger than what is left out for pain.
"""

from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from typing import Annotated, Literal, Self

from pydantic import BaseModel, ConfigDict, Field, model_validator

from scheduler.catalogue.values import Direction
from scheduler.training.values import Rung

KEPT = timedelta(weeks=10)  # [weeks] ch: as far as the drawing of a week looks back


class EntryBase(BaseModel):
    """What all entries share."""

    model_config = ConfigDict(frozen=True, extra="forbid")


class Pin(EntryBase):
    """Where a movement fits it is taken, in every coming week.

    ``is_override``: the coach was told that the stage does not permit it yet.
    """

    kind: Literal["pin"] = "pin"
    movement_key: str
    is_override: bool = False


class Ban(EntryBase):
    """A movement that does not come in any coming week."""

    kind: Literal["ban"] = "ban"
    movement_key: str


class ItemChange(EntryBase):
    """Another movement in one place of one day, by date, pair and direction."""

    kind: Literal["item"] = "item"
    on: date
    pair: int | None
    direction: Direction
    was: str
    movement_key: str
    is_override: bool = False


class StandingSwap(EntryBase):
    """One movement for another, whenever the week holds the first."""

    kind: Literal["swap"] = "swap"
    was: str
    movement_key: str
    is_override: bool = False


class DayMove(EntryBase):
    """A training day of one week on another day of it."""

    kind: Literal["day"] = "day"
    on: date
    to: date

    @model_validator(mode="after")
    def _stays_in_its_week(self) -> Self:
        if monday_before(self.on) != monday_before(self.to):
            raise ValueError("expected both days in one week")
        return self


class DoseSet(EntryBase):
    """The dose of a movement until it is next done.

    ``sets`` [sets] of ``target`` [s, repetitions or m] at ``rung``; it holds for what is trained
    on ``from_on`` or later, once.
    """

    kind: Literal["dose"] = "dose"
    movement_key: str
    from_on: date
    sets: int = Field(ge=1)
    target: int = Field(ge=1)
    rung: Rung


PlanEntry = Annotated[
    Pin | Ban | ItemChange | StandingSwap | DayMove | DoseSet, Field(discriminator="kind")
]


class CoachPlan(BaseModel):
    """Everything that a coach changed and that stands, the oldest first."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    entries: tuple[PlanEntry, ...] = ()

    @property
    def pinned(self) -> frozenset[str]:
        """The movements that are taken wherever they fit."""
        return frozenset(one.movement_key for one in self.entries if isinstance(one, Pin))

    @property
    def banned(self) -> frozenset[str]:
        """The movements that do not come."""
        return frozenset(one.movement_key for one in self.entries if isinstance(one, Ban))

    @property
    def allowed(self) -> frozenset[str]:
        """The pinned movements that the stage alone would not permit."""
        pins = (one for one in self.entries if isinstance(one, Pin))
        return frozenset(one.movement_key for one in pins if one.is_override)

    @property
    def moves(self) -> tuple[DayMove, ...]:
        """The days that were moved."""
        return tuple(one for one in self.entries if isinstance(one, DayMove))

    def item_change(self, *, on: date, pair: int | None, direction: Direction) -> ItemChange | None:
        """Return what was put into one place of one day, if anything was."""
        return next(
            (
                one
                for one in reversed(self.entries)
                if isinstance(one, ItemChange)
                and (one.on, one.pair, one.direction) == (on, pair, direction)
            ),
            None,
        )

    def swap_of(self, movement_key: str) -> StandingSwap | None:
        """Return what stands in for a movement whenever it comes, if anything does."""
        swaps = (one for one in reversed(self.entries) if isinstance(one, StandingSwap))
        return next((one for one in swaps if one.was == movement_key), None)

    def dose_of(self, movement_key: str) -> DoseSet | None:
        """Return the dose that was set for a movement, whether it was done since or not."""
        doses = (one for one in reversed(self.entries) if isinstance(one, DoseSet))
        return next((one for one in doses if one.movement_key == movement_key), None)

    def day_after_moves(self, on: date) -> date:
        """Return on which day a training day is trained."""
        return next((one.to for one in reversed(self.moves) if one.on == on), on)


class PlanChange(BaseModel):
    """Entries that go and entries that come: its reverse takes it back."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    remove: tuple[PlanEntry, ...] = ()
    add: tuple[PlanEntry, ...] = ()

    @property
    def reverse(self) -> "PlanChange":
        """The change that takes this one back."""
        return PlanChange(remove=self.add, add=self.remove)

    def fits(self, plan: CoachPlan) -> bool:
        """Tell whether everything that goes is still there, and nothing that comes is."""
        return all(one in plan.entries for one in self.remove) and not any(
            one in plan.entries for one in self.add
        )

    def done_to(self, plan: CoachPlan) -> CoachPlan:
        """Return the plan with the change."""
        kept = [one for one in plan.entries if one not in self.remove]
        return CoachPlan(entries=(*kept, *self.add))


def monday_before(on: date) -> date:
    """Return the Monday of a day's week."""
    return on - timedelta(days=on.weekday())


def moved_weekdays(
    weekdays: Sequence[int], *, week_start: date, moves: Iterable[DayMove]
) -> tuple[int, ...]:
    """Return the ISO weekdays of one week, Monday 1, with the days that the coach moved.

    A move whose new day is a training day already, or whose old one is none, changes nothing.
    """
    days = list(weekdays)
    for move in moves:
        old, new = move.on.isoweekday(), move.to.isoweekday()
        if monday_before(move.on) == week_start and old in days and new not in days:
            days[days.index(old)] = new
    return tuple(sorted(days))


def still_of_use(plan: CoachPlan, *, today: date) -> CoachPlan:
    """Return the plan without days that are over for so long that nothing looks back at them."""

    def is_over(entry: EntryBase) -> bool:
        match entry:
            case ItemChange():
                return entry.on < today - KEPT
            case DayMove():
                return max(entry.on, entry.to) < today - KEPT
        return False

    return CoachPlan(entries=tuple(one for one in plan.entries if not is_over(one)))
