"""What was said of one region, one line an answer, and one line a session."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.values import Level
from scheduler.reasons import Decision, reason
from scheduler.sources import CH

BEFORE_WITHIN = timedelta(days=7)  # [d] ch: an older answer says nothing about this session
REST_FROM_MORNING = 3  # [of 10] ch: a second unsettled morning at so much rests


@dataclass(frozen=True)
class Answer:
    """One score of one region [of 10], None for words alone."""

    at_utc: datetime
    score: int | None
    is_morning: bool


@dataclass(frozen=True)
class SessionScore:
    """The highest number of one session, and the level it ended at; sessions count from 1."""

    session: int
    score: int | None
    level: Level


def before_session(answers: Sequence[Answer], *, session_at_utc: datetime) -> int:
    """Return where the region stood before a session [of 10].

    The last answer at that site and side within 7 days, else 0 (ch).
    """
    known = [
        answer
        for answer in answers
        if answer.score is not None
        and session_at_utc - BEFORE_WITHIN <= answer.at_utc < session_at_utc
    ]
    return max(known, key=lambda answer: answer.at_utc).score or 0 if known else 0


def level_of_morning(
    score: int | None, *, before: int, unsettled_so_far: int, is_worse: bool = False
) -> Decision[Level]:
    """Return the level that a morning's settling, or not, asks for.

    Args:
        score: the morning's number [of 10]; words alone never settle.
        before: where the region stood before the session [of 10].
        unsettled_so_far: earlier unsettled mornings of the same spell.
        is_worse: words without a number that say that it has not settled.

    Returns:
        None when settled (back to where it was: silbernagel2007), ease for an unsettled
        morning, rest for a second one at 3 or more (ch).

    """
    if score is not None and score <= before:
        why = reason(PainReason.SETTLED, "silbernagel2007", score=score, before=before)
        return Decision(value=Level.NONE, reasons=(why,))
    if score is None and is_worse:
        why = reason(PainReason.UNSETTLED_MORNING, CH, before=before)
        return Decision(value=Level.EASE, reasons=(why,))
    if score is None:
        return Decision(value=Level.WATCH, reasons=())
    if unsettled_so_far and score >= REST_FROM_MORNING:
        why = reason(
            PainReason.SECOND_UNSETTLED_MORNING,
            "silbernagel2007",
            score=score,
            before=before,
            mornings=unsettled_so_far + 1,
        )
        return Decision(value=Level.REST, reasons=(why,))
    why = reason(PainReason.UNSETTLED_MORNING, "silbernagel2007", score=score, before=before)
    return Decision(value=Level.EASE, reasons=(why,))
