"""How one answer, one morning, one session and the time that passes move a region's level.

One good day ends nothing that a person must end, and silence never lowers.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from scheduler.pain.answers import (
    Answer,
    SessionScore,
    before_session,
    level_of_morning,
)
from scheduler.pain.events import MorningAnswered, Occasion, PainReported, SessionTrained
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.region_state import Held, RegionState, hold, soften
from scheduler.pain.rises import (
    MEANINGFUL_FALL,
    REST_WITHOUT_FALL,
    comes_back,
    level_of_no_fall,
    level_of_recurrence,
    level_of_rise,
)
from scheduler.pain.scores import level_of_report, level_of_score
from scheduler.pain.values import Level, Urgency
from scheduler.reasons import Decision, Reason, reason
from scheduler.sources import CH

ASKED_IN_MORNING_FROM = 2  # [of 10] ch: after a 1 the next session that loads the site decides
CALM_SESSION_UP_TO = 2  # [of 10] silbernagel2007: 0-2 safe (bands from memory)
SETTLED_SESSION_UP_TO = 1  # [of 10] ch: 1 or less at the next session that loads it is settled
TELLS_OF_SESSION_WITHIN = timedelta(hours=12)  # [h] ch: a message so soon is about the session
SESSION_BEFORE_MORNING_WITHIN = timedelta(days=7)  # [d] ch: an older one is not asked about
URGENCY_OF = {Level.REST: Urgency.SOON, Level.CLINICIAN: Urgency.CONVENIENT}


def hear_report(
    state: RegionState,
    event: PainReported,
    sessions: Sequence[SessionTrained],
    *,
    sessions_before: int = 0,
) -> RegionState:
    """Move a region by a report that is not a morning's.

    ``sessions_before`` [sessions] were trained before those in ``sessions``; they only count.
    """
    own = level_of_report(event.score, event.signs)
    decisions = [own, level_of_rise(event.score, at_utc=event.at_utc, earlier=state.answers)]
    state = _remember(state, event.score, event, is_morning=False)
    about = _session_of(event, sessions, sessions_before=sessions_before)
    if about:
        provisional = max(state.level, *(decision.value for decision in decisions))
        scores = _with_session(state.sessions, about, event.score, provisional)
        state = replace(state, sessions=scores)
        decisions.append(level_of_recurrence(scores, latest_session=about))
        ended_at = max(provisional, decisions[-1].value)
        state = replace(state, sessions=_with_session(scores, about, None, ended_at))
        decisions.append(level_of_no_fall(state.sessions))
    decisions.append(comes_back(state.recent, at_utc=event.at_utc))
    is_loaded = _is_loaded(state, event, sessions) if about else False
    state = _raise(state, decisions, event)
    state = _settle_by_report(state, event, is_loaded=is_loaded)
    needs_morning = event.score is not None and event.score >= ASKED_IN_MORNING_FROM
    return replace(
        state,
        morning_due_since_utc=event.at_utc if needs_morning else state.morning_due_since_utc,
    )


def hear_morning(
    state: RegionState, event: MorningAnswered, sessions: Sequence[SessionTrained]
) -> RegionState:
    """Move a region by the answer to the morning's question."""
    before = before_session(state.recent, session_at_utc=_anchor(state, event, sessions))
    settling = level_of_morning(
        event.score,
        before=before,
        unsettled_so_far=state.unsettled_mornings,
        is_worse=event.is_worse,
    )
    own = level_of_score(event.score)
    rise = level_of_rise(event.score, at_utc=event.at_utc, earlier=state.answers)
    state = _remember(state, event.score, event, is_morning=True)
    decisions = [own, settling, rise, comes_back(state.recent, at_utc=event.at_utc)]
    state = _raise(state, decisions, event)
    if event.score is None:
        return state
    state = replace(state, morning_due_since_utc=None)
    if settling.value > Level.NONE:
        return replace(
            state,
            unsettled_mornings=state.unsettled_mornings + 1,
            is_settled=False,
            calm_morning=False,
        )
    state = replace(state, is_settled=True, calm_morning=max(own.value, rise.value) < Level.EASE)
    return _end(state, event.score, event.at_utc, settling.reasons)


def pass_time(state: RegionState, now_utc: datetime) -> RegionState:
    """Let cleared levels run out, and pass on a rest that has not fallen in 14 days (ch)."""
    open_ = tuple(h for h in state.held if h.ends_at_utc is None or h.ends_at_utc > now_utc)
    state = replace(state, held=open_)
    waits = [h for h in open_ if h.ends_at_utc is None]
    if not waits or state.rest_from_utc is None:
        return state
    due = state.rest_from_utc + REST_WITHOUT_FALL
    cannot_fall = state.rest_score is not None and state.rest_score < MEANINGFUL_FALL
    if now_utc < due or cannot_fall or max(h.level for h in waits) >= Level.CLINICIAN:
        return state
    why = reason(PainReason.REST_NOT_FALLING, CH, after_d=REST_WITHOUT_FALL.days)
    held = Held(Level.CLINICIAN, Urgency.CONVENIENT, due, (why,))
    return hold(state, held)


def _remember(
    state: RegionState,
    score: int | None,
    event: PainReported | MorningAnswered,
    *,
    is_morning: bool,
) -> RegionState:
    """Keep the answer, and measure a rest's fall against it (farrar2001: about 2 points)."""
    answer = Answer(event.at_utc, score, is_morning)
    is_fall = (
        score is not None
        and state.rest_score is not None
        and score <= state.rest_score - MEANINGFUL_FALL
    )
    starts = state.is_rested and score is not None and (state.rest_score is None or is_fall)
    must_ask = event.must_ask or score is None
    if isinstance(event, PainReported) and not event.must_ask and score is None:
        must_ask = level_of_report(None, event.signs).value > Level.NONE
    is_known = score is not None and not must_ask
    asked_since = None if is_known else state.must_ask_since_utc
    return replace(
        state,
        answers=(*state.answers, answer),
        rest_score=score if starts else state.rest_score,
        rest_from_utc=event.at_utc if is_fall and state.is_rested else state.rest_from_utc,
        must_ask_since_utc=(asked_since or event.at_utc) if must_ask else asked_since,
    )


def _session_of(
    event: PainReported, sessions: Sequence[SessionTrained], *, sessions_before: int
) -> int:
    """Return the running number of the session that a report tells of, 0 for none."""
    if not sessions:
        return 0
    is_soon = event.at_utc - sessions[-1].at_utc <= TELLS_OF_SESSION_WITHIN
    if event.occasion is Occasion.AFTER_SESSION or (event.occasion is Occasion.MESSAGE and is_soon):
        return sessions_before + len(sessions)
    return 0


def _is_loaded(state: RegionState, event: PainReported, sessions: Sequence[SessionTrained]) -> bool:
    if event.loaded_region is not None:
        return event.loaded_region
    return state.region in sessions[-1].loaded


def _with_session(
    scores: tuple[SessionScore, ...], number: int, score: int | None, level: Level
) -> tuple[SessionScore, ...]:
    """Keep the highest number and level of one session."""
    if scores and scores[-1].session == number:
        last = scores[-1]
        numbers = [known for known in (last.score, score) if known is not None]
        best = max(numbers) if numbers else None
        return (*scores[:-1], SessionScore(number, best, max(last.level, level)))
    return (*scores, SessionScore(number, score, level))


def _anchor(
    state: RegionState, event: MorningAnswered, sessions: Sequence[SessionTrained]
) -> datetime:
    """Return the instant before which a morning looks: the session, else the report asked about."""
    within = SESSION_BEFORE_MORNING_WITHIN
    recent = [s.at_utc for s in sessions if event.at_utc - s.at_utc <= within]
    told = [answer.at_utc for answer in state.recent if not answer.is_morning]
    return max(recent) if recent else max(told, default=event.at_utc)


def _raise(
    state: RegionState,
    decisions: Sequence[Decision[Level]],
    event: PainReported | MorningAnswered,
) -> RegionState:
    """Let every decision raise; none lowers."""
    for decision in decisions:
        if decision.value >= Level.REST:
            urgency = URGENCY_OF[decision.value]
            held = Held(decision.value, urgency, event.at_utc, decision.reasons)
            state = hold(state, held)
    soft = [d for d in decisions if d.value > Level.NONE]
    level = min(max((d.value for d in soft), default=Level.NONE), Level.EASE)
    if level > Level.NONE:
        state = replace(state, is_settled=False)
    if level >= Level.EASE:
        state = replace(state, calm_morning=False, calm_session=False)
    was_words = state.soft <= Level.WATCH and state.is_words_only
    state = replace(
        state,
        is_words_only=event.score is None
        and (state.soft is Level.NONE or was_words)
        and level is Level.WATCH,
    )
    if level >= state.soft and level > Level.NONE:
        reasons = tuple(why for d in soft if min(d.value, Level.EASE) == level for why in d.reasons)
        return soften(state, level, at_utc=event.at_utc, reasons=reasons)
    if was_words and event.score is not None and not event.must_ask:
        return _end_words(state, event.score, event.at_utc)
    return state


def _end_words(state: RegionState, score: int, at_utc: datetime) -> RegionState:
    """Let the number that was asked for replace words that had none."""
    own = level_of_score(score)
    return soften(
        replace(state, is_settled=score == 0), own.value, at_utc=at_utc, reasons=own.reasons
    )


def _settle_by_report(state: RegionState, event: PainReported, *, is_loaded: bool) -> RegionState:
    """Let a session that loaded the region settle a 1, and end half of ease."""
    if event.score is None or event.occasion is not Occasion.AFTER_SESSION or not is_loaded:
        return state
    if event.score > CALM_SESSION_UP_TO:
        return state
    if state.soft is Level.EASE and _triggers_again(state):
        return state
    state = replace(state, calm_session=True)
    if event.score > SETTLED_SESSION_UP_TO:
        return _end(state, event.score, event.at_utc, ()) if state.soft is Level.EASE else state
    earlier = [a.score for a in state.answers[:-1] if a.score is not None]
    if earlier and earlier[-1] <= SETTLED_SESSION_UP_TO:
        state = replace(state, is_settled=True, calm_morning=True)
        why = reason(PainReason.SETTLED, CH, score=event.score, limit=SETTLED_SESSION_UP_TO)
        return _end(state, event.score, event.at_utc, (why,))
    return _end(state, event.score, event.at_utc, ()) if state.soft is Level.EASE else state


def _triggers_again(state: RegionState) -> bool:
    number = state.sessions[-1].session if state.sessions else 0
    return level_of_recurrence(state.sessions, latest_session=number).value >= Level.EASE


def _end(
    state: RegionState, score: int, at_utc: datetime, reasons: tuple[Reason, ...]
) -> RegionState:
    """End watch at a settled morning, ease at that and a calm session; the last number stays."""
    own = level_of_score(score)
    if state.soft is Level.EASE and not (state.calm_morning and state.calm_session):
        return state
    if own.value >= state.soft or own.value >= Level.EASE:
        return state
    state = soften(state, own.value, at_utc=at_utc, reasons=(*own.reasons, *reasons))
    return replace(state, calm_morning=False, calm_session=False, unsettled_mornings=0)
