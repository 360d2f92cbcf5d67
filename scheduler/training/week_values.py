"""What a week is drawn from, what comes out, and where a week departs from the rules."""

from collections.abc import Mapping
from datetime import date
from enum import IntEnum, StrEnum
from typing import Self

from pydantic import BaseModel, ConfigDict, Field, model_validator

from scheduler.catalogue.values import Arm, Chain, Direction, Equipment
from scheduler.pain.values import LeftOut, Side
from scheduler.reasons import Reason
from scheduler.training.values import Quality

BOTH_ARMS = frozenset({Side.LEFT, Side.RIGHT})


class DayLetter(StrEnum):
    """Days A, B and C turn; D and E are the single-pair days of four and five days a week."""

    A = "A"
    B = "B"
    C = "C"
    D = "D"
    E = "E"


class Slot(BaseModel):
    """One movement of one day: who does it, for what, and how many sets.

    ``position`` is the order in the session from 1; ``pair`` is 1 or 2, and None for upkeep (a
    main movement) and for an accessory; ``direction`` is what the slot counts for, which for a
    stand-in is not the movement's own; ``arms`` are the arms that do it (one for a one-sided
    movement when the other side rests).
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    on: date
    letter: DayLetter
    position: int = Field(ge=1)
    pair: int | None = Field(ge=1, le=2)
    direction: Direction
    movement_key: str
    quality: Quality
    sets: int = Field(ge=1)
    arms: frozenset[Side] = BOTH_ARMS

    @property
    def is_main(self) -> bool:
        """True for a slot that counts for arms, balance and volume."""
        return self.pair is not None


class MovementInUse(BaseModel):
    """A movement that an athlete trains, or trained, in one kind of place of the week.

    ``weeks`` [weeks, whole] since it was introduced there, a step along its ladder included. It is
    the place's own movement, not what stands in for it while something hurts.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    pair: int = Field(ge=1, le=2)
    direction: Direction
    chain: Chain
    arm: Arm
    movement_key: str
    weeks: int = Field(ge=0)
    last_used_on: date


class HardDay(BaseModel):
    """A day of hard work outside this week's plan: a class, a climb, or last week's last day."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    on: date
    directions: frozenset[Direction]

    @property
    def has_pull(self) -> bool:
        """True when the day pulled hard."""
        return any(not direction.is_push for direction in self.directions)


class WeekRequest(BaseModel):
    """Everything about one athlete that the drawing of one week depends on.

    ``weekdays`` are ISO weekdays (Monday 1); without them ``days_a_week`` lets the week choose.
    ``session_min`` [min]; ``plan_week`` and ``stage_week`` count from 1; ``next_letter`` is the
    day whose turn it is; ``last_ordinary_sets`` [sets a week] of the last week that was neither
    lighter, missed nor a return; ``sets_share`` [fraction] of a lighter or returning week;
    ``pull_exposures_to_go`` counts the careful first exposures of pulling for repetitions that
    are still ahead; ``wanted`` are movements that a standard or an event still asks for,
    ``not_yet`` those that are beyond the athlete today, ``allowed_by_coach`` those that a
    recorded override permits beyond the stage; ``held_at_stage_one`` are directions that keep
    to stage 1's row after an old injury. Days before ``open_from`` are past or sent: their
    ``kept`` slots count, and are not drawn again. ``has_upkeep``: the coach lets bent-arm work
    that is trained elsewhere go on where the stage has none.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    stage: int = Field(ge=1, le=5)
    week_start: date
    weekdays: tuple[int, ...] = ()
    days_a_week: int = Field(default=3, ge=1, le=5)
    session_min: int = Field(ge=15, le=180)
    equipment: frozenset[Equipment]
    rested: LeftOut = LeftOut()
    eased: LeftOut = LeftOut()
    is_inversion_ok: bool = True
    plan_week: int = Field(default=1, ge=1)
    stage_week: int = Field(default=1, ge=1)
    next_letter: DayLetter = DayLetter.A
    history: tuple[MovementInUse, ...] = ()
    last_ordinary_sets: Mapping[Direction, int] = Field(default_factory=dict)
    sets_share: float = Field(default=1.0, gt=0, le=1)
    is_first_two_weeks: bool = False
    pull_exposures_to_go: int = Field(default=0, ge=0)
    can_pull_dynamically: bool = False
    has_upkeep: bool = False
    pinned: frozenset[str] = frozenset()
    banned: frozenset[str] = frozenset()
    wanted: frozenset[str] = frozenset()
    not_yet: frozenset[str] = frozenset()
    allowed_by_coach: frozenset[str] = frozenset()
    held_at_stage_one: frozenset[Direction] = frozenset()
    hard_days: tuple[HardDay, ...] = ()
    kept: tuple[Slot, ...] = ()
    open_from: date | None = None

    @model_validator(mode="after")
    def _is_a_week(self) -> Self:
        if self.week_start.isoweekday() != 1:
            raise ValueError("expected week_start to be a Monday")
        if self.weekdays and not 1 <= len(self.weekdays) <= 5:
            raise ValueError("expected one to five training weekdays")
        if any(not 1 <= day <= 7 for day in self.weekdays):
            raise ValueError("expected ISO weekdays, 1 for Monday to 7 for Sunday")
        if len(set(self.weekdays)) != len(self.weekdays):
            raise ValueError("expected each training weekday once")
        if self.next_letter in {DayLetter.D, DayLetter.E}:
            raise ValueError("expected the turn to be at A, B or C")
        return self

    @property
    def not_yet_for_now(self) -> frozenset[str]:
        """What is beyond the athlete and was not put there by the coach."""
        return self.not_yet - self.pinned - self.allowed_by_coach

    def is_open(self, on: date) -> bool:
        """Tell whether the day may still be drawn."""
        return self.open_from is None or on >= self.open_from

    def stage_for(self, *directions: Direction) -> int:
        """Return the stage whose row holds: 1 where any direction is held there."""
        return 1 if self.held_at_stage_one.intersection(directions) else self.stage


class Session(BaseModel):
    """One drawn day, in the order in which it is trained. ``minutes`` [min] are estimated."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    on: date
    letter: DayLetter
    slots: tuple[Slot, ...]
    minutes: float


class Relaxed(IntEnum):
    """What may give way when not all can hold, the first first."""

    STAY = 1
    FREQUENCY = 2
    BALANCE = 3
    CHAINS_OVER_TWO_WEEKS = 4
    PAIRING = 5
    CHAINS_DROPPED = 6


class Relaxation(BaseModel):
    """One rule that this week does not keep, and why, for the coach."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    what: Relaxed
    why: Reason


class WeekDraft(BaseModel):
    """A drawn week: its sessions by day, what gave way, and what was decided on the way."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    sessions: tuple[Session, ...]
    relaxations: tuple[Relaxation, ...]
    reasons: tuple[Reason, ...]

    @property
    def slots(self) -> tuple[Slot, ...]:
        """Every slot of the week in order."""
        return tuple(slot for session in self.sessions for slot in session.slots)


class Invariant(StrEnum):
    """What every week is judged by."""

    PAIRING = "pairing"
    BALANCE = "balance"
    CHAINS = "chains"
    PERMISSION = "permission"
    STRAIGHT_SHARE = "straight_share"
    SPACING = "spacing"
    MAXIMAL_EXPOSURES = "maximal_exposures"
    LEFT_OUT = "left_out"
    EQUIPMENT = "equipment"
    MINUTES = "minutes"
    VOLUME = "volume"
    STAY = "stay"
    FREQUENCY = "frequency"
    UPKEEP = "upkeep"

    @property
    def may_give_way(self) -> bool:
        """True for the rules that a week may relax and record; the others always hold."""
        return bool(RELAXABLE_AS.get(self))


RELAXABLE_AS: Mapping[Invariant, frozenset[Relaxed]] = {
    Invariant.STAY: frozenset({Relaxed.STAY}),
    Invariant.FREQUENCY: frozenset({Relaxed.FREQUENCY}),
    Invariant.BALANCE: frozenset({Relaxed.BALANCE}),
    Invariant.CHAINS: frozenset({Relaxed.CHAINS_OVER_TWO_WEEKS, Relaxed.CHAINS_DROPPED}),
    Invariant.PAIRING: frozenset({Relaxed.PAIRING}),
}


class Breach(BaseModel):
    """One place where a week does not keep an invariant, as data."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    invariant: Invariant
    why: Reason
