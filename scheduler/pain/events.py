"""What was said and decided about pain: typed facts in the past tense, never text.

The levels are folded from these. ``at_utc`` is when it was said; ``key`` is the caller's own
reference to the event, unique for one athlete.
"""

from enum import StrEnum
from typing import Annotated, Literal

from pydantic import AwareDatetime, BaseModel, ConfigDict, Field, TypeAdapter

from scheduler.pain.red_flags import RedFlag
from scheduler.pain.values import Region, Side, Site


class Occasion(StrEnum):
    """When a score was given."""

    AFTER_SESSION = "after_session"
    MORNING = "morning"
    MESSAGE = "message"


class PainSign(StrEnum):
    """What was said beside the number."""

    SUDDEN_SHARP = "sudden_sharp"
    STOPPED_A_SET = "stopped_a_set"
    DISTURBS_EVERYDAY_USE = "disturbs_everyday_use"
    PLAIN_SORENESS = "plain_soreness"
    TOOK_PAINKILLERS = "took_painkillers"


class Certainty(StrEnum):
    """Whether a sign was said outright, is asked about, or was said not to be there."""

    ASKED = "asked"
    CONFIRMED = "confirmed"
    DENIED = "denied"


class PainEventBase(BaseModel):
    """What all events share."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    key: str
    at_utc: AwareDatetime


class PainReported(PainEventBase):
    """Pain at a site: a number, or words only.

    ``score`` [of 10] is the one that counts (:func:`scheduler.pain.scores.counted`), None while
    only words are known. ``must_ask`` says that the number is to be asked (again).
    ``loaded_region`` overrides what the last session is known to have loaded. Where place or side
    were not said, the careful reading counts, and ``is_site_said`` and ``is_side_said`` say so.
    """

    kind: Literal["pain_reported"] = "pain_reported"
    site: Site
    side: Side
    score: int | None = Field(default=None, ge=0, le=10)
    must_ask: bool = False
    occasion: Occasion = Occasion.AFTER_SESSION
    signs: frozenset[PainSign] = frozenset()
    loaded_region: bool | None = None
    is_site_said: bool = True
    is_side_said: bool = True


class MorningAnswered(PainEventBase):
    """The answer to the morning's question; ``is_worse`` says in words that it has not settled."""

    kind: Literal["morning_answered"] = "morning_answered"
    site: Site
    side: Side
    score: int | None = Field(default=None, ge=0, le=10)
    must_ask: bool = False
    is_worse: bool = False


class SessionTrained(PainEventBase):
    """A session was trained; ``at_utc`` is when its first result came in."""

    kind: Literal["session_trained"] = "session_trained"
    loaded: frozenset[Region] = frozenset()


class FlagRaised(PainEventBase):
    """A red flag was read or tapped.

    ``is_in_hang`` says that it was felt hanging or carrying; ``movement`` is that item if known.
    """

    kind: Literal["flag_raised"] = "flag_raised"
    flag: RedFlag
    certainty: Certainty
    site: Site | None = None
    side: Side = Side.BOTH
    movement: str | None = None
    is_in_hang: bool = False


class FlagAnswered(PainEventBase):
    """The buttons under a doubt were answered. A sign said outright is not answered away."""

    kind: Literal["flag_answered"] = "flag_answered"
    flag_key: str
    certainty: Certainty


class TapListAnswered(PainEventBase):
    """The short list was tapped through; what was tapped is raised as flags of its own."""

    kind: Literal["tap_list_answered"] = "tap_list_answered"


class Rested(PainEventBase):
    """A coach rests a region."""

    kind: Literal["rested"] = "rested"
    site: Site
    side: Side
    by: str
    reason: str = Field(min_length=1)


class Cleared(PainEventBase):
    """A person clears a region, or everything where no site is named.

    ``is_assessed`` states that the athlete reports having been assessed by a licensed
    clinician; ``trains_from_utc`` is from when what was left out may be trained, at once if None.
    """

    kind: Literal["cleared"] = "cleared"
    site: Site | None = None
    side: Side = Side.BOTH
    by: str
    reason: str = Field(min_length=1)
    is_assessed: bool = False
    trains_from_utc: AwareDatetime | None = None


class Corrected(PainEventBase):
    """A report is superseded; ``replacement`` None withdraws it."""

    kind: Literal["corrected"] = "corrected"
    report_key: str
    replacement: PainReported | MorningAnswered | None = None


PainEvent = Annotated[
    PainReported
    | MorningAnswered
    | SessionTrained
    | FlagRaised
    | FlagAnswered
    | TapListAnswered
    | Rested
    | Cleared
    | Corrected,
    Field(discriminator="kind"),
]
PAIN_EVENT: TypeAdapter[PainEvent] = TypeAdapter(PainEvent)
"""Reads a stored event back: ``PAIN_EVENT.validate_python(row)``."""
