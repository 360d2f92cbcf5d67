"""How a movement is described: the words that every rule, plan and message is built from."""

from collections.abc import Mapping
from enum import StrEnum

from pydantic import BaseModel, ConfigDict, Field


class Chain(StrEnum):
    """Whether the hand moves a load (open) or is fixed while the body moves (closed)."""

    OPEN = "open"
    CLOSED = "closed"


class Arm(StrEnum):
    """Whether the elbow stays straight, or moves or is held bent, under load."""

    STRAIGHT = "straight"
    BENT = "bent"


class Direction(StrEnum):
    """Where the hand goes, or would go, relative to the trunk."""

    VERTICAL_PUSH = "vertical_push"
    HORIZONTAL_PUSH = "horizontal_push"
    DOWNWARD_PUSH = "downward_push"
    VERTICAL_PULL = "vertical_pull"
    HORIZONTAL_PULL = "horizontal_pull"
    UPWARD_PULL = "upward_pull"

    @property
    def is_push(self) -> bool:
        """True for the three pushing directions."""
        return self in PUSHES

    @property
    def partner(self) -> "Direction":
        """The direction of the opposite kind that shares this one's day."""
        return PARTNERS[self]


PUSHES = frozenset({Direction.VERTICAL_PUSH, Direction.HORIZONTAL_PUSH, Direction.DOWNWARD_PUSH})
PARTNERS: Mapping[Direction, Direction] = {
    Direction.VERTICAL_PUSH: Direction.VERTICAL_PULL,
    Direction.VERTICAL_PULL: Direction.VERTICAL_PUSH,
    Direction.HORIZONTAL_PUSH: Direction.HORIZONTAL_PULL,
    Direction.HORIZONTAL_PULL: Direction.HORIZONTAL_PUSH,
    Direction.DOWNWARD_PUSH: Direction.UPWARD_PULL,
    Direction.UPWARD_PULL: Direction.DOWNWARD_PUSH,
}


class Role(StrEnum):
    """A main movement counts for arms, balance and volume; an accessory does not."""

    MAIN = "main"
    ACCESSORY = "accessory"


class Tempo(StrEnum):
    """How the movement is done in time."""

    STATIC = "static"
    CONTROLLED = "controlled"
    DYNAMIC = "dynamic"


class Measure(StrEnum):
    """What an athlete reports for one set."""

    HOLD_S = "hold_s"
    REPS = "reps"
    CARRY_M = "carry_m"
    CARRY_S = "carry_s"

    @property
    def is_time(self) -> bool:
        """True when a set is counted in seconds."""
        return self in {Measure.HOLD_S, Measure.CARRY_S}


class Loading(StrEnum):
    """Where the resistance comes from."""

    NONE = "none"
    EXTERNAL = "external"
    BODYWEIGHT_PLUS = "bodyweight_plus"
    ASSISTED = "assisted"


class Sides(StrEnum):
    """Both arms at once, or each arm by itself with a number of its own."""

    BOTH = "both"
    EACH = "each"


class Joint(StrEnum):
    """The limiting joint: which published endurance curve applies."""

    SHOULDER = "shoulder"
    ELBOW = "elbow"
    GRIP = "grip"
    TRUNK = "trunk"
    GENERAL = "general"


class Demand(StrEnum):
    """What a movement asks of a region, so that pain there can take it out (common practice).

    ``grip``: the hand would be pulled open, or the weight would fall, without a firm grip.
    ``wrist_extension``: the palm carries weight with the wrist bent back, or the wrist is
    trained that way. ``elbow_extension``: the elbow straightens against a load, or is kept
    straight under body weight. ``shoulder_extension``: the elbow or hand goes behind the
    trunk under load. ``traction``: the arm hangs from a hold, or a heavy weight hangs from
    the arm. ``impact``: hand or weight is caught. ``inversion``: the head is below the heart.
    """

    OVERHEAD = "overhead"
    WRIST_EXTENSION = "wrist_extension"
    GRIP = "grip"
    ELBOW_FLEXION = "elbow_flexion"
    ELBOW_EXTENSION = "elbow_extension"
    SHOULDER_EXTENSION = "shoulder_extension"
    CROSS_BODY = "cross_body"
    END_RANGE_ROTATION = "end_range_rotation"
    TRACTION = "traction"
    IMPACT = "impact"
    INVERSION = "inversion"
    NECK_LOAD = "neck_load"


class Equipment(StrEnum):
    """What an athlete may own or reach."""

    FLOOR = "floor"
    WALL = "wall"
    BOX = "box"
    HIGH_BAR = "high_bar"
    LOW_BAR = "low_bar"
    PARALLEL_BARS = "parallel_bars"
    RINGS = "rings"
    DUMBBELLS = "dumbbells"
    KETTLEBELLS = "kettlebells"
    BARBELL = "barbell"
    BENCH = "bench"
    BAND = "band"
    CABLE = "cable"


HAND_WEIGHTS = frozenset({Equipment.DUMBBELLS, Equipment.KETTLEBELLS})
"""Weights that are told in kilograms a hand."""
FREE_WEIGHTS = HAND_WEIGHTS | {Equipment.BARBELL}
"""Weights that fall when the hand opens."""
ALWAYS_AT_HAND = frozenset({Equipment.FLOOR, Equipment.WALL})
"""Nobody is asked whether they own a floor and a wall (common practice)."""


class PositionRule(StrEnum):
    """What ends a hold or a repetition, whatever the clock says."""

    ELBOWS_BEND = "elbows_bend"
    SHOULDERS_SINK = "shoulders_sink"
    SHOULDERS_RISE = "shoulders_rise"
    RIBS_FLARE = "ribs_flare"
    HIPS_SAG = "hips_sag"
    WRIST_BENDS = "wrist_bends"
    GRIP_OPENS = "grip_opens"
    LEANS_SIDEWAYS = "leans_sideways"
    RANGE_SHORTENS = "range_shortens"


class Movement(BaseModel):
    """One movement of the library.

    ``equipment`` lists alternatives: any one set of it is enough. ``bodyweight_share`` is the
    share of body weight on the hands [fraction of body weight], where it is published or chosen.
    ``least_stage`` is where the movement itself first belongs, whatever the stage permits.
    ``is_upright`` says of a closed vertical push, which otherwise turns the body upside down,
    that the head stays above the heart.
    Texts are English and are the keys of the translations.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    key: str
    name: str
    direction: Direction
    chain: Chain
    arm: Arm
    role: Role = Role.MAIN
    tempo: Tempo = Tempo.STATIC
    seconds_per_rep: float | None = None
    measure: Measure
    loading: Loading = Loading.NONE
    bodyweight_share: float | None = None
    bodyweight_share_source: str | None = None
    sides: Sides = Sides.BOTH
    is_unstable: bool = False
    is_upright: bool = False
    family: str
    limiting_joint: Joint
    demands: frozenset[Demand] = frozenset()
    equipment: tuple[frozenset[Equipment], ...] = (frozenset(),)
    least_stage: int = Field(default=1, ge=1, le=5)
    easier: str | None = None
    harder: str | None = None
    stands_in_for: Direction | None = None
    position_rules: tuple[PositionRule, ...] = ()
    how_to: str
    common_fault: str
    aliases: tuple[str, ...] = ()

    def fits(self, owned: frozenset[Equipment]) -> bool:
        """Tell whether any alternative of the equipment is owned."""
        return any(choice <= owned | ALWAYS_AT_HAND for choice in self.equipment)
