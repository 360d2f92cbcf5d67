"""A place of the week that wants a movement, and what was chosen for it."""

from dataclasses import dataclass
from datetime import date

from scheduler.catalogue.values import Arm, Chain, Direction, Measure, Movement, Role, Tempo
from scheduler.pain.values import Side
from scheduler.reasons import Reason
from scheduler.training.values import Quality
from scheduler.training.week_values import DayLetter

HARD = frozenset(
    {
        Quality.GENERAL_STRENGTH,
        Quality.DYNAMIC_FRESH,
        Quality.REPEATED_EFFORT,
        Quality.MAXIMAL_STRENGTH,
    }
)
"""General strength or above: what needs a free day between pulls (CP). The lighter qualities ask
for at least 2 repetitions or 10 s in reserve, so nothing else is hard."""
SPACED = frozenset({Quality.MAXIMAL_STRENGTH, Quality.REPEATED_EFFORT})
"""What needs a free day between two exposures of one direction (CP)."""


@dataclass(frozen=True)
class Place:
    """One half of a pair that wants a movement."""

    on: date
    letter: DayLetter
    pair: int | None
    direction: Direction
    chain: Chain
    arm: Arm
    is_light: bool = False
    wants_dynamic: bool = False
    may_be_hard: bool = True


@dataclass(frozen=True)
class Pick:
    """What was chosen for a place; ``sets`` [sets] are not given out yet while they are 0."""

    place: Place
    movement: Movement
    arms: frozenset[Side]
    quality: Quality
    sets: int = 0

    @property
    def directions(self) -> frozenset[Direction]:
        """What the pick loads: its place's direction and, for a stand-in, its movement's own."""
        return frozenset({self.place.direction, self.movement.direction})

    @property
    def is_accessory(self) -> bool:
        """True for what counts for nothing but itself."""
        return self.movement.role is Role.ACCESSORY

    @property
    def is_upkeep(self) -> bool:
        """True for a main movement outside the pairs."""
        return self.place.pair is None and not self.is_accessory

    @property
    def is_bent(self) -> bool:
        """True for bent-arm work."""
        return self.movement.arm is Arm.BENT

    @property
    def is_pull(self) -> bool:
        """True for a pull."""
        return not self.place.direction.is_push

    @property
    def pulls_for_reps(self) -> bool:
        """True for pulling that is counted in repetitions."""
        return self.is_pull and self.movement.measure is Measure.REPS

    @property
    def is_dynamic(self) -> bool:
        """True for a dynamic movement."""
        return self.movement.tempo is Tempo.DYNAMIC


@dataclass(frozen=True)
class Choice:
    """A pick, or none, with what was decided on the way to it."""

    pick: Pick | None
    reasons: tuple[Reason, ...] = ()
