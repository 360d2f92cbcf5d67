"""Where it hurts, how it is ranked, and what that takes out of training."""

from enum import IntEnum, StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Demand, Direction, Measure, Movement, Sides


class Side(StrEnum):
    """Which arm."""

    LEFT = "left"
    RIGHT = "right"
    BOTH = "both"

    @property
    def arms(self) -> frozenset["Side"]:
        """The arms meant: both stands for left and right."""
        return frozenset({Side.LEFT, Side.RIGHT}) if self is Side.BOTH else frozenset({self})


class Site(StrEnum):
    """Where it hurts, in words that an athlete would tap."""

    NECK = "neck"
    SHOULDER_FRONT = "shoulder_front"
    SHOULDER_TOP = "shoulder_top"
    SHOULDER_BACK = "shoulder_back"
    UPPER_ARM = "upper_arm"
    ELBOW_OUTER = "elbow_outer"
    ELBOW_INNER = "elbow_inner"
    ELBOW_BACK = "elbow_back"
    FOREARM = "forearm"
    WRIST = "wrist"
    HAND = "hand"
    CHEST_MUSCLE = "chest_muscle"
    UPPER_BACK = "upper_back"
    ELSEWHERE = "elsewhere"


MIDLINE = frozenset({Site.NECK, Site.ELSEWHERE})
"""Sites that belong to no arm: what hurts there leaves out both arms (chosen, careful)."""


class Region(BaseModel):
    """A site of one arm: ``Side.LEFT`` or ``Side.RIGHT``, never both."""

    model_config = ConfigDict(frozen=True)

    site: Site
    arm: Side

    @property
    def order(self) -> tuple[str, str]:
        """A stable order for lists."""
        return (self.site.value, self.arm.value)


def regions_of(site: Site, side: Side) -> tuple[Region, ...]:
    """Return the regions meant by a site and a side: one, or one of each arm.

    A site in the middle of the body is always both.
    """
    arms = Side.BOTH.arms if site in MIDLINE else side.arms
    return tuple(Region(site=site, arm=arm) for arm in sorted(arms))


class Level(IntEnum):
    """What is left out. Higher is more careful."""

    NONE = 0
    WATCH = 1
    EASE = 2
    REST = 3
    CLINICIAN = 4
    EMERGENCY = 5


class Urgency(StrEnum):
    """How fast the coach is told."""

    NOW = "now"
    TODAY = "today"
    SOON = "soon"
    CONVENIENT = "convenient"


class LeftOut(BaseModel):
    """What may not be trained, arm by arm. ``Side.LEFT`` and ``Side.RIGHT`` only, never both.

    ``measures`` takes out every carry, whatever a library calls it.
    """

    model_config = ConfigDict(frozen=True)

    demands: frozenset[tuple[Demand, Side]] = frozenset()
    directions: frozenset[tuple[Direction, Side]] = frozenset()
    measures: frozenset[tuple[Measure, Side]] = frozenset()
    movements: frozenset[str] = frozenset()
    everything: bool = False

    @property
    def is_empty(self) -> bool:
        """True when nothing at all is left out."""
        return self == LeftOut()

    def hits(self, movement: Movement, arm: Side) -> bool:
        """Tell whether this arm may not do the movement."""
        return (
            self.everything
            or movement.key in self.movements
            or (movement.direction, arm) in self.directions
            or (movement.measure, arm) in self.measures
            or any((demand, arm) in self.demands for demand in movement.demands)
        )

    def arms_allowed(self, movement: Movement) -> frozenset[Side]:
        """Return the arms that may do the movement; empty means that it is out.

        A two-sided movement goes when either arm is rested; a one-sided one stays for the
        sound arm (common practice).
        """
        sound = frozenset(a for a in (Side.LEFT, Side.RIGHT) if not self.hits(movement, a))
        if movement.sides is Sides.EACH or len(sound) == 2:
            return sound
        return frozenset()

    def __or__(self, other: "LeftOut") -> "LeftOut":
        """Leave out whatever either leaves out."""
        return LeftOut(
            demands=self.demands | other.demands,
            directions=self.directions | other.directions,
            measures=self.measures | other.measures,
            movements=self.movements | other.movements,
            everything=self.everything or other.everything,
        )
