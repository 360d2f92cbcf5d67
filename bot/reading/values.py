"""What a message was read as: every reading keeps the pain, whatever became of the rest."""

from collections.abc import Mapping
from datetime import date
from enum import StrEnum

from pydantic import Field

from bot.reading.known import ItemResult, Reserve, Value
from scheduler.pain.values import Side, Site
from scheduler.reasons import Figure


class PainMention(Value):
    """Pain as it was said: words raise, they never lower.

    ``sites`` holds one site when it is clear, several when the words fit several, none when no
    place was named. ``score`` is the highest whole number said, a half counted upward; ``None``
    when no number or only one out of bounds was said. ``must_ask`` when the number must be asked
    (again). A plain denial ("no pain") is a score of 0 without a site.
    """

    sites: tuple[Site, ...] = ()
    side: Side | None = None
    score: int | None = Field(default=None, ge=0, le=10)
    must_ask: bool = False
    is_sharp: bool = False
    stopped_a_set: bool = False
    disturbs: bool = False


class Activity(Value):
    """Other training in a line; ``counts`` are figures without a unit of time or distance."""

    name: str
    minutes: float | None = None
    distance_m: float | None = None
    effort: float | None = Field(default=None, ge=0, le=10)
    counts: tuple[float, ...] = ()


class AssumptionCode(StrEnum):
    """What was taken for granted, to be shown in the playback."""

    LOAD_AS_PLANNED = "reading.load_as_planned"
    AS_PLANNED = "reading.as_planned"
    LEFT_SAID_FIRST = "reading.left_said_first"
    SAME_FOR_ALL_SETS = "reading.same_for_all_sets"
    NAME_GUESSED = "reading.name_guessed"
    ONLY_ITEM_THAT_FITS = "reading.only_item_that_fits"
    ABOUT = "reading.about"
    STOPPED = "reading.stopped"
    LINE_BY_LINE = "reading.line_by_line"
    NUMBER_DECIDED = "reading.number_decided"


class Assumption(Value):
    """One assumption with its figures, units in their names."""

    code: AssumptionCode
    item_ref: str | None = None
    figures: Mapping[str, Figure] = Field(default_factory=dict)


class Beside(Value):
    """What any reading keeps, whatever became of the rest.

    ``unread`` are the words that no rule read; ``asks_coach`` when they hold a question.
    """

    pains: tuple[PainMention, ...] = ()
    effort: float | None = Field(default=None, ge=0, le=10)
    reserve: Reserve | None = None
    activities: tuple[Activity, ...] = ()
    unread: str = ""
    asks_coach: bool = False


class Recorded(Beside):
    """Results that need no question."""

    session_ref: str
    day: date
    items: tuple[ItemResult, ...]
    assumptions: tuple[Assumption, ...] = ()


class Change(Value):
    """One set of the last results, old and new."""

    ref: str
    number: int
    side: Side
    old: float
    new: float


class CorrectionKind(StrEnum):
    """What is wrong with the last results."""

    SETS = "sets"
    OTHER_ARM = "other_arm"
    UNDO = "undo"
    ITEMS = "items"


class Correction(Beside):
    """The last results are to be changed.

    ``changes`` only for ``SETS``; ``items`` only for ``ITEMS``: whole items as they are to stand;
    ``ref`` where one item was named to be taken back or moved to the other arm.
    """

    kind: CorrectionKind
    changes: tuple[Change, ...] = ()
    items: tuple[ItemResult, ...] = ()
    ref: str | None = None


class Told(Beside):
    """Effort, reserve, pain, or yes and no, without any set; often the answer to a question."""

    is_yes: bool | None = None


class QuestionCode(StrEnum):
    """Why the reader asks."""

    WHICH_ITEM = "reading.which_item"
    WHICH_DAY = "reading.which_day"
    WHICH_SET = "reading.which_set"
    WHICH_SIDE = "reading.which_side"
    WHICH_UNIT = "reading.which_unit"
    FEWER_NUMBERS = "reading.fewer_numbers"
    MORE_NUMBERS = "reading.more_numbers"
    IMPLAUSIBLE = "reading.implausible"
    LOAD_UNEXPECTED = "reading.load_unexpected"
    WHOLE_SESSION = "reading.whole_session"
    SAME_AS_WHAT = "reading.same_as_what"
    PAIN_OR_RESULT = "reading.pain_or_result"
    EFFORT_OR_RESULT = "reading.effort_or_result"
    SEVERAL_READINGS = "reading.several_readings"
    IS_THIS_MEANT = "reading.is_this_meant"


class Asked(Beside):
    """Possible readings, the likelier first; the options carry results only, never the pain."""

    question: QuestionCode
    options: tuple[Recorded | Correction | Told, ...] = Field(min_length=1, max_length=4)


class CantReason(StrEnum):
    """Why not today."""

    ILL = "ill"
    TRAVELLING = "travelling"
    NO_TIME = "no_time"
    NO_EQUIPMENT = "no_equipment"
    HURTS = "hurts"


class CantToday(Beside):
    """The session cannot be done on ``day``."""

    day: date
    reason: CantReason | None = None


class OtherTraining(Beside):
    """Only other training was told; see ``activities``."""


class SessionNow(Beside):
    """The athlete wants the session early."""


class PassedWhy(StrEnum):
    """Why a message goes to the coach unread."""

    TOO_LONG = "reading.too_long"
    A_QUESTION = "reading.a_question"
    NOT_A_RESULT = "reading.not_a_result"
    NO_WORDS = "reading.no_words"
    OTHER_LANGUAGE = "reading.other_language"


class PassedOn(Beside):
    """For the coach; ``language`` where it is another than the bot's two."""

    why: PassedWhy
    language: str | None = None


class NotUnderstood(Beside):
    """Figures that fit nothing; ``example`` is a reply that would, from today's own items."""

    example: str = ""


Reading = (
    Recorded
    | Asked
    | Correction
    | Told
    | CantToday
    | OtherTraining
    | SessionNow
    | PassedOn
    | NotUnderstood
)
