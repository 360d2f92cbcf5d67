"""What the intake says about a body, what that means, and the first tests as data."""

from datetime import date
from enum import StrEnum

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Arm, Direction, Joint, Measure
from scheduler.pain.values import LeftOut, Side, Site
from scheduler.training.values import NO_RESISTANCE, AthleteProfile, ReserveAnswer, Rung

STRICT = ConfigDict(frozen=True, extra="forbid")


class ScreenTopic(StrEnum):
    """What the screen asks about; a yes is no verdict."""

    KNOWN_ILLNESS = "known_illness"
    EFFORT_SIGNS = "effort_signs"
    FAINT = "faint"
    PREGNANT = "pregnant"
    PRESSURE_OR_EYES = "pressure_or_eyes"
    OUT_OR_OPERATED = "out_or_operated"
    RECENT_INJURY = "recent_injury"
    HURTS_NOW = "hurts_now"


NO_INVERSION = frozenset({ScreenTopic.PRESSURE_OR_EYES, ScreenTopic.PREGNANT})
"""Topics after which nothing is done upside down (CP)."""
INVERSION_ONLY = frozenset({ScreenTopic.PRESSURE_OR_EYES})
"""Topics that mean this and no more: the coach is told, and training may begin (CH)."""
INJURIES = frozenset(
    {ScreenTopic.OUT_OR_OPERATED, ScreenTopic.RECENT_INJURY, ScreenTopic.HURTS_NOW}
)
"""Topics about a joint."""


class EarlierInjury(BaseModel):
    """One earlier injury; ``site`` None where it is not known which joint.

    ``is_out_or_operated``: out of its joint, or operated on, however long ago; ``months_ago``
    [months], None where it is not known, which counts as recent.
    """

    model_config = STRICT

    site: Site | None = None
    side: Side = Side.BOTH
    is_out_or_operated: bool = False
    months_ago: float | None = Field(default=None, ge=0)


class IntakeAnswers(BaseModel):
    """What the intake heard; ``lifted`` directions and hangs are given back by the coach."""

    model_config = STRICT

    topics: frozenset[ScreenTopic] = frozenset()
    injuries: tuple[EarlierInjury, ...] = ()
    is_adult: bool = True
    has_guardian_agreed: bool = False
    has_coach_looked: bool = False
    lifted: frozenset[Direction] = frozenset()
    are_hangs_lifted: bool = False


class IntakeState(StrEnum):
    """Whether training may begin."""

    BEGINS = "begins"
    WAITS_FOR_COACH = "waits_for_coach"


class IntakeOutcome(BaseModel):
    """What the answers mean; ``held`` directions keep to stage 1's row and are not tested."""

    model_config = STRICT

    state: IntakeState
    held: frozenset[Direction] = frozenset()
    may_hang: bool = True
    may_invert: bool = True


class BaselineRequest(BaseModel):
    """What the tests are chosen for; ``session_min`` [min]; ``rested`` hurts now.

    ``stages`` [1-4]: whose standards are tested; none named means those of the first tests, up to
    the highest stage that tests alone may open.
    """

    model_config = STRICT

    profile: AthleteProfile
    intake: IntakeOutcome
    session_min: int = Field(ge=15, le=180)
    rested: LeftOut = LeftOut()
    stages: tuple[int, ...] = ()


class TestStop(BaseModel):
    """When a set is over, whatever its target: the first of these that comes.

    ``reserve_reps_least`` to ``…_most`` [repetitions in reserve]; ``reserve_hold_s`` [s in
    reserve]; ``pain_above`` [0-10]; ``at_most_s`` [s].
    """

    __test__ = False
    model_config = STRICT

    reserve_reps_least: int
    reserve_reps_most: int
    reserve_hold_s: int
    pain_above: int
    at_most_s: int
    ends_with_position: bool = True


class Shows(BaseModel):
    """One standard that a test can show: of ``stage``, with ``key``, from ``at`` on.

    ``at`` [s or repetitions] is 1.25 times the standard, at the load really taken;
    ``standard_load_kg`` [kg in each hand] is what the standard itself asks.
    """

    model_config = STRICT

    stage: int
    key: str
    at: int = Field(ge=1)
    standard_load_kg: float | None = None


class BaselineTest(BaseModel):
    """One set of one movement, for one standard or for two that the same set can show.

    ``stage`` is that of its first standard; ``target`` [s or repetitions] shows the last of
    them; ``after`` names the tests that must have shown their first standards before.
    """

    model_config = STRICT

    key: str
    stage: int
    movement_key: str
    direction: Direction
    arm: Arm
    joint: Joint
    measure: Measure
    target: int = Field(ge=1)
    shows: tuple[Shows, ...] = Field(min_length=1)
    rung: Rung = NO_RESISTANCE
    is_each_side: bool = False
    after: tuple[str, ...] = ()


class BaselineDay(BaseModel):
    """One of the two days: a warm-up, then the tests in order, with ``rest_s`` [s] between.

    ``warm_up_s`` [s] of easy movement, shoulder-blade work and one easy set of each movement;
    ``free_days_before`` [days] since the other day; ``minutes`` [min] are estimated.
    """

    model_config = STRICT

    number: int = Field(ge=1, le=2)
    free_days_before: int = 0
    warm_up_s: int
    rest_s: int
    tests: tuple[BaselineTest, ...]
    minutes: float


class BaselinePlan(BaseModel):
    """Two days at most, and the standards, by stage and key, that are left to the coach."""

    model_config = STRICT

    days: tuple[BaselineDay, ...]
    stop: TestStop
    by_coach: frozenset[tuple[int, str]] = frozenset()

    @property
    def tests(self) -> tuple[BaselineTest, ...]:
        """Every test in order."""
        return tuple(test for day in self.days for test in day.tests)


class BaselineResult(BaseModel):
    """What came of one test: ``value`` [s or repetitions, of the weaker side] in position.

    ``pain`` [0-10] during it or after.
    """

    model_config = STRICT

    key: str
    on: date
    value: float = Field(ge=0)
    rung: Rung | None = None
    pain: float = Field(default=0, ge=0, le=10)


class Ended(StrEnum):
    """How an attempt came to its end."""

    DONE = "done"
    HURT = "hurt"
    SKIPPED = "skipped"


class Attempt(BaseModel):
    """One arm's attempt at one test, as it stands now.

    ``value`` [s or repetitions], None where nothing was done; ``rung`` None means the planned
    one; ``pain`` [0-10] where it hurt and a number was said.
    """

    model_config = STRICT

    key: str
    side: Side
    on: date
    ended: Ended
    value: float | None = Field(default=None, ge=0)
    rung: Rung | None = None
    reserve: ReserveAnswer | None = None
    pain: float | None = Field(default=None, ge=0, le=10)


class TestedSet(BaseModel):
    """One fresh set of a test, done without pain: ``value`` [s, repetitions or m] of one side."""

    __test__ = False
    model_config = STRICT

    on: date
    movement_key: str
    measure: Measure
    side: Side
    value: float = Field(ge=0)
    rung: Rung
    reserve: ReserveAnswer | None = None
