"""How a pain behaves over days and sessions: rising, coming back, not falling.

The evidence for following pain from day to day is about tendons of the leg; here it is carried
over to shoulder, elbow and wrist with care.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta

from scheduler.pain.answers import Answer, SessionScore
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.values import Level
from scheduler.reasons import Decision, reason
from scheduler.sources import CH

RISE_WITHIN = timedelta(days=7)  # [d] silbernagel2007: not rising week to week (from memory)
RISE_COUNTS_FROM = 1  # [of 10] ch: after 0 or no report the score's own band decides
RISE_TO_EASE = 2  # [of 10] farrar2001: a change of about 2 points is meaningful
EASE_ENDS_AT_LEAST = 3  # [of 10] ch
RISE_TO_REST = 3  # [of 10] ch
REST_ENDS_AT_LEAST = 5  # [of 10] ch
RECURRING_SCORE = 2  # [of 10] ch
RECURRING_SESSIONS, RECURRING_OF = 3, 5  # [sessions] ch
EASE_RUNNING = 3  # [sessions] ch: ease at so many running with no fall
REST_WITHOUT_FALL = timedelta(days=14)  # [d] ch
MEANINGFUL_FALL = 2  # [of 10] farrar2001: about 2 points; salaffi2004 agrees
BACK_WEEKS, BACK_OF_WEEKS = 4, 6  # [weeks] ch: at RECURRING_SCORE or more
WEEK = timedelta(days=7)  # [d] definition


def rise_of(score: int | None, *, at_utc: datetime, earlier: Sequence[Answer]) -> int:
    """Return by how much a score stands above the lowest of at least 1 in the week before [of 10].

    Zeros and missing numbers are no start of a rise: after those the score's own band decides.
    A start further back in the week counts also when a 0 came between (ch, the careful side).
    """
    starts = [
        answer.score
        for answer in earlier
        if answer.score is not None
        and answer.score >= RISE_COUNTS_FROM
        and at_utc - RISE_WITHIN <= answer.at_utc < at_utc
    ]
    return max(score - min(starts), 0) if starts and score is not None else 0


def level_of_rise(
    score: int | None, *, at_utc: datetime, earlier: Sequence[Answer]
) -> Decision[Level]:
    """Return the level of a rise at one site and side.

    Args:
        score: the newest number [of 10].
        at_utc: when it was said.
        earlier: what was said of the same region before.

    Returns:
        Rest for a rise of 3 or more within 7 days that ends at 5 or more, ease for 2 or more
        that ends at 3 or more, else none. Source: farrar2001 for the 2 points, the rest ch.

    """
    rise = rise_of(score, at_utc=at_utc, earlier=earlier)
    ends = score or 0
    if rise >= RISE_TO_REST and ends >= REST_ENDS_AT_LEAST:
        level, source = Level.REST, CH
    elif rise >= RISE_TO_EASE and ends >= EASE_ENDS_AT_LEAST:
        level, source = Level.EASE, "farrar2001"
    else:
        return Decision(value=Level.NONE, reasons=())
    why = reason(PainReason.RISE, source, rise=rise, score=ends, within_d=RISE_WITHIN.days)
    return Decision(value=level, reasons=(why,))


def level_of_recurrence(scores: Sequence[SessionScore], *, latest_session: int) -> Decision[Level]:
    """Return ease when a region was at 2 or more in 3 of the last 5 sessions (ch), else none.

    Args:
        scores: the region's highest number of each session that has one.
        latest_session: the running number of the session trained last; sessions without a
            number count among the five, as nothing.

    """
    oldest = latest_session - RECURRING_OF + 1
    hurt = [s for s in scores if s.session >= oldest and (s.score or 0) >= RECURRING_SCORE]
    if len(hurt) < RECURRING_SESSIONS:
        return Decision(value=Level.NONE, reasons=())
    why = reason(
        PainReason.RECURRING_IN_SESSIONS,
        CH,
        sessions=len(hurt),
        of_sessions=RECURRING_OF,
        score=RECURRING_SCORE,
    )
    return Decision(value=Level.EASE, reasons=(why,))


def level_of_no_fall(scores: Sequence[SessionScore]) -> Decision[Level]:
    """Return rest for ease at three sessions running whose last number did not fall.

    Args:
        scores: the region's sessions with a number, in order, each with the level it ended at.

    Sessions without an answer are passed over: silence neither raises nor lowers. A last number
    of 0 is a fall, whatever the first was. Source: ch.

    """
    last = [s for s in scores if s.score is not None][-EASE_RUNNING:]
    if len(last) < EASE_RUNNING or any(s.level < Level.EASE for s in last):
        return Decision(value=Level.NONE, reasons=())
    first, newest = last[0].score or 0, last[-1].score or 0
    if newest < first or newest == 0:
        return Decision(value=Level.NONE, reasons=())
    why = reason(PainReason.EASE_WITHOUT_FALL, CH, sessions=EASE_RUNNING, first=first, score=newest)
    return Decision(value=Level.REST, reasons=(why,))


def comes_back(answers: Sequence[Answer], *, at_utc: datetime) -> Decision[Level]:
    """Return clinician for a pain at 2 or more in 4 of the last 6 weeks (ch), else none.

    Weeks are counted back from the newest answer.
    """
    weeks = {
        (at_utc - answer.at_utc) // WEEK
        for answer in answers
        if (answer.score or 0) >= RECURRING_SCORE
        and timedelta(0) <= at_utc - answer.at_utc < BACK_OF_WEEKS * WEEK
    }
    if len(weeks) < BACK_WEEKS:
        return Decision(value=Level.NONE, reasons=())
    why = reason(
        PainReason.KEEPS_COMING_BACK,
        CH,
        weeks=len(weeks),
        of_weeks=BACK_OF_WEEKS,
        score=RECURRING_SCORE,
    )
    return Decision(value=Level.CLINICIAN, reasons=(why,))
